#include "asked.hpp"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <unistd.h>

#include "command_line/run.hpp"

namespace key_trials {

namespace {

// The other build of a comparison; there as long as this program runs.
class BaseInAFile {
  public:
    BaseInAFile()
        : path_((std::filesystem::temp_directory_path() / "candlemark_limits_XXXXXX").string()) {
        const int descriptor = mkstemp(path_.data());
        if (descriptor < 0) {
            std::abort();
        }
        close(descriptor);
        std::ofstream(path_) << bases().front().text;
    }
    BaseInAFile(const BaseInAFile&) = delete;
    BaseInAFile& operator=(const BaseInAFile&) = delete;
    ~BaseInAFile() { std::filesystem::remove(path_); }

    [[nodiscard]] const std::string& path() const { return path_; }

  private:
    std::string path_;
};

const std::string& file_of_a_base() {
    static const BaseInAFile file;
    return file.path();
}

scenario::Overrides overrides_of(const std::vector<Trial>& values) {
    scenario::Overrides overrides;
    for (const Trial& trial : values) {
        overrides.push_back({.key = trial.key, .value = trial.value});
    }
    return overrides;
}

}  // namespace

std::vector<std::vector<std::string>> questions(Options options) {
    std::vector<std::vector<std::string>> all = {
        {"outage", "-"},
        {"packs", "-"},
        {"sun", "-"},
        {"start", "-"},
        {"wiring", "-"},
        {"join", "-"},
        {"storage", "-"},
        {"read", "-"},
        {"gauge", "-", "--reads", "12.9 V", "--rested", "3 h"},
        {"gauge", "-", "--reads", "12.4 V", "--under", "150 W", "--now", "21:30"},
        {"compare", "-", file_of_a_base()}};
    if (options == Options::few) {
        const auto add = [&](std::size_t at, std::vector<std::string> more) {
            all[at].insert(all[at].end(), more.begin(), more.end());
        };
        add(0, {"--weathers", "3"});
        add(1, {"--weathers", "2", "--most-packs", "2", "--most-panels", "1", "--threads", "1"});
        add(2, {"--weathers", "3", "--panels", "1"});
    }
    return all;
}

std::string refusal_of(const Base& base, const std::vector<Trial>& values) {
    const auto read = scenario::read_scenario(base.text, "base", overrides_of(values));
    std::string lines;
    if (!read) {
        for (const auto& error : read.error()) {
            lines += units::print(error) + '\n';
        }
    }
    return lines;
}

Asked ask(const std::vector<std::string>& question, const Base& base,
          const std::vector<Trial>& values) {
    std::vector<std::string> arguments = question;
    for (const Trial& trial : values) {
        arguments.insert(arguments.end(), {"--set", trial.key + '=' + trial.value});
    }
    arguments.insert(arguments.end(), {"--as", "json"});
    command_line::Surroundings around;
    around.standard_input = [&] { return units::Result<std::string>(std::string(base.text)); };
    const auto outcome = command_line::run(arguments, around);
    return {.question = question.front(),
            .status = static_cast<int>(outcome.status),
            .errors = outcome.errors};
}

}  // namespace key_trials
