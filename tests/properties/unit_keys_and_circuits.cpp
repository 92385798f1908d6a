// A build said by its keys and the same build said by its circuits is one build.
#include <random>

#include "fitting/wiring.hpp"
#include "handling/gauge.hpp"
#include "handling/join.hpp"
#include "handling/storage.hpp"
#include "outage/ready.hpp"
#include "sizing/builds/sweep.hpp"
#include "starting/direct_side.hpp"
#include "starting/plan.hpp"
#include "unit/built.hpp"

namespace {

using namespace units;

constexpr int builds = 1000;

class Draw {
  public:
    explicit Draw(unsigned seed) : bits_(seed) {}
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits_);
    }
    int of(int n) { return std::uniform_int_distribution<int>(0, n - 1)(bits_); }
    template <class T>
    T one_of(std::initializer_list<T> values) {
        return *(values.begin() + of(static_cast<int>(values.size())));
    }

  private:
    std::mt19937 bits_;
};

scenario::Wire a_wire(Draw& draw) {
    scenario::Wire wire{.size = AmericanGauge{draw.one_of({10, 8, 6, 4, 2, 0, -2})},
                        .length = draw.between(0.2, 4.0) * metre,
                        .insulation = celsius(105.0)};
    if (draw.of(4) == 0) wire.runs = 2;
    if (draw.of(4) == 0) wire.return_length = draw.between(0.2, 4.0) * metre;
    return wire;
}

// Packs of one or two kinds, an inverter, a motor, a lamp, all their ways as circuits. Fuses are
// of no known family: a key cannot tell more of one.
scenario::Scenario by_circuits(Draw& draw) {
    scenario::Scenario made;
    made.outage.starts = {};
    made.outage.lasts = 24.0 * hour;
    made.outage.battery_temperature = celsius(draw.between(5.0, 30.0));
    made.enclosure = scenario::Case{.air = celsius(draw.between(5.0, 40.0))};
    const int kinds = 1 + draw.of(2);
    for (int i = 0; i < kinds; ++i) {
        scenario::Pack pack{.name = i == 0 ? "main" : "spare",
                            .count = 1 + draw.of(3),
                            .chemistry = scenario::Chemistry::lifepo4,
                            .capacity = 100.0 * ampere_hour,
                            .voltage = 12.8 * volt,
                            .charge = StateOfCharge(draw.between(0.5, 1.0))};
        if (draw.of(2) == 0) pack.resistance = draw.between(0.003, 0.015) * ohm;
        made.packs.push_back(pack);
        scenario::Circuit lead{.name = "lead of " + pack.name, .feeds = {pack.name}};
        lead.links.emplace_back(scenario::Fuse{.rating = draw.between(60.0, 200.0) * ampere});
        if (draw.of(2) == 0)
            lead.links.emplace_back(
                scenario::Connector{.rating = draw.between(50.0, 175.0) * ampere});
        lead.links.emplace_back(a_wire(draw));
        if (draw.of(2) == 0)
            lead.links.emplace_back(scenario::Fuse{.rating = draw.between(60.0, 200.0) * ampere});
        made.circuits.push_back(lead);
    }
    made.inverter = scenario::Inverter{.continuous = 2000.0 * watt,
                                       .surge = 4000.0 * watt,
                                       .surge_lasts = 1.0 * second,
                                       .cutoff_voltage = 10.5 * volt};
    made.circuits.push_back(
        {.name = "main path",
         .feeds = {"inverter"},
         .links = {scenario::Fuse{.rating = draw.between(150.0, 400.0) * ampere}, a_wire(draw)}});
    made.loads.push_back(
        {.name = "pump",
         .draw = scenario::StatedPower{draw.between(50.0, 900.0) * watt},
         .motor = scenario::Motor{.kind = scenario::MotorKind::capacitor_start,
                                  .locked_rotor_current = draw.between(5.0, 40.0) * ampere}});
    made.loads.push_back({.name = "lamp",
                          .from = scenario::Outlet::twelve_volt,
                          .draw = scenario::StatedPower{draw.between(5.0, 60.0) * watt}});
    made.storage = scenario::Storage{};
    made.storage->since = made.outage.starts - 90.0 * day;
    return made;
}

// What guards a way and has no key of its own stays in its circuit; wires go into the keys.
scenario::Scenario by_keys(const scenario::Scenario& circuits) {
    const auto built = ::unit::built(circuits, ::unit::usual_warmth(circuits)).value();
    scenario::Scenario made = circuits;
    made.circuits.clear();
    for (const auto& packs : built.packs) {
        auto& pack = made.packs[packs.index];
        pack.lead_resistance = packs.lead.resistance.value;
        pack.fuse = packs.lead.fuse->value.rating;
        if (packs.lead.connector) pack.connector = packs.lead.connector->value;
    }
    made.inverter->cable_resistance = built.main.resistance.value;
    made.circuits.push_back({.name = "main path",
                             .feeds = {"inverter"},
                             .links = {scenario::Fuse{.rating = built.main.fuse->value.rating}}});
    return made;
}

Duration lasts(const scenario::Scenario& scenario, outage::End end = outage::End::likely) {
    const auto ready = outage::make_ready(scenario);
    if (!ready) throw std::runtime_error(ready.error().front().where);
    return outage::run(*ready, end, {.trace = false, .after_failure = false}).lasts;
}

