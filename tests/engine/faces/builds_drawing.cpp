#include "faces/pictures/builds_drawing.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using testing::HasSubstr;
using testing::Not;

// From 20 to 60 kg 632 across from 58, chances 224 up from 270. By hand: 40 kg at 374; 75 times in
// 100 at 102, the goal of 90 at 68.4.
TEST(builds_drawing, puts_each_build_at_its_weight_and_chance_and_names_the_answer) {
    const answers::BuildsChart chart{
        .goal = 90.0,
        .points = {{.packs = 1,
                    .chance = 30.0,
                    .low = 25.0,
                    .high = 35.0,
                    .chance_words = "30 times in 100"},
                   {.packs = 2,
                    .panels = 1,
                    .chance = 75.0,
                    .low = 70.0,
                    .high = 80.0,
                    .chance_words = "75 times in 100",
                    .answers = true}},
        .views = {
            {.name = "weight",
             .heading = "packs and panels weigh",
             .unit = "kg",
             .from = 20.0,
             .to = 60.0,
             .step = 20.0,
             .places = {{.point = 1, .at = 40.0}, {.point = 0, .at = 20.0, .unbeaten = false}}}}};
    const auto drawing = faces::drawing_of(chart, chart.views.front());
    EXPECT_THAT(drawing.pieces, HasSubstr("<circle class=\"pin\" cx=\"374.0\" cy=\"102.0\""));
    EXPECT_THAT(drawing.pieces, HasSubstr("<circle class=\"ring\" cx=\"58.0\""));
    EXPECT_THAT(drawing.pieces, HasSubstr("<line class=\"limit\" x1=\"58.0\" y1=\"68.4\""));
    EXPECT_THAT(drawing.pieces,
                HasSubstr(">1: 2 packs, 1 panel: 75 times in 100, 40 kg; the answer<"));
    EXPECT_THAT(drawing.pieces, Not(HasSubstr("1 pack, 0 panels")));
}

}  // namespace
