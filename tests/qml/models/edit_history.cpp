#include "models/file/edit_history.hpp"

#include <gtest/gtest.h>

namespace {

using touch::EditHistory;

TEST(edit_history, goes_back_and_forth_through_what_was_written) {
    EditHistory history;
    history.begin("a");
    EXPECT_FALSE(history.can_undo());
    history.record("b");
    history.record("c");
    EXPECT_EQ(history.undo(), "b");
    EXPECT_EQ(history.undo(), "a");
    EXPECT_FALSE(history.can_undo());
    EXPECT_EQ(history.undo(), "a");
    EXPECT_EQ(history.redo(), "b");
    EXPECT_EQ(history.redo(), "c");
    EXPECT_FALSE(history.can_redo());
}

TEST(edit_history, a_new_change_ends_the_way_forth) {
    EditHistory history;
    history.begin("a");
    history.record("b");
    history.undo();
    history.record("c");
    EXPECT_FALSE(history.can_redo());
    EXPECT_EQ(history.undo(), "a");
}

TEST(edit_history, keeps_fifty_steps_and_more_but_not_without_end) {
    EditHistory history;
    history.begin("0");
    for (int step = 1; step <= 1000; ++step)
        history.record(QString::number(step));
    int steps = 0;
    while (history.can_undo()) {
        history.undo();
        ++steps;
    }
    EXPECT_GE(steps, 50);
    EXPECT_LT(steps, EditHistory::most);
}

}  // namespace
