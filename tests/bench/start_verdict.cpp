// One verdict, and a long outage with and without the check of every start.
#include <chrono>
#include <cstdio>

#include "motor/code_letter.hpp"
#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "questions/shared/outage_starts.hpp"
#include "scenario/file/read.hpp"
#include "starting/settle.hpp"

namespace {

using namespace starting;
using units::exactly;
using units::volt;
using units::watt;

template <class Work>
double milliseconds(int times, Work work) {
    double best = 1e300;
    for (int i = 0; i < times; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> spent =
            std::chrono::steady_clock::now() - begin;
        best = std::min(best, spent.count());
    }
    return best;
}

StartingMotor motor_of(double power, const InverterSide& side) {
    const scenario::Load load{
        .name = "motor",
        .motor = scenario::Motor{.kind = scenario::MotorKind::capacitor_start,
                                 .horsepower = 0.4 * power / 746.0 * motor::horsepower}};
    return *starting_motor(load, "load[0]", {.real = exactly(power * watt)}, side);
}

double verdict_milliseconds() {
    const auto side =
        *inverter_side({.continuous = 3000.0 * watt, .surge = 6000.0 * watt}, 12.8 * volt);
    const DirectSource source{
        .branches = {{.emf = 13.2 * volt, .path = exactly(0.008 * units::ohm), .count = 4}},
        .shared = 0.001 * units::ohm};
    int verdicts = 0;
    const double spent = milliseconds(200, [&] {
        // Six loads and three motors, from their descriptions to the verdict.
        Background background;
        for (int i = 0; i < 6; ++i)
            background = background + background_of({.real = exactly(50.0 * (i + 1) * watt)});
        const std::vector<StartingMotor> motors{motor_of(200.0, side), motor_of(350.0, side),
                                                motor_of(500.0, side)};
        verdicts += static_cast<int>(judge_start(motors, background, side, source).verdict);
    });
    return verdicts >= 0 ? spent : 0.0;
}

constexpr const char* two_weeks = R"(
format = 1
title = "Two weeks"
[outage]
starts = 2026-06-01T06:00:00
lasts = "14 d"
[place]
name = "Chicago IL"
[[pack]]
name = "main"
count = 6
chemistry = "lifepo4"
capacity = "100 Ah"
[inverter]
continuous = "3000 W"
surge = "6000 W"
[[panel]]
count = 6
power = "100 W"
tilt = "35 deg"
azimuth = "180 deg"
[[load]]
name = "refrigerator"
like = "refrigerator"
[[load]]
name = "freezer"
like = "chest freezer"
[[load]]
name = "sump pump"
like = "sump pump 1/3 hp"
runs = {on = "1 min", every = "40 min"}
[[load]]
name = "modem"
power = "14 W"
)";

}  // namespace

int main() {
    std::printf("verdict, 6 loads, 3 motors  %8.3f ms\n", verdict_milliseconds());
    const auto read = scenario::read_scenario(two_weeks, "two weeks", {});
    if (!read) return 1;
    const auto ready = outage::make_ready(read->scenario);
    if (!ready) return 1;
    const auto plan = outage::plan_outage(*ready);
    const double alone = milliseconds(15, [&] {
        auto without = *outage::make_ready(read->scenario);
        for (auto& load : without.demand.loads)
            load.has_motor = false;
        return outage::plan_outage(without).starts.size();
    });
    const double checked = milliseconds(15, [&] {
        const auto made = outage::plan_outage(*outage::make_ready(read->scenario));
        return questions::starts_of_outage(read->scenario, made).stories.size();
    });
    std::printf("14 days, starts unchecked   %8.3f ms   1\n", alone);
    std::printf("14 days, %4zu starts checked %7.3f ms   %.2f\n", plan.starts.size(), checked,
                checked / alone);
}
