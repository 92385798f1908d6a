#include "wiring/ampacity.hpp"

namespace {

using namespace units;
using wiring::AmpacityTable;

scenario::Wire wire(WireSize size) {
    return {.size = size, .length = 1.0 * metre, .insulation = celsius(105.0)};
}

constexpr wiring::Surroundings cool{.around = celsius(30.0)};

TEST(ampacity, runs_in_parallel_carry_together) {
    auto two = wire(AmericanGauge{-1});
    two.runs = 2;
    EXPECT_NEAR(wiring::ampacity_of(two, cool)->allowed / ampere, 660.0, 1e-9);
}

TEST(ampacity, company_takes_its_share) {
    auto bundled = wire(AmericanGauge{16});
    bundled.bundle = 4;
    EXPECT_NEAR(wiring::ampacity_of(bundled, cool)->allowed / ampere, 15.0, 1e-9);
    EXPECT_EQ(wiring::bundle_factor(AmpacityTable::boat, 24), 0.5);
    EXPECT_EQ(wiring::bundle_factor(AmpacityTable::building, 3), 1.0);
    EXPECT_EQ(wiring::bundle_factor(AmpacityTable::building, 9), 0.7);
}

TEST(ampacity, terminals_made_for_less_heat_decide) {
    auto branch = wire(AmericanGauge{12});
    branch.insulation = celsius(90.0);
    branch.terminals = celsius(60.0);
    const auto looked =
        wiring::ampacity_of(branch, {.around = celsius(30.0), .table = AmpacityTable::building});
    EXPECT_NEAR(looked->allowed / ampere, 20.0, 1e-9);
    EXPECT_NEAR(*looked->largest_fuse / ampere, 20.0, 1e-9);
}

TEST(ampacity, a_builders_own_figure_stands_in_for_the_table) {
    auto own = wire(AmericanGauge{16});
    own.ampacity = 18.0 * ampere;
    EXPECT_NEAR(wiring::ampacity_of(own, cool)->allowed / ampere, 18.0, 1e-9);
    EXPECT_EQ(wiring::ampacity_of(own, cool)->reliability, wiring::Reliability::builder);
}

TEST(ampacity, what_the_table_lacks_is_not_guessed) {
    EXPECT_FALSE(wiring::ampacity_of(wire(AmericanGauge{24}), cool));
    auto unmarked = wire(AmericanGauge{16});
    unmarked.insulation = celsius(40.0);
    EXPECT_FALSE(wiring::ampacity_of(unmarked, cool));
}

TEST(ampacity, a_metric_size_takes_the_thinner_gauge) {
    // 35 mm2 lies between 2 AWG (33.6) and 1 AWG (42.4).
    EXPECT_NEAR(wiring::ampacity_of(wire(35e-6 * square_metre), cool)->allowed / ampere, 210.0,
                1e-9);
}

}  // namespace
