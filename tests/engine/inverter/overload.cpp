#include "inverter/overload.hpp"

namespace {

using namespace inverter;
using testing::SizeIs;
using units::second;
using units::watt;

OverloadCurve curve() {
    return *overload_curve({{LoadMultiple(2.0), 1.0 * second},
                            {LoadMultiple(1.1), 60.0 * second},
                            {LoadMultiple(1.5), 10.0 * second}});
}

scenario::Inverter unit() {
    scenario::Inverter inverter;
    inverter.continuous = 3000.0 * watt;
    return inverter;
}

TEST(overload, at_its_rating_an_inverter_holds_for_ever) {
    EXPECT_FALSE(hold_time(curve(), LoadMultiple(1.0)));
    EXPECT_FALSE(hold_time(curve(), LoadMultiple(0.2)));
}

TEST(overload, just_above_its_rating_it_holds_as_at_the_first_point) {
    EXPECT_EQ(*hold_time(curve(), LoadMultiple(1.01)), 60.0 * second);
}

TEST(overload, the_points_are_held_as_given_and_nothing_beyond_the_last) {
    EXPECT_DOUBLE_EQ(*hold_time(curve(), LoadMultiple(1.5)) / second, 10.0);
    EXPECT_DOUBLE_EQ(*hold_time(curve(), LoadMultiple(2.0)) / second, 1.0);
    EXPECT_EQ(*hold_time(curve(), LoadMultiple(2.01)), 0.0 * second);
    EXPECT_EQ(*hold_time({}, LoadMultiple(1.01)), 0.0 * second);
}

TEST(overload, half_the_time_at_two_loads_uses_up_the_whole) {
    const Strain strain =
        strain_of(curve(), std::vector<OverloadStep>{{LoadMultiple(2.0), 0.5 * second},
                                                     {LoadMultiple(0.5), 100.0 * second},
                                                     {LoadMultiple(1.5), 5.0 * second}});
    EXPECT_NEAR(strain.used.value(), 1.0, 1e-12);
    EXPECT_EQ(strain.largest, LoadMultiple(2.0));
    EXPECT_FALSE(strain.above_curve);
}

TEST(overload, a_step_beyond_the_curve_trips_at_once_with_finite_numbers) {
    const Strain strain =
        strain_of(curve(), std::vector<OverloadStep>{{LoadMultiple(2.5), 0.001 * second}});
    EXPECT_TRUE(strain.above_curve);
    EXPECT_TRUE(strain.trips());
    EXPECT_DOUBLE_EQ(strain.used.value(), 0.0);
}

TEST(overload, points_that_make_no_curve_are_refused_each_with_its_reason) {
    const auto refused = overload_curve({{LoadMultiple(0.9), 1.0 * second},
                                         {LoadMultiple(1.2), 1.0 * second},
                                         {LoadMultiple(1.4), 5.0 * second},
                                         {LoadMultiple(1.5), 0.0 * second}});
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error(), SizeIs(3));
    EXPECT_FALSE(
        overload_curve({{LoadMultiple(1.2), 1.0 * second}, {LoadMultiple(1.2), 1.0 * second}}));
}

TEST(overload, a_stated_surge_is_held_for_its_time_in_every_case) {
    auto inverter = unit();
    inverter.surge = 6000.0 * watt;
    inverter.surge_lasts = 3.0 * second;
    const auto curves = overload_curves(inverter);
    EXPECT_TRUE(curves.duration_known);
    EXPECT_THAT(curves.assumptions, SizeIs(0));
    EXPECT_DOUBLE_EQ(*hold_time(curves.curve.low, LoadMultiple(2.0)) / second, 3.0);
    EXPECT_DOUBLE_EQ(*hold_time(curves.curve.high, LoadMultiple(2.0)) / second, 3.0);
}

TEST(overload, an_unstated_duration_spans_from_milliseconds_to_seconds_and_is_told) {
    auto inverter = unit();
    inverter.surge = 6000.0 * watt;
    const auto curves = overload_curves(inverter);
    EXPECT_FALSE(curves.duration_known);
    EXPECT_THAT(curves.assumptions, SizeIs(1));
    EXPECT_DOUBLE_EQ(*hold_time(curves.curve.low, LoadMultiple(2.0)) / second, 0.02);
    EXPECT_DOUBLE_EQ(*hold_time(curves.curve.likely, LoadMultiple(2.0)) / second, 1.0);
    EXPECT_DOUBLE_EQ(*hold_time(curves.curve.high, LoadMultiple(2.0)) / second, 5.0);
}

TEST(overload, without_a_word_on_surge_there_may_be_none) {
    const auto curves = overload_curves(unit());
    EXPECT_EQ(*hold_time(curves.curve.low, LoadMultiple(1.5)), 0.0 * second);
    EXPECT_GT(*hold_time(curves.curve.high, LoadMultiple(1.5)), 0.0 * second);
}

TEST(overload, a_surge_no_larger_than_the_rating_is_no_surge) {
    auto inverter = unit();
    inverter.surge = 3000.0 * watt;
    EXPECT_THAT(overload_curves(inverter).curve.high, SizeIs(0));
}

TEST(overload, a_hot_case_lowers_the_rating_by_a_hundredth_a_degree) {
    EXPECT_DOUBLE_EQ(derated(3000.0 * watt, units::celsius(40.0)) / watt, 3000.0);
    EXPECT_NEAR(derated(3000.0 * watt, units::celsius(55.0)) / watt, 2550.0, 1e-6);
    EXPECT_DOUBLE_EQ(derated(3000.0 * watt, units::celsius(200.0)) / watt, 0.0);
}

}  // namespace
