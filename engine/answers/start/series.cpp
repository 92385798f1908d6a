#include "answers/start/series.hpp"

#include <fmt/format.h>

#include "answers/shown.hpp"
#include "answers/start/chart.hpp"

namespace answers {

using starting::LoadStart;
using starting::StartPlan;

namespace {

using Numbers = std::vector<double>;
using Words = std::vector<std::string>;

Series utilisation_table(const StartPlan& plan) {
    Words loads;
    Words constraints;
    Words verdicts;
    Numbers low;
    Numbers likely;
    Numbers high;
    const auto add = [&](const std::string& name, const starting::Judgement& judged) {
        for (const auto& use : judged.used) {
            loads.push_back(name);
            constraints.emplace_back(starting::in_words(use.constraint));
            low.push_back(100.0 * use.used.low().value());
            likely.push_back(100.0 * use.used.likely().value());
            high.push_back(100.0 * use.used.high().value());
            verdicts.emplace_back(starting::name_of(judged.verdict));
        }
    };
    for (const auto& start : plan.loads)
        add(start.name, start.judged);
    if (plan.together) add("all motors at once", *plan.together);
    return {.name = "utilisation",
            .title = "Share of each limit used",
            .columns = {{"load", "load", "", loads},
                        {"constraint", "limit", "", constraints},
                        {"low", "at least", "%", low},
                        {"likely", "likely", "%", likely},
                        {"high", "at most", "%", high},
                        {"verdict", "verdict", "", verdicts}}};
}

Series course_table(const LoadStart& start) {
    Numbers time;
    Numbers speed;
    Numbers current;
    Numbers voltage;
    Numbers apparent;
    Numbers direct_voltage;
    Numbers direct_current;
    for (const auto& instant : start.course) {
        time.push_back(instant.motor.time / units::second);
        speed.push_back(100.0 * instant.motor.speed.value());
        current.push_back(instant.motor.current / units::ampere);
        voltage.push_back(instant.motor.voltage / units::volt);
        apparent.push_back(instant.apparent / units::volt_ampere);
        direct_voltage.push_back(instant.direct_voltage / units::volt);
        direct_current.push_back(instant.direct_current / units::ampere);
    }
    return {.name = "course of " + start.name,
            .title = fmt::format("How the {} comes up, most likely", start.name),
            .columns = {{"time", "after", "s", time},
                        {"speed", "speed", "%", speed},
                        {"current", "current of the motor", "A", current},
                        {"voltage", "voltage at the motor", "V", voltage},
                        {"apparent_power", "asked of the inverter", "V.A", apparent},
                        {"dc_voltage", "voltage at the inverter's terminals", "V", direct_voltage},
                        {"dc_current", "current of all packs", "A", direct_current}}};
}

class Rows {
  public:
    explicit Rows(std::string section) : section_(std::move(section)) {}

    template <class Written>
    void range(const std::string& what, const units::Ends<Written>& ends, const char* formula,
               std::string source) {
        const auto range = units::spanning(ends);
        const auto as_shown = [](Written quantity) {
            if constexpr (std::is_same_v<Written, units::Duration>) {
                return shown_in_seconds(quantity);
            } else {
                return shown(quantity);
            }
        };
        add(what + ", at least", as_shown(range.low()), formula, source);
        add(what + ", likely", as_shown(range.likely()), formula, source);
        add(what + ", at most", as_shown(range.high()), formula, source);
    }
    void add(std::string what, Quantity value, const char* formula, std::string source) {
        rows_.push_back({section_, std::move(what), std::move(value), formula, std::move(source)});
    }
    [[nodiscard]] std::vector<WorkingRow> take() { return std::move(rows_); }

  private:
    std::string section_;
    std::vector<WorkingRow> rows_;
};

std::vector<WorkingRow> working_of(const LoadStart& start) {
    Rows rows("Start of the " + start.name);
    const auto& judged = start.judged;
    if (start.on_the_bus) {
        rows.range("current while it starts", judged.draw.direct_current, "motor method.md (15)",
                   "its rated current");
    } else {
        const units::Ends<units::ApparentPower> alone{
            start.demand.low.apparent, start.demand.likely.apparent, start.demand.high.apparent};
        const units::Ends<units::Current> current{
            start.demand.low.current, start.demand.likely.current, start.demand.high.current};
        rows.range("locked-rotor current at the unit's voltage", current, "motor method.md (1)",
                   "see assumptions for the evidence");
        rows.range("locked-rotor apparent power", alone, "motor method.md (1)", "");
        rows.range("with all that is on besides", judged.draw.apparent, "starting method.md (1)",
                   "");
        rows.range("time to speed", judged.draw.time, "motor method.md (10)",
                   "longest time of its kind at the high end");
    }
    rows.range("asked of the packs", judged.draw.direct_power, "inverter method.md (1)", "");
    rows.add("rested voltage of the packs", shown(judged.emf, 4), "starting method.md (2)",
             "charge and temperature as they stand");
    rows.range("voltage at the inverter", judged.voltage, "starting method.md (3)", "");
    rows.range("current of all packs", judged.current, "starting method.md (3)", "");
    rows.range("current of the pack nearest its limit", judged.pack_current,
               "starting method.md (4)", "");
    return rows.take();
}

}  // namespace

std::vector<Series> start_series(const StartPlan& plan) {
    std::vector<Series> series{utilisation_table(plan)};
    for (const auto& start : plan.loads)
        if (!start.course.empty()) series.push_back(course_table(start));
    return series;
}

std::vector<WorkingRow> start_working(const StartPlan& plan) {
    std::vector<WorkingRow> working;
    for (const auto& start : plan.loads) {
        if (start.refused) continue;
        auto rows = working_of(start);
        working.insert(working.end(), rows.begin(), rows.end());
    }
    return working;
}

}  // namespace answers
