#include "answers/card/parts.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "support/in_english.hpp"
#include "support/made_card.hpp"

namespace {

using namespace answers;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using units::watt_hour;

scenario::Scenario lithium() {
    scenario::Scenario scenario;
    scenario.packs = {{.name = "main"}, {.name = "spare"}};
    return scenario;
}

// As they are read in English.
std::vector<std::string> told(const std::vector<words::Said>& lines) {
    std::vector<std::string> texts;
    for (const auto& line : lines)
        texts.push_back(words::in_english(line));
    return texts;
}

TEST(card_parts, each_step_tells_what_goes_off_what_it_saves_and_how_long_it_then_lasts) {
    const auto ration = ration_part(lithium(), made::card());
    EXPECT_THAT(ration.table.rows,
                ElementsAre(ElementsAre(HasSubstr("1. router 220 Wh"), HasSubstr("220 Wh"),
                                        HasSubstr("30 h"), HasSubstr("30 of 100"))));
    EXPECT_EQ(ration.table.answers, 2U);
    EXPECT_THAT(told(ration.after),
                Contains("Life and health, never off: breathing machine 200 Wh."));
}

TEST(card_parts, a_reading_is_an_interval_of_charge_and_of_hours) {
    const auto voltmeter = voltmeter_part(made::card());
    EXPECT_THAT(told(voltmeter.table.rows[0]), ElementsAre("13.4 V", "66–99 %", "22 to 37 h"));
    EXPECT_EQ(voltmeter.table.rows[1][2], "3 h to the end");
}

TEST(card_parts, the_plug_in_rule_is_that_of_the_weakest_pack_rounded_down) {
    EXPECT_THAT(told(plug_in_part(lithium(), made::card()).lines),
                Contains("Plug in only when they are less than 0.2 V apart."));
}

TEST(card_parts, a_plug_in_that_is_refused_says_so_first) {
    auto with = made::card();
    auto& joining = with.joins.front()->joining;
    joining.allowed = false;
    joining.direction = handling::Joins::pack_charges_unit;
    joining.current = 64.0 * units::ampere;
    EXPECT_THAT(plug_in_part(lithium(), with).lines.front(),
                testing::AllOf(HasSubstr("Do not plug spare onto main"), HasSubstr("64 A")));
}

// What a fuse may be at most is the window's, whatever is in the holder; only what surely fails is
// marked.
TEST(card_parts, a_circuit_tells_its_fuse_and_the_largest_that_may_be_there) {
    auto with = made::card();
    with.wiring = questions::WiringFound{};
    fitting::CircuitState lamps{.name = "lamps"};
    lamps.links = {{.rating = 10.0 * units::ampere}};
    lamps.fuses = {{.link = 0, .window = {.largest = 5.0 * units::ampere}}};
    fitting::CircuitState bare{.name = "bare"};
    with.wiring->fit.circuits = {lamps, bare};
    with.wiring->fit.checks = {
        {.circuit = "lamps", .verdict = fitting::Verdict::fails},
        {.circuit = "bare", .verdict = fitting::Verdict::fails, .best = fitting::Verdict::fits}};
    const auto fuses = fuses_part(with);
    EXPECT_THAT(
        fuses.table.rows,
        ElementsAre(ElementsAre(HasSubstr("lamps (!)"), HasSubstr("10 A"), HasSubstr("5 A")),
                    ElementsAre(HasSubstr("bare"), HasSubstr("none"), HasSubstr("?"))));
    EXPECT_THAT(told(fuses.after), ElementsAre("(!) does not suit: see the report."));
}

TEST(card_parts, what_cannot_be_answered_is_named_with_its_reason) {
    EXPECT_THAT(told(fuses_part(made::card()).lines),
                ElementsAre("Not answered: pack: there is no pack."));
}

TEST(card_parts, lithium_is_not_charged_in_frost_and_lead_is_not_left_empty) {
    auto scenario = lithium();
    EXPECT_THAT(cold_part(scenario).lines.front(),
                HasSubstr("Never charge LiFePO4 at or below 0 °C: warm it first."));
    for (auto& pack : scenario.packs)
        pack.chemistry = scenario::Chemistry::agm;
    EXPECT_THAT(cold_part(scenario).lines.front(), HasSubstr("Never charge a frozen one"));
}

// 2.2 kWh kept over the four days are 550 Wh each day.
TEST(card_parts, what_the_sun_gives_back_is_that_of_a_day) {
    questions::OutageFound outage{.scenario = made::scenario(), .plan = {}};
    EXPECT_EQ(given_back(outage), "");
    outage.chance = questions::OutageChance{};
    outage.chance->sun = sizing::SunReturn{};
    outage.chance->sun->kept = {.low = 800.0 * watt_hour,
                                .likely = 2200.0 * watt_hour,
                                .high = 3880.0 * watt_hour,
                                .mean = 2300.0 * watt_hour};
    EXPECT_EQ(given_back(outage), "The sun gives back 550 Wh a day (200 Wh to 970 Wh).");
}

TEST(card_parts, a_length_is_rounded_down_to_what_is_read_at_night) {
    EXPECT_EQ(lasting(119.9 * units::minute, false), "119 min");
    EXPECT_EQ(lasting(99.9 * units::hour, false), "99 h");
    EXPECT_EQ(lasting(107.9 * units::hour, false), "4 days");  // 4.49 days, by halves
    EXPECT_EQ(lasting(108.0 * units::hour, true), "all 4.5 days");
}

}  // namespace
