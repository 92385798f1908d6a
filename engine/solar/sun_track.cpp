#include "solar/sun_track.hpp"

#include <array>
#include <numbers>

#include "solar/snow_days.hpp"

namespace solar {

namespace {

using namespace units;

constexpr Duration longest_step = 15.0 * minute;

// One local day as the sun sees it: its declination and its noon are those of the day's noon.
struct DaySun {
    Angle declination;
    Angle sunset;
    Duration noon;  // after the day's midnight
    int day_of_year;

    // 0 at noon, wrapped to half a turn either side
    [[nodiscard]] Angle hour_angle(Duration after_midnight) const {
        const double hours = (after_midnight - noon) / hour;
        const double wrapped = hours - 24.0 * std::floor((hours + 12.0) / 24.0);
        return wrapped * 15.0 * degree;
    }
};

DaySun sun_of_day(const Site& site, LocalTime midnight) {
    const LocalTime noon = solar_noon(site.at.longitude, midnight, site.utc_offset);
    const Angle delta = declination(instant(noon, site.utc_offset));
    return {.declination = delta,
            .sunset = sunset_hour_angle(site.at.latitude, delta),
            .noon = noon - midnight,
            .day_of_year = day_of_year(date_of(midnight))};
}

// One step of a day before it is cut to the span asked for.
struct Piece {
    Duration begins, lasts, middle;
    double cos_zenith, global, diffuse;
};

// Times after midnight at which a step must end: quarter hours, sunrise and sunset, whatever
// changes at a panel, and the ends of the span asked for.
std::vector<Duration> boundaries(const DaySun& sun, std::span<const PanelGroup> groups,
                                 Duration from, Duration until) {
    std::vector<Duration> ends;
    const auto add = [&](Duration time) {
        if (time > Duration{} && time < day) ends.push_back(time);
    };
    for (int quarter = 0; quarter <= 96; ++quarter)
        ends.push_back(double(quarter) * longest_step);
    if (sun.sunset > Angle{} && sun.sunset < std::numbers::pi * radian) {
        const Duration half = sun.sunset / degree / 15.0 * hour;
        for (const Duration& time : {sun.noon - half, sun.noon + half})
            for (const double shift : {-1.0, 0.0, 1.0})
                add(time + shift * day);
    }
    for (const PanelGroup& group : groups) {
        for (const auto& aim : group.aims)
            add(aim.at);
        for (const auto& span : group.out)
            add(span.from), add(span.until);
        for (const auto& shade : group.shade)
            add(shade.hours.from), add(shade.hours.until);
    }
    add(from);
    add(until);
    std::sort(ends.begin(), ends.end());
    const auto same = [](Duration a, Duration b) { return b - a < 1e-3 * second; };
    ends.erase(std::unique(ends.begin(), ends.end(), same), ends.end());
    ends.back() = day;
    return ends;
}

// A day's steps, with the sums of what each gets of its light.
struct DayPieces {
    std::vector<Piece> in_order;
    double global = 0.0, diffuse = 0.0;
};

DayPieces pieces_of(const Site& site, const DaySun& sun, const std::vector<Duration>& ends) {
    const double phi = site.at.latitude / radian;
    const double delta = sun.declination / radian;
    DayPieces pieces;
    for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
        const Duration middle = 0.5 * (ends[i] + ends[i + 1]);
        const Duration length = ends[i + 1] - ends[i];
        const Angle w = sun.hour_angle(middle);
        const double cos_zenith = std::sin(phi) * std::sin(delta) +
                                  std::cos(phi) * std::cos(delta) * std::cos(w / radian);
        const bool up = cos_zenith > 0.0;
        pieces.in_order.push_back({ends[i], length, middle, cos_zenith,
                                   up ? double(global_rate(w, sun.sunset) * length) : 0.0,
                                   up ? double(diffuse_rate(w, sun.sunset) * length) : 0.0});
        pieces.global += pieces.in_order.back().global;
        pieces.diffuse += pieces.in_order.back().diffuse;
    }
    return pieces;
}

Aspect aspect(const PanelGroup& group, Angle latitude, const DaySun& sun, Duration middle,
              double cos_zenith, int day_number) {
    const Plane plane = plane_at(group, middle);
    const Angle w = sun.hour_angle(middle);
    const double incidence = cos_incidence(latitude, sun.declination, w, plane);
    const double cos_tilt = std::cos(plane.tilt / radian);
    return {.cos_incidence = incidence,
            .beam_ratio = plane.tilt == Angle{} ? 1.0 : beam_ratio(incidence, cos_zenith),
            .sky_view = 0.5 * (1.0 + cos_tilt),
            .ground_view = 0.5 * (1.0 - cos_tilt),
            .direct_glass = through_glass(incidence).value(),
            .unshaded = unshaded(group, middle).value(),
            .out = stands_out(group, middle, day_number)};
}

PanelsGive group_gives(const PanelGroup& group, Irradiance absorbed, Temperature air,
                       const ControllerModel& controller) {
    const TemperatureDifference extra =
        group.warmer_than_nominal * (absorbed / (800.0 * watt_per_square_metre));
    const Temperature cells = cell_temperature(group.model, absorbed, air) + extra;
    if (controller.kind == scenario::ControllerKind::mppt)
        return {.power = double(group.count) * peak_power(group.model, absorbed, cells),
                .current = {}};
    const double in_series = std::max(1, group.in_series);
    return {.power = {},
            .current =
                group.count / in_series *
                current_at(group.model, controller.battery_voltage / in_series, absorbed, cells)};
}

}  // namespace

