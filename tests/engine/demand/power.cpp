#include "demand/power.hpp"

#include <gtest/gtest.h>

namespace {

using units::ampere;
using units::hour;
using units::minute;
using units::volt;
using units::watt;
using units::watt_hour;

demand::LoadPower power_of(const scenario::Load& load) {
    scenario::Assumptions assumed;
    return demand::load_power(load, "load[0]", assumed).value();
}

std::vector<std::string> refusals(const scenario::Load& load) {
    scenario::Assumptions assumed;
    const auto power = demand::load_power(load, "load[0]", assumed);
    std::vector<std::string> where;
    if (!power) {
        for (const units::Error& error : power.error()) {
            where.push_back(error.where);
        }
    }
    return where;
}

scenario::Load drawing(scenario::Draw draw) {
    scenario::Load load;
    load.name = "something";
    load.draw = draw;
    return load;
}

TEST(load_power, a_meter_tells_the_mean) {
    const demand::LoadPower power =
        power_of(drawing(scenario::MeteredUse{1900.0 * watt_hour, 31.0 * hour}));
    EXPECT_NEAR(power.likely / watt, 61.2903, 1e-4);
    EXPECT_NEAR(power.low / power.likely, 0.90, 1e-12);
    EXPECT_NEAR(power.high / power.likely, 1.10, 1e-12);
}

TEST(load_power, a_cycle_turns_the_mean_into_running_power) {
    scenario::Load load = drawing(scenario::MeteredUse{1200.0 * watt_hour, 24.0 * hour});
    load.runs = scenario::DutyCycle{15.0 * minute, 45.0 * minute, {}};
    EXPECT_NEAR(power_of(load).likely / watt, 150.0, 1e-9);
    load.draw = scenario::YearlyLabel{40.0 * watt};
    EXPECT_NEAR(power_of(load).likely / watt, 120.0, 1e-9);
}

TEST(load_power, a_stated_power_is_the_running_power_whatever_the_cycle) {
    scenario::Load load = drawing(scenario::StatedPower{130.0 * watt});
    load.runs = scenario::DutyCycle{15.0 * minute, 45.0 * minute, {}};
    EXPECT_EQ(power_of(load).likely, 130.0 * watt);
}

TEST(load_power, the_evidence_sets_the_width) {
    scenario::Load load = drawing(scenario::StatedPower{100.0 * watt});
    for (const auto& [evidence, width] :
         {std::pair(scenario::Evidence::metered, 10.0), std::pair(scenario::Evidence::label, 25.0),
          std::pair(scenario::Evidence::guess, 50.0)}) {
        load.evidence = evidence;
        EXPECT_NEAR(power_of(load).low / watt, 100.0 - width, 1e-9);
        EXPECT_NEAR(power_of(load).high / watt, 100.0 + width, 1e-9);
    }
}

TEST(load_power, a_nameplate_is_an_upper_bound) {
    scenario::Load load = drawing(scenario::Nameplate{120.0 * volt, 5.0 * ampere, {}});
    const demand::LoadPower unknown = power_of(load);
    EXPECT_NEAR(unknown.high / watt, 600.0, 1e-9);
    EXPECT_NEAR(unknown.likely / watt, 480.0, 1e-9);
    EXPECT_NEAR(unknown.low / watt, 270.0, 1e-9);
    load.draw = scenario::Nameplate{120.0 * volt, 5.0 * ampere, units::PowerFactor(0.9)};
    EXPECT_NEAR(power_of(load).high / watt, 540.0, 1e-9);
    EXPECT_NEAR(power_of(load).likely / watt, 540.0, 1e-9);
}

TEST(load_power, a_nameplate_at_12_volts_has_no_power_factor) {
    scenario::Load load = drawing(scenario::Nameplate{12.0 * volt, 2.0 * ampere, {}});
    load.from = scenario::Outlet::twelve_volt;
    EXPECT_NEAR(power_of(load).likely / watt, 24.0, 1e-12);
    EXPECT_EQ(power_of(load).factor, units::PowerFactor(1.0));
}

TEST(load_power, a_motor_without_a_power_factor_gets_that_of_its_kind) {
    scenario::Load load = drawing(scenario::StatedPower{150.0 * watt});
    load.motor = scenario::Motor{.kind = scenario::MotorKind::compressor_rsir,
                                 .locked_rotor_current = {},
                                 .horsepower = {},
                                 .code_letter = {},
                                 .full_load_current = {},
                                 .voltage = {},
                                 .soft_start = {}};
    EXPECT_EQ(power_of(load).factor, units::PowerFactor(0.65));
    load.power_factor = units::PowerFactor(0.7);
    EXPECT_EQ(power_of(load).factor, units::PowerFactor(0.7));
}

TEST(load_power, adaptors_lose_what_the_file_or_practice_says) {
    scenario::Load load = drawing(scenario::StatedPower{25.0 * watt});
    EXPECT_EQ(power_of(load).converter, units::Efficiency(1.0));
    load.from = scenario::Outlet::usb;
    EXPECT_EQ(power_of(load).converter, units::Efficiency(0.9));
    load.from = scenario::Outlet::twelve_volt;
    EXPECT_EQ(power_of(load).converter, units::Efficiency(1.0));
    load.converter_efficiency = units::Efficiency(0.95);
    EXPECT_EQ(power_of(load).converter, units::Efficiency(0.95));
}

TEST(load_power, every_default_leaves_an_assumption) {
    scenario::Assumptions assumed;
    scenario::Load load = drawing(scenario::StatedPower{25.0 * watt});
    load.from = scenario::Outlet::usb;
    ASSERT_TRUE(demand::load_power(load, "load[3]", assumed));
    ASSERT_EQ(assumed.size(), 2U);
    EXPECT_EQ(assumed[0].where, "load[3].evidence");
    EXPECT_EQ(assumed[1].where, "load[3].converter_efficiency");
    assumed.clear();
    load.evidence = scenario::Evidence::metered;
    load.converter_efficiency = units::Efficiency(0.9);
    ASSERT_TRUE(demand::load_power(load, "load[3]", assumed));
    EXPECT_TRUE(assumed.empty());
}

TEST(load_power, what_cannot_be_used_is_refused_at_its_key) {
    EXPECT_EQ(refusals({}), std::vector<std::string>{"load[0]"});
    EXPECT_EQ(refusals(drawing(scenario::MeteredUse{1.0 * watt_hour, {}})),
              std::vector<std::string>{"load[0].metered.over"});
    EXPECT_EQ(refusals(drawing(scenario::StatedPower{-1.0 * watt})),
              std::vector<std::string>{"load[0].power"});
    scenario::Load load = drawing(scenario::StatedPower{1.0 * watt});
    load.runs = scenario::DutyCycle{50.0 * minute, 45.0 * minute, {}};
    load.power_factor = units::PowerFactor(0.0);
    load.converter_efficiency = units::Efficiency(1.1);
    EXPECT_EQ(refusals(load),
              (std::vector<std::string>{"load[0].power_factor", "load[0].converter_efficiency",
                                        "load[0].runs"}));
}

TEST(load_power, medical_is_what_says_so_or_the_list_never_a_priority) {
    scenario::Load load;
    load.priority = 1;
    EXPECT_FALSE(demand::is_medical(load));
    load.medical = true;
    EXPECT_TRUE(demand::is_medical(load));
    scenario::Load listed;
    listed.like = "home ventilator";
    EXPECT_TRUE(demand::is_medical(listed));
    listed.medical = false;
    EXPECT_FALSE(demand::is_medical(listed));
}

// 27 % after 16 years [Paul 2021]: 1.7 % a year.
TEST(load_power, a_label_grows_with_age) {
    scenario::Load load = drawing(scenario::YearlyLabel{50.0 * watt});
    load.keeps_cold = scenario::KeepsCold::freezer;
    EXPECT_NEAR(power_of(load).likely / watt, 50.0, 1e-9);
    load.age = 16.0 * 365.0 * units::day;
    EXPECT_NEAR(power_of(load).likely / watt, 1.27 * 50.0, 0.002 * 50.0 + 1e-9);
    load.draw = scenario::MeteredUse{1200.0 * watt_hour, 24.0 * hour};
    EXPECT_NEAR(power_of(load).likely / watt, 50.0, 1e-9);
}

}  // namespace
