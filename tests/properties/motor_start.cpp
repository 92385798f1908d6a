// The start over its whole range: against a general integrator, and in its order.
#include <random>

#include <boost/numeric/odeint.hpp>

#include "motor/start.hpp"

namespace {

using namespace motor;
using units::ampere;
using units::second;
using units::volt;

// Plain numbers: the peer below shares no code with the engine.
struct Generated {
    double full_load_slip, locked, breakdown, cut_out, inertia, steady, squared, voltage;
    bool has_switch;
};

constexpr double synchronous = 188.49555921538759;  // 1,800 per minute
constexpr double full_load_torque = 2.064;

double torque_left(const Generated& g, double slip, bool winding) {
    const double peak =
        g.full_load_slip * (g.breakdown + std::sqrt(g.breakdown * g.breakdown - 1.0));
    const double curve = 2.0 * g.breakdown * slip * peak / (slip * slip + peak * peak);
    const double curve_at_rest = 2.0 * g.breakdown * peak / (1.0 + peak * peak);
    const double winding_torque = winding ? (g.locked - curve_at_rest) * slip : 0.0;
    const double speed = (1.0 - slip) / (1.0 - g.full_load_slip);
    return full_load_torque * (g.voltage * g.voltage * (curve + winding_torque) - g.steady -
                               g.squared * speed * speed);
}

struct PeerResult {
    bool runs = false;
    double seconds = 0.0;
};

// Dormand-Prince at 1e-10 in time, from rest; stops where nothing is left to speed up with.
PeerResult peer(const Generated& g) {
    using State = std::array<double, 1>;
    namespace odeint = boost::numeric::odeint;
    const double peak =
        g.full_load_slip * (g.breakdown + std::sqrt(g.breakdown * g.breakdown - 1.0));
    const double opens = g.has_switch ? 1.0 - g.cut_out : 0.0;
    const double end = g.has_switch ? std::min(peak, opens) : peak;
    double slip = 1.0;
    double time = 0.0;
    for (const bool winding : {true, false}) {
        const double goal = winding ? std::max(end, opens) : end;
        if (!winding && !g.has_switch) {
            break;
        }
        if (!winding && torque_left(g, slip, false) <= 0.0) {
            return {};
        }
        auto stepper = odeint::make_dense_output(1e-11, 1e-10, odeint::runge_kutta_dopri5<State>());
        const auto rate = [&](const State& s, State& change, double) {
            change[0] = -torque_left(g, s[0], winding) / (g.inertia * synchronous);
        };
        stepper.initialize(State{slip}, time, 1e-4);
        while (slip > goal) {
            if (torque_left(g, stepper.current_state()[0], winding) <= 1e-7 * full_load_torque) {
                return {};
            }
            stepper.do_step(rate);
            if (stepper.current_state()[0] > goal) {
                slip = stepper.current_state()[0];
                time = stepper.current_time();
                continue;
            }
            double before = stepper.previous_time();
            double after = stepper.current_time();
            for (int halving = 0; halving < 60; ++halving) {
                State middle{};
                stepper.calc_state(0.5 * (before + after), middle);
                (middle[0] > goal ? before : after) = 0.5 * (before + after);
            }
            time = after;
            slip = goal;
        }
    }
    return {true, time};
}

Generated generate(std::mt19937_64& random) {
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    Generated g{};
    g.full_load_slip = between(0.01, 0.08);
    g.breakdown = between(1.2, 3.0);
    g.locked = between(0.2, 3.5);
    g.cut_out = between(0.70, 0.80);
    g.inertia = between(0.0003, 0.05);
    g.steady = between(0.05, 1.5);
    g.squared = between(0.0, 1.0);
    g.voltage = between(0.4, 1.05);
    g.has_switch = between(0.0, 1.0) < 0.6;
    return g;
}

InductionMotor motor_of(const Generated& g) {
    return {.synchronous_speed = synchronous * radian_per_second,
            .full_load_slip = Slip(g.full_load_slip),
            .full_load_torque = full_load_torque * newton_metre,
            .locked_torque = Multiple(g.locked),
            .breakdown_torque = Multiple(g.breakdown),
            .cut_out = g.has_switch ? std::optional(SpeedShare(g.cut_out)) : std::nullopt,
            .inertia = g.inertia * kilogram_square_metre,
            .rated_voltage = 115.0 * volt,
            .locked_current = 45.0 * ampere,
            .running_current = 9.0 * ampere,
            .locked_power_factor = units::PowerFactor(0.8),
            .running_power_factor = units::PowerFactor(0.7)};
}

LoadTorque load_of(const Generated& g) {
    return {Multiple(g.steady), Multiple(g.squared)};
}

TEST(motor_start, agrees_with_a_general_integrator_on_ten_thousand_motors) {
    std::mt19937_64 random(20260114);
    int run = 0;
    int differ = 0;
    double worst = 0.0;
    for (int i = 0; i < 10000; ++i) {
        const Generated g = generate(random);
        const Start found = start(motor_of(g), load_of(g), holding(g.voltage * 115.0 * volt));
        const PeerResult expected = peer(g);
        differ += (found.end == StartEnd::runs) != expected.runs ? 1 : 0;
        if (expected.runs && found.time_to_speed) {
            ++run;
            worst =
                std::max(worst, std::abs(*found.time_to_speed / second / expected.seconds - 1.0));
        }
    }
    RecordProperty("starts", run);
    RecordProperty("worst_share_in_a_million", static_cast<int>(worst * 1e6));
    EXPECT_EQ(differ, 0);
    EXPECT_GT(run, 2000);
    EXPECT_LT(run, 8000);
    EXPECT_LT(worst, 1e-3);
}

Generated any_motor() {
    std::mt19937_64 random(*rc::gen::arbitrary<std::uint64_t>());
    return generate(random);
}

double any_share() {
    return *rc::gen::inRange(0, 1000001) / 1e6;
}

// True when `better` starts wherever `worse` does, and no later.
void no_worse(const Start& better, const Start& worse) {
    RC_ASSERT(better.torque_used <= worse.torque_used || better.end == StartEnd::runs ||
              worse.end != StartEnd::runs);
    if (worse.end == StartEnd::runs) {
        RC_ASSERT(better.end == StartEnd::runs);
        RC_ASSERT(*better.time_to_speed <= *worse.time_to_speed * (1.0 + 1e-4));
    }
}

TEST(motor_start, more_voltage_never_hinders) {
    EXPECT_TRUE(rc::check([] {
        const Generated g = any_motor();
        const auto low = (0.3 + 0.7 * any_share()) * 115.0 * volt;
        const auto high = low + any_share() * 20.0 * volt;
        no_worse(start(motor_of(g), load_of(g), holding(high)),
                 start(motor_of(g), load_of(g), holding(low)));
    }));
}

TEST(motor_start, a_higher_current_limit_never_hinders) {
    EXPECT_TRUE(rc::check([] {
        const Generated g = any_motor();
        const auto limit = (20.0 + 30.0 * any_share()) * ampere;
        const auto more = limit + 20.0 * any_share() * ampere;
        const auto others = 10.0 * any_share() * ampere;
        no_worse(start(motor_of(g), load_of(g), folding_back(120.0 * volt, more, others)),
                 start(motor_of(g), load_of(g), folding_back(120.0 * volt, limit, others)));
    }));
}

TEST(motor_start, a_lighter_load_never_hinders) {
    EXPECT_TRUE(rc::check([] {
        const Generated g = any_motor();
        const auto source = holding(g.voltage * 115.0 * volt);
        const double share = any_share();
        const LoadTorque lighter{Multiple(share * g.steady), Multiple(share * g.squared)};
        no_worse(start(motor_of(g), lighter, source), start(motor_of(g), load_of(g), source));
    }));
}

TEST(motor_start, what_is_found_is_finite_and_in_range) {
    EXPECT_TRUE(rc::check([] {
        const Generated g = any_motor();
        const auto voltage = 130.0 * any_share() * volt;
        const Start found = start(motor_of(g), load_of(g), holding(voltage));
        RC_ASSERT(found.torque_used.value() >= 0.0 && found.torque_used.value() <= 1000.0);
        RC_ASSERT(found.stalls_at.value() >= 0.0 && found.stalls_at.value() < 1.0);
        RC_ASSERT((found.end == StartEnd::runs) == found.time_to_speed.has_value());
        RC_ASSERT(found.largest_current >= 0.0 * ampere);
        RC_ASSERT(found.largest_real <= found.largest_apparent.amount() * (1.0 + 1e-12));
        if (found.time_to_speed) {
            RC_ASSERT(std::isfinite(*found.time_to_speed / second));
            RC_ASSERT(*found.time_to_speed > 0.0 * second);
            RC_ASSERT(found.torque_used.value() < 1.0);
        }
    }));
}

TEST(motor_start, the_course_agrees_with_the_verdict) {
    EXPECT_TRUE(rc::check([] {
        const Generated g = any_motor();
        const auto source = holding(g.voltage * 115.0 * volt);
        const Start found = start(motor_of(g), load_of(g), source);
        const auto until = (0.05 + 10.0 * any_share()) * second;
        const auto course = course_of_start(motor_of(g), load_of(g), source, until, 40);
        RC_ASSERT(course.back().time == until);
        for (std::size_t i = 1; i < course.size(); ++i) {
            RC_ASSERT(course[i].time >= course[i - 1].time);
            RC_ASSERT(course[i].speed.value() >= course[i - 1].speed.value() - 1e-9);
        }
        const double peak = 1.0 - breakdown_slip(motor_of(g)).value();
        if (found.end != StartEnd::runs) {
            RC_ASSERT(course.back().speed.value() <= found.stalls_at.value() + 1e-6);
        } else if (until > *found.time_to_speed) {
            RC_ASSERT(course.back().speed.value() >= peak - 1e-6);
        }
    }));
}

}  // namespace
