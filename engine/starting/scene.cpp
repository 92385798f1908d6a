#include <algorithm>

#include "scenario/file/set_aside.hpp"
#include "starting/plan.hpp"
#include "units/said.hpp"

namespace starting {

using namespace units;
using words::said;

namespace {

template <class T>
void append(std::vector<T>& to, const std::vector<T>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

template <class T>
std::optional<T> or_errors(Result<T> result, Errors& errors) {
    if (result) return std::move(*result);
    append(errors, result.error());
    return std::nullopt;
}

// The spans of hours meet; no hours are all hours.
bool hours_meet(const std::vector<DailySpan>& a, const std::vector<DailySpan>& b) {
    if (a.empty() || b.empty()) return true;
    for (const auto& one : a)
        for (const auto& other : b)
            if (holds(one, other.from) || holds(other, one.from)) return true;
    return false;
}

bool days_meet(const std::vector<int>& a, const std::vector<int>& b) {
    return a.empty() || b.empty() ||
           std::ranges::any_of(a, [&](int day) { return std::ranges::count(b, day) > 0; });
}

bool never_off(const scenario::Load& load) {
    return !load.runs && load.hours.empty() && load.days.empty();
}

bool is_voltage_refusal(const Error& error) {
    return error.where.ends_with(".motor.voltage");
}

void add_motor(const scenario::Load& load, const LoadRun& run, std::size_t index, StartScene& scene,
               Errors& errors) {
    const auto where = scenario::key_of(load, index);
    if (load.motor->kind == scenario::MotorKind::direct_current) {
        if (auto found = or_errors(direct_motor(load, where, run.draw, scene.bank.nominal), errors))
            scene.direct[index] = std::move(found);
        return;
    }
    if (load.from != scenario::Outlet::ac || !scene.inverter) {
        if (load.from != scenario::Outlet::ac)
            errors.push_back({.where = where + ".motor.kind",
                              .found = said<"a motor for alternating current on a 12 V outlet">(),
                              .remedy = said<"give {kind}, or {outlet}">(
                                  "kind = \"direct_current\"", "from = \"ac\"")});
        return;
    }
    auto motor = starting_motor(load, where, run.draw, *scene.inverter, run.drives);
    if (motor) {
        append(scene.assumptions, motor->assumptions);
        append(scene.findings, motor->findings);
        scene.motors[index] = *std::move(motor);
        return;
    }
    for (const auto& error : motor.error()) {
        if (is_voltage_refusal(error)) {
            scene.refused[index] = error;
        } else {
            errors.push_back(error);
        }
    }
}

// What it draws beside a start: on the bus, or behind the inverter.
Background item_of(const scenario::Load& load, const LoadRun& run) {
    if (load.from == scenario::Outlet::ac) return background_of(run.draw);
    Background item;
    item.direct = each([&](Power real) -> Power { return real / run.converter.value(); },
                       more_is_harder(run.draw.real));
    return item;
}

void add_load(const scenario::Load& load, const LoadRun& run, std::size_t index, StartScene& scene,
              Errors& errors) {
    scene.items.push_back(item_of(load, run));
    if (load.motor) add_motor(load, run, index, scene, errors);
    if (load.motor && load.from == scenario::Outlet::ac && !scene.inverter &&
        load.motor->kind != scenario::MotorKind::direct_current)
        errors.push_back({.where = "inverter",
                          .found = said<"{load} needs one, and there is none">(load.name),
                          .remedy = said<"add an [inverter] table with its continuous rating">()});
    if (scene.direct[index]) append(scene.assumptions, scene.direct[index]->assumptions);
}

}  // namespace

bool may_run_together(const scenario::Load& a, const scenario::Load& b) {
    // Hours out of the list of appliances are a guess: at others they may meet.
    const bool guessed = a.usual_hours || b.usual_hours;
    return (guessed || hours_meet(a.hours, b.hours)) && days_meet(a.days, b.days);
}

Result<StartScene> start_scene(const scenario::Scenario& scenario, std::span<const LoadRun> runs) {
    StartScene scene;
    Errors errors;
    scene.temperature = unit::usual_warmth(scenario).packs;
    if (!scenario.outage.battery_temperature)
        scene.assumptions.push_back({"outage.battery_temperature",
                                     said<"the packs are at {temperature}">(scene.temperature),
                                     said<"common practice, no source">()});
    auto built = or_errors(unit::built(scenario, {.packs = scene.temperature}), errors);
    if (!built) return fail(std::move(errors));
    auto bank = or_errors(bank_of(*built), errors);
    if (!bank) return fail(std::move(errors));
    if (!built->inverter_refused.empty()) return fail(built->inverter_refused);
    scene.bank = *std::move(bank);
    append(scene.assumptions, scene.bank.assumptions);
    append(scene.findings, built->findings);
    if (built->inverter) {
        scene.inverter = inverter_side(*scenario.inverter, *built->inverter, scene.bank.nominal,
                                       built->of_inverter);
        append(scene.assumptions, scene.inverter->assumptions);
    }
    scene.built = *std::move(built);
    const auto count = scenario.loads.size();
    scene.motors.resize(count);
    scene.direct.resize(count);
    scene.refused.resize(count);
    for (std::size_t i = 0; i < count; ++i)
        add_load(scenario.loads[i], runs[i], i, scene, errors);
    if (!errors.empty()) return fail(std::move(errors));
    return scene;
}

Background beside(const scenario::Scenario& scenario, const StartScene& scene, std::size_t load) {
    Background sum;
    const auto& starting = scenario.loads[load];
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        const auto& other = scenario.loads[i];
        const int items = other.count - (i == load ? 1 : 0);
        if (items < 1 || scene.refused[i] || !may_run_together(starting, other)) continue;
        for (int item = 0; item < items; ++item) {
            Background one = scene.items[i];
            if (!never_off(other)) {
                one.real.low = {};
                one.reactive.low = {};
                one.direct.low = {};
            }
            sum = sum + one;
        }
    }
    return sum;
}

}  // namespace starting
