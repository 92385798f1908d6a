#include "solar/places/site.hpp"

#include <numbers>

#include "solar/places/places.hpp"
#include "units/said.hpp"

namespace solar {

namespace {

using namespace units;

using words::Said;
using words::said;
using words::with_decimals;

constexpr std::size_t january = 0;

// Taken in months whose days bring no light worth the name; it enters no energy.
constexpr Clearness of_polar_night{0.40};
constexpr Irradiation no_light = 0.1e6 * joule / square_metre;
constexpr Temperature where_nothing_is_known = celsius(15.0);  // air, all year. ours
// Below it the rounding of a typed figure is a good part of the figure.
constexpr Irradiation little_light = 1e6 * joule / square_metre;

std::size_t month_index(LocalTime when) {
    return static_cast<unsigned>(date_of(when).month()) - 1u;
}

// As the tables of clearness are made: on the day that stands for the month.
Irradiation extraterrestrial_mean_day(Angle latitude, std::size_t month) {
    const int number = mean_day_of_month(int(month) + 1);
    return extraterrestrial_day(latitude, declination_of_day(number), number);
}

Irradiation extraterrestrial_month(Angle latitude, std::size_t month) {
    return extraterrestrial_of_month(latitude, int(month) + 1);
}

std::string of_month(const char* key, std::size_t month) {
    return fmt::format("place.{}[{}]", key, month);
}

words::Number in_kilowatt_hours(Irradiation irradiation) {
    return with_decimals(irradiation / kilowatt_hour_per_square_metre, 2);
}

// As it was typed.
words::Number as_typed(double number) {
    return {.value = number, .digits = 6};
}

// Collects what is wrong while the site is put together.
struct Workshop {
    const scenario::Place& place;
    scenario::Assumptions& assumptions;
    scenario::Findings& findings;
    Errors errors;

