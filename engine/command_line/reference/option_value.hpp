// Options that hold a quantity with its unit, such as --at-most "20 A".
#pragma once

#include <optional>
#include <string>

#include "units/clock.hpp"
#include "units/text.hpp"

namespace command_line {

// Nothing where the option was not given; errors name it.
template <class Quantity>
[[nodiscard]] std::optional<Quantity> option_value(const std::optional<std::string>& text,
                                                   std::string_view option, units::Errors& errors) {
    if (!text) {
        return std::nullopt;
    }
    auto value = units::read<Quantity>(*text);
    if (value) {
        return *value;
    }
    for (auto& error : value.error()) {
        error.where = std::string(option);
        errors.push_back(std::move(error));
    }
    return std::nullopt;
}

}  // namespace command_line
