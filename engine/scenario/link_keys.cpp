// The keys of the parts a circuit is made of. Limits without a source are common practice.
#include "scenario/tables.hpp"

namespace scenario {
namespace {

QuantityForm<units::Current> rating(std::string_view example) {
    return from_to(0.01 * units::ampere, 10'000.0 * units::ampere, example);
}

QuantityForm<units::Voltage> rated_voltage(std::string_view example) {
    return from_to(1.0 * units::volt, 1000.0 * units::volt, example);
}

QuantityForm<units::Resistance> resistance(std::string_view example) {
    return from_to(units::Resistance(), 1.0 * units::ohm, example);
}

// The usual sizes of copper wire in a 12 V unit.
std::vector<Pick> usual_sizes() {
    return {{"18 AWG"}, {"16 AWG"}, {"14 AWG"}, {"12 AWG"},  {"10 AWG"},  {"8 AWG"},   {"6 AWG"},
            {"4 AWG"},  {"2 AWG"},  {"1 AWG"},  {"1/0 AWG"}, {"2/0 AWG"}, {"3/0 AWG"}, {"4/0 AWG"}};
}

// The one-way length, absent where the round trip is given instead.
struct LengthOfWire {
    [[nodiscard]] const units::Length* get(const Wire& wire) const {
        return wire.length > units::Length() ? &wire.length : nullptr;
    }
    void set(Wire& wire, units::Length length) const { wire.length = length; }
};

AKey<Wire> length_key() {
    using Form = QuantityForm<units::Length>;
    return std::make_unique<const KeyOfForm<Wire, Form, LengthOfWire>>(
        KeyWords{.name = "length",
                 .means = "one way, from the beginning of the wire to its end",
                 .silent = "half the round trip",
                 .on_screen = {.label = on_screen("Length, one way"), .units = {"ft", "m", "cm"}}},
        from_to(0.001 * units::metre, 1000.0 * units::metre, "3 ft"), LengthOfWire());
}

void check_wire(Reading& reading, const Spot& spot, const Wire&) {
    const bool one_way = spot.node->find("length") != nullptr;
    const bool round_trip = spot.node->find("round_trip") != nullptr;
    if (one_way && round_trip) {
        reading.refuse(spot, "found both length and round_trip",
                       "give length, one way, or round_trip, out and back");
    }
    if (!one_way && !round_trip) {
        reading.demand(spot, "length", "\"3 ft\" (one way)");
    }
}

void check_opening(Reading& reading, const Spot& spot, const OpeningTime& time) {
    if (time.least && time.most < *time.least) {
        reading.refuse(spot,
                       fmt::format("found a longest time, {}, below the shortest, {}",
                                   units::print(time.most), units::print(*time.least)),
                       "give the shortest time as least and the longest as most");
    }
}

}  // namespace

template <>
const Description<OpeningTime>& describe<OpeningTime>() {
    static const Description<OpeningTime> description = {
        .silent = "",
        .keys = keys_of(
            key<&OpeningTime::current>(
                {.name = "current", .means = "at this current", .demand = Demand::required},
                from_to(0.01 * units::ampere, 1e5 * units::ampere, "15 A")),
            key<&OpeningTime::least>({.name = "least",
                                      .means = "the fuse opens after this time at the earliest",
                                      .silent = "may open at once"},
                                     from_to(units::Duration(), 1000.0 * units::hour, "0.15 s")),
            key<&OpeningTime::most>({.name = "most",
                                     .means = "and after this time at the latest",
                                     .demand = Demand::required},
                                    from_to(0.0001 * units::second, 1000.0 * units::hour, "5 s"))),
        .check = check_opening};
    return description;
}

template <>
const Description<Fuse>& describe<Fuse>() {
    static const Description<Fuse> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&Fuse::rating>(
                {.name = "fuse",
                 .means = "rating of the fuse or breaker",
                 .demand = Demand::required,
                 .on_screen = {.label = on_screen("Rating of the fuse"), .units = {"A"}}},
                rating("7.5 A")),
            key<&Fuse::family>(
                {.name = "family",
                 .means = "what kind of fuse it is",
                 .on_screen = {.label = on_screen("Kind of fuse"),
                               .silent = on_screen("as assumed"),
                               .picks = {{"blade", on_screen("blade")},
                                         {"maxi blade", on_screen("large blade")},
                                         {"strip 30 mm", on_screen("strip, 30 mm")},
                                         {"strip 51 mm", on_screen("strip, 51 mm")},
                                         {"anl", on_screen("bolted limiter (ANL)")},
                                         {"terminal", on_screen("on the terminal")},
                                         {"class T", on_screen("class T")},
                                         {"cartridge", on_screen("cartridge")},
                                         {"breaker", on_screen("circuit breaker")}}}},
                WordsForm{.sample = "blade"}),
            key<&Fuse::interrupts>({.name = "interrupts",
                                    .means = "largest short-circuit current that it breaks",
                                    .on_screen = {.label = on_screen("Breaks at most"),
                                                  .units = {"A", "kA"},
                                                  .silent = on_screen("as assumed")}},
                                   from_to(1.0 * units::ampere, 1e6 * units::ampere, "1 kA")),
            key<&Fuse::voltage>({.name = "voltage",
                                 .means = "highest voltage it is rated for",
                                 .on_screen = {.label = on_screen("Rated for at most"),
                                               .units = {"V"},
                                               .silent = on_screen("not told")}},
                                rated_voltage("32 V")),
            key<&Fuse::resistance>({.name = "resistance", .means = "its own resistance"},
                                   resistance("8 mohm")),
            key<&Fuse::full_duty>(
                {.name = "full_duty",
                 .means = "whether it is marked to carry its whole rating continuously",
                 .silent = "carries 80 % continuously"},
                TruthForm()),
            key<&Fuse::derate_per_kelvin>(
                {.name = "derate_per_kelvin",
                 .means = "share of its rating that it loses for each kelvin above 25 degC",
                 .silent = "none"},
                from_to(units::Share(), units::Share(0.02), "0.2 %")),
            key<&Fuse::opens>(
                {.name = "opens",
                 .means = "when it opens, by its sheet; in place of what its family does",
                 .silent = "as its family does"},
                list_of(TableForm<OpeningTime>(), 16)))};
    return description;
}

