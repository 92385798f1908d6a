// Packs in parallel at one moment, against closed forms worked out apart from this program: each row
// solved by hand from Kirchhoff's laws. Printed digits are met.
#include "battery/bus.hpp"

#include <array>

namespace {

using namespace units;
using namespace battery;

PackOnBus pack(double rested, double milliohms) {
    return {.rested = rested * volt,
            .giving = 1e-3 * milliohms * ohm,
            .taking = 1e-3 * milliohms * ohm};
}

constexpr double printed_6 = 5e-7;  // six decimals are printed
constexpr double printed_4 = 5e-5;
constexpr double printed_2 = 5e-3;

// (13/5 + 12.6/10 - 0.1) / (1/5 + 1/10) = 12.533333 V; 93.3333 and 6.6667 A
TEST(bus, two_unlike_packs_share_100_amperes) {
    const auto shared =
        shared_at_current(std::array{pack(13.0, 5.0), pack(12.6, 10.0)}, 100.0 * ampere);
    EXPECT_NEAR(shared.voltage / volt, 12.533333, printed_6);
    EXPECT_NEAR(shared.currents[0] / ampere, 93.3333, printed_4);
    EXPECT_NEAR(shared.currents[1] / ampere, 6.6667, printed_4);
}

TEST(bus, two_unlike_packs_without_load_equalise) {
    const auto shared = shared_at_power(std::array{pack(13.0, 5.0), pack(12.6, 10.0)}, Power{});
    EXPECT_NEAR(shared.voltage / volt, 12.866667, printed_6);
    EXPECT_NEAR(shared.currents[0] / ampere, 26.6667, printed_4);
    EXPECT_NEAR(shared.currents[1] / ampere, -26.6667, printed_4);
}

TEST(bus, three_packs_carry_3333_watts) {
    const std::array packs{pack(12.8, 8.5), pack(12.8, 8.5), pack(12.8, 8.5)};
    const auto shared = shared_at_power(packs, 3333.333333 * watt);
    EXPECT_NEAR(shared.voltage / volt, 12.013872, printed_6);
    for (const Current& current : shared.currents)
        EXPECT_NEAR(current / ampere, 92.4857, printed_4);
    const auto too_much = shared_at_power(packs, 20000.0 * watt);
    EXPECT_FALSE(too_much.possible);
    EXPECT_NEAR(too_much.at_most / watt, 14456.47, printed_2);
}

TEST(bus, three_packs_carry_6667_watts_on_the_upper_root) {
    const std::array packs{pack(12.8, 8.5), pack(12.8, 8.5), pack(12.8, 8.5)};
    const auto shared = shared_at_power(packs, 6666.666667 * watt);
    EXPECT_TRUE(shared.possible);
    EXPECT_NEAR(shared.voltage / volt, 11.097990, printed_6);
    for (const Current& current : shared.currents)
        EXPECT_NEAR(current / ampere, 200.2365, printed_4);
}

TEST(bus, one_pack_cannot_deliver_6667_watts_and_says_what_it_can) {
    const auto shared = shared_at_power(std::array{pack(12.8, 8.5)}, 6666.666667 * watt);
    EXPECT_FALSE(shared.possible);
    EXPECT_NEAR(shared.at_most / watt, 4818.8235, printed_4);
}

// Sag of n equal packs with leads of 2 mohm each and 0.5 mohm shared, to the two decimals and
// whole amperes printed; 3409 W and 7059 W at the inverter's direct-current side.
struct Sag {
    double rested, inner_milliohms;
    int count;
    double watts, volts, amperes;
};

TEST(bus, sag_of_equal_packs_behind_a_shared_path) {
    constexpr Sag rows[] = {
        {12.8, 6.4, 1, 3409.0909, 9.66, 353},   {12.8, 6.4, 2, 3409.0909, 11.39, 150},
        {12.8, 6.4, 3, 3409.0909, 11.85, 96},   {12.8, 6.4, 6, 3409.0909, 12.27, 46},
        {12.8, 6.4, 2, 7058.8235, 9.19, 384},   {12.8, 6.4, 4, 7058.8235, 11.15, 158},
        {13.2, 10.0, 1, 3409.0909, 7.57, -1},   {13.2, 10.0, 2, 3409.0909, 11.23, 152},
        {13.2, 10.0, 3, 7058.8235, 10.03, 234}, {13.2, 10.0, 6, 7058.8235, 11.69, 101}};
    for (const Sag& row : rows) {
        const std::vector<PackOnBus> packs(static_cast<std::size_t>(row.count),
                                           pack(row.rested, row.inner_milliohms + 2.0));
        const auto shared = shared_at_power(packs, row.watts * watt, 0.0005 * ohm);
        ASSERT_TRUE(shared.possible);
        EXPECT_NEAR(shared.voltage / volt, row.volts, 0.0051);
        if (row.amperes > 0.0) {
            EXPECT_NEAR(shared.currents[0] / ampere, row.amperes, 0.51);
        }
    }
    for (const auto& [rested, inner, count] :
         {std::tuple{12.8, 6.4, 1}, std::tuple{13.2, 10.0, 1}, std::tuple{13.2, 10.0, 2}}) {
        const std::vector<PackOnBus> packs(static_cast<std::size_t>(count),
                                           pack(rested, inner + 2.0));
        EXPECT_FALSE(shared_at_power(packs, 7058.8235 * watt, 0.0005 * ohm).possible);
    }
}

}  // namespace
