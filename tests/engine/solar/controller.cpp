#include "solar/controller.hpp"

namespace {

using namespace units;
using namespace solar;

ControllerModel mppt() {
    return {.input_limit = {}, .output_limit = {}, .voltage_limit = {}};
}

TEST(controller, five_panels_behind_a_400_w_input_give_what_four_give) {
    ControllerModel controller = mppt();
    controller.input_limit = 400.0 * watt;
    const Offer four = through_controller(controller, {.power = 400.0 * watt, .current = {}});
    const Offer five = through_controller(controller, {.power = 500.0 * watt, .current = {}});
    EXPECT_EQ(four.power, five.power);
    EXPECT_EQ(four.clipped, Power{});
    EXPECT_NEAR(five.clipped / watt, 95.0, 1e-9);
}

TEST(controller, the_output_limit_counts_at_the_battery) {
    ControllerModel controller = mppt();
    controller.output_limit = 20.0 * ampere;
    const Offer offer = through_controller(controller, {.power = 400.0 * watt, .current = {}});
    EXPECT_NEAR(offer.current / ampere, 20.0, 1e-9);
    EXPECT_NEAR(offer.power / watt, 20.0 * 13.2, 1e-9);
    EXPECT_NEAR(offer.clipped / watt, 380.0 - 264.0, 1e-9);
}

TEST(controller, a_pwm_controller_passes_the_panel_current_at_battery_voltage) {
    ControllerModel controller = mppt();
    controller.kind = scenario::ControllerKind::pwm;
    controller.efficiency = Efficiency(1.0);
    const Offer offer =
        through_controller(controller, {.power = 100.0 * watt, .current = 5.9 * ampere});
    EXPECT_NEAR(offer.power / watt, 5.9 * 13.2, 1e-9);
}

TEST(controller, cold_panels_within_the_limit_raise_nothing_and_near_it_a_caution) {
    ControllerModel controller = mppt();
    EXPECT_TRUE(cold_voltage_check(controller, PanelModel{}, 9, celsius(-40.0)).empty());
    controller.voltage_limit = 100.0 * volt;
    EXPECT_TRUE(cold_voltage_check(controller, PanelModel{}, 2, celsius(-20.0)).empty());
    controller.voltage_limit = 50.0 * volt;
    const auto findings = cold_voltage_check(controller, PanelModel{}, 2, celsius(-20.0));
    ASSERT_EQ(findings.size(), 1u);
    EXPECT_EQ(findings[0].severity, scenario::Severity::caution);
}

TEST(controller, an_absent_controller_leaves_an_assumption) {
    scenario::Assumptions assumptions;
    EXPECT_EQ(controller_model(std::nullopt, assumptions).kind, scenario::ControllerKind::mppt);
    EXPECT_FALSE(assumptions.empty());
}

}  // namespace
