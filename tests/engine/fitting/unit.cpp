#include "fitting/unit.hpp"

#include "support/wiring_builds.hpp"

namespace {

using namespace units;
using wiring_builds::pack;

// 10 mohm for 100 Ah of four cells, battery method.md: 200 Ah have half of it, eight cells in
// series twice, so both together the same again.
TEST(fitting_unit, cells_in_series_add_and_capacity_divides_what_is_inside) {
    auto one = pack("main", 1);
    EXPECT_NEAR(fitting::usual_inside(one) / ohm, 0.010, 1e-12);
    one.capacity = 200.0 * ampere_hour;
    EXPECT_NEAR(fitting::usual_inside(one) / ohm, 0.005, 1e-12);
    one.voltage = 25.6 * volt;
    EXPECT_NEAR(fitting::usual_inside(one) / ohm, 0.010, 1e-12);
}

// At 25 degC 4 mohm inside and 2 mohm of lead: 6 mohm to the bus, each pack of the kind a source of its own.
TEST(fitting_unit, each_pack_is_a_source_behind_its_own_path) {
    auto build = wiring_builds::branch_of({});
    build.packs = {pack("main", 3)};
    build.packs[0].lead_resistance = 2e-3 * ohm;
    build.outage.battery_temperature = celsius(25.0);
    scenario::Assumptions assumptions;
    const auto unit = fitting::build_unit(build, assumptions);
    ASSERT_TRUE(unit);
    const auto feed = fitting::feed_of(*unit, 500.0 * watt, 2.0 * ampere);
    ASSERT_EQ(feed.sources.size(), 3U);
    EXPECT_NEAR(feed.sources[2].resistance / ohm, 6e-3, 1e-9);
    EXPECT_EQ(feed.sources[2].emf, unit->packs[0].emf);
    EXPECT_LT(unit->packs[0].emf, unit->packs[0].full);  // half full, and shorts when full
}

TEST(fitting_unit, a_unit_without_packs_is_refused_at_its_key) {
    auto build = wiring_builds::branch_of({});
    build.packs[0].count = 0;
    scenario::Assumptions assumptions;
    const auto unit = fitting::build_unit(build, assumptions);
    ASSERT_FALSE(unit);
    EXPECT_EQ(unit.error().front().where, "pack.count");
}

}  // namespace
