// The keys of [inverter]. Limits without a source are common practice: what no portable unit
// reaches, so that a slip of the pen is told.
#include "scenario/file/tables.hpp"
#include "units/number.hpp"

namespace scenario {

using words::Said;
using words::said;

namespace {

// What is sold as a modified sine is a square wave with a pause.
Said stepped() {
    return said<"write {value}">("quasi_square");
}

Said write_sine() {
    return said<"write {value}">("sine");
}

std::vector<OtherWord> others_for_wave() {
    return {{"modified sine", stepped()}, {"modified sine wave", stepped()},
            {"modified", stepped()},      {"square", stepped()},
            {"square wave", stepped()},   {"MSW", stepped()},
            {"quasi sine", stepped()},    {"PSW", write_sine()},
            {"pure", write_sine()},       {"stepped", stepped()},
            {"pure sine", write_sine()},  {"pure sine wave", write_sine()},
            {"true sine", write_sine()},  {"sine wave", write_sine()}};
}

// A multiple of the continuous rating: a share that goes beyond the whole.
struct MultipleForm {
    using Value = units::Share;
    static constexpr double most = 10.0;

    [[nodiscard]] std::string example() const { return "\"150 %\""; }
    [[nodiscard]] Said limits() const {
        return said<"more than {least}, at most {most}">("0 %", "1000 %");
    }
    [[nodiscard]] Ends ends() const {
        return {.within = {"\"1.0000001\"", "\"1000 %\""}, .beyond = {"\"0 %\"", "\"1001 %\""}};
    }
    [[nodiscard]] Shape shape() const {
        return {.kind = Shape::Kind::quantity, .dimension = units::Dimension::fraction};
    }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        const auto text = WordsForm{.sample = "150 %"}.read(reading, spot);
        if (!text) {
            return std::nullopt;
        }
        const auto number = units::read_leading_number(*text);
        const bool in_percent = number && number->rest == "%";
        if (!number || (!in_percent && !number->rest.empty()) || !(number->value > 0.0) ||
            number->value > (in_percent ? 100.0 * most : most)) {
            reading.refuse(
                spot, said<"found {value}">(*text),
                said<"give a part of the continuous rating, such as \"150 %\" or \"1.5\"">());
            return std::nullopt;
        }
        return Value(in_percent ? number->value / 100.0 : number->value);
    }
    [[nodiscard]] std::string print(const Value& value) const {
        return fmt::format("\"{}\"", value.value());
    }
};

void check_overload(Reading& reading, const Spot& spot, const Inverter& inverter) {
    const Node* points = spot.node->find("overload");
    for (std::size_t i = 0; i < inverter.overload.size(); ++i) {
        const auto& point = inverter.overload[i];
        const Spot at = spot.at(*points, "overload");
        const auto share = words::with_decimals(100.0 * point.at.value(), 0);
        if (point.at <= units::Share(1.0)) {
            reading.refuse(at, said<"found {share} % of the rating, which is no overload">(share),
                           said<"give points above 100 %">());
        } else if (i > 0 && (point.at <= inverter.overload[i - 1].at ||
                             point.holds > inverter.overload[i - 1].holds)) {
            reading.refuse(
                at,
                said<"found {share} % after a point that is no lighter or held for no longer">(
                    share),
                said<"give the points in order of rising load and falling time">());
        }
    }
}

void check_inverter(Reading& reading, const Spot& spot, const Inverter& inverter) {
    const Node& node = *spot.node;
    const bool surge_read = inverter.surge && inverter.continuous > units::Power();
    if (surge_read && *inverter.surge < inverter.continuous) {
        reading.refuse(spot.at(*node.find("surge"), "surge"),
                       said<"found {power}, which is less than the continuous rating, {rating}">(
                           units::print(*inverter.surge), units::print(inverter.continuous)),
                       said<"give the short-time rating, or take the key out">());
    }
    if (inverter.restart_voltage && inverter.cutoff_voltage &&
        *inverter.restart_voltage <= *inverter.cutoff_voltage) {
        reading.refuse(
            spot.at(*node.find("restart_voltage"), "restart_voltage"),
            said<"found {restart}, which is not above the cutoff voltage, {cutoff}">(
                units::print(*inverter.restart_voltage), units::print(*inverter.cutoff_voltage)),
            said<"give the voltage at which it switches on again, such as \"12.5 V\"">());
    }
    check_overload(reading, spot, inverter);
    const Node* points = node.find("efficiency");
    for (std::size_t i = 1; i < inverter.efficiency.size(); ++i) {
        if (inverter.efficiency[i].at <= inverter.efficiency[i - 1].at) {
            reading.refuse(
                spot.at(*points, "efficiency"),
                said<"found {load} after {earlier}">(units::print(inverter.efficiency[i].at),
                                                     units::print(inverter.efficiency[i - 1].at)),
                said<"give the points in order of rising load, each once">());
            return;
        }
    }
}

}  // namespace

