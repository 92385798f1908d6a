#include "chance/figures.hpp"

#include <functional>
#include <numeric>

namespace {

using namespace chance;
using units::hour;
using units::Probability;

std::vector<Outcome> weighted(const std::vector<double>& hours, const std::vector<double>& weights,
                              double survives_from) {
    std::vector<Outcome> outcomes;
    for (std::size_t i = 0; i < hours.size(); ++i)
        outcomes.push_back({.lasts = hours[i] * hour,
                            .survives = hours[i] >= survives_from,
                            .outlasts = Probability(hours[i] >= survives_from ? 1.0 : 0.0),
                            .weight = weights[i]});
    return outcomes;
}

// Worked by hand: mean 601/1024; the blocks' standard error .00754; t(0.975, 15) = 2.131 of any
// table of the distribution.
TEST(figures, interval_comes_from_how_the_blocks_differ) {
    const std::vector<double> lasted{40, 36, 38, 35, 39, 37, 41, 36,
                                     38, 34, 40, 37, 39, 36, 38, 37};
    EXPECT_EQ(std::accumulate(lasted.begin(), lasted.end(), 0.0), 601.0);
    const auto interval = interval_of_blocks(lasted);
    EXPECT_NEAR(interval.low.value(), 0.5869 - 0.0161, 1e-4);
    EXPECT_NEAR(interval.high.value(), 0.5869 + 0.0161, 1e-4);
    const auto score = wilson(601, 1024);
    EXPECT_NEAR(score.low.value(), 0.5565, 5e-4);
    EXPECT_NEAR(score.high.value(), 0.6167, 5e-4);
}

// [Newcombe 1998], table I, method 3, as read in the tests of public programs.
TEST(figures, wilsons_interval_is_that_of_the_table) {
    EXPECT_NEAR(wilson(81, 263).low.value(), 0.2553, 5e-5);
    EXPECT_NEAR(wilson(81, 263).high.value(), 0.3662, 5e-5);
    EXPECT_NEAR(wilson(0, 20).high.value(), 0.1611, 5e-5);
    EXPECT_NEAR(wilson(1, 29).low.value(), 0.0061, 5e-5);
}

// Where hardly any end early: z^2/(n + z^2) = 3.8415/1027.84 = 0.37 % beside all of them.
TEST(figures, hardly_any_on_one_side_are_told_by_wilson) {
    const std::vector<double> all(16, 64.0);
    EXPECT_NEAR(interval_of_blocks(all).low.value(), 0.99626, 1e-5);
    EXPECT_EQ(interval_of_blocks(all).high.value(), 1.0);
    auto hardly = all;
    hardly[3] = 60;
    EXPECT_NEAR(interval_of_blocks(hardly).low.value(), 0.9900, 1e-4);
    EXPECT_NEAR(interval_of_blocks(hardly).high.value(), 0.9985, 1e-4);
    EXPECT_LT(interval_of_blocks(std::vector<double>{32.0}).low.value(), 0.39);
}

// Running sums by hand: .0391 .0409 .2960 .3351 .5105 .7204 .7331 1.
TEST(figures, weighted_times_are_those_of_the_running_sum) {
    const auto outcomes = weighted({10, 20, 30, 40, 50, 60, 70, 80},
                                   {.0391, .0018, .2551, .0391, .1754, .2099, .0127, .2669}, 45.0);
    EXPECT_EQ(time_of(outcomes, 0.1), 30.0 * hour);
    EXPECT_EQ(time_of(outcomes, 0.5), 50.0 * hour);
    EXPECT_EQ(time_of(outcomes, 0.9), 80.0 * hour);
    EXPECT_NEAR(share_that_outlasts(outcomes), 0.6649, 1e-4);
    EXPECT_NEAR(effective(outcomes),
                1.0 / (.0391 * .0391 * 2 + .0018 * .0018 + .2551 * .2551 + .1754 * .1754 +
                       .2099 * .2099 + .0127 * .0127 + .2669 * .2669),
                1e-9);
}

std::vector<Outcome> even(int members, const std::function<double(int)>& hours, double whole) {
    std::vector<Outcome> outcomes;
    for (int i = 0; i < members; ++i)
        outcomes.push_back({.lasts = std::min(hours(i), whole) * hour,
                            .survives = hours(i) >= whole,
                            .outlasts = Probability(hours(i) >= whole ? 1.0 : 0.0),
                            .weight = 1.0 / members});
    return outcomes;
}

// Where nobody knows how long it lasts the blocks hold sums of chances. By hand: 16 blocks in turn
// of .55 and .65 a member; the standard error is .05/sqrt(15) = .0129; t(0.975, 15) = 2.131.
TEST(figures, chances_of_the_blocks_may_be_parts) {
    std::vector<Outcome> outcomes;
    for (int i = 0; i < 1024; ++i)
        outcomes.push_back({.lasts = 20.0 * hour,
                            .outlasts = Probability(i / 64 % 2 == 0 ? 0.55 : 0.65),
                            .weight = 1.0 / 1024});
    const auto figures = figures_of(outcomes, Probability(0.6));
    EXPECT_NEAR(figures.of.value(), 0.6, 1e-12);
    EXPECT_NEAR(figures.low.value(), 0.6 - 0.0275, 1e-4);
    EXPECT_NEAR(figures.high.value(), 0.6 + 0.0275, 1e-4);
    EXPECT_TRUE(figures.meets_the_goal());
    EXPECT_EQ(figures.count_on, 20.0 * hour);
}

// The goal is met exactly where the time to count on is the whole outage: also where exactly the
// share that the goal leaves ends early.
TEST(figures, the_goal_is_met_where_the_time_to_count_on_is_the_end) {
    for (const int members : {64, 128, 192, 256, 320, 640, 1024})
        for (const double goal : {0.5, 0.8, 0.9, 0.95, 0.99})
            for (int early = 0; early <= members; ++early) {
                const auto figures = figures_of(
                    even(
                        members, [&](int i) { return i < early ? 10.0 + i * 0.01 : 100.0; }, 96.0),
                    Probability(goal));
                ASSERT_EQ(figures.meets_the_goal(), figures.count_on == 96.0 * hour)
                    << early << " of " << members << " at " << goal;
                ASSERT_LE(figures.nine_in_ten, figures.half);
                ASSERT_LE(figures.half, figures.one_in_ten);
                ASSERT_LE(figures.low, figures.of);
                ASSERT_GE(figures.high, figures.of);
            }
}

TEST(figures, what_fails_at_once_is_counted_for_itself) {
    const auto figures = figures_of(even(
                                        128, [](int i) { return i < 32 ? 0.0 : 50.0; }, 96.0),
                                    Probability(0.9));
    EXPECT_DOUBLE_EQ(figures.at_once.value(), 0.25);
    EXPECT_EQ(figures.count_on, 0.0 * hour);
    EXPECT_EQ(figures.half, 50.0 * hour);
    EXPECT_EQ(figures.members, 128);
    EXPECT_NEAR(figures.effective, 128.0, 1e-9);
}

// One year cannot say more than its days: a file whose dates agree in runs is told wider.
TEST(figures, a_file_of_one_year_is_told_wider) {
    std::vector<Outcome> outcomes;
    std::vector<int> dates;
    for (int i = 0; i < 256; ++i) {
        const int date = i % 61;
        dates.push_back(date);
        const bool bright = date < 30;
        outcomes.push_back({.lasts = (bright ? 96.0 : 40.0) * hour,
                            .survives = bright,
                            .outlasts = Probability(bright ? 1.0 : 0.0),
                            .weight = 1.0 / 256});
    }
    const auto by_blocks = figures_of(outcomes, Probability(0.9));
    const auto by_year = figures_of(outcomes, Probability(0.9), {.of = dates, .independent = 13.0});
    EXPECT_EQ(by_year.of, by_blocks.of);
    EXPECT_LT(by_year.low.value(), by_blocks.low.value() - 0.15);
    EXPECT_GT(by_year.high.value(), by_blocks.high.value() + 0.15);
}

}  // namespace
