// The keys of [[pack]]. Limits without a source are common practice: what no portable unit
// reaches, so that a slip of the pen is told.
//
// A pack after the first takes what it does not give from the first pack. How much, depends:
//   neither chemistry, capacity nor voltage differ   everything but name, count, and what was
//                                                    measured on that very pack
//   capacity or voltage differ                       what belongs to the chemistry and the use of
//                                                    it, not what grows with the size of a pack
//   chemistry differs                                nothing: it must describe itself
#include "scenario/file/tables.hpp"
#include "scenario/keys/most.hpp"
#include "units/said.hpp"

namespace scenario {

using words::Said;
using words::said;

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
        reading.refuse(spot, said<"found {value}">(shown(node)),
                       said<"years alone do not tell how worn it is: give \"fresh\" (full "
                            "capacity), \"mid_life\" (90 %) or \"end_of_life\" (80 %); best is "
                            "tested_capacity, such as \"85 Ah\", as measured">());
        return std::nullopt;
    }
};

Said by_capacity() {
    return said<
        "write fresh (full capacity), mid_life (90 %) or end_of_life (80 %); best is "
        "tested_capacity">();
}

Said lithium() {
    return said<
        "write lifepo4 where the cells are lithium iron phosphate (12.8 V a pack of four); other "
        "lithium cells are not known here">();
}

Said lead() {
    return said<
        "write flooded where cells can be topped up, agm where the label says so or the case is "
        "sealed with the acid in mats, gel where it says gel">();
}

Said sealed() {
    return said<"write agm or gel, as the label says; most sealed batteries are agm">();
}

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
        reading.refuse(
            spot.at(*tested, "tested_capacity"),
            said<"found {tested}, which cannot be that of a pack whose capacity is {capacity}">(
                *pack.tested_capacity, pack.capacity),
            said<"give from {least} to {most}, or put the capacity right">(least, most));
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
            reading.refuse(
                at, said<"found two_well too, which says the same">(),
                said<"keep the rows of the label, or two_well where it was fitted to them">());
        } else if (pack.chemistry == Chemistry::lifepo4) {
            reading.refuse(
                at, said<"found rows of rates, which make no difference to a lifepo4 pack">(),
                said<"take them out: what the cold and the current leave is known here">());
        }
    }
    const Node* kelvin = spot.node->find("absorption_per_kelvin");
    if (kelvin != nullptr && pack.chemistry == Chemistry::lifepo4 && pack.absorption_per_kelvin &&
        *pack.absorption_per_kelvin > units::Voltage()) {
        reading.refuse(
            spot.at(*kelvin, "absorption_per_kelvin"),
            said<"found a charging voltage that follows the warmth of lithium">(),
            said<"take it out, and switch it off at the charger: it is for lead-acid">());
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
        reading.refuse(
            spot.at(*wells, "two_well"),
            said<"found a total of {total}, which does not go with a capacity of {capacity}">(
                pack.two_well->total, pack.capacity),
            said<"give a total from {least} to {most}: what both wells hold">(least, most));
    }
}

