// The command as a person types it, within this process.
#pragma once

#include <chrono>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <string_view>
#include <unistd.h>
#include <vector>

#include "command_line/run.hpp"

namespace typed {

struct Ended {
    int status = -1;  // exit status
    std::string output;
    std::string errors;
};

// On a terminal of 80 columns without colour whose clock says noon of 1 June 2026.
[[nodiscard]] inline command_line::Outcome outcome(const std::vector<std::string>& arguments,
                                                   const std::string& standard_input = "",
                                                   int columns = 80) {
    using namespace std::chrono_literals;
    return command_line::run(
        arguments, {.standard_input = [&] { return units::Result<std::string>(standard_input); },
                    .columns = columns,
                    .clock = units::local_time(2026y / 6 / 1, 12.0 * units::hour)});
}

[[nodiscard]] inline Ended candlemark(const std::vector<std::string>& arguments,
                                      const std::string& standard_input = "") {
    auto ended = outcome(arguments, standard_input);
    return {static_cast<int>(ended.status), std::move(ended.output), std::move(ended.errors)};
}

// A pack for a day, and what may stand behind it in the same file.
inline const std::string a_pack = R"toml(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 d"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
)toml";
inline const std::string a_lamp = R"toml([[load]]
name = "lamp"
from = "12V"
power = "9 W"
)toml";

[[nodiscard]] inline std::string with_a_lamp(std::string_view more = "") {
    return a_pack + a_lamp + std::string(more);
}

// The question and its options asked of a file that comes through standard input.
[[nodiscard]] inline command_line::Outcome asked(std::vector<std::string> arguments,
                                                 const std::string& text) {
    arguments.insert(arguments.begin() + 1, "-");
    return outcome(arguments, text);
}

// A file below the folder of the build that holds this text.
[[nodiscard]] inline std::string file_with(const std::string& text, const std::string& name) {
    const auto folder = std::filesystem::path(CANDLEMARK_BINARY_DIR) / "typed_tests";
    std::filesystem::create_directories(folder);
    const auto path = folder / (std::to_string(getpid()) + "_" + name);
    std::ofstream(path, std::ios::binary) << text;
    return path.string();
}

[[nodiscard]] inline std::string contents(const std::string& path) {
    std::ostringstream text;
    text << std::ifstream(path, std::ios::binary).rdbuf();
    return text.str();
}

}  // namespace typed
