// Lines of a scenario file, and plain words for what makes one unreadable.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "units/result.hpp"

namespace scenario {

// Byte offsets of the first byte of each line; line feeds end lines.
[[nodiscard]] std::vector<std::size_t> beginnings_of_lines(std::string_view text);

// A line, counted from 1, without its line end; empty when there is no such line.
[[nodiscard]] std::string_view line_of(std::string_view text, int line);
void replace_line(std::string& text, int line, std::string_view with);

// Why the text must not be given to the parser at all: too large, another encoding, not UTF-8,
// NUL bytes, keys of absurdly many parts.
[[nodiscard]] std::optional<units::Error> unfit_to_parse(std::string_view text);

// The key of a line `key = …`; nothing for other lines.
[[nodiscard]] std::optional<std::string> key_on_line(std::string_view line);

// `lasts = 4 d # long` becomes `lasts = "4 d"`; empty when the line has no bare value.
[[nodiscard]] std::string with_value_in_quotes(std::string_view line);

// What the parser says is wrong on a line.
struct Complaint {
    enum class Kind { given_twice, too_deep, other };
    Kind kind = Kind::other;
    words::Said words;  // those of the library are English
    int line = 0;
};

// The complaint in words that say what to write instead.
[[nodiscard]] units::Error syntax_error(const Complaint& complaint, std::string_view line);

}  // namespace scenario
