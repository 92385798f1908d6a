// Readings of measured batteries whose charge is known: the interval told must hold it.
#include <string>

#include <gtest/gtest.h>

#include "handling/gauge.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

scenario::Scenario with(const std::string& packs) {
    return scenario::read_scenario(
               "format = 1\n[outage]\nstarts = 2026-01-14T18:00:00\nlasts = "
               "\"1 d\"\nbattery_temperature = \"25 degC\"\n[[pack]]\nname = "
               "\"main\"\ncapacity = \"100 Ah\"\n" +
                   packs,
               "gauge.toml")
        .value()
        .scenario;
}

void expect_held(const scenario::Scenario& scenario, const handling::Reading& reading,
                 double truth) {
    const auto told = handling::gauge(scenario, reading);
    ASSERT_TRUE(told.has_value());
    EXPECT_LE(told->low.value(), truth) << reading.reads / volt << " V";
    EXPECT_GE(told->high.value(), truth) << reading.reads / volt << " V";
    std::cout << reading.reads / volt << " V: " << told->low.value() << " to " << told->high.value()
              << ", true " << truth << "\n";
}

// [AGM charge], 10 A: on the rested table 68-92, 33-54, 9-32 and 0-17 % were told, too low three
// times of four.
TEST(gauge_measured, an_agm_battery_that_is_drawn) {
    const auto scenario = with("chemistry = \"agm\"\n");
    struct Row {
        double volts;
        double truth;
    };
    for (const Row row :
         {Row{12.510, 0.90}, Row{12.095, 0.60}, Row{11.787, 0.40}, Row{11.353, 0.20}})
        expect_held(scenario,
                    {.reads = row.volts * volt,
                     .error = 0.005 * volt,
                     .power = 10.0 * ampere * (row.volts * volt)},
                    row.truth);
}

// [AGM charge log], 105 Ah of which 95.69 are left: 12.59 V under 5.25 A at 95 %.
TEST(gauge_measured, a_second_agm_battery_that_is_drawn) {
    auto scenario = with("chemistry = \"agm\"\n");
    scenario.packs.front().capacity = 105.0 * ampere_hour;
    scenario.packs.front().tested_capacity = 95.69 * ampere_hour;
    expect_held(
        scenario,
        {.reads = 12.59 * volt, .error = 0.005 * volt, .power = 5.25 * ampere * (12.59 * volt)},
        0.95);
}

// [LiFePO4 bank], five packs: 13.30 V after 20 days and 13.32 V after 10 of a full charge, 12.96 V
// under 1,047 W four minutes long.
TEST(gauge_measured, a_bank_of_lithium) {
    const auto scenario = with("chemistry = \"lifepo4\"\ncount = 5\n");
    expect_held(scenario, {.reads = 13.30 * volt, .error = 0.005 * volt, .rested_for = 20.0 * day},
                0.98);
    expect_held(scenario, {.reads = 13.32 * volt, .error = 0.005 * volt, .rested_for = 10.0 * day},
                0.99);
    expect_held(scenario, {.reads = 12.96 * volt, .error = 0.005 * volt, .power = 1047.0 * watt},
                0.79);
}

}  // namespace
