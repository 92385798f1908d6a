// How the value of one key is written: the forms a value may take in the file. A form reads a
// value from its node, or tells the reading what is wrong; and prints it as it stands after the =.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "scenario/file/reading.hpp"
#include "units/clock.hpp"
#include "units/size.hpp"
#include "units/text.hpp"

namespace scenario {

// The values at which the limits of a key lie, each as it stands after the =.
struct Ends {
    std::vector<std::string> within;        // the last that are allowed; of a choice, each
    std::vector<std::string> beyond;        // the first that are not
    std::vector<std::string> crowded = {};  // as many as may be, though some forms want an order

    // Those of a part, each put into a whole.
    template <class Put>
    void add(const Ends& part, const Put& put) {
        for (const auto& [from, to] :
             {std::pair{&part.within, &within}, std::pair{&part.beyond, &beyond},
              std::pair{&part.crowded, &crowded}}) {
            for (const std::string& value : *from) {
                to->push_back(put(value));
            }
        }
    }
};

// A value to pick from: as it stands in the file, without quotes, and as a screen calls it.
struct Pick {
    std::string_view value;
    words::Said label = {};  // empty: as the value
};

// What a value looks like in the file, without its type: for screens and editors.
struct Shape {
    enum class Kind {
        quantity,
        whole,
        truth,
        words,
        choice,
        moment,
        time_of_day,
        span,
        wire_size,
        table
    };
    Kind kind = Kind::words;
    units::Dimension dimension{};                // of a quantity
    std::optional<units::Dimension> or_of = {};  // or of another kind
    std::string_view per = {};                   // may follow its unit: "/d"
    int least = 0;                               // of a whole number
    int most = 0;
    std::size_t longest = 0;                // of words, bytes
    bool may_be_empty = false;              // words
    std::vector<Pick> choices = {};         // of a choice, all
    std::vector<std::string> besides = {};  // what else may stand after the =
    bool several = false;                   // a list of such values
    std::size_t fewest_items = 1;           // of a list
    std::size_t most_items = 0;
    bool one_will_do = false;  // one value without brackets passes as a list of one
};

// What a value of such a shape means, where it is yes or no or one of a few, or a list of those;
// otherwise as it is written.
//   takes  the value as it stands after the =
[[nodiscard]] words::Said in_words(const Shape& shape, const std::string& value);
// The same of what holds where the key is absent, which may be such a value without its quotes.
[[nodiscard]] words::Said silent_in_words(const Shape& shape, const words::Said& silent);

// A quantity without its type: what it is measured in, and from where to where it may go.
struct QuantityWords {
    units::Dimension dimension{};
    double least = 0.0;  // SI
    double most = 0.0;   // SI
    bool least_is_allowed = true;
    std::string_view example;   // "100 Ah"
    std::string_view per = {};  // may follow the unit: "/d" in "4.2 h/d"
};
[[nodiscard]] std::optional<double> read_quantity(Reading&, const Spot&, const QuantityWords&);
[[nodiscard]] std::string print_quantity(const QuantityWords&, double si);
[[nodiscard]] std::string example_of(const QuantityWords&);
// "from 0 degC to 40 degC", "more than 0 Ah, at most 10000 Ah".
[[nodiscard]] words::Said limits_of(const QuantityWords&);
[[nodiscard]] Ends ends_of(const QuantityWords&);
[[nodiscard]] Shape shape_of(const QuantityWords&);
[[nodiscard]] words::Said limits_of_words(const std::vector<std::string_view>& words);
[[nodiscard]] Ends ends_of_words(const std::vector<std::string_view>& words);

template <units::Written Quantity>
struct QuantityForm {
    using Value = Quantity;
    QuantityWords words;

    [[nodiscard]] std::string example() const { return example_of(words); }
    [[nodiscard]] words::Said limits() const { return limits_of(words); }
    [[nodiscard]] Ends ends() const { return ends_of(words); }
    [[nodiscard]] Shape shape() const { return shape_of(words); }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        const std::optional<double> si = read_quantity(reading, spot, words);
        return si ? std::optional(units::from_si<Quantity>(*si)) : std::nullopt;
    }
    [[nodiscard]] std::string print(const Value& value) const {
        return print_quantity(words, units::in_si(value));
    }
    // The same form with a suffix that may follow, such as "/d".
    [[nodiscard]] QuantityForm followed_by(std::string_view per) const {
        QuantityForm form = *this;
        form.words.per = per;
        return form;
    }
};

