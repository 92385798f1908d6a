#include "units/unit_errors.hpp"

#include "units/quote.hpp"
#include "units/text.hpp"

namespace units {

namespace {

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
    if (unit == "Wh/h" || unit == "kWh/h") {
        return "energy over an hour, for an hour, is power; write W or kW";
    }
    if (std::ranges::find(of_a_month, unit) != of_a_month.end()) {
        return "months differ in length; count in d or yr";
    }
    return std::nullopt;
}

std::string joined(const std::vector<std::string_view>& spellings) {
    return fmt::format("{}", fmt::join(spellings, " or "));
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
    return what_to_give(wanted);
}

}  // namespace

tl::unexpected<Errors> refuse(std::string found, std::string remedy) {
    return fail({.where = "", .found = std::move(found), .remedy = std::move(remedy)});
}

tl::unexpected<Errors> unknown_unit(Dimension wanted, std::string_view text,
                                    std::string_view unit) {
    if (const std::optional<std::string> why = why_meaningless(unit)) {
        return refuse(fmt::format("found '{}': {}", quote(text), *why), what_to_give(wanted));
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
        return refuse(std::move(found), what_to_give(wanted));
    }
    return refuse(std::move(found), fmt::format("did you mean {}?", joined(similar)));
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

}  // namespace units
