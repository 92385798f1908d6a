// A start by quadrature in slip against a general integrator in time and the closed form.
#include <array>
#include <chrono>
#include <cstdio>

#include "../support/start_without_load.hpp"
#include <boost/numeric/odeint.hpp>

#include "motor/start.hpp"

namespace {

using namespace motor;
using units::ampere;
using units::second;
using units::volt;

InductionMotor motor_number(int i) {
    return {.synchronous_speed = per_minute(1800.0),
            .full_load_slip = Slip(0.03 + 0.00002 * (i % 1000)),
            .full_load_torque = 2.064 * newton_metre,
            .locked_torque = Multiple(2.5),
            .breakdown_torque = Multiple(2.5),
            .cut_out = SpeedShare(0.75),
            .inertia = 0.006 * kilogram_square_metre,
            .rated_voltage = 115.0 * volt,
            .locked_current = 45.0 * ampere,
            .running_current = 9.0 * ampere,
            .locked_power_factor = units::PowerFactor(0.85),
            .running_power_factor = units::PowerFactor(0.7)};
}

const LoadTorque pump{Multiple(0.1), Multiple(0.9)};

// Dormand-Prince at 1e-8, which needs no more than the engine's own torque.
double seconds_by_general_integrator(const InductionMotor& motor) {
    using State = std::array<double, 1>;
    namespace odeint = boost::numeric::odeint;
    const double momentum = motor.inertia * motor.synchronous_speed / (newton_metre * second);
    const double goal = breakdown_slip(motor).value();
    auto stepper = odeint::make_dense_output(1e-8, 1e-8, odeint::runge_kutta_dopri5<State>());
    stepper.initialize(State{1.0}, 0.0, 1e-4);
    while (stepper.current_state()[0] > goal) {
        stepper.do_step([&](const State& s, State& change, double) {
            const bool winding = start_winding_is_in(motor, Slip(s[0]));
            change[0] =
                -(torque_at(motor, Slip(s[0]), winding) - torque_of(pump, motor, Slip(s[0]))) /
                newton_metre / momentum;
        });
    }
    return stepper.current_time();
}

template <class Work>
double nanoseconds_each(int times, Work work) {
    double kept = 0.0;
    double best = 1e300;
    for (int round = 0; round < 7; ++round) {
        const auto begin = std::chrono::steady_clock::now();
        for (int i = 0; i < times; ++i) {
            kept += work(motor_number(i));
        }
        const std::chrono::duration<double, std::nano> spent =
            std::chrono::steady_clock::now() - begin;
        best = std::min(best, spent.count() / times);
    }
    return kept > 0.0 ? best : 0.0;
}

}  // namespace

int main() {
    const Source stiff = holding(115.0 * volt);
    const Source folding = folding_back(115.0 * volt, 38.0 * ampere, 5.0 * ampere);
    const auto by = [](const Source& source) {
        return [&source](const InductionMotor& motor) {
            return start(motor, pump, source).time_to_speed.value_or(0.0 * second) / second;
        };
    };
    const double integral = nanoseconds_each(2000, by(stiff));
    const double folded = nanoseconds_each(2000, by(folding));
    const double general = nanoseconds_each(2000, seconds_by_general_integrator);
    const double closed = nanoseconds_each(20000, [](const InductionMotor& motor) {
        return time_without_load(motor, Slip(1.0), breakdown_slip(motor)) / second;
    });
    const double course = nanoseconds_each(500, [&](const InductionMotor& motor) {
        return course_of_start(motor, pump, stiff, 1.0 * second, 120).back().speed.value();
    });
    std::printf("start, stiff source        %8.1f us   1\n", integral / 1e3);
    std::printf("start, folding back        %8.1f us   %.2f\n", folded / 1e3, folded / integral);
    std::printf("general integrator, 1e-8   %8.1f us   %.2f\n", general / 1e3, general / integral);
    std::printf("course of 120 points       %8.1f us   %.2f\n", course / 1e3, course / integral);
    std::printf("closed form without load   %8.3f us   %.5f\n", closed / 1e3, closed / integral);
}
