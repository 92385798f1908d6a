#include <cassert>

#include "units/number.hpp"
#include "units/text.hpp"
#include "units/written/unit_table.hpp"

namespace units {

namespace {

// The number with the fewest digits that means exactly this value in the unit.
std::optional<std::string> exact_number(const NamedUnit& unit, double value, Dimension dimension) {
    const double number = number_of(unit, value, dimension);
    if (!std::isfinite(number)) {
        return std::nullopt;
    }
    constexpr int enough_digits = 17;  // identify every double
    for (int digits = 1; digits <= enough_digits; ++digits) {
        const double candidate = rounded_to(number, digits);
        if (to_si(unit, candidate, dimension) == value) {
            return fmt::format("{}", candidate);
        }
    }
    constexpr double infinity = std::numeric_limits<double>::infinity();
    for (const double towards : {-infinity, infinity}) {
        const double neighbour = std::nextafter(number, towards);
        if (to_si(unit, neighbour, dimension) == value) {
            return fmt::format("{}", neighbour);
        }
    }
    return std::nullopt;
}

std::string with_unit(const std::string& number, std::string_view unit) {
    return unit.empty() ? number : fmt::format("{} {}", number, unit);
}

}  // namespace

std::string print_si(Dimension dimension, double value) {
    assert(std::isfinite(value));
    value += 0.0;  // turns -0 into 0
    std::optional<std::string> shortest;
    std::string_view its_unit;
    const auto& customary = text_of(dimension).customary;
    for (const std::string_view spelling : customary) {
        // Behind the first these are places left empty, even where a bare number can be read.
        const bool left_empty = spelling.empty() && !customary.front().empty();
        const NamedUnit* const unit = find_unit(dimension, spelling);
        if (left_empty || unit == nullptr || unit->dimension != written_as(dimension)) continue;
        const std::optional<std::string> number = exact_number(*unit, value, dimension);
        if (number && (!shortest || number->size() < shortest->size())) {
            shortest = number;
            its_unit = spelling;
        }
    }
    return shortest ? with_unit(*shortest, its_unit)
                    : with_unit(fmt::format("{}", value), text_of(dimension).si);
}

std::string print_si_in(Dimension dimension, double value, std::string_view spelling) {
    assert(std::isfinite(value));
    value += 0.0;
    const NamedUnit* const unit = find_unit(dimension, spelling);
    assert(unit != nullptr && unit->dimension == written_as(dimension));
    const std::optional<std::string> number = exact_number(*unit, value, dimension);
    return number ? with_unit(*number, spelling)
                  : with_unit(fmt::format("{}", value), text_of(dimension).si);
}

Printed customary_si(Dimension dimension, double value) {
    assert(std::isfinite(value));
    const DimensionText& text = text_of(dimension);
    // Looked up once: a report prints tens of thousands of values.
    static const auto units = [] {
        std::array<const NamedUnit*, static_cast<std::size_t>(Dimension::price) + 1> found{};
        for (std::size_t i = 0; i < found.size(); ++i) {
            const auto each = static_cast<Dimension>(i);
            found[i] = find_unit(each, text_of(each).ucum_spelling);
        }
        return found;
    }();
    const NamedUnit* const unit = units[static_cast<std::size_t>(dimension)];
    assert(unit != nullptr);
    return {number_of(*unit, value, dimension) + 0.0, text.ucum};
}

}  // namespace units
