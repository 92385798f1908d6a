#include "inverter/model.hpp"

#include <gtest/gtest.h>

namespace {

using units::volt;
using units::watt;

scenario::Inverter rated(double power) {
    scenario::Inverter described;
    described.continuous = power * watt;
    return described;
}

scenario::Inverter stated() {
    scenario::Inverter described = rated(2400.0);
    described.continuous_apparent = 2600.0 * units::volt_ampere;
    described.idle = 18.0 * watt;
    described.efficiency = {{units::Share(0.5), units::Efficiency(0.91)},
                            {units::Share(1.0), units::Efficiency(0.88)}};
    described.cutoff_voltage = 10.8 * volt;
    described.restart_voltage = 12.4 * volt;
    described.restart = scenario::Restart::by_itself;
    described.cutoff_delay = 1.0 * units::second;
    described.output_voltage = 115.0 * volt;
    described.waveform = scenario::Waveform::quasi_square;
    described.cable_resistance = 2e-3 * units::ohm;
    return described;
}

inverter::Model model(const scenario::Inverter& described, double bus = 12.8) {
    scenario::Assumptions assumed;
    return inverter::model_of(described, bus * volt, assumed).value();
}

TEST(inverter_model, what_the_file_states_leaves_no_assumption) {
    scenario::Assumptions assumed;
    const auto made = inverter::model_of(stated(), 12.8 * volt, assumed);
    ASSERT_TRUE(made);
    EXPECT_TRUE(assumed.empty());
    EXPECT_EQ(made->cutoff_voltage, 10.8 * volt);
    EXPECT_EQ(made->restart_voltage, 12.4 * volt);
    EXPECT_EQ(made->output_voltage, 115.0 * volt);
    EXPECT_EQ(made->waveform, scenario::Waveform::quasi_square);
    EXPECT_EQ(made->idle_low, 18.0 * watt);
    EXPECT_EQ(made->idle_high, 18.0 * watt);
}

TEST(inverter_model, every_default_leaves_an_assumption_with_a_source) {
    scenario::Assumptions assumed;
    ASSERT_TRUE(inverter::model_of(rated(3000.0), 12.8 * volt, assumed));
    EXPECT_EQ(assumed.size(), 10U);
    for (const scenario::Assumption& each : assumed) {
        EXPECT_EQ(each.where.substr(0, 9), "inverter.");
        EXPECT_FALSE(each.text.empty());
        EXPECT_FALSE(each.source.empty());
    }
}

TEST(inverter_model, an_assumed_idle_is_a_range) {
    const inverter::Model made = model(rated(3000.0));
    EXPECT_NEAR(made.idle_low / watt, 10.0, 1e-9);
    EXPECT_NEAR(made.idle_high / watt, 60.0, 1e-9);
}

TEST(inverter_model, low_voltage_defaults_follow_the_bank) {
    const scenario::Inverter silent = rated(3000.0);
    EXPECT_EQ(model(silent, 12.0).cutoff_voltage, 10.5 * volt);
    EXPECT_EQ(model(silent, 12.8).restart_voltage, 12.0 * volt);
    EXPECT_EQ(model(silent, 24.0).cutoff_voltage, 21.0 * volt);
    EXPECT_EQ(model(silent, 25.6).restart_voltage, 24.0 * volt);
    EXPECT_EQ(model(silent, 51.2).cutoff_voltage, 42.0 * volt);
}

TEST(inverter_model, a_restart_voltage_at_or_below_the_cut_off_is_refused) {
    scenario::Inverter described = stated();
    described.restart_voltage = 10.8 * volt;
    scenario::Assumptions assumed;
    const auto made = inverter::model_of(described, 12.8 * volt, assumed);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().front().where, "inverter.restart_voltage");
}

TEST(inverter_model, every_unusable_rating_is_named_at_once) {
    scenario::Inverter described = stated();
    described.continuous = 0.0 * watt;
    described.output_voltage = 0.0 * volt;
    described.cutoff_delay = -1.0 * units::second;
    scenario::Assumptions assumed;
    const auto made = inverter::model_of(described, 12.8 * volt, assumed);
    ASSERT_FALSE(made);
    ASSERT_EQ(made.error().size(), 3U);
    EXPECT_EQ(made.error()[0].where, "inverter.continuous");
    EXPECT_EQ(made.error()[1].where, "inverter.output_voltage");
    EXPECT_EQ(made.error()[2].where, "inverter.cutoff_delay");
}

TEST(inverter_model, nothing_plugged_in_draws_idle_at_no_efficiency) {
    const inverter::Model made = model(stated());
    EXPECT_EQ(inverter::dc_power(made, 0.0 * watt, {}), 18.0 * watt);
    EXPECT_EQ(inverter::efficiency(made, 0.0 * watt, {}), units::Efficiency(0.0));
}

TEST(inverter_model, reactive_power_costs_though_it_does_no_work) {
    const inverter::Model made = model(stated());
    const units::ApparentPower skewed =
        inverter::apparent(300.0 * watt, units::ReactivePower(400.0 * watt));
    EXPECT_NEAR(skewed / units::volt_ampere, 500.0, 1e-12);
    EXPECT_GT(inverter::dc_power(made, 300.0 * watt, skewed),
              inverter::dc_power(made, 300.0 * watt, units::ApparentPower(300.0 * watt)));
}

TEST(inverter_model, another_idle_moves_the_draw_by_just_that) {
    const inverter::Model made = model(stated());
    const inverter::Model hungry = inverter::with_idle(made, 40.0 * watt);
    const units::ApparentPower s(500.0 * watt);
    EXPECT_NEAR((inverter::loss(hungry, s) - inverter::loss(made, s)) / watt, 22.0, 1e-12);
}

TEST(inverter_model, watts_and_volt_amperes_are_limited_apart) {
    const inverter::Model made = model(stated());
    EXPECT_TRUE(inverter::carries(made, 2400.0 * watt, 2600.0 * units::volt_ampere));
    EXPECT_FALSE(inverter::carries(made, 2401.0 * watt, 2401.0 * units::volt_ampere));
    EXPECT_FALSE(inverter::carries(made, 1000.0 * watt, 2601.0 * units::volt_ampere));
}

TEST(inverter_model, once_off_it_waits_for_the_restart_voltage) {
    const inverter::Model made = model(stated());
    EXPECT_TRUE(inverter::runs_at(made, 10.8 * volt, true));
    EXPECT_FALSE(inverter::runs_at(made, 10.79 * volt, true));
    EXPECT_FALSE(inverter::runs_at(made, 12.39 * volt, false));
    EXPECT_TRUE(inverter::runs_at(made, 12.4 * volt, false));
}

TEST(inverter_model, a_loss_without_a_square_part_is_best_at_full_load) {
    inverter::Model made = model(stated());
    made.losses = {
        .idle = 18.0 * watt, .linear = 1.0 / 9.0, .quadratic = 0.0, .rating = 2400.0 * watt};
    const inverter::PeakEfficiency peak = inverter::peak_efficiency(made);
    EXPECT_EQ(peak.at, 2400.0 * watt);
    EXPECT_NEAR(peak.is.value(), 2400.0 / (2400.0 / 0.9 + 18.0), 1e-12);
}

}  // namespace
