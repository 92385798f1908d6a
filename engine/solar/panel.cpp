#include "solar/panel.hpp"

#include "units/said.hpp"

namespace solar {

namespace {

using namespace units;
using words::Said;
using words::said;

constexpr Irradiance test_light = 1000.0 * watt_per_square_metre;  // [IEC 61215]
constexpr Temperature test_cells = celsius(25.0);

// Of the generic panel, common practice, no source: a 36-cell panel of 100 W.
constexpr PanelModel generic{};

// The two constants of the explicit current-voltage curve. [Rauschenbach 1980]
struct CurveConstants {
    double c1;
    double c2;
};

CurveConstants curve_constants(const PanelModel& panel) {
    // Labels are rounded and mistyped: the ratios are kept where the curve is a curve. ours
    const double current_ratio =
        std::clamp(double(panel.peak_power_current / panel.short_circuit_current), 0.50, 0.98);
    const double voltage_ratio =
        std::clamp(double(panel.peak_power_voltage / panel.open_circuit_voltage), 0.50, 0.95);
    const double c2 = (voltage_ratio - 1.0) / std::log(1.0 - current_ratio);
    return {.c1 = (1.0 - current_ratio) * std::exp(-voltage_ratio / c2), .c2 = c2};
}

template <class Value>
Value given_or(const std::optional<Value>& given, Value otherwise, const std::string& where,
               const Said& text, scenario::Assumptions& assumptions) {
    if (given) return *given;
    assumptions.push_back(
        {where, text, said<"common practice, no source; solar/method.md (29) to (32)">()});
    return otherwise;
}

}  // namespace

PanelModel panel_model(const scenario::Panel& panel, const std::string& where,
                       scenario::Assumptions& assumptions) {
    PanelModel model;
    model.rated_power = panel.power;
    const double size = panel.power / generic.rated_power;
    const auto take = [&](const auto& given, auto otherwise, const char* key, const Said& text) {
        return given_or(given, otherwise, where + "." + key, text, assumptions);
    };
    model.open_circuit_voltage = take(
        panel.open_circuit_voltage, generic.open_circuit_voltage, "open_circuit_voltage",
        said<"{voltage}, a panel of 36 cells for a 12 V battery">(generic.open_circuit_voltage));
    model.peak_power_voltage = take(
        panel.peak_power_voltage, model.open_circuit_voltage * (18.0 / 21.6), "peak_power_voltage",
        said<"{voltage}, 5/6 of the open-circuit voltage">(
            amount_in(model.open_circuit_voltage * (18.0 / 21.6), "V", 1)));
    model.peak_power_current =
        panel.peak_power_voltage || panel.open_circuit_voltage
            ? take(panel.peak_power_current, panel.power / model.peak_power_voltage,
                   "peak_power_current", said<"the rated power over the peak-power voltage">())
            : take(panel.peak_power_current, size * generic.peak_power_current,
                   "peak_power_current",
                   said<"{current}">(amount_in(size * generic.peak_power_current, "A", 2)));
    const double current_ratio = generic.short_circuit_current / generic.peak_power_current;
    model.short_circuit_current =
        take(panel.short_circuit_current, model.peak_power_current * current_ratio,
             "short_circuit_current",
             said<"{current}, 1.08 of the peak-power current">(
                 amount_in(model.peak_power_current * current_ratio, "A", 2)));
    model.nominal_cell_temperature =
        take(panel.nominal_cell_temperature, generic.nominal_cell_temperature,
             "nominal_cell_temperature", said<"{temperature}">(generic.nominal_cell_temperature));
    const Share lost = take(panel.power_lost_per_kelvin, Share(0.0040), "power_lost_per_kelvin",
                            said<"0.40 % a kelvin; crystalline silicon runs from 0.30 % to 0.50 "
                                 "%">());
    model.power_coefficient = PerKelvin(-lost.value());
    model.derating = take(panel.derating, generic.derating, "derating",
                          said<"0.904: soiling 0.97, wiring and connectors 0.97, tolerance 0.97, "
                               "mismatch 0.99">());
    return model;
}

Temperature cell_temperature(const PanelModel& panel, Irradiance light, Temperature air) {
    // Nominal conditions are 800 W/m2 and 20 degrees of air, [IEC 61215]
    return air + (panel.nominal_cell_temperature - celsius(20.0)) *
                     (light / (800.0 * watt_per_square_metre));
}

Power peak_power(const PanelModel& panel, Irradiance light, Temperature cells) {
    const double warmth = 1.0 + panel.power_coefficient.value() * ((cells - test_cells) / kelvin);
    return panel.rated_power * (std::max(0.0, double(light / test_light)) * std::max(0.0, warmth) *
                                panel.derating.value());
}

Voltage open_circuit_voltage_at(const PanelModel& panel, Temperature cells) {
    const double warmth = 1.0 + panel.voltage_coefficient.value() * ((cells - test_cells) / kelvin);
    return panel.open_circuit_voltage * std::max(0.0, warmth);
}

Current current_at(const PanelModel& panel, Voltage voltage, Irradiance light, Temperature cells) {
    const Voltage open = open_circuit_voltage_at(panel, cells);
    if (!(light > Irradiance{}) || voltage >= open) return Current{};
    const auto [c1, c2] = curve_constants(panel);
    const double warmth =
        std::max(0.0, 1.0 + panel.current_coefficient.value() * ((cells - test_cells) / kelvin));
    const Current short_circuit =
        panel.short_circuit_current * (double(light / test_light) * warmth);
    const double blocked = c1 * std::expm1(double(voltage / open) / c2);
    return short_circuit * (std::max(0.0, 1.0 - blocked) * panel.derating.value());
}

}  // namespace solar
