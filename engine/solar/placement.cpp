#include "solar/placement.hpp"

#include <array>

#include "solar/weather/typical_sky.hpp"
#include "units/said.hpp"

namespace solar {

namespace {

using namespace units;
using words::said;
using words::with_decimals;

Angle towards_the_equator(const Site& site) {
    return (site.at.latitude < Angle{} ? 0.0 : 180.0) * degree;
}

// Tilted by the latitude: near the best over a year; for winter nights more, in summer less.
Angle default_tilt(const Site& site) {
    return std::min(abs(site.at.latitude), Angle(75.0 * degree));
}

std::vector<scenario::Aim> propped_up(const scenario::Panel& panel, const std::string& where,
                                      const Site& site, scenario::Assumptions& assumptions) {
    if (!panel.tilt)
        assumptions.push_back(
            {where + ".tilt",
             said<"{angle} deg, the latitude">(with_decimals(default_tilt(site) / degree, 0)),
             said<"common practice, no source">()});
    if (!panel.azimuth)
        assumptions.push_back({where + ".azimuth",
                               site.at.latitude < Angle{} ? said<"0 deg, to the north">()
                                                          : said<"180 deg, to the south">(),
                               said<"common practice, no source">()});
    return {{.at = {},
             .tilt = panel.tilt.value_or(default_tilt(site)),
             .azimuth = panel.azimuth.value_or(towards_the_equator(site))}};
}

std::vector<scenario::Aim> turned_by_hand(const scenario::Panel& panel, const std::string& where,
                                          const Site& site, LocalTime first_day,
                                          scenario::Assumptions& assumptions) {
    if (!panel.aims.empty()) return panel.aims;
    assumptions.push_back({where + ".aims",
                           said<"turned to the sun by hand at three times of the day">(),
                           said<"ours">()});
    return aims_at_the_sun(site, first_day, 3);
}

}  // namespace

PanelGroup panel_group(const scenario::Panel& panel, const std::string& where, const Site& site,
                       LocalTime first_day, scenario::Assumptions& assumptions) {
    PanelGroup group{.model = panel_model(panel, where, assumptions),
                     .count = panel.count,
                     .in_series = panel.in_series.value_or(1),
                     .aims = {},
                     .out = panel.out,
                     .shade = panel.shade,
                     .covered_days = panel.covered_days};
    switch (panel.placement) {
        case scenario::Placement::flat:
            group.aims = {{.at = {}, .tilt = {}, .azimuth = towards_the_equator(site)}};
            group.warmer_than_nominal = flat_on_ground_warmer;
            assumptions.push_back(
                {where + ".placement",
                 said<"flat on the ground without air behind: cells {warmer} "
                      "warmer in full sun than mounted ones">(flat_on_ground_warmer),
                 said<"ours">()});
            break;
        case scenario::Placement::fixed:
            group.aims = propped_up(panel, where, site, assumptions);
            break;
        case scenario::Placement::aimed:
            group.aims = turned_by_hand(panel, where, site, first_day, assumptions);
            break;
    }
    std::stable_sort(group.aims.begin(), group.aims.end(),
                     [](const auto& a, const auto& b) { return a.at < b.at; });
    return group;
}

std::vector<scenario::Aim> aims_at_the_sun(const Site& site, LocalTime day_held, int count) {
    const LocalTime noon = solar_noon(site.at.longitude, day_held, site.utc_offset);
    const Angle half =
        sunset_hour_angle(site.at.latitude, declination(instant(noon, site.utc_offset)));
    const Duration half_day = half / degree / 15.0 * hour;
    std::vector<scenario::Aim> aims;
    for (int part = 0; part < count; ++part) {
        const auto at = [&](double parts) { return noon + half_day * (2.0 * parts / count - 1.0); };
        const SunPosition sun = sun_position(site.at, instant(at(part + 0.5), site.utc_offset));
        if (sun.zenith >= 90.0 * degree) continue;
        aims.push_back({.at = time_of_day(at(part)), .tilt = sun.zenith, .azimuth = sun.azimuth});
    }
    if (aims.empty())
        aims.push_back(
            {.at = {}, .tilt = default_tilt(site), .azimuth = towards_the_equator(site)});
    std::stable_sort(aims.begin(), aims.end(),
                     [](const auto& a, const auto& b) { return a.at < b.at; });
    return aims;
}

Plane plane_at(const PanelGroup& group, Duration time) {
    const scenario::Aim* holding = &group.aims.back();
    for (const scenario::Aim& aim : group.aims)
        if (aim.at <= time) holding = &aim;
    return {.tilt = holding->tilt, .azimuth = holding->azimuth};
}

bool stands_out(const PanelGroup& group, Duration time, int day_number) {
    const auto& covered = group.covered_days;
    if (std::find(covered.begin(), covered.end(), day_number) != covered.end()) return false;
    return group.out.empty() || std::any_of(group.out.begin(), group.out.end(),
                                            [&](const auto& span) { return holds(span, time); });
}

Share unshaded(const PanelGroup& group, Duration time) {
    double left = 1.0;
    for (const scenario::ShadedHours& shade : group.shade)
        if (holds(shade.hours, time))
            left = std::min(left, std::max(0.0, 1.0 - 2.0 * shade.shaded.value()));
    return Share(left);
}

Plane best_fixed_plane(const Site& site, LocalTime day_held) {
    Plane best{.tilt = {}, .azimuth = towards_the_equator(site)};
    Irradiation most{};
    const LocalTime midnight = midnight_before(day_held);
    for (int tilt = 0; tilt <= 90; tilt += 5) {
        const std::array group{
            PanelGroup{.model = {},
                       .aims = {{.at = {}, .tilt = double(tilt) * degree, .azimuth = best.azimuth}},
                       .out = {},
                       .shade = {},
                       .covered_days = {}}};
        const Irradiation gives =
            sum(sun_offered(site, group, ControllerModel{}, midnight, day, TypicalSky{})).on_plane;
        if (gives <= most) continue;
        most = gives;
        best.tilt = double(tilt) * degree;
    }
    return best;
}

}  // namespace solar
