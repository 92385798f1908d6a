#include "chance/unknowns.hpp"

#include <gtest/gtest.h>

namespace {

using namespace chance;

// The hungry end of a score is its greater one.
TEST(unknowns, a_hungry_score_is_a_hard_pack_and_the_ends_are_held) {
    EXPECT_EQ(softness_at(0.0), 0.0);
    EXPECT_EQ(softness_at(3.0), -1.0);
    EXPECT_EQ(softness_at(-3.0), 1.0);
    EXPECT_NEAR(softness_at(score_of(0.9)), -1.0, 1e-4);  // once in ten
    EXPECT_NEAR(softness_at(score_of(0.1)), 1.0, 1e-4);
    double before = 1.0;
    for (double score = -4.0; score <= 4.0; score += 0.1) {
        EXPECT_LE(softness_at(score), before);
        before = softness_at(score);
    }
}

}  // namespace
