// Lines of a page made of characters. Widths count characters, not bytes. Control characters in
// the text print as "?".
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace faces {

// How a text answer is to look.
struct Look {
    int width = 80;       // columns; less than 40 is taken as 40
    bool ascii = false;   // nothing but ASCII
    bool colour = false;  // colour beside the words, never instead of them
    bool full = false;    // all of it rather than one screen
};

inline constexpr int narrowest_page = 40;

enum class Ink { plain, strong, flame, stop, caution, faint };

// The text between the codes that colour it; the text alone where the look has no colour.
[[nodiscard]] std::string inked(std::string_view text, Ink ink, const Look& look);

[[nodiscard]] std::string without_colour(std::string_view text);

[[nodiscard]] int width_of(std::string_view text);

// Filled with spaces at its right, or at its left, to a width; longer text stays as it is.
[[nodiscard]] std::string padded(std::string_view text, int width);
[[nodiscard]] std::string right_aligned(std::string_view text, int width);

// At most `width` characters, with "..." where something is left out.
[[nodiscard]] std::string shortened(std::string_view text, int width);

// Text broken at spaces; the first line begins with `first`, the others with as many spaces.
// A word longer than the page is broken.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, int width,
                                               std::string_view first = "");

// The same in ASCII: "°" is "deg ", "−" is "-", what has no counterpart is "?".
[[nodiscard]] std::string in_ascii(std::string_view text);

}  // namespace faces
