#include "wiring/network.hpp"

namespace {

using namespace units;
using namespace wiring;

TEST(network, the_weaker_pack_is_charged_by_the_stronger) {
    const Fed state = fed({.sources = {{13.4 * volt, 0.01 * ohm}, {12.6 * volt, 0.01 * ohm}}});
    EXPECT_NEAR(state.shares[0] / ampere, 40.0, 1e-9);
    EXPECT_NEAR(state.shares[1] / ampere, -40.0, 1e-9);
}

TEST(network, a_pack_that_cannot_be_charged_stands_aside) {
    const Fed state = fed(
        {.sources = {{13.4 * volt, 0.01 * ohm}, {12.6 * volt, 0.01 * ohm, std::nullopt, false}}});
    EXPECT_EQ(state.shares[1], Current());
    EXPECT_NEAR(state.bus / volt, 13.4, 1e-12);
}

TEST(network, protections_open_one_after_another) {
    const Source pack{13.0 * volt, 0.01 * ohm, 100.0 * ampere};
    const Fed two = fed({.sources = {pack, pack}, .drawn = 3000.0 * watt});
    EXPECT_EQ(two.how, Feeding::nobody_left);
    EXPECT_EQ(two.opened.size(), 2U);
    const Fed three = fed({.sources = {pack, pack, pack}, .drawn = 3000.0 * watt});
    EXPECT_EQ(three.how, Feeding::carries);
    EXPECT_TRUE(three.opened.empty());
}

TEST(network, nothing_flows_where_nothing_is_drawn) {
    const Fed state = fed({.sources = {{13.0 * volt, 0.01 * ohm}}, .main = 0.001 * ohm});
    EXPECT_EQ(state.main, Current());
    EXPECT_EQ(state.at_load, 13.0 * volt);
}

TEST(network, at_the_power_for_a_voltage_that_voltage_is_left) {
    Feed feed{.sources = {{13.0 * volt, 0.004 * ohm}, {12.9 * volt, 0.006 * ohm}},
              .main = 0.001 * ohm,
              .branches = 5.0 * ampere};
    feed.drawn = power_at_voltage(feed, 11.5 * volt);
    EXPECT_NEAR(fed(feed).at_load / volt, 11.5, 1e-9);
}

TEST(network, branches_can_take_all_there_is) {
    const Fed state = fed(
        {.sources = {{13.0 * volt, 0.1 * ohm}}, .drawn = 10.0 * watt, .branches = 200.0 * ampere});
    EXPECT_EQ(state.how, Feeding::collapses);
    EXPECT_EQ(state.largest, Power());
}

}  // namespace
