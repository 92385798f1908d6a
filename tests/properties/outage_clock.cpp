// What holds for every outage: the ledger closes, more packs never shorten it, more loads never
// lengthen it. Units, demands and skies are generated, sensible and silly ones alike.
#include <algorithm>
#include <cstdio>

#include "battery/cell/chemistry.hpp"
#include "outage/clock/clock.hpp"
#include "scenario/pack.hpp"
#include "support/holds.hpp"

namespace {

using namespace units;

struct Generated {
    outage::Unit unit;
    std::vector<demand::DemandStep> demand;
    std::vector<outage::SunChange> sun;
    Duration lasts{};
};

double between(double low, double high) {
    return low + (high - low) * (*rc::gen::inRange(0, 1'000'001) / 1e6);
}

bool once_in(int times) {
    return *rc::gen::inRange(0, times) == 0;
}

outage::Bank any_bank(scenario::Chemistry chemistry) {
    const auto& defaults = battery::defaults_of(chemistry);
    const double hours = between(20.0, 300.0);
    const bool one_well = !(defaults.available.value.value() < 1.0);
    outage::Bank bank;
    bank.setup.kinetics = {.total = hours * (one_well ? 1.0 : 1.1) * ampere_hour,
                           .available = defaults.available.value,
                           .rate = defaults.rate.value};
    bank.setup.open_circuit = &battery::open_circuit_of(chemistry);
    bank.setup.inner = between(0.2, 1.5) / hours * ohm;
    bank.setup.path = between(0.0, 0.004) * ohm;
    bank.setup.reachable = Share(between(0.6, 1.0));
    bank.setup.charging = {.allowed = !once_in(6),
                           .largest = between(0.05, 0.6) * hours * ampere,
                           .absorption = between(14.1, 14.8) * volt,
                           .coulombic = Efficiency(between(0.8, 1.0))};
    if (chemistry != scenario::Chemistry::lifepo4 && once_in(2))
        bank.setup.charging.coulombic =
            battery::lead_acid_efficiency(bank.setup.kinetics, bank.setup.kinetics.total);
    bank.count = *rc::gen::inRange(1, 9);
    bank.rated = hours * ampere_hour;
    bank.usable = between(0.3, 1.0) * hours * ampere_hour;
    if (!once_in(3)) bank.cut_off = between(8.0, 10.0) * volt;
    if (once_in(2)) bank.current_limit = between(0.3, 2.0) * hours * ampere;
    if (once_in(4)) bank.fuse = between(0.3, 2.0) * hours * ampere;
    // As makers state them, and as none would: longer for more.
    for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
        bank.pulse.push_back({.current = between(0.3, 4.0) * hours * ampere,
                              .lasts = std::pow(10.0, between(0.0, 4.0)) * second});
    if (once_in(2))
        bank.fuse_opens = {{1.0, std::nullopt, std::nullopt},
                           {1.35, between(50.0, 400.0) * second, 1800.0 * second},
                           {2.0, between(0.5, 10.0) * second, 15.0 * second}};
    bank.at_start = {.removed = (once_in(3) ? between(0.0, 0.9) : 0.0) * hours * ampere_hour};
    return bank;
}

outage::BankOfDay any_day_of(const outage::Bank& bank) {
    return {.inner = between(0.8, 3.0) * bank.setup.inner,
            .reachable = Share(between(0.5, 1.0)),
            .charging = {.allowed = !once_in(3),
                         .largest = between(0.1, 1.0) * *bank.setup.charging.largest,
                         .absorption = bank.setup.charging.absorption,
                         .coulombic = bank.setup.charging.coulombic},
            .current_limit = bank.current_limit,
            .pulse = bank.pulse};
}

// A third of the units get warmer and colder from day to day.
void change_by_day(outage::Unit& unit) {
    for (int day = 0; day < 8; ++day) {
        auto& made = unit.days.emplace_back();
        made.from = std::max(0.0, day - 0.75) * units::day;
        made.banks.push_back(any_day_of(unit.bank));
        for (const auto& other : unit.others)
            made.banks.push_back(any_day_of(other));
    }
}

// Half of the units have banks that differ, up to four of them.
outage::Unit any_unit() {
    const auto chemistry =
        *rc::gen::element(scenario::Chemistry::flooded, scenario::Chemistry::agm,
                          scenario::Chemistry::gel, scenario::Chemistry::lifepo4);
    outage::Unit unit{.bank = any_bank(chemistry)};
    if (once_in(2))
        for (int i = *rc::gen::inRange(1, 4); i > 0; --i)
            unit.others.push_back(any_bank(chemistry));
    if (once_in(2)) unit.main_path = between(0.0, 0.01) * ohm;
    if (!once_in(5))
        unit.inverter = inverter::Model{
            .continuous = 2500.0 * watt,
            .continuous_apparent = 2500.0 * volt_ampere,
            .losses = {.idle = between(5.0, 40.0) * watt,
                       .linear = between(0.0, 0.1),
                       .quadratic = between(0.0, 0.1),
                       .rating = 2500.0 * watt},
            .cutoff_voltage = between(10.0, 11.0) * volt,
            .restart_voltage = between(12.0, 12.8) * volt,
        };
    if (once_in(3)) change_by_day(unit);
    return unit;
}

Generated any_outage() {
    Generated generated{.unit = any_unit()};
    generated.lasts = between(0.5, 8.0) * day;
    const int steps = *rc::gen::inRange(1, 120);
    const double most = once_in(4) ? 2600.0 : 300.0;
    for (int i = 0; i < steps; ++i) {
        const double at = i == 0 ? 0.0 : between(0.0, 1.0);
        const Power ac = (once_in(3) ? 0.0 : between(0.0, most)) * watt;
        const Power direct = (once_in(3) ? 0.0 : between(0.0, 120.0)) * watt;
        generated.demand.push_back({.from = at * generated.lasts,
                                    .ac = ac,
                                    .ac_reactive = ReactivePower(between(0.0, 0.5) * ac),
                                    .direct = direct,
                                    .direct_useful = between(0.7, 1.0) * direct,
                                    .inverter_on = !once_in(5)});
    }
    std::sort(generated.demand.begin(), generated.demand.end(),
              [](const auto& a, const auto& b) { return a.from < b.from; });
    if (once_in(4)) return generated;
    for (double hours = 0.0; hours * hour < generated.lasts; hours += 1.0)
        generated.sun.push_back(
            {.from = hours * hour,
             .offered = std::max(0.0, std::sin(0.2618 * hours)) * between(0.0, 400.0) * watt});
    return generated;
}

outage::Course course_of(const Generated& generated) {
    return outage::run(generated.unit, generated.demand, generated.sun, generated.lasts, 6.0 * hour,
                       {.trace = false});
}

outage::Course course_with_events(const Generated& generated) {
    return outage::run(generated.unit, generated.demand, generated.sun, generated.lasts, 6.0 * hour,
                       {.trace = true, .after_failure = false});
}

// One of several packs left the others to go on.
bool one_opened(const outage::Course& course) {
    return std::ranges::any_of(course.events, [](const outage::Event& event) {
        return event.kind == outage::EventKind::one_empty ||
               event.kind == outage::EventKind::one_cut_off;
    });
}

TEST(outage_properties, the_ledger_closes_for_ten_thousand_outages) {
    double worst = 0.0;
    EXPECT_TRUE(tested::holds_for(10'000, [&worst] {
        const auto course = course_of(any_outage());
        worst = std::max(worst, course.ledger.relative_residual);
        RC_ASSERT(std::isfinite(course.ledger.relative_residual));
        RC_ASSERT(course.ledger.relative_residual < 1e-9);
        RC_ASSERT(std::isfinite(course.lasts / hour));
        RC_ASSERT(course.lasts >= Duration{});
    }));
    std::printf("largest relative residual: %.2e\n", worst);
}

