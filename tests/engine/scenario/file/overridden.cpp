// Values of the command line in the place of those of the file.
#include "scenario/file/overridden.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using scenario::read_scenario;
using testing::HasSubstr;
using told::error_at;
using told::errors_of;

TEST(overridden, an_override_holds_in_place_of_the_value_of_the_file) {
    const auto plan = read_scenario(sample::ice_storm, "plan.toml",
                                    {{"pack.expansion.count", "4"},
                                     {"outage.lasts", "36 h"},
                                     {"load.refrigerator.priority", "1"},
                                     {"goal.spend_at_most", "900"}});
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->scenario.packs[1].count, 4);
    EXPECT_EQ(plan->scenario.outage.lasts, 36.0 * units::hour);
    EXPECT_EQ(plan->scenario.goal->spend_at_most, units::Price(900.0));
    EXPECT_EQ(plan->text, sample::ice_storm);
}

TEST(overridden, an_override_at_fault_is_named_and_other_lines_stay_true) {
    std::string text(sample::ice_storm);
    text.replace(text.find("\"12 W\""), 6, "\"12 A\"");
    const auto errors = errors_of(text, {{"goal.spend_at_most", "900"},
                                         {"outage.cause", "rain"},
                                         {"pack.main.fuse", "30 A"},
                                         {"pack.expansion.count", "-1"},
                                         {"pack.third.count", "1"},
                                         {"outage.lasst", "3 d"}});
    EXPECT_EQ(error_at(errors, "outage.cause").file, "--set outage.cause=rain");
    EXPECT_EQ(error_at(errors, "pack[1].count").file, "--set pack.expansion.count=-1");
    EXPECT_THAT(error_at(errors, "pack.third.count").found, HasSubstr("main, expansion"));
    EXPECT_EQ(error_at(errors, "outage.lasst").file, "--set outage.lasst=3 d");
    const std::size_t at = text.find("\"12 A\"");
    EXPECT_EQ(error_at(errors, "load[1].power").line,
              1 + std::count(text.begin(), text.begin() + static_cast<long>(at), '\n'));
    EXPECT_EQ(error_at(errors, "load[1].power").file, "plan.toml");
}

}  // namespace
