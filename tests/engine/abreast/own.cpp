#include "abreast/own.hpp"

#include <algorithm>
#include <memory>
#include <random>

#include "abreast/stride.hpp"
#include "abreast/watch.hpp"
#include "battery/softness.hpp"
#include "inverter/model.hpp"
#include "outage/clock/banks.hpp"
#include "outage/clock/clock.hpp"
#include "outage/clock/looks.hpp"
#include "outage/panel_counts.hpp"
#include "outage/ready.hpp"
#include "outage/weathers.hpp"
#include "scenario/file/read.hpp"
#include "support/holds.hpp"

namespace {

using namespace units;

constexpr auto likely = std::size_t(outage::End::likely);

scenario::Scenario scenario_of(const std::string& name, const std::string& lasts) {
    const auto read = scenario::read_scenario_file(
        std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name + ".toml",
        {*scenario::read_override("outage.lasts=\"" + lasts + "\"")});
    EXPECT_TRUE(read.has_value());
    return read->scenario;
}

// A build drawn around a scenario's own, its loads and its sun: what `outages` point to.
struct Drawn {
    outage::PackKinds kinds;
    outage::Unit unit;
    std::vector<demand::DemandStep> demand;
    std::vector<outage::SunChange> sun;
};

class Draw {
  public:
    Draw(const scenario::Scenario& scenario, unsigned seed) : random_(seed) {
        auto ready = outage::make_ready(scenario);
        EXPECT_TRUE(ready.has_value());
        ready_ = std::make_unique<outage::Ready>(std::move(*ready));
    }

    [[nodiscard]] const outage::Ready& ready() const { return *ready_; }

    Drawn one(int packs, int panels, int number) {
        Drawn drawn{
            .kinds = outage::with_count(ready_->kinds, packs), .unit = {}, .demand = {}, .sun = {}};
        for (auto& kind : drawn.kinds) {
            const double charge = factor(0.15);
            const double resistance = factor(0.3);
            const double start = std::uniform_real_distribution(0.7, 1.0)(random_);
            // wells of its own, so that the lanes' head differences decay each at its rate
            const bool agm = kind.model->chemistry == scenario::Chemistry::agm;
            const double softness = agm ? std::uniform_real_distribution(-1.2, 1.2)(random_) : 0.0;
            const auto change = [&](const battery::PackModel& model) {
                auto made = std::make_shared<battery::PackModel>(
                    agm ? battery::with_softness(model, {.chemistry = model.chemistry}, softness)
                        : model);
                made->kinetics.total *= charge;
                made->capacity *= charge;
                made->usable *= charge;
                made->inner *= resistance;
                made->charging.resistance.rated *= charge;
                made->at_start.removed = (1.0 - start) * made->kinetics.total;
                return made;
            };
            kind.model = change(*kind.model);
            for (auto& day : kind.days)
                day.model = change(*day.model);
        }
        drawn.unit = outage::unit_of(drawn.kinds, ready_->main_path);
        drawn.unit.inverter = ready_->units[likely].inverter;
        drawn.unit.main_fuse = ready_->units[likely].main_fuse;
        if (auto& inverter = drawn.unit.inverter)
            inverter = inverter::with_idle(*inverter, factor(0.2) * inverter->losses.idle);
        auto demand = ready_->demand;
        for (auto& load : demand.loads)
            load.power.likely *= factor(0.25);
        drawn.demand = outage::steps_of(*ready_, demand, outage::End::likely);
        drawn.sun = outage::sun_in_weather(outage::with_panels(*ready_, panels), 1, number);
        const double bright = factor(0.1);
        for (auto& change : drawn.sun)
            change.offered *= bright;
        return drawn;
    }

  private:
    std::mt19937 random_;
    std::unique_ptr<outage::Ready> ready_;

