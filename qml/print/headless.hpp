// candlemark-touch --print FILE PDF: a sheet of paper without a window.
#pragma once

#include <optional>

#include <QString>

#include "print/print_file.hpp"

namespace printing {

// Exit status, as of the command line.
inline constexpr int printed = 0;
inline constexpr int unusable = 2;

struct Wishes {
    QString file;   // the scenario
    QString pdf;    // where to print to
    QString sheet;  // "card", "report", "wiring"
    QString paper;  // "a4", "letter"
    words::Language language = words::english();
};

[[nodiscard]] std::optional<Kind> kind_named(const QString& word);
[[nodiscard]] std::optional<Paper> paper_named(const QString& word);

// Prints, and tells on standard error what stood in the way, both in the language wished. Gives
// the exit status.
[[nodiscard]] int print_to_file(const Wishes& wishes);

// A sheet needs no display. Before the application is made.
void need_no_display();

}  // namespace printing
