#include "units/written/plain_number.hpp"

#include <algorithm>
#include <cmath>

#include "units/number.hpp"

namespace units {

std::string plain_number(double number, int significant) {
    const double rounded = rounded_to(number, significant);
    if (rounded == 0.0) return "0";
    constexpr int most_decimals = 12;
    const int exponent = static_cast<int>(std::floor(std::log10(std::abs(rounded))));
    const int decimals = std::clamp(significant - 1 - exponent, 0, most_decimals);
    std::string text = fmt::format("{:.{}f}", rounded, decimals);
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

}  // namespace units
