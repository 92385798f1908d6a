#include "faces/pictures/pictures.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using answers::Answer;
using testing::HasSubstr;
using testing::StartsWith;

Answer with_two_pictures() {
    Answer answer{.question = "sun", .title = "A cabin"};
    answer.bars = {{.name = "recharge", .title = "What comes back", .bars = {{.label = "Thu"}}}};
    answer.curves = answers::DayCurves{.title = "Power through a day", .unit = "W"};
    return answer;
}

TEST(pictures, stand_under_each_other_in_one_drawing) {
    const auto drawings = faces::drawings_of(with_two_pictures());
    ASSERT_EQ(drawings.size(), 2U);
    EXPECT_EQ(drawings[0].title, "What comes back: A cabin");
    EXPECT_EQ(drawings[1].title, "Power through a day: A cabin");
    const auto svg = faces::in_svg(with_two_pictures());
    EXPECT_THAT(svg, StartsWith("<svg xmlns"));
    // One bar is 72 high, and 12 are between.
    EXPECT_THAT(svg, HasSubstr("<g transform=\"translate(0 84.0)\">\n<title>Power through a day"));
    EXPECT_EQ(svg.find("<svg", 1), std::string::npos);
}

TEST(pictures, of_an_answer_of_words_alone_are_none) {
    EXPECT_TRUE(faces::drawings_of(Answer{.question = "storage"}).empty());
    EXPECT_EQ(faces::in_svg(Answer{.question = "storage"}), "");
}

}  // namespace
