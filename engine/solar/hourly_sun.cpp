// The sun of a weather file's hours on the track: SunTrack::under_hours.
#include "solar/sun_track.hpp"
#include "solar/weather_file.hpp"

namespace solar {

namespace {

using namespace units;

constexpr int days_before(int month) {
    constexpr std::array before{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
    return before[std::size_t(month - 1)];
}

// The file's hour for a local time. 29 February takes the 28th where the file has none.
const HourOfWeather& row_at(const WeatherYear& year, LocalTime when) {
    const std::chrono::year_month_day date = date_of(when);
    const int month = int(unsigned(date.month()));
    int of_month = int(unsigned(date.day()));
    const bool leap = year.hours.size() == 8784;
    if (!leap && month == 2) of_month = std::min(of_month, 28);
    const int day_number = days_before(month) + of_month - 1 + (leap && month > 2);
    const int of_day = std::clamp(int(time_of_day(when) / hour), 0, 23);
    return year.hours[std::size_t(day_number * 24 + of_day)];
}

// Light without air on the outage's day over that on the day the hours are taken from: what is
// borrowed of another day is its air, not its sun. 1 where either day is all but dark. (46)
double season(Angle latitude, LocalTime midnight, int days_later) {
    if (days_later == 0) return 1.0;
    const auto outside = [&](LocalTime of_day) {
        const Angle delta = declination(instant(of_day + 12.0 * hour, Duration{}));
        return extraterrestrial_day(latitude, delta, day_of_year(date_of(of_day)));
    };
    const Irradiation here = outside(midnight);
    const Irradiation there = outside(midnight + double(days_later) * day);
    constexpr Irradiation all_but_dark = 1e6 * joule / square_metre;
    return here > all_but_dark && there > all_but_dark ? double(here / there) : 1.0;
}

// The hour's light belongs to the part of the hour in which the sun is up.
StepLight light_of(const HourOfWeather& row, const TrackStep& step, double season) {
    const double gathered = std::min(12.0, double(hour / step.lit_in_its_hour));
    if (row.direct && row.diffuse)
        return {.beam = std::min<Irradiance>(*row.direct * (gathered * step.cos_zenith),
                                             step.extraterrestrial),
                .diffuse = *row.diffuse * (gathered * season)};
    if (!row.global || !(step.extraterrestrial > Irradiance{})) return {};
    const Irradiance global = *row.global * (gathered * season);
    const double clearness = std::min(1.0, double(global / step.extraterrestrial));
    const double share = diffuse_share_of_hour(Clearness(clearness)).value();
    return {.beam = std::min<Irradiance>(global * (1.0 - share), step.extraterrestrial),
            .diffuse = global * share};
}

}  // namespace

std::optional<Temperature> mean_temperature_on(const WeatherYear& year, LocalTime midnight) {
    double sum = 0.0;
    int known = 0;
    for (int of_day = 0; of_day < 24; ++of_day) {
        const auto& row = row_at(year, midnight + (of_day + 0.5) * hour);
        if (!row.air) continue;
        sum += in_celsius(*row.air);
        ++known;
    }
    if (known == 0) return std::nullopt;
    return celsius(sum / known);
}

SunSeries SunTrack::under_hours(const WeatherYear& year, int days_later,
                                const ControllerModel& controller) const {
    std::vector<double> seasons;
    for (const TrackDay& of : days_)
        seasons.push_back(season(latitude_, of.midnight, days_later));
    const Duration later = double(days_later) * day;
    SunSeries series;
    series.reserve(steps_.size());
    for (std::size_t i = 0; i < steps_.size(); ++i) {
        const TrackStep& step = steps_[i];
        if (!step.lit) {
            series.push_back({.start = step.start, .duration = step.duration});
            continue;
        }
        const HourOfWeather& row = row_at(year, step.start + 0.5 * step.duration + later);
        const double of_season = seasons[std::size_t(step.day)];
        series.push_back(
            lit(i, light_of(row, step, of_season), row.air.value_or(step.air), controller));
    }
    return series;
}

}  // namespace solar
