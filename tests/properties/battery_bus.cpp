// What holds for every bank of packs that differ, of 1 to 16 packs, at one moment.
#include <cmath>
#include <random>

#include "battery/bus.hpp"
#include "battery/bus_solver.hpp"

namespace {

using namespace battery;
using namespace units;

constexpr int banks = 10'000;

class Made {
  public:
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits_);
    }
    double spread(double low, double high) {
        return std::exp(between(std::log(low), std::log(high)));
    }
    bool one_in(int n) { return std::uniform_int_distribution<int>(1, n)(bits_) == 1; }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(bits_); }

    PackOnBus pack() {
        PackOnBus made{.rested = between(10.5, 14.5) * volt,
                       .giving = spread(1e-3, 0.2) * ohm,
                       .gives = !one_in(8),
                       .takes = !one_in(4)};
        made.taking = one_in(3) ? made.giving * between(0.8, 1.6) : made.giving;
        return made;
    }
    std::vector<PackOnBus> bank() {
        std::vector<PackOnBus> packs;
        for (int i = whole(1, 16); i > 0; --i)
            packs.push_back(pack());
        packs.front().gives = true;
        return packs;
    }

  private:
    std::mt19937_64 bits_{20261125};
};

double sum_of(const SharedOut& shared) {
    double sum = 0.0;
    for (const Current& current : shared.currents)
        sum += current / ampere;
    return sum;
}

// Current out of one pack at this voltage, straight from Ohm's law.
double current_at(const PackOnBus& pack, double node) {
    const double apart = pack.rested / volt - node;
    if (apart >= 0.0) return pack.gives ? apart / (pack.giving / ohm).value() : 0.0;
    return pack.takes ? apart / (pack.taking / ohm).value() : 0.0;
}

// The highest voltage at which the packs give this power, by bisection from the top; nothing when
// even the best of many voltages gives less.
double bisected(const std::vector<PackOnBus>& packs, double power, double shared) {
    const auto given = [&](double node) {
        double current = 0.0;
        for (const auto& pack : packs)
            current += current_at(pack, node);
        return (node - shared * current) * current;
    };
    double high = 15.0;
    double low = high;
    while (low > 0.0 && given(low) < power)
        low -= 0.002;
    if (low <= 0.0) return -1.0;
    high = low + 0.002;
    for (int i = 0; i < 100; ++i) {
        const double middle = 0.5 * (low + high);
        (given(middle) < power ? high : low) = middle;
    }
    return low;
}

TEST(battery_bus_properties, currents_add_up_and_the_bus_stands_where_bisection_finds_it) {
    Made made;
    int delivered = 0;
    double furthest = 0.0;
    for (int i = 0; i < banks; ++i) {
        const auto packs = made.bank();
        const double shared = made.one_in(2) ? 0.0 : made.spread(1e-4, 5e-3);
        const double power = made.spread(1.0, 20'000.0);
        const auto found = shared_at_power(packs, power * watt, shared * ohm);
        const double node = bisected(packs, power, shared);
        if (!found.possible) {
            ASSERT_LT(node, 0.0) << i;
            ASSERT_GE(power, found.at_most / watt);
            continue;
        }
        ++delivered;
        const double current = sum_of(found);
        ASSERT_NEAR(current * (found.voltage / volt), power, 1e-9 * std::max(1.0, power)) << i;
        const double there = found.voltage / volt + shared * current;
        furthest = std::max(furthest, std::abs(there - node));
        ASSERT_NEAR(there, node, 1e-9) << i;
        for (std::size_t j = 0; j < packs.size(); ++j)
            ASSERT_NEAR(found.currents[j] / ampere, current_at(packs[j], there),
                        1e-9 * (1.0 + std::abs(found.currents[j] / ampere)));
    }
    EXPECT_GT(delivered, banks / 2);
    std::printf("%d of %d could be delivered; bus within %.1e V\n", delivered, banks, furthest);
}

TEST(battery_bus_properties, without_a_load_what_some_give_others_take) {
    Made made;
    for (int i = 0; i < banks; ++i) {
        const auto found = shared_at_power(made.bank(), Power{});
        double largest = 1.0;
        for (const Current& current : found.currents)
            largest = std::max(largest, std::abs(current / ampere));
        ASSERT_NEAR(sum_of(found), 0.0, 1e-9 * largest) << i;
    }
}

TEST(battery_bus_properties, another_pack_never_lowers_the_bus_under_load) {
    Made made;
    for (int i = 0; i < banks; ++i) {
        auto packs = made.bank();
        const double power = made.spread(10.0, 3000.0);
        const auto fewer = shared_at_power(packs, power * watt);
        packs.push_back(made.pack());
        if (packs.back().rested < fewer.voltage) packs.back().rested = fewer.voltage;
        const auto more = shared_at_power(packs, power * watt);
        if (!fewer.possible) continue;
        ASSERT_TRUE(more.possible) << i;
        ASSERT_GE(more.voltage / volt, fewer.voltage / volt - 1e-9) << i;
    }
}

TEST(battery_bus_properties, alike_packs_share_alike_and_open_ones_carry_exactly_nothing) {
    Made made;
    for (int i = 0; i < banks; ++i) {
        auto pack = made.pack();
        pack.gives = pack.takes = true;
        std::vector<PackOnBus> packs(static_cast<std::size_t>(made.whole(1, 16)), pack);
        packs.push_back({.rested = made.between(10.0, 15.0) * volt,
                         .giving = 0.01 * ohm,
                         .taking = 0.01 * ohm,
                         .gives = false,
                         .takes = false});
        const auto found = shared_at_power(packs, made.spread(1.0, 500.0) * watt);
        for (std::size_t j = 0; j + 1 < packs.size(); ++j)
            ASSERT_EQ(found.currents[j], found.currents[0]);
        ASSERT_EQ(found.currents.back(), Current{});
    }
}

TEST(battery_bus_properties, the_order_of_the_packs_is_of_no_account) {
    Made made;
    for (int i = 0; i < banks; ++i) {
        auto packs = made.bank();
        const double power = made.spread(1.0, 3000.0);
        const auto one = shared_at_power(packs, power * watt);
        std::reverse(packs.begin(), packs.end());
        const auto other = shared_at_power(packs, power * watt);
        ASSERT_EQ(one.possible, other.possible);
        ASSERT_NEAR(one.voltage / volt, other.voltage / volt, 1e-9) << i;
    }
}

}  // namespace
