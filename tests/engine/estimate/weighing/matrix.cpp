#include "estimate/weighing/matrix.hpp"

#include <gtest/gtest.h>

namespace {

// [[4 2] [2 5]] is L L^T of [[2 0] [1 2]]; (4 2; 2 5) x = (2, 9) has x = (-0.5, 2).
TEST(matrix, a_root_by_hand_and_what_it_solves) {
    estimate::Matrix of(2, 2);
    of(0, 0) = 4.0;
    of(0, 1) = of(1, 0) = 2.0;
    of(1, 1) = 5.0;
    const auto root = estimate::root_of(of);
    EXPECT_DOUBLE_EQ(root(0, 0), 2.0);
    EXPECT_DOUBLE_EQ(root(1, 0), 1.0);
    EXPECT_DOUBLE_EQ(root(1, 1), 2.0);
    double x[] = {2.0, 9.0};
    estimate::solve_down(root, x);
    estimate::solve_up(root, x);
    EXPECT_DOUBLE_EQ(x[0], -0.5);
    EXPECT_DOUBLE_EQ(x[1], 2.0);
    // in every second place
    double spread[] = {2.0, 7.0, 9.0};
    estimate::solve_down(root, spread, 2);
    estimate::solve_up(root, spread, 2);
    EXPECT_DOUBLE_EQ(spread[0], -0.5);
    EXPECT_EQ(spread[1], 7.0);
    EXPECT_DOUBLE_EQ(spread[2], 2.0);
}

}  // namespace