template <>
const Description<Switch>& describe<Switch>() {
    static const Description<Switch> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&Switch::rating>(
                {.name = "switch",
                 .means = "rating of the switch",
                 .demand = Demand::required,
                 .on_screen = {.label = on_screen("Rating of the switch"), .units = {"A"}}},
                rating("10 A")),
            key<&Switch::rated_for>(
                {.name = "rated_for",
                 .means = "what that rating is for",
                 .on_screen = {.label = on_screen("Rated for"), .silent = on_screen("not told")}},
                OneTextForm{{"dc", "ac", "both"},
                            {on_screen("direct current"), on_screen("alternating current"),
                             on_screen("both")}}),
            key<&Switch::ac_rating>(
                {.name = "ac_rating",
                 .means =
                     "its rating for alternating current, where the other is for direct current",
                 .silent = "not known"},
                rating("15 A")),
            key<&Switch::voltage>({.name = "voltage",
                                   .means = "highest voltage it is rated for",
                                   .on_screen = {.label = on_screen("Rated for at most"),
                                                 .units = {"V"},
                                                 .silent = on_screen("not told")}},
                                  rated_voltage("32 V")),
            key<&Switch::resistance>(
                {.name = "resistance", .means = "resistance of its closed contacts"},
                resistance("0.1 mohm")),
            key<&Switch::takes>({.name = "takes",
                                 .means = "thickest wire that its terminals take",
                                 .silent = "not known",
                                 .on_screen = {.label = on_screen("Largest wire it takes"),
                                               .silent = on_screen("not told"),
                                               .picks = usual_sizes()}},
                                WireSizeForm()))};
    return description;
}

