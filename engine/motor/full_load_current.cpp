#include "motor/full_load_current.hpp"

#include <array>

#include "motor/code_letter.hpp"

namespace motor {

namespace {

struct Row {
    double horsepower;
    std::array<double, 4> amperes;  // at 115, 200, 208 and 230 V
};

// [NEC] Table 430.248
constexpr std::array<Row, 12> rows{{
    {1.0 / 6.0, {4.4, 2.5, 2.4, 2.2}},
    {0.25, {5.8, 3.3, 3.2, 2.9}},
    {1.0 / 3.0, {7.2, 4.1, 4.0, 3.6}},
    {0.5, {9.8, 5.6, 5.4, 4.9}},
    {0.75, {13.8, 7.9, 7.6, 6.9}},
    {1.0, {16.0, 9.2, 8.8, 8.0}},
    {1.5, {20.0, 11.5, 11.0, 10.0}},
    {2.0, {24.0, 13.8, 13.2, 12.0}},
    {3.0, {34.0, 19.6, 18.7, 17.0}},
    {5.0, {56.0, 32.2, 30.8, 28.0}},
    {7.5, {80.0, 46.0, 44.0, 40.0}},
    {10.0, {100.0, 57.5, 55.0, 50.0}},
}};

constexpr double reading_slack = 1e-3;  // 0.167 hp is 1/6 hp

std::optional<std::size_t> column_of(units::Voltage rated) {
    const double volts = rated / units::volt;
    if (volts >= 110.0 && volts <= 120.0) {
        return 0;
    }
    if (volts == 200.0) {
        return 1;
    }
    if (volts == 208.0) {
        return 2;
    }
    if (volts >= 220.0 && volts <= 240.0) {
        return 3;
    }
    return std::nullopt;
}

}  // namespace

std::optional<units::Current> full_load_current(units::Power rated_output, units::Voltage rated) {
    const auto column = column_of(rated);
    const double wanted = rated_output / horsepower;
    if (!column || wanted < rows.front().horsepower * (1.0 - reading_slack) ||
        wanted > rows.back().horsepower * (1.0 + reading_slack)) {
        return std::nullopt;
    }
    std::size_t upper = 1;
    while (upper + 1 < rows.size() && rows[upper].horsepower < wanted) {
        ++upper;
    }
    const Row& above = rows[upper];
    const Row& below = rows[upper - 1];
    const double along = (wanted - below.horsepower) / (above.horsepower - below.horsepower);
    const double amperes =
        below.amperes[*column] + along * (above.amperes[*column] - below.amperes[*column]);
    return amperes * units::ampere;
}

units::Range<Multiple> locked_to_full_load() {
    return units::spanning(Multiple(3.0), Multiple(4.6), Multiple(6.0));
}

}  // namespace motor
