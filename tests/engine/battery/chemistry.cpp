#include "battery/cell/chemistry.hpp"

namespace {

using namespace battery;
using namespace units;
using scenario::Chemistry;

constexpr Chemistry all[] = {Chemistry::flooded, Chemistry::agm, Chemistry::gel,
                             Chemistry::lifepo4};

// [Flooded 225 Ah sheet] row by row: specific gravity + 0.845 V a cell, six cells, printed to 0.01 V
TEST(chemistry, flooded_rests_at_the_voltages_of_its_sheet) {
    const double volts[] = {11.36, 11.51, 11.66, 11.81, 11.96, 12.10,
                            12.24, 12.37, 12.50, 12.62, 12.73};
    for (int tenth = 0; tenth <= 10; ++tenth)
        EXPECT_NEAR(open_circuit_of(Chemistry::flooded).voltage(StateOfCharge(0.1 * tenth)) / volt,
                    volts[tenth], 0.0051);
}

// [Sunil 2025], four cells in series, of its 600 rows those at whole percents.
TEST(chemistry, lifepo4_has_two_plateaus) {
    const OpenCircuit& table = open_circuit_of(Chemistry::lifepo4);
    constexpr double percents[] = {10, 15, 20, 25, 30, 35, 40, 50, 60, 65, 70, 75, 80, 90, 97, 98};
    constexpr double volts[] = {12.812, 12.863, 12.965, 13.047, 13.111, 13.153, 13.179, 13.196,
                                13.213, 13.228, 13.265, 13.332, 13.348, 13.364, 13.378, 13.392};
    for (std::size_t i = 0; i < std::size(volts); ++i)
        EXPECT_NEAR(table.voltage(StateOfCharge(percents[i] / 100.0)) / volt, volts[i], 0.02)
            << percents[i];
}

TEST(chemistry, every_default_is_within_its_range_and_names_its_source) {
    for (const Chemistry chemistry : all) {
        const ChemistryDefaults& of = defaults_of(chemistry);
        EXPECT_GT(of.available.value, Share(0.0));
        EXPECT_LE(of.available.value, Share(1.0));
        EXPECT_GT(of.resistance_of_100_ampere_hours.value, Resistance{});
        EXPECT_GT(of.absorption.value, of.floating.value);
        for (const words::Said& source :
             {of.available.source, of.rate.source, of.resistance_of_100_ampere_hours.source,
              of.charge_rate.source, of.absorption.source, of.usable.source, of.coulombic.source,
              of.self_discharge.source, of.open_circuit_source})
            EXPECT_FALSE(source.empty());
    }
}

TEST(chemistry, only_lifepo4_must_not_be_charged_below_freezing) {
    EXPECT_EQ(defaults_of(Chemistry::lifepo4).coldest_charge.value, celsius(0.0));
    for (const Chemistry lead : {Chemistry::flooded, Chemistry::agm, Chemistry::gel})
        EXPECT_FALSE(defaults_of(lead).coldest_charge.value.has_value());
}

}  // namespace
