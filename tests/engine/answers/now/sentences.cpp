#include "answers/now/sentences.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "support/in_english.hpp"
#include "support/known_in_german.hpp"

namespace {

using namespace answers;
using testing::Contains;
using testing::HasSubstr;
using units::hour;

const units::LocalTime now = *units::read_local_time("2026-01-15T18:00:00");

scenario::Scenario four_days() {
    scenario::Scenario scenario;
    scenario.outage.starts = *units::read_local_time("2026-01-14T18:00:00");
    scenario.outage.lasts = 96.0 * hour;
    scenario.loads = {{.name = "lamps"}, {.name = "freezer"}};
    scenario.log = {{.at = *units::read_local_time("2026-01-15T06:00:00")},
                    {.at = *units::read_local_time("2026-01-15T12:00:00")}};
    scenario.log[0].shows = units::StateOfCharge(0.78);
    scenario.log[1].shows = units::StateOfCharge(0.42);
    return scenario;
}

chance::Figures figures(double count_on, double half, double of = 0.12) {
    return {.of = units::Probability(of),
            .low = units::Probability(of - 0.02),
            .high = units::Probability(of + 0.02),
            .half = half * hour,
            .one_in_ten = 2.0 * half * hour,
            .goal = units::Probability(0.9),
            .count_on = count_on * hour};
}

estimate::Outlook outlook() {
    estimate::Outlook outlook;
    outlook.figures = figures(12.0, 20.0);
    outlook.width = 14.0 * hour;
    outlook.next_off = {{.load = 0, .alone = 0.05 * hour, .figures = figures(12.0, 20.0)},
                        {.load = 1, .alone = 3.0 * hour, .figures = figures(15.0, 24.0)}};
    outlook.read_next = {{.what = estimate::NextRead::meter, .load = 1, .width_after = 6.0 * hour}};
    outlook.readings = 2;
    return outlook;
}

std::vector<words::Said> sentences_of(const estimate::Outlook& outlook) {
    auto sentences = now_sentences(four_days(), now, outlook);
    for (const auto& sentence : sentences)
        words::expect_known_in_german(sentence);
    return sentences;
}

TEST(now_sentences, the_first_three_are_until_when_what_to_switch_off_and_what_to_read) {
    const auto sentences = sentences_of(outlook());
    ASSERT_GE(sentences.size(), 3U);
    EXPECT_EQ(sentences[0],
              "Count on it until Friday 06:00 (nine times in ten); most likely it lasts until "
              "Friday 14:00. It lasts to the end, Sunday 18:00, 12 times in 100.");
    EXPECT_EQ(sentences[1],
              "Switch off next: freezer. That alone buys about 3 h. Then count on it until Friday "
              "09:00; most likely it lasts until Friday 18:00. For that, switch off too: lamps.");
    EXPECT_EQ(sentences[2],
              "Read next: a plug-in meter on freezer, for a day. The end is known to within 14 h, "
              "and after that reading to within about 6 h.");
    EXPECT_EQ(words::in(words::german(), sentences[0]),
              "Verlassen Sie sich darauf bis Freitag 06:00 (neunmal von zehn); am "
              "wahrscheinlichsten reicht es bis Freitag 14:00. Es reicht bis zum Ende, Sonntag "
              "18:00, 12-mal von 100.");
}

// A gain that the hours would not show is not told as a time of its own.
TEST(now_sentences, a_small_gain_is_told_by_its_length_alone) {
    auto with = outlook();
    with.next_off = {{.load = 0, .alone = 0.25 * hour, .figures = figures(12.3, 20.3)}};
    EXPECT_EQ(sentences_of(with)[1], "Switch off next: lamps. That alone buys about 15 min.");
}

TEST(now_sentences, who_needs_nothing_is_asked_for_nothing) {
    auto with = outlook();
    with.figures = figures(72.0, 72.0, 0.95);
    const auto sentences = sentences_of(with);
    EXPECT_EQ(sentences[0], "It lasts to the end, Sunday 18:00, 95 times in 100.");
    EXPECT_EQ(sentences[1], "Nothing needs to be switched off.");
}

TEST(now_sentences, what_departs_is_told_with_what_it_follows_from_and_what_else_it_may_be) {
    auto with = outlook();
    with.fits = false;
    with.departures = {{.what = words::said<"what {load} draws">("freezer"),
                        .low = 1.1,
                        .likely = 1.2,
                        .high = 1.32,
                        .because = {0},
                        .or_else = {words::said<"what the panels give">()}}};
    EXPECT_THAT(sentences_of(with),
                Contains(testing::ResultOf(
                    [](const words::Said& said) { return words::in_english(said); },
                    testing::AllOf(HasSubstr("Perhaps what freezer draws is 20 % more than planned "
                                             "(1.10 to 1.32 times the plan). This follows from: "),
                                   HasSubstr("Or else it is what the panels give: the readings "
                                             "cannot tell which.")))));
}

TEST(now_sentences, readings_that_exclude_each_other_are_named) {
    auto with = outlook();
    with.contradiction = estimate::Contradiction{.odd = {0, 1}};
    const auto sentences = sentences_of(with);
    EXPECT_THAT(words::in_english(sentences[3]), HasSubstr("These readings cannot all be true: "));
    EXPECT_THAT(words::in_english(sentences[3]), HasSubstr("; "));
}

// Four fifths of the twelve hours that are counted on: 03:36, told downwards to the hour.
TEST(now_sentences, who_relies_on_a_machine_is_told_first_by_when_to_act) {
    auto scenario = four_days();
    scenario.loads[1].medical = true;
    const auto sentences = now_sentences(scenario, now, outlook());
    EXPECT_THAT(words::in_english(sentences[0]), HasSubstr("act by Friday 03:00"));
    words::expect_known_in_german(sentences[0]);
}

TEST(now_sentences, a_supply_that_is_back_ends_it) {
    auto with = outlook();
    with.story.supply_back = now;
    const auto sentences = sentences_of(with);
    ASSERT_EQ(sentences.size(), 1U);
    EXPECT_THAT(words::in_english(sentences[0]),
                HasSubstr("The supply came back on Thursday 18:00: the outage is over."));
}

}  // namespace
