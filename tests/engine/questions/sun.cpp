#include "questions/sun.hpp"

#include "file_of.hpp"

namespace {

using questions::SunAsked;
using testing::HasSubstr;
using units::day;
using units::hour;

const std::string chicago = "[place]\nname = \"Chicago IL\"\n";
const std::string two_and_three =
    "[[panel]]\ncount = 2\npower = \"100 W\"\nplacement = \"fixed\"\n"
    "[[panel]]\ncount = 3\npower = \"50 W\"\nplacement = \"fixed\"\n";

questions::SunResults results_of(const std::string& text) {
    auto found = questions::find(file_of::text(text),
                                 SunAsked{.weathers = 50, .members = 64, .with_counts = false}, {});
    EXPECT_TRUE(found);
    return found ? std::move(found->results) : questions::SunResults{};
}

TEST(sun_question, groups_of_panels_are_counted_together) {
    const auto read =
        file_of::text(file_of::outage("1 d") + chicago + file_of::a_pack + two_and_three);
    EXPECT_EQ(questions::panels_in(read.scenario), 5);
    EXPECT_EQ(questions::panels_in({}), 0);
}

TEST(sun_question, without_panels_there_is_no_unit_to_fill) {
    const auto results = results_of(file_of::outage("1 d") + chicago + file_of::a_pack);
    EXPECT_FALSE(results.unit);
    EXPECT_EQ(results.why_no_unit, "there are no panels");
}

// Of an outage from midnight it is the first day; of one from six in the evening the next; of a
// night of ten hours the day it begins, since it has no whole one.
TEST(sun_question, the_day_that_is_drawn_is_the_first_whole_one) {
    const auto midnight =
        file_of::text(file_of::outage("3 d") + file_of::a_pack).scenario.outage.starts;
    const auto drawn = [&](const std::string& starts, const std::string& lasts) {
        auto text = file_of::outage(lasts) + chicago + file_of::a_pack + two_and_three;
        text.replace(text.find("00:00:00"), 8, starts);
        return results_of(text).day.midnight;
    };
    EXPECT_EQ(drawn("00:00:00", "3 d"), midnight);
    EXPECT_EQ(drawn("18:00:00", "3 d"), midnight + day);
    EXPECT_EQ(drawn("06:00:00", "10 h"), midnight);
}

// 350 W of panels for 48 h are 16.8 kWh, whatever the sky; a January gives a small part of it.
TEST(sun_question, a_unit_keeps_no_more_of_a_day_than_its_panels_offer) {
    const auto results =
        results_of(file_of::outage("2 d", file_of::warm) + chicago + file_of::a_pack +
                   two_and_three + file_of::load("lamp", "20 W"));
    ASSERT_TRUE(results.unit);
    EXPECT_EQ(results.recharge.days.size(), 2U);
    EXPECT_LE(results.recharge.whole.likely, 350.0 * units::watt * 48.0 * hour);
    EXPECT_GT(results.recharge.whole.likely, units::Energy());
    EXPECT_FALSE(results.placements.empty());
}

TEST(sun_question, a_unit_that_cannot_be_planned_is_left_out_with_its_reason) {
    const auto results = results_of(file_of::outage("2 d") + chicago + file_of::a_pack +
                                    two_and_three + file_of::a_kettle);
    EXPECT_FALSE(results.unit);
    EXPECT_THAT(results.why_no_unit, HasSubstr("inverter: kettle needs one"));
    EXPECT_EQ(results.recharge.days.size(), 2U);
}

TEST(sun_question, panels_at_no_place_are_refused) {
    const auto refused = questions::find(
        file_of::text(file_of::outage("1 d") + file_of::a_pack + two_and_three), SunAsked{}, {});
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().where, HasSubstr("place"));
}

}  // namespace
