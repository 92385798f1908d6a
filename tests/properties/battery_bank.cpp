// What holds for every bank of packs that differ as time goes on: chemistries, sizes, ages, charges
// and leads are drawn, 1 to 16 packs, and use of all kinds.
#include <cmath>
#include <random>

#include "battery/bank.hpp"
#include "battery/cell/chemistry.hpp"
#include "battery/cell/temperature.hpp"

namespace {

using namespace battery;
using namespace units;

constexpr int banks = 10'000;

class Made {
  public:
    explicit Made(unsigned seed) : bits_(seed) {}
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits_);
    }
    double spread(double low, double high) {
        return std::exp(between(std::log(low), std::log(high)));
    }
    bool one_in(int n) { return std::uniform_int_distribution<int>(1, n)(bits_) == 1; }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(bits_); }
    scenario::Chemistry chemistry() {
        constexpr scenario::Chemistry all[] = {scenario::Chemistry::flooded,
                                               scenario::Chemistry::agm, scenario::Chemistry::gel,
                                               scenario::Chemistry::lifepo4};
        return all[whole(0, 3)];
    }
    // One number, the law of lead-acid, or two pieces that meet anywhere.
    ChargeEfficiency efficiency(const Kinetics& kinetics) {
        if (one_in(3)) return Efficiency(between(0.8, 1.0));
        if (one_in(2)) return lead_acid_efficiency(kinetics, kinetics.total);
        return ChargeEfficiency(
            std::array{StateOfCharge(between(0.01, 0.999))},
            std::array{Efficiency(between(0.2, 1.0)), Efficiency(between(0.2, 1.0))});
    }
    // From bits of its own: the other cases stay what they were.
    ChargingResistance resistance(double hours) {
        Made apart(resisting_);
        ChargingResistance made{.when_empty = apart.spread(0.5, 10.0) / hours * ohm,
                                .rise = apart.between(0.0, 1.0),
                                .rated = apart.between(0.85, 1.0) * hours * ampere_hour,
                                .knee = apart.spread(0.02, 1.0) * hours * ampere,
                                .beyond = apart.between(0.1, 1.0)};
        if (apart.one_in(2)) made = {};
        resisting_ = apart.bits_();
        return made;
    }
    PackGroup group(scenario::Chemistry of) {
        const auto& defaults = defaults_of(of);
        const double hours = spread(20.0, 300.0);
        PackGroup made{.setup = {.kinetics = {.total = hours * ampere_hour,
                                              .available = defaults.available.value,
                                              .rate = defaults.rate.value},
                                 .open_circuit = &open_circuit_of(of),
                                 .inner = between(0.3, 2.0) / hours * ohm,
                                 .path = between(0.0, 0.01) * ohm,
                                 .charging = {.allowed = !one_in(8),
                                              .largest = between(0.05, 0.6) * hours * ampere,
                                              .absorption = between(14.1, 14.8) * volt}},
                       .count = whole(1, 3)};
        made.setup.charging.coulombic = efficiency(made.setup.kinetics);
        made.setup.charging.resistance = resistance(hours);
        if (one_in(2)) made.setup.reachable = Share(between(0.6, 1.0));
        if (one_in(3)) made.setup.stops.pack_cut_off = between(9.0, 12.0) * volt;
        if (one_in(3)) made.setup.stops.current_above = between(0.1, 2.0) * hours * ampere;
        made.at_start = rested(made.setup.kinetics, StateOfCharge(between(0.05, 1.0)));
        return made;
    }
    std::vector<PackGroup> bank() {
        const auto of = chemistry();
        std::vector<PackGroup> groups;
        for (int i = whole(1, 16); i > 0; --i)
            groups.push_back(group(of));
        return groups;
    }

  private:
    std::mt19937_64 bits_;
    std::uint64_t resisting_ = 20261128;
};

double total(const EnergyFlow& flow) {
    return (flow.delivered - flow.accepted + flow.in_resistance + flow.between_wells +
            flow.in_charging) /
           joule;
}

