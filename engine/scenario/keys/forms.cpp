#include "scenario/keys/forms.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <limits>

#include "units/quote.hpp"

namespace scenario {
namespace {

using Kind = Node::Kind;
using words::Said;
using words::said;

Said found_kind(const Node& node) {
    switch (node.kind) {
        case Kind::whole:
        case Kind::real:
            return said<"found {value}, which is a bare number">(text_of(node));
        case Kind::truth:
            return said<"found {value}, which is yes or no">(text_of(node));
        case Kind::time:
        case Kind::clock:
            return said<"found {value}, which is a time">(text_of(node));
        default:
            return said<"found {value}">(shown(node));
    }
}

Said found_too_little_or_much(const Node& node, bool little) {
    return little ? said<"found {value}, which is too little">(shown(node))
                  : said<"found {value}, which is too much">(shown(node));
}

// What the units part says is wrong, at this place.
template <class T>
std::optional<T> or_refuse(Reading& reading, const Spot& spot, units::Result<T> result) {
    if (result) {
        return std::move(*result);
    }
    for (units::Error& error : result.error()) {
        reading.refuse(spot, std::move(error.found), std::move(error.remedy));
    }
    return std::nullopt;
}

// "100 Ah" gives "Ah".
std::string_view unit_of(std::string_view example) {
    const std::size_t space = example.find(' ');
    return space == std::string_view::npos ? std::string_view() : example.substr(space + 1);
}

bool is_number(const Node& node) {
    return node.kind == Kind::whole || node.kind == Kind::real;
}

bool is_fraction(units::Dimension dimension) {
    using enum units::Dimension;
    return dimension == fraction || dimension == probability || dimension == power_factor;
}

// A number may stand without quotes only where there is no unit it could lack. A whole number is
// not taken for a fraction: 90 might be 90 %, and 1 might be 1 %.
bool may_be_bare(const Node& node, units::Dimension dimension) {
    return dimension == units::Dimension::price ||
           (is_fraction(dimension) && node.kind == Kind::real);
}

void refuse_bare_number(Reading& reading, const Spot& spot, const QuantityWords& words) {
    const std::string number = text_of(*spot.node);
    if (!std::isfinite(spot.node->number)) {
        reading.refuse(
            spot, said<"found {number}, which is not a number that can be worked with">(number),
            said<"give a value, such as \"{example}\"">(words.example));
        return;
    }
    const std::string_view unit = unit_of(words.example);
    const std::string with_unit = number + (unit.empty() ? "" : " ") + std::string(unit);
    reading.refuse(spot, said<"found {number} without a unit: {number} what?">(number),
                   said<"write the unit in the quotes too, such as \"{value}\"">(with_unit));
}

// "4.2 h/d" without its "/d", so that what is left is the quantity itself.
std::string_view without_per(std::string_view text, std::string_view per) {
    if (per.empty()) {
        return text;
    }
    const std::size_t slash = text.rfind('/');
    if (slash == std::string_view::npos) {
        return text;
    }
    std::string_view behind = text.substr(slash + 1);
    while (behind.starts_with(' ')) {
        behind.remove_prefix(1);
    }
    const std::string_view wanted = per.substr(1);
    const bool same = behind == wanted || (wanted == "d" && behind == "day") ||
                      (wanted == "K" && (behind == "degC" || behind == "°C")) ||
                      (wanted == "month" && behind == "mo");
    return same ? text.substr(0, slash) : text;
}

// Whether two texts are the same words: capitals, blanks, hyphens and underscores do not count.
bool same_words(std::string_view a, std::string_view b) {
    const auto letters = [](std::string_view text) {
        std::string kept;
        for (const char c : text) {
            if (c != ' ' && c != '-' && c != '_') {
                kept += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
            }
        }
        return kept;
    };
    return letters(a) == letters(b);
}

// The first character of a text that acts or is not seen, as it is made visible; empty when there
// is none.
std::string first_unseen(std::string_view text) {
    while (!text.empty()) {
        const auto length = static_cast<std::size_t>(std::max(1, units::utf8_length(text)));
        const std::string_view character = text.substr(0, length);
        if (std::string shown = units::quote(character); shown != character) {
            return shown;
        }
        text.remove_prefix(length);
    }
    return {};
}

// What is more than nothing may be as little as this.
constexpr double hardly_anything = 1e-300;

// Words of the file, as they are typed.
Said each_in_quotes(const std::vector<std::string_view>& words) {
    std::vector<Said> quoted;
    for (const std::string_view word : words)
        quoted.emplace_back(in_quotes(word));
    return words::joined(std::move(quoted), words::List::Joint::comma);
}

// A choice as the file has it, in quotes, by its label.
Said label_of(const Shape& shape, std::string_view written) {
    const auto pick = std::ranges::find_if(shape.choices, [&](const Pick& one) {
        return !one.label.empty() && in_quotes(one.value) == written;
    });
    return pick == shape.choices.end() ? Said(written) : pick->label;
}

}  // namespace

Said in_words(const Shape& shape, const std::string& value) {
    if (shape.kind == Shape::Kind::truth) return value == "true" ? said<"yes">() : said<"no">();
    if (shape.kind != Shape::Kind::choice) return value;
    if (!value.starts_with('[')) return label_of(shape, value);
    std::vector<Said> each;
    std::string_view rest = std::string_view(value).substr(1, value.size() - 2);
    while (!rest.empty()) {
        const std::size_t comma = std::min(rest.find(", "), rest.size());
        each.push_back(label_of(shape, rest.substr(0, comma)));
        rest.remove_prefix(std::min(comma + 2, rest.size()));
    }
    return words::joined(std::move(each), words::List::Joint::comma);
}

Said silent_in_words(const Shape& shape, const Said& silent) {
    const auto pick = std::ranges::find_if(shape.choices, [&](const Pick& one) {
        return !one.label.empty() && silent == Said(one.value);
    });
    return pick == shape.choices.end() ? silent : pick->label;
}

Said limits_of(const QuantityWords& words) {
    // A day of sunshine is 24 hours of it: "1 d/d" says nothing to a reader.
    const auto written = [&words](double si) {
        constexpr double second_an_hour = 3600.0;
        const bool hours = words.per == "/d" && words.dimension == units::Dimension::duration;
        return (hours ? fmt::format("{} h", si / second_an_hour)
                      : units::print_si(words.dimension, si)) +
               std::string(words.per);
    };
    const std::string most = written(words.most);
    const std::string least = written(words.least);
    return words.least_is_allowed ? said<"from {least} to {most}">(least, most)
                                  : said<"more than {least}, at most {most}">(least, most);
}

Ends ends_of(const QuantityWords& words) {
    const double infinity = std::numeric_limits<double>::infinity();
    const double below =
        words.least_is_allowed ? std::nextafter(words.least, -infinity) : words.least;
    const double first = words.least_is_allowed ? words.least : words.least + hardly_anything;
    const auto written = [&](double si) { return print_quantity(words, si); };
    return {.within = {written(first), written(words.most)},
            .beyond = {written(below), written(std::nextafter(words.most, infinity))}};
}

Shape shape_of(const QuantityWords& words) {
    return {.kind = Shape::Kind::quantity, .dimension = words.dimension, .per = words.per};
}

std::optional<double> read_quantity(Reading& reading, const Spot& spot,
                                    const QuantityWords& words) {
    const Node& node = *spot.node;
    if (is_number(node) && (!may_be_bare(node, words.dimension) || !std::isfinite(node.number))) {
        refuse_bare_number(reading, spot, words);
        return std::nullopt;
    }
    if (!is_number(node) && node.kind != Kind::text) {
        reading.refuse(spot, found_kind(node), said<"write \"{example}\"">(words.example));
        return std::nullopt;
    }
    const units::Result<double> read =
        is_number(node) ? units::Result<double>(node.number)
                        : units::read_si(words.dimension, without_per(node.text, words.per));
    const std::optional<double> value = or_refuse(reading, spot, read);
    if (!value) {
        return std::nullopt;
    }
    // Written so that a value that is not a number is outside.
    const bool inside = words.least_is_allowed ? *value >= words.least && *value <= words.most
                                               : *value > words.least && *value <= words.most;
    if (!inside) {
        const bool little = *value <= words.least;
        reading.refuse(spot, found_too_little_or_much(node, little),
                       said<"give {limits}, such as {example}">(
                           limits_of(words), fmt::format("\"{}\"", words.example)));
        return std::nullopt;
    }
    return value;
}

std::string print_quantity(const QuantityWords& words, double si) {
    if (words.dimension == units::Dimension::price) {
        return fmt::format("{}", si);
    }
    return fmt::format("\"{}{}\"", units::print_si(words.dimension, si), words.per);
}

std::string example_of(const QuantityWords& words) {
    const bool bare = words.dimension == units::Dimension::price;
    return bare ? std::string(words.example) : fmt::format("\"{}\"", words.example);
}

Said WholeForm::limits() const {
    return said<"a whole number from {least} to {most}">(least, most);
}

Ends WholeForm::ends() const {
    return {.within = {print(least), print(most)}, .beyond = {print(least - 1), print(most + 1)}};
}

std::optional<int> WholeForm::read(Reading& reading, const Spot& spot) const {
    const Node& node = *spot.node;
    const Said range = said<"give {limits}, without quotes">(limits());
    if (node.kind != Kind::whole) {
        reading.refuse(spot, found_kind(node), range);
        return std::nullopt;
    }
    if (node.whole < least || node.whole > most) {
        const bool little = node.whole < least;
        reading.refuse(spot, found_too_little_or_much(node, little), range);
        return std::nullopt;
    }
    return static_cast<int>(node.whole);
}

Said TruthForm::limits() const {
    return said<"true or false">();
}

Ends TruthForm::ends() const {
    return {.within = {"true", "false"}, .beyond = {"2", "\"perhaps\""}};
}

std::optional<bool> TruthForm::read(Reading& reading, const Spot& spot) const {
    if (spot.node->kind != Kind::truth) {
        reading.refuse(spot, found_kind(*spot.node), said<"write true or false, without quotes">());
        return std::nullopt;
    }
    return spot.node->truth;
}

Said WordsForm::limits() const {
    return said<"words of at most {n} bytes">(longest);
}

Ends WordsForm::ends() const {
    const auto letters = [](std::size_t count) { return '"' + std::string(count, 'w') + '"'; };
    Ends ends = {.within = {letters(1), letters(longest)}, .beyond = {letters(longest + 1)}};
    (may_be_empty ? ends.within : ends.beyond).push_back(letters(0));
    return ends;
}

std::optional<std::string> WordsForm::read(Reading& reading, const Spot& spot) const {
    const Node& node = *spot.node;
    if (node.kind != Kind::text) {
        reading.refuse(spot, found_kind(node),
                       said<"give words in quotes, such as {example}">(example()));
        return std::nullopt;
    }
    const bool blank = node.text.find_first_not_of(' ') == std::string::npos;
    if (blank && !may_be_empty) {
        reading.refuse(spot, said<"found no words between the quotes">(),
                       said<"write for instance {example}">(example()));
        return std::nullopt;
    }
    if (node.text.size() > longest) {
        reading.refuse(spot, said<"found {n} bytes of text">(node.text.size()),
                       said<"give at most {n}">(longest));
        return std::nullopt;
    }
    if (const std::string unseen = first_unseen(node.text); !unseen.empty()) {
        reading.refuse(spot,
                       said<"found {value}, in which {character} is a line end or another "
                            "character that acts and is not seen">(text_of(node), unseen),
                       said<"write one line of letters that are seen">());
        return std::nullopt;
    }
    return node.text;
}

std::string WordsForm::print(const std::string& value) const {
    return in_quotes(value);
}

Said limits_of_words(const std::vector<std::string_view>& words) {
    return said<"one of {choices}">(each_in_quotes(words));
}

Ends ends_of_words(const std::vector<std::string_view>& words) {
    Ends ends = {.within = {}, .beyond = {"\"none of these\""}};
    for (const std::string_view word : words) {
        ends.within.push_back(in_quotes(word));
    }
    return ends;
}

std::optional<std::size_t> read_choice(Reading& reading, const Spot& spot,
                                       const std::vector<std::string_view>& words,
                                       const std::vector<OtherWord>& others) {
    const Node& node = *spot.node;
    if (node.kind == Kind::text) {
        const auto chosen = std::ranges::find_if(
            words, [&](std::string_view word) { return same_words(word, node.text); });
        if (chosen != words.end()) {
            return static_cast<std::size_t>(chosen - words.begin());
        }
    }
    const auto other = std::ranges::find_if(others, [&](const OtherWord& known) {
        return node.kind == Kind::text && same_words(known.word, node.text);
    });
    if (other != others.end()) {
        reading.refuse(spot, found_kind(node), other->remedy);
        return std::nullopt;
    }
    const std::string_view nearest = node.kind == Kind::text ? nearest_word(node.text, words) : "";
    const Said choices = each_in_quotes(words);
    reading.refuse(spot, found_kind(node),
                   nearest.empty() ? said<"give one of {choices}">(choices)
                                   : said<"give one of {choices}; did you mean {word}?">(
                                         choices, in_quotes(nearest)));
    return std::nullopt;
}

Shape OneTextForm::shape() const {
    Shape shape{.kind = Shape::Kind::choice};
    for (std::size_t i = 0; i < words.size(); ++i) {
        shape.choices.push_back(
            {.value = words[i], .label = i < labels.size() ? labels[i] : Said()});
    }
    return shape;
}

std::optional<std::string> OneTextForm::read(Reading& reading, const Spot& spot) const {
    const std::optional<std::size_t> chosen = read_choice(reading, spot, words);
    return chosen ? std::optional(std::string(words[*chosen])) : std::nullopt;
}

namespace {

constexpr int first_year = 1900;  // common practice, no source: solar formulas hold there
constexpr int last_year = 2199;

}  // namespace

Said MomentForm::limits() const {
    return said<"a time in the years {first} to {last}">(first_year, last_year);
}

Ends MomentForm::ends() const {
    return {.within = {fmt::format("{}-01-01T00:00:00", first_year),
                       fmt::format("{}-12-31T23:59:59", last_year)},
            .beyond = {fmt::format("{}-12-31T23:59:59", first_year - 1),
                       fmt::format("{}-01-01T00:00:00", last_year + 1)}};
}

std::optional<units::LocalTime> MomentForm::read(Reading& reading, const Spot& spot) const {
    const Node& node = *spot.node;
    std::optional<units::LocalTime> moment;
    if (node.kind == Kind::text) {
        moment = or_refuse(reading, spot, units::read_local_time(node.text));
        if (!moment) {
            return std::nullopt;
        }
    } else if (node.kind == Kind::time && !node.has_offset) {
        moment = node.time;
    } else {
        reading.refuse(spot,
                       node.has_offset ? said<"found {value}, with an offset from UTC">(shown(node))
                                       : found_kind(node),
                       said<"give local standard time at the place, such as {example}">(example()));
        return std::nullopt;
    }
    const auto year = static_cast<int>(units::date_of(*moment).year());
    if (year < first_year || year > last_year) {
        reading.refuse(spot, said<"found {value}, in the year {year}">(text_of(node), year),
                       said<"give {limits}, such as {example}">(limits(), example()));
        return std::nullopt;
    }
    return moment;
}

Said TimeOfDayForm::limits() const {
    return said<"from {least} to {most}">("00:00", "23:59");
}

Ends TimeOfDayForm::ends() const {
    return {.within = {"\"00:00\"", "\"23:59\""}, .beyond = {"\"24:00\"", "\"-00:01\""}};
}

std::optional<units::Duration> TimeOfDayForm::read(Reading& reading, const Spot& spot) const {
    const Node& node = *spot.node;
    if (node.kind == Kind::text) {
        return or_refuse(reading, spot, units::read_time_of_day(node.text));
    }
    const bool in_minutes = std::fmod(node.since_midnight / units::second, 60.0) == 0.0;
    if (node.kind != Kind::clock || !in_minutes) {
        reading.refuse(spot, found_kind(node),
                       said<"give a time of day, such as {example}">(example()));
        return std::nullopt;
    }
    return node.since_midnight;
}

Said SpanForm::limits() const {
    return said<"a part of the day, such as {example}">(example());
}

Ends SpanForm::ends() const {
    return {.within = {"\"00:00-24:00\"", "\"00:00-00:01\"", "\"23:59-24:00\"", "\"23:59-00:01\"",
                       "\"12:01-12:00\""},
            .beyond = {"\"00:00-24:01\"", "\"12:00-12:00\""}};
}

std::optional<units::DailySpan> SpanForm::read(Reading& reading, const Spot& spot) const {
    if (spot.node->kind != Kind::text) {
        reading.refuse(spot, found_kind(*spot.node),
                       said<"give a span of the day, such as {example}">(example()));
        return std::nullopt;
    }
    return or_refuse(reading, spot, units::read_daily_span(spot.node->text));
}

namespace {

// 40 AWG has 0.005 mm2, [NBS 100]; the largest conductor of [IEC 60228] 2500 mm2 (from memory).
constexpr double least_square_millimetres = 0.005;
constexpr double most_square_millimetres = 2500.0;

}  // namespace

Said WireSizeForm::limits() const {
    return said<"from 40 AWG to 4/0 AWG, or from {least} mm2 to {most} mm2">(
        words::Number{.value = least_square_millimetres},
        words::Number{.value = most_square_millimetres, .digits = 4});
}

Ends WireSizeForm::ends() const {
    return {
        .within = {"\"40 AWG\"", "\"4/0 AWG\"", fmt::format("\"{} mm2\"", least_square_millimetres),
                   fmt::format("\"{} mm2\"", most_square_millimetres)},
        .beyond = {"\"41 AWG\"", "\"5/0 AWG\"", "\"0.0049 mm2\"", "\"2501 mm2\""}};
}

std::optional<units::WireSize> WireSizeForm::read(Reading& reading, const Spot& spot) const {
    if (spot.node->kind != Kind::text) {
        reading.refuse(spot, found_kind(*spot.node),
                       said<"give a wire size, such as \"16 AWG\" or \"2.5 mm2\"">());
        return std::nullopt;
    }
    const auto size = or_refuse(reading, spot, units::read_wire_size(spot.node->text));
    const auto* area = size ? std::get_if<units::Area>(&*size) : nullptr;
    constexpr double rounding = 1e-9;
    const double square_millimetres = area == nullptr ? 1.0 : 1e6 * units::in_si(*area);
    const bool little = square_millimetres < (1.0 - rounding) * least_square_millimetres;
    if (little || square_millimetres > (1.0 + rounding) * most_square_millimetres) {
        reading.refuse(spot, found_too_little_or_much(*spot.node, little),
                       said<"give a size {limits}, such as {example}">(limits(), example()));
        return std::nullopt;
    }
    return size;
}

bool is_list_within(Reading& reading, const Spot& spot, std::size_t most,
                    std::string_view example) {
    const Node& node = *spot.node;
    if (node.kind != Kind::list) {
        if (node.kind == Kind::text || node.kind == Kind::whole || node.kind == Kind::table) {
            return true;
        }
        reading.refuse(spot, found_kind(node), said<"give a list, such as {example}">(example));
        return false;
    }
    if (node.items.empty()) {
        reading.refuse(spot, said<"found an empty list">(),
                       said<"take the key out, or give a list such as {example}">(example));
        return false;
    }
    if (node.items.size() > most) {
        reading.refuse(spot, said<"found {value}">(shown(node)), said<"give at most {n}">(most));
        return false;
    }
    return true;
}

bool is_list_of_months(Reading& reading, const Spot& spot, std::string_view example) {
    const Node& node = *spot.node;
    if (node.kind == Kind::list && node.items.size() == 12) {
        return true;
    }
    reading.refuse(
        spot, found_kind(node),
        said<"give a list of twelve values, January first, each such as {example}">(example));
    return false;
}

std::string repeated(const std::string& value, std::size_t times) {
    std::string text = "[";
    for (std::size_t i = 0; i < times; ++i) {
        text += (i > 0 ? ", " : "") + value;
    }
    return text + ']';
}

std::string in_quotes(std::string_view text) {
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') {
            quoted += '\\';
            quoted += c;
        } else if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) {
            quoted += fmt::format("\\u{:04X}", static_cast<unsigned char>(c));
        } else {
            quoted += c;
        }
    }
    return quoted + '"';
}

}  // namespace scenario