void check_pack(Reading& reading, const Spot& spot, const Pack& pack) {
    if (pack.cutoff_voltage && pack.absorption_voltage &&
        *pack.cutoff_voltage >= *pack.absorption_voltage) {
        const Node* cutoff = spot.node->find("cutoff_voltage");
        reading.refuse(
            spot.at(cutoff == nullptr ? *spot.node : *cutoff, "cutoff_voltage"),
            said<"found {cutoff}, which is not below the absorption voltage, {absorption}">(
                units::print(*pack.cutoff_voltage), units::print(*pack.absorption_voltage)),
            said<"give the voltage at which the pack is cut off when empty, such as \"10.5 V\"">());
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
            key<&TwoWellNumbers::available>(
                {.name = "c",
                 .means = said<"share of the charge that is at hand at once">(),
                 .demand = Demand::required},
                from_to(units::Share(0.01), units::Share(1.0), "0.3")),
            key<&TwoWellNumbers::rate>(
                {.name = "k",
                 .means = said<"how fast the rest follows">(),
                 .demand = Demand::required},
                from_to(0.001 * units::per_hour, 1000.0 * units::per_hour, "0.6 1/h")),
            key<&TwoWellNumbers::total>(
                {.name = "total",
                 .means = said<"what both wells hold together">(),
                 .demand = Demand::required},
                from_to(0.1 * units::ampere_hour, 20'000.0 * units::ampere_hour, "110 Ah")))};
    return description;
}

template <>
const Description<RateRow>& describe<RateRow>() {
    static const Description<RateRow> description = {
        .silent = "",
        .keys = keys_of(
            key<&RateRow::charge>(
                {.name = "charge",
                 .means = said<"charge that an even discharge gives">(),
                 .demand = Demand::required},
                from_to(0.1 * units::ampere_hour, 10'000.0 * units::ampere_hour, "77 Ah")),
            key<&RateRow::over>(
                {.name = "over", .means = said<"over this time">(), .demand = Demand::required},
                from_to(0.01 * units::hour, 240.0 * units::hour, "3 h")))};
    return description;
}

template <>
const Description<PulseLimit>& describe<PulseLimit>() {
    static const Description<PulseLimit> description = {
        .silent = "",
        .keys = keys_of(
            key<&PulseLimit::current>(
                {.name = "current",
                 .means = said<"current the pack bears">(),
                 .demand = Demand::required},
                from_to(0.1 * units::ampere, 20'000.0 * units::ampere, "200 A")),
            key<&PulseLimit::lasts>({.name = "for",
                                     .means = said<"for at most this long">(),
                                     .demand = Demand::required},
                                    from_to(0.001 * units::second, 1.0 * units::hour, "5 s")))};
    return description;
}

namespace {

using units::celsius;

constexpr Copied twins = Copied::by_twins;
constexpr Copied relatives = Copied::by_relatives;

// What people say in place of the words of the key, each with what to write.
Said write(std::string_view word) {
    return said<"write {value}">(word);
}

std::vector<OtherWord> others_for_chemistry() {
    return {{"lithium", lithium()},
            {"li-ion", lithium()},
            {"lithium-ion", lithium()},
            {"LFP", write("lifepo4")},
            {"LiFePO", write("lifepo4")},
            {"lithium iron phosphate", write("lifepo4")},
            {"lead", lead()},
            {"lead acid", lead()},
            {"SLA", sealed()},
            {"VRLA", sealed()},
            {"sealed", sealed()},
            {"sealed lead acid", sealed()},
            {"wet", write("flooded")},
            {"deep cycle", lead()},
            {"LiFe", write("lifepo4")},
            {"lithium iron", write("lifepo4")},
            {"lithium phosphate", write("lifepo4")},
            {"li", lithium()},
            {"NMC", lithium()},
            {"lead-acid battery", lead()},
            {"car battery", lead()},
            {"starter", lead()},
            {"marine", lead()},
            {"FLA", write("flooded")},
            {"wet cell", write("flooded")},
            {"absorbed glass mat", write("agm")},
            {"glass mat", write("agm")},
            {"maintenance free", sealed()}};
}

std::vector<OtherWord> others_for_age() {
    return {{"new", write("fresh")},
            {"young", write("fresh")},
            {"used", by_capacity()},
            {"middle", write("mid_life")},
            {"half", write("mid_life")},
            {"half its life", write("mid_life")},
            {"old", by_capacity()},
            {"worn", write("end_of_life")},
            {"worn out", write("end_of_life")}};
}

// Which packs they are, and of what kind.
Keys<Pack> which_packs() {
    return keys_of(
        key<&Pack::name>({.name = "name",
                          .means = said<"what the answers call it">(),
                          .demand = Demand::required,
                          .on_screen = {.label = said<"Name">()}},
                         WordsForm{.sample = "main"}),
        key<&Pack::count>({.name = "count",
                           .means = said<"how many there are of this kind">(),
                           .silent = said<"{n}">(words::in_words(1)),
                           .on_screen = {.label = said<"How many">(), .silent = "1"}},
                          WholeForm{0, most_packs}),
        key<&Pack::chemistry>(
            {.name = "chemistry",
             .means = said<"what the cells are made of">(),
             .demand = Demand::required,
             .copied = relatives,
             .on_screen = {.label = said<"Kind">()}},
            one_of<Chemistry>({{"lifepo4", Chemistry::lifepo4, said<"lithium iron phosphate">()},
                               {"agm", Chemistry::agm, said<"lead, sealed (AGM)">()},
                               {"gel", Chemistry::gel, said<"lead, gel">()},
                               {"flooded", Chemistry::flooded, said<"lead, wet">()}},
                              others_for_chemistry())));
}

// What the label says of charge and voltage.
Keys<Pack> charge_by_label() {
    return keys_of(
        key<&Pack::capacity>(
            {.name = "capacity",
             .means = said<"charge that one full pack gives when new, by its label">(),
             .demand = Demand::required,
             .copied = relatives,
             .on_screen = {.label = said<"Capacity, each">(),
                           .units = {"Ah"},
                           .silent = said<"as the first pack, or as usual for the kind">()}},
            from_to(0.5 * units::ampere_hour, 10'000.0 * units::ampere_hour, "100 Ah")),
        key<&Pack::rated_over>(
            {.name = "rated_over",
             .means = said<"time of the even discharge over which the capacity holds">(),
             .copied = relatives,
             .on_screen = {.label = said<"Capacity rated over">(),
                           .units = {"h"},
                           .silent = said<"as the first pack, or as usual for the kind">()}},
            from_to(0.05 * units::hour, 240.0 * units::hour, "20 h")),
        key<&Pack::voltage>(
            {.name = "voltage",
             .means = said<"nominal voltage, by the label">(),
             .copied = relatives,
             .on_screen = {.label = said<"Voltage">(),
                           .units = {"V"},
                           .silent = said<"as the first pack, or as usual for the kind">()}},
            from_to(2.0 * units::volt, 100.0 * units::volt, "12.8 V")));
}

// How full they are when the outage starts.
Keys<Pack> charge_at_start() {
    return keys_of(
        key<&Pack::charge>({.name = "charge",
                            .means = said<"how full it is when the outage starts">(),
                            .copied = relatives,
                            .on_screen = {.label = said<"How full at the start">(),
                                          .units = {"%"},
                                          .silent = said<"full">()}},
                           from_to(units::StateOfCharge(), units::StateOfCharge(1.0), "100 %")),
        key<&Pack::rested_voltage>(
            {.name = "rested_voltage",
             .means = said<"voltage read at rest, from which the charge is worked out">(),
             .on_screen = {.label = said<"Voltage measured at rest">(),
                           .units = {"V"},
                           .silent = said<"not measured">()}},
            from_to(1.0 * units::volt, 100.0 * units::volt, "13.2 V")),
        key<&Pack::rested_for>({.name = "rested_for",
                                .means = said<"how long it had rested when that was read">(),
                                .on_screen = {.label = said<"At rest before that for">(),
                                              .units = {"h", "min", "d"},
                                              .silent = said<"not given">()}},
                               from_to(units::Duration(), 366.0 * units::day, "6 h")));
}

// How the charge to be had depends on the rate.
Keys<Pack> charge_by_rate() {
    return keys_of(
        key<&Pack::two_well>(
            {.name = "two_well",
             .means = said<"numbers of the two wells, where they were fitted to measurements">(),
             .copied = twins},
            TableForm<TwoWellNumbers>()),
        key<&Pack::rates>(
            {.name = "rates",
             .means = said<"further rows of the label: what a faster or slower discharge gives">(),
             .copied = twins,
             .silent = said<"capacity over rated_over alone; rows of the label beside it tell how "
                            "much a faster draw gets">()},
            list_of(TableForm<RateRow>(), 16)),
        key<&Pack::reserve>({.name = "reserve",
                             .means = said<"minutes at 25 A, by the label of a starter battery">(),
                             .copied = twins,
                             .silent = said<"not on the label; minutes at 25 A">()},
                            from_to(1.0 * units::minute, 24.0 * units::hour, "160 min")));
}

// What lies between the cells and the bus.
Keys<Pack> resistances() {
    return keys_of(
        key<&Pack::resistance>({.name = "resistance",
                                .means = said<"resistance inside one pack, without its lead">(),
                                .copied = twins},
                               from_to(0.00001 * units::ohm, 10.0 * units::ohm, "4 mohm")),
        key<&Pack::lead_resistance>(
            {.name = "lead_resistance",
             .means = said<"lead and connector of one pack, both conductors">(),
             .copied = relatives,
             .on_screen = {.label = said<"Lead and connector, both ways">(),
                           .units = {"mOhm"},
                           .silent = said<"as usual">()}},
            from_to(units::Resistance(), 10.0 * units::ohm, "2 mohm")));
}

// Most that one gives and takes.
Keys<Pack> current_limits() {
    return keys_of(
        key<&Pack::current_limit>({.name = "current_limit",
                                   .means = said<"most that one pack gives without end">(),
                                   .copied = twins,
                                   .on_screen = {.label = said<"Most it may give">(),
                                                 .units = {"A"},
                                                 .silent = said<"as usual for the kind">()}},
                                  from_to(0.1 * units::ampere, 10'000.0 * units::ampere, "100 A")),
        key<&Pack::pulse>(
            {.name = "pulse", .means = said<"more than that, for a short time">(), .copied = twins},
            list_of(TableForm<PulseLimit>(), 16)),
        key<&Pack::charge_limit>({.name = "charge_limit",
                                  .means = said<"most that one pack takes while charging">(),
                                  .copied = twins,
                                  .on_screen = {.label = said<"Most it may take">(),
                                                .units = {"A"},
                                                .silent = said<"as usual for the kind">()}},
                                 from_to(0.01 * units::ampere, 10'000.0 * units::ampere, "50 A")));
}

// Between which voltages it is used, and how cold it may be charged.
Keys<Pack> charging_and_cutoff() {
    return keys_of(
        key<&Pack::absorption_voltage>({.name = "absorption_voltage",
                                        .means = said<"voltage up to which it is charged">(),
                                        .copied = twins},
                                       from_to(1.0 * units::volt, 100.0 * units::volt, "14.4 V")),
        key<&Pack::absorption_per_kelvin>(
            {.name = "absorption_per_kelvin",
             .means =
                 said<"by how much the charger lifts that voltage for each kelvin below 25 degC">(),
             .copied = twins,
             .silent = said<"0 mV/K: charged to one voltage, warm or cold; lead-acid only">()},
            from_to(units::Voltage(), 0.2 * units::volt, "30 mV").followed_by("/K")),
        key<&Pack::cutoff_voltage>(
            {.name = "cutoff_voltage",
             .means = said<"voltage at which the pack's own protection opens">(),
             .copied = twins,
             .on_screen = {.label = said<"Its protection switches off at">(),
                           .units = {"V"},
                           .silent = said<"as usual for the kind">()}},
            from_to(1.0 * units::volt, 100.0 * units::volt, "10.5 V")),
        key<&Pack::coldest_charge>(
            {.name = "coldest_charge",
             .means = said<"cell temperature below which it must not be charged">(),
             .copied = relatives},
            from_to(celsius(-60.0), celsius(40.0), "0 degC")));
}

// How much of it may be used, and how much of its life is left.
Keys<Pack> use_and_age() {
    return keys_of(
        key<&Pack::usable>({.name = "usable",
                            .means = said<"share of the charge that you allow to be used">(),
                            .copied = relatives,
                            .on_screen = {.label = said<"Part of it that may be used">(),
                                          .units = {"%"},
                                          .silent = said<"as usual for the kind">()}},
                           from_to(units::Share(0.01), units::Share(1.0), "90 %")),
        key<&Pack::age>({.name = "age",
                         .means = said<"how much of its life is behind it">(),
                         .copied = relatives,
                         .on_screen = {.label = said<"Age">()}},
                        AgeForm{one_of<Age>({{"fresh", Age::fresh, said<"new">()},
                                             {"mid_life", Age::mid_life, said<"half its life">()},
                                             {"end_of_life", Age::end_of_life, said<"old">()}},
                                            others_for_age())}),
        key<&Pack::tested_capacity>(
            {.name = "tested_capacity",
             .means = said<"charge that a test of your own found; in place of age">(),
             .on_screen = {.label = said<"Capacity found by a test">(),
                           .units = {"Ah"},
                           .silent = said<"not tested">()}},
            from_to(0.1 * units::ampere_hour, 10'000.0 * units::ampere_hour, "92 Ah")));
}

// What joins it to the others.
Keys<Pack> what_joins_it() {
    return keys_of(
        key<&Pack::fuse>({.name = "fuse",
                          .means = said<"fuse in the pack's lead">(),
                          .copied = twins,
                          .on_screen = {.label = said<"Its fuse">(),
                                        .units = {"A"},
                                        .silent = said<"none given">()}},
                         from_to(0.1 * units::ampere, 10'000.0 * units::ampere, "100 A")),
        key<&Pack::connector>({.name = "connector",
                               .means = said<"rating of the plug by which it joins the others">(),
                               .copied = twins},
                              from_to(0.1 * units::ampere, 10'000.0 * units::ampere, "50 A")));
}

// What it costs to have one more.
Keys<Pack> burden() {
    return keys_of(
        key<&Pack::weight>({.name = "weight",
                            .means = said<"of one pack, with its box">(),
                            .copied = twins,
                            .on_screen = {.label = said<"Weight, each">(),
                                          .units = {"kg", "lb"},
                                          .silent = said<"not given">()}},
                           from_to(0.001 * units::kilogram, 1000.0 * units::kilogram, "12 kg")),
        key<&Pack::price>(
            {.name = "price",
             .means = said<"of one pack, in any money, the same throughout the file">(),
             .copied = twins,
             .on_screen = {.label = said<"Price, each">(), .silent = said<"not given">()}},
            from_to(units::Price(), units::Price(1e6), "300")));
}

}  // namespace

template <>
const Description<Pack>& describe<Pack>() {
    static const Description<Pack> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(which_packs(), charge_by_label(), charge_at_start(), charge_by_rate(),
                       resistances(), current_limits(), charging_and_cutoff(), use_and_age(),
                       what_joins_it(), burden()),
        .check = check_pack,
        .kinship = kinship};
    return description;
}

}  // namespace scenario