    void assume(std::string where, Said text, Said source) {
        assumptions.push_back({std::move(where), std::move(text), std::move(source)});
    }
};

bool has_figures_of_its_own(const scenario::Place& place) {
    return place.irradiation || place.sunshine || place.temperature_range;
}

// The built-in place to lend figures, if one is named or near.
std::optional<KnownPlace> lender(Workshop& work) {
    const scenario::Place& place = work.place;
    if (place.name) {
        auto named = known_place(*place.name);
        if (named) return *named;
        if (!place.latitude || !place.longitude) {
            for (Error& error : named.error())
                work.errors.push_back(std::move(error));
            return std::nullopt;
        }
    }
    if (place.latitude && place.longitude && !has_figures_of_its_own(place))
        return nearest_known_place({*place.latitude, *place.longitude}).place;
    return std::nullopt;
}

void set_coordinates(Workshop& work, Site& site, const std::optional<KnownPlace>& lends) {
    const auto within = [&](const std::optional<Angle>& given, double limit, const char* key) {
        if (given && std::abs(*given / degree) > limit)
            work.errors.push_back(
                {.where = std::string("place.") + key,
                 .found = said<"{angle} degrees">(as_typed(*given / degree)),
                 .remedy = said<"give -{limit} to {limit} degrees">(with_decimals(limit, 0))});
    };
    within(work.place.latitude, 90.0, "latitude");
    within(work.place.longitude, 180.0, "longitude");
    for (const auto& [given, key] : {std::pair{&work.place.latitude, "latitude"},
                                     std::pair{&work.place.longitude, "longitude"}})
        if (!*given && !lends && work.errors.empty())
            work.errors.push_back(
                {.where = std::string("place.") + key,
                 .found = said<"absent, and no built-in place is named">(),
                 .remedy = said<"give {name} or {key}, such as {example}">(
                     "place.name", std::string("place.") + key, "\"41.98 deg\"")});
    site.at = lends ? lends->at : Coordinates{};
    site.at.latitude = work.place.latitude.value_or(site.at.latitude);
    site.at.longitude = work.place.longitude.value_or(site.at.longitude);
}

void set_elevation(Workshop& work, Site& site, const std::optional<KnownPlace>& lends) {
    if (work.place.elevation) {
        site.elevation = *work.place.elevation;
        if (site.elevation < -500.0 * metre || site.elevation > 9000.0 * metre)
            work.errors.push_back({.where = "place.elevation",
                                   .found = said<"{height}">(amount_in(site.elevation, "m", 0)),
                                   .remedy = said<"give -500 m to 9000 m">()});
    } else if (lends) {
        site.elevation = lends->elevation;
    } else {
        work.assume("place.elevation", said<"0 m, sea level">(), said<"ours">());
    }
}

void set_clock(Workshop& work, Site& site, const std::optional<KnownPlace>& lends) {
    const double by_sun = site.at.longitude / degree / 15.0;
    if (work.place.utc_offset) {
        site.utc_offset = *work.place.utc_offset;
    } else if (lends && distance_between(lends->at, site.at) < farthest_of_its_kind) {
        site.utc_offset = lends->utc_offset;
    } else {
        site.utc_offset = std::round(by_sun) * hour;
        work.assume(
            "place.utc_offset",
            said<"{offset}, the nearest whole hour of the sun">(offset_in_words(site.utc_offset)),
            said<"ours; legal time differs by an hour or more in places">());
    }
    double apart = std::abs(site.utc_offset / hour - by_sun);
    apart = std::min(apart, 24.0 - apart);  // either side of the date line
    if (apart > 3.0)
        work.errors.push_back(
            {.where = "place.utc_offset",
             .found = said<"{offset}, {hours} h from the sun at longitude {longitude}">(
                 offset_in_words(site.utc_offset), with_decimals(apart, 1),
                 as_typed(site.at.longitude / degree)),
             .remedy =
                 said<"give standard time within 3 h of longitude / 15; west is negative">()});
}

void clearness_from_irradiation(Workshop& work, Site& site) {
    for (std::size_t month = january; month < 12; ++month) {
        const Irradiation outside = extraterrestrial_month(site.at.latitude, month);
        const Irradiation given = (*work.place.irradiation)[month];
        const double clearness =
            outside > no_light ? double(given / outside) : of_polar_night.value();
        const bool nothing = given <= Irradiation{} && outside > little_light;
        if (given < Irradiation{} || nothing || (outside > little_light && clearness > 0.85))
            work.errors.push_back(
                {.where = of_month("irradiation", month),
                 .found =
                     said<"{light} kWh/m^2/d in {month}, while {most} reach the top of the air">(
                         in_kilowatt_hours(given), name_of_month(int(month) + 1),
                         in_kilowatt_hours(outside)),
                 .remedy = said<"give more than 0 and at most 0.85 of that, on level ground">()});
        site.clearness[month] = Clearness(std::clamp(clearness, 0.02, 0.85));
    }
    site.source = said<"irradiation typed in">();
}

void clearness_from_hours(Workshop& work, Site& site) {
    for (std::size_t month = january; month < 12; ++month) {
        const int day = mean_day_of_month(int(month) + 1);
        const Angle sunset = sunset_hour_angle(site.at.latitude, declination_of_day(day));
        const Duration longest = sunset / degree / 7.5 * hour;
        const Duration given = (*work.place.sunshine)[month];
        if (given < Duration{} || given > longest + 0.5 * hour)
            work.errors.push_back(
                {.where = of_month("sunshine", month),
                 .found = said<"{sunshine} h in {month}, when the day is {day} h long">(
                     with_decimals(given / hour, 1), name_of_month(int(month) + 1),
                     with_decimals(longest / hour, 1)),
                 .remedy = said<"give bright sunshine of a mean day, at most the day's length">()});
        site.clearness[month] = clearness_from_sunshine(given, longest);
    }
    site.source = said<"estimated from sunshine hours, [FAO-56] eq. 35">();
    work.assume("place.irradiation", said<"estimated from sunshine hours (0.25 + 0.50 n/N)">(),
                said<"[FAO-56] eq. 35">());
}

void clearness_from_range(Workshop& work, Site& site) {
    for (std::size_t month = january; month < 12; ++month) {
        const TemperatureDifference given = (*work.place.temperature_range)[month];
        if (!(given > 0.0 * kelvin) || given > 40.0 * kelvin)
            work.errors.push_back(
                {.where = of_month("temperature_range", month),
                 .found = said<"{range} K">(as_typed(given / kelvin)),
                 .remedy = said<"give the day's highest less lowest, 1 K to 40 K">()});
        site.clearness[month] = clearness_from_temperature_range(given, false);
    }
    site.source = said<"estimated from the daily temperature range, [FAO-56] eq. 50">();
    work.assume("place.irradiation",
                said<"estimated from the daily temperature range, inland (0.16); about 20 % "
                     "uncertain">(),
                said<"[FAO-56] eq. 50; the uncertainty is ours">());
}

void borrow_clearness(Workshop& work, Site& site, const KnownPlace& lends) {
    for (std::size_t month = january; month < 12; ++month) {
        const Irradiation ours = extraterrestrial_month(lends.at.latitude, month);
        const double to_ours =
            ours > no_light ? double(extraterrestrial_mean_day(lends.at.latitude, month) / ours)
                            : 1.0;
        site.clearness[month] = Clearness(lends.clearness[month].value() * to_ours);
    }
    site.source = said<"{place}: {source}">(lends.name, lends.known_from);
    const Length apart = distance_between(lends.at, site.at);
    const Length height = abs(lends.elevation - site.elevation);
    const bool is_its_own = work.place.name && !work.place.latitude;
    if (!is_its_own)
        work.assume("place.irradiation",
                    said<"that of {place}, {distance} away">(lends.name, amount_in(apart, "km", 0)),
                    lends.known_from);
    if (apart <= farthest_of_its_kind && height <= highest_of_its_kind) return;
    work.findings.push_back(
        {.severity = scenario::Severity::caution,
         .where = said<"place">(),
         .text = said<"the sun's figures are those of {place}, {distance} and {height} of height "
                      "away; sky and fog can differ over such a distance">(
             lends.name, amount_in(apart, "km", 0), amount_in(height, "m", 0)),
         .mend = said<"give place.irradiation, twelve monthly means for the spot itself">(),
         .source = said<"solar/method.md, section 4">()});
}

void set_warmth(Workshop& work, Site& site, const std::optional<KnownPlace>& lends) {
    site.daily_range = work.place.temperature_range;
    site.temperature = work.place.temperature;
    if (site.temperature) return;
    if (lends && lends->temperature) {
        site.temperature = lends->temperature;
        return;
    }
    work.assume("place.temperature",
                said<"{temperature} all year; {more} more cost a panel 2 % of its power">(
                    where_nothing_is_known, 5.0 * kelvin),
                said<"ours">());
}

}  // namespace

const Said& name_of_month(int month) {
    static const std::array names{said<"January">(), said<"February">(), said<"March">(),
                                  said<"April">(),   said<"May">(),      said<"June">(),
                                  said<"July">(),    said<"August">(),   said<"September">(),
                                  said<"October">(), said<"November">(), said<"December">()};
    return names.at(static_cast<std::size_t>(month - 1));
}

Said offset_in_words(Duration utc_offset) {
    const words::Number hours = as_typed(utc_offset / hour);
    return utc_offset < Duration{} ? said<"{hours} h">(hours) : said<"+{hours} h">(hours);
}

Clearness Site::mean_clearness(LocalTime day) const {
    return clearness[month_index(day)];
}

int mean_day_of_month(int month) {  // [Klein 1977] in [Duffie Beckman] table 1.6.1
    static constexpr std::array<int, 12> days{17,  47,  75,  105, 135, 162,
                                              198, 228, 258, 288, 318, 344};
    return days[std::size_t(month - 1)];
}

Irradiation extraterrestrial_of_month(Angle latitude, int month) {
    const std::chrono::sys_days first = std::chrono::year(2026) / month / 1;  // any common year
    Irradiation all{};
    int days = 0;
    for (std::chrono::sys_days date = first;; date += std::chrono::days(1), ++days) {
        const std::chrono::year_month_day calendar = date;
        if (calendar.month() != std::chrono::month(unsigned(month))) break;
        const Angle delta = declination(instant(local_time(calendar, 12.0 * hour), Duration{}));
        all += extraterrestrial_day(latitude, delta, day_of_year(calendar));
    }
    return all / double(days);
}

Temperature air_temperature(const Site& site, LocalTime when) {
    const std::size_t month = month_index(when);
    const Temperature mean = site.temperature ? (*site.temperature)[month] : where_nothing_is_known;
    // 8 to 10 K are found where only monthly means are known, common practice, no source
    const TemperatureDifference range =
        site.daily_range ? (*site.daily_range)[month] : 9.0 * kelvin;
    const double turn = 2.0 * std::numbers::pi * (time_of_day(when) / hour - 2.5) / 24.0;
    return mean - 0.5 * std::cos(turn) * range;
}

Result<Site> site(const scenario::Place& place, scenario::Assumptions& assumptions,
                  scenario::Findings& findings) {
    Workshop work{place, assumptions, findings, {}};
    const std::optional<KnownPlace> lends = lender(work);
    Site made;
    set_coordinates(work, made, lends);
    if (!work.errors.empty()) return fail(work.errors);
    made.name = place.name ? (known_place(*place.name) ? std::string(lends->name) : *place.name)
                           : fmt::format("{:.2f}, {:.2f}", made.at.latitude / degree,
                                         made.at.longitude / degree);
    set_elevation(work, made, lends);
    set_clock(work, made, lends);
    if (place.irradiation)
        clearness_from_irradiation(work, made);
    else if (place.sunshine)
        clearness_from_hours(work, made);
    else if (place.temperature_range)
        clearness_from_range(work, made);
    else if (lends)
        borrow_clearness(work, made, *lends);
    set_warmth(work, made, lends);
    made.ground_is_known = place.ground_reflectance.has_value();
    if (place.ground_reflectance)
        made.ground = Albedo(place.ground_reflectance->value());
    else
        work.assume("place.ground_reflectance", said<"0.20; fresh snow has 0.7">(),
                    "[Liu Jordan 1963]");
    if (!work.errors.empty()) return fail(work.errors);
    return made;
}

}  // namespace solar
