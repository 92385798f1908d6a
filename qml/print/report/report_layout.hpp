// The full report: a line of contents, every answer with its plots, findings and cautions; behind
// them the working, one table of assumptions and the drawing of the build. And the sheet of the
// wiring alone.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "print/card_layout.hpp"

namespace printing {

// A question with its answer, or why there is none.
struct Chapter {
    std::string question;  // "outage", "packs" …
    words::Said asks;
    std::optional<answers::Answer> answer;
    words::Said why_not;
};

struct Book {
    std::string title;
    std::string made;  // program, version, day
    std::vector<Chapter> chapters;
};

[[nodiscard]] QList<Sheet> lay_out(const Book& book, Paper paper,
                                   const words::Language& language = words::english());

// The picture over as many pages as it takes, findings, the tables of circuits and parts, working,
// assumptions, cautions.
[[nodiscard]] QList<Sheet> lay_out_wiring(const answers::Answer& wiring, const std::string& made,
                                          Paper paper,
                                          const words::Language& language = words::english());

}  // namespace printing
