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
                HasSubstr("Nothing found against plugging spare onto main"));
    EXPECT_FALSE(stops(told));
    for (const auto& sentence : told.sentences)
        EXPECT_THAT(sentence, testing::Not(HasSubstr("safe")));
}

// 100 % rests 0.3 V above 50 %: a dozen amperes through two packs of some 10 mohm.
TEST(join_answer, too_much_current_is_refused_with_its_amount_and_direction) {
    const auto told = answer(0.5, 1.0, 10.0);
    EXPECT_THAT(told.sentences.front(), HasSubstr("Do not plug spare onto main now"));
    EXPECT_THAT(told.sentences.front(), HasSubstr("out of spare into main"));
    EXPECT_TRUE(stops(told));
    EXPECT_THAT(answer(1.0, 0.5, 10.0).sentences.front(), HasSubstr("out of main into spare"));
}

TEST(join_answer, a_freezing_pack_is_refused_a_charge) {
    const auto told = answer(1.0, 0.5, 1000.0, -5.0);
    EXPECT_TRUE(stops(told));
    EXPECT_THAT(told.sentences.front(), HasSubstr("Do not plug"));
    for (const auto& sentence : told.sentences)  // nothing settles that must not begin
        EXPECT_THAT(sentence, Not(HasSubstr("below 1 A")));
}

}  // namespace
