#include "sizing/builds/sweep.hpp"

#include "outage/clock/clock.hpp"
#include "outage/panel_counts.hpp"
#include "outage/weathers.hpp"
#include "scenario/file/read.hpp"
#include "support/holds.hpp"

namespace {

using namespace units;

scenario::Scenario scenario_of(const std::string& name, const std::vector<std::string>& set) {
    scenario::Overrides overrides;
    for (const auto& one : set)
        overrides.push_back(*scenario::read_override(one));
    const auto read = scenario::read_scenario_file(
        std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name + ".toml", overrides);
    EXPECT_TRUE(read.has_value());
    auto scenario = read->scenario;
    scenario.circuits.clear();  // whose leads would tell the packs apart
    return scenario;
}

sizing::Design design_of(const scenario::Scenario& scenario, int packs, int panels) {
    auto design = sizing::make_design(scenario, {}, packs, panels);
    EXPECT_TRUE(design.has_value());
    return std::move(*design);
}

sizing::Design design_of(const std::string& name, const std::string& lasts, int packs, int panels) {
    return design_of(scenario_of(name, {"outage.lasts=\"" + lasts + "\""}), packs, panels);
}

// The same outage by the clock itself, one weather at a time.
outage::Ending single_run(const sizing::Design& design, int packs, int panels, int number) {
    const auto ready = outage::with_panels(*design.ready, panels);
    const auto likely = std::size_t(outage::End::likely);
    const auto course =
        outage::run(outage::with_packs(ready, outage::End::likely, packs), ready.steps[likely],
                    outage::sun_in_weather(ready, 1, number), ready.outage.lasts, ready.midnight,
                    {.trace = false, .after_failure = false});
    return {.lasts = course.lasts, .survives = course.survives};
}

abreast::LaneEnding swept_run(const sizing::Design& design, int packs, int panels, int number,
                              std::optional<abreast::Width> width = {}) {
    std::vector<double> sun;
    design.skies.offered(design.skies.weather(1, number), panels, sun);
    const abreast::LaneJob job{.packs = packs, .sun = sun};
    abreast::LaneEnding ending;
    if (width)
        abreast::run_lanes(panels > 0 ? design.lit : design.dark, {&job, 1}, {&ending, 1}, nullptr,
                           width);
    else
        sizing::run_outages(design, {&job, 1}, {&ending, 1});
    return ending;
}

struct Case {
    std::string name;
    std::string lasts;
    void (*change)(scenario::Scenario&) = [](scenario::Scenario&) {};
};

// All days are too cold to charge: the sun goes to the loads alone.
void in_a_cold_room(scenario::Scenario& scenario) {
    scenario.outage.battery_temperature.reset();
    scenario.outage.battery_follows_room = true;
    scenario.outage.room_temperature = celsius(-5.0);
}

// The room follows the weather outside: each day has its own temperature.
void in_a_room_that_cools(scenario::Scenario& scenario) {
    scenario.outage.battery_temperature.reset();
    scenario.outage.room_temperature.reset();
    scenario.outage.battery_follows_room = true;
}

// One pack alone comes to currents that it stands for a quarter of an hour, or for a minute.
void with_pulses(scenario::Scenario& scenario) {
    for (auto& pack : scenario.packs) {
        pack.current_limit = 18.0 * ampere;
        pack.pulse = {{24.0 * ampere, 15.0 * minute}, {60.0 * ampere, 1.0 * minute}};
    }
}

// More packs than the file has are like its last: the fifth and all further ones differ.
void with_a_smaller_pack(scenario::Scenario& scenario) {
    scenario.packs.push_back(scenario.packs.back());
    scenario.packs.back().name = "small";
    scenario.packs.back().capacity = 40.0 * ampere_hour;
    scenario.packs.back().count = 1;
}

// An hour every evening.
void with_a_generator(scenario::Scenario& scenario) {
    scenario::Charger charger;
    charger.kind = scenario::ChargerKind::generator;
    charger.current = 25.0 * ampere;
    charger.hours = {{19.0 * hour, 20.0 * hour}};
    scenario.chargers.push_back(charger);
}

// Panels that stand differently behind one controller do not scale by their number.
void with_a_flat_panel(scenario::Scenario& scenario) {
    scenario.panels.push_back(scenario.panels.front());
    scenario.panels.back().count = 1;
    scenario.panels.back().tilt = 5.0 * degree;
}

// It sleeps whenever the freezer and the blower are off.
void in_search_mode(scenario::Scenario& scenario) {
    scenario.inverter->search_threshold = 60.0 * watt;
}

class Sweeps : public testing::TestWithParam<Case> {};

// Cells taken evenly through the grid and the weathers; the odd steps meet every row and column.
TEST_P(Sweeps, agree_with_single_runs_of_the_clock) {
    auto scenario = scenario_of(GetParam().name, {"outage.lasts=\"" + GetParam().lasts + "\""});
    GetParam().change(scenario);
    const auto design = design_of(scenario, 9, 7);
    int lasted = 0;
    constexpr int cells = 210;
    for (int i = 0; i < cells; ++i) {
        const int packs = 1 + (i * 5) % 9;
        const int panels = design.most_panels > 0 ? (i * 3) % 8 : 0;
        const int number = (i * 11) % std::min(64, design.most_weathers);
        const auto single = single_run(design, packs, panels, number);
        const auto ending = swept_run(design, packs, panels, number);
        ASSERT_EQ(ending.survives, single.survives)
            << packs << " packs, " << panels << " panels, " << number;
        // One panel's current times the battery's voltage rounds before it is multiplied.
        const bool rounds_otherwise =
            scenario.controller && scenario.controller->kind == scenario::ControllerKind::pwm;
        ASSERT_NEAR(ending.lasts / second, single.lasts / second, rounds_otherwise ? 1e-6 : 0.0)
            << packs << " packs, " << panels << " panels, " << number;
        lasted += single.survives ? 1 : 0;
    }
    EXPECT_LT(lasted, cells);
}

INSTANTIATE_TEST_SUITE_P(each_chemistry_and_each_turn_of_a_plan, Sweeps,
                         testing::Values(Case{"ice_storm", "5 d", with_a_generator},
                                         Case{"ice_storm", "9 d"}, Case{"summer_storm", "9 d"},
                                         Case{"precautionary_shutoff", "9 d"},
                                         Case{"ice_storm", "6 d", in_a_cold_room},
                                         Case{"ice_storm", "6 d", in_a_room_that_cools},
                                         Case{"summer_storm", "6 d", in_a_room_that_cools},
                                         Case{"ice_storm", "6 d", with_pulses},
                                         Case{"ice_storm", "6 d", with_a_flat_panel},
                                         Case{"ice_storm", "6 d", in_search_mode},
                                         Case{"ice_storm", "3 d", with_a_smaller_pack}));

// As built: one pack in the case and others on plug-in leads.
TEST(sweep, agrees_with_single_runs_where_leads_tell_packs_apart) {
    const auto read =
        scenario::read_scenario_file(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml",
                                     {*scenario::read_override("outage.lasts=\"4 d\"")});
    ASSERT_TRUE(read);
    const auto design = design_of(read->scenario, 9, 7);
    ASSERT_FALSE(design.all_alike());
    int lasted = 0;
    constexpr int cells = 105;
    for (int i = 0; i < cells; ++i) {
        const int packs = 1 + (i * 5) % 9;
        const int panels = (i * 3) % 8;
        const auto single = single_run(design, packs, panels, i % 64);
        const auto ending = swept_run(design, packs, panels, i % 64);
        ASSERT_EQ(ending.survives, single.survives) << packs << " packs, " << panels << " panels";
        ASSERT_EQ(ending.lasts / second, single.lasts / second)
            << packs << " packs, " << panels << " panels";
        lasted += single.survives ? 1 : 0;
    }
    EXPECT_GT(lasted, 0);
    EXPECT_LT(lasted, cells);
}

// What the cases above rest on: there are days, and there are currents that the clock must decide.
TEST(sweep, knows_days_of_their_own_temperature_and_leaves_pulses_to_the_clock) {
    auto cools = scenario_of("ice_storm", {"outage.lasts=\"6 d\""});
    in_a_room_that_cools(cools);
    EXPECT_GT(design_of(cools, 2, 0).lit.days.size(), 4u);
    auto pulses = scenario_of("ice_storm", {"outage.lasts=\"6 d\""});
    with_pulses(pulses);
    const auto design = design_of(pulses, 9, 7);
    int undecided = 0;
    int late = 0;  // it lasted beyond the first such current
    for (int number = 0; number < 30; ++number) {
        std::vector<double> sun;
        design.skies.offered(design.skies.weather(1, number), 7, sun);
        const abreast::LaneJob job{.packs = 1 + number % 9, .sun = sun};
        abreast::LaneEnding by_lane;
        abreast::run_lanes(design.lit, {&job, 1}, {&by_lane, 1});
        abreast::LaneEnding decided;
        sizing::run_outages(design, {&job, 1}, {&decided, 1});
        undecided += by_lane.undecided ? 1 : 0;
        late += decided.lasts > by_lane.lasts ? 1 : 0;
        EXPECT_FALSE(decided.undecided);
    }
    EXPECT_GT(undecided, 3);
    EXPECT_LT(undecided, 30);
    EXPECT_GT(late, 3);
}

TEST(sweep, gives_the_same_bits_at_every_width_of_the_processor) {
    for (const char* name : {"ice_storm", "summer_storm"}) {
        const auto design = design_of(name, "9 d", 9, 7);
        for (int i = 0; i < 300; ++i) {
            const int packs = 1 + (i * 5) % 9;
            const int panels = (i * 3) % 8;
            const auto narrow = swept_run(design, packs, panels, i, abreast::Width::two);
            for (const auto width : abreast::widths_here()) {
                const auto wide = swept_run(design, packs, panels, i, width);
                ASSERT_EQ(narrow.lasts / second, wide.lasts / second);
                ASSERT_EQ(narrow.survives, wide.survives);
            }
        }
    }
}

void expect_same(const sizing::Sweep& a, const sizing::Sweep& b) {
    ASSERT_EQ(a.cells.size(), b.cells.size());
    for (std::size_t i = 0; i < a.cells.size(); ++i) {
        EXPECT_EQ(a.cells[i].chance.of, b.cells[i].chance.of);
        ASSERT_EQ(a.cells[i].lasts.has_value(), b.cells[i].lasts.has_value());
        if (!a.cells[i].lasts) continue;
        EXPECT_EQ(a.cells[i].lasts->p10 / second, b.cells[i].lasts->p10 / second);
        EXPECT_EQ(a.cells[i].lasts->p50 / second, b.cells[i].lasts->p50 / second);
        EXPECT_EQ(a.cells[i].lasts->p90 / second, b.cells[i].lasts->p90 / second);
    }
}

TEST(sweep, gives_the_same_bits_with_1_and_2_and_7_threads) {
    const auto design = design_of("ice_storm", "6 d", 8, 6);
    const auto one = sizing::sweep(design, {.sequences = 200, .timed = 70, .threads = 1});
    ASSERT_TRUE(one);
    for (const unsigned threads : {2U, 7U}) {
        const auto many =
            sizing::sweep(design, {.sequences = 200, .timed = 70, .threads = threads});
        ASSERT_TRUE(many);
        expect_same(*one, *many);
    }
}

TEST(sweep, finds_by_its_staircase_what_every_cell_run_by_itself_shows) {
    const auto design = design_of("summer_storm", "5 d", 7, 5);
    const auto swept = sizing::sweep(design, {.sequences = 100, .timed = 0});
    ASSERT_TRUE(swept);
    for (int packs = 1; packs <= 7; ++packs)
        for (int panels = 1; panels <= 5; ++panels)
            EXPECT_EQ(swept->at(packs, panels).chance.of.value(),
                      sizing::lasted_in(design, packs, panels, 0, 100, 1) / 100.0);
}

TEST(sweep, never_loses_by_a_pack_or_a_panel_more) {
    const auto design = design_of("ice_storm", "7 d", 12, 9);
    const auto swept = sizing::sweep(design, {.sequences = 128, .timed = 128});
    ASSERT_TRUE(swept);
    for (int packs = 1; packs <= 12; ++packs)
        for (int panels = 0; panels <= 9; ++panels) {
            const auto& here = swept->at(packs, panels);
            ASSERT_TRUE(here.lasts);
            EXPECT_LE(here.lasts->p10, here.lasts->p50);
            EXPECT_LE(here.lasts->p50, here.lasts->p90);
            if (packs > 1) {
                EXPECT_GE(here.chance.of, swept->at(packs - 1, panels).chance.of);
                EXPECT_GE(here.lasts->p10, swept->at(packs - 1, panels).lasts->p10);
                EXPECT_GE(here.lasts->p50, swept->at(packs - 1, panels).lasts->p50);
            }
            if (panels > 1) {
                EXPECT_GE(here.chance.of, swept->at(packs, panels - 1).chance.of);
            }
        }
}

TEST(sweep, runs_less_than_half_of_the_cells) {
    const auto design = design_of("ice_storm", "6 d", 16, 12);
    const auto swept = sizing::sweep(design, {.sequences = 64, .timed = 0});
    ASSERT_TRUE(swept);
    EXPECT_LT(swept->outages_run, 64U * 16U * 13U / 2U);
}

TEST(sweep, stops_when_it_is_told_to) {
    const auto design = design_of("ice_storm", "4 d", 4, 3);
    int told = 0;
    const auto swept = sizing::sweep(
        design, {.sequences = 640, .threads = 1, .progress = [&](double) { return ++told < 2; }});
    EXPECT_FALSE(swept);
    EXPECT_EQ(told, 2);
}

TEST(sweep, is_the_outages_own_count_where_both_ask_the_same) {
    const auto design = design_of("ice_storm", "4 d", 8, 3);
    const auto endings = outage::endings_in_weathers(*design.ready, 128, 1);
    int lasted = 0;
    for (const auto& ending : endings)
        lasted += ending.survives ? 1 : 0;
    EXPECT_EQ(lasted, sizing::lasted_in(design, design.packs, design.panels, 0, 128, 1));
}

}  // namespace
