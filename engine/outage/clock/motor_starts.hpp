// Every time a motor is switched on during an outage, and how the unit stands at that moment.
#pragma once

#include <cstddef>
#include <vector>

#include "outage/course.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"

namespace outage {

struct Ready;

// Motors that share an instant stand next to each other in time order.
//   others   what else is on, by its burden; what the motor itself draws is not in it
struct MotorStart {
    units::Duration at{};         // after the outage starts
    std::size_t load = 0;         // in the file's order
    units::Voltage rested{};      // of the bank, with nothing drawn
    units::StateOfCharge charge;  // of the bank
    units::Ends<units::Power> ac{};
    units::Ends<units::ReactivePower> ac_reactive{};
    units::Ends<units::Power> direct{};
    bool with_the_supply = false;  // not by its own cycle: the supply came back, or was switched on
};

// Those of one course: at the beginning of each on-time, and of all that is on when the supply or
// the inverter comes back. Where the load gets no supply it is not switched on.
//   takes   a course with its whole trace
[[nodiscard]] std::vector<MotorStart> motor_starts(const Ready& ready, const Course& course);

}  // namespace outage
