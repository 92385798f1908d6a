// A sentence as data: which saying, and its parts. It is put into a language only where it is
// shown, so units, clock and order of words follow the reader, and nobody has to read it back.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

#include "words/dimension.hpp"
#include "words/saying.hpp"

namespace words {

// A quantity, rounded for people when it is shown.
struct Amount {
    Dimension dimension;
    double si = 0.0;  // finite, in SI
    int digits = 3;   // significant, 1 to 15
    // Of choice: a unit by the name it is shown by, such as "kWh/m²", and digits behind the point.
    std::string_view unit = {};
    int decimals = -1;  // -1: as `digits` has it

    friend bool operator==(const Amount&, const Amount&) = default;
};

// Two quantities of one kind, both in the unit of the larger: "120 to 1300 Wh".
struct Between {
    Dimension dimension;
    double low = 0.0;   // finite, in SI, as is high
    double high = 0.0;  // not below low
    int digits = 3;

    friend bool operator==(const Between&, const Between&) = default;
};

// A point in time on the wall clock of the place.
struct Moment {
    enum class Form {
        weekday,             // "Thursday"
        short_weekday,       // "Thu"
        month,               // "Jan"
        day_and_month,       // "15 Jan"
        weekday_and_date,    // "Thursday 15 Jan"
        short_weekday_date,  // "Thu 15 Jan"
        clock,               // "03:00"
        weekday_and_clock,   // "Thursday 03:00"
        date_and_clock,      // "Thu 15 Jan 03:00"
        weekday_date_clock,  // "Thursday 15 Jan 03:00"
        full_date,           // "15 January 2026"
        iso,                 // "2026-01-15T03:00:00", for programs
    };
    double since_1970 = 0.0;  // s of the local clock; rounded to the minute where one is shown
    Form form = Form::weekday_and_clock;

    friend bool operator==(const Moment&, const Moment&) = default;
};

// A whole number: in figures, or from one to twelve in words.
struct Count {
    std::int64_t number = 0;
    bool in_words = false;

    friend bool operator==(const Count&, const Count&) = default;
};

// A number without a unit.
struct Number {
    double value = 0.0;  // finite
    int digits = 3;      // significant; at least as many behind the point as `decimals`
    int decimals = -1;   // exactly so many behind the point; -1: as many as the digits need

    friend bool operator==(const Number&, const Number&) = default;
};

// Such a number as a sentence is written with, whatever its type.
template <class T>
[[nodiscard]] Number with_decimals(T value, int decimals) {
    return {.value = static_cast<double>(value), .decimals = decimals};
}

// What a person or a part is called, a key, a code: the same in every language.
struct Name {
    std::string text;

    friend bool operator==(const Name&, const Name&) = default;
};

struct Language;
struct Part;

// What was said: a saying and one part for each of its names, in the order of the English.
struct Said {
    const Saying* saying;  // never null
    std::vector<Part> parts;

    Said();                      // nothing at all
    Said(std::string as_it_is);  // the same in every language: a person's own words
    Said(const char* as_it_is) : Said(std::string(as_it_is)) {}
    Said(std::string_view as_it_is) : Said(std::string(as_it_is)) {}
    Said(const Saying& saying, std::vector<Part> parts);
    Said(const Said&);
    Said(Said&&) noexcept;
    Said& operator=(const Said&);
    Said& operator=(Said&&) noexcept;
    ~Said();

    [[nodiscard]] bool empty() const;
    explicit operator std::string() const;  // in English, for tests; a face asks for a language

    friend bool operator==(const Said& a, const Said& b);
};

// Several, with what stands between them.
struct List {
    enum class Joint {
        none,
        space,      // sentences
        comma,      // "a, b, c"
        semicolon,  // "a; b; c"
        all,        // "a, b and c"
        either,     // "a, b or c"
        or_each,    // "a or b or c"
        line,       // one below the other
    };
    std::vector<Said> items;
    Joint joint = Joint::all;

    friend bool operator==(const List& a, const List& b);
};

struct Part : std::variant<Name, Amount, Between, Moment, Count, Number, Said, List> {
    using Held = std::variant<Name, Amount, Between, Moment, Count, Number, Said, List>;
    using Held::variant;
    Part();
    Part(const Part&);
    Part(Part&&) noexcept;
    Part& operator=(const Part&);
    Part& operator=(Part&&) noexcept;
    ~Part();
    [[nodiscard]] const Held& held() const { return *this; }
};

// How a value of another type becomes a part; units give it for quantities and times.
template <class T>
struct AsPart;

template <class T>
[[nodiscard]] Part as_part(T&& value) {
    using Plain = std::remove_cvref_t<T>;
    if constexpr (std::is_same_v<Plain, Part>) {
        return std::forward<T>(value);
    } else if constexpr (std::is_same_v<Plain, bool>) {
        static_assert(!std::is_same_v<Plain, bool>, "true and false are not said");
    } else if constexpr (std::is_integral_v<Plain>) {
        return Count{.number = static_cast<std::int64_t>(value)};
    } else if constexpr (std::is_constructible_v<Part::Held, T> &&
                         !std::is_convertible_v<T, std::string_view>) {
        return Part(std::forward<T>(value));
    } else if constexpr (std::is_convertible_v<T, std::string_view>) {
        return Name{std::string(std::string_view(value))};
    } else {
        return AsPart<Plain>::of(value);
    }
}

// The parts are moved from.
[[nodiscard]] Said said_of_parts(const Saying& saying, Part* parts, std::size_t count);

template <std::size_t count>
[[nodiscard]] Said with_parts(const Saying& saying, std::array<Part, count> parts) {
    return said_of_parts(saying, parts.data(), count);
}

// The saying with its parts: said<"{pack} holds {energy}.">(pack.name, stored).
template <Fixed English, class... Parts>
[[nodiscard]] Said said(Parts&&... parts) {
    using The = TheSaying<English, Fixed("")>;
    static_assert(The::names.count == sizeof...(Parts), "each name in braces needs its part");
    (void)&The::enrolled;
    return with_parts<sizeof...(Parts)>(The::saying, {as_part(std::forward<Parts>(parts))...});
}

// The same where words change with a number: said_of<"{n} pack", "{n} packs">(packs).
template <Fixed One, Fixed Many, class... Parts>
[[nodiscard]] Said said_of(Parts&&... parts) {
    using The = TheSaying<One, Many>;
    static_assert(The::names.count == sizeof...(Parts), "each name in braces needs its part");
    (void)&The::enrolled;
    return with_parts<sizeof...(Parts)>(The::saying, {as_part(std::forward<Parts>(parts))...});
}

// A clause with a capital and a full stop; nothing for nothing.
[[nodiscard]] Said as_sentence(Said clause);

// Several as one; empty ones are left out.
[[nodiscard]] Said joined(std::vector<Said> items, List::Joint joint);
// Sentences one after the other.
[[nodiscard]] Said together(std::vector<Said> sentences);

[[nodiscard]] inline Count in_words(std::int64_t number) {
    return {.number = number, .in_words = true};
}

}  // namespace words
