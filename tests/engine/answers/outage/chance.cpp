#include "answers/outage/chance.hpp"

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "support/made_plan.hpp"

namespace {

using namespace answers;
using outage::LimitedBy;
using questions::OutageChance;
using units::hour;
using units::Probability;

// Four days from Wednesday 14 January 2026 18:00, to Sunday 18:00.
OutageChance told(double of, double count_on, double half, double half_width = 0.02) {
    return {.figures = {.of = Probability(of),
                        .low = Probability(std::max(0.0, of - half_width)),
                        .high = Probability(std::min(1.0, of + half_width)),
                        .members = 1024,
                        .effective = 1024.0,
                        .nine_in_ten = count_on * hour,
                        .half = half * hour,
                        .one_in_ten = 96.0 * hour,
                        .goal = Probability(0.9),
                        .count_on = count_on * hour},
            .packs = 4};
}

std::string headline(const OutageChance& chance) {
    return words::in_english(chance_sentences(made::scenario().outage, chance).front());
}

TEST(outage_chance, what_meets_the_goal_is_one_plain_sentence) {
    EXPECT_EQ(headline(told(0.95, 96.0, 96.0)), "Lasts to the end, Sunday 18:00, 95 times in 100.");
    EXPECT_EQ(headline(told(1.0, 96.0, 96.0)),
              "Lasts to the end, Sunday 18:00, more than 99 times in 100.");
}

TEST(outage_chance, between_half_and_the_goal_says_what_may_be_counted_on) {
    EXPECT_EQ(headline(told(0.61, 73.0, 96.0)),
              "Count on it until the evening of Saturday (nine times in ten). To the end, Sunday "
              "18:00, 61 times in 100.");
}

TEST(outage_chance, below_half_adds_what_is_most_likely) {
    EXPECT_EQ(headline(told(0.35, 62.0, 87.0)),
              "Count on it until the morning of Saturday (nine times in ten), most likely until "
              "the morning of Sunday. To the end, Sunday 18:00, 35 times in 100.");
    EXPECT_EQ(headline(told(0.001, 29.0, 36.0)),
              "Count on it until Thursday 23:00 (nine times in ten), most likely until Friday "
              "06:00. To the end, Sunday 18:00, fewer than once in 100.");
}

TEST(outage_chance, times_that_are_nearly_one_are_told_as_one) {
    EXPECT_EQ(headline(told(0.05, 21.0, 22.0)),
              "Lasts until about Thursday 15:00 (nine times in ten). To the end, Sunday 18:00, 5 "
              "times in 100.");
}

TEST(outage_chance, what_stops_at_once_comes_first) {
    auto chance = told(0.61, 0.0, 96.0);
    chance.figures.at_once = Probability(0.23);
    chance.limits_at_once = LimitedBy::inverter_limit;
    EXPECT_EQ(headline(chance),
              "May not carry these loads at all: in 23 of 100 cases the inverter stops at once. To "
              "the end, Sunday 18:00, 61 times in 100.");
    chance.figures.of = Probability(0.30);
    chance.figures.low = Probability(0.28);
    chance.figures.high = Probability(0.32);
    chance.figures.half = 20.5 * hour;
    EXPECT_EQ(headline(chance),
              "May not carry these loads at all: in 23 of 100 cases the inverter stops at once. "
              "Most likely it lasts until Thursday 14:00. To the end, Sunday 18:00, 30 times in "
              "100.");
    chance.figures.at_once = Probability(0.80);
    EXPECT_EQ(headline(chance),
              "Does not carry these loads: the inverter stops at once in 80 of 100 cases.");
    chance.figures.at_once = Probability(1.0);
    chance.limits_at_once = LimitedBy::fuse;
    EXPECT_EQ(headline(chance), "Does not carry these loads: a fuse opens at once.");
}

TEST(outage_chance, a_goal_of_its_own_is_named) {
    auto chance = told(0.61, 73.0, 96.0);
    chance.figures.goal = Probability(0.99);
    EXPECT_THAT(headline(chance), testing::HasSubstr("Saturday (99 times in 100). To"));
    chance.figures.goal = Probability(0.995);
    EXPECT_THAT(headline(chance), testing::HasSubstr("(99.5 times in 100)"));
    chance.figures.goal = Probability(0.55);
    EXPECT_THAT(headline(chance), testing::HasSubstr("Lasts to the end"));
}

TEST(outage_chance, more_packs_are_counted_with_those_that_are_there) {
    auto chance = told(0.35, 62.0, 87.0);
    const auto second = [&] { return chance_sentences(made::scenario().outage, chance)[1]; };
    const auto known_to = [](double of, double half) {
        return chance::Interval{.low = Probability(of - half), .high = Probability(of + half)};
    };
    chance.more = sizing::MorePacks{
        .more = 2, .tried = 2, .of = Probability(0.935), .interval = known_to(0.935, 0.03)};
    EXPECT_EQ(second(), "Two more packs (six in all): 93 times in 100.");
    // as the question of packs says it of the same members
    chance.more->interval = known_to(0.935, 0.04);
    EXPECT_EQ(second(), "Two more packs (six in all): about 9 times in ten.");
    chance.more = sizing::MorePacks{
        .more = 1, .tried = 1, .of = Probability(0.9), .interval = known_to(0.9, 0.02)};
    EXPECT_EQ(second(), "One more pack (five in all): 90 times in 100.");
    chance.more = sizing::MorePacks{
        .more = 0, .tried = 16, .of = Probability(0.48), .interval = known_to(0.48, 0.02)};
    EXPECT_EQ(second(),
              "16 more packs (20 in all): 48 times in 100, which is still short of nine times in "
              "ten.");
    chance.more = sizing::MorePacks{.more = 0, .tried = 16, .of = Probability(0.35)};
    EXPECT_EQ(second(), "More packs alone do not make it last longer.");
}

TEST(outage_chance, what_ends_most_of_those_that_end_early_is_named) {
    auto chance = told(0.95, 96.0, 96.0);
    chance.limits = LimitedBy::low_voltage;
    EXPECT_THAT(
        chance_sentences(made::scenario().outage, chance),
        testing::ElementsAre(
            testing::_,
            testing::HasSubstr(
                "Where it ends early, the reason is: the inverter switches off on low voltage.")));
    chance.figures.of = Probability(1.0);
    EXPECT_EQ(chance_sentences(made::scenario().outage, chance).size(), 1U);
}

TEST(outage_chance, a_weather_files_one_year_is_told_with_what_it_leaves_open) {
    auto chance = told(0.649, 62.0, 96.0, 0.149);
    chance.one_year = true;
    EXPECT_EQ(chance_sentences(made::scenario().outage, chance).back(),
              "The weather file is one year: between 50 and 80 times in 100.");
}

// ---- Where nobody knows how long it lasts.

std::string open_ended_headline(const OutageChance& chance) {
    auto outage = made::scenario().outage;
    outage.open_ended = true;
    outage.half_over_by = 24.0 * hour;
    outage.lasts = 245.8 * hour;
    return words::in_english(chance_sentences(outage, chance).front());
}

TEST(outage_chance, of_an_unknown_length_says_what_half_of_them_do) {
    EXPECT_EQ(open_ended_headline(told(0.67, 26.0, 41.0)),
              "Lasts longer than the outage 67 times in 100, if half of such outages are over "
              "within 24 h. Count on it until Thursday 20:00 (nine times in ten), most likely "
              "until Friday 11:00.");
    EXPECT_EQ(open_ended_headline(told(0.995, 110.0, 245.8)),
              "Lasts longer than the outage more than 99 times in 100, if half of such outages "
              "are over within 24 h. Count on it until the morning of Monday (nine times in ten).");
    EXPECT_EQ(open_ended_headline(told(1.0, 245.8, 245.8)),
              "Lasts longer than the outage more than 99 times in 100, if half of such outages "
              "are over within 24 h. Count on it for the 10 days that are looked at (nine times "
              "in ten).");
}

TEST(outage_chance, of_an_unknown_length_says_first_that_it_may_not_carry_at_all) {
    auto chance = told(0.3, 0.0, 20.0);
    chance.figures.at_once = Probability(0.23);
    chance.limits_at_once = LimitedBy::inverter_limit;
    EXPECT_EQ(open_ended_headline(chance),
              "May not carry these loads at all: in 23 of 100 cases the inverter stops at once. "
              "Lasts longer than the outage 30 times in 100, if half of such outages are over "
              "within 24 h. Most likely it lasts until Thursday 14:00.");
    chance.figures.at_once = Probability(0.8);
    EXPECT_EQ(open_ended_headline(chance),
              "Does not carry these loads: the inverter stops at once in 80 of 100 cases.");
}

}  // namespace
