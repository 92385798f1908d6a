// The keys of the parts a circuit is made of. Limits without a source are common practice.
#include "scenario/file/tables.hpp"

namespace scenario {

using words::said;

namespace {

using units::celsius;

QuantityForm<units::Current> rating(std::string_view example) {
    return from_to(0.01 * units::ampere, 10'000.0 * units::ampere, example);
}

QuantityForm<units::Voltage> rated_voltage(std::string_view example) {
    return from_to(1.0 * units::volt, 1000.0 * units::volt, example);
}

QuantityForm<units::Resistance> resistance(std::string_view example) {
    return from_to(units::Resistance(), 1.0 * units::ohm, example);
}

QuantityForm<units::Length> side() {
    return from_to(0.01 * units::metre, 10.0 * units::metre, "45 cm");
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
                 .means = said<"one way, from the beginning of the wire to its end">(),
                 .silent = said<"half the round trip">(),
                 .on_screen = {.label = said<"Length, one way">(), .units = {"ft", "m", "cm"}}},
        from_to(0.001 * units::metre, 1000.0 * units::metre, "3 ft"), LengthOfWire());
}

void check_wire(Reading& reading, const Spot& spot, const Wire&) {
    const bool one_way = spot.node->find("length") != nullptr;
    const bool round_trip = spot.node->find("round_trip") != nullptr;
    if (one_way && round_trip) {
        reading.refuse(spot, said<"found both length and round_trip">(),
                       said<"give length, one way, or round_trip, out and back">());
    }
    if (!one_way && !round_trip) {
        reading.demand(spot, "length", said<"\"3 ft\" (one way)">());
    }
}

void check_opening(Reading& reading, const Spot& spot, const OpeningTime& time) {
    if (time.least && time.most < *time.least) {
        reading.refuse(spot,
                       said<"found a longest time, {most}, below the shortest, {least}">(
                           units::print(time.most), units::print(*time.least)),
                       said<"give the shortest time as least and the longest as most">());
    }
}

}  // namespace

template <>
const Description<OpeningTime>& describe<OpeningTime>() {
    static const Description<OpeningTime> description = {
        .silent = "",
        .keys = keys_of(
            key<&OpeningTime::current>(
                {.name = "current", .means = said<"at this current">(), .demand = Demand::required},
                from_to(0.01 * units::ampere, 1e5 * units::ampere, "15 A")),
            key<&OpeningTime::least>(
                {.name = "least",
                 .means = said<"the fuse opens after this time at the earliest">(),
                 .silent = said<"may open at once">()},
                from_to(units::Duration(), 1000.0 * units::hour, "0.15 s")),
            key<&OpeningTime::most>({.name = "most",
                                     .means = said<"and after this time at the latest">(),
                                     .demand = Demand::required},
                                    from_to(0.0001 * units::second, 1000.0 * units::hour, "5 s"))),
        .check = check_opening};
    return description;
}

namespace {

// Its rating and its kind.
Keys<Fuse> fuse_and_family() {
    return keys_of(
        key<&Fuse::rating>({.name = "fuse",
                            .means = said<"rating of the fuse or breaker">(),
                            .demand = Demand::required,
                            .on_screen = {.label = said<"Rating of the fuse">(), .units = {"A"}}},
                           rating("7.5 A")),
        key<&Fuse::family>({.name = "family",
                            .means = said<"what kind of fuse it is">(),
                            .on_screen = {.label = said<"Kind of fuse">(),
                                          .silent = said<"as assumed">(),
                                          .picks = {{"blade", said<"blade">()},
                                                    {"maxi blade", said<"large blade">()},
                                                    {"strip 30 mm", said<"strip, 30 mm">()},
                                                    {"strip 51 mm", said<"strip, 51 mm">()},
                                                    {"anl", said<"bolted limiter (ANL)">()},
                                                    {"terminal", said<"on the terminal">()},
                                                    {"class T", said<"class T">()},
                                                    {"cartridge", said<"cartridge">()},
                                                    {"breaker", said<"circuit breaker">()}}}},
                           WordsForm{.sample = "blade"}));
}

// What it breaks, at what voltage, and what it costs in voltage.
Keys<Fuse> fuse_limits() {
    return keys_of(
        key<&Fuse::interrupts>({.name = "interrupts",
                                .means = said<"largest short-circuit current that it breaks">(),
                                .on_screen = {.label = said<"Breaks at most">(),
                                              .units = {"A", "kA"},
                                              .silent = said<"as assumed">()}},
                               from_to(1.0 * units::ampere, 1e6 * units::ampere, "1 kA")),
        key<&Fuse::voltage>({.name = "voltage",
                             .means = said<"highest voltage it is rated for">(),
                             .on_screen = {.label = said<"Rated for at most">(),
                                           .units = {"V"},
                                           .silent = said<"not given">()}},
                            rated_voltage("32 V")),
        key<&Fuse::resistance>({.name = "resistance", .means = said<"its own resistance">()},
                               resistance("8 mohm")));
}

// What it carries without end, and when it opens.
Keys<Fuse> how_a_fuse_carries_and_opens() {
    return keys_of(
        key<&Fuse::full_duty>(
            {.name = "full_duty",
             .means = said<"whether it is marked to carry its whole rating continuously">(),
             .silent = said<"carries 80 % continuously">()},
            TruthForm()),
        key<&Fuse::derate_per_kelvin>(
            {.name = "derate_per_kelvin",
             .means = said<"share of its rating that it loses for each kelvin above 25 degC">(),
             .silent = said<"none">()},
            from_to(units::Share(), units::Share(0.02), "0.2 %")),
        key<&Fuse::opens>(
            {.name = "opens",
             .means = said<"when it opens, by its sheet; in place of what its family does">(),
             .silent = said<"as its family does">()},
            list_of(TableForm<OpeningTime>(), 16)));
}

}  // namespace

