// "Now" in a question of the log: as it is given, or by the computer's clock.
#pragma once

#include <optional>
#include <string>

#include "scenario/scenario.hpp"
#include "units/result.hpp"
#include "units/time.hpp"

namespace command_line {

// What --at gives: a whole date and time, or a time of day, which is the latest one up to the
// clock, or the first of the outage where the clock lies outside of it.
//   clock   of the computer, local standard time; nothing where it is not known
//   gives   without --at the clock
//   fails   where neither is known, or --at cannot be read
[[nodiscard]] units::Result<units::LocalTime> now_of(const std::optional<std::string>& at,
                                                     std::optional<units::LocalTime> clock,
                                                     const scenario::Outage& outage);

// The computer's clock, put right by what the file says that it is ahead.
[[nodiscard]] std::optional<units::LocalTime> put_right(std::optional<units::LocalTime> clock,
                                                        const scenario::Scenario& scenario);

[[nodiscard]] bool is_within(units::LocalTime time, const scenario::Outage& outage);

}  // namespace command_line
