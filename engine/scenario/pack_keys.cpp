// The keys of [[pack]]. Limits without a source are common practice: what no portable unit
// reaches, so that a slip of the pen is told.
//
// A pack after the first takes what it does not give from the first pack. How much, depends:
//   neither chemistry, capacity nor voltage differ   everything but name, count, and what was
//                                                    measured on that very pack
//   capacity or voltage differ                       what belongs to the chemistry and the use of
//                                                    it, not what grows with the size of a pack
//   chemistry differs                                nothing: it must describe itself
#include "scenario/tables.hpp"

namespace scenario {
namespace {

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
            key<&TwoWellNumbers::available>({.name = "c", .demand = Demand::required},
                                            positive_to(units::Share(1.0), "0.3")),
            key<&TwoWellNumbers::rate>({.name = "k", .demand = Demand::required},
                                       positive_to(1000.0 * units::per_hour, "0.6 1/h")),
            key<&TwoWellNumbers::total>({.name = "total", .demand = Demand::required},
                                        positive_to(20'000.0 * units::ampere_hour, "110 Ah")))};
    return description;
}

template <>
const Description<PulseLimit>& describe<PulseLimit>() {
    static const Description<PulseLimit> description = {
        .silent = "",
        .keys = keys_of(key<&PulseLimit::current>({.name = "current", .demand = Demand::required},
                                                  positive_to(20'000.0 * units::ampere, "200 A")),
                        key<&PulseLimit::lasts>({.name = "for", .demand = Demand::required},
                                                positive_to(1.0 * units::hour, "5 s")))};
    return description;
}

template <>
const Description<Pack>& describe<Pack>() {
    using units::celsius;
    constexpr Copied twins = Copied::by_twins;
    constexpr Copied relatives = Copied::by_relatives;
    static const Description<Pack> description = {
        .silent = "taken by the battery part, and told there",
        .keys = keys_of(
            key<&Pack::name>({.name = "name", .demand = Demand::required},
                             WordsForm{.sample = "main"}),
            key<&Pack::count>({.name = "count", .silent = "one"}, WholeForm{0, 1000}),
            key<&Pack::chemistry>(
                {.name = "chemistry", .demand = Demand::required, .copied = relatives},
                one_of<Chemistry>({{"lifepo4", Chemistry::lifepo4},
                                   {"agm", Chemistry::agm},
                                   {"gel", Chemistry::gel},
                                   {"flooded", Chemistry::flooded}})),
            key<&Pack::capacity>(
                {.name = "capacity", .demand = Demand::required, .copied = relatives},
                positive_to(10'000.0 * units::ampere_hour, "100 Ah")),
            key<&Pack::rated_over>({.name = "rated_over", .copied = relatives},
                                   positive_to(240.0 * units::hour, "20 h")),
            key<&Pack::voltage>({.name = "voltage", .copied = relatives},
                                positive_to(100.0 * units::volt, "12.8 V")),
            key<&Pack::charge>({.name = "charge", .copied = relatives},
                               from_to(units::StateOfCharge(), units::StateOfCharge(1.0), "100 %")),
            key<&Pack::rested_voltage>({.name = "rested_voltage"},
                                       positive_to(100.0 * units::volt, "13.2 V")),
            key<&Pack::rested_for>({.name = "rested_for"},
                                   from_to(units::Duration(), 366.0 * units::day, "6 h")),
            key<&Pack::two_well>({.name = "two_well", .copied = twins},
                                 TableForm<TwoWellNumbers>()),
            key<&Pack::resistance>({.name = "resistance", .copied = twins},
                                   positive_to(10.0 * units::ohm, "4 mohm")),
            key<&Pack::lead_resistance>({.name = "lead_resistance", .copied = relatives},
                                        from_to(units::Resistance(), 10.0 * units::ohm, "2 mohm")),
            key<&Pack::current_limit>({.name = "current_limit", .copied = twins},
                                      positive_to(10'000.0 * units::ampere, "100 A")),
            key<&Pack::pulse>({.name = "pulse", .copied = twins},
                              list_of(TableForm<PulseLimit>(), 16)),
            key<&Pack::charge_limit>({.name = "charge_limit", .copied = twins},
                                     positive_to(10'000.0 * units::ampere, "50 A")),
            key<&Pack::absorption_voltage>({.name = "absorption_voltage", .copied = twins},
                                           positive_to(100.0 * units::volt, "14.4 V")),
            key<&Pack::cutoff_voltage>({.name = "cutoff_voltage", .copied = twins},
                                       positive_to(100.0 * units::volt, "10.5 V")),
            key<&Pack::coldest_charge>({.name = "coldest_charge", .copied = relatives},
                                       from_to(celsius(-60.0), celsius(40.0), "0 degC")),
            key<&Pack::usable>({.name = "usable", .copied = relatives},
                               positive_to(units::Share(1.0), "90 %")),
            key<&Pack::age>({.name = "age", .copied = relatives},
                            one_of<Age>({{"fresh", Age::fresh},
                                         {"mid_life", Age::mid_life},
                                         {"end_of_life", Age::end_of_life}})),
            key<&Pack::tested_capacity>({.name = "tested_capacity"},
                                        positive_to(10'000.0 * units::ampere_hour, "92 Ah")),
            key<&Pack::fuse>({.name = "fuse", .copied = twins},
                             positive_to(10'000.0 * units::ampere, "100 A")),
            key<&Pack::connector>({.name = "connector", .copied = twins},
                                  positive_to(10'000.0 * units::ampere, "50 A")),
            key<&Pack::weight>({.name = "weight", .copied = twins},
                               positive_to(1000.0 * units::kilogram, "12 kg")),
            key<&Pack::price>({.name = "price", .copied = twins},
                              from_to(units::Price(), units::Price(1e6), "300"))),
        .check = check_pack,
        .kinship = kinship};
    return description;
}

}  // namespace scenario