template <>
const Description<Wire>& describe<Wire>() {
    using units::celsius;
    static const Description<Wire> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&Wire::size>(
                {.name = "wire",
                 .means = "size of the conductor",
                 .demand = Demand::required,
                 .on_screen = {.label = on_screen("Size of the wire"), .picks = usual_sizes()}},
                WireSizeForm()),
            length_key(),
            key<&Wire::round_trip>({.name = "round_trip",
                                    .means = "out and back together, in place of length",
                                    .silent = "twice the length",
                                    .on_screen = {.label = on_screen("Length, out and back"),
                                                  .units = {"ft", "m", "cm"}}},
                                   from_to(0.001 * units::metre, 2000.0 * units::metre, "6 ft")),
            key<&Wire::insulation>({.name = "insulation",
                                    .means = "temperature the insulation is rated for",
                                    .on_screen = {.label = on_screen("Insulation stands"),
                                                  .units = {"degC", "degF"},
                                                  .silent = on_screen("as assumed")}},
                                   from_to(celsius(40.0), celsius(300.0), "105 degC")),
            key<&Wire::return_size>({.name = "return_size",
                                     .means = "size of the return conductor",
                                     .silent = "as the supply"},
                                    WireSizeForm()),
            key<&Wire::return_length>({.name = "return_length",
                                       .means = "length of the return conductor",
                                       .silent = "as the supply"},
                                      from_to(0.001 * units::metre, 1000.0 * units::metre, "3 ft")),
            key<&Wire::runs>(
                {.name = "runs",
                 .means = "how many equal cables lie in parallel",
                 .silent = "one",
                 .on_screen = {.label = on_screen("Wires side by side"), .silent = "1"}},
                WholeForm{1, 16}),
            key<&Wire::bundle>({.name = "bundle",
                                .means = "conductors that lie side by side and carry current",
                                .silent = "two, supply and return"},
                               WholeForm{1, 60}),
            key<&Wire::surroundings>({.name = "surroundings",
                                      .means = "how warm it is around the wire",
                                      .silent = "as inside the case"},
                                     from_to(celsius(-40.0), celsius(200.0), "50 degC")),
            key<&Wire::built_to>(
                {.name = "built_to", .means = "whose standard the metal of that size follows"},
                OneTextForm{{"nec", "sae", "iec"}}),
            key<&Wire::table>(
                {.name = "table", .means = "which table of ampacity it is held against"},
                OneTextForm{{"boat", "building", "cord"}}),
            key<&Wire::ampacity>({.name = "ampacity",
                                  .means = "what it carries at 30 degC, in place of the table",
                                  .silent = "from the table"},
                                 rating("60 A")),
            key<&Wire::tinned>({.name = "tinned",
                                .means = "whether the strands are tinned",
                                .silent = "plain copper"},
                               TruthForm()),
            key<&Wire::sheathed>({.name = "sheathed",
                                  .means = "whether a common sheath holds the conductors",
                                  .silent = "no"},
                                 TruthForm()),
            key<&Wire::terminals>({.name = "terminals",
                                   .means = "temperature the lugs and terminals are marked for",
                                   .silent = "as the insulation",
                                   .on_screen = {.label = on_screen("Terminals stand"),
                                                 .units = {"degC", "degF"},
                                                 .silent = on_screen("as the insulation")}},
                                  from_to(celsius(40.0), celsius(300.0), "75 degC"))),
        .check = check_wire};
    return description;
}

template <>
const Description<Connector>& describe<Connector>() {
    using units::celsius;
    static const Description<Connector> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&Connector::rating>(
                {.name = "connector",
                 .means = "rating of the connector",
                 .demand = Demand::required,
                 .on_screen = {.label = on_screen("Rating of the connector"), .units = {"A"}}},
                rating("50 A")),
            key<&Connector::resistance>({.name = "resistance",
                                         .means = "of one mated contact",
                                         .on_screen = {.label = on_screen("Its resistance"),
                                                       .units = {"mOhm"},
                                                       .silent = on_screen("as assumed")}},
                                        resistance("0.5 mohm")),
            key<&Connector::part>({.name = "part",
                                   .means = "which connector of the built-in table it is",
                                   .on_screen = {.label = on_screen("Which connector"),
                                                 .silent = on_screen("not told")}},
                                  WordsForm{.sample = "two-pole 50"}),
            key<&Connector::listing>({.name = "listing",
                                      .means = "whose listing counts where two differ",
                                      .silent = "the lower"},
                                     OneTextForm{{"lower", "ul", "csa"}}),
            key<&Connector::hottest>(
                {.name = "hottest", .means = "temperature its housing is rated for"},
                from_to(celsius(40.0), celsius(300.0), "105 degC")),
            key<&Connector::voltage>({.name = "voltage",
                                      .means = "highest voltage it is rated for",
                                      .on_screen = {.label = on_screen("Rated for at most"),
                                                    .units = {"V"},
                                                    .silent = on_screen("not told")}},
                                     rated_voltage("120 V")),
            key<&Connector::cycles_used>({.name = "cycles_used",
                                          .means = "how often it was plugged in before",
                                          .silent = "new"},
                                         WholeForm{0, 1'000'000}),
            key<&Connector::takes>({.name = "takes",
                                    .means = "thickest wire that its contacts take",
                                    .silent = "not known",
                                    .on_screen = {.label = on_screen("Largest wire it takes"),
                                                  .silent = on_screen("not told"),
                                                  .picks = usual_sizes()}},
                                   WireSizeForm()))};
    return description;
}

