// The keys of [inverter]. Limits without a source are common practice: what no portable unit
// reaches, so that a slip of the pen is told.
#include "scenario/tables.hpp"
#include "units/number.hpp"

namespace scenario {
namespace {

// What is sold as a modified sine is a square wave with a pause.
constexpr std::string_view stepped = "write quasi_square";

// A multiple of the continuous rating: a share that goes beyond the whole.
struct MultipleForm {
    using Value = units::Share;
    static constexpr double most = 10.0;

    [[nodiscard]] std::string example() const { return "\"150 %\""; }
    [[nodiscard]] std::string limits() const { return "more than 0 %, at most 1000 %"; }
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
            reading.refuse(spot, fmt::format("found {}", *text),
                           "give a part of the continuous rating, such as \"150 %\" or \"1.5\"");
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
        const auto found = [&](std::string_view what, const char* remedy) {
            reading.refuse(spot.at(*points, "overload"),
                           fmt::format("found {:.0f} % {}", 100.0 * point.at.value(), what),
                           remedy);
        };
        if (point.at <= units::Share(1.0)) {
            found("of the rating, which is no overload", "give points above 100 %");
        } else if (i > 0 && (point.at <= inverter.overload[i - 1].at ||
                             point.holds > inverter.overload[i - 1].holds)) {
            found("after a point that is no lighter or held for no longer",
                  "give the points in order of rising load and falling time");
        }
    }
}

void check_inverter(Reading& reading, const Spot& spot, const Inverter& inverter) {
    const Node& node = *spot.node;
    const bool surge_read = inverter.surge && inverter.continuous > units::Power();
    if (surge_read && *inverter.surge < inverter.continuous) {
        reading.refuse(
            spot.at(*node.find("surge"), "surge"),
            fmt::format("found {}, which is less than the continuous rating, {}",
                        units::print(*inverter.surge), units::print(inverter.continuous)),
            "give the short-time rating, or take the key out");
    }
    if (inverter.restart_voltage && inverter.cutoff_voltage &&
        *inverter.restart_voltage <= *inverter.cutoff_voltage) {
        reading.refuse(spot.at(*node.find("restart_voltage"), "restart_voltage"),
                       fmt::format("found {}, which is not above the cutoff voltage, {}",
                                   units::print(*inverter.restart_voltage),
                                   units::print(*inverter.cutoff_voltage)),
                       "give the voltage at which it switches on again, such as \"12.5 V\"");
    }
    check_overload(reading, spot, inverter);
    const Node* points = node.find("efficiency");
    for (std::size_t i = 1; i < inverter.efficiency.size(); ++i) {
        if (inverter.efficiency[i].at <= inverter.efficiency[i - 1].at) {
            reading.refuse(spot.at(*points, "efficiency"),
                           fmt::format("found {} after {}", units::print(inverter.efficiency[i].at),
                                       units::print(inverter.efficiency[i - 1].at)),
                           "give the points in order of rising load, each once");
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
            key<&EfficiencyPoint::at>({.name = "at",
                                       .means = "part of the continuous rating that is drawn",
                                       .demand = Demand::required},
                                      from_to(units::Share(0.001), units::Share(1.0), "50 %")),
            key<&EfficiencyPoint::is>(
                {.name = "is", .means = "efficiency there", .demand = Demand::required},
                from_to(units::Efficiency(0.05), units::Efficiency(1.0), "0.90")))};
    return description;
}

template <>
const Description<HeldOverload>& describe<HeldOverload>() {
    static const Description<HeldOverload> description = {
        .silent = "",
        .keys = keys_of(
            key<&HeldOverload::at>({.name = "at",
                                    .means = "multiple of the continuous rating, above 100 %",
                                    .demand = Demand::required},
                                   MultipleForm()),
            key<&HeldOverload::holds>(
                {.name = "holds", .means = "how long it holds that", .demand = Demand::required},
                from_to(0.001 * units::second, 1.0 * units::day, "10 s")))};
    return description;
}

template <>
const Description<Inverter>& describe<Inverter>() {
    static const Description<Inverter> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&Inverter::continuous>(
                {.name = "continuous",
                 .means = "power it gives without end",
                 .demand = Demand::required,
                 .on_screen = {.label = on_screen("Power without end"), .units = {"W", "kW"}}},
                from_to(1.0 * units::watt, 100'000.0 * units::watt, "2400 W")),
            key<&Inverter::continuous_apparent>(
                {.name = "continuous_apparent",
                 .means = "apparent power it gives without end",
                 .on_screen = {.label = on_screen("Apparent power without end"),
                               .units = {"VA", "kVA"},
                               .silent = on_screen("not told")}},
                from_to(1.0 * units::volt_ampere, 100'000.0 * units::volt_ampere, "3000 VA")),
            key<&Inverter::surge>({.name = "surge",
                                   .means = "power it gives for a moment",
                                   .on_screen = {.label = on_screen("Power for a moment"),
                                                 .units = {"W", "kW"},
                                                 .silent = on_screen("as assumed")}},
                                  from_to(1.0 * units::watt, 200'000.0 * units::watt, "4800 W")),
            key<&Inverter::surge_lasts>({.name = "surge_lasts",
                                         .means = "how long that moment is",
                                         .on_screen = {.label = on_screen("That moment lasts"),
                                                       .units = {"s"},
                                                       .silent = on_screen("not known")}},
                                        from_to(0.001 * units::second, 1.0 * units::hour, "1 s")),
            key<&Inverter::idle>({.name = "idle",
                                  .means = "what it draws with nothing plugged in",
                                  .on_screen = {.label = on_screen("Draw with nothing plugged in"),
                                                .units = {"W"},
                                                .silent = on_screen("as assumed")}},
                                 from_to(units::Power(), 5000.0 * units::watt, "18 W")),
            key<&Inverter::efficiency>(
                {.name = "efficiency", .means = "efficiency at parts of the continuous rating"},
                list_of(TableForm<EfficiencyPoint>(), 64)),
            key<&Inverter::cutoff_voltage>(
                {.name = "cutoff_voltage",
                 .means = "battery voltage below which it switches off",
                 .on_screen = {.label = on_screen("Switches off below"),
                               .units = {"V"},
                               .silent = on_screen("as assumed")}},
                from_to(1.0 * units::volt, 100.0 * units::volt, "10.5 V")),
            key<&Inverter::restart_voltage>(
                {.name = "restart_voltage",
                 .means = "battery voltage above which it may switch on again",
                 .on_screen = {.label = on_screen("Switches on again above"),
                               .units = {"V"},
                               .silent = on_screen("as assumed")}},
                from_to(1.0 * units::volt, 100.0 * units::volt, "12.5 V")),
            key<&Inverter::restart>({.name = "restart",
                                     .means = "whether it comes back by itself after switching off",
                                     .silent = "by hand"},
                                    one_of<Restart>({{"by hand", Restart::by_hand},
                                                     {"by itself", Restart::by_itself}})),
            key<&Inverter::cutoff_delay>(
                {.name = "cutoff_delay",
                 .means = "how long the voltage must stay low before it switches off",
                 .on_screen = {.label = on_screen("Waits before it switches off"),
                               .units = {"s"},
                               .silent = on_screen("as assumed")}},
                from_to(units::Duration(), 1.0 * units::hour, "5 s")),
            key<&Inverter::output_voltage>(
                {.name = "output_voltage",
                 .means = "voltage of its outlets",
                 .on_screen = {.label = on_screen("Voltage of its outlets"),
                               .units = {"V"},
                               .silent = on_screen("as assumed")}},
                from_to(50.0 * units::volt, 500.0 * units::volt, "120 V")),
            key<&Inverter::waveform>(
                {.name = "waveform",
                 .means = "shape of what it gives",
                 .on_screen = {.label = on_screen("Wave"), .silent = on_screen("as assumed")}},
                one_of<Waveform>({{"sine", Waveform::sine, on_screen("sine")},
                                  {"quasi_square", Waveform::quasi_square, on_screen("stepped")}},
                                 {{"modified sine", stepped},
                                  {"modified sine wave", stepped},
                                  {"modified", stepped},
                                  {"square", stepped},
                                  {"square wave", stepped},
                                  {"MSW", stepped},
                                  {"quasi sine", stepped},
                                  {"PSW", "write sine"},
                                  {"pure", "write sine"},
                                  {"stepped", stepped},
                                  {"pure sine", "write sine"},
                                  {"pure sine wave", "write sine"},
                                  {"true sine", "write sine"},
                                  {"sine wave", "write sine"}})),
            key<&Inverter::cable_resistance>(
                {.name = "cable_resistance",
                 .means = "cables from the bus to the inverter, both conductors"},
                from_to(units::Resistance(), 1.0 * units::ohm, "1 mohm")),
            key<&Inverter::off>(
                {.name = "off",
                 .means = "parts of the day in which you switch it off",
                 .silent = "never switched off",
                 .on_screen = {.label = on_screen("Switched off"), .silent = on_screen("never")}},
                list_of(SpanForm())),
            key<&Inverter::overload>(
                {.name = "overload",
                 .means = "how long it holds what lies between the continuous rating and the surge",
                 .silent = "told by surge and surge_lasts alone"},
                list_of(TableForm<HeldOverload>(), 16)),
            key<&Inverter::when_overloaded>(
                {.name = "when_overloaded",
                 .means = "what it does when more is asked of it than it gives",
                 .silent = "trips"},
                one_of<WhenOverloaded>({{"trips", WhenOverloaded::trips},
                                        {"folds_back", WhenOverloaded::folds_back},
                                        {"sags", WhenOverloaded::sags}})),
            key<&Inverter::case_temperature>(
                {.name = "case_temperature",
                 .means = "how hot its own case gets",
                 .silent = "at most 40 degC"},
                from_to(units::celsius(-40.0), units::celsius(120.0), "45 degC")),
            key<&Inverter::search_threshold>(
                {.name = "search_threshold",
                 .means = "in search mode, the load that wakes it",
                 .silent = "no search mode: always on"},
                from_to(0.1 * units::watt, 1000.0 * units::watt, "20 W"))),
        .check = check_inverter};
    return description;
}

}  // namespace scenario
