#include "faces/start_plot.hpp"

namespace {

using answers::StartBar;
using answers::StartChart;
using faces::start_plot;
using testing::HasSubstr;

constexpr faces::Look ascii{.width = 80, .ascii = true};

StartBar bar(const std::string& label, double high, bool binding = false) {
    return {.constraint = "pack_current",
            .label = label,
            .low = 0.75,
            .likely = 0.9,
            .high = high,
            .binding = binding,
            .shown = "75 to 120 %"};
}

// 80 columns less 33 of the label, 13 of the figures and two between leave 32 for one and a half
// limits: the limit at 32/1.5 = 21.3, 0.75 at 16, 0.9 at 19.2 and 1.2 at 25.6.
TEST(start_plot, a_bar_is_as_long_as_what_is_used_of_the_limit) {
    const auto lines = start_plot({.name = "pump",
                                   .verdict = "marginal",
                                   .words = "may or may not start",
                                   .bars = {bar("packs", 1.2, true)}},
                                  0, ascii);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0], "pump may or may not start");
    EXPECT_EQ(lines[1],
              "> packs                          ################===--|----        75 to 120 %");
}

TEST(start_plot, of_many_bars_the_binding_one_and_the_fullest_are_kept) {
    const auto lines =
        start_plot({.name = "pump",
                    .verdict = "starts",
                    .words = "starts",
                    .bars = {bar("little", 0.95), bar("binding", 0.9, true), bar("much", 1.1)}},
                   2, ascii);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_THAT(lines[1], HasSubstr("> binding"));
    EXPECT_THAT(lines[2], HasSubstr("  much"));
}

// Up to speed in two seconds, while the current falls from 30 to 5 A: in sixteen columns the first
// lies at 1/32 of the way, the last at 31/32.
TEST(start_plot, the_course_goes_from_the_first_moment_to_the_last) {
    const auto lines = start_plot({.name = "saw",
                                   .verdict = "starts",
                                   .words = "starts",
                                   .bars = {},
                                   .time = {0.0, 2.0},
                                   .speed = {0.0, 1.0},
                                   .current = {30.0, 5.0},
                                   .voltage = {110.0, 120.0},
                                   .direct_voltage = {12.0, 13.0}},
                                  0, {.width = 64, .ascii = true});
    ASSERT_EQ(lines.size(), 5U);
    EXPECT_THAT(lines[1], HasSubstr("_"));
    EXPECT_TRUE(lines[1].ends_with("#  100 %")) << lines[1];
    EXPECT_THAT(lines[2], HasSubstr("current, 30 A at first"));
    EXPECT_TRUE(lines[2].ends_with("5.0 A"));
    EXPECT_THAT(lines[3], HasSubstr("voltage at inverter, 12.00 V"));
    EXPECT_TRUE(lines[4].ends_with("2 s"));
}

TEST(start_plot, a_motor_that_stalls_says_at_which_speed) {
    const auto lines = start_plot({.name = "saw",
                                   .verdict = "will_not_start",
                                   .words = "will not start",
                                   .bars = {},
                                   .time = {0.0, 1.0},
                                   .speed = {0.0, 0.4},
                                   .current = {30.0, 28.0},
                                   .voltage = {90.0, 90.0},
                                   .direct_voltage = {11.0, 11.0},
                                   .comes_up = false},
                                  0, ascii);
    EXPECT_THAT(lines[1], HasSubstr("stalls at 40 %"));
}

}  // namespace
