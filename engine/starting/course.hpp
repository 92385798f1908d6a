// A start as it goes, instant by instant, on both sides of the inverter.
#pragma once

#include <vector>

#include "motor/start.hpp"
#include "starting/settle.hpp"

namespace starting {

struct StartInstant {
    motor::Instant motor;
    units::ApparentPower apparent;  // of all that is on
    units::Voltage direct_voltage{};
    units::Current direct_current{};  // of all packs
};

// The likely course of the first motor of the question beside its background, from rest until past
// its run-up; of a motor that stalls, the first second. Empty for kinds without a torque curve.
[[nodiscard]] std::vector<StartInstant> course_of(const StartQuestion& question, int points = 60);

}  // namespace starting
