// What a person wrote, made fit to be shown back in a sentence.
#pragma once

#include <string>
#include <string_view>

namespace units {

// The text on one line, at most `longest` characters and then "…".
// Control characters, marks that turn the direction of writing and bytes that are not UTF-8
// appear as \xNN or \u{NNNN}, so that they neither hide nor act.
[[nodiscard]] std::string quote(std::string_view text, int longest = 40);

// Bytes of the UTF-8 character at the start of the text; 0 when those bytes are not one.
[[nodiscard]] int utf8_length(std::string_view text);

}  // namespace units