    double factor(double deviation) {
        return std::exp(deviation * std::normal_distribution()(random_));
    }
};

std::vector<abreast::Outage> outages_of(const std::vector<Drawn>& drawn) {
    std::vector<abreast::Outage> outages;
    for (const auto& one : drawn)
        outages.push_back({.unit = &one.unit, .demand = one.demand, .sun = one.sun});
    return outages;
}

abreast::OwnEnding by_the_clock(const outage::Ready& ready, const Drawn& drawn) {
    const auto course = outage::run(drawn.unit, drawn.demand, drawn.sun, ready.outage.lasts,
                                    ready.midnight, {.trace = false, .after_failure = false});
    return {.lasts = course.lasts, .survives = course.survives, .limited_by = course.limited_by};
}

struct Case {
    std::string name;
    std::string lasts;
    int packs = 9;
    void (*change)(scenario::Scenario&) = [](scenario::Scenario&) {};
};

// Three kinds: one more that is smaller, half full, and on a lead of its own.
void with_a_small_pack(scenario::Scenario& scenario) {
    scenario.circuits.clear();
    auto& packs = scenario.packs;
    packs.push_back(packs.back());
    packs.back().name = "small";
    packs.back().capacity = 0.4 * packs.back().capacity;
    packs.back().charge = StateOfCharge(0.5);
    packs.back().count = 1;
    packs.back().lead_resistance = 0.005 * ohm;
    packs.push_back(packs.front());
    packs.back().name = "far";
    packs.back().count = 1;
    packs.back().lead_resistance = 0.004 * ohm;
}

void in_the_cold(scenario::Scenario& scenario) {
    scenario.outage.battery_temperature = celsius(-4.0);
}

void alike(scenario::Scenario& scenario) {
    scenario.circuits.clear();
    scenario.packs.resize(1);
}
void alike_in_the_cold(scenario::Scenario& scenario) {
    alike(scenario);
    in_the_cold(scenario);
}
// Charging is held down by the limit of the current.
void alike_charged_slowly(scenario::Scenario& scenario) {
    alike(scenario);
    scenario.packs.front().charge_limit = 2.0 * ampere;
}
void charged_slowly(scenario::Scenario& scenario) {
    for (auto& pack : scenario.packs)
        pack.charge_limit = 2.0 * ampere;
}

void in_a_room_that_cools(scenario::Scenario& scenario) {
    scenario.outage.battery_temperature.reset();
    scenario.outage.room_temperature.reset();
    scenario.outage.battery_follows_room = true;
}

// So that each pack ends by itself, and the others go on.
void to_the_last(scenario::Scenario& scenario) {
    for (auto& pack : scenario.packs)
        pack.usable = Share(1.0);
    with_a_small_pack(scenario);
}

void with_narrow_limits(scenario::Scenario& scenario) {
    for (auto& pack : scenario.packs) {
        pack.current_limit = 30.0 * ampere;
        pack.pulse = {{60.0 * ampere, 1.0 * minute}};
    }
}

void of_agm(scenario::Scenario& scenario) {
    for (auto& pack : scenario.packs)
        pack = {.name = pack.name,
                .count = pack.count,
                .chemistry = scenario::Chemistry::agm,
                .capacity = 110.0 * ampere_hour};
}
void of_agm_and_a_small_pack(scenario::Scenario& scenario) {
    of_agm(scenario);
    with_a_small_pack(scenario);
}

// So that the voltage at the bus that ends a discharge is another one in each step.
void behind_a_thin_wire(scenario::Scenario& scenario) {
    scenario.circuits.clear();
    scenario.inverter->cable_resistance = 0.040 * ohm;
    for (auto& pack : scenario.packs)
        pack.usable = Share(1.0);
}
void two_kinds_behind_a_thin_wire(scenario::Scenario& scenario) {
    behind_a_thin_wire(scenario);
    with_a_small_pack(scenario);
}

class OwnOutages : public testing::TestWithParam<Case> {};

TEST_P(OwnOutages, end_as_the_clock_ends_them_to_the_last_bit) {
    auto scenario = scenario_of(GetParam().name, GetParam().lasts);
    GetParam().change(scenario);
    Draw draw(scenario, 7);
    std::vector<Drawn> drawn;
    for (int i = 0; i < 96; ++i)
        drawn.push_back(draw.one(1 + (i * 5) % GetParam().packs, (i * 3) % 8, (i * 7) % 40));
    const auto& ready = draw.ready();
    const auto outages = outages_of(drawn);
    std::vector<abreast::OwnEnding> endings(outages.size());
    abreast::LaneCost cost;
    abreast::run_own(outages, ready.outage.lasts, ready.midnight, endings, &cost);
    int lasted = 0;
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        const auto clock = by_the_clock(ready, drawn[i]);
        ASSERT_EQ(endings[i].lasts / second, clock.lasts / second)
            << i << ", " << drawn[i].unit.others.size() + 1 << " kinds";
        ASSERT_EQ(endings[i].survives, clock.survives) << i;
        ASSERT_EQ(endings[i].limited_by, clock.limited_by) << i;
        lasted += clock.survives ? 1 : 0;
    }
    EXPECT_LT(lasted, 96);
    std::printf("%s: %d last, %zu of 96 by the clock, %zu of %zu steps one by one\n",
                GetParam().name.c_str(), lasted, cost.by_clock, cost.one_by_one, cost.steps);
    for (const auto width : abreast::widths_here()) {
        std::vector<abreast::OwnEnding> narrow(outages.size());
        abreast::run_own(outages, ready.outage.lasts, ready.midnight, narrow, nullptr, width);
        ASSERT_EQ(narrow, endings);
    }
}

