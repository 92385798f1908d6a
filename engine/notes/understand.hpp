// What a person's short line means: one entry of the log.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scenario/log.hpp"
#include "scenario/scenario.hpp"
#include "units/result.hpp"
#include "units/time.hpp"

namespace notes {

struct Understood {
    scenario::LogEntry entry;
    words::Said said;  // what was understood, as a sentence
};

// "21:30 main 12.9 V under 150 W", "freezer 1.15 kWh over 24 h", "yesterday 16:30 sun 420 Wh grey",
// "modem off", "2 expansion left", "expected back by 12:00", "strike 21:30 main".
//   now     local standard time; a line without a time is of now, "21:30" the latest such time
//           before it
//   gives   every word has its meaning, or is a word that does not matter, such as "the"
//   fails   at "line", with each word that was not understood and what is missing
[[nodiscard]] units::Result<Understood> understand(std::string_view line,
                                                   const scenario::Scenario& scenario,
                                                   units::LocalTime now);

// Several, one a line; blank ones are left out. Fails with what is wrong in any of them.
[[nodiscard]] units::Result<std::vector<Understood>> understand_all(
    const std::vector<std::string>& lines, const scenario::Scenario& scenario,
    units::LocalTime now);

// "Thursday 15 Jan 21:30: main reads 12.9 V while 150 W is drawn."
[[nodiscard]] words::Said in_words(const scenario::LogEntry& entry);
// The same within a sentence, without the full stop.
[[nodiscard]] words::Said in_short(const scenario::LogEntry& entry);

// The text of a file with these entries behind everything that stands in it; each byte that was
// there stays where it was.
//   fails   where the log of the file is written in one pair of brackets
[[nodiscard]] units::Result<std::string> with_entries(
    std::string_view text, const std::vector<scenario::LogEntry>& entries);

}  // namespace notes
