#include "process.hpp"

#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace process {

namespace {

const std::filesystem::path folder =
    std::filesystem::path(CANDLEMARK_BINARY_DIR) / "command_line_tests";

std::string contents(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::vector<char*> pointers(std::vector<std::string>& texts) {
    std::vector<char*> result;
    for (auto& text : texts) {
        result.push_back(text.data());
    }
    result.push_back(nullptr);
    return result;
}

void redirect(int descriptor, const std::string& path, int flags) {
    const int opened = open(path.c_str(), flags, 0600);
    dup2(opened, descriptor);
    close(opened);
}

}  // namespace

std::string file_with(const std::string& text, const std::string& name) {
    std::filesystem::create_directories(folder);
    const auto path = folder / (std::to_string(getpid()) + "_" + name);
    std::ofstream(path, std::ios::binary) << text;
    return path.string();
}

Ended candlemark(const std::vector<std::string>& arguments, const std::string& standard_input,
                 const std::map<std::string, std::string>& environment, const Limits& limits) {
    const std::string program = std::string(CANDLEMARK_BINARY_DIR) + "/candlemark";
    const auto input = file_with(standard_input, "input");
    const auto output = file_with("", "output");
    const auto errors = file_with("", "errors");
    std::vector<std::string> words{program};
    words.insert(words.end(), arguments.begin(), arguments.end());
    std::vector<std::string> settings;
    for (const auto& [name, value] : environment) {
        settings.push_back(name + "=" + value);
    }
    auto argument_pointers = pointers(words);
    auto environment_pointers = pointers(settings);
    const pid_t child = fork();
    if (child == 0) {
        redirect(STDIN_FILENO, input, O_RDONLY);
        redirect(STDOUT_FILENO, output, O_WRONLY | O_TRUNC);
        redirect(STDERR_FILENO, errors, O_WRONLY | O_TRUNC);
        if (limits.address_space > 0) {
            const auto bytes = static_cast<rlim_t>(limits.address_space);
            const rlimit limit{.rlim_cur = bytes, .rlim_max = bytes};
            setrlimit(RLIMIT_AS, &limit);
        }
        execve(program.c_str(), argument_pointers.data(), environment_pointers.data());
        _exit(127);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return {.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status),
            .output = contents(output),
            .errors = contents(errors)};
}

}  // namespace process
