#include "inverter/overload.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include <fmt/format.h>

#include "units/said.hpp"

namespace inverter {

namespace {

using units::Duration;
using units::Ends;
using units::second;
using words::Said;
using words::said;

OverloadPoint point(double multiple, double seconds) {
    return {LoadMultiple(multiple), seconds * second};
}

// Nothing but a continuous rating is known: perhaps no surge at all, perhaps twice the rating.
// All times here are common practice, no source; makers say "split second" to "5 s" of a surge
// ([Inverter manuals]).
constexpr double usual_surge = 2.0;

// Hold times at a surge of `surge`, and half way to it, when the maker does not state them.
OverloadCurve unstated(double surge, double near_rating, double half_way, double at_surge) {
    const double middle = 1.0 + 0.5 * (surge - 1.0);
    OverloadCurve curve;
    if (middle > 1.1) {
        curve.push_back(point(1.1, near_rating));
    }
    curve.push_back(point(middle, half_way));
    curve.push_back(point(surge, at_surge));
    return curve;
}

Ends<OverloadCurve> unstated_duration(double surge) {
    return {unstated(surge, 60.0, 1.0, 0.02), unstated(surge, 60.0, 10.0, 1.0),
            unstated(surge, 300.0, 30.0, 5.0)};
}

OverloadCurve stated(double surge, Duration lasts, double near_rating) {
    OverloadCurve curve;
    if (surge > 1.1) {
        curve.push_back({LoadMultiple(1.1), std::max(near_rating * second, lasts)});
    }
    curve.push_back({LoadMultiple(surge), lasts});
    return curve;
}

units::Error bad_point(std::size_t index, Said found, Said remedy) {
    return {.where = fmt::format("[{}]", index),
            .found = std::move(found),
            .remedy = std::move(remedy)};
}

double derating(units::Temperature at_the_case) {
    constexpr double from_celsius = 40.0;
    constexpr double a_degree = 0.01;
    const double above = std::max(0.0, units::in_celsius(at_the_case) - from_celsius);
    return std::max(0.0, 1.0 - a_degree * above);
}

}  // namespace

units::Result<OverloadCurve> overload_curve(std::vector<OverloadPoint> points) {
    units::Errors errors;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (points[i].multiple.value() <= 1.0) {
            errors.push_back(bad_point(i, said<"a multiple of 1 or less is no overload">(),
                                       said<"give a load above the continuous rating">()));
        }
        if (points[i].holds <= 0.0 * second) {
            errors.push_back(
                bad_point(i, said<"holds for no time">(), said<"give a time above zero">()));
        }
    }
    std::sort(points.begin(), points.end(), [](const OverloadPoint& a, const OverloadPoint& b) {
        return a.multiple < b.multiple;
    });
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (points[i].multiple == points[i - 1].multiple) {
            errors.push_back(
                bad_point(i, said<"the same multiple twice">(), said<"give each multiple once">()));
        } else if (points[i].holds > points[i - 1].holds) {
            errors.push_back(
                bad_point(i, said<"a heavier load is held for longer than a lighter one">(),
                          said<"look at the times again">()));
        }
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return points;
}

std::optional<Duration> hold_time(const OverloadCurve& curve, LoadMultiple multiple) {
    if (multiple.value() <= 1.0) {
        return std::nullopt;
    }
    const auto above = std::find_if(
        curve.begin(), curve.end(),
        [multiple](const OverloadPoint& candidate) { return candidate.multiple >= multiple; });
    if (above == curve.end()) {
        return 0.0 * second;
    }
    if (above == curve.begin()) {
        return above->holds;
    }
    const OverloadPoint& below = *(above - 1);
    const double along = (multiple.value() - below.multiple.value()) /
                         (above->multiple.value() - below.multiple.value());
    return below.holds * std::pow(above->holds / below.holds, along);
}