template <>
const Description<SocketOutlet>& describe<SocketOutlet>() {
    static const Description<SocketOutlet> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&SocketOutlet::rating>(
                {.name = "outlet",
                 .means = "rating of the socket outlet",
                 .demand = Demand::required,
                 .on_screen = {.label = on_screen("Rating of the outlet"), .units = {"A"}}},
                rating("10 A")),
            key<&SocketOutlet::ground_fault>(
                {.name = "ground_fault",
                 .means = "whether it trips on a fault to ground",
                 .silent = "not known",
                 .on_screen = {.label = on_screen("Trips on a ground fault"), .silent = "false"}},
                TruthForm()),
            key<&SocketOutlet::voltage>({.name = "voltage",
                                         .means = "highest voltage it is rated for",
                                         .on_screen = {.label = on_screen("Rated for at most"),
                                                       .units = {"V"},
                                                       .silent = on_screen("not told")}},
                                        rated_voltage("125 V")),
            key<&SocketOutlet::takes>({.name = "takes",
                                       .means = "thickest wire that its terminals take",
                                       .silent = "not known",
                                       .on_screen = {.label = on_screen("Largest wire it takes"),
                                                     .silent = on_screen("not told"),
                                                     .picks = usual_sizes()}},
                                      WireSizeForm()))};
    return description;
}

template <>
const Description<Case>& describe<Case>() {
    using units::celsius;
    const auto side = [] { return from_to(0.01 * units::metre, 10.0 * units::metre, "45 cm"); };
    static const Description<Case> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&Case::surface>(
                {.name = "surface",
                 .means = "outer surface of the case, in place of its three sides"},
                from_to(0.001 * units::square_metre, 60.0 * units::square_metre, "1.05 m2")),
            key<&Case::length>({.name = "length",
                                .means = "outer length",
                                .on_screen = {.label = on_screen("Length of the case"),
                                              .units = {"cm", "in", "m"},
                                              .silent = on_screen("as assumed")}},
                               side()),
            key<&Case::width>({.name = "width",
                               .means = "outer width",
                               .on_screen = {.label = on_screen("Width of the case"),
                                             .units = {"cm", "in", "m"},
                                             .silent = on_screen("as assumed")}},
                              side()),
            key<&Case::height>({.name = "height",
                                .means = "outer height",
                                .on_screen = {.label = on_screen("Height of the case"),
                                              .units = {"cm", "in", "m"},
                                              .silent = on_screen("as assumed")}},
                               side()),
            key<&Case::material>(
                {.name = "material",
                 .means = "what it is made of",
                 .on_screen = {.label = on_screen("Made of"), .silent = on_screen("as assumed")}},
                OneTextForm{{"plastic", "steel"}, {on_screen("plastic"), on_screen("steel")}}),
            key<&Case::lid>(
                {.name = "lid",
                 .means = "how the lid stands while the inverter works",
                 .on_screen = {.label = on_screen("Lid while in use"),
                               .silent = on_screen("as assumed")}},
                OneTextForm{{"open", "closed"}, {on_screen("open"), on_screen("closed")}}),
            key<&Case::air>({.name = "air",
                             .means = "how warm the air around it is",
                             .on_screen = {.label = on_screen("Air around it"),
                                           .units = {"degC", "degF"},
                                           .silent = on_screen("as assumed")}},
                            from_to(celsius(-40.0), celsius(80.0), "30 degC")),
            key<&Case::inside>({.name = "inside",
                                .means = "how warm it was measured inside, at full load",
                                .silent = "reckoned from the losses"},
                               from_to(celsius(-40.0), celsius(150.0), "45 degC")),
            key<&Case::rating>(
                {.name = "rating", .means = "how tight it is when shut, as its maker states"},
                WordsForm{.sample = "IP65"}),
            key<&Case::vent>(
                {.name = "vent", .means = "free area of each opening, inlet and outlet alike"},
                from_to(1e-6 * units::square_metre, 1.0 * units::square_metre, "10 cm2")))};
    return description;
}

}  // namespace scenario
