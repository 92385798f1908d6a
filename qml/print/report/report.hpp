// A report as it grows, and the type it is set in.
#pragma once

#include <initializer_list>

#include "answers/answer.hpp"
#include "print/flow.hpp"
#include "print/report/headings.hpp"

namespace printing {

namespace in_report {
inline constexpr Type body{.size = 9.5};
inline constexpr Type strong{.size = 9.5, .bold = true};
inline constexpr Type sentence{.size = 13.0, .bold = true};
inline constexpr Type heading{.size = 11.0, .bold = true};
inline constexpr Type asked{.size = 12.0};
inline constexpr Type title{.size = 18.0, .bold = true};
inline constexpr Type table{.size = 9.0};  // the least of all letters
}  // namespace in_report

struct Report {
    Flow flow;
    const words::Language& language;
    Headings headings = {};  // of what was set so far

    [[nodiscard]] QString in_words(const words::Said& said) const { return in_qt(language, said); }
    void add(const words::Said& said, Type type, double gap_before = 0.0, double left = 0.0,
             double keep = 0.0) {
        flow.add(in_words(said), type, gap_before, left, keep);
    }
    // Likewise, and told in the contents under a short name.
    void begin(const words::Said& said, Type type, const words::Said& name, double gap_before,
               double keep) {
        add(said, type, gap_before, 0.0, keep);
        headings.append({in_words(name), flow.page()});
    }
    [[nodiscard]] QStringList row(std::initializer_list<words::Said> cells) const {
        QStringList row;
        for (const words::Said& cell : cells)
            row << in_words(cell);
        return row;
    }
};

}  // namespace printing
