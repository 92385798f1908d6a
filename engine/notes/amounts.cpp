#include "notes/amounts.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>

#include "units/quote.hpp"
#include "units/text.hpp"

namespace notes {
namespace {

using units::Errors;

// What people say for a unit.
std::string as_unit(std::string_view word) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 22> said{
        {{"volt", "V"},      {"volts", "V"},   {"v", "V"},       {"watt", "W"},  {"watts", "W"},
         {"w", "W"},         {"kw", "kW"},     {"wh", "Wh"},     {"kwh", "kWh"}, {"amp", "A"},
         {"amps", "A"},      {"a", "A"},       {"percent", "%"}, {"c", "degC"},  {"degc", "degC"},
         {"f", "degF"},      {"degf", "degF"}, {"hour", "h"},    {"hours", "h"}, {"hrs", "h"},
         {"minutes", "min"}, {"days", "d"}}};
    const std::string small = small_letters(word);
    for (const auto& [name, unit] : said)
        if (small == name) return std::string(unit);
    return std::string(word);
}

bool is_of_a_number(char c) {
    return (c >= '0' && c <= '9') || c == '.' || c == ',' || c == '-' || c == '+' || c == '/';
}

bool has_digit(std::string_view text) {
    return std::ranges::any_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

// "12.9 V" of one word or two.
struct Written {
    std::string number;
    std::string unit;
    std::size_t words = 1;
};

std::optional<Written> amount_at(const Words& words, std::size_t at) {
    if (!words.is_free(at)) return std::nullopt;
    const std::string& first = words.written(at);
    std::size_t end = 0;
    while (end < first.size() && is_of_a_number(first[end]))
        ++end;
    Written made{.number = first.substr(0, end), .unit = first.substr(end)};
    if (!has_digit(made.number)) return std::nullopt;
    if (made.unit.empty() && words.is_free(at + 1) && !has_digit(words.written(at + 1))) {
        made.unit = words.written(at + 1);
        made.words = 2;
        // "23 degrees C"
        if ((words.plain(at + 1) == "degrees" || words.plain(at + 1) == "deg") &&
            words.is_free(at + 2)) {
            made.unit = words.written(at + 2);
            made.words = 3;
        }
    }
    made.unit = as_unit(made.unit);
    return made;
}

// Twice: what is said where the line has it a second time.
template <words::Fixed Twice, class Quantity>
bool take_as(std::optional<Quantity>& place, const std::string& text, Errors& errors) {
    const auto read = units::read<Quantity>(text);
    if (!read) return false;
    if (place)
        errors.push_back({.where = "line",
                          .found = words::said<Twice>(units::quote(text)),
                          .remedy = words::said<"write a line for each thing">()});
    place = *read;
    return true;
}

int decimals_in(std::string_view number, bool millivolts) {
    const auto point = number.find_first_of(".,");
    const int behind =
        point == std::string_view::npos ? 0 : static_cast<int>(number.size() - point - 1);
    return std::min(6, behind + (millivolts ? 3 : 0));
}

bool take_one(Amounts& into, const Written& one, Errors& errors) {
    const std::string text = one.number + ' ' + one.unit;
    std::optional<units::Voltage> volts;
    if (into.voltage) volts = into.voltage->volts;
    if (take_as<"found a second voltage, {text}">(volts, text, errors)) {
        into.voltage = {.volts = *volts, .decimals = decimals_in(one.number, one.unit == "mV")};
        return true;
    }
    if (one.unit == "%")
        return take_as<"found a second percentage, {text}">(into.charge, text, errors);
    return take_as<"found a second power, {text}">(into.power, text, errors) ||
           take_as<"found a second current, {text}">(into.current, text, errors) ||
           take_as<"found a second energy, {text}">(into.energy, text, errors) ||
           take_as<"found a second temperature, {text}">(into.temperature, text, errors) ||
           take_as<"found a second length of time, {text}">(into.duration, text, errors);
}

void take_count(Amounts& into, Words& words, std::size_t at) {
    const std::string_view text = words.plain(at);
    int count = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
    if (into.count || error != std::errc() || end != text.data() + text.size() || count < 1) return;
    into.count = count;
    words.take(at);
}

}  // namespace

units::Result<Amounts> take_amounts(Words& words) {
    Amounts found;
    Errors errors;
    for (std::size_t at = 0; at < words.size(); ++at) {
        const auto one = amount_at(words, at);
        if (!one) continue;
        if (take_one(found, *one, errors)) {
            words.take(at, one->words);
        } else {
            take_count(found, words, at);
        }
    }
    if (!errors.empty()) return units::fail(std::move(errors));
    return found;
}

}  // namespace notes
