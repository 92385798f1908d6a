// The keys of [[pack]]. Limits without a source are common practice: what no portable unit
// reaches, so that a slip of the pen is told.
//
// A pack after the first takes what it does not give from the first pack. How much, depends:
//   neither chemistry, capacity nor voltage differ   everything but name, count, and what was
//                                                    measured on that very pack
//   capacity or voltage differ                       what belongs to the chemistry and the use of
//                                                    it, not what grows with the size of a pack
//   chemistry differs                                nothing: it must describe itself
#include "scenario/most.hpp"
#include "scenario/tables.hpp"

namespace scenario {
namespace {

// A pack's age is how much of its life is behind it. Who gives a time or a number is told what the
// words stand for.
struct AgeForm : ChoiceForm<Age> {
    [[nodiscard]] std::optional<Age> read(Reading& reading, const Spot& spot) const {
        const Node& node = *spot.node;
        const bool years =
            node.kind != Node::Kind::text ||
            (!node.text.empty() && node.text.front() >= '0' && node.text.front() <= '9');
        if (!years) return ChoiceForm<Age>::read(reading, spot);
        reading.refuse(spot, "found " + shown(node),
                       "years alone do not tell how worn it is: give \"fresh\" (full capacity), "
                       "\"mid_life\" (90 %) or \"end_of_life\" (80 %); best is tested_capacity, "
                       "such as \"85 Ah\", as measured");
        return std::nullopt;
    }
};

constexpr std::string_view by_capacity =
    "write fresh (full capacity), mid_life (90 %) or end_of_life (80 %); best is tested_capacity";

constexpr std::string_view lithium =
    "write lifepo4 where the cells are lithium iron phosphate (12.8 V a pack of four); other "
    "lithium cells are not known here";
constexpr std::string_view lead =
    "write flooded where cells can be topped up, agm where the label says so or the case is sealed "
    "with the acid in mats, gel where it says gel";
constexpr std::string_view sealed =
    "write agm or gel, as the label says; most sealed batteries are agm";

// A test of one's own may find a little more than the label, and a worn-out pack little of it; what
// lies further off is a slip of the pen. Common practice, no source; the same of the wells.
void check_tested(Reading& reading, const Spot& spot, const Pack& pack) {
    const Node* tested = spot.node->find("tested_capacity");
    if (tested == nullptr || !pack.tested_capacity || !(pack.capacity > units::Charge())) {
        return;
    }
    const units::Charge least = 0.02 * pack.capacity;
    const units::Charge most = 1.25 * pack.capacity;
    if (*pack.tested_capacity < least || *pack.tested_capacity > most) {
        reading.refuse(spot.at(*tested, "tested_capacity"),
                       fmt::format("found {}, which cannot be that of a pack whose capacity is {}",
                                   units::show(*pack.tested_capacity), units::show(pack.capacity)),
                       fmt::format("give from {} to {}, or put the capacity right",
                                   units::show(least), units::show(most)));
    }
}

// What a faster draw gets is told once, and by whom it depends on the rate.
void check_rates(Reading& reading, const Spot& spot, const Pack& pack) {
    for (const std::string_view name : {"rates", "reserve"}) {
        const Node* node = spot.node->find(name);
        if (node == nullptr) {
            continue;
        }
        const Spot at = spot.at(*node, name);
        if (spot.node->find("two_well") != nullptr) {
            reading.refuse(at, "found two_well too, which says the same",
                           "keep the rows of the label, or two_well where it was fitted to them");
        } else if (pack.chemistry == Chemistry::lifepo4) {
            reading.refuse(at, "found rows of rates, of which a lifepo4 pack knows no difference",
                           "take them out: what the cold and the current leave is known here");
        }
    }
    const Node* kelvin = spot.node->find("absorption_per_kelvin");
    if (kelvin != nullptr && pack.chemistry == Chemistry::lifepo4 && pack.absorption_per_kelvin &&
        *pack.absorption_per_kelvin > units::Voltage()) {
        reading.refuse(spot.at(*kelvin, "absorption_per_kelvin"),
                       "found a charging voltage that follows the warmth of lithium",
                       "take it out, and switch it off at the charger: it is for lead-acid");
    }
}

void check_wells(Reading& reading, const Spot& spot, const Pack& pack) {
    const Node* wells = spot.node->find("two_well");
    if (wells == nullptr || !pack.two_well || !(pack.capacity > units::Charge()) ||
        !(pack.two_well->total > units::Charge())) {
        return;
    }
    const units::Charge least = 0.9 * pack.capacity;
    const units::Charge most = 5.0 * pack.capacity;
    if (pack.two_well->total < least || pack.two_well->total > most) {
        reading.refuse(spot.at(*wells, "two_well"),
                       fmt::format("found a total of {}, which does not go with a capacity of {}",
                                   units::show(pack.two_well->total), units::show(pack.capacity)),
                       fmt::format("give a total from {} to {}: what both wells hold",
                                   units::show(least), units::show(most)));
    }
}

void check_pack(Reading& reading, const Spot& spot, const Pack& pack) {
    if (pack.cutoff_voltage && pack.absorption_voltage &&
        *pack.cutoff_voltage >= *pack.absorption_voltage) {
        const Node* cutoff = spot.node->find("cutoff_voltage");
        reading.refuse(
            spot.at(cutoff == nullptr ? *spot.node : *cutoff, "cutoff_voltage"),
            fmt::format("found {}, which is not below the absorption voltage, {}",
                        units::print(*pack.cutoff_voltage), units::print(*pack.absorption_voltage)),
            "give the voltage at which the pack is cut off when empty, such as \"10.5 V\"");
    }
    check_rates(reading, spot, pack);
    check_tested(reading, spot, pack);
    check_wells(reading, spot, pack);
}

Copied kinship(const Node& written, const Pack& pack, const Pack& first) {
    if (written.find("chemistry") != nullptr && pack.chemistry != first.chemistry) {
        return Copied::never;
    }
    const bool other_capacity =
        written.find("capacity") != nullptr && pack.capacity != first.capacity;
    const bool other_voltage = written.find("voltage") != nullptr && pack.voltage != first.voltage;
    return other_capacity || other_voltage ? Copied::by_relatives : Copied::by_twins;
}

}  // namespace

template <>
const Description<TwoWellNumbers>& describe<TwoWellNumbers>() {
    static const Description<TwoWellNumbers> description = {
        .silent = "",
        .keys = keys_of(
            key<&TwoWellNumbers::available>({.name = "c",
                                             .means = "share of the charge that is at hand at once",
                                             .demand = Demand::required},
                                            from_to(units::Share(0.01), units::Share(1.0), "0.3")),
            key<&TwoWellNumbers::rate>(
                {.name = "k", .means = "how fast the rest follows", .demand = Demand::required},
                from_to(0.001 * units::per_hour, 1000.0 * units::per_hour, "0.6 1/h")),
            key<&TwoWellNumbers::total>(
                {.name = "total",
                 .means = "what both wells hold together",
                 .demand = Demand::required},
                from_to(0.1 * units::ampere_hour, 20'000.0 * units::ampere_hour, "110 Ah")))};
    return description;
}

template <>
const Description<RateRow>& describe<RateRow>() {
    static const Description<RateRow> description = {
        .silent = "",
        .keys = keys_of(key<&RateRow::charge>({.name = "charge",
                                               .means = "charge that an even discharge gives",
                                               .demand = Demand::required},
                                              from_to(0.1 * units::ampere_hour,
                                                      10'000.0 * units::ampere_hour, "77 Ah")),
                        key<&RateRow::over>(
                            {.name = "over", .means = "over this time", .demand = Demand::required},
                            from_to(0.01 * units::hour, 240.0 * units::hour, "3 h")))};
    return description;
}

template <>
const Description<PulseLimit>& describe<PulseLimit>() {
    static const Description<PulseLimit> description = {
        .silent = "",
        .keys = keys_of(
            key<&PulseLimit::current>(
                {.name = "current", .means = "current the pack bears", .demand = Demand::required},
                from_to(0.1 * units::ampere, 20'000.0 * units::ampere, "200 A")),
            key<&PulseLimit::lasts>(
                {.name = "for", .means = "for at most this long", .demand = Demand::required},
                from_to(0.001 * units::second, 1.0 * units::hour, "5 s")))};
    return description;
}

template <>
const Description<Pack>& describe<Pack>() {
    using units::celsius;
    constexpr Copied twins = Copied::by_twins;
    constexpr Copied relatives = Copied::by_relatives;
    static const Description<Pack> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&Pack::name>({.name = "name",
                              .means = "what the answers call it",
                              .demand = Demand::required,
                              .on_screen = {.label = on_screen("Name")}},
                             WordsForm{.sample = "main"}),
            key<&Pack::count>({.name = "count",
                               .means = "how many there are of this kind",
                               .silent = "one",
                               .on_screen = {.label = on_screen("How many"), .silent = "1"}},
                              WholeForm{0, most_packs}),
            key<&Pack::chemistry>(
                {.name = "chemistry",
                 .means = "what the cells are made of",
                 .demand = Demand::required,
                 .copied = relatives,
                 .on_screen = {.label = on_screen("Kind")}},
                one_of<Chemistry>(
                    {{"lifepo4", Chemistry::lifepo4, on_screen("lithium iron phosphate")},
                     {"agm", Chemistry::agm, on_screen("lead, sealed (AGM)")},
                     {"gel", Chemistry::gel, on_screen("lead, gel")},
                     {"flooded", Chemistry::flooded, on_screen("lead, wet")}},
                    {{"lithium", lithium},
                     {"li-ion", lithium},
                     {"lithium-ion", lithium},
                     {"LFP", "write lifepo4"},
                     {"LiFePO", "write lifepo4"},
                     {"lithium iron phosphate", "write lifepo4"},
                     {"lead", lead},
                     {"lead acid", lead},
                     {"SLA", sealed},
                     {"VRLA", sealed},
                     {"sealed", sealed},
                     {"sealed lead acid", sealed},
                     {"wet", "write flooded"},
                     {"deep cycle", lead},
                     {"LiFe", "write lifepo4"},
                     {"lithium iron", "write lifepo4"},
                     {"lithium phosphate", "write lifepo4"},
                     {"li", lithium},
                     {"NMC", lithium},
                     {"lead-acid battery", lead},
                     {"car battery", lead},
                     {"starter", lead},
                     {"marine", lead},
                     {"FLA", "write flooded"},
                     {"wet cell", "write flooded"},
                     {"absorbed glass mat", "write agm"},
                     {"glass mat", "write agm"},
                     {"maintenance free", sealed}})),
            key<&Pack::capacity>(
                {.name = "capacity",
                 .means = "charge that one full pack gives when new, by its label",
                 .demand = Demand::required,
                 .copied = relatives,
                 .on_screen = {.label = on_screen("Capacity, each"),
                               .units = {"Ah"},
                               .silent = on_screen("as the first pack, or as usual for the kind")}},
                from_to(0.5 * units::ampere_hour, 10'000.0 * units::ampere_hour, "100 Ah")),
            key<&Pack::rated_over>(
                {.name = "rated_over",
                 .means = "time of the even discharge over which the capacity holds",
                 .copied = relatives,
                 .on_screen = {.label = on_screen("Capacity rated over"),
                               .units = {"h"},
                               .silent = on_screen("as the first pack, or as usual for the kind")}},
                from_to(0.05 * units::hour, 240.0 * units::hour, "20 h")),
            key<&Pack::voltage>(
                {.name = "voltage",
                 .means = "nominal voltage, by the label",
                 .copied = relatives,
                 .on_screen = {.label = on_screen("Voltage"),
                               .units = {"V"},
                               .silent = on_screen("as the first pack, or as usual for the kind")}},
                from_to(2.0 * units::volt, 100.0 * units::volt, "12.8 V")),
            key<&Pack::charge>({.name = "charge",
                                .means = "how full it is when the outage starts",
                                .copied = relatives,
                                .on_screen = {.label = on_screen("How full at the start"),
                                              .units = {"%"},
                                              .silent = on_screen("full")}},
                               from_to(units::StateOfCharge(), units::StateOfCharge(1.0), "100 %")),
            key<&Pack::rested_voltage>(
                {.name = "rested_voltage",
                 .means = "voltage read at rest, from which the charge is told",
                 .on_screen = {.label = on_screen("Voltage measured at rest"),
                               .units = {"V"},
                               .silent = on_screen("not measured")}},
                from_to(1.0 * units::volt, 100.0 * units::volt, "13.2 V")),
            key<&Pack::rested_for>({.name = "rested_for",
                                    .means = "how long it had rested when that was read",
                                    .on_screen = {.label = on_screen("At rest before that for"),
                                                  .units = {"h", "min", "d"},
                                                  .silent = on_screen("not told")}},
                                   from_to(units::Duration(), 366.0 * units::day, "6 h")),
            key<&Pack::two_well>(
                {.name = "two_well",
                 .means = "numbers of the two wells, where they were fitted to measurements",
                 .copied = twins},
                TableForm<TwoWellNumbers>()),
            key<&Pack::rates>(
                {.name = "rates",
                 .means = "further rows of the label: what a faster or slower discharge gives",
                 .copied = twins,
                 .silent = "capacity over rated_over alone; rows of the label beside "
                           "it tell how much a faster draw gets"},
                list_of(TableForm<RateRow>(), 16)),
            key<&Pack::reserve>({.name = "reserve",
                                 .means = "minutes at 25 A, by the label of a starter battery",
                                 .copied = twins,
                                 .silent = "not on the label; minutes at 25 A"},
                                from_to(1.0 * units::minute, 24.0 * units::hour, "160 min")),
            key<&Pack::resistance>({.name = "resistance",
                                    .means = "resistance inside one pack, without its lead",
                                    .copied = twins},
                                   from_to(0.00001 * units::ohm, 10.0 * units::ohm, "4 mohm")),
            key<&Pack::lead_resistance>(
                {.name = "lead_resistance",
                 .means = "lead and connector of one pack, both conductors",
                 .copied = relatives,
                 .on_screen = {.label = on_screen("Lead and connector, both ways"),
                               .units = {"mOhm"},
                               .silent = on_screen("as usual")}},
                from_to(units::Resistance(), 10.0 * units::ohm, "2 mohm")),
            key<&Pack::current_limit>(
                {.name = "current_limit",
                 .means = "most that one pack gives without end",
                 .copied = twins,
                 .on_screen = {.label = on_screen("Most it may give"),
                               .units = {"A"},
                               .silent = on_screen("as usual for the kind")}},
                from_to(0.1 * units::ampere, 10'000.0 * units::ampere, "100 A")),
            key<&Pack::pulse>(
                {.name = "pulse", .means = "more than that, for a short time", .copied = twins},
                list_of(TableForm<PulseLimit>(), 16)),
            key<&Pack::charge_limit>(
                {.name = "charge_limit",
                 .means = "most that one pack takes while charging",
                 .copied = twins,
                 .on_screen = {.label = on_screen("Most it may take"),
                               .units = {"A"},
                               .silent = on_screen("as usual for the kind")}},
                from_to(0.01 * units::ampere, 10'000.0 * units::ampere, "50 A")),
            key<&Pack::absorption_voltage>(
                {.name = "absorption_voltage",
                 .means = "voltage up to which it is charged",
                 .copied = twins},
                from_to(1.0 * units::volt, 100.0 * units::volt, "14.4 V")),
            key<&Pack::absorption_per_kelvin>(
                {.name = "absorption_per_kelvin",
                 .means =
                     "by how much the charger lifts that voltage for each kelvin below 25 degC",
                 .copied = twins,
                 .silent = "0 mV/K: charged to one voltage, warm or cold; lead-acid only"},
                from_to(units::Voltage(), 0.2 * units::volt, "30 mV").followed_by("/K")),
            key<&Pack::cutoff_voltage>(
                {.name = "cutoff_voltage",
                 .means = "voltage at which the pack's own protection opens",
                 .copied = twins,
                 .on_screen = {.label = on_screen("Its protection switches off at"),
                               .units = {"V"},
                               .silent = on_screen("as usual for the kind")}},
                from_to(1.0 * units::volt, 100.0 * units::volt, "10.5 V")),
            key<&Pack::coldest_charge>(
                {.name = "coldest_charge",
                 .means = "cell temperature below which it must not be charged",
                 .copied = relatives},
                from_to(celsius(-60.0), celsius(40.0), "0 degC")),
            key<&Pack::usable>({.name = "usable",
                                .means = "share of the charge that you allow to be used",
                                .copied = relatives,
                                .on_screen = {.label = on_screen("Part of it that may be used"),
                                              .units = {"%"},
                                              .silent = on_screen("as usual for the kind")}},
                               from_to(units::Share(0.01), units::Share(1.0), "90 %")),
            key<&Pack::age>(
                {.name = "age",
                 .means = "how much of its life is behind it",
                 .copied = relatives,
                 .on_screen = {.label = on_screen("Age")}},
                AgeForm{one_of<Age>({{"fresh", Age::fresh, on_screen("new")},
                                     {"mid_life", Age::mid_life, on_screen("half its life")},
                                     {"end_of_life", Age::end_of_life, on_screen("old")}},
                                    {{"new", "write fresh"},
                                     {"young", "write fresh"},
                                     {"used", by_capacity},
                                     {"middle", "write mid_life"},
                                     {"half", "write mid_life"},
                                     {"half its life", "write mid_life"},
                                     {"old", by_capacity},
                                     {"worn", "write end_of_life"},
                                     {"worn out", "write end_of_life"}})}),
            key<&Pack::tested_capacity>(
                {.name = "tested_capacity",
                 .means = "charge that a test of your own found; in place of age",
                 .on_screen = {.label = on_screen("Capacity found by a test"),
                               .units = {"Ah"},
                               .silent = on_screen("not tested")}},
                from_to(0.1 * units::ampere_hour, 10'000.0 * units::ampere_hour, "92 Ah")),
            key<&Pack::fuse>({.name = "fuse",
                              .means = "fuse in the pack's lead",
                              .copied = twins,
                              .on_screen = {.label = on_screen("Its fuse"),
                                            .units = {"A"},
                                            .silent = on_screen("none told")}},
                             from_to(0.1 * units::ampere, 10'000.0 * units::ampere, "100 A")),
            key<&Pack::connector>({.name = "connector",
                                   .means = "rating of the plug by which it joins the others",
                                   .copied = twins},
                                  from_to(0.1 * units::ampere, 10'000.0 * units::ampere, "50 A")),
            key<&Pack::weight>({.name = "weight",
                                .means = "of one pack, with its box",
                                .copied = twins,
                                .on_screen = {.label = on_screen("Weight, each"),
                                              .units = {"kg", "lb"},
                                              .silent = on_screen("not told")}},
                               from_to(0.001 * units::kilogram, 1000.0 * units::kilogram, "12 kg")),
            key<&Pack::price>(
                {.name = "price",
                 .means = "of one pack, in any money, the same throughout the file",
                 .copied = twins,
                 .on_screen = {.label = on_screen("Price, each"), .silent = on_screen("not told")}},
                from_to(units::Price(), units::Price(1e6), "300"))),
        .check = check_pack,
        .kinship = kinship};
    return description;
}

}  // namespace scenario
