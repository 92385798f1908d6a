#include "questions/learnt.hpp"

#include <algorithm>

#include "file_of.hpp"

namespace {

using questions::LearntAsked;
using units::hour;
using units::watt;

const std::string guessed = file_of::outage("2 d", file_of::warm) + file_of::a_pack +
                            "[[load]]\nname = \"lamp\"\nfrom = \"12V\"\npower = \"10 W\"\n";

// Planned are 10 W for 24 h, 240 Wh; the meter says 336 Wh of this one day, 1.4 times that: what is
// learnt of the lamp lies between the guess and the meter, on the side of the meter.
TEST(learnt_question, a_meter_corrects_a_guess) {
    const auto read = file_of::text(guessed +
                                    "[[log]]\nat = 2026-01-15T00:00:00\nload = \"lamp\"\n"
                                    "metered = {energy = \"336 Wh\", over = \"24 h\"}\n");
    const auto found = questions::find(read, LearntAsked{}, {});
    ASSERT_TRUE(found);
    const auto& learnt = found->learnt;
    EXPECT_EQ(learnt.readings, 1);
    EXPECT_EQ(learnt.until, read.scenario.outage.starts + 24.0 * hour);
    EXPECT_NEAR(learnt.planned / (watt * hour), 240.0, 12.0);
    const auto lamp = std::ranges::find(learnt.values, "lamp", &estimate::LearntValue::of);
    ASSERT_NE(lamp, learnt.values.end());
    EXPECT_EQ(lamp->key, "load.lamp.power");
    EXPECT_GT(lamp->factor, 1.2);
    EXPECT_LT(lamp->factor, 1.4);
    EXPECT_FALSE(learnt.contradicted);
}

TEST(learnt_question, an_empty_log_teaches_nothing) {
    const auto refused = questions::find(file_of::text(guessed), LearntAsked{}, {});
    ASSERT_FALSE(refused);
    EXPECT_FALSE(refused.error().front().remedy.empty());
}

}  // namespace
