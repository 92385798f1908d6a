// However a pack or a bank is used, a call of the clock takes few substeps, so that it always ends:
// small powers, at which wells turn round slowly and may do so at a knot, and large ones, at which
// the voltage gives way. CANDLEMARK_STEPS=100000000 draws as many steps of packs, and a hundredth
// of that of banks; CANDLEMARK_DRAWS=7 draws others.
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <random>
#include <vector>

#include <fmt/format.h>

#include "battery/advance.hpp"
#include "battery/bank.hpp"
#include "battery/cell/chemistry.hpp"

namespace {

using namespace battery;
using namespace units;

constexpr int most_substeps = 1000;

long steps_to_draw() {
    const char* wished = std::getenv("CANDLEMARK_STEPS");
    return wished != nullptr ? std::atol(wished) : 200'000;
}

unsigned which_draws() {
    const char* wished = std::getenv("CANDLEMARK_DRAWS");
    return wished != nullptr ? static_cast<unsigned>(std::strtoul(wished, nullptr, 10)) : 1;
}

class Drawn {
  public:
    explicit Drawn(unsigned seed) : bits_(seed) {}
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits_);
    }
    double spread(double low, double high) {
        return std::exp(between(std::log(low), std::log(high)));
    }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(bits_); }
    bool one_in(int n) { return whole(1, n) == 1; }

    Arrangement pack(scenario::Chemistry of) {
        const auto& defaults = defaults_of(of);
        const double hours = spread(20.0, 300.0);
        Arrangement made{.kinetics = {.total = hours * ampere_hour,
                                      .available = defaults.available.value,
                                      .rate = defaults.rate.value},
                         .open_circuit = &open_circuit_of(of),
                         .inner = between(0.3, 2.0) / hours * ohm,
                         .path = between(0.0, 0.01) * ohm,
                         .charging = {.largest = between(0.05, 0.6) * hours * ampere,
                                      .absorption = between(14.1, 14.8) * volt,
                                      .coulombic = Efficiency(0.99)}};
        if (of != scenario::Chemistry::lifepo4)
            made.charging.coulombic = lead_acid_efficiency(made.kinetics, made.kinetics.total);
        return made;
    }
    scenario::Chemistry chemistry() {
        constexpr scenario::Chemistry all[] = {scenario::Chemistry::flooded,
                                               scenario::Chemistry::agm, scenario::Chemistry::gel,
                                               scenario::Chemistry::lifepo4};
        return all[whole(0, 3)];
    }
    double power() {
        const double size = one_in(2) ? spread(0.1, 5.0) : spread(100.0, 3000.0);
        return one_in(2) ? size : -size;
    }
    double time() { return one_in(2) ? between(20.0, 21600.0) : spread(1.0, 21600.0); }
    // A state that some use of the pack leads to.
    Wells used(const Kinetics& kinetics) {
        const Wells start = rested(kinetics, StateOfCharge(between(0.0, 1.0)));
        const Duration spell = spread(1.0, 1e5) * second;
        const Current current = one_in(2)
                                    ? between(0.0, 1.0) * largest_discharge(kinetics, start, spell)
                                    : -between(0.0, 1.0) * largest_charge(kinetics, start, spell);
        return after(kinetics, start, current, spell);
    }
    // The available well stands at a knot, to rounding, and turns round almost there.
    Wells turning_at_knot(const Prepared& pack, double power) {
        const int last = pack.open_circuit->pieces() - 1;
        const Piece& piece = pack.open_circuit->piece(whole(0, last - 1));
        const double volts = piece.at_zero + piece.slope * piece.high;
        const double current = power / volts;
        const double nearly = 1.0 + (one_in(2) ? 1.0 : -1.0) * spread(1e-12, 0.1);
        const double head = nearly * current * (1.0 + pack.bound_gain) / (pack.bound * pack.rate);
        const double hair = (one_in(2) ? 1.0 : -1.0) * spread(1e-17, 1e-6);
        const double removed = (1.0 - piece.high + hair) * pack.total - pack.bound * head;
        return {.removed = removed * coulomb, .head_difference = head * coulomb};
    }

  private:
    std::mt19937_64 bits_;
};

TEST(battery_substeps, a_step_of_a_pack_takes_few) {
    Drawn from(which_draws());
    struct Ready {
        Kinetics kinetics;
        Prepared pack;
    };
    std::vector<Ready> packs;
    for (int i = 0; i < 400; ++i) {
        const Arrangement made = from.pack(from.chemistry());
        packs.push_back({made.kinetics, prepare(made)});
    }
    int most = 0;
    const long steps = steps_to_draw();
    for (long step = 0; step < steps; ++step) {
        const Ready& one = packs[static_cast<std::size_t>(from.whole(0, 399))];
        const double power = from.power();
        const bool turning = one.pack.bound > 0.0 && std::abs(power) < 10.0 && from.one_in(2);
        const Wells wells =
            turning ? from.turning_at_knot(one.pack, power) : from.used(one.kinetics);
        const double time = from.time();
        const auto course = advance_detail::course_of(
            one.pack, AtPower{power},
            state_of(one.pack, wells.removed / coulomb, wells.head_difference / coulomb), time);
        most = std::max(most, course.substeps);
        ASSERT_LE(course.substeps, most_substeps)
            << fmt::format("C {} C, c {}, k {}/s, {} ohm, removed {} C, head {} C, {} W, {} s",
                           one.pack.total, one.pack.width, one.pack.rate, one.pack.resistance,
                           wells.removed / coulomb, wells.head_difference / coulomb, power, time);
    }
    std::printf("most substeps of %ld steps of a pack: %d\n", steps, most);
}

TEST(battery_substeps, a_step_of_a_bank_takes_few) {
    Drawn from(which_draws() + 1);
    int most = 0;
    const long steps = std::max(2000L, steps_to_draw() / 100);
    for (long step = 0; step < steps;) {
        const auto of = from.chemistry();
        std::vector<PackGroup> groups;
        for (int i = from.whole(1, 8); i > 0; --i) {
            PackGroup group{.setup = from.pack(of), .count = from.whole(1, 3)};
            const double fill = from.one_in(2) ? from.between(0.05, 1.0) : 0.1 * from.whole(1, 10);
            group.at_start = rested(group.setup.kinetics, StateOfCharge(fill));
            groups.push_back(group);
        }
        Bank bank(groups, from.one_in(2) ? Resistance{} : from.spread(1e-4, 3e-3) * ohm);
        for (int leg = 0; leg < 6; ++leg, ++step) {
            const double power = from.one_in(6) ? 0.0 : from.power();
            const auto result = bank.advance({}, power * watt, from.time() * second);
            most = std::max(most, result.substeps);
            ASSERT_LE(result.substeps, most_substeps) << step;
            if (result.ending != Ending::completed)
                bank.let(result.pack, false, result.ending != Ending::current_limit);
        }
    }
    std::printf("most substeps of %ld steps of a bank: %d\n", steps, most);
}

}  // namespace
