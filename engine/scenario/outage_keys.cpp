// The keys of [outage], [storage], [goal] and [[charger]].
// Limits without a source are common practice: what no portable unit reaches, so that a slip of
// the pen is told.
#include "scenario/tables.hpp"

namespace scenario {

using units::celsius;

namespace {

// Plates of generators give volt-amperes or watts; a plate's watts are taken at power factor 1.
struct PlateRatingForm {
    using Value = units::ApparentPower;
    QuantityForm<units::ApparentPower> inner =
        from_to(units::ApparentPower(1.0 * units::watt),
                units::ApparentPower(100'000.0 * units::watt), "2000 VA");

    [[nodiscard]] std::string example() const { return inner.example(); }
    [[nodiscard]] std::string limits() const { return inner.limits() + ", or in W"; }
    [[nodiscard]] Ends ends() const { return inner.ends(); }
    [[nodiscard]] std::string print(const Value& value) const { return inner.print(value); }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        if (spot.node->kind == Node::Kind::text && units::read<units::Power>(spot.node->text)) {
            const auto watts =
                from_to(1.0 * units::watt, 100'000.0 * units::watt, "2000 W").read(reading, spot);
            return watts ? std::optional(Value(*watts)) : std::nullopt;
        }
        return inner.read(reading, spot);
    }
};

}  // namespace

template <>
const Description<Outage>& describe<Outage>() {
    static const Description<Outage> description = {
        .silent = "taken by the part that needs it, and told there",
        .keys = keys_of(
            key<&Outage::starts>({.name = "starts", .demand = Demand::required}, MomentForm()),
            key<&Outage::lasts>({.name = "lasts", .demand = Demand::required},
                                from_to(1.0 * units::minute, 60.0 * units::day, "4 d")),
            key<&Outage::cause>({.name = "cause"}, one_of<Cause>({{"storm", Cause::storm},
                                                                  {"clear", Cause::clear},
                                                                  {"unknown", Cause::unknown}})),
            key<&Outage::sky>({.name = "sky", .silent = "any days of the month"},
                              list_of(one_of<DaySky>({{"clear", DaySky::clear},
                                                      {"mixed", DaySky::mixed},
                                                      {"grey", DaySky::grey},
                                                      {"dark", DaySky::dark}}),
                                      10)),
            key<&Outage::battery_temperature>({.name = "battery_temperature"},
                                              from_to(celsius(-60.0), celsius(80.0), "5 degC")),
            key<&Outage::battery_follows_room>({.name = "battery_follows_room"}, TruthForm()),
            key<&Outage::room_temperature>({.name = "room_temperature"},
                                           from_to(celsius(-60.0), celsius(80.0), "18 degC")))};
    return description;
}

template <>
const Description<Storage>& describe<Storage>() {
    static const Description<Storage> description = {
        .silent = "taken by the storage check, and told there",
        .keys = keys_of(
            key<&Storage::since>({.name = "since", .demand = Demand::required}, MomentForm()),
            key<&Storage::temperature>({.name = "temperature"},
                                       from_to(celsius(-60.0), celsius(80.0), "25 degC")),
            key<&Storage::drain>({.name = "drain"},
                                 from_to(units::Current(), 100.0 * units::ampere, "15 mA")),
            key<&Storage::master_switch_open>({.name = "master_switch_open"}, TruthForm()),
            key<&Storage::self_discharge_per_month>(
                {.name = "self_discharge_per_month"},
                from_to(units::Share(), units::Share(1.0), "3 %")),
            key<&Storage::maintained>({.name = "maintained"}, TruthForm()))};
    return description;
}

template <>
const Description<Goal>& describe<Goal>() {
    static const Description<Goal> description = {
        .silent = "no limit",
        .keys = keys_of(
            key<&Goal::chance>({.name = "chance", .silent = "taken by sizing, and told there"},
                               from_to(units::Probability(0.01), units::Probability(1.0), "90 %")),
            key<&Goal::carry_at_most>(
                {.name = "carry_at_most"},
                from_to(0.1 * units::kilogram, 10'000.0 * units::kilogram, "20 kg")),
            key<&Goal::spend_at_most>({.name = "spend_at_most"},
                                      from_to(units::Price(0.01), units::Price(1e7), "800")))};
    return description;
}

template <>
const Description<Charger>& describe<Charger>() {
    static const Description<Charger> description = {
        .silent = "taken by the outage, and told there",
        .keys = keys_of(
            key<&Charger::name>({.name = "name", .demand = Demand::required},
                                WordsForm{.sample = "garage charger"}),
            key<&Charger::kind>({.name = "kind", .demand = Demand::required},
                                one_of<ChargerKind>({{"wall", ChargerKind::wall},
                                                     {"generator", ChargerKind::generator},
                                                     {"vehicle", ChargerKind::vehicle}})),
            key<&Charger::current>({.name = "current", .demand = Demand::required},
                                   from_to(0.1 * units::ampere, 1000.0 * units::ampere, "20 A")),
            key<&Charger::hours>({.name = "hours", .silent = "at all hours"}, list_of(SpanForm())),
            key<&Charger::days>({.name = "days", .silent = "every day"},
                                list_of(WholeForm{1, 60}, 60)),
            key<&Charger::efficiency>(
                {.name = "efficiency"},
                from_to(units::Efficiency(0.05), units::Efficiency(1.0), "85 %")),
            key<&Charger::power_factor>(
                {.name = "power_factor"},
                from_to(units::PowerFactor(0.05), units::PowerFactor(1.0), "0.65")),
            key<&Charger::generator_rating>({.name = "generator_rating"}, PlateRatingForm()))};
    return description;
}

}  // namespace scenario