void open_never(outage::Bank& bank) {
    bank.current_limit.reset();
    bank.pulse.clear();
    bank.fuse.reset();
}
void open_never(outage::Unit& unit) {
    open_never(unit.bank);
    for (auto& bank : unit.others)
        open_never(bank);
    for (auto& day : unit.days)
        for (auto& bank : day.banks) {
            bank.current_limit.reset();
            bank.pulse.clear();
        }
}

// Only while nothing opens on current: a cascade of protection is told by other tests.
TEST(outage_properties, more_packs_never_shorten_an_outage) {
    EXPECT_TRUE(tested::holds_for(10'000, [] {
        auto generated = any_outage();
        open_never(generated.unit);
        const auto few = course_of(generated);
        if (generated.unit.others.empty()) {
            ++generated.unit.bank.count;
        } else {  // an empty one would have to be charged by the others first
            generated.unit.others.push_back(generated.unit.bank);
            generated.unit.others.back().at_start = {};
            for (auto& day : generated.unit.days)
                day.banks.push_back(day.banks.front());
        }
        const auto more = course_of(generated);
        RC_ASSERT(more.lasts / second >= few.lasts / second - 1.0);
    }));
}

// One pack that nothing but its charge stops.
outage::Bank any_pack_without_protection(scenario::Chemistry chemistry) {
    auto bank = any_bank(chemistry);
    open_never(bank);
    bank.cut_off.reset();
    bank.count = 1;
    return bank;
}

