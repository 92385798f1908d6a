// The full report: every answer with its plots, findings, working, assumptions and cautions, page
// after page; and the sheet of the wiring alone.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "print/card_layout.hpp"

namespace printing {

// A question with its answer, or why there is none.
struct Chapter {
    std::string asks;
    std::optional<answers::Answer> answer;
    std::string why_not;
};

struct Book {
    std::string title;
    std::string made;  // program, version, day
    std::vector<Chapter> chapters;
};

[[nodiscard]] QList<Sheet> lay_out(const Book& book, Paper paper);

// The picture across the page, the tables of circuits and parts, findings, assumptions, cautions.
[[nodiscard]] QList<Sheet> lay_out_wiring(const answers::Answer& wiring, const std::string& made,
                                          Paper paper);

}  // namespace printing
