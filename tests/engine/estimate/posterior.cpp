#include "estimate/posterior.hpp"

#include <cmath>
#include <numeric>

#include "support/three_packs.hpp"

namespace {

using namespace units;
using namespace three_packs;

// One block of 64 members.
estimate::Posterior after(const std::string& log) {
    const auto scenario = with(log);
    const auto now = *read_local_time(next_noon);
    const auto story = estimate::story_of(scenario, now);
    const auto lives = estimate::Lives::of(scenario, "", ready_of(scenario), story).value();
    return estimate::posterior_of(scenario, story, lives,
                                  {.now = now - scenario.outage.starts, .blocks = 1});
}

double mean_charge(const estimate::Posterior& posterior) {
    double sum = 0.0;
    for (std::size_t i = 0; i < posterior.now.size(); ++i)
        sum += posterior.members.weights[i] * posterior.now[i].charge.value();
    return sum;
}

TEST(posterior, without_readings_all_members_weigh_the_same) {
    const auto found = after("");
    ASSERT_EQ(found.members.values.size(), 64U);
    EXPECT_TRUE(found.members.are_alike());
    EXPECT_NEAR(found.members.effective(), 64.0, 1e-9);
    EXPECT_TRUE(found.reads.empty());
}

// By the closed form of one reading, method.md (1): a prior mean m of deviation d read as r with
// error e comes to m + (r - m) d^2 / (d^2 + e^2). The display is off by 0.03 and the counter's
// drift; 64 members and their rounds are within a fifth of the way.
TEST(posterior, a_display_pulls_the_charge_towards_it_as_the_closed_form_says) {
    const auto plan = after("");
    const double before = mean_charge(plan);
    double squares = 0.0;
    for (const auto& state : plan.now)
        squares += (state.charge.value() - before) * (state.charge.value() - before) / 64.0;
    const double read = before + 0.05;
    const auto percent = static_cast<int>(std::round(100.0 * read));
    const auto found = after(shows(next_noon, percent));
    const double drift = std::hypot(0.01 * (1.0 - read), 0.05 * 18.0 / 300.0);  // in 18 h
    const double error = 0.03 * 0.03 + drift * drift;
    const double expected = before + (0.01 * percent - before) * squares / (squares + error);
    EXPECT_NEAR(mean_charge(found), expected, 0.2 * std::abs(expected - before) + 0.005);
    ASSERT_EQ(found.reads.size(), 1U);
    EXPECT_GT(found.reads[0].surprise, 0.0);
    EXPECT_NEAR(std::accumulate(found.members.weights.begin(), found.members.weights.end(), 0.0),
                1.0, 1e-12);
}

// 5 % an hour after the start cannot be true of packs that were full.
TEST(posterior, readings_that_cannot_be_leave_the_plan_as_wide_as_it_was) {
    const auto found = after(shows("2026-01-14T19:00:00", 5));
    ASSERT_TRUE(found.contradiction);
    EXPECT_TRUE(found.without_weights);
    EXPECT_TRUE(found.members.are_alike());
    // to rounding: the clock looks at the moment of the reading too
    EXPECT_NEAR(mean_charge(found), mean_charge(after("")), 1e-9);
}

}  // namespace
