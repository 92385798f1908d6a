#include "motor/supply_voltage.hpp"

namespace {

using namespace motor;
using units::volt;

// [NEMA MG 1] 12.44: 10 % either way. 115 V runs from 120 (104 %); from 103.5 and 126.5 just so.
TEST(supply_voltage, a_motor_runs_from_ten_percent_either_way) {
    EXPECT_TRUE(runs_from(115.0 * volt, 120.0 * volt));
    EXPECT_TRUE(runs_from(115.0 * volt, 103.5 * volt));
    EXPECT_TRUE(runs_from(115.0 * volt, 126.5 * volt));
    EXPECT_FALSE(runs_from(115.0 * volt, 103.0 * volt));
    EXPECT_FALSE(runs_from(100.0 * volt, 120.0 * volt));
    EXPECT_TRUE(runs_from(230.0 * volt, 240.0 * volt));
}

TEST(supply_voltage, the_motors_plate_goes_before_that_of_the_appliance) {
    scenario::Load load{.draw = scenario::Nameplate{.voltage = 120.0 * volt},
                        .motor = scenario::Motor{}};
    EXPECT_EQ(plate_voltage(load), 120.0 * volt);
    load.motor->voltage = 115.0 * volt;
    EXPECT_EQ(plate_voltage(load), 115.0 * volt);
    // 19 V is what an adaptor puts out.
    EXPECT_EQ(plate_voltage({.draw = scenario::Nameplate{.voltage = 19.0 * volt}}), std::nullopt);
    EXPECT_EQ(plate_voltage({.draw = scenario::StatedPower{}}), std::nullopt);
}

TEST(supply_voltage, another_voltage_is_refused_at_the_plate_that_tells_it) {
    scenario::Load well{.motor = scenario::Motor{.voltage = 230.0 * volt}};
    const auto refused = refused_by_voltage(well, "load[2]", 120.0 * volt);
    ASSERT_TRUE(refused);
    EXPECT_EQ(refused->where, "load[2].motor.voltage");
    EXPECT_EQ(refused->found,
              "a 230 V motor cannot be run from 120 V, however strong the inverter");
    EXPECT_EQ(refused->remedy, "use a motor for 120 V");
    well.from = scenario::Outlet::twelve_volt;
    EXPECT_FALSE(refused_by_voltage(well, "load[2]", 120.0 * volt));
    const scenario::Load kettle{.draw = scenario::Nameplate{.voltage = 230.0 * volt}};
    const auto plate = refused_by_voltage(kettle, "load[0]", 120.0 * volt);
    ASSERT_TRUE(plate);
    EXPECT_EQ(plate->where, "load[0].nameplate");
    EXPECT_EQ(plate->remedy, "use an appliance for 120 V");
}

}  // namespace
