// What a person sees while a long answer is worked out: one line on standard error that goes away.
#pragma once

#include <atomic>
#include <chrono>
#include <string>
#include <thread>

namespace command_line {

// "12 s, 40 % done; Ctrl-C stops"; the share where it is known, which is from 0 to 1.
[[nodiscard]] std::string progress_line(std::chrono::seconds since, double share_done);

// Writes the line once a second, the first after a second, until it goes.
class ShownProgress {
  public:
    ShownProgress();
    ShownProgress(const ShownProgress&) = delete;
    ShownProgress& operator=(const ShownProgress&) = delete;
    ~ShownProgress();

    void done(double share) { share_ = share; }

  private:
    std::atomic<double> share_{0.0};
    std::jthread writer_;
};

// From now on Ctrl-C ends the program with words and status 130; nothing was written by then, since
// an answer is printed whole, unless it was told that lines of many answers were.
void end_cleanly_on_interrupt();
void tell_that_something_is_written();

}  // namespace command_line
