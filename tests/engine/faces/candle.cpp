#include "faces/candle.hpp"

namespace {

using namespace faces;
using testing::ElementsAre;

const Look typed{.ascii = true};

TEST(candle, one_that_lasts_reaches_the_top_mark) {
    EXPECT_THAT(candle(96.0, 96.0, 4, typed),
                ElementsAre("     () ", " 4 d ## ", "     ## ", " 2 d ## ", "     ## "));
}

TEST(candle, a_short_one_ends_below_it_with_its_flame_on_top) {
    EXPECT_THAT(candle(48.0, 96.0, 4, typed),
                ElementsAre("        ", " 4 d    ", "     () ", " 2 d ## ", "     ## "));
}

TEST(candle, one_that_never_burns_has_its_flame_at_the_foot) {
    EXPECT_EQ(candle(0.0, 96.0, 4, typed).back(), "     () ");
}

TEST(candle, every_line_has_the_same_width) {
    for (const double burns : {0.0, 0.1, 7.0, 33.3, 95.9, 96.0}) {
        for (const auto& line : candle(burns, 96.0, 8, {})) {
            EXPECT_EQ(width_of(line), candle_width) << burns;
        }
    }
}

TEST(candle, outages_of_hours_are_marked_in_hours) {
    const auto lines = candle(4.0, 8.0, 8, typed);
    EXPECT_EQ(lines[1].substr(0, 4), " 8 h");
}

}  // namespace
