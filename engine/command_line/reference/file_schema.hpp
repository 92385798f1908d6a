// The file format as a JSON schema, for editors that know TOML: made of the descriptions of the
// keys.
//   source   [JSON Schema draft 7]
#pragma once

#include <string>

namespace command_line {

// What the schema does not hold the file to: limits of quantities, and what keys must be to one
// another; the program does. Times and dates are text there, as editors hand them over.
[[nodiscard]] std::string file_schema();

}  // namespace command_line