template <>
const Description<EfficiencyPoint>& describe<EfficiencyPoint>() {
    static const Description<EfficiencyPoint> description = {
        .silent = "",
        .keys = keys_of(
            key<&EfficiencyPoint::at>(
                {.name = "at",
                 .means = said<"part of the continuous rating that is drawn">(),
                 .demand = Demand::required},
                from_to(units::Share(0.001), units::Share(1.0), "50 %")),
            key<&EfficiencyPoint::is>(
                {.name = "is", .means = said<"efficiency there">(), .demand = Demand::required},
                from_to(units::Efficiency(0.05), units::Efficiency(1.0), "0.90")))};
    return description;
}

template <>
const Description<HeldOverload>& describe<HeldOverload>() {
    static const Description<HeldOverload> description = {
        .silent = "",
        .keys = keys_of(
            key<&HeldOverload::at>(
                {.name = "at",
                 .means = said<"multiple of the continuous rating, above 100 %">(),
                 .demand = Demand::required},
                MultipleForm()),
            key<&HeldOverload::holds>({.name = "holds",
                                       .means = said<"how long it holds that">(),
                                       .demand = Demand::required},
                                      from_to(0.001 * units::second, 1.0 * units::day, "10 s")))};
    return description;
}

namespace {

// What it gives, and for how long.
Keys<Inverter> power_it_gives() {
    return keys_of(
        key<&Inverter::continuous>(
            {.name = "continuous",
             .means = said<"power it gives without end">(),
             .demand = Demand::required,
             .on_screen = {.label = said<"Power without end">(), .units = {"W", "kW"}}},
            from_to(1.0 * units::watt, 100'000.0 * units::watt, "2400 W")),
        key<&Inverter::continuous_apparent>(
            {.name = "continuous_apparent",
             .means = said<"apparent power it gives without end">(),
             .on_screen = {.label = said<"Apparent power without end">(),
                           .units = {"VA", "kVA"},
                           .silent = said<"not given">()}},
            from_to(1.0 * units::volt_ampere, 100'000.0 * units::volt_ampere, "3000 VA")),
        key<&Inverter::surge>({.name = "surge",
                               .means = said<"power it gives for a moment">(),
                               .on_screen = {.label = said<"Power for a moment">(),
                                             .units = {"W", "kW"},
                                             .silent = said<"as assumed">()}},
                              from_to(1.0 * units::watt, 200'000.0 * units::watt, "4800 W")),
        key<&Inverter::surge_lasts>({.name = "surge_lasts",
                                     .means = said<"how long that moment is">(),
                                     .on_screen = {.label = said<"That moment lasts">(),
                                                   .units = {"s"},
                                                   .silent = said<"not known">()}},
                                    from_to(0.001 * units::second, 1.0 * units::hour, "1 s")));
}

// What it uses itself.
Keys<Inverter> power_it_uses() {
    return keys_of(
        key<&Inverter::idle>({.name = "idle",
                              .means = said<"what it draws with nothing plugged in">(),
                              .on_screen = {.label = said<"Draw with nothing plugged in">(),
                                            .units = {"W"},
                                            .silent = said<"as assumed">()}},
                             from_to(units::Power(), 5000.0 * units::watt, "18 W")),
        key<&Inverter::efficiency>(
            {.name = "efficiency", .means = said<"efficiency at parts of the continuous rating">()},
            list_of(TableForm<EfficiencyPoint>(), 64)));
}

// When it leaves the battery, and when it comes back.
Keys<Inverter> battery_voltages() {
    return keys_of(
        key<&Inverter::cutoff_voltage>(
            {.name = "cutoff_voltage",
             .means = said<"battery voltage below which it switches off">(),
             .on_screen = {.label = said<"Switches off below">(),
                           .units = {"V"},
                           .silent = said<"as assumed">()}},
            from_to(1.0 * units::volt, 100.0 * units::volt, "10.5 V")),
        key<&Inverter::restart_voltage>(
            {.name = "restart_voltage",
             .means = said<"battery voltage above which it may switch on again">(),
             .on_screen = {.label = said<"Switches on again above">(),
                           .units = {"V"},
                           .silent = said<"as assumed">()}},
            from_to(1.0 * units::volt, 100.0 * units::volt, "12.5 V")),
        key<&Inverter::restart>(
            {.name = "restart",
             .means = said<"whether it comes back by itself after switching off">(),
             .silent = said<"by hand">()},
            one_of<Restart>({{"by hand", Restart::by_hand, said<"by hand">()},
                             {"by itself", Restart::by_itself, said<"by itself">()}})),
        key<&Inverter::cutoff_delay>(
            {.name = "cutoff_delay",
             .means = said<"how long the voltage must stay low before it switches off">(),
             .on_screen = {.label = said<"Waits before it switches off">(),
                           .units = {"s"},
                           .silent = said<"as assumed">()}},
            from_to(units::Duration(), 1.0 * units::hour, "5 s")));
}

// What comes out of it.
Keys<Inverter> what_it_puts_out() {
    return keys_of(
        key<&Inverter::output_voltage>({.name = "output_voltage",
                                        .means = said<"voltage of its outlets">(),
                                        .on_screen = {.label = said<"Voltage of its outlets">(),
                                                      .units = {"V"},
                                                      .silent = said<"as assumed">()}},
                                       from_to(50.0 * units::volt, 500.0 * units::volt, "120 V")),
        key<&Inverter::waveform>(
            {.name = "waveform",
             .means = said<"shape of what it gives">(),
             .on_screen = {.label = said<"Wave">(), .silent = said<"as assumed">()}},
            one_of<Waveform>({{"sine", Waveform::sine, said<"sine">()},
                              {"quasi_square", Waveform::quasi_square, said<"stepped">()}},
                             others_for_wave())));
}

// How it is joined to the bus, and when it is switched off.
Keys<Inverter> how_it_is_joined() {
    return keys_of(key<&Inverter::cable_resistance>(
                       {.name = "cable_resistance",
                        .means = said<"cables from the bus to the inverter, both conductors">()},
                       from_to(units::Resistance(), 1.0 * units::ohm, "1 mohm")),
                   key<&Inverter::off>(
                       {.name = "off",
                        .means = said<"parts of the day in which you switch it off">(),
                        .silent = said<"never switched off">(),
                        .on_screen = {.label = said<"Switched off">(), .silent = said<"never">()}},
                       list_of(SpanForm())));
}

// Beyond its rating.
Keys<Inverter> beyond_its_rating() {
    return keys_of(
        key<&Inverter::overload>(
            {.name = "overload",
             .means =
                 said<"how long it holds what lies between the continuous rating and the surge">(),
             .silent = said<"given by surge and surge_lasts alone">()},
            list_of(TableForm<HeldOverload>(), 16)),
        key<&Inverter::when_overloaded>(
            {.name = "when_overloaded",
             .means = said<"what it does when more is asked of it than it gives">(),
             .silent = "trips"},
            one_of<WhenOverloaded>(
                {{"trips", WhenOverloaded::trips, said<"it switches off">()},
                 {"folds_back", WhenOverloaded::folds_back, said<"it gives less power">()},
                 {"sags", WhenOverloaded::sags, said<"it gives a lower voltage">()}})));
}

// How hot it is, and what wakes it.
Keys<Inverter> its_case_and_search_mode() {
    return keys_of(
        key<&Inverter::case_temperature>(
            {.name = "case_temperature",
             .means = said<"how hot its own case gets">(),
             .silent = said<"at most 40 degC">()},
            from_to(units::celsius(-40.0), units::celsius(120.0), "45 degC")),
        key<&Inverter::search_threshold>({.name = "search_threshold",
                                          .means = said<"in search mode, the load that wakes it">(),
                                          .silent = said<"no search mode: always on">()},
                                         from_to(0.1 * units::watt, 1000.0 * units::watt, "20 W")));
}

}  // namespace

template <>
const Description<Inverter>& describe<Inverter>() {
    static const Description<Inverter> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(power_it_gives(), power_it_uses(), battery_voltages(), what_it_puts_out(),
                       how_it_is_joined(), beyond_its_rating(), its_case_and_search_mode()),
        .check = check_inverter};
    return description;
}

}  // namespace scenario
