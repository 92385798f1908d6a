#include "units/number.hpp"

#include <charconv>

#include "units/quote.hpp"

namespace units {

namespace {

using words::said;

bool is_digit(char letter) {
    return letter >= '0' && letter <= '9';
}

std::size_t digits_at(std::string_view text, std::size_t at) {
    std::size_t count = 0;
    while (at + count < text.size() && is_digit(text[at + count])) {
        ++count;
    }
    return count;
}

// Digits with their separators, then an exponent if one follows.
struct Written {
    std::string_view mantissa;
    std::string_view exponent;
};

Written written_number(std::string_view text) {
    constexpr std::string_view separators = ".,'_";
    std::size_t end = 0;
    while (end < text.size()) {
        const bool separator = separators.find(text[end]) != std::string_view::npos;
        const bool digit_follows = digits_at(text, end + 1) > 0;
        if (!is_digit(text[end]) &&
            !(separator && (digit_follows || (text[end] == '.' && end > 0)))) {
            break;
        }
        ++end;
    }
    std::size_t exponent_end = end;
    if (end > 0 && end < text.size() && (text[end] == 'e' || text[end] == 'E')) {
        const bool sign = end + 1 < text.size() && (text[end + 1] == '+' || text[end + 1] == '-');
        const std::size_t digits = digits_at(text, end + (sign ? 2 : 1));
        exponent_end = digits > 0 ? end + (sign ? 2 : 1) + digits : end;
    }
    return {text.substr(0, end), text.substr(end, exponent_end - end)};
}

std::string without(std::string_view text, std::string_view letters) {
    std::string left;
    for (const char letter : text) {
        if (letters.find(letter) == std::string_view::npos) {
            left += letter;
        }
    }
    return left;
}

// The likeliest meaning of a number with separators between thousands.
std::string without_separators(std::string_view mantissa) {
    const std::size_t last = mantissa.find_last_of(".,");
    const bool decimal = last != std::string_view::npos && mantissa.find_first_of(".,") != last &&
                         mantissa.find(mantissa[last]) == last;
    if (!decimal) {
        return without(mantissa, ".,'_");
    }
    return without(mantissa.substr(0, last), ".,'_") + "." + std::string(mantissa.substr(last + 1));
}

// The mantissa with a decimal point, unless its separators leave doubt.
Result<std::string> plain_mantissa(std::string_view mantissa) {
    const auto points = std::ranges::count(mantissa, '.');
    const auto commas = std::ranges::count(mantissa, ',');
    const bool others = mantissa.find_first_of("'_") != std::string_view::npos;
    if (others || points + commas > 1) {
        return fail(
            {.where = "",
             .found = said<"{mantissa} has separators between its digits">(quote(mantissa)),
             .remedy = said<
                 "write it with at most one decimal point and nothing else, such as {mantissa}">(
                 quote(without_separators(mantissa)))});
    }
    if (commas == 0) {
        return std::string(mantissa);
    }
    const std::size_t comma = mantissa.find(',');
    const std::string_view before = mantissa.substr(0, comma);
    const std::string_view after = mantissa.substr(comma + 1);
    const bool may_be_thousands =
        after.size() == 3 && !before.empty() && before.size() <= 3 && before.front() != '0';
    if (may_be_thousands) {
        return fail(
            {.where = "",
             .found = said<"{mantissa} reads two ways: {before}{after} or {before}.{after}">(
                 mantissa, before, after),
             .remedy = said<"write {before}{after} or {before}.{after}">(before, after)});
    }
    return std::string(before) + "." + std::string(after);
}

std::string_view without_leading_spaces(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
    return text;
}

// Whole number over whole number: the length of "7/16" at the start, or none.
struct Ratio {
    double value = 0.0;
    std::size_t length = 0;
};

Result<Ratio> ratio_at_start(std::string_view text) {
    const std::size_t above = digits_at(text, 0);
    if (above == 0 || above >= text.size() || text[above] != '/') {
        return Ratio{};
    }
    const std::size_t below = digits_at(text, above + 1);
    if (below == 0) {
        return Ratio{};
    }
    double numerator = 0.0;
    double denominator = 0.0;
    const char* const slash = text.data() + above;
    const bool too_large =
        std::from_chars(text.data(), slash, numerator).ec != std::errc() ||
        std::from_chars(slash + 1, slash + 1 + below, denominator).ec != std::errc();
    const std::string_view ratio = text.substr(0, above + 1 + below);
    if (too_large) {
        return fail({.where = "",
                     .found = said<"{ratio} is too large to be read">(quote(ratio)),
                     .remedy = ""});
    }
    if (denominator == 0.0) {
        return fail(
            {.where = "", .found = said<"{ratio} divides by zero">(quote(ratio)), .remedy = ""});
    }
    return Ratio{numerator / denominator, ratio.size()};
}

// The value of a number that has been found to begin the text.
Result<double> value_of(const Written& written) {
    const Result<std::string> mantissa = plain_mantissa(written.mantissa);
    if (!mantissa) {
        return fail(mantissa.error());
    }
    const std::string number = *mantissa + std::string(written.exponent);
    double value = 0.0;
    const std::from_chars_result parsed =
        std::from_chars(number.data(), number.data() + number.size(), value);
    if (parsed.ec != std::errc() || parsed.ptr != number.data() + number.size()) {
        return fail(
            {.where = "",
             .found = said<"{number} is too large or too small a number to be read">(quote(number)),
             .remedy = ""});
    }
    return value;
}

// -1 or 1; what says so is taken off the text.
double take_sign(std::string_view& text) {
    if (text.empty() || (text.front() != '-' && text.front() != '+')) {
        return 1.0;
    }
    const double sign = text.front() == '-' ? -1.0 : 1.0;
    text.remove_prefix(1);
    return sign;
}

}  // namespace

Result<LeadingNumber> read_leading_number(std::string_view text) {
    const std::string_view whole = text;
    const double sign = take_sign(text);
    const Result<Ratio> ratio = ratio_at_start(text);
    if (!ratio) {
        return fail(ratio.error());
    }
    if (ratio->length > 0) {
        return LeadingNumber{sign * ratio->value,
                             without_leading_spaces(text.substr(ratio->length))};
    }
    const Written written = written_number(text);
    if (written.mantissa.find_first_of("0123456789") == std::string_view::npos) {
        return fail({.where = "",
                     .found = said<"'{whole}' does not begin with a number">(quote(whole)),
                     .remedy = ""});
    }
    const Result<double> value = value_of(written);
    if (!value) {
        return fail(value.error());
    }
    const std::string_view rest =
        without_leading_spaces(text.substr(written.mantissa.size() + written.exponent.size()));
    // as in "1 1/2"
    const bool whole_number =
        digits_at(text, 0) == written.mantissa.size() && written.exponent.empty();
    const Result<Ratio> more = whole_number ? ratio_at_start(rest) : Result<Ratio>(Ratio{});
    if (!more) {
        return fail(more.error());
    }
    return LeadingNumber{sign * (*value + more->value),
                         without_leading_spaces(rest.substr(more->length))};
}

double rounded_to(double number, int digits) {
    std::array<char, 40> text{};
    const auto written = std::to_chars(text.data(), text.data() + text.size(), number,
                                       std::chars_format::scientific, digits - 1);
    double value = number;
    std::from_chars(text.data(), written.ptr, value);
    return value;
}

}  // namespace units
