#include "outage/clock/work.hpp"

#include <algorithm>
#include <cmath>

namespace outage {

namespace {

using namespace units;

// Steps that one question may take in all its weathers: some seconds, measured on two cores of an
// x86-64 machine at 0.5 us a step.
constexpr double most_steps = 2e6;

// A step of the bank for each further kind of pack, in steps of alike ones.
// tests/bench/unlike_packs
constexpr double a_further_kind = 0.35;

// A current that is passed on takes the step several times: the power it makes is looked for.
bool passes_current(const Ready& ready) {
    return std::ranges::any_of(ready.sun[static_cast<std::size_t>(End::likely)],
                               [](const SunChange& sun) { return sun.passes > Current{}; });
}

}  // namespace

double steps_of_a_run(const Ready& ready) {
    constexpr auto likely = static_cast<std::size_t>(End::likely);
    const auto& unit = ready.units[likely];
    const double changes = static_cast<double>(ready.steps[likely].size() +
                                               ready.sun[likely].size() + unit.days.size() + 1);
    const auto further = static_cast<double>(unit.others.size());
    constexpr double trials = 4.0;
    return (passes_current(ready) ? trials : 1.0) * changes *
           (1.0 + (further > 0.0 ? 1.0 + a_further_kind * further : 0.0));
}

double member_steps_of_a_run(const Ready& ready) {
    // measured over outages of 20 and 30 days
    constexpr double of_two_wells = 2.0;
    constexpr double of_a_current = 1.5;  // beyond its trials, in which the wells are in already
    const auto& unit = ready.units[static_cast<std::size_t>(End::likely)];
    const auto two_wells = [](const Bank& bank) {
        return bank.setup.kinetics.available < Share(1.0);
    };
    double of_a_step = 1.0;
    if (passes_current(ready))
        of_a_step = of_a_current;
    else if (two_wells(unit.bank) || std::ranges::any_of(unit.others, two_wells))
        of_a_step = of_two_wells;
    return of_a_step * steps_of_a_run(ready);
}

Duration interval_of(Duration lasts) {
    return lasts > 10.0 * day ? 1.0 * hour : 15.0 * minute;
}

int weathers_within_reach(const Ready& ready, int wanted, int fewest, double runs) {
    const double reached = most_steps / (steps_of_a_run(ready) * runs);
    return std::min(wanted, std::max(fewest, static_cast<int>(std::min(1e9, reached))));
}

}  // namespace outage