template <>
const Description<Fuse>& describe<Fuse>() {
    static const Description<Fuse> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(fuse_and_family(), fuse_limits(), how_a_fuse_carries_and_opens())};
    return description;
}

namespace {

// What it switches.
Keys<Switch> switch_ratings() {
    return keys_of(
        key<&Switch::rating>(
            {.name = "switch",
             .means = said<"rating of the switch">(),
             .demand = Demand::required,
             .on_screen = {.label = said<"Rating of the switch">(), .units = {"A"}}},
            rating("10 A")),
        key<&Switch::rated_for>(
            {.name = "rated_for",
             .means = said<"what that rating is for">(),
             .on_screen = {.label = said<"Rated for">(), .silent = said<"not given">()}},
            OneTextForm{{"dc", "ac", "both"},
                        {said<"direct current">(), said<"alternating current">(), said<"both">()}}),
        key<&Switch::ac_rating>(
            {.name = "ac_rating",
             .means = said<
                 "its rating for alternating current, where the other is for direct current">(),
             .silent = said<"not known">()},
            rating("15 A")));
}

// What its contacts and terminals bear.
Keys<Switch> switch_contacts() {
    return keys_of(key<&Switch::voltage>({.name = "voltage",
                                          .means = said<"highest voltage it is rated for">(),
                                          .on_screen = {.label = said<"Rated for at most">(),
                                                        .units = {"V"},
                                                        .silent = said<"not given">()}},
                                         rated_voltage("32 V")),
                   key<&Switch::resistance>(
                       {.name = "resistance", .means = said<"resistance of its closed contacts">()},
                       resistance("0.1 mohm")),
                   key<&Switch::takes>({.name = "takes",
                                        .means = said<"thickest wire that its terminals take">(),
                                        .silent = said<"not known">(),
                                        .on_screen = {.label = said<"Largest wire it takes">(),
                                                      .silent = said<"not given">(),
                                                      .picks = usual_sizes()}},
                                       WireSizeForm()));
}

}  // namespace

template <>
const Description<Switch>& describe<Switch>() {
    static const Description<Switch> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(switch_ratings(), switch_contacts())};
    return description;
}

