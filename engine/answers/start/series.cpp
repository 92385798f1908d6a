#include "answers/start/series.hpp"

#include "answers/shown.hpp"
#include "answers/start/words.hpp"

namespace answers {

using starting::LoadStart;
using starting::StartPlan;
using words::Said;
using words::said;

namespace {

using Numbers = std::vector<double>;
using Words = std::vector<Said>;

Series utilisation_table(const StartPlan& plan) {
    Words loads;
    Words constraints;
    Words verdicts;
    Numbers low;
    Numbers likely;
    Numbers high;
    const auto add = [&](const Said& name, const starting::Judgement& judged) {
        for (const auto& use : judged.used) {
            loads.push_back(name);
            constraints.emplace_back(starting::in_words(use.constraint));
            low.push_back(100.0 * use.used.low().value());
            likely.push_back(100.0 * use.used.likely().value());
            high.push_back(100.0 * use.used.high().value());
            verdicts.push_back(plain(judged.verdict));
        }
    };
    for (const auto& start : plan.loads)
        add(said<"{load}">(start.name), start.judged);
    if (plan.together) add(said<"all motors at once">(), *plan.together);
    return {.name = "utilisation",
            .title = said<"Share of each limit used">(),
            .columns = {{"load", said<"load">(), "", loads},
                        {"constraint", said<"limit">(), "", constraints},
                        {"low", said<"at least">(), "%", low},
                        {"likely", said<"likely">(), "%", likely},
                        {"high", said<"at most">(), "%", high},
                        {"verdict", said<"verdict">(), "", verdicts}}};
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
            .title = said<"How the {load} comes up, most likely">(start.name),
            .columns = {
                {"time", said<"after">(), "s", time},
                {"speed", said<"speed">(), "%", speed},
                {"current", said<"current of the motor">(), "A", current},
                {"voltage", said<"voltage at the motor">(), "V", voltage},
                {"apparent_power", said<"asked of the inverter">(), "V.A", apparent},
                {"dc_voltage", said<"voltage at the inverter's terminals">(), "V", direct_voltage},
                {"dc_current", said<"current of all packs">(), "A", direct_current}}};
}

class Rows {
  public:
    explicit Rows(Said section) : section_(std::move(section)) {}

    // The three ends of what is worked out.
    template <class Written>
    void range(const Said& what, const units::Ends<Written>& ends, const char* formula,
               const Said& source = {}) {
        const auto range = units::spanning(ends);
        const auto as_shown = [](Written quantity) {
            if constexpr (std::is_same_v<Written, units::Duration>) {
                return shown_in_seconds(quantity);
            } else {
                return shown(quantity);
            }
        };
        add(said<"{what}, at least">(what), as_shown(range.low()), formula, source);
        add(said<"{what}, likely">(what), as_shown(range.likely()), formula, source);
        add(said<"{what}, at most">(what), as_shown(range.high()), formula, source);
    }
    void add(Said what, Quantity value, const char* formula, Said source) {
        rows_.push_back({section_, std::move(what), std::move(value), formula, std::move(source)});
    }
    [[nodiscard]] std::vector<WorkingRow> take() { return std::move(rows_); }

  private:
    Said section_;
    std::vector<WorkingRow> rows_;
};

// What the motor asks of the inverter.
void add_alternating(Rows& rows, const LoadStart& start) {
    const motor::Demand& low = start.demand.low;
    const motor::Demand& likely = start.demand.likely;
    const motor::Demand& high = start.demand.high;
    rows.range(said<"locked-rotor current at the unit's voltage">(),
               units::Ends<units::Current>{low.current, likely.current, high.current},
               "motor method.md (1)", said<"see assumptions for the evidence">());
    rows.range(said<"locked-rotor apparent power">(),
               units::Ends<units::ApparentPower>{low.apparent, likely.apparent, high.apparent},
               "motor method.md (1)");
    rows.range(said<"with all that is on besides">(), start.judged.draw.apparent,
               "starting method.md (1)");
    rows.range(said<"time to speed">(), start.judged.draw.time, "motor method.md (10)",
               said<"longest time of its kind at the high end">());
}

std::vector<WorkingRow> working_of(const LoadStart& start) {
    Rows rows(said<"Start of the {load}">(start.name));
    const auto& judged = start.judged;
    if (start.on_the_bus) {
        rows.range(said<"current while it starts">(), judged.draw.direct_current,
                   "motor method.md (15)", said<"its rated current">());
    } else {
        add_alternating(rows, start);
    }
    rows.range(said<"asked of the packs">(), judged.draw.direct_power, "inverter method.md (1)");
    rows.add(said<"rested voltage of the packs">(), shown(judged.emf, 4), "starting method.md (2)",
             said<"charge and temperature as they stand">());
    rows.range(said<"voltage at the inverter">(), judged.voltage, "starting method.md (3)");
    rows.range(said<"current of all packs">(), judged.current, "starting method.md (3)");
    rows.range(said<"current of the pack nearest its limit">(), judged.pack_current,
               "starting method.md (4)");
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
