#include "battery/cell/temperature.hpp"

namespace {

using namespace battery;
using namespace units;
using scenario::Chemistry;

constexpr Chemistry all[] = {Chemistry::flooded, Chemistry::agm, Chemistry::gel,
                             Chemistry::lifepo4};

// [IEEE 485] at 0 degC, interpolated by hand between 1.430 and 1.350: 1.39857, 71.5 %
TEST(temperature, a_vented_battery_at_freezing) {
    EXPECT_NEAR(vented_sizing_multiplier(celsius(0.0)).factor, 1.39857, 0.6e-5);
    EXPECT_NEAR(capacity_factor(Chemistry::flooded, celsius(0.0)).factor, 0.715, 0.0006);
    EXPECT_DOUBLE_EQ(vented_sizing_multiplier(celsius(51.7)).factor, 0.850);
}

// [Lead-acid support page] 0.6 % a kelvin: 85 % at 0 degC; [AGM temperature table] 84 %, [VRLA 40 sheet] 74 % at -10 degC;
// [LiFePO4 series manuals] 80 % at 0 degC; at -20 degC it guarantees 70 %, and a cell of 20 Ah gave 55
TEST(temperature, the_other_chemistries_in_the_cold) {
    EXPECT_NEAR(capacity_factor(Chemistry::gel, celsius(0.0)).factor, 0.85, 1e-12);
    EXPECT_NEAR(capacity_factor(Chemistry::agm, celsius(0.0)).factor, 0.84, 1e-12);
    EXPECT_NEAR(capacity_factor(Chemistry::agm, celsius(-10.0)).factor, 0.74, 1e-12);
    EXPECT_NEAR(capacity_factor(Chemistry::lifepo4, celsius(0.0)).factor, 0.80, 1e-12);
    EXPECT_NEAR(capacity_factor(Chemistry::lifepo4, celsius(-20.0)).factor, 0.55, 1e-12);
}

TEST(temperature, warmth_earns_no_credit_and_cold_always_costs) {
    for (const Chemistry chemistry : all) {
        EXPECT_DOUBLE_EQ(capacity_factor(chemistry, celsius(25.0)).factor, 1.0);
        double before = 0.0;
        for (double degrees = -60.0; degrees <= 25.0; degrees += 0.5) {
            const double factor = capacity_factor(chemistry, celsius(degrees)).factor;
            EXPECT_GE(factor, before);
            EXPECT_GT(factor, 0.0);
            before = factor;
        }
        for (double degrees = 25.0; degrees < 80.0; degrees += 1.0)
            EXPECT_LE(capacity_factor(chemistry, celsius(degrees)).factor, 1.0);
    }
}

TEST(temperature, beyond_a_table_it_says_so_and_goes_on_falling) {
    const TemperatureFactor beyond = capacity_factor(Chemistry::agm, celsius(-20.0));
    EXPECT_FALSE(beyond.within_table);
    EXPECT_NEAR(beyond.factor, 0.64, 1e-12);  // 10 points for each 10 K, as between -10 and 0 degC
    EXPECT_TRUE(capacity_factor(Chemistry::agm, celsius(-10.0)).within_table);
}

TEST(temperature, a_cold_pack_resists_more_and_a_warm_one_no_less) {
    // [Copetti 1993]: + 17.5 % at 0 degC
    EXPECT_NEAR(resistance_factor(Chemistry::agm, celsius(0.0)).factor, 1.175, 1e-12);
    // exp(2405.45 K (1/T - 1/298.15 K)), worked out apart from the program
    const double rows[][2] = {{15, 1.32}, {10, 1.53},  {5, 1.79},
                              {0, 2.09},  {-10, 2.92}, {-20, 4.20}};
    for (const auto& [degrees, times] : rows)
        EXPECT_NEAR(resistance_factor(Chemistry::lifepo4, celsius(degrees)).factor, times, 0.0051);
    for (const Chemistry chemistry : all)
        EXPECT_EQ(resistance_factor(chemistry, celsius(45.0)).factor, 1.0);
}

// [LiFePO4 48 V manual]
TEST(temperature, lithium_is_charged_by_grades_and_not_at_all_below_freezing) {
    const auto rate = [](double degrees) {
        return *graded_charge_rate(Chemistry::lifepo4, celsius(degrees)) / per_hour;
    };
    EXPECT_EQ(rate(-0.1), 0.0);
    EXPECT_DOUBLE_EQ(rate(0.0), 0.1);
    EXPECT_DOUBLE_EQ(rate(7.0), 0.2);
    EXPECT_DOUBLE_EQ(rate(20.0), 1.0);
    EXPECT_DOUBLE_EQ(rate(40.0), 0.75);
    EXPECT_DOUBLE_EQ(rate(60.0), 0.1);
    EXPECT_EQ(rate(61.0), 0.0);
    EXPECT_DOUBLE_EQ(*graded_discharge_rate(Chemistry::lifepo4, celsius(-10.0)) / per_hour, 0.5);
    EXPECT_FALSE(graded_charge_rate(Chemistry::agm, celsius(-10.0)).has_value());
}

}  // namespace
