#include "demand/findings.hpp"

#include <gtest/gtest.h>

#include "support/planned_loads.hpp"

namespace {

using planned_loads::finding;
using planned_loads::load;
using planned_loads::with;
using scenario::Finding;
using scenario::Severity;
using units::day;
using units::hour;
using units::watt;

scenario::Findings findings(const scenario::Scenario& scenario) {
    scenario::Assumptions assumed;
    std::optional<inverter::Model> model;
    if (scenario.inverter) {
        model = inverter::model_of(*scenario.inverter, 12.8 * units::volt, assumed).value();
    }
    return demand::demand_findings(scenario, demand::plan_demand(scenario).value(), model);
}

void set_motor(scenario::Load& load, scenario::MotorKind kind) {
    load.motor.emplace().kind = kind;
}

TEST(demand_findings, an_ordinary_plan_has_none) {
    EXPECT_TRUE(findings(with({load("refrigerator", 61)})).empty());
}

TEST(demand_findings, a_load_asked_for_while_the_inverter_is_off_is_named_with_its_hours) {
    scenario::Scenario scenario = with({load("router", 50)});
    scenario.inverter->off = {{.from = 23.0 * hour, .until = 6.0 * hour}};
    const scenario::Findings all = findings(scenario);
    const Finding* const found = finding(all, "inverter is switched off");
    ASSERT_TRUE(found);
    EXPECT_EQ(found->severity, Severity::caution);
    EXPECT_EQ(found->where, "load router");
    EXPECT_NE(in_english(found->text).find("14 h"), std::string::npos) << found->text;
    EXPECT_NE(in_english(found->text).find("23:00"), std::string::npos) << found->text;
}

TEST(demand_findings, a_medical_load_asked_for_while_the_inverter_is_off_stops) {
    scenario::Load breathing = load("CPAP", 50);
    breathing.medical = true;
    scenario::Scenario scenario = with({breathing});
    scenario.inverter->off = {{.from = 23.0 * hour, .until = 6.0 * hour}};
    EXPECT_EQ(findings(scenario).front().severity, Severity::stop);
}

TEST(demand_findings, a_quasi_square_wave_is_no_matter_for_a_lamp) {
    scenario::Load fridge = load("fridge", 100);
    set_motor(fridge, scenario::MotorKind::compressor_rsir);
    scenario::Load breathing = load("CPAP", 50);
    breathing.priority = 1;
    breathing.medical = true;
    scenario::Scenario scenario = with({load("lamp", 60), fridge, breathing});
    EXPECT_FALSE(finding(findings(scenario), "quasi-square"));
    scenario.inverter->waveform = scenario::Waveform::quasi_square;
    const scenario::Findings all = findings(scenario);
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].where, "load fridge");
    EXPECT_EQ(all[0].severity, Severity::caution);
    EXPECT_EQ(all[1].where, "load CPAP");
    EXPECT_EQ(all[1].severity, Severity::stop);
}

TEST(demand_findings, a_short_reading_of_a_cycling_load_is_doubted) {
    scenario::Load fridge = load("fridge", 1);
    set_motor(fridge, scenario::MotorKind::compressor_rsir);
    fridge.draw = scenario::MeteredUse{300.0 * units::watt_hour, 3.0 * hour};
    EXPECT_TRUE(finding(findings(with({fridge})), "metered over 3 h"));
    fridge.draw = scenario::MeteredUse{1900.0 * units::watt_hour, 31.0 * hour};
    EXPECT_FALSE(finding(findings(with({fridge})), "metered over"));
}

TEST(demand_findings, a_nameplate_taken_for_the_mean_is_doubted) {
    scenario::Load fridge = load("fridge", 1);
    fridge.draw = scenario::Nameplate{120.0 * units::volt, 5.0 * units::ampere, {}};
    set_motor(fridge, scenario::MotorKind::compressor_rsir);
    const scenario::Findings all = findings(with({fridge}));
    const Finding* const found = finding(all, "counted at all hours");
    ASSERT_TRUE(found);
    EXPECT_EQ(found->severity, Severity::caution);
    fridge.runs = scenario::DutyCycle{900.0 * units::second, 2700.0 * units::second, {}};
    EXPECT_EQ(finding(findings(with({fridge})), "counted at all hours"), nullptr);
}

