#include <algorithm>
#include <cctype>

#include "scenario/log.hpp"
#include "units/text.hpp"

namespace scenario {

namespace {

constexpr int most_decimals = 6;

}  // namespace

int decimals_of(std::string_view text) {
    const std::size_t point = text.find_first_of(".,");
    int decimals = 0;
    if (point != std::string_view::npos) {
        for (std::size_t i = point + 1; i < text.size() && text[i] >= '0' && text[i] <= '9'; ++i) {
            ++decimals;
        }
    }
    decimals += text.find("mV") != std::string_view::npos ? 3 : 0;
    return std::min(decimals, most_decimals);
}

units::Result<VoltageShown> read_voltage_shown(std::string_view text) {
    const auto volts = units::read<units::Voltage>(text);
    if (!volts) return units::fail(volts.error());
    return VoltageShown{.volts = *volts, .decimals = decimals_of(text)};
}

}  // namespace scenario
