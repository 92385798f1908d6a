// Demand against sums worked apart from this program, and a published meter log.
#include <gtest/gtest.h>

#include "demand/demand.hpp"
#include "inverter/model.hpp"
#include "outage/told/load_uses.hpp"

namespace {

using scenario::Outlet;
using units::day;
using units::hour;
using units::watt;
using units::watt_hour;

scenario::Load metered(std::string name, double energy, double hours) {
    scenario::Load load;
    load.name = std::move(name);
    load.draw = scenario::MeteredUse{energy * watt_hour, hours * hour};
    return load;
}

scenario::Scenario with(scenario::Load load, double days) {
    scenario::Scenario scenario;
    scenario.outage.starts = units::LocalTime(20'000.0 * day + 18.0 * hour);
    scenario.outage.lasts = days * day;
    // Direct current in = alternating current / 0.90 + 18 W: the line's own points at half and
    // full.
    scenario.inverter.emplace().continuous = 3000.0 * watt;
    scenario.inverter->idle = 18.0 * watt;
    for (const double share : {0.5, 1.0}) {
        const double power = share * 3000.0;
        scenario.inverter->efficiency.push_back(
            {units::Share(share), units::Efficiency(power / (power / 0.90 + 18.0))});
    }
    scenario.loads = {std::move(load)};
    return scenario;
}

// Drawn from the bus over the hours in which the load runs, idle included.
units::Energy from_the_bus(const scenario::Scenario& scenario) {
    scenario::Assumptions assumed;
    const inverter::Model model =
        inverter::model_of(*scenario.inverter, 12.8 * units::volt, assumed).value();
    const demand::Demand demand = demand::plan_demand(scenario).value();
    const auto steps = demand::demand_steps(demand, demand::Case::likely);
    units::Energy sum{};
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const units::Duration until = i + 1 < steps.size() ? steps[i + 1].from : demand.lasts;
        units::Power power = steps[i].direct;
        if (steps[i].ac > 0.0 * watt) {
            power += inverter::dc_power(model, steps[i].ac,
                                        inverter::apparent(steps[i].ac, steps[i].ac_reactive));
        }
        sum += power * (until - steps[i].from);
    }
    return sum;
}

// 1.9 kWh over 31 h: 61.29 W; /0.90 = 68.10; + 18 = 86.10 W. Worked by hand; tolerance: the digits.
TEST(published_demand, a_metered_refrigerator_takes_what_the_sum_says) {
    const scenario::Scenario scenario = with(metered("refrigerator", 1900.0, 31.0), 1.0);
    const demand::Demand demand = demand::plan_demand(scenario).value();
    EXPECT_NEAR(demand.loads[0].power.likely / watt, 61.29, 0.005);
    EXPECT_NEAR(from_the_bus(scenario) / (24.0 * watt_hour), 86.10, 0.005);
    EXPECT_NEAR(from_the_bus(with(metered("refrigerator", 1900.0, 31.0), 3.0)) / watt_hour, 6199.0,
                0.5);
}

// The inverter off for 18 of 24 h saves 18 x 18 = 324 Wh of idle, and 32 % of the refrigerator's
// own draw only, not 75 %: y = 1 - e^(-18/25) = 0.51325; at three times the mean's power the cold is
// back after 25 ln(1 + 0.51325/2) = 5.711 h; 61.29 (3 5.711 + 0.289) = 1,067.8 Wh; /0.90 + 6 x 18.
TEST(published_demand, hours_off_save_the_idle_of_those_hours) {
    scenario::Scenario scenario = with(metered("refrigerator", 1900.0, 31.0), 1.0);
    const double always = from_the_bus(scenario) / watt_hour;
    EXPECT_NEAR(always, 2066.0, 0.6);
    scenario.inverter->off = {{.from = 18.0 * hour, .until = 12.0 * hour}};
    EXPECT_NEAR(from_the_bus(scenario) / watt_hour, 1294.5, 0.5);
}

// Eight hours of breathing support: with heat on the inverter (76/0.9 + 18) x 8 = 820 Wh; without
// (27.8 + 18) x 8 = 366; from 12 V at 95 % 25/0.95 x 8 = 211, with heat 640. Worked by hand;
// tolerance: rounded to a watt-hour.
TEST(published_demand, a_night_of_breathing_support_takes_what_the_sum_says) {
    const auto night = [](double power, Outlet from) {
        scenario::Load load;
        load.name = "CPAP";
        load.draw = scenario::StatedPower{power * watt};
        load.hours = {{.from = 22.0 * hour, .until = 6.0 * hour}};
        load.from = from;
        if (from == Outlet::twelve_volt) {
            load.converter_efficiency = units::Efficiency(0.95);
        }
        return from_the_bus(with(load, 3.0)) / (3.0 * watt_hour);
    };
    EXPECT_NEAR(night(76.0, Outlet::ac), 820.0, 0.6);
    EXPECT_NEAR(night(25.0, Outlet::ac), 366.0, 0.6);
    EXPECT_NEAR(night(25.0, Outlet::twelve_volt), 211.0, 0.6);
    EXPECT_NEAR(night(76.0, Outlet::twelve_volt), 640.0, 0.6);
}

// A published plug-in meter log: 0.98 kWh in 31.28 h is 0.752 kWh a day. Tolerance: the digits.
TEST(published_demand, a_published_meter_log_gives_its_daily_use) {
    const scenario::Scenario scenario = with(metered("refrigerator", 980.0, 31.28), 4.0);
    const auto uses = outage::load_uses(demand::plan_demand(scenario).value());
    EXPECT_NEAR(uses[0].per_day / (1000.0 * watt_hour), 0.752, 0.0005);
    EXPECT_EQ(uses[0].from_what, "metered 980 Wh over 31.3 h");
}

// A yearly label counts 8,760 h: 450 kWh is 51.4 W on average [DOE appliances]; as printed in a room
// of 24.54 degC, 0.9206 of it at 22 degC [ICC 301].
TEST(published_demand, a_yearly_label_is_a_mean) {
    scenario::Load load;
    load.name = "refrigerator";
    load.draw = scenario::YearlyLabel{450'000.0 * watt_hour / (8760.0 * hour)};
    load.runs = scenario::DutyCycle{900.0 * units::second, 2700.0 * units::second, {}};
    const auto uses = outage::load_uses(demand::plan_demand(with(load, 30.0)).value());
    EXPECT_NEAR(uses[0].running / watt, 3.0 * 51.37, 0.01);
    EXPECT_NEAR(uses[0].per_day / watt_hour, 0.9206 * 1232.9, 0.1);
    load.room = units::celsius(24.54);
    const auto as_printed = outage::load_uses(demand::plan_demand(with(load, 30.0)).value());
    EXPECT_NEAR(as_printed[0].per_day / watt_hour, 1232.9, 0.1);
}

}  // namespace
