// How long and with how much memory every question answers at the limits of every key, with the
// options it takes by itself. Each is asked in a process of its own.
//   measure_limits [EVERY [FROM]]     every so many trials, from that one on
//   measure_limits KEY=VALUE …        these values together
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <string>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include "asked.hpp"

namespace {

using namespace key_trials;

constexpr rlim_t longest = 60;  // seconds of processor time, then it is stopped

struct Measured {
    double seconds = 0.0;
    long kilobytes = 0;
    int status = 0;  // 128 and more: by a signal
};

Measured measured(const std::vector<std::string>& question, const Base& base,
                  const std::vector<Trial>& values) {
    const pid_t child = fork();
    if (child == 0) {
        const rlimit time{longest, longest};
        setrlimit(RLIMIT_CPU, &time);
        const Asked asked = ask(question, base, values);
        if (asked.status >= 2) {
            std::fputs(asked.errors.c_str(), stderr);
        }
        _exit(asked.status);
    }
    int status = 0;
    rusage used{};
    wait4(child, &status, 0, &used);
    const auto seconds = [](const timeval& time) { return time.tv_sec + 1e-6 * time.tv_usec; };
    return {.seconds = seconds(used.ru_utime) + seconds(used.ru_stime),
            .kilobytes = used.ru_maxrss,
            .status = WIFSIGNALED(status) ? 128 + WTERMSIG(status) : WEXITSTATUS(status)};
}

struct Worst {
    Measured at;
    std::string what;
};

}  // namespace

int main(int count, char** arguments) {
    std::vector<std::vector<Trial>> tried;
    if (count > 1 && std::string(arguments[1]).find('=') != std::string::npos) {
        tried.emplace_back();
        for (int i = 1; i < count; ++i) {
            const std::string text = arguments[i];
            const auto equals = text.find('=');
            tried.back().push_back({text.substr(0, equals), text.substr(equals + 1)});
        }
    } else {
        const std::size_t every = count > 1 ? std::strtoul(arguments[1], nullptr, 10) : 1;
        std::size_t number = count > 2 ? std::strtoul(arguments[2], nullptr, 10) : 0;
        for (const Trial& trial : all_trials()) {
            const bool refused_anyway = trial.kind == Kind::beyond || trial.kind == Kind::odd;
            if (!refused_anyway && number++ % std::max<std::size_t>(1, every) == 0) {
                tried.push_back({trial});
            }
        }
    }
    std::vector<Worst> all;
    std::map<int, int> ended;
    for (const auto& values : tried) {
        for (const Base& base : bases()) {
            const std::string refused = refusal_of(base, values);
            for (const auto& question : questions(Options::itself)) {
                const Measured one =
                    refused.empty() ? measured(question, base, values) : Measured{.status = 2};
                ++ended[one.status];
                std::string what = std::string(base.name) + " " + question.front();
                for (const Trial& value : values) {
                    what += " " + value.key + "=" + value.value.substr(0, 60);
                }
                if (one.status >= 3) {
                    std::printf("ended with %d: %s\n", one.status, what.c_str());
                }
                all.push_back({one, what});
            }
            std::fflush(stdout);
        }
    }
    const auto print_worst = [&](const char* heading) {
        std::printf("%s\n", heading);
        for (std::size_t i = 0; i < std::min<std::size_t>(12, all.size()); ++i) {
            std::printf("%8.2f s %6ld MB  exit %d  %s\n", all[i].at.seconds,
                        all[i].at.kilobytes / 1024, all[i].at.status, all[i].what.c_str());
        }
    };
    std::ranges::sort(all,
                      [](const Worst& a, const Worst& b) { return a.at.seconds > b.at.seconds; });
    print_worst("longest processor time");
    std::ranges::sort(
        all, [](const Worst& a, const Worst& b) { return a.at.kilobytes > b.at.kilobytes; });
    print_worst("largest memory");
    for (const auto& [status, times] : ended) {
        std::printf("ended with %d: %d\n", status, times);
    }
    return 0;
}
