// How many there may be in all: what one hand-built unit has at most, told where a file has more,
// and as far as questions count upwards by themselves. Common practice, no source.
#pragma once

namespace scenario {

inline constexpr int most_packs = 64;   // of all kinds together
inline constexpr int most_panels = 64;  // likewise

inline constexpr int most_days = 60;  // of an outage

inline constexpr int most_log_entries = 2000;  // of one outage; ours

}  // namespace scenario