std::vector<starting::LoadRun> runs_of(const scenario::Scenario& scenario) {
    std::vector<starting::LoadRun> runs;
    for (const auto& load : scenario.loads) {
        const auto power = std::get<scenario::StatedPower>(*load.draw).power;
        runs.push_back({.draw = {.real = exactly(power)}});
    }
    return runs;
}

TEST(unit_keys_and_circuits, give_the_same_answer_to_every_question) {
    Draw draw(20261128);
    for (int i = 0; i < builds; ++i) {
        SCOPED_TRACE(i);
        const auto one = by_circuits(draw);
        const auto other = by_keys(one);
        // outage, both ends
        for (const auto end : {outage::End::earliest, outage::End::latest}) {
            ASSERT_EQ(lasts(one, end), lasts(other, end));
        }
        // packs, one cell
        const auto cell = [](const scenario::Scenario& scenario) {
            const auto design = sizing::make_design(scenario, "", 2, 0).value();
            return sizing::lasted_in(design, 2, 0, 0, 1, 1, 1);
        };
        if (i % 10 == 0) {
            ASSERT_EQ(cell(one), cell(other));
        }
        // start
        const auto starts = [&](const scenario::Scenario& scenario) {
            return starting::plan_starts(scenario, runs_of(scenario)).value();
        };
        if (i % 10 == 0) {
            const auto a = starts(one).loads.front().judged;
            const auto b = starts(other).loads.front().judged;
            ASSERT_EQ(a.verdict, b.verdict);
            ASSERT_EQ(a.binding, b.binding);
            ASSERT_EQ(a.voltage.low, b.voltage.low);
            ASSERT_EQ(a.voltage.high, b.voltage.high);
            ASSERT_EQ(a.pack_current.high, b.pack_current.high);
            ASSERT_EQ(a.used.size(), b.used.size());
        }
        // join
        if (one.packs.size() > 1) {
            const auto a = handling::join(one).value();
            const auto b = handling::join(other).value();
            ASSERT_EQ(a.allowed, b.allowed);
            ASSERT_EQ(a.current, b.current);
            ASSERT_EQ(a.largest_difference, b.largest_difference);
            ASSERT_EQ(a.weakest, b.weakest);
        }
        // gauge
        const handling::Reading reading{
            .reads = 12.9 * volt, .error = 0.05 * volt, .power = 200.0 * watt};
        const auto a = handling::gauge(one, reading).value();
        const auto b = handling::gauge(other, reading).value();
        ASSERT_EQ(a.rested, b.rested);
        ASSERT_EQ(a.resistance, b.resistance);
        // storage
        ASSERT_EQ(handling::storage(one).value().charge_now,
                  handling::storage(other).value().charge_now);
        // what wiring says of the whole unit
        const auto fit = [](const scenario::Scenario& scenario) {
            fitting::Draws draws;
            for (const auto& circuit : scenario.circuits)
                draws.circuits.push_back({.circuit = circuit.name});
            return fitting::fit(scenario, draws).value();
        };
        const auto whole = fit(one);
        const auto said = fit(other);
        ASSERT_EQ(whole.continuous->state.at_load, said.continuous->state.at_load);
        ASSERT_EQ(whole.continuous->state.largest, said.continuous->state.largest);
        ASSERT_EQ(whole.continuous->state.shares, said.continuous->state.shares);
    }
}

// The main wire, or the leads of all packs at once. One lead alone may do either, since its pack
// then takes more than its share; so may leads of unlike packs that gain unlike amounts, but by
// the losses alone: half a per cent. Steps are cut where the charging resistance has moved by so
// much, at other moments with other wire: a few seconds in a day.
TEST(unit_keys_and_circuits, better_wire_never_shortens_the_outage) {
    Draw draw(7);
    for (int i = 0; i < 300; ++i) {
        SCOPED_TRACE(i);
        auto made = by_circuits(draw);
        // Ways that cannot trip, so that the wire alone decides.
        for (auto& circuit : made.circuits)
            for (auto& link : circuit.links)
                if (auto* fuse = std::get_if<scenario::Fuse>(&link)) fuse->rating = 2000.0 * ampere;
        for (auto& pack : made.packs)
            pack.current_limit = 2000.0 * ampere;
        const bool main = draw.of(2) == 0;
        const int what = draw.of(3);
        auto better = made;
        for (auto& circuit : better.circuits) {
            if ((circuit.name == "main path") != main) continue;
            for (auto& link : circuit.links)
                if (auto* wire = std::get_if<scenario::Wire>(&link)) {
                    if (what == 0) wire->length = 0.5 * wire->length;
                    if (what == 1) wire->size = AmericanGauge{-3};
                    if (what == 2) wire->runs = 2 * wire->runs.value_or(1);
                }
        }
        const double kept = main || made.packs.size() == 1 ? 1.0 : 0.995;
        for (const auto end : {outage::End::earliest, outage::End::latest}) {
            ASSERT_GE(lasts(better, end) / second, kept * (lasts(made, end) / second) - 5.0);
        }
    }
}

}  // namespace
