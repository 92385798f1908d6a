#include "answers/cautions.hpp"

#include "support/made_plan.hpp"

namespace {

using namespace answers;
using testing::Contains;
using testing::Not;

std::vector<std::string> hazards(const scenario::Scenario& scenario) {
    std::vector<std::string> names;
    for (const auto& caution : cautions_for(scenario)) {
        names.emplace_back(caution.hazard);
    }
    return names;
}

TEST(cautions, the_first_is_for_whom_a_life_depends_on_it) {
    EXPECT_EQ(hazards(made::scenario()).front(), "Medical loads");
}

TEST(cautions, a_scenario_without_a_hazard_does_not_warn_of_it) {
    auto scenario = made::scenario();
    scenario.loads.clear();
    scenario.inverter.reset();
    scenario.panels.clear();
    EXPECT_THAT(hazards(scenario), testing::ElementsAre("Fire"));
}

TEST(cautions, lead_acid_that_is_charged_warns_of_hydrogen_and_lithium_of_cold) {
    auto scenario = made::scenario();
    EXPECT_THAT(hazards(scenario), Contains("Lithium charging in the cold"));
    EXPECT_THAT(hazards(scenario), Not(Contains("Hydrogen")));
    scenario.packs.front().chemistry = scenario::Chemistry::flooded;
    EXPECT_THAT(hazards(scenario), Contains("Hydrogen"));
    EXPECT_THAT(hazards(scenario), Not(Contains("Lithium charging in the cold")));
}

TEST(cautions, a_furnace_or_a_pump_warns_of_backfeed) {
    auto scenario = made::scenario();
    EXPECT_THAT(hazards(scenario), Not(Contains("Backfeed")));
    scenario.loads.front().name = "Furnace blower";
    EXPECT_THAT(hazards(scenario), Contains("Backfeed"));
    scenario.loads.front().from = scenario::Outlet::usb;
    EXPECT_THAT(hazards(scenario), Not(Contains("Backfeed")));
}

TEST(cautions, a_generator_or_a_vehicle_warns_of_exhaust_and_a_wall_charger_does_not) {
    auto scenario = made::scenario();
    scenario.chargers.emplace_back();
    EXPECT_THAT(hazards(scenario), Not(Contains("Carbon monoxide")));
    for (const auto kind : {scenario::ChargerKind::generator, scenario::ChargerKind::vehicle}) {
        scenario.chargers.front().kind = kind;
        EXPECT_THAT(hazards(scenario), Contains("Carbon monoxide"));
    }
}

TEST(cautions, none_of_them_calls_anything_safe) {
    auto scenario = made::scenario();
    scenario.chargers.emplace_back().kind = scenario::ChargerKind::generator;
    scenario.loads.front().name = "pump";
    for (const auto& caution : cautions_for(scenario)) {
        EXPECT_EQ(in_english(caution.text).find("safe"), std::string::npos) << caution.text;
        EXPECT_FALSE(caution.source.empty());
    }
}

}  // namespace
