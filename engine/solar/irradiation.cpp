#include "solar/irradiation.hpp"

#include <numbers>

namespace solar {

namespace {

using namespace units;

constexpr double pi = std::numbers::pi;

}  // namespace

Irradiance extraterrestrial_normal(int day_of_year) {  // [Duffie Beckman] 1.4.1a
    return solar_constant * (1.0 + 0.033 * std::cos(2.0 * pi * day_of_year / 365.0));
}

Angle declination_of_day(int day_of_year) {  // [Cooper 1969]
    return 23.45 * std::sin(2.0 * pi * (284 + day_of_year) / 365.0) * degree;
}

Angle sunset_hour_angle(Angle latitude, Angle declination) {
    const double cosine = -std::tan(latitude / radian) * std::tan(declination / radian);
    return std::acos(std::clamp(cosine, -1.0, 1.0)) * radian;
}

Irradiation extraterrestrial_day(Angle latitude, Angle declination, int day_of_year) {
    const Angle sunset = sunset_hour_angle(latitude, declination);
    return extraterrestrial_between(latitude, declination, day_of_year, -sunset, sunset);
}

Irradiation extraterrestrial_between(Angle latitude, Angle declination, int day_of_year, Angle from,
                                     Angle to) {
    const double phi = latitude / radian;
    const double delta = declination / radian;
    const double w1 = from / radian;
    const double w2 = to / radian;
    const double sum = std::cos(phi) * std::cos(delta) * (std::sin(w2) - std::sin(w1)) +
                       (w2 - w1) * std::sin(phi) * std::sin(delta);
    const Duration radian_of_day = day / (2.0 * pi);
    return Irradiation::from_value((extraterrestrial_normal(day_of_year) * radian_of_day).value() *
                                   std::max(0.0, sum));
}

Share diffuse_share_of_day(Clearness clearness, Angle sunset) {
    // [Erbs 1982] in [Duffie Beckman] 2.11.1, read in one public code; clamped, since the second
    // form reaches 1.0036 at 0.1
    const double k = clearness.value();
    double share = 0.0;
    if (sunset <= 81.4 * degree)
        share =
            k < 0.715 ? 1.0 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879))) : 0.143;
    else
        share = k < 0.722 ? 1.0 + k * (0.2832 + k * (-2.5557 + k * 0.8448)) : 0.175;
    return Share(std::clamp(share, 0.0, 1.0));
}

Share diffuse_share_of_hour(Clearness clearness) {
    const double k = clearness.value();  // [Erbs 1982] in [Duffie Beckman] 2.10.1
    if (k <= 0.22) return Share(std::min(1.0, 1.0 - 0.09 * k));
    if (k > 0.80) return Share(0.165);
    return Share(0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336))));
}

Frequency diffuse_rate(Angle hour_angle, Angle sunset) {  // [Liu Jordan 1960]
    const double ws = sunset / radian;
    const double above = std::cos(hour_angle / radian) - std::cos(ws);
    const double whole = std::sin(ws) - ws * std::cos(ws);
    if (above <= 0.0 || whole <= 1e-12) return Frequency{};
    return pi / 24.0 * above / whole * per_hour;
}

Frequency global_rate(Angle hour_angle, Angle sunset) {
    // [Collares-Pereira Rabl 1979]; the sign of 0.4767 is misprinted in places, minus closes to 1
    const double shifted = std::sin(sunset / radian - pi / 3.0);
    const double a = 0.409 + 0.5016 * shifted;
    const double b = 0.6609 - 0.4767 * shifted;
    return std::max(0.0, a + b * std::cos(hour_angle / radian)) * diffuse_rate(hour_angle, sunset);
}

Clearness clear_sky(Length elevation) {  // [FAO-56] eq. 37
    return Clearness(0.75 + 2e-5 * (elevation / metre));
}

Clearness clearness_from_sunshine(Duration sunshine, Duration daylight) {
    if (!(daylight > Duration{})) return Clearness(0.25);
    const double fraction = std::clamp(double(sunshine / daylight), 0.0, 1.0);
    return Clearness(0.25 + 0.50 * fraction);  // [FAO-56] eq. 35
}

Clearness clearness_from_temperature_range(TemperatureDifference daily_range, bool on_a_coast) {
    // [FAO-56] eq. 50; never above a clear sky at sea level, ours
    const double k = on_a_coast ? 0.19 : 0.16;
    return Clearness(std::min(0.75, k * std::sqrt(std::max(0.0, double(daily_range / kelvin)))));
}

}  // namespace solar
