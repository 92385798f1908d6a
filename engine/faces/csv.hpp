// The first table of an answer for spreadsheets, as in RFC 4180: a heading line with the unit in
// brackets, commas, lines ending in CR LF, quotes where needed, a point as the decimal mark.
// Headings and words are in the reader's language; numbers and keys are the same in each.
// An answer without a table gives its values, one a line: key, value, unit.
#pragma once

#include <string>

#include "answers/answer.hpp"
#include "words/language.hpp"

namespace faces {

[[nodiscard]] std::string in_csv(const answers::Answer& answer,
                                 const words::Language& language = words::english());

}  // namespace faces
