#include "solar/site.hpp"

#include <numbers>

#include "solar/places.hpp"

namespace solar {

namespace {

using namespace units;

constexpr std::size_t january = 0;
constexpr std::array<std::string_view, 12> month_names{
    "January", "February", "March",     "April",   "May",      "June",
    "July",    "August",   "September", "October", "November", "December"};

// Taken in months whose days bring no light worth the name; it enters no energy.
constexpr Clearness of_polar_night{0.40};
constexpr Irradiation no_light = 0.1e6 * joule / square_metre;
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

double in_kilowatt_hours(Irradiation irradiation) {
    return irradiation / kilowatt_hour_per_square_metre;
}

// Collects what is wrong while the site is put together.
struct Workshop {
    const scenario::Place& place;
    scenario::Assumptions& assumptions;
    scenario::Findings& findings;
    Errors errors;

    void assume(const std::string& where, const std::string& text, const std::string& source) {
        assumptions.push_back({where, text, source});
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
            work.errors.push_back({.where = std::string("place.") + key,
                                   .found = fmt::format("{:g} degrees", *given / degree),
                                   .remedy = fmt::format("give -{0:g} to {0:g} degrees", limit)});
    };
    within(work.place.latitude, 90.0, "latitude");
    within(work.place.longitude, 180.0, "longitude");
    for (const auto& [given, key] : {std::pair{&work.place.latitude, "latitude"},
                                     std::pair{&work.place.longitude, "longitude"}})
        if (!*given && !lends && work.errors.empty())
            work.errors.push_back({.where = std::string("place.") + key,
                                   .found = "absent, and no built-in place is named",
                                   .remedy = std::string("give place.name or place.") + key +
                                             ", such as \"41.98 deg\""});
    site.at = lends ? lends->at : Coordinates{};
    site.at.latitude = work.place.latitude.value_or(site.at.latitude);
    site.at.longitude = work.place.longitude.value_or(site.at.longitude);
}

void set_elevation(Workshop& work, Site& site, const std::optional<KnownPlace>& lends) {
    if (work.place.elevation) {
        site.elevation = *work.place.elevation;
        if (site.elevation < -500.0 * metre || site.elevation > 9000.0 * metre)
            work.errors.push_back({.where = "place.elevation",
                                   .found = fmt::format("{:g} m", site.elevation / metre),
                                   .remedy = "give -500 m to 9000 m"});
    } else if (lends) {
        site.elevation = lends->elevation;
    } else {
        work.assume("place.elevation", "0 m, sea level", "ours");
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
        work.assume("place.utc_offset",
                    fmt::format("{:+g} h, the nearest whole hour of the sun", std::round(by_sun)),
                    "ours; legal time differs by an hour or more in places");
    }
    double apart = std::abs(site.utc_offset / hour - by_sun);
    apart = std::min(apart, 24.0 - apart);  // either side of the date line
    if (apart > 3.0)
        work.errors.push_back(
            {.where = "place.utc_offset",
             .found = fmt::format("{:+g} h, {:.1f} h from the sun at longitude {:g}",
                                  site.utc_offset / hour, apart, site.at.longitude / degree),
             .remedy = "give standard time within 3 h of longitude / 15; west is negative"});
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
                 .found = fmt::format(
                     "{:.2f} kWh/m^2/d in {}, while {:.2f} reach the top of the air",
                     in_kilowatt_hours(given), month_names[month], in_kilowatt_hours(outside)),
                 .remedy = "give more than 0 and at most 0.85 of that, on level ground"});
        site.clearness[month] = Clearness(std::clamp(clearness, 0.02, 0.85));
    }
    site.source = "irradiation typed in";
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
                 .found = fmt::format("{:.1f} h in {}, when the day is {:.1f} h long", given / hour,
                                      month_names[month], longest / hour),
                 .remedy = "give bright sunshine of a mean day, at most the day's length"});
        site.clearness[month] = clearness_from_sunshine(given, longest);
    }
    site.source = "estimated from sunshine hours, [FAO-56] eq. 35";
    work.assume("place.irradiation", "estimated from sunshine hours (0.25 + 0.50 n/N)",
                "[FAO-56] eq. 35");
}

void clearness_from_range(Workshop& work, Site& site) {
    for (std::size_t month = january; month < 12; ++month) {
        const TemperatureDifference given = (*work.place.temperature_range)[month];
        if (!(given > 0.0 * kelvin) || given > 40.0 * kelvin)
            work.errors.push_back({.where = of_month("temperature_range", month),
                                   .found = fmt::format("{:g} K", given / kelvin),
                                   .remedy = "give the day's highest less lowest, 1 K to 40 K"});
        site.clearness[month] = clearness_from_temperature_range(given, false);
    }
    site.source = "estimated from the daily temperature range, [FAO-56] eq. 50";
    work.assume("place.irradiation",
                "estimated from the daily temperature range, inland (0.16); about 20 % uncertain",
                "[FAO-56] eq. 50; the uncertainty is ours");
}

void borrow_clearness(Workshop& work, Site& site, const KnownPlace& lends) {
    for (std::size_t month = january; month < 12; ++month) {
        const Irradiation ours = extraterrestrial_month(lends.at.latitude, month);
        const double to_ours =
            ours > no_light ? double(extraterrestrial_mean_day(lends.at.latitude, month) / ours)
                            : 1.0;
        site.clearness[month] = Clearness(lends.clearness[month].value() * to_ours);
    }
    site.source = fmt::format("{}: {}", lends.name, lends.source);
    const Length apart = distance_between(lends.at, site.at);
    const Length height = abs(lends.elevation - site.elevation);
    const bool is_its_own = work.place.name && !work.place.latitude;
    if (!is_its_own)
        work.assume("place.irradiation",
                    fmt::format("that of {}, {:.0f} km away", lends.name, apart / metre / 1000.0),
                    std::string(lends.source));
    if (apart <= farthest_of_its_kind && height <= highest_of_its_kind) return;
    work.findings.push_back(
        {.severity = scenario::Severity::caution,
         .where = "place",
         .text = fmt::format("the sun's figures are those of {}, {:.0f} km and {:.0f} m of height "
                             "away; sky and fog can differ over such a distance",
                             lends.name, apart / metre / 1000.0, height / metre),
         .mend = "give place.irradiation, twelve monthly means for the spot itself",
         .source = "solar/method.md, section 4"});
}

void set_warmth(Workshop& work, Site& site, const std::optional<KnownPlace>& lends) {
    site.daily_range = work.place.temperature_range;
    site.temperature = work.place.temperature;
    if (site.temperature) return;
    if (lends && lends->temperature) {
        site.temperature = lends->temperature;
        return;
    }
    work.assume("place.temperature", "15 degC all year; 5 K more cost a panel 2 % of its power",
                "ours");
}

}  // namespace

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
    const Temperature mean = site.temperature ? (*site.temperature)[month] : celsius(15.0);
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
        work.assume("place.ground_reflectance", "0.20; fresh snow has 0.7", "[Liu Jordan 1963]");
    if (!work.errors.empty()) return fail(work.errors);
    return made;
}

}  // namespace solar
