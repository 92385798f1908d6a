// What can be said, as templates in English: the key under which every language keeps its own.
// A saying is checked when it is compiled, and each one that a program uses can be listed.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <string_view>
#include <vector>

namespace words {

inline constexpr std::size_t most_parts = 12;

// Text that a template's argument can be.
template <std::size_t Size>
struct Fixed {
    char text[Size]{};

    consteval Fixed(const char (&from)[Size]) { std::copy_n(from, Size, text); }
    [[nodiscard]] constexpr std::string_view view() const { return {text, Size - 1}; }
};

// The names within a template's braces, each once, in the order they come.
struct PartNames {
    std::array<std::string_view, most_parts> names{};
    std::size_t count = 0;
    bool well_formed = true;

    [[nodiscard]] constexpr std::size_t index_of(std::string_view name) const {
        return static_cast<std::size_t>(
            std::find(names.begin(), names.begin() + static_cast<std::ptrdiff_t>(count), name) -
            names.begin());
    }
};

// The place of the next brace at or after `from`, and what it holds; a doubled brace is text.
struct Hole {
    std::size_t opens = std::string_view::npos;  // npos where there is none
    std::size_t past = 0;                        // the first character behind it
    std::string_view name = {};
    bool capital = false;  // {^name}: the first letter is a capital
    bool comment =
        false;  // {?weekday}: for the translator alone, where English has one word for two
    bool well_formed = true;   // false for a brace that nothing closes, or a name of other letters
    char text_instead = '\0';  // the brace itself, where it was doubled
};

[[nodiscard]] constexpr Hole next_hole(std::string_view text, std::size_t from) {
    const std::size_t at = text.find_first_of("{}", from);
    if (at == std::string_view::npos) return {};
    if (at + 1 < text.size() && text[at + 1] == text[at]) {
        return {.opens = at, .past = at + 2, .text_instead = text[at]};
    }
    const std::size_t closes = text.find('}', at);
    if (text[at] == '}' || closes == std::string_view::npos) {
        return {.opens = at, .past = text.size(), .well_formed = false};
    }
    std::string_view name = text.substr(at + 1, closes - at - 1);
    const bool capital = name.starts_with('^');
    const bool comment = name.starts_with('?');
    if (capital || comment) name.remove_prefix(1);
    const bool known_letters =
        !name.empty() && name.find_first_not_of("abcdefghijklmnopqrstuvwxyz_") == name.npos;
    return {.opens = at,
            .past = closes + 1,
            .name = name,
            .capital = capital,
            .comment = comment,
            .well_formed = known_letters};
}

[[nodiscard]] constexpr PartNames names_in(std::string_view text) {
    PartNames found;
    for (Hole hole = next_hole(text, 0); hole.opens != std::string_view::npos;
         hole = next_hole(text, hole.past)) {
        if (!hole.well_formed) found.well_formed = false;
        if (hole.text_instead != '\0' || hole.comment || !hole.well_formed) continue;
        if (found.index_of(hole.name) < found.count) continue;
        if (found.count == most_parts) {
            found.well_formed = false;
            return found;
        }
        found.names[found.count++] = hole.name;
    }
    return found;
}

[[nodiscard]] constexpr bool names_of_one_are_known(const PartNames& one, const PartNames& all) {
    for (std::size_t i = 0; i < one.count; ++i) {
        if (all.index_of(one.names[i]) == all.count) return false;
    }
    return true;
}

// One sentence, clause or label, its parts named in braces. `many` is the same for any number other
// than one of the first part that is a count, and empty where nothing changes; "one pack" need not
// name the number that "{n} packs" names.
struct Saying {
    std::string_view english;
    std::string_view many;
    PartNames parts;

    // Whether there is a word in it that another language says otherwise.
    [[nodiscard]] bool has_words() const;
};

// Every saying that this program can say, in no order.
[[nodiscard]] std::vector<const Saying*> all_sayings();

// A link of the list that all_sayings() goes along; made once a saying, before main.
class Enrolled {
  public:
    explicit Enrolled(const Saying& saying);
    Enrolled(const Enrolled&) = delete;
    Enrolled& operator=(const Enrolled&) = delete;

  private:
    friend std::vector<const Saying*> all_sayings();
    const Saying* saying_;
    const Enrolled* next_;
};

// The one saying of a template, and its entry in the list.
template <Fixed English, Fixed Many>
struct TheSaying {
    static constexpr PartNames names = names_in(Many.view().empty() ? English.view() : Many.view());
    static_assert(names.well_formed && names_in(English.view()).well_formed,
                  "a brace is open, empty, or its name has other letters");
    static_assert(names_of_one_are_known(names_in(English.view()), names),
                  "what is said of one has a part that is not said of many");
    static constexpr Saying saying{English.view(), Many.view(), names};
    static inline const Enrolled enrolled{saying};
};

// To compare with: `said.saying == &saying<"nothing fits">`.
template <Fixed English, Fixed Many = Fixed("")>
inline constexpr const Saying& saying = TheSaying<English, Many>::saying;

}  // namespace words
