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

namespace {

using namespace command_line;

// Where memory ends: the words and the end, on whichever thread. Going back through all that was
// begun would need memory where none may be lacking, such as in the destructors of libraries.
[[noreturn]] void end_without_memory() {
    (void)write_all(STDERR_FILENO, not_enough_memory);
    std::_Exit(static_cast<int>(Status::defect));
}

// Made before the tables of the engine, which need memory as well.
struct ReadyToEnd {
    ReadyToEnd() { std::set_new_handler(end_without_memory); }
};
[[gnu::init_priority(101)]] const ReadyToEnd ready_to_end;

int answered(const std::vector<std::string>& arguments) {
    auto around = surroundings_of_this_process();
    std::optional<ShownProgress> shown;
    if (isatty(STDERR_FILENO) == 1) {
        around.progress = [&shown](double share) {
            shown->done(share);
            return true;
        };
        shown.emplace();
    }
    const Outcome outcome = run(arguments, around);
    shown.reset();
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
    return answered(std::vector<std::string>(arguments + 1, arguments + count));
}
