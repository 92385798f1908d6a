#include "solar/snow.hpp"

#include <algorithm>
#include <cmath>

namespace solar {

namespace {

using namespace units;

constexpr Length inch = 0.0254 * metre;  // the law is written in inches and kilowatt-hours

// Many small falls lie a shorter time than one of their depth together.
double effective(const SnowyMonth& month) {
    if (!(month.falls > 0.0)) return 0.0;
    return 0.5 * (month.fallen / inch) * (1.0 + 1.0 / std::max(1.0, month.falls));
}

}  // namespace

Share lost_to_snow(const SnowyMonth& month, const SnowyMonth& before, const SnowyPanel& panel) {
    const double depth = effective(before) / 3.0 + effective(month) * 2.0 / 3.0;
    const double cos_tilt = std::cos(panel.tilt / radian);
    const double edge = panel.above_ground / inch;
    const double tan_of_repose = std::tan(40.0 * degree / radian);
    // Snow that slid off and lies against the lower edge keeps the rest from sliding.
    const double room = std::max(0.1, edge * edge - depth * depth);
    const double piled = (panel.slant / inch) * depth * cos_tilt / room * 2.0 * tan_of_repose;
    const double in_the_way = 1.0 - 0.51 * std::exp(-piled);
    const double kelvins = in_celsius(month.air) + 273.15;
    const double light = month.on_plane / kilowatt_hour_per_square_metre;
    if (!(light > 0.0)) return Share(depth > 0.0 ? 1.0 : 0.0);
    const double lost = 5.7e4 * depth * cos_tilt * cos_tilt * in_the_way * month.humidity.value() /
                        (kelvins * kelvins) / std::pow(light, 0.67) *
                        (panel.strings_apart ? 0.75 : 1.0);
    return Share(std::clamp(lost, 0.0, 1.0));
}

}  // namespace solar
