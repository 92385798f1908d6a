// The distribution of days and their sequence against an independent computation (numpy 1.24).
#include <numeric>

#include "solar/weather/weather.hpp"

namespace {

using namespace units;
using namespace solar;

double at(const ClearnessDistribution& days, double below) {
    return days.quantile(Probability(below)).value();
}

// The darkest day of [Bendt 1981].
constexpr Clearness of_bendt{0.05};

TEST(solar_published, the_scatter_of_days_about_a_middling_mean) {
    const ClearnessDistribution days(Clearness(0.50), {}, of_bendt);
    EXPECT_NEAR(days.steepness(), 2.5790, 0.001);
    EXPECT_NEAR(at(days, 0.05), 0.1378, 0.001);
    EXPECT_NEAR(at(days, 0.10), 0.2093, 0.001);
    EXPECT_NEAR(at(days, 0.50), 0.5403, 0.001);
    EXPECT_NEAR(at(days, 0.90), 0.7162, 0.001);
    EXPECT_NEAR(days.below(Clearness(0.2)).value(), 0.0929, 0.001);
    constexpr int parts = 100000;
    double squares = 0.0;
    for (int part = 0; part < parts; ++part)
        squares += std::pow(at(days, (part + 0.5) / parts) - 0.50, 2) / parts;
    EXPECT_NEAR(std::sqrt(squares), 0.1870, 0.001);
}

TEST(solar_published, the_scatter_of_days_about_bright_means) {
    const ClearnessDistribution bright(Clearness(0.60), {}, of_bendt);
    EXPECT_NEAR(bright.steepness(), 6.3061, 0.001);
    EXPECT_NEAR(at(bright, 0.10), 0.4013, 0.001);
    EXPECT_NEAR(at(bright, 0.50), 0.6420, 0.001);
    EXPECT_NEAR(at(bright, 0.90), 0.7335, 0.001);
    const ClearnessDistribution high(Clearness(0.55), 1829.0 * metre, of_bendt);
    EXPECT_NEAR(high.highest().value(), 0.7866, 0.0001);
    EXPECT_NEAR(high.steepness(), 3.1678, 0.001);
    EXPECT_NEAR(at(high, 0.10), 0.2578, 0.001);
    EXPECT_NEAR(at(high, 0.50), 0.5970, 0.001);
}

TEST(solar_published, a_mean_half_way_between_the_bounds_scatters_evenly) {
    // gamma is 0 there and every formula is 0/0: the distribution is uniform on 0.05 to 0.75
    const ClearnessDistribution days(Clearness(0.40), {}, of_bendt);
    EXPECT_NEAR(days.steepness(), 0.0, 1e-9);
    EXPECT_NEAR(at(days, 0.10), 0.05 + 0.07, 1e-9);
    EXPECT_NEAR(days.below(Clearness(0.225)).value(), 0.25, 1e-9);
}

TEST(solar_published, days_scatter_about_their_month_as_in_hourly_typical_years) {
    // 1440 station-months of 120 stations with hourly typical years, by the month's mean clearness:
    // the standard deviation of single days and their tenth percentile over the month's mean, as
    // observed; the middle of each class stands for its mean.
    struct Class {
        double mean, spread, tenth;
    };
    for (const Class& of : {Class{0.36, 0.467, 0.44}, Class{0.455, 0.378, 0.46},
                            Class{0.55, 0.269, 0.58}, Class{0.645, 0.167, 0.76}}) {
        const ClearnessDistribution days(Clearness(of.mean), {});
        constexpr int parts = 20000;
        double squares = 0.0;
        for (int part = 0; part < parts; ++part)
            squares += std::pow(at(days, (part + 0.5) / parts) / of.mean - 1.0, 2) / parts;
        EXPECT_NEAR(std::sqrt(squares), of.spread, 0.09 * of.spread) << of.mean;
        EXPECT_NEAR(at(days, 0.10) / of.mean, of.tenth, 0.04) << of.mean;
    }
}

TEST(solar_published, the_darkest_days_leave_the_closed_form_as_it_is) {
    // the same law with 0.13 in the place of 0.05, computed independently (bisection in Python)
    const ClearnessDistribution days(Clearness(0.50), {});
    EXPECT_NEAR(days.steepness(), 1.9167, 0.001);
    EXPECT_NEAR(at(days, 0.05), 0.1864, 0.0005);
    EXPECT_NEAR(at(days, 0.10), 0.2372, 0.0005);
    EXPECT_NEAR(at(days, 0.90), 0.7124, 0.0005);
    EXPECT_NEAR(days.below(Clearness(0.2)).value(), 0.0629, 0.0005);
    const ClearnessDistribution dark(Clearness(0.25), {});
    EXPECT_NEAR(dark.lowest().value(), 0.10, 1e-12);
    EXPECT_NEAR(at(dark, 0.10), 0.1167, 0.0005);
    EXPECT_NEAR(at(dark, 0.90), 0.4485, 0.0005);
}

// Three days of many sequences at a mean of 0.50, sea level.
std::vector<std::vector<Clearness>> three_days_of_many() {
    Site site;
    site.clearness.fill(Clearness(0.50));
    const LocalTime first = local_time(std::chrono::year(2026) / 1 / 10, {});
    WeatherModel model;
    model.climate_error = 0.0;
    std::vector<std::vector<Clearness>> many;
    for (std::uint32_t number = 0; number < 400000; ++number)
        many.push_back(daily_clearness(site, first, 3, model, {.seed = 7, .number = number}));
    return many;
}

TEST(solar_published, sequences_remember_yesterday_and_keep_the_mean) {
    // computed independently (600,000 sequences in Python): lag-1 of K 0.277; means of three days
    // P10 0.336, P50 0.508, P90 0.653
    const auto many = three_days_of_many();
    double all = 0.0, squares = 0.0, products = 0.0;
    std::vector<double> means;
    for (const auto& days : many) {
        const double a = days[0].value(), b = days[1].value(), c = days[2].value();
        all += (a + b + c) / 3.0;
        squares += ((a - 0.5) * (a - 0.5) + (b - 0.5) * (b - 0.5)) / 2.0;
        products += (a - 0.5) * (b - 0.5);
        means.push_back((a + b + c) / 3.0);
    }
    EXPECT_NEAR(all / double(many.size()), 0.50, 0.002);
    EXPECT_NEAR(products / squares, 0.277, 0.01);
    std::sort(means.begin(), means.end());
    const auto quantile = [&](double below) {
        return means[std::size_t(below * double(means.size()))];
    };
    EXPECT_NEAR(quantile(0.10), 0.336, 0.005);
    EXPECT_NEAR(quantile(0.50), 0.508, 0.005);
    EXPECT_NEAR(quantile(0.90), 0.653, 0.005);
}

}  // namespace
