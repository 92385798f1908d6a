#include "faces/pictures/curves_drawing.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using testing::HasSubstr;

// A day is 650 across from 58; the most, 400 W, 186 up from 220. By hand: noon at 383, 200 W at 127.
TEST(curves_drawing, draws_each_curve_in_a_stroke_of_its_own) {
    const auto drawing = faces::drawing_of(
        answers::DayCurves{.title = "Power through a day",
                           .unit = "W",
                           .at = {0.0, 12.0, 24.0},
                           .curves = {{"low", "a dull day", {0.0, 200.0, 0.0}, "390 Wh"},
                                      {"high", "a bright day", {0.0, 400.0, 0.0}, "780 Wh"}}});
    EXPECT_THAT(drawing.pieces, HasSubstr("<polyline class=\"likely dotted\" points=\"58.0,220.0 "
                                          "383.0,127.0 708.0,220.0 \"/>"));
    EXPECT_THAT(drawing.pieces, HasSubstr("<polyline class=\"likely dashed\""));
    EXPECT_THAT(drawing.pieces, HasSubstr(">a dull day, 390 Wh<"));
    EXPECT_THAT(drawing.pieces, HasSubstr(">400 W<"));
}

TEST(curves_drawing, of_a_day_without_sun_stays_at_its_foot) {
    const auto drawing = faces::drawing_of(answers::DayCurves{
        .title = "", .unit = "W", .at = {0.0}, .curves = {{"low", "dull", {0.0}, "0 Wh"}}});
    EXPECT_THAT(drawing.pieces, HasSubstr("points=\"58.0,220.0 \""));
}

}  // namespace
