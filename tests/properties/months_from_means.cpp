// What twelve means tell of panels, against the hours the means were made of: in every month, for
// panels that stand in seven ways. The years here are made up, with skies that no part of the
// program knows: fog in the morning, storms in the afternoon, days of either sun or none. Means do
// not know mornings from afternoons, so panels turned east or west are held to theirs only where
// both are alike. solar/method.md (54) CANDLEMARK_HOURLY_YEARS="FILE:FILE" looks at weather files
// besides, and prints every month.
#include <cstdio>
#include <cstdlib>
#include <random>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "solar/irradiation.hpp"
#include "solar/recharge.hpp"
#include "solar/weather/weather_summary.hpp"

namespace {

using namespace units;
using namespace solar;

// ---- Years.

struct Climate {
    const char* name;
    bool mornings_like_afternoons;
    Coordinates at;
    double utc_offset;
    // Share of a cloudless hour's light that is left.
    std::function<double(std::mt19937_64&, int month, int hour, double of_day)> left;
};

double evenly(std::mt19937_64& random, double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
}

// Fog until late in the morning on most days of half the year, hardly a cloud after it.
double foggy_coast(std::mt19937_64& random, int month, int hour, double of_day) {
    const bool season = month >= 4 && month <= 9;
    const bool fog = of_day < (season ? 0.7 : 0.25) && hour <= 11;
    return fog ? evenly(random, 0.2, 0.4) : evenly(random, 0.85, 1.0);
}

// Whole days of cloud or of sun; cloud in two of three of winter.
double dull_winter(std::mt19937_64& random, int month, int /*hour*/, double of_day) {
    const double cloudy = month <= 2 || month >= 11 ? 0.65 : 0.35;
    if (of_day < 0.8 * cloudy) return evenly(random, 0.1, 0.35);
    return of_day < cloudy + 0.1 ? evenly(random, 0.3, 0.9) : evenly(random, 0.85, 1.0);
}

// Bright mornings, towers of cloud and rain from noon on half of the days.
double wet_tropics(std::mt19937_64& random, int month, int hour, double of_day) {
    const double stormy = month >= 5 && month <= 10 ? 0.75 : 0.4;
    if (hour > 12 && of_day < stormy) return evenly(random, 0.1, 0.6);
    return evenly(random, 0.6, 0.95);
}

const std::array climates{
    Climate{"foggy coast, 34 N", false, {34.0 * degree, -120.0 * degree}, -8.0, foggy_coast},
    Climate{"dull winter, 46 N", true, {46.0 * degree, -68.0 * degree}, -5.0, dull_winter},
    Climate{"wet tropics, 6 S", false, {-6.0 * degree, 107.0 * degree}, 7.0, wet_tropics}};

// Cloudless light on level ground is 1098 cos z exp(-0.057/cos z) W/m2 [Haurwitz 1945]; split by
// [Erbs 1982].
HourOfWeather hour_of(const Climate& climate, std::chrono::sys_days date, int of_day, double left) {
    const std::chrono::year_month_day calendar = date;
    double height = 0.0;
    for (int part = 0; part < 6; ++part) {
        const LocalTime when = local_time(calendar, (of_day - 1 + (part + 0.5) / 6.0) * hour);
        const auto sun = sun_position(climate.at, instant(when, climate.utc_offset * hour));
        height += std::max(0.0, std::cos(sun.zenith / radian)) / 6.0;
    }
    HourOfWeather made{.month = int(unsigned(calendar.month())),
                       .date = int(unsigned(calendar.day())),
                       .hour = of_day,
                       .global = Irradiance{},
                       .direct = Irradiance{},
                       .diffuse = Irradiance{},
                       .air = celsius(10.0)};
    if (height < 0.01) return made;
    made.global = left * 1098.0 * height * std::exp(-0.057 / height) * watt_per_square_metre;
    const Irradiance outside = extraterrestrial_normal(day_of_year(calendar)) * height;
    const Clearness clearness(std::min(1.0, double(*made.global / outside)));
    made.diffuse = *made.global * diffuse_share_of_hour(clearness).value();
    made.direct = (*made.global - *made.diffuse) / height;
    return made;
}

WeatherYear year_of(const Climate& climate, unsigned seed) {
    WeatherYear year;
    year.station = climate.name;
    year.at = climate.at;
    year.utc_offset = climate.utc_offset * hour;
    std::mt19937_64 random(seed);
    std::normal_distribution<double> normal;
    double score = 0.0;  // days resemble the one before
    for (std::chrono::sys_days date = std::chrono::year(2026) / 1 / 1;
         date < std::chrono::sys_days(std::chrono::year(2027) / 1 / 1);
         date += std::chrono::days(1)) {
        score = 0.3 * score + std::sqrt(1.0 - 0.09) * normal(random);
        const double of_day = 0.5 * std::erfc(-score / std::sqrt(2.0));
        const int month = int(unsigned(std::chrono::year_month_day(date).month()));
        for (int of_clock = 1; of_clock <= 24; ++of_clock)
            year.hours.push_back(
                hour_of(climate, date, of_clock, climate.left(random, month, of_clock, of_day)));
    }
    return year;
}

// ---- Panels.

struct Stand {
    const char* name;
    double tilt, off_equator;  // degrees

