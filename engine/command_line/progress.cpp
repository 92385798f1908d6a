#include "command_line/progress.hpp"

#include <condition_variable>
#include <csignal>
#include <mutex>
#include <string_view>
#include <unistd.h>

#include <fmt/format.h>

#include "command_line/surroundings.hpp"

namespace command_line {

namespace {

constexpr std::string_view to_line_begin_and_clear = "\r\033[K";

void write_line(std::string_view text) {
    (void)write_all(STDERR_FILENO, std::string(to_line_begin_and_clear) + std::string(text));
}

std::atomic<bool> something_is_written = false;

// Only what may be called at any moment. [POSIX] 2.4.3
extern "C" void stop_at_once(int) {
    constexpr std::string_view none = "\ncandlemark: stopped; nothing was answered\n";
    constexpr std::string_view some =
        "\ncandlemark: stopped; the lines that are written hold, --resume goes on from there\n";
    const std::string_view words = something_is_written ? some : none;
    (void)!write(STDERR_FILENO, words.data(), words.size());
    _exit(128 + SIGINT);
}

}  // namespace

std::string progress_line(std::chrono::seconds since, double share_done) {
    const std::string share =
        share_done > 0.0 ? fmt::format(", {:.0f} % done", 100.0 * share_done) : "";
    return fmt::format("{} s{}; Ctrl-C stops", since.count(), share);
}

ShownProgress::ShownProgress()
    : writer_([this](const std::stop_token& stop) {
          const auto began = std::chrono::steady_clock::now();
          std::mutex mutex;
          std::condition_variable_any over;
          std::unique_lock lock(mutex);
          bool written = false;
          while (!over.wait_for(lock, stop, std::chrono::seconds(1),
                                [&] { return stop.stop_requested(); })) {
              write_line(progress_line(std::chrono::duration_cast<std::chrono::seconds>(
                                           std::chrono::steady_clock::now() - began),
                                       share_));
              written = true;
          }
          if (written) {
              write_line("");
          }
      }) {}

ShownProgress::~ShownProgress() = default;

void tell_that_something_is_written() {
    something_is_written = true;
}

void end_cleanly_on_interrupt() {
    std::signal(SIGINT, stop_at_once);
}

}  // namespace command_line
