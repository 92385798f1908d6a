#include "answers/storage/answer.hpp"

#include <algorithm>

#include "scenario/file/read.hpp"

namespace {

using namespace answers;
using testing::HasSubstr;

Answer answer(const scenario::Overrides& overrides = {}) {
    const auto read = scenario::read_scenario_file(
        CANDLEMARK_SOURCE_DIR "/tests/published/questions/eight_months_in_the_garage.toml",
        overrides);
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    return storage_answer(read->scenario, *handling::storage(read->scenario));
}

std::string all_sentences(const Answer& answer) {
    std::string all;
    for (const auto& sentence : answer.sentences)
        all += in_english(sentence) + " ";
    return all;
}

// 16 % left of 70, 55 % with the switch open: the worked question's own figures.
TEST(storage_answer, what_is_left_is_told_with_and_without_the_switch) {
    const auto told = answer();
    EXPECT_THAT(told.sentences.front(), HasSubstr("16 % left, of 70 %"));
    EXPECT_THAT(all_sentences(told), HasSubstr("With the master switch open it would have 55 %"));
    EXPECT_THAT(all_sentences(told), HasSubstr("It should have been topped up by "));
    EXPECT_THAT(all_sentences(told), HasSubstr("; topping it up by "));
    ASSERT_NE(value_at(told.values, "ready"), nullptr);
    EXPECT_FALSE(std::get<bool>(value_at(told.values, "ready")->held));
}

TEST(storage_answer, a_pack_that_is_not_ready_is_a_finding_with_a_remedy) {
    const auto told = answer();
    ASSERT_FALSE(told.findings.empty());
    EXPECT_TRUE(std::ranges::any_of(told.findings, [](const PinnedFinding& each) {
        return each.finding.severity != scenario::Severity::note && !each.finding.mend.empty();
    }));
}

TEST(storage_answer, with_the_switch_open_it_is_ready) {
    const auto told = answer({{"storage.master_switch_open", "true"}});
    EXPECT_THAT(told.sentences.front(), HasSubstr("55 % left"));
    EXPECT_TRUE(std::get<bool>(value_at(told.values, "ready")->held));
}

TEST(storage_answer, in_german_it_is_whole_sentences) {
    const auto german = *words::language("de");
    const auto told = answer();
    EXPECT_THAT(
        words::in(german, told.sentences.front()),
        testing::MatchesRegex("Nicht bereit am [0-9]+\\. [A-Za-zä]+ 20[0-9]+: noch 16 %, von "
                              "70 % beim Weglegen am [0-9]+\\. [A-Za-zä]+ 20[0-9]+\\."));
    EXPECT_THAT(words::in(german, told.sentences.at(2)),
                HasSubstr("Bei ausgeschaltetem Hauptschalter hätte sie noch 55 %"));
}

TEST(storage_answer, the_way_to_the_numbers_and_their_course_are_there) {
    EXPECT_FALSE(answer().working.empty());
    EXPECT_FALSE(answer().series.empty());
}

}  // namespace
