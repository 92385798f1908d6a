// The keys of [outage], [storage], [goal], [clock] and [[charger]].
// Limits without a source are common practice: what no portable unit reaches, so that a slip of
// the pen is told.
#include "scenario/file/open_end.hpp"
#include "scenario/file/tables.hpp"
#include "scenario/keys/most.hpp"

namespace scenario {

using units::celsius;
using words::said;

namespace {

// Plates of generators give volt-amperes or watts; a plate's watts are taken at power factor 1.
struct PlateRatingForm {
    using Value = units::ApparentPower;
    QuantityForm<units::ApparentPower> inner =
        from_to(units::ApparentPower(1.0 * units::watt),
                units::ApparentPower(100'000.0 * units::watt), "2000 VA");

    [[nodiscard]] std::string example() const { return inner.example(); }
    [[nodiscard]] words::Said limits() const {
        return words::said<"{limits}, or in W">(inner.limits());
    }
    [[nodiscard]] Ends ends() const { return inner.ends(); }
    [[nodiscard]] Shape shape() const {
        Shape shape = inner.shape();
        shape.or_of = units::Dimension::power;
        return shape;
    }
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

// A clock that lost its battery begins anew, decades ago.
constexpr units::Duration most_off = 100.0 * 366.0 * units::day;

constexpr std::string_view nobody_knows = "?";

// How long it lasts, or that nobody knows.
class LastsKey : public Key<Outage> {
  public:
    using Key::Key;

    [[nodiscard]] std::string example() const override { return length_.example(); }
    [[nodiscard]] words::Said limits() const override {
        return words::said<"{limits}, or \"?\" with half_over_by">(length_.limits());
    }
    [[nodiscard]] Ends ends() const override { return length_.ends(); }
    [[nodiscard]] Shape shape() const override {
        Shape shape = length_.shape();
        shape.besides = {in_quotes(nobody_knows)};
        return shape;
    }
    void read(Reading& reading, const Spot& spot, Outage& outage) const override {
        if (spot.node->kind == Node::Kind::text && spot.node->text == nobody_knows) {
            outage.open_ended = true;
        } else if (const auto length = length_.read(reading, spot)) {
            outage.lasts = *length;
        }
    }
    [[nodiscard]] std::optional<std::string> print(const Outage& outage) const override {
        return outage.open_ended ? in_quotes(nobody_knows) : length_.print(outage.lasts);
    }
    [[nodiscard]] std::optional<std::string> print_block(const Outage&) const override {
        return std::nullopt;
    }
    void list(Rows& rows, const Stop& stop, const Outage& outage) const override {
        rows.push_back(row(stop, print(outage)));
    }
    void copy(const Outage& from, Outage& to) const override {
        to.lasts = from.lasts;
        to.open_ended = from.open_ended;
    }

  private:
    QuantityForm<units::Duration> length_ = from_to(1.0 * units::minute, longest_outage(), "4 d");
};

void check_outage(Reading& reading, const Spot& spot, const Outage& outage) {
    const Node* lasts = spot.node->find("lasts");
    if (!outage.open_ended || outage.half_over_by || lasts == nullptr ||
        spot.node->find("half_over_by") != nullptr) {
        return;
    }
    reading.refuse(spot.at(*lasts, "lasts"),
                   said<"found \"?\", and nothing says how long such outages last">(),
                   said<"add half_over_by, by when half of such outages are over, such as "
                        "half_over_by = \"24 h\", or give the length">());
}

// When it begins, and how long it lasts.
Keys<Outage> when_it_is() {
    return keys_of(
        key<&Outage::starts>({.name = "starts",
                              .means = said<"when the outage begins, by local standard time">(),
                              .demand = Demand::required,
                              .on_screen = {.label = said<"Begins">()}},
                             MomentForm()),
        AKey<Outage>(std::make_unique<const LastsKey>(
            KeyWords{.name = "lasts",
                     .means = said<"how long it lasts; \"?\" where nobody knows">(),
                     .demand = Demand::required,
                     .on_screen = {.label = said<"Lasts">(), .units = {"d", "h"}}})),
        key<&Outage::half_over_by>(
            {.name = "half_over_by",
             .means = said<"by when half of such outages are over; for lasts = \"?\"">(),
             .silent = said<"needed for lasts = \"?\" alone">(),
             .on_screen = {.label = said<"Half are over by">(), .units = {"h", "d"}}},
            from_to(10.0 * units::minute, 14.0 * units::day, "24 h")));
}

// What the sky does.
Keys<Outage> sky_over_it() {
    return keys_of(
        key<&Outage::cause>({.name = "cause",
                             .means = said<"what brings it: a storm makes the first day dark">(),
                             .on_screen = {.label = said<"The first sky">(), .silent = "unknown"}},
                            one_of<Cause>({{"storm", Cause::storm, said<"storm">()},
                                           {"clear", Cause::clear, said<"clear">()},
                                           {"unknown", Cause::unknown, said<"unknown">()}})),
        key<&Outage::sky>(
            {.name = "sky",
             .means = said<
                 "forecast of the sky, day by day, from the first day whose noon lies ahead">(),
             .silent = said<"any days of the month">()},
            list_of(one_of<DaySky>({{"clear", DaySky::clear, said<"clear">()},
                                    {"mixed", DaySky::mixed, said<"mixed">()},
                                    {"grey", DaySky::grey, said<"grey">()},
                                    {"dark", DaySky::dark, said<"dark">()}}),
                    10)));
}

// How warm it is indoors.
Keys<Outage> warmth_in_it() {
    return keys_of(
        key<&Outage::battery_temperature>({.name = "battery_temperature",
                                           .means = said<"how warm the packs are">(),
                                           .on_screen = {.label = said<"Warmth of the packs">(),
                                                         .units = {"degC", "degF"},
                                                         .silent = said<"as assumed">()}},
                                          from_to(celsius(-60.0), celsius(80.0), "5 degC")),
        key<&Outage::battery_follows_room>(
            {.name = "battery_follows_room",
             .means = said<"whether the packs get as cold as an unheated room does, day by day">()},
            TruthForm()),
        key<&Outage::room_temperature>(
            {.name = "room_temperature",
             .means = said<"how warm the room is in which appliances and packs are">()},
            from_to(celsius(-60.0), celsius(80.0), "18 degC")));
}

}  // namespace

template <>
const Description<Outage>& describe<Outage>() {
    static const Description<Outage> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(when_it_is(), sky_over_it(), warmth_in_it()),
        .check = check_outage};
    return description;
}

template <>
const Description<Storage>& describe<Storage>() {
    static const Description<Storage> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = keys_of(
            key<&Storage::since>({.name = "since",
                                  .means = said<"when the unit was put away, fully charged">(),
                                  .demand = Demand::required,
                                  .on_screen = {.label = said<"Put away">()}},
                                 MomentForm()),
            key<&Storage::temperature>({.name = "temperature",
                                        .means = said<"how warm it is where it is kept">(),
                                        .on_screen = {.label = said<"Warmth of the place">(),
                                                      .units = {"degC", "degF"},
                                                      .silent = said<"as assumed">()}},
                                       from_to(celsius(-60.0), celsius(80.0), "25 degC")),
            key<&Storage::drain>({.name = "drain",
                                  .means = said<"what voltmeters and switches draw all the time">(),
                                  .on_screen = {.label = said<"Drain that stays on">(),
                                                .units = {"mA", "A"},
                                                .silent = said<"none given">()}},
                                 from_to(units::Current(), 100.0 * units::ampere, "15 mA")),
            key<&Storage::master_switch_open>(
                {.name = "master_switch_open",
                 .means = said<"whether an open master switch cuts the drain off">(),
                 .on_screen = {.label = said<"Master switch open">(), .silent = "false"}},
                TruthForm()),
            key<&Storage::self_discharge_per_month>(
                {.name = "self_discharge_per_month",
                 .means = said<
                     "share of the charge that a pack loses by itself in a month at 25 degC">()},
                from_to(units::Share(), units::Share(1.0), "3 %")),
            key<&Storage::maintained>(
                {.name = "maintained",
                 .means = said<"whether a maintenance charger keeps it full">(),
                 .on_screen = {.label = said<"On a maintenance charger">(), .silent = "false"}},
                TruthForm()))};
    return description;
}

template <>
const Description<Goal>& describe<Goal>() {
    static const Description<Goal> description = {
        .silent = said<"no limit">(),
        .keys = keys_of(
            key<&Goal::chance>(
                {.name = "chance",
                 .means = said<"how surely the unit is to last through the whole outage">(),
                 .silent = said<"assumed; the answers give the figure they take">(),
                 .on_screen = {.label = said<"Chance to last the outage, at least">(),
                               .units = {"%"},
                               .silent = said<"as assumed">()}},
                from_to(units::Probability(0.01), units::Probability(1.0), "90 %")),
            key<&Goal::carry_at_most>(
                {.name = "carry_at_most",
                 .means = said<"most that a person carries in one walk">(),
                 .on_screen = {.label = said<"Carried in one go, at most">(),
                               .units = {"kg", "lb"},
                               .silent = said<"as assumed">()}},
                from_to(0.1 * units::kilogram, 10'000.0 * units::kilogram, "20 kg")),
            key<&Goal::spend_at_most>(
                {.name = "spend_at_most",
                 .means = said<"most that all packs and panels may cost">(),
                 .on_screen = {.label = said<"Spent at most">(), .silent = said<"no limit">()}},
                from_to(units::Price(0.01), units::Price(1e7), "800")))};
    return description;
}

template <>
const Description<Clock>& describe<Clock>() {
    static const Description<Clock> description = {
        .silent = said<"taken to be right">(),
        .keys = keys_of(key<&Clock::ahead_by>(
            {.name = "ahead_by",
             .means = said<"how much more it shows than local standard time; below zero where it "
                           "is behind">(),
             .silent = said<"taken to be right">(),
             .on_screen = {.label = said<"Ahead by">(),
                           .units = {"min", "h"},
                           .silent = said<"taken to be right">()}},
            from_to(-most_off, most_off, "7 min")))};
    return description;
}

namespace {

// What it is, and what it gives.
Keys<Charger> which_charger() {
    return keys_of(
        key<&Charger::name>({.name = "name",
                             .means = said<"what the answers call it">(),
                             .demand = Demand::required,
                             .on_screen = {.label = said<"Name">()}},
                            WordsForm{.sample = "garage charger"}),
        key<&Charger::kind>(
            {.name = "kind",
             .means = said<"what it runs on">(),
             .demand = Demand::required,
             .on_screen = {.label = said<"Kind">()}},
            one_of<ChargerKind>({{"wall", ChargerKind::wall, said<"from the wall">()},
                                 {"generator", ChargerKind::generator, said<"from a generator">()},
                                 {"vehicle", ChargerKind::vehicle, said<"from a vehicle">()}})),
        key<&Charger::current>({.name = "current",
                                .means = said<"what it gives into the packs">(),
                                .demand = Demand::required,
                                .on_screen = {.label = said<"Charging current">(), .units = {"A"}}},
                               from_to(0.1 * units::ampere, 1000.0 * units::ampere, "20 A")));
}

// When it runs.
Keys<Charger> when_it_charges() {
    return keys_of(
        key<&Charger::hours>(
            {.name = "hours",
             .means = said<"parts of the day in which it runs">(),
             .silent = said<"at all hours">(),
             .on_screen = {.label = said<"Hours">(), .silent = said<"at all hours">()}},
            list_of(SpanForm())),
        key<&Charger::days>({.name = "days",
                             .means = said<"days of the outage on which it runs, 1 is the first">(),
                             .silent = said<"every day">()},
                            list_of(WholeForm{1, most_days}, most_days)));
}

// What it draws, and of what.
Keys<Charger> what_a_charger_draws() {
    return keys_of(
        key<&Charger::efficiency>({.name = "efficiency",
                                   .means = said<"share of what it draws that reaches the packs">(),
                                   .on_screen = {.label = said<"Efficiency">(),
                                                 .units = {"%"},
                                                 .silent = said<"as assumed">()}},
                                  from_to(units::Efficiency(0.05), units::Efficiency(1.0), "85 %")),
        key<&Charger::power_factor>(
            {.name = "power_factor", .means = said<"power factor of what it draws">()},
            from_to(units::PowerFactor(0.05), units::PowerFactor(1.0), "0.65")),
        key<&Charger::generator_rating>(
            {.name = "generator_rating",
             .means = said<"what the plate of the generator says that it gives">(),
             .on_screen = {.label = said<"Rating of the generator">(),
                           .units = {"VA", "W"},
                           .silent = said<"not given">()}},
            PlateRatingForm()));
}

}  // namespace

template <>
const Description<Charger>& describe<Charger>() {
    static const Description<Charger> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(which_charger(), when_it_charges(), what_a_charger_draws())};
    return description;
}

}  // namespace scenario
