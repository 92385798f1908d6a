#include "questions/compare.hpp"

#include "file_of.hpp"

namespace {

using questions::CompareAsked;
using units::hour;

std::string lamp(const std::string& power) {
    return file_of::outage("4 d", file_of::warm) + file_of::a_pack + file_of::load("lamp", power);
}

scenario::ReadScenario named(const std::string& text, const std::string& name) {
    auto read = file_of::text(text);
    read.file_name = name;
    return read;
}

// Twice the draw empties the same pack in half the time; a steady draw of a lithium pack takes hardly
// less out of it.
TEST(compare_question, both_builds_are_planned_by_themselves) {
    const auto found =
        questions::find(file_of::text(lamp("20 W")), CompareAsked{file_of::text(lamp("40 W"))}, {});
    ASSERT_TRUE(found);
    ASSERT_TRUE(found->old_build.plan && found->new_build.plan);
    const double before = found->old_build.plan->likely.lasts / hour;
    const double after = found->new_build.plan->likely.lasts / hour;
    EXPECT_NEAR(after / before, 0.5, 0.02);
    ASSERT_TRUE(found->old_build.figures && found->new_build.figures);
    EXPECT_TRUE(found->old_build.starts.empty());
    EXPECT_FALSE(found->old_build.why_no_starts.empty());
}

TEST(compare_question, a_build_that_cannot_be_looked_at_is_named_by_its_file) {
    const std::string bad = file_of::outage("1 d") + file_of::a_pack + file_of::a_kettle;
    const auto one =
        questions::find(named(lamp("20 W"), "old.toml"), CompareAsked{named(bad, "new.toml")}, {});
    ASSERT_FALSE(one);
    for (const auto& error : one.error())
        EXPECT_EQ(error.file, "new.toml");
    const auto both =
        questions::find(named(bad, "old.toml"), CompareAsked{named(bad, "new.toml")}, {});
    ASSERT_FALSE(both);
    EXPECT_EQ(both.error().front().file, "old.toml");
    EXPECT_EQ(both.error().back().file, "new.toml");
}

TEST(compared_starts, has_one_for_each_motor_with_what_binds_it) {
    const auto read = file_of::text(
        file_of::outage("1 d", file_of::warm) + file_of::a_pack +
        "[inverter]\ncontinuous = \"3000 W\"\nsurge = \"6000 W\"\n" +
        file_of::load("pump", "600 W",
                      "motor = {kind = \"split_phase\", horsepower = \"1/3 hp\", voltage = "
                      "\"115 V\"}\n") +
        file_of::load("230 V saw", "600 W",
                      "motor = {kind = \"split_phase\", horsepower = \"1/3 hp\", voltage = "
                      "\"230 V\"}\n"));
    const auto starts = questions::compared_starts(read.scenario);
    ASSERT_TRUE(starts);
    ASSERT_EQ(starts->size(), 2U);
    EXPECT_EQ(starts->front().load, "pump");
    EXPECT_GT(starts->front().worst.value(), 0.0);
    // A motor for another voltage is refused before anything is worked out.
    EXPECT_EQ(starts->back().verdict, starting::StartVerdict::will_not_start);
    EXPECT_EQ(starts->back().binding, starting::Constraint::voltage_class);
}

}  // namespace