TEST(battery_bank_properties, energy_is_kept_to_rounding) {
    Made made(1);
    double worst = 0.0;
    for (int i = 0; i < banks; ++i) {
        const auto groups = made.bank();
        Bank bank(groups, made.one_in(2) ? Resistance{} : made.spread(1e-4, 3e-3) * ohm);
        const double full = bank.stored() / joule + 1.0;
        for (int leg = 0; leg < 4; ++leg) {
            const Energy before = bank.stored();
            const double power = made.one_in(4) ? 0.0 : made.between(-600.0, 900.0);
            const Duration time = made.spread(1.0, 40'000.0) * second;
            BankStops stops;
            if (made.one_in(3)) stops.cut_off = made.between(10.0, 12.5) * volt;
            if (made.one_in(3)) stops.voltage_above = made.between(12.0, 14.0) * volt;
            if (made.one_in(4)) stops.filled_to = made.between(0.0, 1.0) * bank.removed();
            if (made.one_in(4)) stops.removed_below = made.between(0.0, 1.0) * bank.removed();
            if (made.one_in(4)) stops.removed_above = made.between(1.0, 2.0) * bank.removed();
            const auto step = bank.advance(stops, power * watt, time);
            const double gone = (before - bank.stored()) / joule;
            worst = std::max(worst, std::abs(gone - total(step.energy)) / full);
            ASSERT_LT(std::abs(gone - total(step.energy)) / full, 1e-10)
                << "bank " << i << " ending " << static_cast<int>(step.ending) << " after "
                << step.time / second << ", " << power << " W for " << time / second << " s";
            ASSERT_LE(step.time, time);
            if (step.ending == Ending::completed) {
                ASSERT_EQ(step.time, time);
                const double taken = std::max(0.0, power) * (time / second);
                ASSERT_NEAR(step.energy.delivered / joule, taken, 1e-9 * (1.0 + taken));
            } else if (step.ending == Ending::current_limit) {
                bank.let(step.pack, false, false);
            } else {
                bank.let(step.pack, false, true);
            }
            for (std::size_t g = 0; g < bank.groups(); ++g)
                ASSERT_TRUE(std::isfinite(bank.wells(g).removed / coulomb));
        }
    }
    std::printf("largest unexplained part of the store: %.1e\n", worst);
}

TEST(battery_bank_properties, equalising_keeps_charge) {
    Made made(2);
    double worst = 0.0;
    for (int i = 0; i < banks; ++i) {
        auto groups = made.bank();
        for (auto& group : groups)
            group.setup.charging.coulombic = Efficiency(1.0);
        Bank bank(groups, {});
        double size = 0.0;
        for (const auto& group : groups)
            size += group.count * (group.setup.kinetics.total / coulomb).value();
        const double before = bank.removed() / coulomb;
        (void)bank.advance({}, Power{}, made.spread(1.0, 100'000.0) * second);
        worst = std::max(worst, std::abs(bank.removed() / coulomb - before) / size);
        ASSERT_NEAR(bank.removed() / coulomb, before, 1e-12 * size) << i;
    }
    std::printf("largest change of charge: %.1e of what the bank holds\n", worst);
}

// Lithium below 0 degC takes nothing, whatever stands beside it and whatever is offered.
TEST(battery_bank_properties, a_pack_that_must_not_be_charged_never_is) {
    Made made(3);
    for (int i = 0; i < banks; ++i) {
        std::vector<PackGroup> groups;
        for (int n = made.whole(1, 16); n > 0; --n)
            groups.push_back(made.group(scenario::Chemistry::lifepo4));
        std::vector<bool> cold;
        for (auto& group : groups) {
            cold.push_back(made.one_in(2));
            group.setup.charging.allowed = !cold.back();
        }
        Bank bank(groups, {});
        for (int leg = 0; leg < 3; ++leg) {
            std::vector<Wells> before;
            for (std::size_t g = 0; g < groups.size(); ++g)
                before.push_back(bank.wells(g));
            const auto step = bank.advance({}, made.between(-500.0, 200.0) * watt,
                                           made.spread(10.0, 20'000.0) * second);
            if (step.ending != Ending::completed) bank.let(step.pack, false, true);
            for (std::size_t g = 0; g < groups.size(); ++g)
                if (cold[g]) {
                    ASSERT_GE(bank.wells(g).removed, before[g].removed) << i;
                }
        }
    }
}

TEST(battery_bank_properties, a_temperature_neither_makes_nor_destroys_charge) {
    Made made(4);
    for (int i = 0; i < 1000; ++i) {
        const auto of = made.chemistry();
        std::vector<PackGroup> groups{made.group(of), made.group(of)};
        Bank bank(groups, {});
        (void)bank.advance({}, 50.0 * watt, 1800.0 * second);
        const auto before = bank.wells(0);
        const Energy stored = bank.stored();
        auto setup = groups[0].setup;
        const auto degrees = celsius(made.between(-20.0, 50.0));
        setup.reachable = Share(capacity_factor(of, degrees).factor);
        setup.inner = setup.inner * resistance_factor(of, degrees).factor;
        bank.refit(0, setup);
        ASSERT_EQ(bank.wells(0), before);
        ASSERT_EQ(bank.stored(), stored);
    }
}

// The bank meets the end of a piece by its own code. Packs of one well, so that it does not fill a
// well evenly where a pack alone fills and then holds.
TEST(battery_bank_properties, charging_changes_its_efficiency_where_a_pack_alone_does) {
    Made made(6);
    int passed = 0;
    for (int i = 0; i < 2000; ++i) {
        auto group = made.group(scenario::Chemistry::lifepo4);
        const StateOfCharge edge(made.between(0.3, 0.8));
        const std::array values{Efficiency(made.between(0.2, 1.0)),
                                Efficiency(made.between(0.2, 1.0))};
        group.setup.charging.coulombic = ChargeEfficiency(std::array{edge}, values);
        group.setup.charging.allowed = true;
        group.setup.charging.largest.reset();
        group.setup.charging.resistance = {};
        group.at_start =
            rested(group.setup.kinetics, StateOfCharge(edge.value() - made.between(0.01, 0.2)));
        Bank bank(std::vector<PackGroup>{group, group}, {});
        const double ampere_hours = group.setup.kinetics.total / ampere_hour;
        const Power power = -made.between(0.1, 3.0) * ampere_hours * watt;
        const Charge to_edge =
            group.at_start.removed - edge.complement().value() * group.setup.kinetics.total;
        const Duration time = made.between(0.5, 3.0) * to_edge * 13.0 * volt / -power;
        const auto alone = advance(prepare(group.setup), group.at_start, power, time);
        const auto together =
            bank.advance({}, 2.0 * static_cast<double>(group.count) * power, time);
        ASSERT_EQ(together.time, alone.time) << i;
        for (const std::size_t one : {0, 1})
            ASSERT_NEAR(
                (bank.wells(one).removed - alone.wells.removed) / group.setup.kinetics.total, 0.0,
                1e-5)
                << i;
        const double packs = 2.0 * group.count;
        ASSERT_NEAR(together.energy.in_charging / (packs * joule), alone.energy.in_charging / joule,
                    // near full a charging curve of its own heats, by the mean of each substep
                    3e-4 * (alone.energy.in_charging / joule) + 1.0)
            << i;
        const Charge filled = group.at_start.removed - alone.wells.removed;
        passed += filled > to_edge ? 1 : 0;
    }
    EXPECT_GT(passed, 200);
    EXPECT_LT(passed, 1800);
}

// Lumped or one by one, alike packs do the same, and both agree with the single pack's own clock.
TEST(battery_bank_properties, alike_packs_do_as_one_of_them_does) {
    Made made(5);
    for (int i = 0; i < 2000; ++i) {
        auto group = made.group(made.chemistry());
        group.count = 1;
        const int count = made.whole(2, 6);
        Bank apart(std::vector<PackGroup>(static_cast<std::size_t>(count), group), {});
        auto lump = group;
        lump.count = count;
        Bank lumped(std::vector<PackGroup>{lump}, {});
        Wells single = group.at_start;
        const auto prepared = prepare(group.setup);
        for (int leg = 0; leg < 4; ++leg) {
            const Power power = made.between(-40.0, 60.0) * watt;
            const Duration time = made.spread(10.0, 10'000.0) * second;
            const auto one = apart.advance({}, static_cast<double>(count) * power, time);
            const auto other = lumped.advance({}, static_cast<double>(count) * power, time);
            const auto alone = advance(prepared, single, power, time);
            single = alone.wells;
            ASSERT_NEAR(one.time / second, other.time / second, 0.1) << i;
            if (one.ending != Ending::completed || alone.ending != Ending::completed) break;
            const double hours = group.setup.kinetics.total / coulomb;
            ASSERT_NEAR(
                apart.wells(0).removed / coulomb, lumped.wells(0).removed / coulomb,
                // they meet knots one after another, so in other substeps, over each of
                // which the charging resistance is one number
                (group.setup.charging.resistance.when_empty > Resistance{} ? 5e-4 : 1e-5) * hours)
                << i;
            // a bank fills a well evenly over its substep, where the single pack fills and then
            // holds
            ASSERT_NEAR(lumped.wells(0).removed / coulomb, single.removed / coulomb, 1e-3 * hours)
                << i << " leg " << leg << " " << power / watt << " W";
        }
    }
}

}  // namespace
