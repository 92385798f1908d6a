// What the references of the file format say of a key in words: the list to read, the manual page
// and the schema for editors say the same.
#pragma once

#include <string>
#include <string_view>

#include "scenario/keys/keys.hpp"
#include "words/said.hpp"

namespace command_line {

// "capacity" of "pack.capacity".
[[nodiscard]] std::string_view last_word(std::string_view key);

// "circuit.links.voltage, beside switch": a list may hold several kinds of part.
[[nodiscard]] words::Said name_of(const scenario::ToldKey& told);

// "Ah, C, mAh, kAh": the units a quantity is written in, the usual ones first; empty where there
// is none.
[[nodiscard]] words::Said units_of(const scenario::Shape& shape);

// What holds where the key is absent.
[[nodiscard]] words::Said when_absent(const scenario::ToldKey& told);

}  // namespace command_line
