#include "checks/gauge.hpp"

namespace {

using namespace units;
using scenario::Chemistry;

scenario::Scenario one(Chemistry chemistry) {
    scenario::Scenario made;
    made.packs = {{.name = "main",
                   .chemistry = chemistry,
                   .capacity = 100.0 * ampere_hour,
                   .resistance = 0.008 * ohm,
                   .lead_resistance = 0.002 * ohm}};
    made.outage.battery_temperature = celsius(25.0);
    return made;
}

TEST(gauge, a_coarser_meter_tells_less) {
    const auto fine =
        checks::gauge(one(Chemistry::agm), {.reads = 12.4 * volt, .error = 0.02 * volt});
    const auto coarse =
        checks::gauge(one(Chemistry::agm), {.reads = 12.4 * volt, .error = 0.2 * volt});
    EXPECT_LT(coarse->low, fine->low);
    EXPECT_GT(coarse->high, fine->high);
    EXPECT_LT(fine->low, fine->likely);
    EXPECT_LT(fine->likely, fine->high);
}

// 30 A through 10 mohm is 0.3 V.
TEST(gauge, the_sag_of_a_load_is_undone) {
    const auto told =
        checks::gauge(one(Chemistry::lifepo4),
                      {.reads = 12.0 * volt, .error = 0.05 * volt, .power = 360.0 * watt});
    EXPECT_NEAR(told->rested / volt, 12.3, 1e-9);
}

TEST(gauge, under_load_a_lead_battery_holds_more_than_its_terminals_feel) {
    const auto told = checks::gauge(
        one(Chemistry::agm), {.reads = 12.0 * volt, .error = 0.05 * volt, .power = 120.0 * watt});
    ASSERT_TRUE(told->now_high);
    EXPECT_GT(told->high, *told->now_high);
}

TEST(gauge, the_ends_of_the_lithium_table_can_be_read) {
    const auto empty =
        checks::gauge(one(Chemistry::lifepo4), {.reads = 12.0 * volt, .error = 0.05 * volt});
    EXPECT_TRUE(empty->readable);
    EXPECT_LT(empty->high, StateOfCharge(0.06));
}

TEST(gauge, a_voltage_that_no_such_pack_shows_is_told) {
    EXPECT_FALSE(checks::gauge(one(Chemistry::agm), {.reads = 25.0 * volt}));
    EXPECT_FALSE(checks::gauge(one(Chemistry::agm), {.reads = 1.2 * volt}));
}

TEST(gauge, packs_of_two_chemistries_cannot_share_a_reading) {
    auto made = one(Chemistry::agm);
    made.packs.push_back(made.packs.front());
    made.packs.back().name = "other";
    made.packs.back().chemistry = Chemistry::gel;
    EXPECT_FALSE(checks::gauge(made, {.reads = 12.5 * volt}));
    EXPECT_TRUE(checks::gauge(made, {.reads = 12.5 * volt, .pack = "other"}));
}

}  // namespace
