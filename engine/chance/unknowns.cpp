#include "chance/unknowns.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string_view>

#include <boost/math/special_functions/erf.hpp>

#include "demand/kept_cold.hpp"

namespace chance {

namespace {

using namespace units;

// A range is met four times in five: it ends this many standard deviations away. method.md (3)
constexpr double four_in_five = 1.2816;

double deviation_of_ratio(double ratio) {
    return ratio > 0.0 && std::isfinite(ratio) ? std::abs(std::log(ratio)) / four_in_five : 0.0;
}

// A compressor's cycles in the hours the meter ran: 0.24 after one hour, falling with the root of
// their number. Fitted to eight refrigerators' days: [Reinhardt 2012].
double short_reading(const scenario::Load& load) {
    if (!load.draw || day_kind_of(load) != DayKind::warm) return 0.0;
    const auto* metered = std::get_if<scenario::MeteredUse>(&*load.draw);
    if (!metered || metered->over >= 24.0 * hour) return 0.0;
    return 0.24 / std::sqrt(std::max<double>(metered->over / hour, 0.1));
}

bool is_like(const scenario::Load& load, std::initializer_list<std::string_view> words) {
    return load.like && std::ranges::any_of(words, [&](std::string_view word) {
               return load.like->find(word) != std::string::npos;
           });
}

bool cools(const scenario::Load& load) {
    return demand::has_compressor(load) || demand::keeps_cold(load) != scenario::KeepsCold::nothing;
}

// A fan that comes on and goes off by itself follows a thermostat.
bool heats(const scenario::Load& load) {
    using scenario::MotorKind;
    const bool fan = load.motor && (load.motor->kind == MotorKind::permanent_split_fan ||
                                    load.motor->kind == MotorKind::electronic);
    return is_like(load, {"furnace"}) || (fan && load.runs);
}

}  // namespace

double factor_at(const Sides& sides, double score) {
    const double deviation = score > 0.0 ? sides.above : sides.below;
    return std::min(sides.most, std::exp(deviation * score));
}

double score_of(double drawn) {
    // Not by way of long doubles: it is worked out for every unknown of every member.
    using Plain = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
    return -std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * drawn, Plain());
}

double deviation_of_width(double width) {
    return std::log1p(width) / four_in_five;
}

Sides draw_of(const scenario::Load& load, const demand::LoadPower& power) {
    const double likely = power.likely / watt;
    if (!(likely > 0.0)) return {};
    const double high = power.high / watt / likely;
    const double low = power.low / watt / likely;
    const bool plate = load.draw && std::holds_alternative<scenario::Nameplate>(*load.draw);
    Sides sides{.above = deviation_of_ratio(high), .below = deviation_of_ratio(high)};
    if (plate || load.listed_power) sides.below = deviation_of_ratio(low);
    if (plate) sides.most = high;
    const double more = short_reading(load);
    sides.above = std::hypot(sides.above, more);
    sides.below = std::hypot(sides.below, more);
    return sides;
}

DayKind day_kind_of(const scenario::Load& load) {
    if (cools(load)) return DayKind::warm;
    return heats(load) ? DayKind::cold : DayKind::own;
}

double day_deviation(DayKind kind) {
    switch (kind) {
        case DayKind::warm:
            return 0.10;  // [Reinhardt 2012], seven appliances: 0.024 to 0.106 from day to day
        case DayKind::cold:
            return 0.25;  // [Makonin 2016], a furnace's gas: 0.18 to 0.30 from day to day
        case DayKind::own:
            break;
    }
    return 0.03;  // common practice, no source
}

// Common practice, no source: a maker's figure, and what is taken where the file is silent.
double idle_deviation(const scenario::Inverter& inverter) {
    return inverter.idle ? 0.17 : 0.40;
}

double softness_at(double score) {
    return std::clamp(-score / four_in_five, -1.0, 1.0);
}

// Common practice, no source.
double capacity_deviation(const scenario::Pack& pack) {
    if (pack.tested_capacity) return 0.03;
    return pack.age ? 0.05 : 0.15;
}

// Common practice, no source.
TemperatureDifference warmth_deviation(bool told) {
    return (told ? 2.0 : 3.0) * kelvin;
}

}  // namespace chance
