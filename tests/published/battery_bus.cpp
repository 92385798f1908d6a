// Packs in parallel, against closed forms worked out apart from this program: each row solved by
// hand from Kirchhoff's laws, and the moving ones from the exponential of two capacitors joined by
// a resistance. Printed digits are met.
#include <array>
#include <cmath>

#include "battery/bank.hpp"
#include "battery/bus.hpp"

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
TEST(battery_bus, two_unlike_packs_share_100_amperes) {
    const auto shared =
        shared_at_current(std::array{pack(13.0, 5.0), pack(12.6, 10.0)}, 100.0 * ampere);
    EXPECT_NEAR(shared.voltage / volt, 12.533333, printed_6);
    EXPECT_NEAR(shared.currents[0] / ampere, 93.3333, printed_4);
    EXPECT_NEAR(shared.currents[1] / ampere, 6.6667, printed_4);
}

TEST(battery_bus, two_unlike_packs_without_load_equalise) {
    const auto shared = shared_at_power(std::array{pack(13.0, 5.0), pack(12.6, 10.0)}, Power{});
    EXPECT_NEAR(shared.voltage / volt, 12.866667, printed_6);
    EXPECT_NEAR(shared.currents[0] / ampere, 26.6667, printed_4);
    EXPECT_NEAR(shared.currents[1] / ampere, -26.6667, printed_4);
}

TEST(battery_bus, three_packs_carry_3333_watts) {
    const std::array packs{pack(12.8, 8.5), pack(12.8, 8.5), pack(12.8, 8.5)};
    const auto shared = shared_at_power(packs, 3333.333333 * watt);
    EXPECT_NEAR(shared.voltage / volt, 12.013872, printed_6);
    for (const Current& current : shared.currents)
        EXPECT_NEAR(current / ampere, 92.4857, printed_4);
    const auto too_much = shared_at_power(packs, 20000.0 * watt);
    EXPECT_FALSE(too_much.possible);
    EXPECT_NEAR(too_much.at_most / watt, 14456.47, printed_2);
}

TEST(battery_bus, three_packs_carry_6667_watts_on_the_upper_root) {
    const std::array packs{pack(12.8, 8.5), pack(12.8, 8.5), pack(12.8, 8.5)};
    const auto shared = shared_at_power(packs, 6666.666667 * watt);
    EXPECT_TRUE(shared.possible);
    EXPECT_NEAR(shared.voltage / volt, 11.097990, printed_6);
    for (const Current& current : shared.currents)
        EXPECT_NEAR(current / ampere, 200.2365, printed_4);
}

