// Many files asked one question: a line of JSON each, written as it is answered, so that whoever
// is interrupted goes on where it was.
#pragma once

#include "command_line/request.hpp"
#include "command_line/run.hpp"

namespace command_line {

// Ends with answered when every file was answered, with unusable when one could not be used; the
// failure of a file is its line. Counts stand in `errors` of the outcome.
[[nodiscard]] Outcome answer_many(const Request& request, const Surroundings& around);

}  // namespace command_line
