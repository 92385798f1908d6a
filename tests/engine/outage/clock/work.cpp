#include "outage/clock/work.hpp"

namespace {

using namespace units;

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);

// So many changes of load and of sun.
outage::Ready ready_with(std::size_t loads, std::size_t sun) {
    outage::Ready ready;
    ready.steps[likely].resize(loads);
    ready.sun[likely].resize(sun);
    return ready;
}

// 60 + 39 + 1 = 100 changes; two further kinds of pack make 1 + 1 + 2 x 0.35 = 2.7 times as many.
TEST(work, a_run_is_its_changes_times_what_packs_that_differ_cost) {
    auto ready = ready_with(60, 39);
    EXPECT_NEAR(outage::steps_of_a_run(ready), 100.0, 1e-9);
    ready.units[likely].others.resize(2);
    EXPECT_NEAR(outage::steps_of_a_run(ready), 270.0, 1e-9);
    // a current that is passed on is tried four times
    ready.sun[likely][3].passes = 5.0 * ampere;
    EXPECT_NEAR(outage::steps_of_a_run(ready), 1080.0, 1e-9);
}

// Two wells twice, a current passed on one and a half times.
TEST(work, members_of_lead_take_more_steps) {
    auto ready = ready_with(60, 39);
    EXPECT_NEAR(outage::member_steps_of_a_run(ready), 100.0, 1e-9);
    ready.units[likely].bank.setup.kinetics.available = Share(0.3);
    EXPECT_NEAR(outage::member_steps_of_a_run(ready), 200.0, 1e-9);
    ready.sun[likely][0].passes = 5.0 * ampere;
    EXPECT_NEAR(outage::member_steps_of_a_run(ready), 600.0, 1e-9);
}

// 2,000,000 steps over 1,000 of a run are 2,000 weathers; over ten runs each 200.
TEST(work, a_long_run_is_looked_at_under_fewer_weathers_but_never_under_too_few) {
    const auto ready = ready_with(600, 399);
    EXPECT_EQ(outage::weathers_within_reach(ready, 4096, 64), 2000);
    EXPECT_EQ(outage::weathers_within_reach(ready, 1024, 64), 1024);
    EXPECT_EQ(outage::weathers_within_reach(ready, 4096, 64, 10.0), 200);
    EXPECT_EQ(outage::weathers_within_reach(ready, 4096, 64, 1e6), 64);
}

TEST(work, the_account_is_by_the_quarter_hour_up_to_ten_days) {
    EXPECT_EQ(outage::interval_of(10.0 * day), 15.0 * minute);
    EXPECT_EQ(outage::interval_of(10.5 * day), 1.0 * hour);
}

}  // namespace