TEST(demand_findings, loads_that_may_coincide_are_held_against_the_continuous_rating) {
    scenario::Load kettle = load("kettle", 1500);
    kettle.hours = {{.from = 7.0 * hour, .until = 8.0 * hour}};
    scenario::Load oven = load("oven", 1400);
    oven.hours = {{.from = 7.5 * hour, .until = 8.0 * hour}};
    const scenario::Findings all = findings(with({load("lamp", 45), kettle, oven}));
    const Finding* const found = finding(all, "may run together");
    ASSERT_TRUE(found);
    EXPECT_EQ(found->severity, Severity::caution);
    EXPECT_NE(in_english(found->text).find("lamp, kettle, oven"), std::string::npos) << found->text;
    EXPECT_NE(in_english(found->text).find("07:30"), std::string::npos) << found->text;
    oven.hours = {{.from = 8.0 * hour, .until = 9.0 * hour}};
    EXPECT_FALSE(finding(findings(with({load("lamp", 45), kettle, oven})), "together"));
}

TEST(demand_findings, cycles_that_need_not_coincide_may) {
    scenario::Load one = load("one", 1300);
    one.runs =
        scenario::DutyCycle{60.0 * units::second, 600.0 * units::second, 0.0 * units::second};
    scenario::Load other = load("other", 1300);
    other.runs =
        scenario::DutyCycle{60.0 * units::second, 600.0 * units::second, 300.0 * units::second};
    EXPECT_TRUE(finding(findings(with({one, other})), "may run together"));
}

TEST(demand_findings, volt_amperes_count_as_well_as_watts) {
    scenario::Load pump = load("pump", 2000);
    pump.power_factor = units::PowerFactor(0.7);
    const scenario::Findings all = findings(with({pump}));
    const Finding* const found = finding(all, "may run together");
    ASSERT_TRUE(found);
    EXPECT_EQ(found->severity, Severity::stop);
    EXPECT_EQ(found->where, "load pump");
}

TEST(demand_findings, a_load_that_never_runs_is_named) {
    scenario::Load late = load("late", 45);
    late.days = {9};
    EXPECT_TRUE(finding(findings(with({load("fridge", 61), late})), "never runs"));
}

// What `start` refuses, the outage tells of: one rule for both.
TEST(demand_findings, a_240_v_pump_on_a_120_v_inverter_is_a_stop) {
    auto pump = load("well pump", 900);
    set_motor(pump, scenario::MotorKind::submersible);
    pump.motor->voltage = 240.0 * units::volt;
    const auto all = findings(with({pump}));
    const Finding* found = finding(all, "a 240 V motor cannot be run from 120 V");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->severity, Severity::stop);
    EXPECT_EQ(found->where, "load well pump");
    pump.motor->voltage = 115.0 * units::volt;
    EXPECT_EQ(finding(findings(with({pump})), "cannot be run"), nullptr);
}

TEST(demand_findings, a_heater_whose_plate_says_240_v_is_a_stop_and_an_adaptor_of_19_v_is_not) {
    auto heater = load("heater", 0);
    heater.draw = scenario::Nameplate{240.0 * units::volt, 5.0 * units::ampere, {}};
    EXPECT_NE(finding(findings(with({heater})), "a 240 V appliance cannot be run"), nullptr);
    heater.draw = scenario::Nameplate{19.0 * units::volt, 3.4 * units::ampere, {}};
    EXPECT_EQ(finding(findings(with({heater})), "cannot be run"), nullptr);
}

TEST(demand_findings, large_powers_are_written_out) {
    const auto all = findings(with({load("kettle", 2063), load("heater", 1500)}));
    const Finding* found = finding(all, "may run together");
    ASSERT_NE(found, nullptr);
    EXPECT_NE(in_english(found->text).find("3.56 kW, 3.56 kVA; it carries 2.4 kW and 2.4 kVA"),
              std::string::npos)
        << found->text;
}

}  // namespace
