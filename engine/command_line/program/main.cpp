#include <algorithm>
#include <atomic>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <malloc.h>
#include <new>
#include <optional>
#include <string>
#include <unistd.h>
#include <vector>

#include "command_line/progress.hpp"
#include "command_line/run.hpp"
#include "command_line/surroundings.hpp"
#include "outage/in_threads.hpp"

namespace {

using namespace command_line;

// Each thread needs memory of its own. Where that ended, the program begins anew with one thread;
// all it needs for that is made beforehand, since nothing can be made then.
class BeginAnew {
  public:
    explicit BeginAnew(char** arguments) : arguments_(arguments) {
        for (char** one = environ; *one != nullptr; ++one)
            environment_.push_back(*one);
        environment_.push_back(with_one_thread_.data());
        environment_.push_back(nullptr);
        for (char** one = arguments; *one != nullptr; ++one)
            reads_input_ = reads_input_ || std::strcmp(*one, "-") == 0;
        if (reads_input_) input_begins_ = lseek(STDIN_FILENO, 0, SEEK_CUR);
        ready_ = this;
    }
    BeginAnew(const BeginAnew&) = delete;
    BeginAnew& operator=(const BeginAnew&) = delete;
    ~BeginAnew() { ready_ = nullptr; }

    // Comes back where it cannot be done: what comes through a pipe comes only once.
    static void where_it_helps() {
        const BeginAnew* const ready = ready_;
        if (ready == nullptr || !outage::took_several_threads()) return;
        if (ready->reads_input_ &&
            (ready->input_begins_ < 0 || lseek(STDIN_FILENO, ready->input_begins_, SEEK_SET) < 0))
            return;
        execve("/proc/self/exe", ready->arguments_, ready->environment_.data());
    }

    static constexpr const char* one_thread = "CANDLEMARK_ONE_THREAD";

  private:
    char** arguments_;
    std::string with_one_thread_ = std::string(one_thread) + "=1";
    std::vector<char*> environment_;
    bool reads_input_ = false;
    off_t input_begins_ = -1;
    static inline std::atomic<const BeginAnew*> ready_{nullptr};
};

// Where memory ends: the words and the end, on whichever thread. Going back through all that was
// begun would need memory where none may be lacking, such as in the destructors of libraries.
[[noreturn]] void end_without_memory() {
    BeginAnew::where_it_helps();
    (void)write_all(STDERR_FILENO, not_enough_memory);
    std::_Exit(static_cast<int>(Status::defect));
}

// Made before the tables of the engine, which need memory as well.
struct ReadyToEnd {
    ReadyToEnd() { std::set_new_handler(end_without_memory); }
};
[[gnu::init_priority(101)]] const ReadyToEnd ready_to_end;

int answered(char** words, const std::vector<std::string>& arguments) {
    std::optional<BeginAnew> anew(words);
    auto around = surroundings_of_this_process();
    std::optional<ShownProgress> shown;
    const bool quiet = std::ranges::find(arguments, "--quiet") != arguments.end();
    if (isatty(STDERR_FILENO) == 1 && !quiet) {
        around.progress = [&shown](double share) {
            shown->done(share);
            return true;
        };
        shown.emplace();
    }
    around.cut_output = cut_standard_output;
    around.line = [&anew](std::string_view line) {
        anew.reset();  // what is written must not be written twice
        tell_that_something_is_written();
        return write_all(STDOUT_FILENO, line) == Written::whole;
    };
    const Outcome outcome = run(arguments, around);
    shown.reset();
    anew.reset();  // what is written must not be written twice
    (void)write_all(STDERR_FILENO, outcome.errors);
    if (write_all(STDOUT_FILENO, outcome.output) == Written::failed) {
        (void)write_all(STDERR_FILENO,
                        std::string("candlemark: the answer could not be written: ") +
                            std::strerror(errno) + "\n");
        return static_cast<int>(Status::unusable);
    }
    return static_cast<int>(outcome.status);
}

}  // namespace

int main(int count, char** arguments) {
    std::signal(SIGPIPE, SIG_IGN);
    end_cleanly_on_interrupt();
    // One answer, then the end: keep what is freed instead of handing pages back and fetching
    // them again. A fifth of the time of a long plan.
    mallopt(M_MMAP_THRESHOLD, 1 << 28);
    mallopt(M_TRIM_THRESHOLD, 1 << 28);
    mallopt(M_TOP_PAD, 1 << 22);
    if (std::getenv(BeginAnew::one_thread) != nullptr) outage::take_one_thread();
    return answered(arguments, std::vector<std::string>(arguments + 1, arguments + count));
}
