#include "units/number.hpp"
#include "units/quote.hpp"
#include "units/text.hpp"
#include "units/unit_table.hpp"

namespace units {

namespace {

// What is wrong with the text, before the sentence says so.
tl::unexpected<Errors> refuse(std::string found, std::string remedy) {
    return fail({.where = "", .found = std::move(found), .remedy = std::move(remedy)});
}

std::string give(Dimension wanted) {
    const DimensionText& text = text_of(wanted);
    return fmt::format("give {}, such as {}", text.words, text.example);
}

bool is_digit(char letter) {
    return letter >= '0' && letter <= '9';
}

// A unit ends where a space and the next number of a sum begin; the 1 of "1/h" is no number.
std::size_t unit_length(std::string_view text) {
    for (std::size_t at = 0; at + 1 < text.size(); ++at) {
        const std::string_view next = text.substr(at + 1);
        const bool number = is_digit(next.front()) || next.front() == '.' || next.front() == '-';
        if (text[at] == ' ' && number && !next.starts_with("1/")) {
            return at;
        }
    }
    return text.size();
}

// "N·m", "N*m", "N.m", "N-m" are "N m"; "m^2" is "m2"; "/h" is "1/h"; "kWh/(m2 d)" is "kWh/m2/d".
std::string plain_unit(std::string_view written) {
    std::string unit;
    for (std::size_t at = 0; at < written.size(); ++at) {
        const std::string_view rest = written.substr(at);
        if (rest.starts_with("·") || rest.starts_with("⋅")) {
            unit += ' ';
            at += rest.starts_with("·") ? 1 : 2;
        } else if (rest.front() == '*' || rest.front() == '.' || rest.front() == '-') {
            unit += ' ';
        } else if (rest.front() != '^' &&
                   !(rest.front() == ' ' && (unit.ends_with(' ') || unit.ends_with('/')))) {
            while (rest.front() == '/' && unit.ends_with(' ')) {
                unit.pop_back();
            }
            unit += rest.front();
        }
    }
    while (unit.ends_with(' ')) {
        unit.pop_back();
    }
    if (unit.starts_with('/')) {
        unit.insert(0, "1");
    }
    for (const std::string_view per_area : {"/(m2 d)", "/(m2 day)"}) {
        if (unit.ends_with(per_area)) {
            unit.replace(unit.size() - per_area.size(), per_area.size(), "/m2/d");
        }
    }
    return unit;
}

// Units that people write and that mean nothing, or nothing definite, and why.
std::optional<std::string> why_meaningless(std::string_view unit) {
    constexpr std::array watts_per_hour = {
        "W/h",        "kW/h",           "W/hr",          "kW/hr",       "W/hour", "watt/hour",
        "watts/hour", "watts per hour", "watt per hour", "kW per hour", "w/h",    "kw/h"};
    constexpr std::array amperes_per_hour = {"A/h",           "mA/h",     "A/hr",
                                             "amps per hour", "amp/hour", "amps/hour"};
    constexpr std::array of_a_month = {"kWh/month", "kWh/mo", "Wh/month", "month", "months", "mo"};
    if (std::ranges::find(watts_per_hour, unit) != watts_per_hour.end()) {
        return "a watt is already a rate, so watts per hour is not what a load draws; "
               "power is in W, and power over time is energy in Wh";
    }
    if (std::ranges::find(amperes_per_hour, unit) != amperes_per_hour.end()) {
        return "an ampere is already a rate, so amperes per hour is not what a load draws; "
               "current is in A, and current over time is charge in Ah";
    }
    if (std::ranges::find(of_a_month, unit) != of_a_month.end()) {
        return "months differ in length; count in d or yr";
    }
    return std::nullopt;
}

std::string joined(const std::vector<std::string_view>& spellings) {
    return fmt::format("{}", fmt::join(spellings, " or "));
}

tl::unexpected<Errors> unknown_unit(Dimension wanted, std::string_view text,
                                    std::string_view unit) {
    if (const std::optional<std::string> why = why_meaningless(unit)) {
        return refuse(fmt::format("found '{}': {}", quote(text), *why), give(wanted));
    }
    // The letters C and F alone stand for coulomb and farad.
    if (written_as(wanted) == Dimension::temperature &&
        (unit == "F" || unit == "f" || unit == "c")) {
        return refuse(fmt::format("found '{}'; {} is not a unit of temperature", quote(text), unit),
                      unit == "c" ? "write degC" : "write degF");
    }
    const std::vector<std::string_view> similar = similar_units(wanted, unit);
    std::string found =
        fmt::format("found '{}'; the unit '{}' is not known", quote(text), quote(unit, 20));
    if (similar.empty()) {
        return refuse(std::move(found), give(wanted));
    }
    return refuse(std::move(found), fmt::format("did you mean {}?", joined(similar)));
}

std::string remedy_for_kind(Dimension wanted, const NamedUnit& found) {
    using enum Dimension;
    if (wanted == power && found.dimension == energy) {
        return R"(say over how long, such as metered = {energy = "1.9 kWh", over = "31 h"}, or give power, such as 100 W)";
    }
    if (wanted == energy && found.dimension == power) {
        return "give energy, such as 1.9 kWh; power becomes energy once it lasts for a time";
    }
    if (wanted == charge && found.dimension == current) {
        return "give charge, such as 100 Ah; current becomes charge once it lasts for a time";
    }
    if (wanted == apparent_power && found.dimension == power) {
        return "give apparent power, such as 1000 VA; it is real power divided by the power factor";
    }
    if (wanted == power && found.dimension == apparent_power) {
        return "give real power, such as 100 W; it is apparent power times the power factor";
    }
    if (written_as(wanted) == temperature && found.spelling == "C") {
        return "C is coulomb; write degC";
    }
    if (wanted == duration && found.spelling == "m") {
        return "write min for minutes, or give another duration, such as 20 h";
    }
    return give(wanted);
}

tl::unexpected<Errors> wrong_kind(Dimension wanted, std::string_view text, const NamedUnit& unit) {
    return refuse(fmt::format("found {}, which is {}", quote(text), text_of(unit.dimension).words),
                  remedy_for_kind(wanted, unit));
}

tl::unexpected<Errors> no_unit(Dimension wanted, std::string_view text) {
    const DimensionText& kind = text_of(wanted);
    const bool echo = text.size() <= 12;  // a longer number reads better in full only once
    const std::string example = echo ? fmt::format("{} {}", quote(text), kind.customary.front())
                                     : std::string(kind.example);
    return refuse(fmt::format("{} has no unit", quote(text)),
                  fmt::format("give {}, such as {}", kind.words, example));
}

bool sums(Dimension wanted) {
    return wanted == Dimension::duration || wanted == Dimension::length ||
           wanted == Dimension::mass;
}

Result<double> within_range(Dimension wanted, std::string_view text, double value) {
    if (!std::isfinite(value)) {
        return refuse(fmt::format("{} is too large to be read", quote(text)), give(wanted));
    }
    if (wanted == Dimension::temperature && value < 0.0) {
        return refuse(fmt::format("{} is below absolute zero, -273.15 degC", quote(text)),
                      give(wanted));
    }
    const bool share = written_as(wanted) == Dimension::fraction;
    if (share && (value < 0.0 || value > 1.0)) {
        return refuse(fmt::format("{} is not between 0 and 1, that is 0 % and 100 %", quote(text)),
                      give(wanted));
    }
    return value;
}

struct Part {
    double value = 0.0;
    const NamedUnit* unit = nullptr;
    std::string_view rest;
};

// One number and its unit, from the front of the text.
Result<Part> read_part(Dimension wanted, std::string_view whole, std::string_view text) {
    Result<LeadingNumber> number = read_leading_number(text);
    if (!number) {
        Errors errors = number.error();
        for (Error& error : errors) {
            error.remedy = error.remedy.empty() ? give(wanted) : error.remedy;
        }
        return fail(errors);
    }
    const std::size_t length = unit_length(number->rest);
    const std::string unit = plain_unit(number->rest.substr(0, length));
    std::string_view rest = number->rest.substr(length);
    rest.remove_prefix(std::min(rest.find_first_not_of(' '), rest.size()));
    if (!unit.empty() && is_digit(unit.front()) && !unit.starts_with("1/")) {
        return refuse(fmt::format("'{}' has two numbers in a row", quote(whole)),
                      "write one number without spaces inside, then its unit");
    }
    const NamedUnit* const known = find_unit(wanted, unit);
    const bool plain_number = unit.empty();
    if (plain_number && (known == nullptr || known->dimension != written_as(wanted))) {
        return no_unit(wanted, whole);
    }
    if (known == nullptr) {
        return unknown_unit(wanted, whole, unit);
    }
    if (known->dimension != written_as(wanted)) {
        return wrong_kind(wanted, whole, *known);
    }
    return Part{to_si(*known, number->value, wanted), known, rest};
}

double size_of(const NamedUnit& unit) {
    return unit.numerator / unit.denominator;
}

// Adds the further parts of "2 d 6 h": each in a smaller unit than the one before, none negative.
Result<double> sum_of_parts(Dimension wanted, std::string_view text, Part first) {
    const bool negative = text.starts_with('-');
    double sum = first.value;
    Part last = first;
    while (!last.rest.empty()) {
        if (!sums(wanted)) {
            return refuse(fmt::format("'{}' has more after its unit", quote(text)), give(wanted));
        }
        const Result<Part> next = read_part(wanted, text, last.rest);
        if (!next) {
            return fail(next.error());
        }
        if (negative || last.rest.starts_with('-')) {
            return refuse(fmt::format("'{}' adds up parts of which one is negative", quote(text)),
                          "write it with one unit");
        }
        if (size_of(*next->unit) >= size_of(*last.unit)) {
            return refuse(
                fmt::format("'{}' adds up parts whose units do not get smaller", quote(text)),
                "write each unit once, the largest first, such as 2 d 6 h or 3 ft 6 in");
        }
        sum += next->value;
        last = *next;
    }
    return sum;
}

}  // namespace

Result<double> read_si(Dimension wanted, std::string_view text) {
    constexpr std::size_t longest = 200;  // bytes; no quantity needs as many
    if (text.size() > longest) {
        return refuse(fmt::format("'{}' is too long to be a quantity", quote(text)), give(wanted));
    }
    const std::string plain = in_plain_letters(text);
    if (plain.empty()) {
        return refuse("found nothing", give(wanted));
    }
    const Result<Part> first = read_part(wanted, plain, plain);
    if (!first) {
        return fail(first.error());
    }
    const Result<double> sum = sum_of_parts(wanted, plain, *first);
    if (!sum) {
        return fail(sum.error());
    }
    return within_range(wanted, plain, *sum);
}

}  // namespace units
