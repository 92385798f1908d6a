#include "answers/packs/sentences.hpp"

#include <fmt/ranges.h>

#include "support/made_plan.hpp"

namespace {

using namespace answers;
using testing::HasSubstr;
using testing::Not;

// Two packs with three panels, beside one that lasts as surely.
questions::PacksFound two_where_one_would_last() {
    const auto build = [](int packs) {
        return sizing::Build{.packs = packs,
                             .panels = 3,
                             .figures = {.of = units::Probability(1.0), .members = 256},
                             .timed = true};
    };
    questions::PacksFound found{.packs = 2, .panels = 3};
    found.builds.goal = units::Probability(0.9);
    found.builds.feasible = true;
    found.builds.with_these_panels = build(2);
    found.builds.one_fewer = build(1);
    return found;
}

TEST(packs_sentences, a_pack_more_for_the_sake_of_a_motor_says_so) {
    auto found = two_where_one_would_last();
    found.starts = questions::StartNeeds{.packs = 2, .load = "circular saw"};
    EXPECT_THAT(packs_sentences(made::scenario(), found).front(),
                HasSubstr("; with one pack in all, more than 99 times in 100, but circular saw needs two to "
                          "start."));
}

TEST(packs_sentences, a_motor_that_one_fewer_would_start_is_not_named) {
    auto found = two_where_one_would_last();
    found.starts = questions::StartNeeds{.packs = 1, .load = "circular saw"};
    EXPECT_THAT(packs_sentences(made::scenario(), found).front(), Not(HasSubstr("to start")));
}

// Nothing up to the most meets the goal, whatever is switched off.
questions::PacksFound nothing_is_enough() {
    auto found = two_where_one_would_last();
    found.builds.feasible = false;
    found.builds.best_chance = found.builds.with_these_panels;
    found.builds.best_chance->figures.of = units::Probability(0.02);
    found.builds.with_these_panels.reset();
    found.builds.one_fewer.reset();
    return found;
}

TEST(packs_sentences, who_lives_by_a_machine_that_no_build_carries_is_sent_to_its_supplier) {
    auto scenario = made::scenario();
    scenario.loads.clear();
    const auto all = [&] {
        return words::in_english(words::together(packs_sentences(scenario, nothing_is_enough())));
    };
    EXPECT_THAT(all(), HasSubstr("plan for another source besides."));
    EXPECT_THAT(all(), Not(HasSubstr("supplier")));
    scenario.loads.push_back({.name = "oxygen machine", .medical = true});
    EXPECT_THAT(all(), HasSubstr("besides. Ask the equipment supplier which."));
}

}  // namespace
