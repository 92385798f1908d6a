// 12 V loads on circuits: voltages and currents by Ohm's law, by hand.
#include "outage/parts.hpp"

namespace {

using namespace units;

outage::DirectPart part(std::size_t load, std::vector<std::size_t> ways, double watts,
                        Duration from = {}) {
    outage::DirectPart made{
        .load = load, .lowest = 10.5 * volt, .ways = std::move(ways), .draws = {}};
    if (from > Duration{}) made.draws.push_back({});
    made.draws.push_back({from, watts * watt, watts * watt});
    return made;
}

// A lamp of 21 W behind way 0, a pump of 42 W behind ways 0 and 1, from one hour on; 10 and 20 mohm.
outage::Parts lamp_and_pump() {
    return {.direct = {part(0, {0}, 21.0), part(1, {0, 1}, 42.0, 1.0 * hour)},
            .ways = {0.010 * ohm, 0.020 * ohm},
            .bus = 12.8 * volt};
}

const auto all = [](std::size_t) { return true; };

TEST(parts, a_way_carries_all_that_is_behind_it_at_that_moment) {
    const auto parts = lamp_and_pump();
    EXPECT_EQ(outage::draw_at(parts.direct[1], 0.5 * hour).at_bus, Power{});
    const auto early = outage::on_ways(parts, 0.5 * hour, all);
    EXPECT_NEAR(early[0] / watt, 21.0, 1e-12);
    EXPECT_NEAR(early[1] / watt, 0.0, 1e-12);
    const auto late = outage::on_ways(parts, 2.0 * hour, all);
    EXPECT_NEAR(late[0] / watt, 63.0, 1e-12);
    EXPECT_NEAR(late[1] / watt, 42.0, 1e-12);
}

// At 10.5 V 63 W are 6 A and 42 W 4 A: 6 A x 10 mohm is 0.06 V, 4 A x 20 mohm 0.08 V more.
TEST(parts, the_bus_stands_higher_by_what_the_ways_take) {
    const auto parts = lamp_and_pump();
    const auto flows = outage::on_ways(parts, 2.0 * hour, all);
    EXPECT_NEAR(outage::lowest_at_bus(parts, parts.direct[0], flows) / volt, 10.56, 1e-12);
    EXPECT_NEAR(outage::lowest_at_bus(parts, parts.direct[1], flows) / volt, 10.64, 1e-12);
    const auto steps = outage::with_lowest({{}, {.from = 1.0 * hour}}, parts);
    EXPECT_NEAR(steps[0].lowest / volt, 10.52, 1e-12);  // 2 A of the lamp alone
    EXPECT_NEAR(steps[1].lowest / volt, 10.64, 1e-12);
}

// 21 W behind 10 mohm from 12.8 V: V^2 - 12.8 V + 0.21 = 0 has 12.78357 V, so 1.64273 A.
TEST(parts, a_load_draws_more_behind_its_way) {
    const auto currents = outage::currents_on_ways(lamp_and_pump(), 0.5 * hour, 12.8 * volt, all);
    EXPECT_NEAR(currents[0] / ampere, 1.64273, 1e-5);
    EXPECT_EQ(currents[1], Current{});
    // no lower than its lowest voltage: 21 W / 10.5 V
    EXPECT_NEAR(outage::currents_on_ways(lamp_and_pump(), 0.5 * hour, 9.0 * volt, all)[0] / ampere,
                2.0, 1e-12);
}

// 10.5 V of a 12 V bus, common practice, and of two in series twice that.
TEST(parts, what_says_nothing_goes_out_below_10_5_volts_of_each_12) {
    EXPECT_NEAR(outage::usual_lowest(12.8 * volt) / volt, 10.5, 1e-12);
    EXPECT_NEAR(outage::usual_lowest(25.6 * volt) / volt, 21.0, 1e-12);
}

// 63 W at 10.5 V are 6 A, beyond a fuse of 5 A and not of 7.5 A whose times are not known.
TEST(parts, a_fuse_may_open_where_all_behind_it_draws_more_than_it_bears) {
    demand::Demand demand{.lasts = 3.0 * hour};
    for (const auto& [name, watts] : {std::pair{"lamp", 21.0}, std::pair{"pump", 42.0}})
        demand.loads.push_back(
            {.name = name,
             .from = scenario::Outlet::twelve_volt,
             .power = {.low = watts * watt, .likely = watts * watt, .high = watts * watt},
             .strands = {{.on = {{{}, 3.0 * hour}}}}});
    const auto with_fuse = [&](double amperes) {
        ::unit::Branch branch{.name = "all", .feeds = {"lamp", "pump"}};
        branch.fuse = ::unit::Guard{.rating = amperes * ampere};
        return outage::parts_of(demand, demand::Case::likely, {branch}, 12.8 * volt);
    };
    EXPECT_TRUE(with_fuse(5.0).may_open);
    EXPECT_FALSE(with_fuse(7.5).may_open);
    EXPECT_EQ(with_fuse(5.0).direct.size(), 2U);
}

}  // namespace
