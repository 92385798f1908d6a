// A reader's language, units and clock, and what is said in it.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "words/said.hpp"

namespace words {

class Catalogue;

struct Language {
    const Catalogue* catalogue = nullptr;  // none for English
    bool twelve_hours = false;             // "3:00 PM" for "15:00"
    bool us_units = false;                 // "−4 °C (25 °F)", "20 kg (44 lb)", "3 m (10 ft)"

    [[nodiscard]] std::string_view code() const;          // "en", "de"
    [[nodiscard]] std::string_view decimal_mark() const;  // "." or ","
};

[[nodiscard]] const Language& english();

// The languages there is a catalogue of, English first: "en", "de".
[[nodiscard]] std::vector<std::string_view> language_codes();
// By its code, or by a locale's name such as "de_AT.UTF-8"; nothing where there is no catalogue.
[[nodiscard]] std::optional<Language> language(std::string_view code);
// What the language calls itself: "English", "Deutsch".
[[nodiscard]] std::string_view own_name(const Language& language);

// The finished text. A saying that the catalogue lacks is said in English, with all its parts.
[[nodiscard]] std::string in(const Language& language, const Said& said);

// A quantity alone, as a sentence would show it.
[[nodiscard]] std::string in(const Language& language, const Amount& amount);
[[nodiscard]] std::string in(const Language& language, const Moment& moment);

}  // namespace words
