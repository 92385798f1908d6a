#include "answers/join/answer.hpp"

#include <algorithm>

namespace {

using namespace answers;
using namespace units;
using testing::HasSubstr;

// Two LiFePO4 packs of 100 Ah behind fuses of so many amperes.
Answer answer(double unit_charge, double pack_charge, double fuse, double degrees = 25.0) {
    scenario::Scenario made;
    const auto pack = [&](std::string name, double charge) {
        return scenario::Pack{.name = std::move(name),
                              .chemistry = scenario::Chemistry::lifepo4,
                              .capacity = 100.0 * ampere_hour,
                              .charge = StateOfCharge(charge),
                              .fuse = fuse * ampere};
    };
    made.packs = {pack("main", unit_charge), pack("spare", pack_charge)};
    made.outage.battery_temperature = celsius(degrees);
    return join_answer(made, *handling::join(made));
}

bool stops(const Answer& answer) {
    return std::ranges::any_of(answer.findings, [](const PinnedFinding& each) {
        return each.finding.severity == scenario::Severity::stop;
    });
}

TEST(join_answer, nothing_is_found_against_level_packs_and_safe_is_not_said) {
    const auto told = answer(0.8, 0.8, 100.0);
    EXPECT_THAT(told.sentences.front(),
                HasSubstr("Nothing was found against plugging spare onto main now"));
    EXPECT_FALSE(stops(told));
    for (const auto& sentence : told.sentences)
        EXPECT_THAT(sentence, testing::Not(HasSubstr("safe")));
}

// 100 % rests 0.3 V above 50 %: a dozen amperes through two packs of some 10 mohm.
TEST(join_answer, too_much_current_is_refused_with_its_amount_and_direction) {
    const auto told = answer(0.5, 1.0, 10.0);
    EXPECT_THAT(told.sentences.front(), HasSubstr("Do not plug spare onto main now"));
    EXPECT_THAT(told.sentences.front(), HasSubstr("would flow from spare into main"));
    EXPECT_TRUE(stops(told));
    EXPECT_THAT(answer(1.0, 0.5, 10.0).sentences.front(),
                HasSubstr("would flow from main into spare"));
}

TEST(join_answer, a_freezing_pack_is_refused_a_charge) {
    const auto told = answer(1.0, 0.5, 1000.0, -5.0);
    EXPECT_TRUE(stops(told));
    EXPECT_THAT(told.sentences.front(), HasSubstr("Do not plug"));
    for (const auto& sentence : told.sentences)  // nothing settles that must not begin
        EXPECT_THAT(sentence, Not(HasSubstr("below 1 A")));
    EXPECT_THAT(in_english(told.sentences.at(1)),
                HasSubstr("No difference is small enough for charging pack spare this cold."));
}

TEST(join_answer, the_part_that_is_first_at_its_limit_is_named) {
    EXPECT_THAT(in_english(answer(0.5, 1.0, 10.0).sentences.at(1)),
                testing::EndsWith("the first to reach it is the fuse of pack main (10 A)."));
}

TEST(join_answer, in_german_it_is_whole_sentences) {
    const auto german = *words::language("de");
    const auto refused = answer(0.5, 1.0, 10.0);
    EXPECT_THAT(words::in(german, refused.sentences.front()),
                testing::MatchesRegex("Stecken Sie spare jetzt nicht mit main zusammen: Anfangs "
                                      "würden 1[0-9] A von spare zu main fließen\\."));
    EXPECT_THAT(words::in(german, refused.sentences.at(1)),
                testing::EndsWith("zuerst erreicht sie: Akku main, Sicherung (10 A)."));
    EXPECT_THAT(words::in(german, answer(1.0, 0.5, 1000.0, -5.0).sentences.at(1)),
                HasSubstr("Kein Unterschied ist klein genug für dieses Teil: Laden von Akku "
                          "spare bei dieser Kälte."));
}

}  // namespace
