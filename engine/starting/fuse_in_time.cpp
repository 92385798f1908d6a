#include "starting/fuse_in_time.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace starting {

namespace {

struct Point {
    double multiple;
    double fastest;  // s
    double slowest;
};

// [Blade sheets], maxi; at 200 % the sheet ends at 50 s, and 60 s is kept.
constexpr std::array points{Point{1.35, 60.0, 1800.0}, Point{2.0, 2.0, 60.0}, Point{3.5, 0.2, 7.0},
                            Point{6.0, 0.04, 1.0}};
constexpr double held_for_ever = 1.1;

double multiple_melting_in(double seconds, double Point::*time) {
    if (seconds >= points.front().*time) return held_for_ever;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const Point& before = points[i - 1];
        const Point& after = points[i];
        if (seconds < after.*time) continue;
        const double along =
            std::log(seconds / (before.*time)) / std::log((after.*time) / (before.*time));
        return before.multiple * std::pow(after.multiple / before.multiple, along);
    }
    return points.back().multiple * std::sqrt((points.back().*time) / seconds);
}

}  // namespace

units::Range<units::Current> melting_current(units::Current rating, units::Duration time) {
    const double seconds = time / units::second;
    const double fastest = multiple_melting_in(seconds, &Point::fastest);
    const double slowest = multiple_melting_in(seconds, &Point::slowest);
    return units::spanning<units::Current>(fastest * rating, std::sqrt(fastest * slowest) * rating,
                                           slowest * rating);
}

double largest_ripple(units::PowerFactor factor) {
    return std::sqrt(1.0 + 0.5 / (factor.value() * factor.value()));
}

}  // namespace starting
