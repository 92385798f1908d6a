#include "command_line/progress.hpp"

#include <csignal>

namespace {

using namespace std::chrono_literals;
using command_line::progress_line;
using testing::ExitedWithCode;

TEST(progress, tells_seconds_and_the_share_where_it_is_known) {
    EXPECT_EQ(progress_line(12s, 0.404), "12 s, 40 % done; Ctrl-C stops");
    EXPECT_EQ(progress_line(3s, 0.0), "3 s; Ctrl-C stops");
    EXPECT_EQ(progress_line(61s, 1.0), "61 s, 100 % done; Ctrl-C stops");
}

TEST(progress, what_is_over_within_a_second_is_not_told) {
    testing::internal::CaptureStderr();
    {
        command_line::ShownProgress shown;
        shown.done(0.5);
    }
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
}

// 128 and the number of the signal, as shells say it. [POSIX] 2.8.2
TEST(progress, an_interrupt_ends_with_130_and_says_whether_anything_was_written) {
    EXPECT_EXIT(
        {
            command_line::end_cleanly_on_interrupt();
            std::raise(SIGINT);
        },
        ExitedWithCode(130), "stopped; nothing was answered");
    EXPECT_EXIT(
        {
            command_line::tell_that_something_is_written();
            command_line::end_cleanly_on_interrupt();
            std::raise(SIGINT);
        },
        ExitedWithCode(130), "--resume goes on from there");
}

}  // namespace
