// What --as json writes, as a JSON schema: for whoever reads answers by a program.
//   source   [JSON Schema draft 7]
#pragma once

#include <string>

namespace command_line {

// Of one answer; a line of --as jsonl, and what is told of a file that cannot be used, are its
// definitions "line" and "refusal". The keys that an answer has for certain are required of it.
[[nodiscard]] std::string answer_schema();

}  // namespace command_line