SunTrack::SunTrack(const Site& site, std::span<const PanelGroup> groups, LocalTime from,
                   Duration lasts)
    : latitude_(site.at.latitude),
      utc_offset_(site.utc_offset),
      ground_(site.ground),
      ground_is_known_(site.ground_is_known),
      groups_(groups.begin(), groups.end()) {
    for (const PanelGroup& group : groups_)
        rated_ += group.count * (group.model.rated_power / watt);
    const LocalTime until = from + lasts;
    int number = 0;
    for (LocalTime midnight = midnight_before(from); midnight < until; midnight = midnight + day)
        add_day(site, midnight, from, until, number++);
    day_begins_.push_back(steps_.size());
}

void SunTrack::add_day(const Site& site, LocalTime midnight, LocalTime from, LocalTime until,
                       int number) {
    const DaySun sun = sun_of_day(site, midnight);
    const DayPieces pieces =
        pieces_of(site, sun, boundaries(sun, groups_, from - midnight, until - midnight));
    const Irradiance outside = extraterrestrial_normal(sun.day_of_year);
    days_.push_back({midnight,
                     extraterrestrial_day(site.at.latitude, sun.declination, sun.day_of_year),
                     sun.sunset, sun.declination, sun.noon});
    day_begins_.push_back(steps_.size());
    skies_.emplace_back(site.mean_clearness(midnight), site.elevation);
    for (const Piece& piece : pieces.in_order) {
        const LocalTime start = midnight + piece.begins;
        if (midnight + piece.middle < from || midnight + piece.middle > until) continue;
        const bool lit = piece.cos_zenith > 0.0 && pieces.global > 0.0 && pieces.diffuse > 0.0;
        const bool goes_on = !lit && steps_.size() > day_begins_.back() && !steps_.back().lit;
        if (goes_on) {
            steps_.back().duration += piece.lasts;
            continue;
        }
        const LocalTime noted = start < from ? from : start;
        steps_.push_back(
            {.start = noted,
             .duration = piece.lasts,
             .day = number,
             .lit = lit,
             .cos_zenith = piece.cos_zenith,
             .extraterrestrial = outside * std::max(0.0, piece.cos_zenith),
             .global_share =
                 lit ? piece.global / pieces.global / double(piece.lasts / second) : 0.0,
             .diffuse_share =
                 lit ? piece.diffuse / pieces.diffuse / double(piece.lasts / second) : 0.0,
             .air = air_temperature(site, midnight + piece.middle)});
        for (const PanelGroup& group : groups_)
            aspects_.push_back(
                lit ? aspect(group, latitude_, sun, piece.middle, piece.cos_zenith, number + 1)
                    : Aspect{});
    }
}

