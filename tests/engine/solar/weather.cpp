#include "solar/weather/weather.hpp"

#include <set>
#include <thread>

#include "solar/weather/drawn_days.hpp"

namespace {

using namespace units;
using namespace solar;

const LocalTime first = local_time(std::chrono::year(2026) / 1 / 28, 18.0 * hour);

Site two_months(double january, double february) {
    Site site;
    site.clearness.fill(Clearness(february));
    site.clearness[0] = Clearness(january);
    return site;
}

TEST(weather, a_name_draws_the_same_days_whatever_else_was_drawn) {
    const Site site = two_months(0.5, 0.5);
    const auto once = daily_clearness(site, first, 14, {}, {.seed = 3, .number = 11});
    (void)daily_clearness(site, first, 14, {}, {.seed = 3, .number = 12});
    EXPECT_EQ(daily_clearness(site, first, 14, {}, {.seed = 3, .number = 11}), once);
    EXPECT_NE(daily_clearness(site, first, 14, {}, {.seed = 4, .number = 11}), once);
    EXPECT_NE(daily_clearness(site, first, 14, {}, {.seed = 3, .number = 12}), once);
}

TEST(weather, a_longer_outage_begins_with_the_days_of_a_shorter_one) {
    const Site site = two_months(0.4, 0.6);
    const auto few = daily_clearness(site, first, 5, {}, {});
    const auto many = daily_clearness(site, first, 20, {}, {});
    EXPECT_TRUE(std::equal(few.begin(), few.end(), many.begin()));
}

TEST(weather, threads_draw_what_one_after_another_draws) {
    const Site site = two_months(0.5, 0.45);
    constexpr std::uint32_t count = 200;
    std::vector<std::vector<Clearness>> serial(count), parallel(count);
    for (std::uint32_t i = 0; i < count; ++i)
        serial[i] = daily_clearness(site, first, 14, {}, {.seed = 9, .number = i});
    std::vector<std::thread> threads;
    for (std::uint32_t part = 0; part < 3; ++part)
        threads.emplace_back([&, part] {
            for (std::uint32_t i = part; i < count; i += 3)
                parallel[i] = daily_clearness(site, first, 14, {}, {.seed = 9, .number = i});
        });
    for (auto& thread : threads)
        thread.join();
    EXPECT_EQ(serial, parallel);
}

TEST(weather, the_generator_is_the_published_one) {
    // [Salmon 2011] known answer of philox4x32 with 10 rounds, counter 0, key 0:
    // 6627e8d5 e169c58d bc57ac4c 9b00dbd8; ours takes the top 52 of the first 64 bits
    const double expected = (double(0xe169c58d6627e8d5ull >> 12) + 0.5) / 4503599627370496.0;
    EXPECT_DOUBLE_EQ(uniform({.seed = 0, .number = 0}, 0, 0), expected);
}

TEST(weather, the_day_after_a_storm_is_among_the_dullest_tenth) {
    const Site site = two_months(0.5, 0.5);
    const WeatherModel after_storm{.first_sky = FirstSky::after_storm, .climate_error = 0.0};
    const Clearness dull = ClearnessDistribution(Clearness(0.5), {}).quantile(Probability(0.1));
    double second_days = 0.0;
    for (std::uint32_t i = 0; i < 4000; ++i) {
        const auto days = daily_clearness(site, first, 2, after_storm, {.seed = 1, .number = i});
        EXPECT_LE(days[0].value(), dull.value() + 1e-12);
        second_days += days[1].value() / 4000.0;
    }
    // The score's mean after one day is 0.29 times that of the dullest tenth, -1.755.
    EXPECT_LT(second_days, 0.43);
    EXPECT_GT(second_days, 0.38);
}

TEST(weather, each_month_has_its_own_days) {
    const Site site = two_months(0.30, 0.65);
    double january = 0.0, february = 0.0;
    for (std::uint32_t i = 0; i < 4000; ++i) {
        const auto days = daily_clearness(site, first, 6, {}, {.seed = 5, .number = i});
        january += (days[0].value() + days[3].value()) / 8000.0;
        february += (days[4].value() + days[5].value()) / 8000.0;
    }
    EXPECT_NEAR(january, 0.30, 0.01);
    EXPECT_NEAR(february, 0.65, 0.01);
}

scenario::Outage outage_of(std::optional<scenario::Cause> cause, double hour_of_day) {
    return {.starts = local_time(std::chrono::year(2026) / 1 / 14, hour_of_day * hour),
            .lasts = 3.0 * day,
            .cause = cause};
}

TEST(weather, a_cause_says_what_it_assumes) {
    scenario::Assumptions assumptions;
    const auto first_sky = [&](std::optional<scenario::Cause> cause) {
        return weather_model(outage_of(cause, 8.0), assumptions).first_sky;
    };
    EXPECT_EQ(first_sky(scenario::Cause::storm), FirstSky::after_storm);
    EXPECT_EQ(first_sky(scenario::Cause::clear), FirstSky::clear);
    EXPECT_EQ(first_sky(std::nullopt), FirstSky::unknown);
    EXPECT_FALSE(assumptions.empty());
}

TEST(weather, a_storm_of_the_evening_stands_over_the_next_day) {
    scenario::Assumptions assumptions;
    EXPECT_EQ(weather_model(outage_of(scenario::Cause::storm, 8.0), assumptions).first_days, 1);
    EXPECT_EQ(weather_model(outage_of(scenario::Cause::storm, 18.0), assumptions).first_days, 2);
}

scenario::Outage forecast_of(std::vector<scenario::DaySky> sky, double hour_of_day) {
    auto outage = outage_of(std::nullopt, hour_of_day);
    outage.sky = std::move(sky);
    return outage;
}

WeatherModel model_of(const scenario::Outage& outage) {
    scenario::Assumptions assumptions;
    return weather_model(outage, assumptions);
}

using enum scenario::DaySky;

TEST(weather, a_forecast_holds_its_days_in_their_band_and_hands_over) {
    const Site site = two_months(0.5, 0.5);
    auto model = model_of(forecast_of({clear, dark}, 8.0));
    model.climate_error = 0.0;
    const ClearnessDistribution days(Clearness(0.5), {});
    // By hand: the brightest quarter; then the darkest tenth, whose edge has gone a tenth of the
    // way to any day: 0.10 + 0.1 x 0.90 = 0.19.
    const double bright = days.quantile(Probability(0.75)).value();
    const double dull = days.quantile(Probability(0.19)).value();
    double third_days = 0.0;
    for (std::uint32_t i = 0; i < 4000; ++i) {
        const auto drawn = daily_clearness(site, first, 3, model, {.seed = 2, .number = i});
        EXPECT_GE(drawn[0].value(), bright - 1e-12);
        EXPECT_LE(drawn[1].value(), dull + 1e-12);
        third_days += drawn[2].value() / 4000.0;
    }
    // The third day remembers a dull second one and nothing else.
    EXPECT_LT(third_days, 0.48);
    EXPECT_GT(third_days, 0.40);
}

TEST(weather, a_forecast_of_the_evening_begins_with_the_next_day) {
    // Bands of local days: what is left of the first evening, the next day, the one after.
    const auto model = model_of(forecast_of({clear, grey}, 18.0));
    ASSERT_EQ(model.forecast.size(), 3u);
    EXPECT_DOUBLE_EQ(model.forecast[0].from.value(), 0.75);
    EXPECT_DOUBLE_EQ(model.forecast[1].from.value(), 0.75);
    EXPECT_DOUBLE_EQ(model.forecast[2].from.value(), 0.09);  // 0.10 less a tenth
    EXPECT_DOUBLE_EQ(model.forecast[2].to.value(), 0.46);    // 0.40 and a tenth of 0.60
    EXPECT_EQ(model_of(forecast_of({clear, grey}, 8.0)).forecast.size(), 2u);
}

TEST(weather, a_forecast_stands_before_the_storm_that_began_it) {
    auto outage = forecast_of({mixed}, 8.0);
    outage.cause = scenario::Cause::storm;
    EXPECT_EQ(model_of(outage).first_sky, FirstSky::unknown);
    EXPECT_EQ(model_of(outage).forecast.size(), 1u);
}

TEST(weather, a_brighter_forecast_never_gives_a_darker_day) {
    // Day by day under the same draws, ten forecast days and five after them.
    const Site site = two_months(0.45, 0.55);
    const auto under = [&](std::vector<scenario::DaySky> sky, std::uint32_t i) {
        return daily_clearness(site, first, 15, model_of(forecast_of(std::move(sky), 8.0)),
                               {.seed = 6, .number = i});
    };
    const auto all = [](scenario::DaySky sky) { return std::vector(10, sky); };
    for (std::uint32_t i = 0; i < 2000; ++i) {
        const auto none = under({}, i);
        std::vector<Clearness> before(none.size(), Clearness(0.0));
        for (const auto& days : {under(all(dark), i), under(all(grey), i), under(all(mixed), i),
                                 under(all(clear), i)}) {
            for (std::size_t number = 0; number < days.size(); ++number)
                EXPECT_GE(days[number], before[number]) << i << " day " << number;
            before = days;
        }
        const auto darkest = under(all(dark), i);
        for (std::size_t number = 0; number < none.size(); ++number) {
            EXPECT_LE(darkest[number], none[number]) << i << " day " << number;
            EXPECT_GE(before[number], none[number]) << i << " day " << number;
        }
    }
}

TEST(weather, the_ends_of_what_can_be_drawn_stay_numbers) {
    const Site site = two_months(0.5, 0.5);
    const auto model = model_of(forecast_of({clear, clear, dark, dark}, 8.0));
    for (const double drawn : {1e-16, 0.5, 1.0 - 1e-16}) {
        const std::vector<double> days(8, drawn);
        for (const Clearness clearness : daily_clearness(site, first, model, drawn, days))
            EXPECT_TRUE(clearness.value() > 0.0 && clearness.value() < 1.0) << drawn;
    }
}

}  // namespace
