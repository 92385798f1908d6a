// Does it come up to speed, and how long does it take? See method.md, "Start".
#pragma once

#include <optional>
#include <vector>

#include "motor/driven_load.hpp"
#include "motor/induction_motor.hpp"
#include "motor/source_voltage.hpp"
#include "units/quantities.hpp"

namespace motor {

enum class StartEnd { runs, stalls_at_rest, stalls_on_the_way };

struct Start {
    StartEnd end = StartEnd::stalls_at_rest;
    std::optional<units::Duration> time_to_speed{};  // past the peak of the torque curve and past
                                                     // the cut-out; absent when it stalls
    std::optional<units::Duration> cut_out_after{};  // absent without a switch, or when not reached
    SpeedShare stalls_at{};                          // 0 when it runs or stalls at rest
    Multiple
        torque_used{};  // load over motor torque at its worst; 1 and above stalls, 1000 at most
    units::Voltage lowest_voltage{};
    units::Current largest_current{};  // the motor's own
    units::ApparentPower largest_apparent{};
    units::Power largest_real{};
};

// From rest.
//   holds for  a source that does not rise when it is drawn on harder
//   accuracy   0.1 % in time against a general integrator, see method.md
[[nodiscard]] Start start(const InductionMotor& motor, const LoadTorque& load,
                          const Source& source);

// One instant of the plot.
struct Instant {
    units::Duration time{};  // after it was switched on
    SpeedShare speed{};
    units::Voltage voltage{};
    units::Current current{};
    units::Power real{};
    units::ApparentPower apparent{};
};

// The course from rest to `until`, in rising time, first and last included. Instants lie close
// where the speed changes; after the end of the run-up or at a stall the last state is held.
//   takes  points at least 4
[[nodiscard]] std::vector<Instant> course_of_start(const InductionMotor& motor,
                                                   const LoadTorque& load, const Source& source,
                                                   units::Duration until, int points);

}  // namespace motor