SunTrack::DayLight SunTrack::day_light(std::size_t number, Clearness clearness) const {
    const TrackDay& of = days_[number];
    const Irradiation global = of.extraterrestrial * clearness.value();
    return {global, global * diffuse_share_of_day(clearness, of.sunset).value()};
}

std::vector<SunTrack::Covered> SunTrack::covered_days(std::span<const SnowDraw> draws) const {
    std::vector<Covered> days(days_.size());
    if (draws.empty() || days_.empty()) return days;
    draws = draws.first(std::min(draws.size(), days_.size()));
    for (std::size_t i = 0; i < groups_.size(); ++i) {
        if (groups_[i].snow.empty()) continue;
        const auto covered = covered_by_snow(groups_[i], days_.front().midnight, draws);
        for (std::size_t number = 0; number < covered.size(); ++number) {
            if (!covered[number]) continue;
            days[number].resize(groups_.size(), false);
            days[number][i] = true;
        }
    }
    return days;
}

SunStep SunTrack::lit(std::size_t number, DayLight light, const ControllerModel& controller,
                      const Covered& covered) const {
    const TrackStep& step = steps_[number];
    const double global = light.global.value() * step.global_share;  // W/m2
    const double diffuse = std::min(global, light.diffuse.value() * step.diffuse_share);
    return lit(number,
               {.beam = (global - diffuse) * watt_per_square_metre,
                .diffuse = diffuse * watt_per_square_metre},
               step.air, ground_, controller, covered);
}

SunStep SunTrack::lit(std::size_t number, StepLight light, Temperature air, Albedo ground,
                      const ControllerModel& controller, const Covered& covered) const {
    const TrackStep& step = steps_[number];
    SunStep made{.start = step.start, .duration = step.duration};
    if (!step.lit) return made;
    const double beam = light.beam.value();
    const double diffuse = light.diffuse.value();
    const double outside = step.extraterrestrial.value();
    const double around_sun = outside > 0.0 ? std::min(1.0, beam / outside) : 0.0;  // (26)
    static const double glass_all_round = through_glass_from_all_sides().value();
    PanelsGive all;
    double weighted = 0.0;
    for (std::size_t i = 0; i < groups_.size(); ++i) {
        const PanelGroup& group = groups_[i];
        const Aspect& aspect = aspects_[number * groups_.size() + i];
        const double direct = (beam + around_sun * diffuse) * aspect.beam_ratio;
        const double even = diffuse * (1.0 - around_sun) * aspect.sky_view +
                            (beam + diffuse) * (ground.value() * aspect.ground_view);
        weighted += (direct + even) * group.count * (group.model.rated_power / watt);
        if (!aspect.out || (!covered.empty() && covered[i])) continue;
        const Irradiance absorbed =
            (direct * aspect.unshaded * aspect.direct_glass + even * glass_all_round) *
            watt_per_square_metre;
        all = all + group_gives(group, absorbed, air, controller);
    }
    const Offer offer = through_controller(controller, all);
    made.on_plane = (rated_ > 0.0 ? weighted / rated_ : 0.0) * watt_per_square_metre;
    made.offered = offer.power;
    made.clipped = offer.clipped;
    made.current = offer.current;
    return made;
}

SunSum SunTrack::day_sum(std::size_t number, Clearness clearness,
                         const ControllerModel& controller) const {
    const DayLight light = day_light(number, clearness);
    SunSum sum;
    for (std::size_t i = day_begins_[number]; i < day_begins_[number + 1]; ++i) {
        if (!steps_[i].lit) continue;
        const SunStep step = lit(i, light, controller);
        sum.offered += step.offered * step.duration;
        sum.clipped += step.clipped * step.duration;
        sum.on_plane += Irradiation(step.on_plane * step.duration);
    }
    return sum;
}

}  // namespace solar
