// What a weather file of one year leaves open: by hand, and over simulated years.
#include "chance/one_year.hpp"

#include <cmath>
#include <numeric>
#include <random>

#include <gtest/gtest.h>

#include "solar/recharge.hpp"
#include "solar/weather/start_dates.hpp"

namespace {

using namespace units;
using namespace chance;

std::vector<Outcome> of(const std::vector<double>& lasted) {
    std::vector<Outcome> outcomes;
    for (const double one : lasted)
        outcomes.push_back({.lasts = (one > 0.0 ? 96.0 : 48.0) * hour,
                            .survives = one > 0.0,
                            .outlasts = Probability(one),
                            .weight = 1.0 / double(lasted.size())});
    return outcomes;
}

// Four dates of two members each: 11 11 00 10. Shares 1 1 0 1/2 about a mean of 5/8: between
// 2 (9/64 + 9/64 + 25/64 + 1/64)/3 = 0.4583, within 1/2 / 4 = 0.125; with n = 2 the share is
// 0.3333/0.5833 = 0.5714. It is off by sqrt(2/(2 x 1 x 3)) = 0.5774, so it may be all. Three
// members are rarer: (3 x 1 + 2 x 0.5)/5 = 0.8.
TEST(one_year, the_share_between_dates_by_hand) {
    const auto outcomes = of({1, 1, 1, 1, 0, 0, 1, 0});
    const std::vector<int> dates{4, 4, 9, 9, 17, 17, 60, 60};
    EXPECT_NEAR(share_between_dates(outcomes, dates), 0.8, 1e-9);
    // 1/(0.8/2 + 0.2/8) = 2.353
    EXPECT_NEAR(worth_in_all_years(outcomes, {.of = dates, .independent = 2.0}), 2.353, 1e-3);
}

TEST(one_year, nothing_is_known_where_all_last_or_no_date_comes_twice) {
    const std::vector<int> dates{0, 0, 1, 1, 2, 2, 3, 3};
    EXPECT_DOUBLE_EQ(share_between_dates(of(std::vector<double>(8, 1.0)), dates), 0.5);
    EXPECT_DOUBLE_EQ(share_between_dates(of({1, 0, 1, 1}), std::vector<int>{0, 1, 2, 3}), 1.0);
}

TEST(one_year, the_whole_outage_counts_where_its_length_is_known) {
    const auto outcomes = of({1, 0, 1, 0});
    const std::vector<int> dates{0, 0, 1, 1};
    scenario::Outage outage;
    outage.lasts = 14.0 * day;
    EXPECT_EQ(start_dates_of(dates, outage, outcomes).independent,
              solar::independent_start_dates(14.0 * day));
    outage.open_ended = true;
    EXPECT_EQ(start_dates_of(dates, outage, outcomes).independent,
              solar::independent_start_dates(4.0 * day));
}

TEST(one_year, a_year_is_never_worth_more_than_its_members) {
    const auto outcomes = of({1, 0, 1, 0, 1, 0, 1, 0});
    const std::vector<int> dates{0, 0, 1, 1, 2, 2, 3, 3};
    for (const double independent : {1.0, 3.0, 50.0}) {
        const double worth =
            worth_in_all_years(outcomes, {.of = dates, .independent = independent});
        EXPECT_GE(worth, 1.0);
        EXPECT_LE(worth, 8.0);
    }
}

// One simulated year: days whose scores persist; a member lasts where the days from its start and
// what its loads draw come to more than a limit.
struct Year {
    std::vector<Outcome> outcomes;
    std::vector<int> dates;
};

double variance_of(int days) {
    double variance = 0.0;
    for (int i = 0; i < days; ++i)
        for (int j = 0; j < days; ++j)
            variance += std::pow(0.29, std::abs(i - j));
    return variance;
}

Year year_of(int days, double limit, double of_loads, std::mt19937_64& random) {
    std::normal_distribution<double> normal;
    std::uniform_int_distribution<int> start(0, solar::start_dates - 1);
    std::vector<double> scores{normal(random)};
    while (scores.size() < std::size_t(solar::start_dates + days))
        scores.push_back(0.29 * scores.back() + std::sqrt(1.0 - 0.29 * 0.29) * normal(random));
    const double deviation = std::sqrt(variance_of(days));
    const double least = limit * deviation * std::hypot(1.0, of_loads);
    Year year;
    constexpr int members = 256;
    for (int number = 0; number < members; ++number) {
        const int date = start(random);
        const auto first = scores.begin() + date;
        const double sum =
            std::accumulate(first, first + days, 0.0) + of_loads * deviation * normal(random);
        year.dates.push_back(date);
        year.outcomes.push_back({.lasts = (sum > least ? 24.0 * days : 12.0) * hour,
                                 .survives = sum > least,
                                 .outlasts = Probability(sum > least ? 1.0 : 0.0),
                                 .weight = 1.0 / members});
    }
    return year;
}

TEST(one_year, its_interval_holds_the_chance_of_all_years) {
    std::mt19937_64 random(20261129);
    constexpr int years = 250;
    for (const int days : {1, 4, 7, 14})
        for (const double of_loads : {0.0, 0.5, 2.0})
            for (const double limit : {-1.6, -0.7, 0.0, 1.3}) {
                const double truth = 0.5 * std::erfc(limit / std::sqrt(2.0));
                const double independent = solar::independent_start_dates(double(days) * day);
                int held = 0;
                for (int number = 0; number < years; ++number) {
                    const auto year = year_of(days, limit, of_loads, random);
                    const auto told = figures_of(year.outcomes, Probability(0.9),
                                                 {.of = year.dates, .independent = independent});
                    held += told.low.value() <= truth && truth <= told.high.value();
                }
                EXPECT_GE(held, int(0.88 * years))
                    << days << " days, loads " << of_loads << ", limit " << limit;
            }
}

}  // namespace