double charge_in(const outage::Unit& unit, const abreast::Seen& seen) {
    double removed = 0.0;
    double rated = 0.0;
    for (std::size_t k = 0; k < seen.wells.size(); ++k) {
        const auto& bank = k == 0 ? unit.bank : unit.others[k - 1];
        removed += bank.count * (seen.wells[k].removed / coulomb);
        rated += bank.count * (bank.rated / coulomb);
    }
    return std::max(0.0, 1.0 - removed / rated);
}

// Whoever watches sees each at the moment that was asked for, until it fails.
TEST_P(OwnOutages, are_seen_on_their_way_where_the_clock_has_them) {
    auto scenario = scenario_of(GetParam().name, GetParam().lasts);
    GetParam().change(scenario);
    Draw draw(scenario, 11);
    std::vector<Drawn> drawn;
    for (int i = 0; i < 24; ++i)
        drawn.push_back(draw.one(1 + (i * 5) % GetParam().packs, (i * 3) % 8, (i * 7) % 40));
    const auto& ready = draw.ready();
    const auto outages = outages_of(drawn);
    const Duration at[] = {5.3 * hour, 17.0 * hour, 41.75 * hour, 66.6 * hour};
    std::vector<abreast::OwnEnding> endings(outages.size());
    const auto seen =
        abreast::run_watched(outages, ready.outage.lasts, ready.midnight, at, endings);
    std::size_t looked_at = 0;
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        const Drawn& one = drawn[i];
        const auto looks = outage::look(one.unit, one.demand, one.sun, ready.midnight, at);
        for (std::size_t moment = 0; moment < seen[i].size(); ++moment, ++looked_at) {
            EXPECT_NEAR(charge_in(one.unit, seen[i][moment]), looks[moment].charge.value(), 1e-6)
                << i << " at " << at[moment] / hour << " h";
            EXPECT_NEAR(seen[i][moment].sun_taken / watt_hour, looks[moment].sun_taken / watt_hour,
                        1e-3)
                << i << " at " << at[moment] / hour << " h";
        }
    }
    std::printf("%s: %zu of 96 looks\n", GetParam().name.c_str(), looked_at);
}

INSTANTIATE_TEST_SUITE_P(
    each_chemistry_and_each_turn_of_a_plan, OwnOutages,
    testing::Values(
        Case{"ice_storm", "4 d"}, Case{"summer_storm", "4 d"}, Case{"precautionary_shutoff", "4 d"},
        Case{"ice_storm", "4 d", 9, with_a_small_pack},
        Case{"summer_storm", "4 d", 9, with_a_small_pack}, Case{"ice_storm", "4 d", 9, in_the_cold},
        Case{"ice_storm", "4 d", 9, alike}, Case{"ice_storm", "4 d", 9, alike_in_the_cold},
        Case{"ice_storm", "4 d", 9, alike_charged_slowly},
        Case{"ice_storm", "4 d", 9, charged_slowly}, Case{"summer_storm", "4 d", 9, to_the_last},
        Case{"ice_storm", "4 d", 9, to_the_last}, Case{"ice_storm", "6 d", 9, in_a_room_that_cools},
        Case{"summer_storm", "4 d", 9, of_agm},
        Case{"ice_storm", "4 d", 9, of_agm_and_a_small_pack},
        Case{"ice_storm", "4 d", 9, behind_a_thin_wire},
        Case{"summer_storm", "4 d", 9, behind_a_thin_wire},
        Case{"summer_storm", "4 d", 9, two_kinds_behind_a_thin_wire},
        Case{"ice_storm", "4 d", 9, with_narrow_limits}));

}  // namespace