    [[nodiscard]] bool is_turned() const { return off_equator != 0.0; }
};

constexpr std::array stands{Stand{"flat", 0, 0},        Stand{"30 to the equator", 30, 0},
                            Stand{"60", 60, 0},         Stand{"upright", 90, 0},
                            Stand{"45 east", 45, -90},  Stand{"45 west", 45, 90},
                            Stand{"60, 45 off", 60, 45}};

std::array<PanelGroup, 1> panels(const WeatherYear& year, const Stand& stand) {
    const bool north = year.at.latitude > Angle{};
    const double azimuth = north ? 180.0 + stand.off_equator : 360.0 - stand.off_equator;
    return {PanelGroup{.model = {},
                       .aims = {{{}, stand.tilt * degree, std::fmod(azimuth, 360.0) * degree}},
                       .out = {},
                       .shade = {},
                       .covered_days = {}}};
}

// ---- What is held against what.

struct Month {
    double hours = 0.0;  // of the file, J
    double mean = 0.0;   // told from the means
    double low = 0.0, high = 0.0;
    int runs = 0, below = 0, above = 0;  // runs of four days outside their tenths
};

LocalTime first_of(int month) {
    return local_time(std::chrono::year(2026) / month / 1, {});
}

Month look_at(const std::shared_ptr<const WeatherYear>& year, const Site& site, const Stand& stand,
              int month, bool with_runs) {
    const auto groups = panels(*year, stand);
    const LocalTime starts = first_of(month);
    const auto until = month == 12 ? first_of(12) + 31.0 * day : first_of(month + 1);
    const SunTrack track(site, groups, starts, until - starts);
    const auto told = recharge(track, site, {}, {}, 1, 1000).whole;
    Month found{.hours = sum(track.under(HourlySky{year}, {})).offered / joule,
                .mean = told.mean / joule,
                .low = told.low / joule,
                .high = told.high / joule};
    for (int number = 0; with_runs && starts + double(number + 4) * day <= until; ++number) {
        const SunTrack run(site, groups, starts + double(number) * day, 4.0 * day);
        const auto range = recharge(run, site, {}, {}, 1, 400).whole;
        const Energy came = sum(run.under(HourlySky{year}, {})).offered;
        ++found.runs;
        found.below += came < range.low;
        found.above += came > range.high;
    }
    return found;
}

struct Tally {
    int months = 0, inside = 0, runs = 0, below = 0, above = 0;
    double squares = 0.0, errors = 0.0, worst = 0.0;
};

//   turned   of the stands that are, or of those that are not
Tally tally_of(const WeatherYear& made, bool turned, bool all) {
    const auto year = std::make_shared<const WeatherYear>(made);
    const Site site = site_of(*year);
    Tally tally;
    for (const Stand& stand : stands) {
        if (stand.is_turned() != turned) continue;
        for (int month = 1; month <= 12; month += all ? 1 : 3) {
            const Month found = look_at(year, site, stand, month, all);
            const double error = found.mean / found.hours - 1.0;
            const bool inside = found.low <= found.hours && found.hours <= found.high;
            ++tally.months;
            tally.inside += inside;
            tally.squares += error * error;
            tally.errors += error;
            tally.worst = std::max(tally.worst, std::abs(error));
            tally.runs += found.runs;
            tally.below += found.below;
            tally.above += found.above;
            if (all)
                std::printf(
                    "  %-18s %2d: %+5.1f %%, range %+5.1f to %+5.1f %%%s; four days: %d "
                    "below, %d above of %d\n",
                    stand.name, month, 100.0 * error, 100.0 * (found.low / found.hours - 1.0),
                    100.0 * (found.high / found.hours - 1.0), inside ? "" : " OUTSIDE", found.below,
                    found.above, found.runs);
        }
    }
    if (all)
        std::printf(
            "%s, %s: %d of %d months inside, mean error %+.1f %%, root mean square %.1f %%, "
            "largest %.1f %%; runs of four days %d, %.1f %% below, %.1f %% above\n",
            year->station.c_str(), turned ? "turned" : "to the equator", tally.inside, tally.months,
            100.0 * tally.errors / tally.months, 100.0 * std::sqrt(tally.squares / tally.months),
            100.0 * tally.worst, tally.runs, 100.0 * tally.below / std::max(1, tally.runs),
            100.0 * tally.above / std::max(1, tally.runs));
    return tally;
}

TEST(months_from_means, hold_the_months_of_the_hours_they_were_made_of) {
    const char* files = std::getenv("CANDLEMARK_HOURLY_YEARS");
    Tally all;
    const auto add = [&](const WeatherYear& year, bool turned, bool counts) {
        const Tally one = tally_of(year, turned, files != nullptr);
        if (!counts) return;
        all.months += one.months;
        all.inside += one.inside;
        EXPECT_LT(one.worst, 0.12) << year.station;
    };
    for (std::size_t i = 0; i < climates.size(); ++i) {
        const auto year = year_of(climates[i], unsigned(20261129 + i));
        add(year, false, true);
        add(year, true, climates[i].mornings_like_afternoons);
    }
    const std::string paths = files ? files : "";
    for (std::size_t from = 0; from < paths.size();) {
        const auto to = std::min(paths.find(':', from), paths.size());
        const auto year = read_weather_file(paths.substr(from, to - from));
        ASSERT_TRUE(year);
        add(*year, false, true);
        add(*year, true, true);
        from = to + 1;
    }
    EXPECT_GE(10 * all.inside, 9 * all.months) << all.inside << " of " << all.months;
}

}  // namespace
