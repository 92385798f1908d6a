#include "battery/cell/temperature.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>
#include <utility>

namespace battery {

using namespace units;
using scenario::Chemistry;
using words::said;

namespace {

struct Row {
    double celsius;
    double value;
};

// [IEEE 485] table 1, vented lead-acid, base 25 degC (from memory)
constexpr Row vented_multiplier[] = {
    {-3.9, 1.520}, {-1.1, 1.430}, {1.7, 1.350},  {4.4, 1.300},  {7.2, 1.250},  {10.0, 1.190},
    {12.8, 1.150}, {15.6, 1.110}, {18.3, 1.080}, {18.9, 1.072}, {19.4, 1.064}, {20.0, 1.056},
    {20.6, 1.048}, {21.1, 1.040}, {21.7, 1.034}, {22.2, 1.029}, {22.8, 1.023}, {23.4, 1.017},
    {23.9, 1.011}, {24.5, 1.006}, {25.0, 1.000}, {25.6, 0.994}, {26.1, 0.987}, {26.7, 0.980},
    {27.2, 0.976}, {29.4, 0.960}, {32.2, 0.940}, {35.0, 0.930}, {37.8, 0.910}, {40.6, 0.890},
    {43.3, 0.880}, {46.1, 0.870}, {48.9, 0.860}, {51.7, 0.850}};

// -10 and 10 degC [VRLA 40 sheet]; 0, 5, 15, 20 degC [AGM temperature table] for discharges over an hour, of
// which the row at 0 degC is 2 points below that of [AGM 100 Ah sheet].
constexpr Row agm_capacity[] = {{-10.0, 0.74}, {0.0, 0.84},  {5.0, 0.88}, {10.0, 0.90},
                                {15.0, 0.94},  {20.0, 0.99}, {25.0, 1.0}, {40.0, 1.0}};

// 0.6 % a kelvin, [Lead-acid support page] for the 10 to 20 h rate
constexpr Row gel_capacity[] = {{-10.0, 0.79}, {25.0, 1.0}, {40.0, 1.0}};

// Likewise for discharges of half an hour to one, and of less: [AGM temperature table]; -10 degC goes on by the
// same steps, ours.
constexpr Row agm_in_an_hour[] = {{-10.0, 0.72}, {0.0, 0.82},  {5.0, 0.87}, {10.0, 0.89},
                                  {15.0, 0.93},  {20.0, 0.98}, {25.0, 1.0}, {40.0, 1.0}};
constexpr Row agm_in_half_an_hour[] = {{-10.0, 0.69}, {0.0, 0.80},  {5.0, 0.85}, {10.0, 0.88},
                                       {15.0, 0.92},  {20.0, 0.97}, {25.0, 1.0}, {40.0, 1.0}};

// At 0.33 C, ours: between the least that is guaranteed in [LiFePO4 series manuals] (0.80 at 0 degC, 0.70
// at -20 degC) and what cells of 10 and 20 Ah gave (0.80, 0.66, 0.44 at 0, -10, -20 degC; 0.55 at
// -20).
constexpr Row lifepo4_capacity[] = {{-20.0, 0.55}, {-10.0, 0.70}, {0.0, 0.80},
                                    {10.0, 0.90},  {25.0, 1.0},   {55.0, 0.95}};

// [Copetti 1993]: 0.7 % a kelvin (from memory); no credit above 25 degC
constexpr Row lead_resistance[] = {{-20.0, 1.315}, {25.0, 1.0}, {50.0, 1.0}};

// LiFePO4: by an activation energy of 20 kJ/mol, from memory; twice to six times at 0 degC was
// read. method.md (52)
constexpr double activation_in_kelvin = 20'000.0 / 8.314462618;  // over the gas constant, exact
constexpr double coldest_lithium = -20.0;                        // degC

struct Read {
    double value;
    bool within;
};

Read line_through(std::span<const Row> rows, double degrees) {
    const auto high =
        std::upper_bound(rows.begin() + 1, rows.end() - 1, degrees,
                         [](double value, const Row& row) { return value < row.celsius; });
    const auto low = high - 1;
    const double slope = (high->value - low->value) / (high->celsius - low->celsius);
    return {low->value + slope * (degrees - low->celsius),
            degrees >= rows.front().celsius && degrees <= rows.back().celsius};
}

constexpr double least_capacity = 0.05;  // so that a factor from far outside stays above zero

TemperatureFactor capacity_from(std::span<const Row> rows, double degrees, words::Said source) {
    const Read read = line_through(rows, degrees);
    return {std::clamp(read.value, least_capacity, 1.0), read.within, std::move(source)};
}

struct Grade {
    double below_celsius;
    double rate_per_hour;
};

// [LiFePO4 48 V manual], continuous; the last row has no upper end
constexpr Grade charge_grades[] = {{0.0, 0.0},  {5.0, 0.1},   {10.0, 0.2},
                                   {25.0, 1.0}, {50.0, 0.75}, {60.0, 0.1}};
constexpr Grade discharge_grades[] = {{-40.0, 0.0}, {-20.0, 0.1}, {0.0, 0.5}, {60.0, 1.0}};

std::optional<Frequency> grade(std::span<const Grade> grades, Chemistry chemistry,
                               Temperature temperature) {
    if (chemistry != Chemistry::lifepo4) return std::nullopt;
    for (const Grade& each : grades)
        if (temperature < celsius(each.below_celsius)) return each.rate_per_hour * per_hour;
    // the upper end itself still belongs to its grade
    const Grade& last = grades.back();
    return temperature <= celsius(last.below_celsius) ? last.rate_per_hour * per_hour : Frequency{};
}

}  // namespace

TemperatureFactor vented_sizing_multiplier(Temperature temperature) {
    const Read read = line_through(vented_multiplier, in_celsius(temperature));
    return {std::max(0.85, read.value), read.within, said<"[IEEE 485] table 1 (from memory)">()};
}

TemperatureFactor capacity_factor(Chemistry chemistry, Temperature temperature) {
    const double degrees = in_celsius(temperature);
    switch (chemistry) {
        case Chemistry::flooded: {
            const TemperatureFactor multiplier = vented_sizing_multiplier(temperature);
            return {std::clamp(1.0 / multiplier.factor, least_capacity, 1.0),
                    multiplier.within_table, multiplier.source};
        }
        case Chemistry::agm:
            return capacity_from(agm_capacity, degrees, "[VRLA 40 sheet], [AGM temperature table]");
        case Chemistry::gel:
            return capacity_from(gel_capacity, degrees,
                                 said<"{source} 0.6 % a kelvin">("[Lead-acid support page]"));
        case Chemistry::lifepo4:
            break;
    }
    return capacity_from(lifepo4_capacity, degrees, "[LiFePO4 series manuals]");
}

FastCapacity agm_fast_capacity(Temperature temperature) {
    const double degrees = in_celsius(temperature);
    const auto of = [&](std::span<const Row> rows) {
        return std::clamp(line_through(rows, degrees).value, least_capacity, 1.0);
    };
    return {.in_an_hour = of(agm_in_an_hour), .in_half_an_hour = of(agm_in_half_an_hour)};
}

TemperatureFactor resistance_factor(Chemistry chemistry, Temperature temperature) {
    if (chemistry == Chemistry::lifepo4) {
        const double kelvins = temperature.above_absolute_zero() / kelvin;
        return {std::max(1.0, std::exp(activation_in_kelvin * (1.0 / kelvins - 1.0 / 298.15))),
                in_celsius(temperature) >= coldest_lithium,
                said<"activation energy of 20 kJ/mol, from memory, weak">()};
    }
    const Read read = line_through(lead_resistance, in_celsius(temperature));
    return {std::max(1.0, read.value), read.within,
            said<"{source} (from memory)">("[Copetti 1993]")};
}

std::optional<Frequency> graded_charge_rate(Chemistry chemistry, Temperature temperature) {
    return grade(charge_grades, chemistry, temperature);
}

std::optional<Frequency> graded_discharge_rate(Chemistry chemistry, Temperature temperature) {
    return grade(discharge_grades, chemistry, temperature);
}

}  // namespace battery