// From least to most, both allowed.
template <units::Written Quantity>
[[nodiscard]] QuantityForm<Quantity> from_to(Quantity least, Quantity most,
                                             std::string_view example) {
    return {{.dimension = units::DimensionOf<Quantity>::value,
             .least = units::in_si(least),
             .most = units::in_si(most),
             .least_is_allowed = true,
             .example = example}};
}

// More than nothing, at most `most`.
template <units::Written Quantity>
[[nodiscard]] QuantityForm<Quantity> positive_to(Quantity most, std::string_view example) {
    QuantityForm<Quantity> form = from_to(Quantity(), most, example);
    form.words.least_is_allowed = false;
    return form;
}

struct WholeForm {
    using Value = int;
    int least = 1;
    int most = 1000;

    [[nodiscard]] std::string example() const { return std::to_string(least); }
    [[nodiscard]] words::Said limits() const;
    [[nodiscard]] Ends ends() const;
    [[nodiscard]] Shape shape() const {
        return {.kind = Shape::Kind::whole, .least = least, .most = most};
    }
    [[nodiscard]] std::optional<int> read(Reading&, const Spot&) const;
    [[nodiscard]] std::string print(const int& value) const { return std::to_string(value); }
};

struct TruthForm {
    using Value = bool;

    [[nodiscard]] std::string example() const { return "true"; }
    [[nodiscard]] words::Said limits() const;
    [[nodiscard]] Ends ends() const;
    [[nodiscard]] Shape shape() const { return {.kind = Shape::Kind::truth}; }
    [[nodiscard]] std::optional<bool> read(Reading&, const Spot&) const;
    [[nodiscard]] std::string print(const bool& value) const { return value ? "true" : "false"; }
};

// One line of a person's own words.
struct WordsForm {
    using Value = std::string;
    std::string_view sample = "cabin lights";
    std::size_t longest = 200;  // bytes
    bool may_be_empty = false;

    [[nodiscard]] std::string example() const { return '"' + std::string(sample) + '"'; }
    [[nodiscard]] words::Said limits() const;
    [[nodiscard]] Ends ends() const;
    [[nodiscard]] Shape shape() const {
        return {.kind = Shape::Kind::words, .longest = longest, .may_be_empty = may_be_empty};
    }
    [[nodiscard]] std::optional<std::string> read(Reading&, const Spot&) const;
    [[nodiscard]] std::string print(const std::string& value) const;
};

// A word that people write in the place of one that is known, and what to give then.
struct OtherWord {
    std::string_view word;
    words::Said remedy;
};

[[nodiscard]] std::optional<std::size_t> read_choice(Reading&, const Spot&,
                                                     const std::vector<std::string_view>& words,
                                                     const std::vector<OtherWord>& others = {});

// One of a few words.
template <class Kind>
struct ChoiceForm {
    using Value = Kind;
    std::vector<std::string_view> words;
    std::vector<Kind> kinds;
    std::vector<OtherWord> others = {};
    std::vector<words::Said> labels = {};  // of the words, on a screen

    [[nodiscard]] std::string example() const { return '"' + std::string(words.front()) + '"'; }
    [[nodiscard]] words::Said limits() const { return limits_of_words(words); }
    [[nodiscard]] Ends ends() const { return ends_of_words(words); }
    [[nodiscard]] Shape shape() const {
        Shape shape{.kind = Shape::Kind::choice};
        for (std::size_t i = 0; i < words.size(); ++i) {
            shape.choices.push_back({.value = words[i], .label = labels[i]});
        }
        return shape;
    }
    [[nodiscard]] std::optional<Kind> read(Reading& reading, const Spot& spot) const {
        const std::optional<std::size_t> chosen = read_choice(reading, spot, words, others);
        return chosen ? std::optional(kinds[*chosen]) : std::nullopt;
    }
    [[nodiscard]] std::string print(const Kind& value) const {
        for (std::size_t i = 0; i < kinds.size(); ++i) {
            if (kinds[i] == value) {
                return '"' + std::string(words[i]) + '"';
            }
        }
        return "\"\"";
    }
};

