#include "abreast/bank_stride.hpp"

#include "by_hand.hpp"

namespace {

using namespace units;

// 13 V of two packs behind 8 milliohm each, 4 milliohm together, 1,000 W: 76.92 A at first sight,
// where 13 V - 76.92 A x 4 milliohm is 12.69 V; so (13 - sqrt(169 - 16)) / 0.008 = 78.83 A, half
// of it from each: 39.42 A. Their protection bears 39 A or 40 A.
outage::Unit with_limit(Current limit) {
    auto bank = by_hand::pack_of(100.0 * ampere_hour, 0.008 * ohm);
    bank.at_start.removed = 0.5 * bank.setup.kinetics.total;  // 13 V
    bank.current_limit = limit;
    auto other = bank;
    other.name = "other";
    return {.bank = bank, .others = {other}};
}

abreast::OwnEnding ends(const outage::Unit& unit, abreast::Width width, abreast::LaneCost& cost) {
    const std::vector demand{by_hand::draws(1000.0 * watt)};
    const std::vector<abreast::Outage> outages{{.unit = &unit, .demand = demand}};
    std::vector<abreast::OwnEnding> ended(1);
    abreast::run_own(outages, 1.0 * minute, 6.0 * hour, ended, &cost, width);
    return ended.front();
}

// What is near a limit is looked at by the bank itself: 39 A open at once, 40 A bear the minute.
TEST(bank_stride, leaves_a_lane_near_a_limit_to_its_bank) {
    for (const auto width : abreast::widths_here()) {
        abreast::LaneCost cost;
        const auto opens = ends(with_limit(39.0 * ampere), width, cost);
        EXPECT_FALSE(opens.survives);
        EXPECT_EQ(opens.lasts, Duration{});
        EXPECT_TRUE(ends(with_limit(40.0 * ampere), width, cost).survives);
        EXPECT_GE(cost.one_by_one, 1U);
    }
}

// Far from it, it is not.
TEST(bank_stride, takes_a_lane_that_meets_nothing) {
    for (const auto width : abreast::widths_here()) {
        abreast::LaneCost cost;
        EXPECT_TRUE(ends(with_limit(100.0 * ampere), width, cost).survives);
        EXPECT_EQ(cost.steps, 1U);
        EXPECT_EQ(cost.one_by_one, 0U);
    }
}

}  // namespace
