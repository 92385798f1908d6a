// Times of day and dates in a person's line.
#pragma once

#include <optional>

#include "notes/words.hpp"
#include "units/time.hpp"

namespace notes {

// Which of the days that a time of day could mean.
enum class Day {
    latest,  // the last such time before now; one that lies a quarter of an hour ahead is today's
    next,    // the first after now
};

// How far a person's clock may be ahead of the computer's; ours.
inline constexpr units::Duration clocks_differ = 15.0 * units::minute;

// Takes the moment that begins at a word: "21:30", "9:30 pm", "yesterday 21:30", "Thursday 21:30",
// "2026-01-15 21:30", "2026-01-15T21:30"; nothing where none begins there.
[[nodiscard]] std::optional<units::LocalTime> take_moment(Words& words, std::size_t at, Day day,
                                                          units::LocalTime now);

// The first one that stands anywhere.
[[nodiscard]] std::optional<units::LocalTime> take_moment(Words& words, Day day,
                                                          units::LocalTime now);

}  // namespace notes
