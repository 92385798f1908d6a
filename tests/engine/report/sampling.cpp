#include "report/sampling.hpp"

namespace {

using namespace report;
using outage::TracePoint;
using units::hour;
using units::watt;

TracePoint point(double at, double served) {
    TracePoint result;
    result.at = at * hour;
    result.served = served * watt;
    return result;
}

// 100 W until the second hour, then a jump to 20 W, falling to 0 at the fourth.
const Trace trace{point(0.0, 100.0), point(2.0, 100.0), point(2.0, 20.0), point(4.0, 0.0)};

TEST(sampling, a_moment_between_two_points_lies_on_the_line_between_them) {
    EXPECT_DOUBLE_EQ(state_at(trace, 3.0 * hour).served / watt, 10.0);
}

TEST(sampling, at_a_jump_the_state_after_it_holds) {
    EXPECT_DOUBLE_EQ(state_at(trace, 2.0 * hour).served / watt, 20.0);
}

TEST(sampling, beyond_the_ends_the_last_state_holds) {
    EXPECT_DOUBLE_EQ(state_at(trace, 9.0 * hour).served / watt, 0.0);
    EXPECT_DOUBLE_EQ(state_at(trace, -1.0 * hour).served / watt, 100.0);
}

TEST(sampling, a_mean_is_the_area_over_the_span) {
    EXPECT_DOUBLE_EQ(mean_power(trace, &TracePoint::served, 0.0 * hour, 2.0 * hour) / watt, 100.0);
    EXPECT_DOUBLE_EQ(mean_power(trace, &TracePoint::served, 2.0 * hour, 4.0 * hour) / watt, 10.0);
    EXPECT_DOUBLE_EQ(mean_power(trace, &TracePoint::served, 0.0 * hour, 4.0 * hour) / watt, 55.0);
    EXPECT_DOUBLE_EQ(mean_power(trace, &TracePoint::served, 1.0 * hour, 3.0 * hour) / watt, 57.5);
}

}  // namespace