LoadMultiple largest_multiple(const OverloadCurve& curve) {
    return curve.empty() ? LoadMultiple(1.0) : curve.back().multiple;
}

Strain strain_of(const OverloadCurve& curve, std::span<const OverloadStep> steps) {
    Strain strain;
    double used = 0.0;
    for (const OverloadStep& step : steps) {
        strain.largest = std::max(strain.largest, step.multiple);
        const auto holds = hold_time(curve, step.multiple);
        if (!holds || step.lasts <= 0.0 * second) {
            continue;
        }
        if (*holds <= 0.0 * second) {
            strain.above_curve = true;
        } else {
            used += step.lasts / *holds;
        }
    }
    strain.used = units::Share(used);
    return strain;
}

Duration recovery_rest() {
    return 15.0 * units::minute;
}

namespace {

// The maker's own points, and the surge behind them: for its stated time, or for the usual range of
// times, but never for longer than the last point.
OverloadCurves stated_points(const scenario::Inverter& inverter) {
    OverloadCurve points;
    for (const auto& held : inverter.overload) {
        points.push_back({LoadMultiple(held.at.value()), held.holds});
    }
    const double surge = inverter.surge ? double(*inverter.surge / inverter.continuous) : 0.0;
    const auto last = points.back();
    if (surge <= last.multiple.value()) {
        return {.curve = units::exactly(points), .duration_known = true};
    }
    const auto with_surge = [&](Duration lasts) {
        OverloadCurve curve = points;
        curve.push_back({LoadMultiple(surge), std::min(lasts, last.holds)});
        return curve;
    };
    if (inverter.surge_lasts) {
        return {.curve = units::exactly(with_surge(*inverter.surge_lasts)), .duration_known = true};
    }
    const auto usual = unstated_duration(surge);
    return {.curve = units::each(
                [&](const OverloadCurve& curve) { return with_surge(curve.back().holds); }, usual),
            .known_up_to = last.multiple,
            .assumptions = {
                {"inverter.surge_lasts",
                 said<"beyond {last} times the rating, the last of its points, the "
                      "surge of {surge} times holds {time}">(
                     words::Number{.value = last.multiple.value()}, words::Number{.value = surge},
                     units::between<Duration>(std::min(usual.low.back().holds, last.holds),
                                              std::min(usual.high.back().holds, last.holds), 2)),
                 said<"common practice, no source">()}}};
}

}  // namespace

OverloadCurves overload_curves(const scenario::Inverter& inverter) {
    if (!inverter.overload.empty()) {
        return stated_points(inverter);
    }
    if (!inverter.surge) {
        return {.curve = {{point(1.1, 60.0)},
                          unstated_duration(usual_surge).likely,
                          unstated_duration(usual_surge).high},
                .assumptions = {{"inverter.surge",
                                 said<"between none at all and twice the continuous rating">(),
                                 said<"common practice, no source">()}}};
    }
    const double surge = *inverter.surge / inverter.continuous;
    if (surge <= 1.0) {
        return {.curve = {}, .duration_known = true};
    }
    if (inverter.surge_lasts) {
        const Duration lasts = *inverter.surge_lasts;
        return {.curve = {stated(surge, lasts, 60.0), stated(surge, lasts, 60.0),
                          stated(surge, lasts, 300.0)},
                .duration_known = true};
    }
    return {.curve = unstated_duration(surge),
            .assumptions = {{"inverter.surge_lasts",
                             said<"the surge of {surge} times the rating holds 0.02 to 5 s, half "
                                  "of the way to it 1 to 30 s">(words::Number{.value = surge}),
                             said<"common practice, no source">()}}};
}

units::Power derated(units::Power continuous, units::Temperature at_the_case) {
    return derating(at_the_case) * continuous;
}

units::ApparentPower derated(units::ApparentPower continuous, units::Temperature at_the_case) {
    return derating(at_the_case) * continuous;
}

}  // namespace inverter