namespace {

// How thick and how long it is.
Keys<Wire> size_and_length() {
    return keys_of(
        key<&Wire::size>(
            {.name = "wire",
             .means = said<"size of the conductor">(),
             .demand = Demand::required,
             .on_screen = {.label = said<"Size of the wire">(), .picks = usual_sizes()}},
            WireSizeForm()),
        length_key(),
        key<&Wire::round_trip>(
            {.name = "round_trip",
             .means = said<"out and back together, in place of length">(),
             .silent = said<"twice the length">(),
             .on_screen = {.label = said<"Length, out and back">(), .units = {"ft", "m", "cm"}}},
            from_to(0.001 * units::metre, 2000.0 * units::metre, "6 ft")),
        key<&Wire::insulation>({.name = "insulation",
                                .means = said<"temperature the insulation is rated for">(),
                                .on_screen = {.label = said<"Insulation rated for">(),
                                              .units = {"degC", "degF"},
                                              .silent = said<"as assumed">()}},
                               from_to(celsius(40.0), celsius(300.0), "105 degC")));
}

// What leads back, where it differs.
Keys<Wire> return_conductor() {
    return keys_of(
        key<&Wire::return_size>({.name = "return_size",
                                 .means = said<"size of the return conductor">(),
                                 .silent = said<"as the supply">()},
                                WireSizeForm()),
        key<&Wire::return_length>({.name = "return_length",
                                   .means = said<"length of the return conductor">(),
                                   .silent = said<"as the supply">()},
                                  from_to(0.001 * units::metre, 1000.0 * units::metre, "3 ft")));
}

// What lies beside it.
Keys<Wire> beside_one_another() {
    return keys_of(
        key<&Wire::runs>({.name = "runs",
                          .means = said<"how many equal cables lie in parallel">(),
                          .silent = said<"{n}">(words::in_words(1)),
                          .on_screen = {.label = said<"Wires side by side">(), .silent = "1"}},
                         WholeForm{1, 16}),
        key<&Wire::bundle>({.name = "bundle",
                            .means = said<"conductors that lie side by side and carry current">(),
                            .silent = said<"two, supply and return">()},
                           WholeForm{1, 60}),
        key<&Wire::surroundings>({.name = "surroundings",
                                  .means = said<"how warm it is around the wire">(),
                                  .silent = said<"as inside the case">()},
                                 from_to(celsius(-40.0), celsius(200.0), "50 degC")));
}

// Against what it is held.
Keys<Wire> standard_and_ampacity() {
    return keys_of(
        key<&Wire::built_to>(
            {.name = "built_to", .means = said<"whose standard the metal of that size follows">()},
            OneTextForm{{"nec", "sae", "iec"}, {"NEC", "SAE", "IEC"}}),
        key<&Wire::table>(
            {.name = "table", .means = said<"which table of ampacity it is held against">()},
            OneTextForm{{"boat", "building", "cord"},
                        {said<"wires of boats">(), said<"wires of buildings">(),
                         said<"flexible cords">()}}),
        key<&Wire::ampacity>({.name = "ampacity",
                              .means = said<"what it carries at 30 degC, in place of the table">(),
                              .silent = said<"from the table">()},
                             rating("60 A")));
}

// What it is made of and ends in.
Keys<Wire> strands_and_terminals() {
    return keys_of(
        key<&Wire::tinned>({.name = "tinned",
                            .means = said<"whether the strands are tinned">(),
                            .silent = said<"plain copper">()},
                           TruthForm()),
        key<&Wire::sheathed>({.name = "sheathed",
                              .means = said<"whether a common sheath holds the conductors">(),
                              .silent = said<"no">()},
                             TruthForm()),
        key<&Wire::terminals>({.name = "terminals",
                               .means = said<"temperature the lugs and terminals are marked for">(),
                               .silent = said<"as the insulation">(),
                               .on_screen = {.label = said<"Terminals rated for">(),
                                             .units = {"degC", "degF"},
                                             .silent = said<"as the insulation">()}},
                              from_to(celsius(40.0), celsius(300.0), "75 degC")));
}

}  // namespace

template <>
const Description<Wire>& describe<Wire>() {
    static const Description<Wire> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(size_and_length(), return_conductor(), beside_one_another(),
                       standard_and_ampacity(), strands_and_terminals()),
        .check = check_wire};
    return description;
}

namespace {

// Its rating, and which one it is.
Keys<Connector> connector_rating() {
    return keys_of(
        key<&Connector::rating>(
            {.name = "connector",
             .means = said<"rating of the connector">(),
             .demand = Demand::required,
             .on_screen = {.label = said<"Rating of the connector">(), .units = {"A"}}},
            rating("50 A")),
        key<&Connector::resistance>({.name = "resistance",
                                     .means = said<"of one mated contact">(),
                                     .on_screen = {.label = said<"Its resistance">(),
                                                   .units = {"mOhm"},
                                                   .silent = said<"as assumed">()}},
                                    resistance("0.5 mohm")),
        key<&Connector::part>(
            {.name = "part",
             .means = said<"which connector of the built-in table it is">(),
             .on_screen = {.label = said<"Which connector">(), .silent = said<"not given">()}},
            WordsForm{.sample = "two-pole 50"}),
        key<&Connector::listing>(
            {.name = "listing",
             .means = said<"whose listing counts where two differ">(),
             .silent = said<"the lower">()},
            OneTextForm{{"lower", "ul", "csa"}, {said<"the lower">(), "UL", "CSA"}}));
}

// What it bears, and what it takes.
Keys<Connector> connector_limits() {
    return keys_of(
        key<&Connector::hottest>(
            {.name = "hottest", .means = said<"temperature its housing is rated for">()},
            from_to(celsius(40.0), celsius(300.0), "105 degC")),
        key<&Connector::voltage>({.name = "voltage",
                                  .means = said<"highest voltage it is rated for">(),
                                  .on_screen = {.label = said<"Rated for at most">(),
                                                .units = {"V"},
                                                .silent = said<"not given">()}},
                                 rated_voltage("120 V")),
        key<&Connector::cycles_used>({.name = "cycles_used",
                                      .means = said<"how often it was plugged in before">(),
                                      .silent = said<"new">()},
                                     WholeForm{0, 1'000'000}),
        key<&Connector::takes>({.name = "takes",
                                .means = said<"thickest wire that its contacts take">(),
                                .silent = said<"not known">(),
                                .on_screen = {.label = said<"Largest wire it takes">(),
                                              .silent = said<"not given">(),
                                              .picks = usual_sizes()}},
                               WireSizeForm()));
}

}  // namespace

