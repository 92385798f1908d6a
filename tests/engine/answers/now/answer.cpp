#include "answers/now/answer.hpp"

#include <algorithm>
#include <string>

#include "answers/now/leading.hpp"
#include "answers/now/sentences.hpp"
#include "support/in_english.hpp"
#include "support/three_packs.hpp"

namespace {

using namespace three_packs;

bool tells_of_a_fault(const answers::Answer& answer) {
    return std::ranges::any_of(answer.cautions, [](const answers::Caution& one) {
        return in_english(one.text).find("before that fault is found") != std::string::npos;
    });
}

answers::Answer answered(const std::string& log, const char* now) {
    return answers::now_answer(with(log), *units::read_local_time(now), outlook(log, now));
}

constexpr const char* opened =
    "[[log]]\nat = 2026-01-15T09:00:00\nload = \"blower\"\nhappened = \"fuse opened\"\n";
constexpr const char* struck = "[[log]]\nat = 2026-01-15T09:30:00\nstrikes = 2026-01-15T09:00:00\n";

TEST(now_answer, cautions_are_those_of_what_holds_by_now) {
    EXPECT_TRUE(tells_of_a_fault(answered(opened, next_noon)));
    EXPECT_FALSE(tells_of_a_fault(answered(opened, "2026-01-15T08:00:00")));
    EXPECT_FALSE(tells_of_a_fault(answered(std::string(opened) + struck, next_noon)));
}

// The blower and the freezer empty the packs, and a breathing machine hangs on them.
TEST(now_answer, who_depends_on_it_is_told_first_by_when_to_act) {
    const auto log = shows("2026-01-15T11:00:00", 35);
    const auto scenario = with(log);
    const auto now = *units::read_local_time(next_noon);
    const auto found = outlook(log, next_noon);
    const auto sentences = answers::now_sentences(scenario, now, found);
    ASSERT_FALSE(found.figures.meets_the_goal());
    ASSERT_EQ(answers::leading_sentences(scenario, now, found), 4U);
    EXPECT_NE(in_english(sentences[0]).find("act by"), std::string::npos);
}

TEST(now_answer, three_sentences_lead_where_nobody_depends_on_it) {
    const auto log = shows("2026-01-15T11:00:00", 35);
    auto scenario = with(log);
    scenario.loads.pop_back();
    const auto now = *units::read_local_time(next_noon);
    EXPECT_EQ(answers::leading_sentences(scenario, now, outlook(log, next_noon)), 3U);
    const std::string back = "[[log]]\nat = 2026-01-15T10:00:00\nhappened = \"supply back\"\n";
    EXPECT_EQ(answers::leading_sentences(scenario, now, outlook(back, next_noon)), 1U);
}

// Programs read ISO 8601, people their own clock, to the hour or five minutes as elsewhere.
TEST(now_answer, what_to_switch_off_is_told_by_the_readers_clock) {
    const auto log = shows("2026-01-15T11:00:00", 35);
    const auto answer = answers::now_answer(with(log), *units::read_local_time(next_noon),
                                            outlook(log, next_noon, true));
    const auto& columns = answer.series.front().columns;
    const auto until = std::ranges::find(columns, "until", &answers::Column::name);
    ASSERT_NE(until, columns.end());
    const auto& times = std::get<std::vector<answers::Code>>(until->points);
    ASSERT_FALSE(times.empty());
    const words::Language twelve{.twelve_hours = true};
    for (const answers::Code& time : times) {
        EXPECT_EQ(time.code.size(), std::string("2026-01-15T12:00:00").size()) << time.code;
        EXPECT_TRUE(time.is_time);
        EXPECT_EQ(in_english(time.said).find("2026"), std::string::npos) << in_english(time.said);
    }
    const std::string first = words::in(twelve, times.front().said);
    EXPECT_TRUE(first.ends_with("M") || first.find(':') == std::string::npos) << first;
}

}  // namespace
