// The few numbers of a scenario's text that the steps turn, and the change of one value in place.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include <QString>

#include "units/result.hpp"

namespace touch {

// A number, and what one step down or up makes of it.
struct Turn {
    QString shown;
    double value = 0.0;  // as a number, such as 1.5 days where "36 h" is shown
    int below = 0;
    int above = 0;
};

struct Counts {
    bool readable = false;
    QString title;
    std::optional<Turn> packs;  // of the last kind: the expansion pack where there are several
    QString pack_key;
    QString pack_detail;
    bool only_pack = false;      // the file knows one kind of pack
    std::optional<Turn> panels;  // of the first kind
    QString panel_detail;
    std::optional<Turn> days;
    QString days_detail;
};

[[nodiscard]] Counts counts_in(const QString& text);

struct TextOrTrouble {
    QString text;
    QString trouble;  // why the value does not go there; empty when it does
};

[[nodiscard]] TextOrTrouble with_value(const QString& text, const QString& key,
                                       const QString& value);

// The text after an edit, unless the edit fails or makes a readable file unreadable.
[[nodiscard]] TextOrTrouble with_edit(
    const QString& text, const std::function<units::Result<std::string>(const std::string&)>& edit);

// Every error as a line of words.
[[nodiscard]] QString in_words(const units::Errors& errors);

}  // namespace touch
