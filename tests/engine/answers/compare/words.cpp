#include "answers/compare/words.hpp"

#include "words/language.hpp"

namespace {

using namespace answers;
using fitting::Change;
using fitting::Dirty;
using fitting::Moved;
using fitting::Reach;
using fitting::Verdict;
using starting::Constraint;
using starting::StartVerdict;
using starting::Utilised;

TEST(compare_words, every_check_has_a_name_in_words) {
    std::set<std::string> names;
    for (int number = 1; number <= 16; ++number)
        names.insert(in_english(check_in_words("C" + std::to_string(number))));
    EXPECT_EQ(names.size(), 16U);
    for (const std::string& name : names)
        EXPECT_FALSE(name.starts_with("C")) << name;
    EXPECT_EQ(check_in_words("C8"), "voltage drop");
    EXPECT_EQ(check_in_words("C17"), "C17");
}

questions::CompareFound found(std::vector<Moved> moved, std::set<Dirty> dirty = {}) {
    return {.old_build = {},
            .new_build = {},
            .changes = {},
            .dirty = std::move(dirty),
            .moved = std::move(moved),
            .keys = {}};
}

Moved from_to(Verdict before, Verdict after) {
    return {.check = "C1",
            .circuit = "lamps",
            .before = before,
            .after = after,
            .text = {},
            .mend = {}};
}

TEST(compare_words, checks_are_gathered_by_place_in_their_order) {
    EXPECT_EQ(to_look_at_again(found({}, {{"C10", Reach::here, "lamps"},
                                          {"C8", Reach::here, "lamps"},
                                          {"C4", Reach::everywhere, ""}})),
              "Check again: voltage drop and current from the other packs of lamps; short circuit "
              "everywhere. No check is better or worse than before.");
}

TEST(compare_words, what_is_worse_is_counted_beside_what_is_better) {
    const Moved worse = from_to(Verdict::fits, Verdict::fails);
    const Moved better = from_to(Verdict::fails, Verdict::fits);
    const auto told = [](std::vector<Moved> moved) {
        return in_english(to_look_at_again(found(std::move(moved))));
    };
    const std::string same = "No part of the wiring differs. ";
    EXPECT_EQ(told({worse}), same + "1 check is now worse.");
    EXPECT_EQ(told({worse, worse, better}), same + "2 checks are now worse, 1 better.");
    EXPECT_EQ(told({better, better}), same + "2 checks are now better, none is worse.");
}

TEST(compare_words, a_change_names_its_circuit_and_what_to_ask_again) {
    const std::vector<Change> changes{
        {.kind = "switch", .circuit = "lamps", .words = words::said<"the switch is new">()},
        {.kind = "goal", .circuit = "", .words = words::said<"the goal is new">()}};
    EXPECT_EQ(changes_in_words(changes),
              "What changed: lamps: the switch is new; the goal is new.");
    EXPECT_EQ(questions_of(changes), (std::set<std::string>{"outage", "packs", "start"}));
    auto all = found({});
    all.changes = changes;
    EXPECT_THAT(
        in_english(to_look_at_again(all)),
        testing::EndsWith("Ask again: how long it lasts, how many packs, whether the motors "
                          "start."));
}

TEST(compare_words, a_start_is_told_beside_the_one_before) {
    const questions::ComparedStart before{"saw", StartVerdict::starts, Constraint::surge_power,
                                          Utilised(0.8)};
    const questions::ComparedStart after{"saw", StartVerdict::will_not_start,
                                         Constraint::surge_power, Utilised(1.4)};
    EXPECT_EQ(start_in_words(&before, after),
              "saw does not start: 140 % of its tightest limit, surge of the inverter (before: "
              "starts, 80 %).");
    EXPECT_EQ(start_in_words(nullptr, before),
              "saw starts: 80 % of its tightest limit, surge of the inverter (it was not there "
              "before).");
}

TEST(compare_words, german_says_the_whole_of_it) {
    const auto german = *words::language("de");
    EXPECT_EQ(words::in(german, to_look_at_again(found({from_to(Verdict::fits, Verdict::fails)},
                                                       {{"C8", Reach::here, "Lampen"}}))),
              "Prüfen Sie neu: Lampen: Spannungsabfall. 1 Prüfung fällt jetzt schlechter aus.");
}

}  // namespace
