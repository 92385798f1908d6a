#include "units/written/unit_errors.hpp"

#include "units/quote.hpp"
#include "units/text.hpp"

namespace units {

namespace {

using words::Said;
using words::said;

// Units that people write and that mean nothing, or nothing definite, and why.
std::optional<Said> why_meaningless(std::string_view unit) {
    constexpr std::array watts_per_hour = {
        "W/h",        "kW/h",           "W/hr",          "kW/hr",       "W/hour", "watt/hour",
        "watts/hour", "watts per hour", "watt per hour", "kW per hour", "w/h",    "kw/h"};
    constexpr std::array amperes_per_hour = {"A/h",           "mA/h",     "A/hr",
                                             "amps per hour", "amp/hour", "amps/hour"};
    constexpr std::array of_a_month = {"kWh/month", "kWh/mo", "Wh/month", "month", "months", "mo"};
    if (std::ranges::find(watts_per_hour, unit) != watts_per_hour.end()) {
        return said<
            "a watt is already a rate, so watts per hour is not what a load draws; "
            "power is in W, and power over time is energy in Wh">();
    }
    if (std::ranges::find(amperes_per_hour, unit) != amperes_per_hour.end()) {
        return said<
            "an ampere is already a rate, so amperes per hour is not what a load draws; "
            "current is in A, and current over time is charge in Ah">();
    }
    if (unit == "Wh/h" || unit == "kWh/h") {
        return said<"energy over an hour, for an hour, is power; write W or kW">();
    }
    if (std::ranges::find(of_a_month, unit) != of_a_month.end()) {
        return said<"months differ in length; count in d or yr">();
    }
    return std::nullopt;
}

Said joined(const std::vector<std::string_view>& spellings) {
    return words::joined({spellings.begin(), spellings.end()}, words::List::Joint::or_each);
}

Said remedy_for_kind(Dimension wanted, const NamedUnit& found) {
    using enum Dimension;
    if (wanted == power && found.dimension == energy) {
        return said<"say over how long, such as {example}, or give power, such as {power}">(
            R"(metered = {energy = "1.9 kWh", over = "31 h"})", "100 W");
    }
    if (wanted == energy && found.dimension == power) {
        return said<
            "give energy, such as 1.9 kWh; power becomes energy once it lasts for a time">();
    }
    if (wanted == charge && found.dimension == current) {
        return said<
            "give charge, such as 100 Ah; current becomes charge once it lasts for a time">();
    }
    if (wanted == apparent_power && found.dimension == power) {
        return said<
            "give apparent power, such as 1000 VA; it is real power divided by the power factor">();
    }
    if (wanted == power && found.dimension == apparent_power) {
        return said<
            "give real power, such as 100 W; it is apparent power times the power factor">();
    }
    if (written_as(wanted) == temperature && found.spelling == "C") {
        return said<"C is coulomb; write degC">();
    }
    if (wanted == duration && found.spelling == "m") {
        return said<"write min for minutes, or give another duration, such as 20 h">();
    }
    return what_to_give(wanted);
}

}  // namespace

tl::unexpected<Errors> refuse(Said found, Said remedy) {
    return fail({.where = "", .found = std::move(found), .remedy = std::move(remedy)});
}

tl::unexpected<Errors> unknown_unit(Dimension wanted, std::string_view text,
                                    std::string_view unit) {
    if (const std::optional<Said> why = why_meaningless(unit)) {
        return refuse(said<"found '{text}': {why}">(quote(text), *why), what_to_give(wanted));
    }
    // The letters C and F alone stand for coulomb and farad.
    if (written_as(wanted) == Dimension::temperature &&
        (unit == "F" || unit == "f" || unit == "c")) {
        return refuse(
            said<"found '{text}'; {unit} is not a unit of temperature">(quote(text), unit),
            said<"write {unit}">(unit == "c" ? "degC" : "degF"));
    }
    const std::vector<std::string_view> similar = similar_units(wanted, unit);
    Said found =
        said<"found '{text}'; the unit '{unit}' is not known">(quote(text), quote(unit, 20));
    if (similar.empty()) {
        return refuse(std::move(found), what_to_give(wanted));
    }
    return refuse(std::move(found), said<"did you mean {similar}?">(joined(similar)));
}

tl::unexpected<Errors> wrong_kind(Dimension wanted, std::string_view text, const NamedUnit& unit) {
    return refuse(
        said<"found {text}, which is {dimension}">(quote(text), kind_in_words(unit.dimension)),
        remedy_for_kind(wanted, unit));
}

tl::unexpected<Errors> no_unit(Dimension wanted, std::string_view text) {
    const DimensionText& kind = text_of(wanted);
    const bool echo = text.size() <= 12;  // a longer number reads better in full only once
    const std::string example = echo ? fmt::format("{} {}", quote(text), kind.customary.front())
                                     : std::string(kind.example);
    return refuse(said<"{text} has no unit">(quote(text)),
                  said<"give {kind}, such as {example}">(kind_in_words(wanted), example));
}

}  // namespace units
