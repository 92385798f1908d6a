// Everything the program can say, as a language's catalogue: what a translator fills in.
#pragma once

#include <string>
#include <string_view>

namespace command_line {

// A file of TOML: an entry a saying, by its English. What the language has is filled in; elsewhere
// `as` is empty. Sayings without a word are left out where the language says them as English does.
// At its end, as comments, what of the catalogue nobody says ("orphan") or what is wrong ("fault").
//   takes  the code of a language there is a catalogue of; that of English leaves every `as` empty
[[nodiscard]] std::string sayings_text(std::string_view code);

}  // namespace command_line
