// What is kept beside an answer so that it can be made again.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "answers/made_by.hpp"
#include "command_line/request.hpp"
#include "scenario/file/read.hpp"

namespace command_line {

// "Candlemark 0.1.0"
[[nodiscard]] std::string name_and_version();

// The SHA-256 of the bytes [FIPS 180-4], as 64 lower-case hexadecimal digits.
[[nodiscard]] std::string sha256_of(std::string_view bytes);

//   takes   what was read for the answer, and the request with the arguments it came from
// Files that are named but cannot be read are left out: no answer was made from them.
[[nodiscard]] answers::MadeBy made_by(const scenario::ReadScenario& read, const Request& request);

}  // namespace command_line
