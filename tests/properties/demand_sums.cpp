// What holds for every set of loads.
#include <algorithm>
#include <random>

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "demand/demand.hpp"
#include "outage/told/load_uses.hpp"

namespace {

using demand::Case;
using demand::DemandStep;
using scenario::Outlet;
using units::day;
using units::Duration;
using units::Energy;
using units::minute;
using units::watt;

Duration minutes(int count) {
    return static_cast<double>(count) * minute;
}

Duration seconds(int count) {
    return static_cast<double>(count) * units::second;
}

units::DailySpan any_hours() {
    const int from = *rc::gen::inRange(0, 1440);
    const int length = *rc::gen::inRange(1, 1440);
    return {.from = minutes(from), .until = minutes((from + length) % 1440)};
}

scenario::Load any_load() {
    scenario::Load load;
    load.name = *rc::gen::container<std::string>(6, rc::gen::inRange('a', 'z'));
    load.from = *rc::gen::element(Outlet::ac, Outlet::twelve_volt, Outlet::usb);
    load.draw = scenario::StatedPower{0.1 * *rc::gen::inRange(0, 20'000) * watt};
    load.power_factor = units::PowerFactor(0.01 * *rc::gen::inRange(50, 101));
    load.count = *rc::gen::inRange(1, 4);
    if (*rc::gen::arbitrary<bool>()) {
        const int every = *rc::gen::inRange(2, 7200);
        load.runs =
            scenario::DutyCycle{seconds(*rc::gen::inRange(1, every + 1)), seconds(every), {}};
    }
    for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
        load.hours.push_back(any_hours());
    }
    for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
        load.days.push_back(*rc::gen::inRange(1, 6));
    }
    return load;
}

scenario::Scenario any_scenario() {
    scenario::Scenario scenario;
    scenario.outage.starts = units::LocalTime(20'000.0 * day + minutes(*rc::gen::inRange(0, 1440)));
    scenario.outage.lasts = minutes(*rc::gen::inRange(1, 5 * 1440));
    scenario.inverter.emplace().continuous = 2400.0 * watt;
    for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
        scenario.inverter->off.push_back(any_hours());
    }
    for (int i = *rc::gen::inRange(1, 9); i > 0; --i) {
        scenario.loads.push_back(any_load());
    }
    return scenario;
}

std::vector<DemandStep> steps(const scenario::Scenario& scenario, Case which = Case::likely) {
    const auto planned = demand::plan_demand(scenario);
    RC_PRE(planned.has_value());
    return demand::demand_steps(*planned, which);
}

const DemandStep& step_at(const std::vector<DemandStep>& all, Duration time) {
    return *std::prev(std::ranges::upper_bound(all, time, {}, &DemandStep::from));
}

TEST(demand_properties, the_steps_hold_the_energy_of_the_loads) {
    EXPECT_TRUE(rc::check([] {
        const scenario::Scenario scenario = any_scenario();
        const auto planned = demand::plan_demand(scenario);
        RC_PRE(planned.has_value());
        const demand::Demand& demand = *planned;
        const std::vector<DemandStep> all = demand::demand_steps(demand, Case::likely);
        Energy of_steps{};
        for (std::size_t i = 0; i < all.size(); ++i) {
            const Duration until = i + 1 < all.size() ? all[i + 1].from : demand.lasts;
            of_steps += (all[i].ac + all[i].direct_useful) * (until - all[i].from);
        }
        Energy of_loads{};
        for (const outage::LoadUse& use : outage::load_uses(demand)) {
            of_loads += use.wanted;
        }
        RC_ASSERT(abs(of_steps - of_loads) <= 1e-12 * of_loads);
    }));
}

TEST(demand_properties, steps_ascend_from_nought_and_differ) {
    EXPECT_TRUE(rc::check([] {
        const scenario::Scenario scenario = any_scenario();
        const std::vector<DemandStep> all = steps(scenario);
        RC_ASSERT(all.front().from == Duration());
        RC_ASSERT(all.back().from < scenario.outage.lasts);
        for (std::size_t i = 1; i < all.size(); ++i) {
            RC_ASSERT(all[i - 1].from < all[i].from);
            DemandStep moved = all[i];
            moved.from = all[i - 1].from;
            RC_ASSERT(!(moved == all[i - 1]));
        }
    }));
}

TEST(demand_properties, the_order_of_the_loads_does_not_matter) {
    EXPECT_TRUE(rc::check([] {
        scenario::Scenario scenario = any_scenario();
        const std::vector<DemandStep> before = steps(scenario);
        std::shuffle(scenario.loads.begin(), scenario.loads.end(),
                     std::minstd_rand(*rc::gen::arbitrary<unsigned>()));
        RC_ASSERT(steps(scenario) == before);
    }));
}

TEST(demand_properties, another_load_never_lowers_a_step) {
    EXPECT_TRUE(rc::check([] {
        scenario::Scenario scenario = any_scenario();
        const std::vector<DemandStep> before = steps(scenario);
        scenario.loads.push_back(any_load());
        const std::vector<DemandStep> after = steps(scenario);
        for (const std::vector<DemandStep>& moments : {before, after}) {
            for (const DemandStep& moment : moments) {
                const DemandStep& less = step_at(before, moment.from);
                const DemandStep& more = step_at(after, moment.from);
                RC_ASSERT(more.ac >= less.ac);
                RC_ASSERT(more.direct >= less.direct);
                RC_ASSERT(more.direct_useful >= less.direct_useful);
                RC_ASSERT(more.ac_reactive >= less.ac_reactive);
                RC_ASSERT(more.inverter_on == less.inverter_on);
            }
        }
    }));
}

TEST(demand_properties, the_frugal_case_never_draws_more_than_the_hungry_one) {
    EXPECT_TRUE(rc::check([] {
        const scenario::Scenario scenario = any_scenario();
        const std::vector<DemandStep> low = steps(scenario, Case::low);
        const std::vector<DemandStep> likely = steps(scenario, Case::likely);
        const std::vector<DemandStep> high = steps(scenario, Case::high);
        for (const DemandStep& step : likely) {
            RC_ASSERT(step_at(low, step.from).ac <= step.ac);
            RC_ASSERT(step.ac <= step_at(high, step.from).ac);
            RC_ASSERT(step_at(low, step.from).direct <= step.direct);
            RC_ASSERT(step.direct <= step_at(high, step.from).direct);
        }
    }));
}

}  // namespace
