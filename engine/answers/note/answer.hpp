// What was written down, said back.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "notes/understand.hpp"
#include "scenario/scenario.hpp"
#include "units/result.hpp"

namespace answers {

//   noted      now in the file, as they were given
//   warnings   of the file with them, which it did not have before
[[nodiscard]] Answer note_answer(const scenario::Scenario& scenario,
                                 const std::vector<notes::Understood>& noted,
                                 const units::Errors& warnings);

// What an entry of the log calls for: a fuse that opened, a supply that is back, a pack that comes
// in from the cold; each hazard once.
[[nodiscard]] std::vector<Caution> cautions_of_log(const scenario::Scenario& scenario,
                                                   const std::vector<scenario::LogEntry>& log);

}  // namespace answers
