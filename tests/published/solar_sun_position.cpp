// The sun's place in the sky and its rising against published worked examples.
#include "solar/sun_position.hpp"
#include "solar/tilt.hpp"

namespace {

using namespace units;
using namespace std::chrono_literals;
using std::chrono::December, std::chrono::February, std::chrono::June, std::chrono::October;
using std::chrono::year_month_day;
using namespace solar;

Instant utc(year_month_day date, Duration after_midnight) {
    return instant(local_time(date, after_midnight), Duration{});
}

// [SPA] sample: 17 October 2003, 12:30:30, UTC-7, 39.742476 N, 105.1786 W, 820 mbar, 11 degC
constexpr Coordinates golden{.latitude = 39.742476 * degree, .longitude = -105.1786 * degree};

SunPosition sample_of_the_report() {
    const Instant when = utc(2003y / October / 17, 19.0 * hour + 30.0 * minute + 30.0 * second);
    return seen_through_air(sun_position(golden, when), 820.0 * millibar, celsius(11.0));
}

TEST(solar_published, the_worked_position_of_the_solar_position_algorithm_report) {
    // printed: zenith 50.11162, azimuth 194.34024; the low-precision formulas hold to 0.012 degrees
    const SunPosition sun = sample_of_the_report();
    EXPECT_NEAR(sun.zenith / degree, 50.11162, 0.02);
    EXPECT_NEAR(sun.azimuth / degree, 194.34024, 0.02);
}

TEST(solar_published, the_worked_incidence_on_a_slope_turned_to_the_east) {
    // printed: slope 30, azimuth rotation -10 (10 degrees east of south): incidence 25.18700;
    // the wrong sign of the turn gives 20.29
    const double cosine =
        cos_incidence(sample_of_the_report(), {.tilt = 30.0 * degree, .azimuth = 170.0 * degree});
    EXPECT_NEAR(std::acos(cosine) * radian / degree, 25.18700, 0.03);
}

TEST(solar_published, the_worked_sunrise_and_a_sunset_two_other_codes_agree_on) {
    // printed sunrise 06:12:43; the printed sunset 17:20:19 is that of 16 October by the local
    // calendar (the report counts days of UTC); 17:18:51 is computed by two independent codes
    const LocalTime morning = local_time(2003y / October / 17, {});
    const Daylight day = rise_and_set(golden, morning, -7.0 * hour);
    ASSERT_TRUE(day.rises && day.sets);
    EXPECT_NEAR((*day.rises - morning) / second, 6 * 3600 + 12 * 60 + 43, 60.0);
    EXPECT_NEAR((*day.sets - morning) / second, 17 * 3600 + 18 * 60 + 51, 60.0);
    const Daylight before = rise_and_set(golden, morning - 1.0 * hour, -7.0 * hour);
    ASSERT_TRUE(before.sets);
    EXPECT_NEAR((*before.sets - morning) / second, 17 * 3600 + 20 * 60 + 19 - 86400, 60.0);
}

struct RiseAndSet {
    year_month_day date;
    double rises;  // s after midnight UTC
    double sets;
};

TEST(solar_published, greenwich_at_both_solstices_by_an_independent_ephemeris) {
    constexpr Coordinates greenwich{.latitude = 51.4779 * degree, .longitude = {}};
    // PyEphem 4.1.4, computed: 03:42:45, 20:20:53; 08:03:05, 15:53:02
    for (const auto& [date, rises, sets] :
         {RiseAndSet{2026y / June / 21, 3 * 3600 + 42 * 60 + 45, 20 * 3600 + 20 * 60 + 53},
          RiseAndSet{2026y / December / 21, 8 * 3600 + 3 * 60 + 5, 15 * 3600 + 53 * 60 + 2}}) {
        const LocalTime midnight = local_time(date, {});
        const Daylight day = rise_and_set(greenwich, midnight, {});
        ASSERT_TRUE(day.rises && day.sets);
        EXPECT_NEAR((*day.rises - midnight) / second, rises, 60.0);
        EXPECT_NEAR((*day.sets - midnight) / second, sets, 60.0);
    }
}

TEST(solar_published, solar_time_of_a_textbook_example) {
    // [Duffie Beckman] example 1.5.1: Madison, 89.4 W, 3 February 10:30 central standard time:
    // E = -13.5 min, solar time 10:19; the series behind it is a mean
    // over years, up to half a minute from the year at hand
    const LocalTime clock = local_time(2026y / February / 3, 10.5 * hour);
    EXPECT_NEAR(equation_of_time(instant(clock, -6.0 * hour)) / minute, -13.5, 0.5);
    const LocalTime noon = solar_noon(-89.4 * degree, clock, -6.0 * hour);
    EXPECT_NEAR((clock - noon) / minute + 720.0, 10 * 60 + 19, 1.0);
}

TEST(solar_published, textbook_incidence_zenith_and_azimuth) {
    constexpr Angle north43 = 43.0 * degree;
    constexpr Angle mid_february = -14.0 * degree;
    // [Duffie Beckman] example 1.6.1: slope 45, 15 west of south, 10:30 solar: cosine 0.817, 35
    // degrees
    const Plane slope{.tilt = 45.0 * degree, .azimuth = 195.0 * degree};
    const double slanted = cos_incidence(north43, mid_february, -22.5 * degree, slope);
    EXPECT_NEAR(slanted, 0.817, 0.0005);
    EXPECT_NEAR(std::acos(slanted) * radian / degree, 35.0, 0.5);
    // example 1.6.2a: 9:30 solar: zenith 66.5 degrees
    const double level = cos_incidence(north43, mid_february, -37.5 * degree, Plane{});
    EXPECT_NEAR(std::acos(level) * radian / degree, 66.5, 0.1);
    // and azimuth 40.0 degrees east of south: a plane so turned sees the sun highest
    const auto upright = [&](double azimuth) {
        return cos_incidence(north43, mid_february, -37.5 * degree,
                             {.tilt = 90.0 * degree, .azimuth = azimuth * degree});
    };
    EXPECT_GT(upright(140.0), upright(139.0));
    EXPECT_GT(upright(140.0), upright(141.0));
    // example 1.6.2b: 1 July, declination 23.1, 18:30 solar: zenith 79.6 degrees
    const double evening = cos_incidence(north43, 23.1 * degree, 97.5 * degree, Plane{});
    EXPECT_NEAR(std::acos(evening) * radian / degree, 79.6, 0.05);
}

}  // namespace
