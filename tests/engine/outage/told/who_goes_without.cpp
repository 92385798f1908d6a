#include "outage/told/who_goes_without.hpp"

#include "outage/told/load_uses.hpp"

namespace {

using namespace units;
using outage::LimitedBy;

// A kettle on AC from 8 to 9 h and a lamp on 12 V from 6 to 12 h.
demand::Demand kettle_and_lamp() {
    demand::Demand demand{.lasts = 24.0 * hour};
    demand.loads.push_back({.name = "kettle",
                            .from = scenario::Outlet::ac,
                            .strands = {{.on = {{8.0 * hour, 9.0 * hour}}}}});
    demand.loads.push_back({.name = "lamp",
                            .from = scenario::Outlet::twelve_volt,
                            .strands = {{.on = {{6.0 * hour, 12.0 * hour}}}}});
    return demand;
}

std::vector<outage::LoadUse> told(const std::vector<outage::Without>& out) {
    const auto demand = kettle_and_lamp();
    auto uses = outage::load_uses(demand);
    outage::Course course;
    course.out = out;
    outage::tell_who_goes_without(uses, demand, course);
    return uses;
}

// The inverter is out from 7 to 8:30: the kettle misses half an hour, the lamp nothing.
TEST(who_goes_without, what_the_inverter_feeds_goes_without_it) {
    const auto uses =
        told({{outage::the_inverter, 7.0 * hour, 8.5 * hour, LimitedBy::low_voltage}});
    ASSERT_EQ(uses[0].goes_without.size(), 1U);
    EXPECT_EQ(uses[0].goes_without[0].from, 8.0 * hour);
    EXPECT_EQ(uses[0].goes_without[0].to, 8.5 * hour);
    EXPECT_EQ(uses[0].goes_without[0].why, LimitedBy::low_voltage);
    EXPECT_NEAR(uses[0].fed / hour, 0.5, 1e-9);
    EXPECT_TRUE(uses[1].goes_without.empty());
    EXPECT_NEAR(uses[1].fed / hour, 6.0, 1e-9);
}

// The lamp alone from 10 h, and everything from 11 h: from 10 to 12 h is 2 h, none of it twice.
TEST(who_goes_without, stretches_that_overlap_count_once) {
    const auto uses = told({{1, 10.0 * hour, 24.0 * hour, LimitedBy::charge},
                            {outage::everything, 11.0 * hour, 24.0 * hour, LimitedBy::charge}});
    EXPECT_NEAR(uses[1].fed / hour, 4.0, 1e-9);
    ASSERT_EQ(uses[1].goes_without.size(), 1U);
    EXPECT_EQ(uses[1].goes_without[0].from, 10.0 * hour);
    EXPECT_EQ(uses[1].goes_without[0].to, 12.0 * hour);
    EXPECT_NEAR(uses[0].fed / hour, 1.0, 1e-9);
}

}  // namespace
