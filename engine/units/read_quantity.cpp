#include "units/number.hpp"
#include "units/quote.hpp"
#include "units/text.hpp"
#include "units/written/plain_letters.hpp"
#include "units/written/unit_errors.hpp"
#include "units/written/unit_spelling.hpp"

namespace units {

namespace {

using words::Said;
using words::said;

bool sums(Dimension wanted) {
    return wanted == Dimension::duration || wanted == Dimension::length ||
           wanted == Dimension::mass;
}

Result<double> within_range(Dimension wanted, std::string_view text, double value) {
    if (!std::isfinite(value)) {
        return refuse(said<"{text} is too large to be read">(quote(text)), what_to_give(wanted));
    }
    if (wanted == Dimension::temperature && value < 0.0) {
        return refuse(said<"{text} is below absolute zero, -273.15 degC">(quote(text)),
                      what_to_give(wanted));
    }
    const bool share = written_as(wanted) == Dimension::fraction;
    if (share && (value < 0.0 || value > 1.0)) {
        const bool may_be_percent = value > 1.0 && value <= 100.0 && !text.ends_with('%');
        return refuse(
            said<"{text} is not between 0 and 1, that is 0 % and 100 %">(quote(text)),
            may_be_percent ? said<"did you mean {text} %?">(quote(text)) : what_to_give(wanted));
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
            if (error.remedy.empty()) error.remedy = what_to_give(wanted);
        }
        return fail(errors);
    }
    const std::size_t dash = number->rest.find_first_not_of("- ");
    const bool digit_next =
        dash != std::string_view::npos && number->rest[dash] >= '0' && number->rest[dash] <= '9';
    if (digit_next && !number->rest.starts_with("1/")) {
        return refuse(said<"'{whole}' has two numbers in a row">(quote(whole)),
                      said<"write one number without spaces inside, then its unit">());
    }
    const std::size_t length = unit_length(number->rest);
    const std::string unit = plain_unit(number->rest.substr(0, length));
    const std::string_view rest = trimmed(number->rest.substr(length));
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
            return refuse(said<"'{text}' has more after its unit">(quote(text)),
                          what_to_give(wanted));
        }
        const Result<Part> next = read_part(wanted, text, last.rest);
        if (!next) {
            return fail(next.error());
        }
        if (negative || last.rest.starts_with('-')) {
            return refuse(said<"'{text}' adds up parts of which one is negative">(quote(text)),
                          said<"write it with one unit">());
        }
        if (size_of(*next->unit) >= size_of(*last.unit)) {
            return refuse(
                said<"'{text}' adds up parts whose units do not get smaller">(quote(text)),
                said<"write each unit once, the largest first, such as 2 d 6 h or 3 ft 6 in">());
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
        return refuse(said<"'{text}' is too long to be a quantity">(quote(text)),
                      what_to_give(wanted));
    }
    const std::string plain = in_plain_letters(text);
    if (plain.empty()) {
        return refuse(said<"found nothing">(), what_to_give(wanted));
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

words::Said what_to_give(Dimension wanted) {
    return said<"give {kind}, such as {example}">(kind_in_words(wanted), text_of(wanted).example);
}

}  // namespace units
