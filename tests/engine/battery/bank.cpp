// Packs in parallel moved on in time, against closed forms worked out apart from this program: the
// exponential of two capacitors joined by a resistance. Printed digits are met.
#include "battery/bank.hpp"

#include <array>
#include <cmath>

namespace {

using namespace units;
using namespace battery;

constexpr double printed_4 = 5e-5;  // four decimals are printed

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

// Two wells, with a knot at four fifths of the charge: 12.0 V empty, 12.7 V there, 12.9 V full.
const OpenCircuit& bent() {
    static const OpenCircuit line = *OpenCircuit::through(
        std::array{Knot{StateOfCharge(0.0), 12.0 * volt}, Knot{StateOfCharge(0.8), 12.7 * volt},
                   Knot{StateOfCharge(1.0), 12.9 * volt}});
    return line;
}

// The integral of that voltage over the fill, by hand.
double below(double fill) {
    return fill <= 0.8 ? 12.0 * fill + 0.4375 * fill * fill
                       : 9.88 + 12.7 * (fill - 0.8) + 0.5 * (fill - 0.8) * (fill - 0.8);
}

// 100 Ah full behind 6.5 mohm, 50 Ah half full behind 13 mohm: 0.6 V over 19.5 mohm is 30.7692 A,
// dying away with 19.5 mohm / (0.012 + 0.024) V/Ah = 0.541667 h; 16.6667 Ah move, to 12.70 V.
constexpr double first_current = 30.7692308;
constexpr double decay_hours = 0.5416667;

TEST(bank, two_packs_equalise_as_the_closed_form_says_for_any_cap_of_the_step) {
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

// The available wells rise from 0.7922 to 0.8016, over the knot, on a curve that is almost level
// where it crosses: what falls from well to well is what is no longer stored.
TEST(bank, wells_that_even_out_over_hours_lose_what_they_no_longer_store) {
    constexpr double width = 0.465;
    constexpr double total = 40.0 * 3600.0;
    const Kinetics kinetics{
        .total = 40.0 * ampere_hour, .available = Share(width), .rate = 2.4e-4 / second};
    PackGroup group{.setup = {.kinetics = kinetics, .open_circuit = &bent(), .inner = 0.009 * ohm}};
    group.at_start = {.removed = 0.1984 * 40.0 * ampere_hour,
                      .head_difference = 0.0176 * 40.0 * ampere_hour};
    PackGroup larger = group;
    larger.setup.kinetics.total = 100.0 * ampere_hour;
    larger.at_start = {.removed = 2.5 * group.at_start.removed,
                       .head_difference = 2.5 * group.at_start.head_difference};
    const auto stored = [&](const Wells& wells) {
        const double even = 1.0 - wells.removed / coulomb / total;
        const double head = wells.head_difference / coulomb / total;
        const double available = even - (1.0 - width) * head;
        const double bound = even + width * head;
        return total * (width * below(available) + (1.0 - width) * below(bound));
    };
    Bank bank(std::array{group, larger}, {});
    const double before = stored(bank.wells(0));
    double lost = 0.0;
    for (double passed = 0.0; passed < 12.0 * 3600.0;) {
        const BankAdvanced went = bank.advance({}, Power{}, 12.0 * hour - passed * second);
        lost += went.energy.between_wells / joule;
        passed += went.time / second;
    }
    EXPECT_GT(lost, 1.0);
    EXPECT_NEAR(lost / 3.5, before - stored(bank.wells(0)), 1e-6);
}

TEST(bank, equalising_ends_where_both_stand_level) {
    Bank bank(std::array{straight_pack(100.0, 6.5, 1.0), straight_pack(50.0, 13.0, 0.5)}, {});
    (void)bank.operating_point(Power{});
    EXPECT_NEAR(bank.current_of(0) / ampere, 30.7692, printed_4);
    (void)bank.advance({}, Power{}, 24.0 * hour);
    // within 1e-4 of what moves: the last millivolts are followed in long steps
    EXPECT_NEAR(bank.wells(0).removed / ampere_hour, 16.6667, 1e-4 * 16.6667);
    EXPECT_NEAR(bank.operating_point(Power{}).voltage / volt, 12.70, 1e-4);
}

// Both full, 45 A: resistances in inverse ratio of the capacities share 30 and 15 A at all times.
TEST(bank, packs_whose_resistance_goes_with_their_size_share_by_size) {
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
TEST(bank, a_bad_lead_only_delays_the_larger_pack) {
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
