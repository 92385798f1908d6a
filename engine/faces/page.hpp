// Lines of a page made of characters. Widths count characters, not bytes. Control characters in
// the text print as "?".
#pragma once

#include <concepts>
#include <string>
#include <string_view>
#include <vector>

#include "words/language.hpp"

namespace faces {

// How a text answer is to look.
struct Look {
    int width = 80;       // columns; less than 40 is taken as 40
    bool ascii = false;   // nothing but ASCII
    bool colour = false;  // colour beside the words, never instead of them
    bool full = false;    // all of it rather than one screen
    words::Language language = {};
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

// Whole lines, each ended. One that is wider than the page goes on below: a paragraph at its own
// beginning, what is set in by spaces four further in.
[[nodiscard]] std::string fitted(std::string_view lines, int width);

// The same in ASCII: "60°" is "60 deg", "−" is "-", what has no counterpart is "?".
[[nodiscard]] std::string in_ascii(std::string_view text);

// A number of a table, with the reader's decimal mark and without a unit.
//   takes    a finite number
[[nodiscard]] std::string number_shown(double number, const words::Language& language);

// A unit of UCUM as people write it: "Wh" for W.h, "°C" for Cel; nothing where there is none.
[[nodiscard]] std::string unit_shown(std::string_view ucum);

// Words in the reader's language and letters.
[[nodiscard]] inline std::string in(const Look& look, const words::Said& said) {
    std::string text = words::in(look.language, said);
    return look.ascii ? in_ascii(text) : text;
}

// The same of what is said, which an answer that is spoken (spoken.hpp) holds as finished text.
template <class T>
concept IsSaid = std::same_as<T, words::Said>;

template <IsSaid Said>
[[nodiscard]] std::string plain(const Said& said) {
    return words::in(words::english(), said);
}
template <IsSaid Said>
[[nodiscard]] std::string inked(const Said& said, Ink ink, const Look& look) {
    return inked(plain(said), ink, look);
}
template <IsSaid Said>
[[nodiscard]] int width_of(const Said& said) {
    return width_of(plain(said));
}
template <IsSaid Said>
[[nodiscard]] std::string padded(const Said& said, int width) {
    return padded(plain(said), width);
}
template <IsSaid Said>
[[nodiscard]] std::string right_aligned(const Said& said, int width) {
    return right_aligned(plain(said), width);
}
template <IsSaid Said>
[[nodiscard]] std::string shortened(const Said& said, int width) {
    return shortened(plain(said), width);
}
template <IsSaid Said>
[[nodiscard]] std::vector<std::string> wrapped(const Said& said, int width,
                                               std::string_view first = "") {
    return wrapped(plain(said), width, first);
}

}  // namespace faces