// As much as empties these packs in an hour to two days, in a plain stretch without an inverter.
Generated constant_power_on(int packs, scenario::Chemistry chemistry) {
    Generated generated{.unit = {.bank = any_pack_without_protection(chemistry)}};
    while (static_cast<int>(generated.unit.others.size()) < packs - 1)
        generated.unit.others.push_back(any_pack_without_protection(chemistry));
    Charge all = generated.unit.bank.rated;
    for (const auto& bank : generated.unit.others)
        all += bank.rated;
    const Power power = all * (12.0 * volt) / (std::exp(between(0.0, std::log(48.0))) * hour);
    generated.lasts = 20.0 * day;  // longer than any lasts
    generated.demand = {{.from = {}, .direct = power, .direct_useful = power}};
    return generated;
}

// Its charge, age, size, lead and what it may be charged with are its own.
TEST(outage_properties, one_more_full_pack_never_shortens_a_constant_power) {
    double least = std::numeric_limits<double>::infinity();
    int delivered = 0;  // for some time, and then no more
    EXPECT_TRUE(tested::holds_for(2'000, [&] {
        const auto chemistry =
            *rc::gen::element(scenario::Chemistry::flooded, scenario::Chemistry::agm,
                              scenario::Chemistry::gel, scenario::Chemistry::lifepo4);
        auto generated = constant_power_on(*rc::gen::inRange(1, 17), chemistry);
        const auto few = course_of(generated);
        auto added = any_pack_without_protection(chemistry);
        added.at_start = {};
        generated.unit.others.push_back(added);
        const auto more = course_of(generated);
        if (few.lasts > 1.0 * minute && !few.survives) {
            ++delivered;
            least = std::min<double>(least, (more.lasts - few.lasts) / second);
        }
        RC_ASSERT(more.lasts / second >= few.lasts / second - 1.0);
    }));
    std::printf("least that a pack adds: %.3g s, of %d banks that ran out\n", least, delivered);
    EXPECT_GT(delivered, 1'900);  // or little was tried
}

TEST(outage_properties, more_load_never_lengthens_an_outage) {
    int held = 0;
    EXPECT_TRUE(tested::holds_for(10'000, [&held] {
        auto generated = any_outage();
        // where one opens and others go on, which opens first decides
        if (!generated.unit.others.empty()) open_never(generated.unit);
        const auto light = course_with_events(generated);
        for (auto& step : generated.demand) {
            const Power more = between(0.0, 60.0) * watt;
            step.direct += more;
            step.direct_useful += more;
        }
        const auto heavy = course_with_events(generated);
        // Where one of several opens, empty, and the others go on, the order in which they open
        // decides how much charge is left in those that have: then a heavier load may last a little
        // longer, and nothing is held.
        if (one_opened(light) || one_opened(heavy)) return;
        ++held;
        RC_ASSERT(heavy.lasts / second <= light.lasts / second + 1.0);
    }));
    EXPECT_GT(held, 7000);
}

// A thinner wire to the inverter: more is lost, and a higher voltage of the bus is needed.
TEST(outage_properties, a_thicker_main_wire_never_shortens_an_outage) {
    int held = 0;
    int moved = 0;
    EXPECT_TRUE(tested::holds_for(10'000, [&] {
        auto generated = any_outage();
        if (!generated.unit.others.empty()) open_never(generated.unit);
        generated.unit.main_path = std::exp(between(std::log(1e-4), std::log(0.1))) * ohm;
        const auto thin = course_with_events(generated);
        generated.unit.main_path *= between(0.0, 1.0);
        const auto thick = course_with_events(generated);
        if (one_opened(thin) || one_opened(thick)) return;  // as for more load
        ++held;
        moved += thick.lasts > thin.lasts ? 1 : 0;
        RC_ASSERT(thick.lasts / second >= thin.lasts / second - 1.0);
    }));
    std::printf("%d held, %d of them last longer\n", held, moved);
    EXPECT_GT(held, 7000);
    EXPECT_GT(moved, 1000);
}

// Told in order: a pack that opened by itself is told to give again before it opens once more.
TEST(outage_properties, a_pack_that_opens_twice_came_back_in_between) {
    int openings = 0;
    EXPECT_TRUE(tested::holds_for(1'000, [&openings] {
        const auto generated = any_outage();
        const auto course = outage::run(generated.unit, generated.demand, generated.sun,
                                        generated.lasts, 6.0 * hour);
        std::vector<bool> open(generated.unit.others.size() + 1, false);
        for (const auto& event : course.events) {
            if (event.kind == outage::EventKind::one_back) open.at(event.pack) = false;
            if (event.kind != outage::EventKind::one_empty &&
                event.kind != outage::EventKind::one_cut_off &&
                event.kind != outage::EventKind::one_over_current)
                continue;
            ++openings;
            RC_ASSERT(!open.at(event.pack));
            open.at(event.pack) = true;
        }
    }));
    EXPECT_GT(openings, 100);
}

}  // namespace
