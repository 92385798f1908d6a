#include "models/days/plot_window.hpp"

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
    EXPECT_DOUBLE_EQ(window.stretch(), window.nearest());
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

TEST(plot_window, is_drawn_so_near_that_six_hours_are_in_sight) {
    PlotWindow window;
    window.set_hours(720.0);
    EXPECT_DOUBLE_EQ(window.nearest(), 120.0);
    for (int times = 0; times < 20; ++times)
        window.nearer(0.5);
    EXPECT_NEAR((window.to() - window.from()) * 720.0, 6.0, 1e-9);
    window.set_hours(48.0);  // a shorter outage: not nearer than it may be
    EXPECT_DOUBLE_EQ(window.stretch(), 8.0);
    window.set_hours(4.0);
    EXPECT_DOUBLE_EQ(window.stretch(), 1.0);
    EXPECT_FALSE(window.can_nearer());
}

TEST(plot_window, is_panned_by_what_is_in_sight_and_stops_at_both_ends) {
    PlotWindow window;
    window.nearer(0.5);
    window.pan(0.5);
    EXPECT_DOUBLE_EQ(window.from(), 0.5);
    window.pan(0.5);
    EXPECT_DOUBLE_EQ(window.to(), 1.0);
    window.pan(-9.0);
    EXPECT_DOUBLE_EQ(window.from(), 0.0);
    EXPECT_DOUBLE_EQ(window.stretch(), 2.0);
}

}  // namespace
