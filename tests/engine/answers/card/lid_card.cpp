#include "answers/card/lid_card.hpp"

#include <algorithm>
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "support/in_english.hpp"
#include "support/known_in_german.hpp"
#include "support/made_card.hpp"

namespace {

using namespace answers;
using testing::Contains;
using testing::HasSubstr;

scenario::Scenario lithium() {
    scenario::Scenario scenario;
    scenario.title = "A unit";
    scenario.packs = {{.name = "main"}, {.name = "spare"}};
    return scenario;
}

CardPart part(const LidCard& card, const std::string& name) {
    return *std::ranges::find(card.parts, name, &CardPart::name);
}

// As they are read in English.
std::vector<std::string> told(const std::vector<words::Said>& lines) {
    std::vector<std::string> texts;
    for (const auto& line : lines)
        texts.push_back(words::in_english(line));
    return texts;
}

TEST(lid_card, hours_are_rounded_down_so_that_nobody_counts_on_the_rest) {
    const auto card = lid_card(lithium(), made::card(), "made");
    EXPECT_EQ(card.answer, "Everything on: 28 h");
    EXPECT_EQ(card.basis.front(),
              "Nine times in ten; half the time 38 h; to the end 12 times in 100.");
}

TEST(lid_card, what_meets_the_goal_lasts_to_the_end_with_its_chance) {
    auto with = made::card();
    with.ration->all_on.figures.of = units::Probability(0.954);
    with.ration->all_on.figures.low = units::Probability(0.94);
    with.ration->all_on.figures.high = units::Probability(0.97);
    const auto card = lid_card(lithium(), with, "made");
    EXPECT_EQ(card.answer, "Everything on: to the end");
    EXPECT_EQ(card.basis.front(), "95 times in 100.");
}

TEST(lid_card, what_stands_in_the_way_is_told_on_the_card_too) {
    auto with = made::card();
    const scenario::Finding stop{scenario::Severity::stop, "load saw", "Will not start.", "", ""};
    with.outage->plan.findings = {stop, stop};
    EXPECT_THAT(told(lid_card(lithium(), with, "").basis),
                Contains("STOP, load saw: Will not start. There is 1 more: see the report."));
}

TEST(lid_card, what_cannot_be_answered_is_named_with_its_reason) {
    auto without = made::card();
    without.outage = units::fail(made::not_known());
    const auto card = lid_card(lithium(), without, "");
    EXPECT_EQ(card.answer, "Not answered");
    EXPECT_THAT(told(card.basis), testing::ElementsAre("Not answered: pack: there is no pack."));
}

TEST(lid_card, a_part_without_room_first_gives_up_words_then_says_what_is_left_out) {
    auto card = lid_card(lithium(), made::card(), "");
    auto cautions = part(card, "cautions");
    const std::size_t lines = cautions.lines.size();
    for (std::size_t line = 0; line < lines; ++line)
        EXPECT_TRUE(cut_one(cautions)) << line;
    EXPECT_THAT(
        told(cautions.lines),
        Contains("Medical loads: This unit is not a life-support device: have a second way."));
    EXPECT_EQ(cautions.lines.size(), lines);
    EXPECT_FALSE(cut_one(cautions));
    EXPECT_EQ(left_out(cautions), "");
    CardPart fuses{.name = "fuses", .heading = "Fuses"};
    fuses.table.rows = {{"a"}, {"b"}, {"c"}};
    EXPECT_TRUE(cut_one(fuses));
    EXPECT_EQ(left_out(fuses), "and 1 more circuit: see the report.");
    EXPECT_FALSE(cut_one(fuses));
    auto cold = part(card, "cold");
    EXPECT_FALSE(cut_one(cold));
}

// All that a painter shows, in one text.
std::string all_of(const LidCard& card, const words::Language& language) {
    std::string text;
    const auto add = [&](const words::Said& said) { text += words::in(language, said) + "\n"; };
    add(card.title);
    add(card.answer);
    std::ranges::for_each(card.basis, add);
    for (const CardPart& part : card.parts) {
        add(part.heading);
        std::ranges::for_each(part.lines, add);
        std::ranges::for_each(part.table.headings, add);
        for (const auto& row : part.table.rows)
            std::ranges::for_each(row, add);
        std::ranges::for_each(part.after, add);
        std::ranges::for_each(part.ticks, add);
        std::ranges::for_each(part.brief, add);
        auto shorter = part;
        shorter.cut = 2;
        add(left_out(shorter));
    }
    add(card.closing);
    return text;
}

void expect_known(const std::vector<words::Said>& lines) {
    std::ranges::for_each(lines, words::expect_known_in_german);
}

TEST(lid_card, comes_out_wholly_in_german) {
    auto lead = lithium();
    lead.packs.back().chemistry = scenario::Chemistry::flooded;
    lead.outage.battery_temperature = units::celsius(-5.0);
    const auto card = lid_card(lead, made::card(), "");
    expect_known({card.title, card.answer, card.closing});
    expect_known(card.basis);
    for (const CardPart& part : card.parts) {
        words::expect_known_in_german(part.heading);
        for (const auto* lines :
             {&part.lines, &part.after, &part.ticks, &part.brief, &part.table.headings})
            expect_known(*lines);
        std::ranges::for_each(part.table.rows, expect_known);
    }
    const auto text = all_of(card, words::german());
    EXPECT_THAT(text, HasSubstr("Alles an: 28 h"));
    EXPECT_THAT(text, HasSubstr("Laden Sie LiFePO4 nie bei 0 °C oder darunter: erst anwärmen."));
    EXPECT_THAT(text, HasSubstr("und noch 2 Ablesungen: siehe Bericht."));
}

TEST(lid_card, tells_degrees_and_hours_as_its_reader_has_them) {
    auto scenario = lithium();
    scenario.outage.starts = *units::read_local_time("2026-01-14T18:00:00");
    scenario.outage.battery_temperature = units::celsius(5.0);
    const auto card = lid_card(scenario, made::card(), "");
    const auto text = all_of(card, {.twelve_hours = true, .us_units = true});
    EXPECT_THAT(text, HasSubstr("From full packs on Wed 14 Jan 6:00 PM, packs at 5 °C (41 °F)"));
    EXPECT_THAT(text, HasSubstr("at or below 0 °C (32 °F)"));
    EXPECT_THAT(text, HasSubstr("at −10 °C (14 °F)"));
    EXPECT_THAT(all_of(card, words::english()), HasSubstr("Wed 14 Jan 18:00, packs at 5 °C,"));
}

}  // namespace
