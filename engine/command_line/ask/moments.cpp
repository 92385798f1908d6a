#include "command_line/ask/moments.hpp"

#include "command_line/reference/option_value.hpp"

namespace command_line {

using units::LocalTime;
using words::said;

std::optional<LocalTime> put_right(std::optional<LocalTime> clock,
                                   const scenario::Scenario& scenario) {
    if (!clock || !scenario.clock || !scenario.clock->ahead_by) return clock;
    return *clock - *scenario.clock->ahead_by;
}

bool is_within(LocalTime time, const scenario::Outage& outage) {
    return !(time < outage.starts) && !(outage.starts + outage.lasts < time);
}

units::Result<LocalTime> now_of(const std::optional<std::string>& at,
                                std::optional<LocalTime> clock, const scenario::Outage& outage) {
    if (!at) {
        if (clock) return *clock;
        return units::fail({.where = "--at",
                            .found = said<"this computer does not tell the time">(),
                            .remedy = said<"give the time, such as --at 21:30">()});
    }
    if (const auto time = units::read_time_of_day(*at)) {
        if (clock && is_within(*clock, outage)) {
            const LocalTime today = units::midnight_before(*clock) + *time;
            return today > *clock + 15.0 * units::minute ? today - units::day : today;
        }
        const LocalTime first = units::midnight_before(outage.starts) + *time;
        return first < outage.starts ? first + units::day : first;
    }
    units::Errors errors;
    const auto whole = option_value<LocalTime>(at, "--at", errors);
    if (!whole) return units::fail(std::move(errors));
    return *whole;
}

}  // namespace command_line
