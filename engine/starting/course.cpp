#include "starting/course.hpp"

#include <algorithm>
#include <cmath>

namespace starting {

using namespace units;

std::vector<StartInstant> course_of(const StartQuestion& question, int points) {
    std::vector<StartInstant> course;
    if (question.motors.empty() || !question.motors.front().cases) return course;
    const auto& starting = question.motors.front();
    const auto& burden = starting.cases->burden.likely;
    const auto source =
        likely_source(starting, question.background, question.inverter, question.source);
    const auto found = motor::start(burden.motor, burden.load, source);
    const Duration until =
        found.time_to_speed ? std::max(1.4 * *found.time_to_speed, 0.1 * second) : 1.0 * second;
    const auto behind = equivalent(question.source, End::likely);
    for (const auto& instant :
         motor::course_of_start(burden.motor, burden.load, source, until, points)) {
        const double own = instant.apparent / volt_ampere;
        const double own_real = instant.real / watt;
        const Power reactive = std::sqrt(std::max(0.0, own * own - own_real * own_real)) * watt +
                               question.background.reactive.likely.amount();
        const Power real = instant.real + question.background.real.likely;
        const auto apparent = inverter::apparent(real, ReactivePower(reactive));
        const auto point =
            at_power(behind, inverter::dc_power(question.inverter.model, real, apparent) +
                                 question.background.direct.likely);
        course.push_back({.motor = instant,
                          .apparent = apparent,
                          .direct_voltage = point.voltage,
                          .direct_current = point.current});
    }
    return course;
}

}  // namespace starting
