#include "models/words/shown_amount.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace touch {

namespace {

// A unit as UCUM writes it, in SI, and the name it keeps where it is not to become a larger one.
struct OfTables {
    std::string_view ucum;
    units::Dimension dimension;
    double si = 1.0;
    std::string_view kept = {};
};

constexpr OfTables of_tables[] = {
    {"W.h", units::Dimension::energy, 3600.0}, {"W", units::Dimension::power},
    {"V.A", units::Dimension::apparent_power}, {"A.h", units::Dimension::charge, 3600.0},
    {"A", units::Dimension::current},          {"V", units::Dimension::voltage},
    {"Ohm", units::Dimension::resistance},     {"kg", units::Dimension::mass},
    {"h", units::Dimension::duration, 3600.0}, {"s", units::Dimension::duration, 1.0, "s"},
    {"%", units::Dimension::fraction, 0.01}};

std::optional<words::Amount> amount_of(double value, std::string_view unit, int significant) {
    const auto* const found = std::ranges::find(of_tables, unit, &OfTables::ucum);
    if (found == std::end(of_tables)) return std::nullopt;
    return words::Amount{.dimension = found->dimension,
                         .si = value * found->si,
                         .digits = significant,
                         .unit = found->kept};
}

}  // namespace

QString shown_amount(double value, std::string_view unit, int significant) {
    if (!std::isfinite(value)) return {};
    if (const auto amount = amount_of(value, unit, significant)) return told(*amount);
    const QString number = told(words::Number{.value = value, .digits = significant});
    if (unit.empty() || unit == "1") return number;
    return QStringLiteral("%1 %2").arg(number, words_of(unit).remove(QLatin1Char('.')));
}

QString shown_number(double value) {
    constexpr int significant = 4;
    return std::isfinite(value) ? told(words::Number{.value = value, .digits = significant})
                                : QString();
}

Scale scale_above(double most) {
    if (!(most > 0.0)) return {};
    const double size = std::pow(10.0, std::floor(std::log10(most / 3.0)));
    double step = 10.0 * size;
    for (const double digit : {1.0, 2.0, 5.0}) {
        if (most / (digit * size) <= 4.0) {
            step = digit * size;
            break;
        }
    }
    return {.step = step, .top = step * std::ceil(most / step * 1.001)};
}

}  // namespace touch