TEST(battery_bus, one_pack_cannot_deliver_6667_watts_and_says_what_it_can) {
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

TEST(battery_bus, sag_of_equal_packs_behind_a_shared_path) {
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

// One well, rested voltage straight from 11.7 V empty to 12.9 V full.
const OpenCircuit& straight() {
    static const OpenCircuit line = *OpenCircuit::through(
        std::array{Knot{StateOfCharge(0.0), 11.7 * volt}, Knot{StateOfCharge(1.0), 12.9 * volt}});
    return line;
}

PackGroup straight_pack(double ampere_hours, double milliohms, double fill) {
    PackGroup group{.setup = {.kinetics = {.total = ampere_hours * ampere_hour},
                              .open_circuit = &straight(),
                              .inner = 1e-3 * milliohms * ohm}};
    group.at_start = rested(group.setup.kinetics, StateOfCharge(fill));
    return group;
}

// 100 Ah full behind 6.5 mohm, 50 Ah half full behind 13 mohm: 0.6 V over 19.5 mohm is 30.7692 A,
// dying away with 19.5 mohm / (0.012 + 0.024) V/Ah = 0.541667 h; 16.6667 Ah move, to 12.70 V.
constexpr double first_current = 30.7692308;
constexpr double decay_hours = 0.5416667;

TEST(battery_bus, two_packs_equalise_as_the_closed_form_says_for_any_cap_of_the_step) {
    for (const double cap : {1.0, 10.0, 60.0, 240.0, 600.0}) {
        Bank bank(std::array{straight_pack(100.0, 6.5, 1.0), straight_pack(50.0, 13.0, 0.5)}, {});
        const double total = (bank.removed() / ampere_hour);
        double furthest = 0.0;
        for (double passed = 0.0; passed < 2.0 * 3600.0;) {
            (void)bank.advance({}, Power{}, cap * second);
            passed += cap;
            (void)bank.operating_point(Power{});
            const double expected = first_current * std::exp(-passed / 3600.0 / decay_hours);
            furthest = std::max(furthest, std::abs(bank.current_of(0) / ampere / expected - 1.0));
            EXPECT_NEAR(bank.removed() / ampere_hour, total, 1e-12 * 150.0);
            if (std::abs(passed - 1800.0) < 0.5) {
                EXPECT_NEAR(bank.wells(0).removed / ampere_hour, 10.0451, 0.005 * 10.0451);
            }
        }
        EXPECT_LT(furthest, 0.005) << "at a cap of " << cap << " s";
        std::printf("cap %5.0f s: current within %.4f %% over two hours\n", cap, 100.0 * furthest);
    }
}

TEST(battery_bus, equalising_ends_where_both_stand_level) {
    Bank bank(std::array{straight_pack(100.0, 6.5, 1.0), straight_pack(50.0, 13.0, 0.5)}, {});
    (void)bank.operating_point(Power{});
    EXPECT_NEAR(bank.current_of(0) / ampere, 30.7692, printed_4);
    (void)bank.advance({}, Power{}, 24.0 * hour);
    // within 1e-4 of what moves: the last millivolts are followed in long steps
    EXPECT_NEAR(bank.wells(0).removed / ampere_hour, 16.6667, 1e-4 * 16.6667);
    EXPECT_NEAR(bank.operating_point(Power{}).voltage / volt, 12.70, 1e-4);
}

// Both full, 45 A: resistances in inverse ratio of the capacities share 30 and 15 A at all times.
TEST(battery_bus, packs_whose_resistance_goes_with_their_size_share_by_size) {
    Bank bank(std::array{straight_pack(100.0, 6.5, 1.0), straight_pack(50.0, 13.0, 1.0)}, {});
    for (int i = 0; i < 20; ++i) {
        const auto point = bank.operating_point(Power{});
        const auto at_45 = 45.0 * (point.voltage / volt - 45.0 * 13.0e-3 / 3.0);
        (void)bank.operating_point(at_45 * watt);
        EXPECT_NEAR(bank.current_of(0) / ampere, 30.0, 1e-3);
        EXPECT_NEAR(bank.current_of(1) / ampere, 15.0, 1e-3);
        (void)bank.advance({}, at_45 * watt, 6.0 * minute);
    }
}

// 20 mohm before the large pack: I1(0) = 45 x 6.5/26.5 = 11.0377 A, rising to 30 A with
// 26.5 mohm/(0.012 + 0.024) = 0.7361 h: 25.1258 A after an hour. Current is held by many short
// steps of power.
TEST(battery_bus, a_bad_lead_only_delays_the_larger_pack) {
    Bank bank(std::array{straight_pack(100.0, 20.0, 1.0), straight_pack(50.0, 6.5, 1.0)}, {});
    const auto power_for_45 = [&] {
        double power = 560.0;
        for (int i = 0; i < 20; ++i)
            power *= 45.0 / (bank.operating_point(power * watt).current / ampere);
        return power * watt;
    };
    (void)bank.operating_point(power_for_45());
    EXPECT_NEAR(bank.current_of(0) / ampere, 11.0377, printed_4);
    for (int i = 0; i < 720; ++i)
        (void)bank.advance({}, power_for_45(), 5.0 * second);
    (void)bank.operating_point(power_for_45());
    EXPECT_NEAR(bank.current_of(0) / ampere, 25.1258, 2e-3);
}

}  // namespace
