// Finished text as the person wishes to read it: the clock of twelve hours, the units of the United
// States beside the metric ones, the decimal comma. What the engine says is put so at one place.
#pragma once

#include <string_view>

#include <QString>

namespace touch {

struct Wishes {
    bool twelve_hours = false;
    bool us_units = false;
    bool decimal_comma = false;
};

[[nodiscard]] Wishes wishes();
void set_wishes(const Wishes& wishes);  // safe while plans are being made on other threads

// Times of day and amounts within a text. The metric amount stays, the other follows it in
// brackets: a figure taken from the middle of a sentence is never exchanged for another.
//   "until Thursday 15:00, at 5 degC"  ->  "until Thursday 3:00 PM, at 5 °C (41 °F)"
[[nodiscard]] QString as_wished(const QString& text, const Wishes& wishes = touch::wishes());
// An amount that stands alone: also with the decimal comma.
[[nodiscard]] QString amount_as_wished(const QString& amount,
                                       const Wishes& wishes = touch::wishes());

// The same of text the engine made.
[[nodiscard]] QString told(std::string_view utf8);
[[nodiscard]] QString told_amount(std::string_view utf8);

}  // namespace touch
