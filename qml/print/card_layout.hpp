// The card in the lid on one page of paper.
#pragma once

#include "answers/card/lid_card.hpp"
#include "print/sheet.hpp"
#include "words/language.hpp"

namespace printing {

inline constexpr double body_size = 14.0;    // points: read at arm's length by a small lamp
inline constexpr double answer_size = 24.0;  // points
inline constexpr double margin = 26.0;       // points: what home printers leave white

enum class Paper { a4, letter };

[[nodiscard]] QSizeF size_of(Paper paper);  // points

// Where the parts are too long for the page, rows of theirs are left out and that is said there.
//   language   of the reader, with units and clock
//   gives      `fits` false when even so it does not fit
[[nodiscard]] Sheet lay_out(answers::LidCard card, Paper paper,
                            const words::Language& language = words::english());

}  // namespace printing