template <>
const Description<Connector>& describe<Connector>() {
    static const Description<Connector> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(connector_rating(), connector_limits())};
    return description;
}

template <>
const Description<SocketOutlet>& describe<SocketOutlet>() {
    static const Description<SocketOutlet> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = keys_of(
            key<&SocketOutlet::rating>(
                {.name = "outlet",
                 .means = said<"rating of the socket outlet">(),
                 .demand = Demand::required,
                 .on_screen = {.label = said<"Rating of the outlet">(), .units = {"A"}}},
                rating("10 A")),
            key<&SocketOutlet::ground_fault>(
                {.name = "ground_fault",
                 .means = said<"whether it trips on a fault to ground">(),
                 .silent = said<"not known">(),
                 .on_screen = {.label = said<"Trips on a ground fault">(), .silent = "false"}},
                TruthForm()),
            key<&SocketOutlet::voltage>({.name = "voltage",
                                         .means = said<"highest voltage it is rated for">(),
                                         .on_screen = {.label = said<"Rated for at most">(),
                                                       .units = {"V"},
                                                       .silent = said<"not given">()}},
                                        rated_voltage("125 V")),
            key<&SocketOutlet::takes>({.name = "takes",
                                       .means = said<"thickest wire that its terminals take">(),
                                       .silent = said<"not known">(),
                                       .on_screen = {.label = said<"Largest wire it takes">(),
                                                     .silent = said<"not given">(),
                                                     .picks = usual_sizes()}},
                                      WireSizeForm()))};
    return description;
}

namespace {

// How large it is.
Keys<Case> sides_of_case() {
    return keys_of(key<&Case::surface>(
                       {.name = "surface",
                        .means = said<"outer surface of the case, in place of its three sides">()},
                       from_to(0.001 * units::square_metre, 60.0 * units::square_metre, "1.05 m2")),
                   key<&Case::length>({.name = "length",
                                       .means = said<"outer length">(),
                                       .on_screen = {.label = said<"Length of the case">(),
                                                     .units = {"cm", "in", "m"},
                                                     .silent = said<"as assumed">()}},
                                      side()),
                   key<&Case::width>({.name = "width",
                                      .means = said<"outer width">(),
                                      .on_screen = {.label = said<"Width of the case">(),
                                                    .units = {"cm", "in", "m"},
                                                    .silent = said<"as assumed">()}},
                                     side()),
                   key<&Case::height>({.name = "height",
                                       .means = said<"outer height">(),
                                       .on_screen = {.label = said<"Height of the case">(),
                                                     .units = {"cm", "in", "m"},
                                                     .silent = said<"as assumed">()}},
                                      side()));
}

// What it is made of, and how the lid stands.
Keys<Case> walls_and_lid() {
    return keys_of(
        key<&Case::material>(
            {.name = "material",
             .means = said<"what it is made of">(),
             .on_screen = {.label = said<"Made of">(), .silent = said<"as assumed">()}},
            OneTextForm{{"plastic", "steel"}, {said<"plastic">(), said<"steel">()}}),
        key<&Case::lid>(
            {.name = "lid",
             .means = said<"whether the lid is open while the inverter works">(),
             .on_screen = {.label = said<"Lid while in use">(), .silent = said<"as assumed">()}},
            OneTextForm{{"open", "closed"}, {said<"open">(), said<"closed">()}}));
}

// How warm it is there, and how the air gets in.
Keys<Case> air_and_openings() {
    return keys_of(
        key<&Case::air>({.name = "air",
                         .means = said<"how warm the air around it is">(),
                         .on_screen = {.label = said<"Air around it">(),
                                       .units = {"degC", "degF"},
                                       .silent = said<"as assumed">()}},
                        from_to(celsius(-40.0), celsius(80.0), "30 degC")),
        key<&Case::inside>({.name = "inside",
                            .means = said<"how warm it was measured inside, at full load">(),
                            .silent = said<"worked out from the losses">()},
                           from_to(celsius(-40.0), celsius(150.0), "45 degC")),
        key<&Case::rating>(
            {.name = "rating", .means = said<"how tight it is when shut, as its maker states">()},
            WordsForm{.sample = "IP65"}),
        key<&Case::vent>(
            {.name = "vent", .means = said<"free area of each opening, inlet and outlet alike">()},
            from_to(1e-6 * units::square_metre, 1.0 * units::square_metre, "10 cm2")));
}

}  // namespace

template <>
const Description<Case>& describe<Case>() {
    static const Description<Case> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(sides_of_case(), walls_and_lid(), air_and_openings())};
    return description;
}

}  // namespace scenario
