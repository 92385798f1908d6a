#include "answers/card/lid_card.hpp"

#include <algorithm>
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "scenario/read.hpp"

namespace {

using namespace answers;
using testing::Contains;
using testing::HasSubstr;

units::Errors not_known() {
    return {{.where = "pack", .found = "there is no pack", .remedy = "add one"}};
}

Quantity number(double value, std::string unit) {
    return {.value = value, .unit = std::move(unit), .shown = {}};
}

Answer outage() {
    Answer answer{.question = "outage"};
    answer.cautions = {{"Fire", "A short circuit burns: fuse it. And more words.", ""}};
    return answer;
}

sizing::Ration two_steps() {
    const auto step_of = [](double of, double half, double count_on) {
        return sizing::RationStep{.figures = {.of = units::Probability(of),
                                              .low = units::Probability(of - 0.02),
                                              .high = units::Probability(of + 0.02),
                                              .half = half * units::hour,
                                              .goal = units::Probability(0.9),
                                              .count_on = count_on * units::hour}};
    };
    sizing::Ration ration{.all_on = step_of(0.123, 38.9, 28.7)};
    auto step = step_of(0.309, 48.2, 30.0);
    step.off = {{.name = "router", .spared = 220.0 * units::watt_hour}};
    step.spared = 220.0 * units::watt_hour;
    ration.steps = {step};
    ration.kept = {{.name = "breathing machine", .spared = 200.0 * units::watt_hour}};
    ration.vital = true;
    return ration;
}

CardReading reading(std::string reads, double low, double high, double least, double most) {
    Answer answer{.question = "gauge"};
    answer.values = {
        {"charge_low", "", {number(low, "%")}},  {"charge_high", "", {number(high, "%")}},
        {"lasts_low", "", {number(least, "h")}}, {"lasts_high", "", {number(most, "h")}},
        {"survives_low", "", {false}},           {"survives_high", "", {most > 90.0}}};
    return {std::move(reads), std::move(answer)};
}

Answer join(double difference) {
    Answer answer{.question = "join"};
    answer.values = {{"allowed", "", {true}},
                     {"largest_voltage_difference", "", {number(difference, "V")}}};
    return answer;
}

CardAnswers answers() {
    return {.outage = outage(),
            .ration = two_steps(),
            .wiring = units::fail(not_known()),
            .storage = units::fail(not_known()),
            .joins = {join(0.58), join(0.29)},
            .readings = {reading("13.4 V", 66.0, 98.6, 22.9, 37.2),
                         reading("13.2 V", 27.0, 82.0, 3.9, 96.0)}};
}

scenario::Scenario lithium() {
    scenario::Scenario scenario;
    scenario.title = "A unit";
    scenario.packs = {{.name = "main"}, {.name = "spare"}};
    return scenario;
}

CardPart part(const LidCard& card, const std::string& name) {
    return *std::ranges::find(card.parts, name, &CardPart::name);
}

TEST(lid_card, hours_are_rounded_down_so_that_nobody_counts_on_the_rest) {
    const auto card = lid_card(lithium(), answers(), "made");
    EXPECT_EQ(card.answer, "Everything on: 28 h");
    EXPECT_EQ(card.basis.front(),
              "Nine times in ten; half the time 38 h; to the end 12 times in 100.");
}

TEST(lid_card, what_meets_the_goal_lasts_to_the_end_with_its_chance) {
    auto with = answers();
    with.ration->all_on.figures.of = units::Probability(0.954);
    with.ration->all_on.figures.low = units::Probability(0.94);
    with.ration->all_on.figures.high = units::Probability(0.97);
    const auto card = lid_card(lithium(), with, "made");
    EXPECT_EQ(card.answer, "Everything on: to the end");
    EXPECT_EQ(card.basis.front(), "95 times in 100.");
}

TEST(lid_card, each_step_tells_what_goes_off_what_it_saves_and_how_long_it_then_lasts) {
    const auto& ration = part(lid_card(lithium(), answers(), ""), "ration");
    EXPECT_THAT(ration.table.rows, testing::ElementsAre(testing::ElementsAre(
                                       "1. router 220 Wh", "220 Wh", "30 h", "30 of 100")));
    EXPECT_EQ(ration.table.answers, 2U);
    EXPECT_THAT(ration.after, Contains("Life and health, never off: breathing machine 200 Wh."));
}

TEST(lid_card, a_reading_is_an_interval_of_charge_and_of_hours) {
    const auto& voltmeter = part(lid_card(lithium(), answers(), ""), "voltmeter");
    EXPECT_THAT(voltmeter.table.rows[0], testing::ElementsAre("13.4 V", "66–99 %", "22 to 37 h"));
    EXPECT_EQ(voltmeter.table.rows[1][2], "3 h to the end");
}

TEST(lid_card, the_plug_in_rule_is_that_of_the_weakest_pack_rounded_down) {
    const auto& plug_in = part(lid_card(lithium(), answers(), ""), "plug_in");
    EXPECT_THAT(plug_in.lines, Contains("Plug in only when less than 0.2 V apart."));
}

TEST(lid_card, a_plug_in_that_is_refused_says_so_first) {
    auto with = answers();
    with.joins.front()->values.front().value.held = false;
    with.joins.front()->sentences = {"Do not plug spare onto main now: 64 A flow."};
    EXPECT_EQ(part(lid_card(lithium(), with, ""), "plug_in").lines.front(),
              "Do not plug spare onto main now: 64 A flow.");
}

TEST(lid_card, lithium_is_not_charged_in_frost_and_lead_is_not_left_empty) {
    auto scenario = lithium();
    EXPECT_THAT(part(lid_card(scenario, answers(), ""), "cold").lines.front(),
                HasSubstr("Never charge LiFePO4 at or below 0 °C (32 °F)"));
    for (auto& pack : scenario.packs) {
        pack.chemistry = scenario::Chemistry::agm;
    }
    EXPECT_THAT(part(lid_card(scenario, answers(), ""), "cold").lines.front(),
                HasSubstr("Never charge a frozen one"));
}

TEST(lid_card, what_stands_in_the_way_is_told_on_the_card_too) {
    auto with = answers();
    const scenario::Finding stop{scenario::Severity::stop, "load saw", "Will not start.", "", ""};
    with.outage->findings = {{.finding = stop}, {.finding = stop}};
    EXPECT_THAT(lid_card(lithium(), with, "").basis,
                Contains("STOP, load saw: Will not start. And 1 more: see the report."));
}

TEST(lid_card, what_cannot_be_answered_is_named_with_its_reason) {
    const auto card = lid_card(lithium(), answers(), "");
    EXPECT_THAT(part(card, "fuses").lines, Contains("Not answered: pack: there is no pack."));
    EXPECT_EQ(part(card, "storage").ticks.size(), 5U);
}

TEST(lid_card, a_part_without_room_first_gives_up_words_then_says_what_is_left_out) {
    auto card = lid_card(lithium(), answers(), "");
    auto cautions = part(card, "cautions");
    EXPECT_TRUE(cut_one(cautions));
    EXPECT_THAT(cautions.lines, Contains("Fire: A short circuit burns."));
    EXPECT_FALSE(cut_one(cautions));
    EXPECT_EQ(left_out(cautions), "");
    CardPart fuses{.name = "fuses", .heading = "Fuses", .of_what = "circuits"};
    fuses.table.rows = {{"a"}, {"b"}, {"c"}};
    EXPECT_TRUE(cut_one(fuses));
    EXPECT_EQ(left_out(fuses), "and 1 more circuits: see the report.");
    EXPECT_FALSE(cut_one(fuses));
    auto cold = part(card, "cold");
    EXPECT_FALSE(cut_one(cold));
}

TEST(lid_card, the_dates_to_tick_come_before_the_pack_suffers) {
    auto scenario = lithium();
    const auto since = units::read_local_time("2026-08-31");
    ASSERT_TRUE(since);
    scenario.storage = scenario::Storage{.since = *since};
    Answer storage{.question = "storage"};
    storage.values = {{"top_up_by", "", {std::string("2026-12-20")}}};
    auto with = answers();
    with.storage = storage;
    const auto& ticks = part(lid_card(scenario, with, ""), "storage").ticks;
    // 3 months and 20 days: every 3 months, on the last day where a month is shorter
    EXPECT_EQ(ticks.at(0), "2026-11-30");
    EXPECT_EQ(ticks.at(1), "2027-02-28");
}

}  // namespace
