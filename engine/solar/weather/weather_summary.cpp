#include "solar/weather/weather_summary.hpp"

#include <algorithm>
#include <cmath>

#include "solar/irradiation.hpp"
#include "solar/weather/weather_hour.hpp"
#include "units/said.hpp"

namespace solar {

using namespace units;

namespace {

// Hours whose three kinds of light stand in the file, with the sun in them.
struct LitHour {
    const HourOfWeather* row;
    std::size_t number;
};

double closure(const WeatherYear& year, const std::vector<LitHour>& lit, double hours_before_end) {
    Irradiance sum{};
    Irradiance global{};
    for (const auto& [row, number] : lit) {
        global += *row->global;
        sum += *row->direct * cos_zenith_at(year, *row, hours_before_end) + *row->diffuse;
    }
    return global > Irradiance{} ? double(sum / global) : 0.0;
}

// By how much later the sun fits the light: the shift, in half hours, at which direct and diffuse
// light make the global hour by hour. Zero unless another fits a good deal better. method.md (48)
struct Fit {
    Duration late{};
    double misfit = 0.0;
};

Fit fit_of(const WeatherYear& year, const std::vector<LitHour>& lit) {
    constexpr int reach = 24;                    // half hours
    constexpr double a_good_deal_better = 0.02;  // of the year's global light: ours
    if (lit.empty()) return {};
    const auto misses = [&](int half_hours) {
        double sum = 0.0;
        double global = 0.0;
        // every third hour: enough to tell, and no hour of the day is left out
        for (std::size_t i = 0; i < lit.size(); i += 3) {
            const HourOfWeather& row = *lit[i].row;
            global += row.global->value();
            sum += std::abs(row.global->value() - row.diffuse->value() -
                            row.direct->value() * cos_zenith_at(year, row, 0.5 - 0.5 * half_hours));
        }
        return global > 0.0 ? sum / global : 0.0;
    };
    const double now = misses(0);
    if (now < a_good_deal_better) return {{}, now};
    int best = 0;
    double least = now;
    for (int shift = -reach; shift <= reach; ++shift) {
        const double missed = misses(shift);
        if (missed >= least) continue;
        least = missed;
        best = shift;
    }
    if (now - least < a_good_deal_better) return {{}, now};
    return {0.5 * best * hour, least};
}

constexpr double leap = 8.0;  // K, off the hours on both sides; ours

void count_what_no_sky_does(const WeatherYear& year, WeatherSummary& found) {
    const auto& hours = year.hours;
    const auto air = [&](std::size_t i) { return in_celsius(*hours[i].air); };
    for (std::size_t i = 0; i < hours.size(); ++i) {
        const HourOfWeather& row = hours[i];
        if (i > 0 && i + 1 < hours.size() && hours[i - 1].air && row.air && hours[i + 1].air)
            found.leaps +=
                std::abs(air(i) - air(i - 1)) > leap && std::abs(air(i) - air(i + 1)) > leap;
        if (row.light == LightFrom::nowhere) continue;
        const double global = row.global->value();
        const double direct = row.direct->value();
        const double diffuse = row.diffuse->value();
        if (std::max({global, direct, diffuse}) <= 20.0) continue;
        const double height = height_of_hour(year, row);
        found.lit_at_night += height <= 0.0;
        const double outside = outside_the_air(row).value();
        found.brighter_than_sun +=
            std::max(global, diffuse) > outside * height + 100.0 || direct > outside;
        if (row.light == LightFrom::file)
            found.unbalanced += std::abs(global - direct * height - diffuse) > 100.0;
    }
}

Irradiation in_an_hour(const std::optional<Irradiance>& light) {
    return Irradiation(light.value_or(Irradiance{}) * hour);
}

void sum_light(const WeatherYear& year, WeatherSummary& found) {
    std::array<int, 12> days_of{};
    for (const HourOfWeather& row : year.hours) {
        found.missing += row.light == LightFrom::nowhere;
        found.worked_out += row.light == LightFrom::worked_out;
        found.global += in_an_hour(row.global);
        found.direct += in_an_hour(row.direct);
        found.diffuse += in_an_hour(row.diffuse);
        const auto month = std::size_t(row.month - 1);
        found.monthly[month] += in_an_hour(row.global);
        days_of[month] += row.hour == 24;
    }
    for (std::size_t month = 0; month < 12; ++month)
        if (days_of[month] > 0) found.monthly[month] /= double(days_of[month]);
}

void sum_warmth(const WeatherYear& year, WeatherSummary& found) {
    double warmth = 0.0;
    int warm_hours = 0;
    for (const HourOfWeather& row : year.hours) {
        if (!row.air) {
            ++found.without_air;
            continue;
        }
        warmth += in_celsius(*row.air);
        ++warm_hours;
        found.coldest = std::min(found.coldest.value_or(*row.air), *row.air);
        found.warmest = std::max(found.warmest.value_or(*row.air), *row.air);
    }
    if (warm_hours > 0) found.mean = celsius(warmth / warm_hours);
}

void find_dullest_days(const WeatherYear& year, WeatherSummary& found) {
    std::vector<Irradiation> days(year.hours.size() / 24);
    for (std::size_t i = 0; i < year.hours.size(); ++i)
        days[i / 24] += in_an_hour(year.hours[i].global);
    const auto worst = std::min_element(days.begin(), days.end());
    found.worst_day = *worst;
    const HourOfWeather& first_hour = year.hours[std::size_t(worst - days.begin()) * 24];
    found.worst_day_month = first_hour.month;
    found.worst_day_date = first_hour.date;
    std::size_t dullest = 0;
    const auto three_from = [&](std::size_t i) { return days[i] + days[i + 1] + days[i + 2]; };
    for (std::size_t i = 1; i + 2 < days.size(); ++i)
        if (three_from(i) < three_from(dullest)) dullest = i;
    found.worst_three_days = three_from(dullest);
    found.worst_three_days_month = year.hours[dullest * 24].month;
    found.worst_three_days_date = year.hours[dullest * 24].date;
}

std::vector<LitHour> lit_hours(const WeatherYear& year, int worked_out) {
    std::vector<LitHour> lit;
    for (std::size_t i = 0; i < year.hours.size(); ++i) {
        const HourOfWeather& row = year.hours[i];
        if (row.light == LightFrom::file && *row.global + *row.direct > Irradiance{})
            lit.push_back({&row, i});
    }
    // Where a kind is missing all day, hours of twilight alone hold all three: they tell nothing.
    if (10 * lit.size() < std::size_t(worked_out)) lit.clear();
    return lit;
}

void hold_light_against_sun(const WeatherYear& year, WeatherSummary& found) {
    const std::vector<LitHour> lit = lit_hours(year, found.worked_out);
    found.closure = closure(year, lit, 0.5);
    found.closure_at_the_hours_end = closure(year, lit, 0.0);
    const Fit fit = fit_of(year, lit);
    found.sun_late = fit.late;
    found.misfit = fit.misfit;
    found.half_an_hour_off =
        std::abs(found.closure_at_the_hours_end - 1.0) + 0.005 < std::abs(found.closure - 1.0);
}

}  // namespace

WeatherSummary summary(const WeatherYear& year) {
    WeatherSummary found;
    found.station = year.station;
    found.letters_guessed = year.letters_guessed;
    found.hours = int(year.hours.size());
    sum_light(year, found);
    sum_warmth(year, found);
    find_dullest_days(year, found);
    hold_light_against_sun(year, found);
    count_what_no_sky_does(year, found);
    return found;
}

namespace {

using scenario::Severity;
using words::said;
using words::said_of;
using words::with_decimals;
using Oddities = std::vector<Oddity>;

words::Said compare_with_the_copy() {
    return said<"compare the station's line with the maker's copy of the file">();
}

void tell_missing_light(const WeatherSummary& sums, Oddities& odd) {
    if (sums.missing > 0)
        odd.push_back({Severity::caution,
                       said_of<"{n} of {hours} hours has no usable light with the sun up; it "
                               "counts as dark",
                               "{n} of {hours} hours have no usable light with the sun up; they "
                               "count as dark">(sums.missing, sums.hours),
                       said<"take a complete file">()});
    if (sums.worked_out > 0)
        odd.push_back(
            {Severity::note,
             said_of<"a kind of light is missing in {n} hour and is worked out from the "
                     "others; global light alone is split by [Erbs 1982]",
                     "a kind of light is missing in {n} hours and is worked out from "
                     "the others; global light alone is split by [Erbs 1982]">(sums.worked_out),
             ""});
}

words::Said far_off(double late) {
    const words::Number hours{.value = std::abs(late), .digits = 6};
    if (late > 0.0)
        return said<
            "the light fits the sun {hours} h later best: the clock in the file's first line, its "
            "longitude or its rows are shifted">(hours);
    return said<
        "the light fits the sun {hours} h earlier best: the clock in the file's first line, its "
        "longitude or its rows are shifted">(hours);
}

words::Said half_an_hour_off(const WeatherSummary& sums) {
    const words::Number at_the_end = with_decimals(sums.closure_at_the_hours_end, 3);
    const words::Number in_the_middle = with_decimals(sums.closure, 3);
    if (sums.sun_late < Duration{})
        return said<
            "the sun's height fits the light better half an hour earlier (closure {shifted} "
            "against {as_it_is})">(at_the_end, in_the_middle);
    return said<
        "the sun's height fits the light better half an hour later (closure {shifted} against "
        "{as_it_is})">(at_the_end, in_the_middle);
}

void tell_clock(const WeatherSummary& sums, Oddities& odd) {
    const double late = sums.sun_late / hour;
    if (std::abs(late) > 0.75)
        odd.push_back({Severity::caution, far_off(late), compare_with_the_copy()});
    else if (sums.half_an_hour_off || late != 0.0)
        odd.push_back({Severity::note, half_an_hour_off(sums), ""});
}

void tell_missing_warmth(const WeatherSummary& sums, Oddities& odd) {
    if (sums.without_air > 0)
        odd.push_back({Severity::note,
                       said_of<"{n} hour has no temperature; the month's mean takes its place",
                               "{n} hours have no temperature; the month's mean takes its place">(
                           sums.without_air),
                       ""});
}

void tell_light_that_does_not_close(const WeatherSummary& sums, Oddities& odd) {
    constexpr double far_from_closed = 0.03;  // ours
    if (sums.closure > 0.0 &&
        (std::abs(sums.closure - 1.0) > far_from_closed || sums.misfit > 0.02))
        odd.push_back({Severity::caution,
                       said<"direct and diffuse light make {share} of the global light and miss "
                            "it by {misfit} % hour by hour: the clock, the place or one of the "
                            "columns may be wrong">(with_decimals(sums.closure, 3),
                                                    with_decimals(100.0 * sums.misfit, 1)),
                       compare_with_the_copy()});
}

void tell_what_no_sky_does(const WeatherSummary& sums, Oddities& odd) {
    const auto impossible = [&](int count, words::Said text) {
        if (count > 0)
            odd.push_back({count > sums.hours / 100 ? Severity::caution : Severity::note,
                           std::move(text),
                           said<"compare them with the maker's copy of the file">()});
    };
    impossible(sums.unbalanced,
               said_of<"{n} hour in which direct and diffuse light miss the global light by more "
                       "than 100 W/m^2",
                       "{n} hours in which direct and diffuse light miss the global light by more "
                       "than 100 W/m^2">(sums.unbalanced));
    impossible(sums.lit_at_night,
               said_of<"{n} hour with light while the sun is down",
                       "{n} hours with light while the sun is down">(sums.lit_at_night));
    impossible(sums.brighter_than_sun,
               said_of<"{n} hour with more light than reaches the top of the air",
                       "{n} hours with more light than reaches the top of the air">(
                   sums.brighter_than_sun));
    impossible(sums.leaps,
               said_of<"{n} hour with air more than {leap} off the hours on both sides",
                       "{n} hours with air more than {leap} off the hours on both sides">(
                   sums.leaps, leap * units::kelvin));
}

}  // namespace

std::vector<Oddity> oddities_of(const WeatherSummary& sums) {
    Oddities odd;
    tell_missing_light(sums, odd);
    tell_clock(sums, odd);
    tell_missing_warmth(sums, odd);
    tell_light_that_does_not_close(sums, odd);
    tell_what_no_sky_does(sums, odd);
    if (sums.letters_guessed)
        odd.push_back(
            {Severity::note,
             said<"the letters of the station's name are not UTF-8 and are read as Latin-1">(),
             {}});
    return odd;
}

std::optional<Albedo> mean_ground(const WeatherYear& year) {
    double sum = 0.0;
    int known = 0;
    for (const HourOfWeather& row : year.hours) {
        if (!row.ground || row.global.value_or(Irradiance{}) <= Irradiance{}) continue;
        sum += row.ground->value();
        ++known;
    }
    if (known == 0) return std::nullopt;
    return Albedo(sum / known);
}

std::optional<std::array<Temperature, 12>> monthly_temperature(const WeatherYear& year) {
    std::array<double, 12> warmth{};
    std::array<int, 12> hours{};
    for (const HourOfWeather& row : year.hours)
        if (row.air) {
            warmth[std::size_t(row.month - 1)] += in_celsius(*row.air);
            ++hours[std::size_t(row.month - 1)];
        }
    std::array<Temperature, 12> means;
    for (std::size_t month = 0; month < 12; ++month) {
        if (hours[month] == 0) return std::nullopt;
        means[month] = celsius(warmth[month] / hours[month]);
    }
    return means;
}

Site site_of(const WeatherYear& year) {
    const WeatherSummary sums = summary(year);
    Site made{.name = year.station,
              .at = year.at,
              .elevation = year.elevation,
              .utc_offset = year.utc_offset,
              .temperature = monthly_temperature(year),
              .daily_range = {},
              .source = said<"hourly weather file of {station}">(year.station)};
    for (std::size_t month = 0; month < 12; ++month) {
        const Irradiation outside = extraterrestrial_of_month(year.at.latitude, int(month) + 1);
        const bool is_lit = outside > 0.1e6 * joule / square_metre;
        made.clearness[month] = Clearness(
            is_lit ? std::clamp(double(sums.monthly[month] / outside), 0.02, 0.85) : 0.40);
    }
    return made;
}

}  // namespace solar