// One word with what it stands for, and how a screen calls it.
template <class Kind>
struct Choice {
    std::string_view word;
    Kind kind;
    words::Said label = {};
};

template <class Kind>
[[nodiscard]] ChoiceForm<Kind> one_of(const std::vector<Choice<Kind>>& choices,
                                      std::vector<OtherWord> others = {}) {
    ChoiceForm<Kind> form;
    form.others = std::move(others);
    for (const auto& [word, kind, label] : choices) {
        form.words.push_back(word);
        form.kinds.push_back(kind);
        form.labels.push_back(label);
    }
    return form;
}

// A text out of a few, kept as text.
struct OneTextForm {
    using Value = std::string;
    std::vector<std::string_view> words;
    std::vector<words::Said> labels = {};  // of the words, on a screen

    [[nodiscard]] std::string example() const { return '"' + std::string(words.front()) + '"'; }
    [[nodiscard]] words::Said limits() const { return limits_of_words(words); }
    [[nodiscard]] Ends ends() const { return ends_of_words(words); }
    [[nodiscard]] Shape shape() const;
    [[nodiscard]] std::optional<std::string> read(Reading&, const Spot&) const;
    [[nodiscard]] std::string print(const std::string& value) const { return '"' + value + '"'; }
};

// A date and time of local standard time; a date alone is its midnight.
struct MomentForm {
    using Value = units::LocalTime;

    [[nodiscard]] std::string example() const { return "2026-01-14T18:00:00"; }
    [[nodiscard]] words::Said limits() const;
    [[nodiscard]] Ends ends() const;
    [[nodiscard]] Shape shape() const { return {.kind = Shape::Kind::moment}; }
    [[nodiscard]] std::optional<units::LocalTime> read(Reading&, const Spot&) const;
    [[nodiscard]] std::string print(const units::LocalTime& value) const {
        return units::print(value);
    }
};

// A time of day in whole minutes, since midnight.
struct TimeOfDayForm {
    using Value = units::Duration;

    [[nodiscard]] std::string example() const { return "\"06:00\""; }
    [[nodiscard]] words::Said limits() const;
    [[nodiscard]] Ends ends() const;
    [[nodiscard]] Shape shape() const { return {.kind = Shape::Kind::time_of_day}; }
    [[nodiscard]] std::optional<units::Duration> read(Reading&, const Spot&) const;
    [[nodiscard]] std::string print(const units::Duration& value) const {
        return '"' + units::show_time(value) + '"';
    }
};

struct SpanForm {
    using Value = units::DailySpan;

    [[nodiscard]] std::string example() const { return "\"06:00-07:00\""; }
    [[nodiscard]] words::Said limits() const;
    [[nodiscard]] Ends ends() const;
    [[nodiscard]] Shape shape() const { return {.kind = Shape::Kind::span}; }
    [[nodiscard]] std::optional<units::DailySpan> read(Reading&, const Spot&) const;
    [[nodiscard]] std::string print(const units::DailySpan& value) const {
        return '"' + units::print(value) + '"';
    }
};

struct WireSizeForm {
    using Value = units::WireSize;

    [[nodiscard]] std::string example() const { return "\"16 AWG\""; }
    [[nodiscard]] words::Said limits() const;
    [[nodiscard]] Ends ends() const;
    [[nodiscard]] Shape shape() const { return {.kind = Shape::Kind::wire_size}; }
    [[nodiscard]] std::optional<units::WireSize> read(Reading&, const Spot&) const;
    [[nodiscard]] std::string print(const units::WireSize& value) const {
        return '"' + units::print(value) + '"';
    }
};

// A value that is the only member of its struct.
template <class Only, class Inner>
struct OnlyMemberForm {
    using Value = Only;
    Inner inner;

    [[nodiscard]] std::string example() const { return inner.example(); }
    [[nodiscard]] words::Said limits() const { return inner.limits(); }
    [[nodiscard]] Ends ends() const { return inner.ends(); }
    [[nodiscard]] Shape shape() const { return inner.shape(); }
    [[nodiscard]] std::optional<Only> read(Reading& reading, const Spot& spot) const {
        const auto value = inner.read(reading, spot);
        return value ? std::optional(Only{*value}) : std::nullopt;
    }
    [[nodiscard]] std::string print(const Only& only) const {
        const auto& [value] = only;
        return inner.print(value);
    }
};
template <class Only, class Inner>
[[nodiscard]] OnlyMemberForm<Only, Inner> as(Inner inner) {
    return {std::move(inner)};
}

