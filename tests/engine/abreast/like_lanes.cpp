#include "abreast/like_lanes.hpp"

#include "by_hand.hpp"

namespace {

using namespace units;
namespace detail = abreast::lanes_detail;

TEST(like_lanes, packs_of_one_make_go_together) {
    const outage::Unit one{.bank = by_hand::pack_of(100.0 * ampere_hour, 0.01 * ohm)};
    const outage::Unit larger{.bank = by_hand::pack_of(130.0 * ampere_hour, 0.02 * ohm)};
    EXPECT_TRUE(detail::built_alike(one, larger));
    auto two_wells = one;
    two_wells.bank.setup.kinetics.available = Share(0.6);
    EXPECT_FALSE(detail::built_alike(one, two_wells));
}

// Each lane has charge, resistance and a start of its own.
TEST(like_lanes, end_by_what_is_theirs) {
    std::vector<outage::Unit> units;
    for (const double charge : {60.0, 90.0, 120.0})
        units.push_back(
            {.bank = by_hand::pack_of(charge * ampere_hour, 0.004 * charge / 60.0 * ohm)});
    auto empty = units.front();
    empty.bank.at_start.removed = empty.bank.usable;
    units.push_back(empty);
    const std::vector demand{by_hand::draws(50.0 * watt)};
    std::vector<abreast::Outage> outages;
    for (const auto& unit : units)
        outages.push_back({.unit = &unit, .demand = demand});
    std::vector<abreast::OwnEnding> ended(units.size());
    abreast::LaneCost cost;
    abreast::run_own(outages, 60.0 * hour, 6.0 * hour, ended, &cost);
    EXPECT_EQ(cost.by_clock, 0U);
    for (std::size_t i = 0; i < 3; ++i) {
        const double charge = 60.0 + 30.0 * double(i);
        EXPECT_NEAR(
            ended[i].lasts / second,
            by_hand::lasts_at(charge * ampere_hour, 0.004 * charge / 60.0 * ohm, 50.0 * watt) /
                second,
            1.0);
        EXPECT_EQ(ended[i].limited_by, outage::LimitedBy::usable);
    }
    EXPECT_EQ(ended[3].lasts, Duration{});
    EXPECT_EQ(ended[3].limited_by, outage::LimitedBy::usable);
}

}  // namespace
