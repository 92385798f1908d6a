// Errors that name a key alone get the file and the line of it.
#include "scenario/file/placed.hpp"

#include <gtest/gtest.h>

namespace {

// Lines 1 to 10.
constexpr std::string_view text = R"(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "4 d"

[[pack]]
name = "main"
chemistry = "agm"
capacity = "100 Ah"
count = 2
)";

units::Error placed(units::Error error, const scenario::Overrides& overrides = {}) {
    const auto read = scenario::read_scenario(text, "plan.toml", overrides);
    EXPECT_TRUE(read);
    return scenario::placed({std::move(error)}, *read).front();
}

TEST(placed, a_key_that_stands_in_the_file_has_its_line) {
    const auto error = placed({.where = "pack[0].capacity", .found = "f", .remedy = "r"});
    EXPECT_EQ(error.file, "plan.toml");
    EXPECT_EQ(error.line, 9);
    EXPECT_EQ(error.found, "f");
}

// "[[pack]]" stands on line 6, "[outage]" on line 2; nothing of an inverter does.
TEST(placed, a_key_that_is_absent_has_the_line_of_its_table) {
    EXPECT_EQ(placed({.where = "pack[0].usable"}).line, 6);
    EXPECT_EQ(placed({.where = "outage.cause"}).line, 2);
    EXPECT_EQ(placed({.where = "inverter.idle"}).line, 0);
    EXPECT_EQ(placed({.where = "inverter.idle"}).file, "plan.toml");
}

TEST(placed, a_key_that_an_override_set_has_the_override) {
    const auto error = placed({.where = "pack[0].count"}, {{"pack.count", "3"}});
    EXPECT_EQ(error.file, "--set pack.count=3");
    EXPECT_EQ(error.line, 0);
}

TEST(placed, what_has_a_place_already_or_is_an_option_stays) {
    const auto elsewhere =
        placed({.where = "column 7", .found = "", .remedy = "", .file = "station.epw", .line = 20});
    EXPECT_EQ(elsewhere.file, "station.epw");
    EXPECT_EQ(elsewhere.line, 20);
    EXPECT_EQ(placed({.where = "--seed"}).file, "");
}

}  // namespace
