#include "solar/weather/start_dates.hpp"

#include <cmath>
#include <random>

#include <fmt/format.h>

#include "solar/recharge.hpp"

namespace {

using namespace units;
using namespace solar;

// Of single days only the persistence is left: 61 days of a first-order autoregression are worth
// 61 (1 - 0.29)/(1 + 0.29) = 33.6 of them, a little more for a run that is not endless.
TEST(start_dates, single_days_are_worth_more_than_half_of_them) {
    EXPECT_NEAR(independent_start_dates(20.0 * hour), 33.6, 0.5);
}

// Days that share nothing but what they overlap: starts 1, 2 and 3 days apart share 3/4, 2/4 and
// 1/4 of four days. Persistence makes them a little more alike.
TEST(start_dates, four_days_that_overlap_are_worth_a_dozen) {
    const double overlap_alone = 61.0 / (1.0 + 2.0 * (0.75 * 60 + 0.5 * 59 + 0.25 * 58) / 61.0);
    const double found = independent_start_dates(4.0 * day);
    EXPECT_LT(found, overlap_alone);
    EXPECT_GT(found, 0.7 * overlap_alone);
    EXPECT_GT(independent_start_dates(2.0 * day), independent_start_dates(3.0 * day));
    EXPECT_GE(independent_start_dates(60.0 * day), 1.0);
}

// [Wilson 1927], 19 times in 20.
std::pair<double, double> interval(double share, double of) {
    constexpr double z = 1.959964;
    const double centre = (share + z * z / (2.0 * of)) / (1.0 + z * z / of);
    const double half =
        z / (1.0 + z * z / of) * std::sqrt(share * (1.0 - share) / of + z * z / (4.0 * of * of));
    return {centre - half, centre + half};
}

// Simulated years whose days persist as days do: the chance that so many days together reach a
// limit, counted over the start dates of one year, against the chance in all years.
TEST(start_dates, an_interval_from_one_years_starts_holds_the_chance_of_all_years) {
    std::mt19937_64 random(7);
    std::normal_distribution<double> normal;
    constexpr double phi = 0.29;
    for (const int days : {1, 2, 4, 7}) {
        const double worth = independent_start_dates(double(days) * day);
        for (const double limit : {-0.8, 0.0, 0.9}) {  // scores of the sum
            int held = 0;
            int held_by_all = 0;
            constexpr int years = 2000;
            double variance = 0.0;
            for (int i = 0; i < days; ++i)
                for (int j = 0; j < days; ++j)
                    variance += std::pow(phi, std::abs(i - j));
            const double least = limit * std::sqrt(variance);
            const double truth = 0.5 * std::erfc(limit / std::sqrt(2.0));
            for (int year = 0; year < years; ++year) {
                std::vector<double> scores{normal(random)};
                while (scores.size() < std::size_t(start_dates + days))
                    scores.push_back(phi * scores.back() +
                                     std::sqrt(1.0 - phi * phi) * normal(random));
                int lasted = 0;
                for (int start = 0; start < start_dates; ++start) {
                    double sum = 0.0;
                    for (int i = 0; i < days; ++i)
                        sum += scores[std::size_t(start + i)];
                    lasted += sum > least;
                }
                const double share = double(lasted) / start_dates;
                const auto [low, high] = interval(share, worth);
                held += low <= truth && truth <= high;
                const auto [narrow_low, narrow_high] = interval(share, start_dates);
                held_by_all += narrow_low <= truth && truth <= narrow_high;
            }
            RecordProperty(fmt::format("days_{}_chance_{:.2f}", days, truth),
                           fmt::format("{:.3f}, all starts {:.3f}", double(held) / years,
                                       double(held_by_all) / years));
            EXPECT_GE(double(held) / years, 0.88) << days << " days, limit " << limit;
            if (days >= 4) {
                EXPECT_LT(double(held_by_all) / years, 0.88) << days;
            }
        }
    }
}

}  // namespace
