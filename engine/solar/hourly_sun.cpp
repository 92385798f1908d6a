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

// The hour's light belongs to the part of the hour in which the sun is up.
StepLight light_of(const HourOfWeather& row, const TrackStep& step) {
    const double gathered = std::min(12.0, double(hour / step.lit_in_its_hour));
    if (row.direct && row.diffuse)
        return {.beam = std::min<Irradiance>(*row.direct * (gathered * step.cos_zenith),
                                             step.extraterrestrial),
                .diffuse = *row.diffuse * gathered};
    if (!row.global || !(step.extraterrestrial > Irradiance{})) return {};
    const Irradiance global = *row.global * gathered;
    const double clearness = std::min(1.0, double(global / step.extraterrestrial));
    const double share = diffuse_share_of_hour(Clearness(clearness)).value();
    return {.beam = std::min<Irradiance>(global * (1.0 - share), step.extraterrestrial),
            .diffuse = global * share};
}

}  // namespace

SunSeries SunTrack::under_hours(const WeatherYear& year, const ControllerModel& controller) const {
    SunSeries series;
    series.reserve(steps_.size());
    for (std::size_t i = 0; i < steps_.size(); ++i) {
        const TrackStep& step = steps_[i];
        if (!step.lit) {
            series.push_back({.start = step.start, .duration = step.duration});
            continue;
        }
        const HourOfWeather& row = row_at(year, step.start + 0.5 * step.duration);
        series.push_back(lit(i, light_of(row, step), row.air.value_or(step.air), controller));
    }
    return series;
}

}  // namespace solar
