#include "motor/start.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <limits>

#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>

namespace motor {

namespace {

using units::second;

constexpr double most_used = 1000.0;  // stands for a motor without any torque left
// The curves turn once or twice in ln(slip), within a factor of e: 25 points find each turn.
constexpr int looks = 24;

// Motor, load and source together at any slip. Everything below counts in SI.
struct RunUp {
    const InductionMotor& motor;
    const LoadTorque& load;
    const Source& source;

    [[nodiscard]] Drawn drawn(double slip) const {
        return {motor.rated_voltage, current_at(motor, Slip(slip)),
                power_factor_at(motor, Slip(slip))};
    }
    [[nodiscard]] double motor_torque(double slip, bool winding) const {
        const double share = source(drawn(slip)) / motor.rated_voltage;
        return share * share * (torque_at(motor, Slip(slip), winding) / newton_metre);
    }
    [[nodiscard]] double load_torque(double slip) const {
        return torque_of(load, motor, Slip(slip)) / newton_metre;
    }
    [[nodiscard]] double used(double slip, bool winding) const {
        const double needed = load_torque(slip);
        const double given = motor_torque(slip, winding);
        return needed >= most_used * given ? most_used : needed / given;
    }
    // Seconds spent per unit of -ln(slip), method.md (10).
    [[nodiscard]] double dwell(double slip, bool winding) const {
        const double momentum = motor.inertia * motor.synchronous_speed / (newton_metre * second);
        return momentum * slip / (motor_torque(slip, winding) - load_torque(slip));
    }
};

// A part of the way with the start winding in or out; slip falls from `from` to `to`.
struct Stretch {
    double from;
    double to;
    bool winding;
};

struct Look {
    double slip;
    double used;
};

std::vector<Stretch> way_to_speed(const InductionMotor& motor) {
    const double peak = breakdown_slip(motor).value();
    if (!motor.cut_out) {
        return {{1.0, std::min(peak, 1.0), true}};
    }
    const double opens = 1.0 - motor.cut_out->value();
    return {{1.0, opens, true}, {opens, std::min(peak, opens), false}};
}

// Even in ln(slip), with every peak between two of them added; slip falls.
std::vector<Look> look_along(const RunUp& run_up, const Stretch& stretch) {
    const double length = std::log(stretch.to / stretch.from);
    const auto at = [&](double along) {
        const double slip = stretch.from * std::exp(along * length);
        return Look{slip, run_up.used(slip, stretch.winding)};
    };
    std::array<Look, looks + 1> even{};
    for (int i = 0; i <= looks; ++i) {
        even[static_cast<std::size_t>(i)] = at(static_cast<double>(i) / looks);
    }
    std::vector<Look> found;
    found.reserve(even.size() + 4);
    for (std::size_t i = 0; i < even.size(); ++i) {
        const bool peak = i > 0 && i < looks && even[i].used >= even[i - 1].used &&
                          even[i].used >= even[i + 1].used && even[i].used < most_used;
        if (!peak) {
            found.push_back(even[i]);
            continue;
        }
        const double step = 1.0 / looks;
        const double middle = static_cast<double>(i) * step;
        const auto lowest = boost::math::tools::brent_find_minima(
            [&](double along) { return -at(along).used; }, middle - step, middle + step, 24);
        found.push_back(lowest.first < middle ? at(lowest.first) : even[i]);
        found.push_back(lowest.first < middle ? even[i] : at(lowest.first));
    }
    return found;
}

double slip_where_torques_meet(const RunUp& run_up, bool winding, double above, double below) {
    std::uintmax_t most = 80;
    const auto bracket = boost::math::tools::bisect(
        [&](double slip) { return run_up.used(slip, winding) - 1.0; }, below, above,
        boost::math::tools::eps_tolerance<double>(40), most);
    return bracket.second;
}

double seconds_along(const RunUp& run_up, const Stretch& stretch) {
    if (stretch.from <= stretch.to) {
        return 0.0;
    }
    constexpr unsigned deepest = 8;
    constexpr double relative = 1e-5;
    return boost::math::quadrature::gauss_kronrod<double, 15>::integrate(
        [&](double speeding) { return run_up.dwell(std::exp(-speeding), stretch.winding); },
        -std::log(stretch.from), -std::log(stretch.to), deepest, relative);
}

// Between two neighbours of the plot.
double seconds_of_step(const RunUp& run_up, const Stretch& step) {
    return boost::math::quadrature::gauss<double, 7>::integrate(
        [&](double speeding) { return run_up.dwell(std::exp(-speeding), step.winding); },
        -std::log(step.from), -std::log(step.to));
}

// The time over one stretch, split where the torques come closest.
double seconds_along(const RunUp& run_up, const Stretch& stretch, const std::vector<Look>& looked) {
    const auto closest = std::max_element(
        looked.begin(), looked.end(), [](const Look& a, const Look& b) { return a.used < b.used; });
    const Stretch before{stretch.from, closest->slip, stretch.winding};
    const Stretch after{closest->slip, stretch.to, stretch.winding};
    return seconds_along(run_up, before) + seconds_along(run_up, after);
}

void note_what_is_drawn(const RunUp& run_up, double slip, Start& start) {
    const Drawn drawn = run_up.drawn(slip);
    const units::Voltage voltage = run_up.source(drawn);
    const units::Current current = current_at(drawn, voltage);
    start.lowest_voltage = std::min(start.lowest_voltage, voltage);
    start.largest_current = std::max(start.largest_current, current);
    start.largest_apparent =
        std::max(start.largest_apparent, units::ApparentPower(current * voltage));
    start.largest_real = std::max(start.largest_real, real_power_at(drawn, voltage));
}

// Where the load first takes all the torque there is; absent when it never does.
std::optional<double> first_stall(const RunUp& run_up, const Stretch& stretch,
                                  const std::vector<Look>& looked, Start& start) {
    for (std::size_t i = 0; i < looked.size(); ++i) {
        start.torque_used = std::max(start.torque_used, Multiple(looked[i].used));
        note_what_is_drawn(run_up, looked[i].slip, start);
        if (looked[i].used >= 1.0) {
            return i == 0 ? looked[i].slip
                          : slip_where_torques_meet(run_up, stretch.winding, looked[i - 1].slip,
                                                    looked[i].slip);
        }
    }
    return std::nullopt;
}

Instant instant_at(const RunUp& run_up, double slip, units::Duration time) {
    const Drawn drawn = run_up.drawn(slip);
    const units::Voltage voltage = run_up.source(drawn);
    const units::Current current = current_at(drawn, voltage);
    return {.time = time,
            .speed = SpeedShare(1.0 - slip),
            .voltage = voltage,
            .current = current,
            .real = real_power_at(drawn, voltage),
            .apparent = units::ApparentPower(current * voltage)};
}

// The way as the plot goes it; ends at the stall, or where the running motor settles.
struct Leg {
    Stretch stretch;
    bool settles;  // `to` is only approached
};

std::vector<Leg> legs_of(const RunUp& run_up, const Start& start) {
    std::vector<Leg> legs;
    const double stall = 1.0 - start.stalls_at.value();
    const auto way = way_to_speed(run_up.motor);
    for (const Stretch& stretch : way) {
        if (start.end == StartEnd::stalls_on_the_way && stall >= stretch.to) {
            if (stall < stretch.from) {
                const bool at_the_switch =
                    run_up.used(stall * (1.0 + 1e-6), stretch.winding) < 0.99;
                legs.push_back({{stretch.from, stall, stretch.winding}, !at_the_switch});
            }
            return legs;
        }
        legs.push_back({stretch, false});
    }
    constexpr double nearly_synchronous = 1e-6;
    const Stretch last = way.back();
    const double settled =
        run_up.used(nearly_synchronous, last.winding) < 1.0
            ? nearly_synchronous
            : slip_where_torques_meet(run_up, last.winding, last.to, nearly_synchronous);
    legs.push_back({{last.to, settled, last.winding}, true});
    return legs;
}

double slip_along(const Leg& leg, double along) {
    constexpr double nearly_there = 0.01;
    const auto [from, to, winding] = leg.stretch;
    return leg.settles ? to + (from - to) * std::pow(nearly_there, along)
                       : from * std::pow(to / from, along);
}

// The last instant at `until`: on the line to the first one after it, or the state held.
void end_at(units::Duration until, std::vector<Instant>& course) {
    const auto late = std::find_if(course.begin(), course.end(),
                                   [until](const Instant& i) { return i.time >= until; });
    if (late == course.end()) {
        course.push_back(course.back());
    } else if (late != course.begin()) {
        const Instant before = *(late - 1);
        const double along = (until - before.time) / (late->time - before.time);
        late->speed =
            SpeedShare(before.speed.value() + along * (late->speed.value() - before.speed.value()));
        late->voltage = before.voltage + along * (late->voltage - before.voltage);
        late->current = before.current + along * (late->current - before.current);
        late->real = before.real + along * (late->real - before.real);
        late->apparent = before.apparent + along * (late->apparent - before.apparent);
        course.erase(late + 1, course.end());
    }
    course.back().time = until;
}

}  // namespace

Start start(const InductionMotor& motor, const LoadTorque& load, const Source& source) {
    const RunUp run_up{motor, load, source};
    Start found{.lowest_voltage = source(run_up.drawn(1.0))};
    double seconds = 0.0;
    for (const Stretch& stretch : way_to_speed(motor)) {
        const auto looked = look_along(run_up, stretch);
        if (const auto stall = first_stall(run_up, stretch, looked, found)) {
            found.end = *stall >= 1.0 ? StartEnd::stalls_at_rest : StartEnd::stalls_on_the_way;
            found.stalls_at = SpeedShare(1.0 - *stall);
            return found;
        }
        seconds += seconds_along(run_up, stretch, looked);
        if (motor.cut_out && stretch.winding) {
            found.cut_out_after = seconds * second;
        }
    }
    found.end = StartEnd::runs;
    found.time_to_speed = seconds * second;
    return found;
}

std::vector<Instant> course_of_start(const InductionMotor& motor, const LoadTorque& load,
                                     const Source& source, units::Duration until, int points) {
    assert(points >= 4 && until > 0.0 * second);
    const RunUp run_up{motor, load, source};
    std::vector<Instant> course{instant_at(run_up, 1.0, 0.0 * second)};
    const Start found = start(motor, load, source);
    if (found.end != StartEnd::stalls_at_rest) {
        const auto legs = legs_of(run_up, found);
        const int each_leg = std::max(1, (points - 2) / static_cast<int>(legs.size()));
        double seconds = 0.0;
        for (const Leg& leg : legs) {
            double slip = leg.stretch.from;
            for (int i = 1; i <= each_leg && leg.stretch.to < leg.stretch.from; ++i) {
                const double next = slip_along(leg, static_cast<double>(i) / each_leg);
                seconds += seconds_of_step(run_up, {slip, next, leg.stretch.winding});
                slip = next;
                course.push_back(instant_at(run_up, slip, seconds * second));
            }
        }
    }
    end_at(until, course);
    return course;
}

}  // namespace motor
