#include "questions/packs.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

// Big storms: half are over by 117.5 h, so that 50 days are looked at.
scenario::ReadScenario open_ended(const std::string& name) {
    auto read =
        scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name,
                                     {{.key = "outage.lasts", .value = "\"?\""},
                                      {.key = "outage.half_over_by", .value = "\"117.5 h\""}});
    EXPECT_TRUE(read);
    return std::move(*read);
}

TEST(packs_question, looks_less_far_where_a_big_storm_may_last_for_weeks) {
    const auto found =
        questions::find(open_ended("summer_storm.toml"), questions::PacksAsked{}, {});
    ASSERT_TRUE(found) << found.error().front().found;
    EXPECT_TRUE(found->looked_at.fewer);
    EXPECT_LT(found->looked_at.panels, questions::usual_most_panels);
}

TEST(packs_question, looks_as_far_as_it_is_asked_to) {
    const auto read = open_ended("ice_storm.toml");
    const auto found =
        questions::find(read, questions::PacksAsked{.most_packs = 4, .most_panels = 1}, {});
    ASSERT_TRUE(found) << found.error().front().found;
    EXPECT_FALSE(found->looked_at.fewer);
    EXPECT_EQ(found->looked_at.packs, 4);
    const auto refused =
        questions::find(read, questions::PacksAsked{.most_packs = 64, .most_panels = 64}, {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().front().where, "outage.lasts");
}

}  // namespace
