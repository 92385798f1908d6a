// An outage of which nobody knows how long it lasts, as it is typed.
#include "scenario/file/open_end.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "scenario/file/print.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;
using testing::HasSubstr;

std::string file_with(const std::string& length) {
    return "format = 1\ntitle = \"Open\"\n[outage]\nstarts = 2026-01-14T18:00:00\n" + length +
           "\n[[pack]]\nname = \"main\"\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\n";
}

Result<scenario::ReadScenario> read(const std::string& length, scenario::Overrides set = {}) {
    return scenario::read_scenario(file_with(length), "open.toml", std::move(set));
}

constexpr auto half_in_a_day = "lasts = \"?\"\nhalf_over_by = \"24 h\"";

// exp(2.32635) = 10.240 times as long as half of them, so that 99 of 100 are over.
TEST(open_end, is_looked_at_until_99_of_100_are_over_and_for_60_days_at_most) {
    const auto found = read(half_in_a_day);
    ASSERT_TRUE(found) << print(found.error().front());
    const auto& outage = found->scenario.outage;
    EXPECT_TRUE(outage.open_ended);
    EXPECT_NEAR(outage.lasts / hour, 24.0 * 10.240, 0.05);
    const auto big = read("half_over_by = \"117.5 h\"\nlasts = \"?\"");
    ASSERT_TRUE(big);
    EXPECT_NEAR(big->scenario.outage.lasts / hour, 117.5 * 10.240, 0.5);
    const auto biggest = read("lasts = \"?\"\nhalf_over_by = \"14 d\"");
    ASSERT_TRUE(biggest);
    EXPECT_EQ(biggest->scenario.outage.lasts, 60.0 * day);
}

TEST(open_end, nobodys_silence_is_filled) {
    const auto found = read("lasts = \"?\"");
    ASSERT_FALSE(found);
    ASSERT_EQ(found.error().size(), 1U);
    EXPECT_EQ(found.error().front().where, "outage.lasts");
    EXPECT_EQ(found.error().front().line, 5);
    EXPECT_THAT(found.error().front().found, HasSubstr("nothing says how long such outages last"));
    EXPECT_THAT(found.error().front().remedy, HasSubstr("half_over_by = \"24 h\""));
}

TEST(open_end, what_was_read_meanwhile_lies_within_it) {
    const auto with_entry = [](const std::string& at) {
        return scenario::read_scenario(
            file_with(half_in_a_day) + "[[log]]\nat = " + at + "\nshows = \"70 %\"\n", "open.toml");
    };
    const auto within = with_entry("2026-01-23T18:00:00");
    ASSERT_TRUE(within) << print(within.error().front());
    EXPECT_TRUE(within->warnings.empty());
    const auto later = with_entry("2026-01-25T18:00:00");
    ASSERT_TRUE(later);
    ASSERT_EQ(later->warnings.size(), 1U);
    EXPECT_THAT(later->warnings.front().found, HasSubstr("after the outage is over"));
}

TEST(open_end, a_time_that_cannot_be_is_told_once) {
    for (const char* half : {"\"0 h\"", "\"15 d\"", "\"?\"", "\"soon\"", "24"}) {
        const auto found = read(std::string("lasts = \"?\"\nhalf_over_by = ") + half);
        ASSERT_FALSE(found) << half;
        EXPECT_EQ(found.error().size(), 1U) << half;
        EXPECT_EQ(found.error().front().where, "outage.half_over_by") << half;
    }
}

TEST(open_end, another_word_for_it_is_no_length) {
    for (const char* length : {"\"\"", "\"??\"", "\"unknown\"", "true"})
        EXPECT_FALSE(read(std::string("half_over_by = \"24 h\"\nlasts = ") + length)) << length;
}

TEST(open_end, is_printed_as_it_is_read) {
    const auto found = read(half_in_a_day);
    ASSERT_TRUE(found);
    const auto text = scenario::print(found->scenario);
    EXPECT_THAT(text, HasSubstr("lasts = \"?\"\nhalf_over_by = \"1 d\"\n"));
    const auto again = scenario::read_scenario(text, "again.toml", {});
    ASSERT_TRUE(again) << print(again.error().front());
    EXPECT_EQ(scenario::print(again->scenario), text);
    EXPECT_EQ(again->scenario.outage.lasts, found->scenario.outage.lasts);
}

TEST(open_end, a_length_may_be_tried_instead_and_the_other_way_round) {
    const auto known = read(half_in_a_day, {{.key = "outage.lasts", .value = "\"3 d\""}});
    ASSERT_TRUE(known);
    EXPECT_FALSE(known->scenario.outage.open_ended);
    EXPECT_EQ(known->scenario.outage.lasts, 3.0 * day);
    const auto open = read("lasts = \"3 d\"", {{.key = "outage.lasts", .value = "\"?\""},
                                               {.key = "outage.half_over_by", .value = "\"8 h\""}});
    ASSERT_TRUE(open) << print(open.error().front());
    EXPECT_TRUE(open->scenario.outage.open_ended);
    EXPECT_NEAR(open->scenario.outage.lasts / hour, 81.92, 0.05);
}

}  // namespace
