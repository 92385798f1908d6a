// Cells and curves against hand computations on the definitions.
#include "solar/controller.hpp"
#include "solar/panel.hpp"

namespace {

using namespace units;
using namespace solar;

constexpr Irradiance full_sun = 1000.0 * watt_per_square_metre;

PanelModel bare() {
    PanelModel panel;
    panel.derating = Efficiency(1.0);
    return panel;
}

TEST(solar_published, cells_in_full_sun_by_the_definition_of_nominal_temperature) {
    // [IEC 61215] definition: 25 degC of air, 1000 W/m2, nominal 45 degC: 25 + 25/800*1000 = 56.25;
    // at -0.4 % a kelvin the factor is 0.875
    const PanelModel panel = bare();
    const Temperature cells = cell_temperature(panel, full_sun, celsius(25.0));
    EXPECT_NEAR(in_celsius(cells), 56.25, 1e-9);
    EXPECT_NEAR(peak_power(panel, full_sun, cells) / watt, 87.5, 1e-9);
}

TEST(solar_published, a_generic_panel_held_at_battery_voltage) {
    // computed independently from the explicit curve of [Rauschenbach 1980]: at 25 degC 79.0 W at
    // 13.2 V, 71.9 W at 12.0 V, 85.9 W at 14.4 V; at 60 degC 80.0 W at 13.2 V
    const PanelModel panel = bare();
    const auto power = [&](double volts, double warmth) {
        return volts * (current_at(panel, volts * volt, full_sun, celsius(warmth)) / ampere);
    };
    EXPECT_NEAR(power(13.2, 25.0), 79.0, 0.2);
    EXPECT_NEAR(power(12.0, 25.0), 71.9, 0.2);
    EXPECT_NEAR(power(14.4, 25.0), 85.9, 0.2);
    EXPECT_NEAR(power(13.2, 60.0), 80.0, 0.2);
}

TEST(solar_published, the_cold_voltage_of_two_panels_in_series) {
    // by hand: 21.6 V (1 + 0.003 * 45) = 24.5 V at -20 degC; two in series 49 V
    EXPECT_NEAR(open_circuit_voltage_at(PanelModel{}, celsius(-20.0)) / volt, 24.5, 0.05);
    ControllerModel controller;
    controller.voltage_limit = 48.0 * volt;
    const auto findings = cold_voltage_check(controller, PanelModel{}, 2, celsius(-20.0));
    ASSERT_EQ(findings.size(), 1u);
    EXPECT_EQ(findings[0].severity, scenario::Severity::stop);
}

}  // namespace
