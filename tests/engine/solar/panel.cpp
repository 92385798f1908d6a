#include "solar/panel.hpp"

namespace {

using namespace units;
using namespace solar;

constexpr Irradiance full_sun = 1000.0 * watt_per_square_metre;

TEST(panel, a_silent_scenario_gets_a_generic_panel_and_says_so) {
    scenario::Assumptions assumptions;
    scenario::Panel described;
    described.power = 200.0 * watt;
    const PanelModel model = panel_model(described, "panel[1]", assumptions);
    EXPECT_EQ(model.rated_power, 200.0 * watt);
    EXPECT_NEAR(model.peak_power_current / ampere, 11.12, 1e-9);
    ASSERT_FALSE(assumptions.empty());
    for (const auto& assumption : assumptions) {
        EXPECT_TRUE(assumption.where.starts_with("panel[1].")) << assumption.where;
        EXPECT_FALSE(assumption.source.empty());
    }
}

TEST(panel, what_a_scenario_gives_is_taken_without_an_assumption) {
    scenario::Assumptions assumptions;
    scenario::Panel described;
    described.power = 120.0 * watt;
    described.open_circuit_voltage = 24.0 * volt;
    described.short_circuit_current = 6.5 * ampere;
    described.peak_power_voltage = 20.0 * volt;
    described.peak_power_current = 6.0 * ampere;
    described.nominal_cell_temperature = celsius(43.0);
    described.power_lost_per_kelvin = Share(0.0035);
    described.derating = Efficiency(0.95);
    const PanelModel model = panel_model(described, "panel[0]", assumptions);
    EXPECT_TRUE(assumptions.empty());
    EXPECT_NEAR(peak_power(model, full_sun, celsius(35.0)) / watt, 120.0 * 0.965 * 0.95, 1e-9);
}

TEST(panel, darkness_gives_nothing_and_neither_does_a_voltage_above_the_open_circuit) {
    const PanelModel panel;
    EXPECT_EQ(peak_power(panel, Irradiance{}, celsius(10.0)), Power{});
    EXPECT_EQ(current_at(panel, 13.0 * volt, Irradiance{}, celsius(10.0)), Current{});
    EXPECT_EQ(current_at(panel, 23.0 * volt, full_sun, celsius(25.0)), Current{});
}

TEST(panel, a_shorted_panel_gives_its_short_circuit_current) {
    PanelModel panel;
    panel.derating = Efficiency(1.0);
    EXPECT_NEAR(current_at(panel, Voltage{}, full_sun, celsius(25.0)) / ampere, 6.00, 1e-9);
}

TEST(panel, figures_that_contradict_each_other_do_not_break_the_curve) {
    PanelModel panel;
    panel.peak_power_current = panel.short_circuit_current;  // as rounded on a poor label
    panel.peak_power_voltage = panel.open_circuit_voltage;
    const Current current = current_at(panel, 13.2 * volt, full_sun, celsius(25.0));
    EXPECT_TRUE(std::isfinite(current.value()));
    EXPECT_GT(current, Current{});
}

}  // namespace
