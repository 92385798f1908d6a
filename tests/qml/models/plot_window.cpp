#include "models/plot_window.hpp"

#include <gtest/gtest.h>

namespace {

using touch::PlotWindow;

TEST(plot_window, draws_nearer_around_a_moment_and_stays_within_the_plot) {
    PlotWindow window;
    EXPECT_FALSE(window.can_farther());
    window.nearer(0.5);
    EXPECT_DOUBLE_EQ(window.from(), 0.25);
    EXPECT_DOUBLE_EQ(window.to(), 0.75);
    window.nearer(0.25);
    EXPECT_DOUBLE_EQ(window.from(), 0.25);
    EXPECT_DOUBLE_EQ(window.to(), 0.5);
    for (int times = 0; times < 9; ++times)
        window.nearer(1.0);
    EXPECT_FALSE(window.can_nearer());
    EXPECT_DOUBLE_EQ(window.to(), 1.0);
    EXPECT_DOUBLE_EQ(window.stretch(), PlotWindow::nearest);
    for (int times = 0; times < 9; ++times)
        window.farther(1.0);
    EXPECT_DOUBLE_EQ(window.from(), 0.0);
    EXPECT_DOUBLE_EQ(window.to(), 1.0);
}

TEST(plot_window, keeps_what_lies_under_two_fingers_under_them) {
    PlotWindow window;
    window.beginPinch(0.5);
    window.pinch(0.5, 4.0);
    EXPECT_DOUBLE_EQ(window.shareAt(0.5), 0.5);
    EXPECT_DOUBLE_EQ(window.stretch(), 4.0);
    window.beginPinch(0.5);
    window.pinch(0.25, 1.0);  // both fingers moved to the left
    EXPECT_DOUBLE_EQ(window.shareAt(0.25), 0.5);
    EXPECT_GT(window.from(), 0.375);
}

TEST(plot_window, follows_the_moment_as_little_as_it_takes) {
    PlotWindow window;
    window.nearer(0.5);
    window.show(0.6);
    EXPECT_DOUBLE_EQ(window.from(), 0.25);
    window.show(0.8);
    EXPECT_DOUBLE_EQ(window.to(), 0.8);
    window.show(0.0);
    EXPECT_DOUBLE_EQ(window.from(), 0.0);
}

}  // namespace