// Whether the node is a list of at most so many; one value without brackets passes as a list of
// one.
[[nodiscard]] bool is_list_within(Reading&, const Spot&, std::size_t most,
                                  std::string_view example);

// "[x, x, x]"
[[nodiscard]] std::string repeated(const std::string& value, std::size_t times);

// Several values of one form; leaving the key out is the only way to have none.
template <class Inner>
struct ListForm {
    using Value = std::vector<typename Inner::Value>;
    Inner inner;
    std::size_t most = 48;

    [[nodiscard]] auto inside() const requires requires(const Inner& one) { one.inside(); }
    { return inner.inside(); }

    [[nodiscard]] std::string example() const { return '[' + inner.example() + ']'; }
    [[nodiscard]] words::Said limits() const {
        const words::Said each = inner.limits();
        return each.empty() ? words::said<"at most {n}">(most)
                            : words::said<"at most {n}, each {limits}">(most, each);
    }
    [[nodiscard]] Ends ends() const {
        Ends ends;
        ends.add(inner.ends(), [](const std::string& value) { return '[' + value + ']'; });
        ends.crowded.push_back(repeated(inner.example(), most));
        ends.beyond.push_back(repeated(inner.example(), most + 1));
        return ends;
    }
    [[nodiscard]] Shape shape() const {
        Shape shape = inner.shape();
        shape.several = true;
        shape.most_items = most;
        shape.one_will_do = true;
        return shape;
    }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        if (!is_list_within(reading, spot, most, example())) {
            return std::nullopt;
        }
        Value values;
        const bool one = spot.node->kind != Node::Kind::list;
        for (std::size_t i = 0; i < (one ? 1 : spot.node->items.size()); ++i) {
            const Spot item = one ? spot : spot.at(spot.node->items[i], i);
            if (auto value = inner.read(reading, item)) {
                values.push_back(std::move(*value));
            }
        }
        return values;
    }
    [[nodiscard]] std::string print(const Value& values) const {
        std::string text = "[";
        for (const auto& value : values) {
            text += (text.size() > 1 ? ", " : "") + inner.print(value);
        }
        return text + ']';
    }
};
template <class Inner>
[[nodiscard]] ListForm<Inner> list_of(Inner inner, std::size_t most = 48) {
    return {std::move(inner), most};
}

[[nodiscard]] bool is_list_of_months(Reading&, const Spot&, std::string_view example);

// Twelve values, January first.
template <class Inner>
struct MonthlyForm {
    using Value = std::array<typename Inner::Value, 12>;
    Inner inner;

    [[nodiscard]] std::string example() const { return '[' + inner.example() + ", … 12 in all]"; }
    [[nodiscard]] words::Said limits() const {
        return words::said<"twelve, each {limits}">(inner.limits());
    }
    [[nodiscard]] Ends ends() const {
        Ends ends;
        ends.add(inner.ends(), [](const std::string& value) { return repeated(value, 12); });
        ends.beyond.push_back(repeated(inner.example(), 11));
        ends.beyond.push_back(repeated(inner.example(), 13));
        return ends;
    }
    [[nodiscard]] Shape shape() const {
        Shape shape = inner.shape();
        shape.several = true;
        shape.fewest_items = 12;
        shape.most_items = 12;
        return shape;
    }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        if (!is_list_of_months(reading, spot, inner.example())) {
            return std::nullopt;
        }
        Value months{};
        for (std::size_t i = 0; i < months.size(); ++i) {
            const auto value = inner.read(reading, spot.at(spot.node->items[i], i));
            months[i] = value.value_or(typename Inner::Value{});
        }
        return months;
    }
    [[nodiscard]] std::string print(const Value& months) const {
        return ListForm<Inner>{inner}.print({months.begin(), months.end()});
    }
};
template <class Inner>
[[nodiscard]] MonthlyForm<Inner> monthly(Inner inner) {
    return {std::move(inner)};
}

// Text in quotes as TOML wants it.
[[nodiscard]] std::string in_quotes(std::string_view text);

}  // namespace scenario
