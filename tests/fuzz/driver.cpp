// Runs a target over files, over the seeds made here, and over a fixed number of changed inputs:
//   fuzz_command [--runs N] [--seed N] [--seconds N] [--write-seeds FOLDER] [FILE or FOLDER]…
// Inputs that lead to a kind of answer not seen before are changed further. The same numbers give
// the same runs. The input that ended the program is left as fuzz-<target>-fault beside it, and is
// run again by naming that file.
#include <algorithm>
#include <cmath>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <sys/time.h>
#include <unistd.h>
#include <vector>

#include "fuzz/target.hpp"

namespace {

namespace fs = std::filesystem;

constexpr std::size_t most_kept = 4000;

// What a signal's handler needs, at hand without any call that could fail.
std::string current;
char fault_file[4096];

void leave_input(int signal) {
    const int file = open(fault_file, O_WRONLY | O_CREAT | O_TRUNC, 0644);
    if (file >= 0 && write(file, current.data(), current.size()) >= 0) {
        for (const char* words :
             {"fuzz: the input is left in ", static_cast<const char*>(fault_file), "\n"})
            if (write(STDERR_FILENO, words, std::strlen(words)) < 0) break;
    }
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

double processor_seconds() {
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

std::string contents(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

struct Asked {
    long runs = 0;
    std::uint64_t seed = 1;
    double seconds = 0.0;  // of the processor; 0 is without a limit
    double longest = 0.0;  // of one run; 0 is without a limit
    std::string seeds_to;
    std::vector<std::string> inputs;
};

Asked read_arguments(int count, char** arguments) {
    Asked asked;
    for (int i = 1; i < count; ++i) {
        const std::string word = arguments[i];
        const bool has_value = i + 1 < count;
        if (word == "--runs" && has_value) {
            asked.runs = std::atol(arguments[++i]);
        } else if (word == "--seed" && has_value) {
            asked.seed = std::strtoull(arguments[++i], nullptr, 10);
        } else if (word == "--seconds" && has_value) {
            asked.seconds = std::atof(arguments[++i]);
        } else if (word == "--longest" && has_value) {
            asked.longest = std::atof(arguments[++i]);
        } else if (word == "--write-seeds" && has_value) {
            asked.seeds_to = arguments[++i];
        } else if (fs::is_directory(word)) {
            for (const auto& entry : fs::directory_iterator(word))
                asked.inputs.push_back(contents(entry.path()));
        } else if (fs::exists(word)) {
            asked.inputs.push_back(contents(word));
        } else {
            std::fprintf(stderr, "fuzz: %s: neither an option nor a file\n", word.c_str());
            std::exit(2);
        }
    }
    std::sort(asked.inputs.begin(), asked.inputs.end());
    return asked;
}

// A run that does not end is a fault as well: SIGPROF counts the processor's time of this process.
void limit_run(double seconds) {
    const itimerval timer{
        .it_interval = {},
        .it_value = {.tv_sec = static_cast<time_t>(seconds),
                     .tv_usec = static_cast<suseconds_t>((seconds - std::floor(seconds)) * 1e6)}};
    setitimer(ITIMER_PROF, &timer, nullptr);
}

class Runs {
  public:
    explicit Runs(const Asked& asked) : asked_(asked) {}

    // True where the kind of answer is new and the input worth changing further.
    bool take(std::string input) {
        current = std::move(input);
        if (asked_.longest > 0.0) limit_run(asked_.longest);
        const double before = processor_seconds();
        const fuzz::Came came = fuzz::run(current);
        const bool is_new = marks_.insert(came.mark).second;
        slowest_ = std::max(slowest_, processor_seconds() - before);
        ++count_;
        return is_new && came.worth;
    }

    void tell() const {
        const double seconds = std::max(processor_seconds(), 1e-9);
        std::printf("%ld runs%s; %zu kinds of answers, %.1f runs/s, slowest %.2f s\n", count_,
                    fuzz::counts().c_str(), marks_.size(), static_cast<double>(count_) / seconds,
                    slowest_);
    }

  private:
    const Asked& asked_;
    std::set<std::uint64_t> marks_;
    long count_ = 0;
    double slowest_ = 0.0;
};

}  // namespace

int main(int count, char** arguments) {
    const Asked asked = read_arguments(count, arguments);
    std::snprintf(fault_file, sizeof fault_file, "%s-fault",
                  fs::path(arguments[0]).filename().c_str());
    // A stack of its own, for a fault may be that there is no more of the other one.
    static char stack[65536];
    const stack_t aside{.ss_sp = stack, .ss_flags = 0, .ss_size = sizeof stack};
    sigaltstack(&aside, nullptr);
    struct sigaction left {};
    left.sa_handler = leave_input;
    left.sa_flags = SA_ONSTACK;
    for (const int signal : {SIGABRT, SIGSEGV, SIGFPE, SIGBUS, SIGILL, SIGPROF})
        sigaction(signal, &left, nullptr);

    std::vector<std::string> pool = asked.inputs;
    for (auto& made : fuzz::made_seeds())
        pool.push_back(std::move(made));
    if (!asked.seeds_to.empty()) {
        fs::create_directories(asked.seeds_to);
        for (std::size_t i = 0; i < pool.size(); ++i)
            std::ofstream(fs::path(asked.seeds_to) / std::to_string(i), std::ios::binary)
                << pool[i];
        return 0;
    }

    Runs runs(asked);
    const bool replay = asked.runs == 0 && !asked.inputs.empty();
    if (replay) pool = asked.inputs;
    for (const auto& input : pool)
        (void)runs.take(input);
    fuzz::Random random(asked.seed);
    for (long i = 0; i < asked.runs; ++i) {
        if (asked.seconds > 0.0 && processor_seconds() > asked.seconds) break;
        const auto& one = pool[random() % pool.size()];
        const auto& other = pool[random() % pool.size()];
        std::string input = fuzz::mutated(one, other, random);
        if (runs.take(input) && pool.size() < most_kept) pool.push_back(std::move(input));
        if ((i + 1) % 10'000 == 0) runs.tell();
    }
    runs.tell();
    return 0;
}
