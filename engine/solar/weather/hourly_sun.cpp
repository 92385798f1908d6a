// The sun of a weather file's hours on the track: SunTrack::under_hours.
#include <cmath>
#include <numbers>

#include "solar/sun_track.hpp"
#include "solar/weather/file_snow.hpp"

namespace solar {

namespace {

using namespace units;

// The file's hour for a local time.
const HourOfWeather& row_at(const WeatherYear& year, LocalTime when) {
    const int of_day = std::clamp(int(time_of_day(when) / hour), 0, 23);
    return year.hours[day_of(year, when) * 24 + std::size_t(of_day)];
}

// The draws of an outage's days, with the file's own falls where it tells of them: those of so many
// days later.
std::vector<SnowDraw> with_falls_of(const WeatherYear& year, std::vector<SnowDraw> draws,
                                    LocalTime first, int days_later) {
    if (year.snowfall.empty()) return draws;
    for (std::size_t number = 0; number < draws.size(); ++number) {
        const LocalTime midnight = first + double(int(number) + days_later) * day;
        draws[number].falls = year.snowfall[day_of(year, midnight)] ? 0.0 : 1.0;
    }
    return draws;
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

// The part of a clock hour with the sun up.
struct LitPart {
    double share = 0.0;   // of the hour
    double height = 0.0;  // cosine of the zenith, its mean over the whole hour
};

// Exact for a sun that keeps its declination through the day.
LitPart lit_part(Angle latitude, const TrackDay& of, Duration begins) {
    const double pi = std::numbers::pi;
    const double phi = latitude / radian;
    const double delta = of.declination / radian;
    const double sunset = of.sunset / radian;
    const double hours = (begins - of.noon) / hour;
    const double from = (hours - 24.0 * std::floor((hours + 12.0) / 24.0)) * pi / 12.0;
    const double until = from + pi / 12.0;
    LitPart part;
    for (const double turn : {0.0, 2.0 * pi}) {  // an hour may reach into the next day's morning
        const double up = std::max(from, turn - sunset);
        const double down = std::min(until, turn + sunset);
        if (down <= up) continue;
        part.share += (down - up) * 12.0 / pi;
        part.height += (std::sin(phi) * std::sin(delta) * (down - up) +
                        std::cos(phi) * std::cos(delta) * (std::sin(down) - std::sin(up))) *
                       12.0 / pi;
    }
    return part;
}

// Square on to the sun, with no cloud. [Meinel 1976], with the air's mass of [Kasten Young 1989].
Irradiance clear_beam(double cos_zenith) {
    const double zenith = std::acos(std::clamp(cos_zenith, 0.0, 1.0)) * 180.0 / std::numbers::pi;
    const double air_mass = 1.0 / (cos_zenith + 0.50572 * std::pow(96.07995 - zenith, -1.6364));
    return 1353.0 * std::pow(0.7, std::pow(air_mass, 0.678)) * watt_per_square_metre;
}

// The hour's light belongs to the part of it with the sun up. While it rises or sets, the sky's
// light grows with the sun's height and the beam is gathered into that part, but not beyond a
// cloudless one; what is left over is twilight, and no step gets more than reaches the top of the
// air. (46)
StepLight light_of(const HourOfWeather& row, const TrackStep& step, const LitPart& part,
                   double season) {
    if (row.light == LightFrom::nowhere || !(part.share > 0.0)) return {};
    const Irradiance most = step.extraterrestrial;
    if (part.share > 1.0 - 1e-9)
        return {.beam = std::min<Irradiance>(*row.direct * step.cos_zenith, most),
                .diffuse = *row.diffuse * season};
    const double risen = part.height > 0.0 ? step.cos_zenith / part.height : 0.0;
    const Irradiance diffuse = std::min<Irradiance>(*row.diffuse * (risen * season), most);
    const Irradiance square_on = std::max<Irradiance>(
        *row.direct, std::min<Irradiance>(*row.direct / part.share, clear_beam(step.cos_zenith)));
    return {.beam = std::min<Irradiance>(square_on * step.cos_zenith, most - diffuse),
            .diffuse = diffuse};
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

SunSeries SunTrack::under_hours(const HourlySky& sky, const ControllerModel& controller) const {
    const WeatherYear& year = *sky.year;
    const int days_later = sky.days_later;
    const auto covered =
        days_.empty()
            ? std::vector<Covered>{}
            : covered_days(with_falls_of(year, sky.snow, days_.front().midnight, days_later));
    std::vector<double> seasons;
    for (const TrackDay& of : days_)
        seasons.push_back(season(latitude_, of.midnight, days_later));
    // The file keeps its own clock.
    const Duration to_file = year.utc_offset - utc_offset_;
    const Duration later = double(days_later) * day + to_file;
    SunSeries series;
    series.reserve(steps_.size());
    for (std::size_t i = 0; i < steps_.size(); ++i) {
        const TrackStep& step = steps_[i];
        if (!step.lit) {
            series.push_back({.start = step.start, .duration = step.duration});
            continue;
        }
        const LocalTime middle = step.start + 0.5 * step.duration;
        const HourOfWeather& row = row_at(year, middle + later);
        const TrackDay& of = days_[std::size_t(step.day)];
        const Duration in_file = middle + to_file - of.midnight;
        const Duration hour_begins = std::floor(in_file / hour) * hour - to_file;
        const auto light = light_of(row, step, lit_part(latitude_, of, hour_begins),
                                    seasons[std::size_t(step.day)]);
        const Albedo ground = ground_is_known_ ? ground_ : row.ground.value_or(ground_);
        series.push_back(lit(i, light, row.air.value_or(step.air), ground, controller,
                             covered[std::size_t(step.day)]));
    }
    return series;
}

}  // namespace solar
