#include "motor/appliances/appliances.hpp"

#include <set>

#include "motor/code_letter.hpp"

namespace {

using namespace motor;
using testing::HasSubstr;
using testing::SizeIs;
using units::volt;
using units::watt;

TEST(appliances, the_library_has_its_forty_two_entries_each_with_a_source) {
    EXPECT_THAT(appliances(), SizeIs(42));
    for (const Appliance& appliance : appliances()) {
        EXPECT_FALSE(appliance.source.empty()) << appliance.name;
        EXPECT_GT(appliance.run.low(), 0.0 * watt) << appliance.name;
    }
}

TEST(appliances, no_two_share_a_name) {
    std::set<std::string> names;
    for (const Appliance& appliance : appliances()) {
        EXPECT_TRUE(names.insert(appliance.name).second) << appliance.name;
        for (const std::string& other : appliance.also) {
            EXPECT_TRUE(names.insert(other).second) << other;
        }
    }
}

// What people call it may be a plain machine or one that heats: the hungrier is taken.
TEST(appliances, a_breathing_machine_is_the_one_that_heats) {
    const auto found = find_appliance("breathing machine");
    ASSERT_TRUE(found);
    EXPECT_EQ(found->name, "CPAP with heated humidifier");
    EXPECT_TRUE(found->medical);
}

TEST(appliances, every_motor_of_the_library_says_what_it_draws_at_start) {
    for (const Appliance& appliance : appliances()) {
        if (!appliance.motor) {
            continue;
        }
        const auto found = locked_rotor(
            *appliance.motor,
            {.where = appliance.name, .supply = 120.0 * volt, .running_power = appliance.run});
        EXPECT_EQ(found.has_value(), appliance.name != "well pump 230 V") << appliance.name;
    }
}

TEST(appliances, the_third_horse_sump_pump_starts_at_what_its_data_sheets_say) {
    const auto pump = find_appliance("sump pump 1/3 hp");
    ASSERT_TRUE(pump);
    const auto found = locked_rotor(
        *pump->motor, {.where = "pump", .supply = 120.0 * volt, .running_power = pump->run});
    const auto kilovolt_ampere = [&](units::Current current) {
        return current * (115.0 * volt) / watt / 1000.0;
    };
    // 3.3 to 4.1 kVA by code letter M to N, [Motor packets]
    EXPECT_LT(kilovolt_ampere(found->current.low()), 3.3);
    EXPECT_GT(kilovolt_ampere(found->current.high()), 4.1);
}

TEST(appliances, the_half_horse_well_pump_starts_at_seven_kilovolt_ampere) {
    const auto pump = find_appliance("well pump 1/2 hp");
    ASSERT_TRUE(pump);
    const auto found = locked_rotor(*pump->motor, {.where = "pump", .supply = 120.0 * volt});
    const double locked = found->current.likely() * (115.0 * volt) / watt;
    EXPECT_NEAR(locked, 7406.0, 0.05 * 7406.0);  // 64.4 A, [Submersible handbook]
    // A list made for sagging generators says less than half of that.
    EXPECT_LT(pump->listed_start->high.amount() / watt, 0.5 * locked);
}

TEST(appliances, a_load_is_filled_in_where_it_is_silent) {
    scenario::Load load;
    load.name = "fridge in the kitchen";
    load.like = "refrigerator";
    const auto filled = filled_in(load, "load[0]");
    ASSERT_TRUE(filled);
    EXPECT_EQ(filled->load.name, "fridge in the kitchen");
    EXPECT_EQ(std::get<scenario::StatedPower>(*filled->load.draw).power, 130.0 * watt);
    EXPECT_NEAR(filled->load.runs->on / filled->load.runs->every, 0.33, 1e-9);
    EXPECT_EQ(filled->load.motor->kind, scenario::MotorKind::compressor_rsir);
    EXPECT_EQ(filled->load.evidence, scenario::Evidence::guess);
    EXPECT_THAT(filled->assumptions, SizeIs(3));
    EXPECT_THAT(filled->assumptions.front().text, HasSubstr("130 W"));
}

TEST(appliances, what_a_load_says_itself_stands) {
    scenario::Load load;
    load.like = "CPAP";
    load.draw = scenario::StatedPower{22.0 * watt};
    load.hours = {{.from = 21.0 * units::hour, .until = 7.0 * units::hour}};
    load.evidence = scenario::Evidence::metered;
    load.medical = false;
    const auto filled = filled_in(load, "load[0]");
    ASSERT_TRUE(filled);
    EXPECT_EQ(std::get<scenario::StatedPower>(*filled->load.draw).power, 22.0 * watt);
    EXPECT_EQ(filled->load.evidence, scenario::Evidence::metered);
    EXPECT_EQ(filled->load.medical, false);
    EXPECT_EQ(filled->load.hours.front().from, 21.0 * units::hour);
    EXPECT_FALSE(filled->load.usual_hours);
    EXPECT_THAT(filled->assumptions, SizeIs(0));
}

// Who needs it may need it by day: the hours of the list are told, not taken.
TEST(appliances, what_is_medical_runs_at_all_hours_until_hours_are_given) {
    scenario::Load load;
    load.like = "CPAP";
    const auto filled = filled_in(load, "load[0]");
    ASSERT_TRUE(filled);
    EXPECT_TRUE(filled->load.hours.empty());
    EXPECT_FALSE(filled->load.usual_hours);
    EXPECT_TRUE(std::ranges::any_of(filled->assumptions, [](const auto& assumed) {
        return assumed.where == "load[0].hours" &&
               in_english(assumed.text).find("on at all hours, though usually at 22:00-06:00") !=
                   std::string::npos;
    }));
}

TEST(appliances, a_duty_is_a_cycle_of_its_kind_or_a_usual_one) {
    scenario::Scenario scenario;
    scenario.loads.resize(2);
    scenario.loads[0].duty = units::Share(0.3);
    scenario.loads[1].duty = units::Share(0.5);
    scenario.loads[1].like = "refrigerator";
    const auto once = with_appliances(scenario).value();
    ASSERT_TRUE(once.scenario.loads[0].runs && once.scenario.loads[1].runs);
    EXPECT_NEAR(once.scenario.loads[0].runs->on / units::minute, 13.5, 1e-9);
    EXPECT_NEAR(once.scenario.loads[1].runs->on / once.scenario.loads[1].runs->every, 0.5, 1e-12);
    EXPECT_TRUE(with_appliances(once.scenario)->assumptions.empty());
}

TEST(appliances, a_load_like_nothing_known_says_where_that_stands) {
    scenario::Load load;
    load.like = "flux capacitor";
    const auto failed = filled_in(load, "load[4]");
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().front().where, "load[4].like");
}

}  // namespace
