#include "starting/course.hpp"

#include "engine/starting/made_start.hpp"

namespace {

using namespace made_start;

StartQuestion question(const InverterSide& side) {
    return {.motors = {pump(side, 25.0)}, .background = {}, .inverter = side, .source = packs(4)};
}

// Four packs of 5 milliohm behind a cable of 1: 13.2 V less 2.25 milliohm times the current, at
// every instant. At rest the plate's 25 A flow at 120 V, 3,000 VA.
TEST(course, begins_at_the_plate_current_and_keeps_to_ohms_law) {
    const auto course = course_of(question(side_of(three_kilowatts())));
    ASSERT_GT(course.size(), 50U);
    EXPECT_NEAR(course.front().apparent / units::volt_ampere, 3000.0, 15.0);
    EXPECT_EQ(course.front().motor.time, 0.0 * second);
    for (const StartInstant& instant : course)
        EXPECT_NEAR((instant.direct_voltage + 0.00225 * ohm * instant.direct_current) / volt, 13.2,
                    1e-9);
}

TEST(course, ends_past_the_run_up_with_less_drawn) {
    const auto course = course_of(question(side_of(three_kilowatts())), 20);
    ASSERT_GT(course.size(), 15U);
    EXPECT_LE(course.size(), 20U);
    EXPECT_LT(course.back().apparent, 0.5 * course.front().apparent);
    EXPECT_GT(course.back().direct_voltage, course.front().direct_voltage);
}

TEST(course, motors_without_a_curve_have_none) {
    const auto side = side_of(three_kilowatts());
    auto brushes = question(side);
    brushes.motors.front().cases.reset();
    EXPECT_TRUE(course_of(brushes).empty());
    EXPECT_TRUE(course_of({.inverter = side, .source = packs(1)}).empty());
}

}  // namespace
