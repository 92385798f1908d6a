#include "models/shown_amount.hpp"

#include <cmath>

#include <fmt/format.h>

namespace touch {

QString shown_amount(double value, std::string_view unit) {
    if (unit == "W.h") return shown(value * units::watt_hour);
    if (unit == "W") return shown(value * units::watt);
    if (unit == "A") return shown(value * units::ampere);
    if (unit == "V") return shown(value * units::volt);
    if (unit == "h") return shown(value * units::hour);
    if (unit == "s") return QStringLiteral("%1 s").arg(told_amount(fmt::format("{:.3g}", value)));
    if (unit == "%") return QStringLiteral("%1 %").arg(told_amount(fmt::format("{:.3g}", value)));
    const QString number = told_amount(fmt::format("{:.3g}", value));
    if (unit.empty() || unit == "1") return number;
    return QStringLiteral("%1 %2").arg(number, words_of(unit).remove(QLatin1Char('.')));
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
