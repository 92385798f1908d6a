#include "answers/outage/sentences.hpp"

#include "support/made_plan.hpp"

namespace {

using namespace answers;
using outage::MorePacks;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;
using units::hour;

outage::Plan ending(double early, double likely, double late) {
    outage::Plan plan;
    plan.packs = 1;
    plan.uncertain = early != late;
    for (auto [course, lasts] : {std::pair(&plan.earliest, early), std::pair(&plan.likely, likely),
                                 std::pair(&plan.latest, late)}) {
        course->lasts = lasts * hour;
        course->survives = lasts >= 96.0;
        course->limited_by = outage::LimitedBy::charge;
    }
    return plan;
}

std::string first(const outage::Plan& plan, const std::vector<MorePacks>& more = {}) {
    return words::in_english(outage_sentences(made::scenario(), plan, more).front());
}

TEST(outage_sentences, a_sharp_answer_is_one_clock_time) {
    EXPECT_EQ(first(ending(9.0, 9.0, 9.0)),
              "Lasts until Thursday 03:00; then the packs are empty.");
}

TEST(outage_sentences, a_doubtful_answer_is_a_range) {
    EXPECT_EQ(first(ending(3.0, 9.0, 15.0)),
              "Lasts until Thursday 03:00 (between Wednesday 21:00 and Thursday 09:00); then the "
              "packs are empty.");
}

TEST(outage_sentences, a_tenth_to_either_side_is_no_range) {
    EXPECT_THAT(first(ending(36.5, 40.0, 43.5)), Not(HasSubstr("between")));
    EXPECT_THAT(first(ending(35.0, 40.0, 43.5)), HasSubstr("between"));
}

TEST(outage_sentences, a_best_end_that_lasts_is_told_as_the_whole_outage) {
    EXPECT_THAT(first(ending(20.0, 40.0, 96.0)),
                HasSubstr("(at the earliest Thursday 14:00, at best the whole outage)"));
}

TEST(outage_sentences, the_fewest_packs_that_carry_it_through_are_named) {
    const std::vector<MorePacks> more{{.packs = 2, .lasts = 50.0 * hour, .survives = false},
                                      {.packs = 3, .lasts = 96.0 * hour, .survives = true},
                                      {.packs = 4, .lasts = 96.0 * hour, .survives = true}};
    EXPECT_EQ(outage_sentences(made::scenario(), ending(9.0, 9.0, 9.0), more)[1],
              "On likely figures two more packs carry you through to the end, Sunday 18:00.");
    EXPECT_EQ(outage_sentences(made::scenario(), ending(9.0, 9.0, 9.0), {more[1]})[1],
              "On likely figures two more packs carry you through to the end, Sunday 18:00.");
}

TEST(outage_sentences, packs_that_are_not_enough_are_told_as_such) {
    const std::vector<MorePacks> more{{.packs = 2, .lasts = 20.0 * hour, .survives = false}};
    EXPECT_EQ(outage_sentences(made::scenario(), ending(9.0, 9.0, 9.0), more)[1],
              "On likely figures one more pack carries you to Thursday 14:00, which is still short "
              "of Sunday 18:00.");
}

TEST(outage_sentences, packs_that_change_nothing_are_not_recommended) {
    const std::vector<MorePacks> more{{.packs = 2, .lasts = 9.0 * hour, .survives = false}};
    EXPECT_EQ(outage_sentences(made::scenario(), ending(9.0, 9.0, 9.0), more)[1],
              "More packs alone do not make it last longer.");
}

TEST(outage_sentences, a_unit_that_lasts_tells_what_is_left_and_when_power_returns) {
    auto plan = ending(96.0, 96.0, 96.0);
    plan.likely.trace.push_back({.at = 96.0 * hour, .charge = units::StateOfCharge(0.344)});
    EXPECT_EQ(first(plan),
              "Lasts the whole outage; 34 % is left when the power returns on Sunday 18:00.");
}

TEST(outage_sentences, a_unit_that_lasts_only_likely_tells_the_bad_end_too) {
    EXPECT_THAT(
        outage_sentences(made::scenario(), ending(84.0, 96.0, 96.0), {}),
        ElementsAre(
            HasSubstr("Lasts the whole outage"),
            HasSubstr("If every doubtful figure turns out badly it lasts until the morning of "
                      "Sunday.")));
}

TEST(outage_sentences, who_goes_without_is_told_and_what_goes_on) {
    auto plan = ending(1.1, 1.1, 1.1);
    plan.likely.events = {{.at = 1.1 * hour, .kind = outage::EventKind::load_off}};
    plan.likely.trace.push_back({.at = 96.0 * hour, .charge = units::StateOfCharge(0.19)});
    plan.loads = {{.name = "heater", .on_time = 75.0 * units::minute, .fed = 66.0 * units::minute},
                  {.name = "lamp", .on_time = 96.0 * hour, .fed = 96.0 * hour}};
    plan.loads[0].goes_without = {{1.1 * hour, 1.25 * hour, outage::LimitedBy::charge}};
    EXPECT_THAT(
        outage_sentences(made::scenario(), plan, {}),
        ElementsAre(
            HasSubstr("Lasts until Wednesday 19:05; then the packs cannot carry all of it "
                      "any more."),
            HasSubstr(
                "Without supply: heater from 19:06 (9 min missing). Everything else lasts; 19 % "
                "is left.")));
}

TEST(outage_sentences, the_usable_share_ends_the_promise_and_switches_nothing_off) {
    auto plan = ending(9.0, 9.0, 9.0);
    plan.likely.limited_by = outage::LimitedBy::usable;
    plan.likely.trace.push_back({.at = 96.0 * hour, .charge = units::StateOfCharge(0.03)});
    plan.loads = {{.name = "heater"}};
    EXPECT_THAT(
        outage_sentences(made::scenario(), plan, {}),
        ElementsAre(
            HasSubstr("Lasts until Thursday 03:00; then the packs are as far down as you "
                      "allow."),
            HasSubstr("Nothing is switched off by that: the packs could carry everything to "
                      "the end; 3 % is left then.")));
    plan.loads[0].goes_without = {{11.0 * hour, 96.0 * hour, outage::LimitedBy::charge}};
    EXPECT_THAT(outage_sentences(made::scenario(), plan, {})[1],
                HasSubstr("could carry everything until Thursday 05:00."));
}

TEST(outage_sentences, a_unit_that_cannot_begin_says_so) {
    auto plan = ending(0.0, 0.0, 0.0);
    plan.likely.limited_by = outage::LimitedBy::inverter_limit;
    EXPECT_EQ(first(plan),
              "Does not carry these loads from the start: the loads ask for more than the inverter "
              "gives.");
}

}  // namespace
