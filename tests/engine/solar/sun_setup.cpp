#include "solar/sun_setup.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "solar/weather/typical_sky.hpp"
#include "support/weather_text.hpp"

namespace {

using namespace units;
using namespace solar;

scenario::Scenario four_january_days() {
    scenario::Scenario scenario{};
    scenario.outage.starts = local_time(std::chrono::year(2026) / 1 / 14, 18.0 * hour);
    scenario.outage.lasts = 4.0 * day;
    scenario.place.name = "Chicago IL";
    scenario::Panel panel{};
    panel.count = 3;
    panel.power = 100.0 * watt;
    panel.placement = scenario::Placement::fixed;
    panel.tilt = 45.0 * degree;
    scenario.panels = {panel};
    scenario.controller.emplace().input_limit = 520.0 * watt;
    return scenario;
}

TEST(sun_setup, a_scenario_becomes_a_site_its_panels_and_their_controller) {
    const auto setup = sun_setup(four_january_days(), "");
    ASSERT_TRUE(setup);
    EXPECT_EQ(setup->site.name, "Chicago IL");
    ASSERT_EQ(setup->groups.size(), 1u);
    EXPECT_EQ(setup->groups[0].count, 3);
    EXPECT_EQ(*setup->controller.input_limit, 520.0 * watt);
    EXPECT_FALSE(setup->assumptions.empty());
}

TEST(sun_setup, a_scenario_without_panels_needs_no_controller_and_assumes_none) {
    scenario::Scenario scenario = four_january_days();
    scenario.panels.clear();
    scenario.controller.reset();
    const auto setup = sun_setup(scenario, "");
    ASSERT_TRUE(setup);
    for (const auto& assumption : setup->assumptions)
        EXPECT_NE(assumption.where, "charge_controller");
}

TEST(sun_setup, panels_in_series_too_many_for_the_controller_stop_the_plan) {
    scenario::Scenario scenario = four_january_days();
    scenario.panels[0].in_series = 3;
    scenario.controller->voltage_limit = 55.0 * volt;
    const auto setup = sun_setup(scenario, "");
    ASSERT_TRUE(setup);
    ASSERT_EQ(setup->findings.size(), 1u);
    EXPECT_EQ(setup->findings[0].severity, scenario::Severity::stop);
}

TEST(sun_setup, a_weather_file_is_found_beside_the_scenario_and_gives_its_hours) {
    const auto folder = std::filesystem::temp_directory_path() / "candlemark_sun_setup";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "station.epw") << test_support::epw_text(test_support::plain_hour);
    scenario::Scenario scenario = four_january_days();
    scenario.place = {};
    scenario.place.weather_file = "station.epw";
    const auto setup = sun_setup(scenario, folder.string());
    ASSERT_TRUE(setup) << setup.error()[0].found;
    EXPECT_EQ(setup->site.name, "Made Up Field");
    ASSERT_TRUE(setup->hours);
    const SunSeries series =
        sun_offered(setup->site, setup->groups, setup->controller, scenario.outage.starts,
                    scenario.outage.lasts, HourlySky{setup->hours});
    EXPECT_GT(sum(series).offered, Energy{});
    scenario.place.weather_file = "missing.epw";
    EXPECT_FALSE(sun_setup(scenario, folder.string()));
    std::filesystem::remove_all(folder);
}

// Under the station's January, 5 degrees below freezing: snow falls as often as (52) has it at that
// warmth, 10 days in 100; with a depth that grows on the 10th and the 20th, on 2 of the 64 days
// that starts 30 days before and after an outage of four days meet.
TEST(sun_setup, snow_beside_a_weather_file_is_the_files_own_where_it_tells_of_any) {
    const auto folder = std::filesystem::temp_directory_path() / "candlemark_sun_setup_snow";
    std::filesystem::create_directories(folder);
    const auto setup_with = [&](bool depth) {
        std::ofstream(folder / "station.epw") << test_support::epw_text([&](int day, int hour) {
            auto made = test_support::plain_hour(day, hour);
            made.snow = depth && (day == 9 || day == 19) && hour > 6 ? 10.0 : 0.0;
            return made;
        });
        scenario::Scenario scenario = four_january_days();
        scenario.outage.starts = local_time(std::chrono::year(2026) / 1 / 15, {});
        scenario.outage.lasts = 4.0 * day;
        scenario.place = {};
        scenario.place.weather_file = "station.epw";
        return sun_setup(scenario, folder.string());
    };
    const auto words_of = [](const SunSetup& setup) {
        for (const auto& assumption : setup.assumptions)
            if (assumption.where == "panel[0].brushed_off") return in_english(assumption.text);
        return std::string();
    };
    const auto silent = setup_with(false);
    const auto telling = setup_with(true);
    ASSERT_TRUE(silent && telling);
    EXPECT_NEAR(silent->groups[0].snow[0].falls.value(), 0.10, 1e-9);
    EXPECT_NEAR(telling->groups[0].snow[0].falls.value(), 2.0 / 64.0, 1e-9);
    EXPECT_EQ(silent->groups[0].snow[0].lies, telling->groups[0].snow[0].lies);
    EXPECT_NE(words_of(*silent).find("tells of no snow"), std::string::npos);
    EXPECT_NE(words_of(*telling).find("by the depth in the weather file"), std::string::npos);
    std::filesystem::remove_all(folder);
}

TEST(sun_setup, a_tilt_beside_panels_that_lie_flat_is_told) {
    scenario::Scenario scenario = four_january_days();
    scenario.panels[0].placement = scenario::Placement::flat;
    const auto told = sun_setup(scenario, "");
    ASSERT_TRUE(told);
    const auto about = [&](const auto& finding) { return finding.where == "panel[0].tilt"; };
    EXPECT_EQ(std::ranges::count_if(told->findings, about), 1);
    scenario.panels[0].tilt = Angle{};
    const auto flat = sun_setup(scenario, "");
    ASSERT_TRUE(flat);
    EXPECT_EQ(std::ranges::count_if(flat->findings, about), 0);
}

TEST(sun_setup, an_unknown_place_is_an_error_at_its_name) {
    scenario::Scenario scenario = four_january_days();
    scenario.place.name = "Atlantis";
    const auto setup = sun_setup(scenario, "");
    ASSERT_FALSE(setup);
    EXPECT_EQ(setup.error()[0].where, "place.name");
}

}  // namespace
