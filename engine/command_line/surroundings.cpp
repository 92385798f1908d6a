#include "command_line/surroundings.hpp"

#include <array>
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <sys/ioctl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace command_line {

namespace {

using words::said;
std::string_view environment(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? std::string_view() : std::string_view(value);
}

// The first of these that is set decides. [POSIX] 8.2
bool locale_is_utf8() {
    for (const char* name : {"LC_ALL", "LC_CTYPE", "LANG"}) {
        const auto value = environment(name);
        if (!value.empty()) {
            return value.find("UTF-8") != std::string_view::npos ||
                   value.find("utf8") != std::string_view::npos ||
                   value.find("UTF8") != std::string_view::npos ||
                   value.find("utf-8") != std::string_view::npos;
        }
    }
    return false;
}

// The first of these that is set decides. [POSIX] 8.2
std::string locale_of_messages() {
    for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"}) {
        const auto value = environment(name);
        if (!value.empty()) return std::string(value);
    }
    return {};
}

int terminal_columns() {
    winsize size{};
    if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0) {
        return size.ws_col;
    }
    const int columns = std::atoi(std::string(environment("COLUMNS")).c_str());
    return columns > 0 && columns < 1000 ? columns : 80;
}

constexpr std::size_t largest_input = 16U << 20U;  // bytes; a scenario is a few thousand

units::Result<std::string> all_of_standard_input() {
    std::string text;
    std::array<char, 65536> chunk{};
    while (true) {
        const ssize_t count = read(STDIN_FILENO, chunk.data(), chunk.size());
        if (count == 0) {
            return text;
        }
        if (count < 0) {
            if (errno == EINTR) {
                continue;
            }
            return units::fail({.where = "",
                                .found = said<"cannot be read: {reason}">(std::strerror(errno)),
                                .remedy = said<"give a scenario file">(),
                                .file = "standard input"});
        }
        text.append(chunk.data(), static_cast<std::size_t>(count));
        if (text.size() > largest_input) {
            return units::fail({.where = "",
                                .found = said<"is larger than 16 MB">(),
                                .remedy = said<"give a scenario file, which is a few kB of text">(),
                                .file = "standard input"});
        }
    }
}

// What the wall clock would show without summer time. [POSIX] localtime
std::optional<units::LocalTime> standard_time() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    if (now == std::time_t(-1) || localtime_r(&now, &local) == nullptr) return std::nullopt;
    const auto date = std::chrono::year(local.tm_year + 1900) /
                      static_cast<unsigned>(local.tm_mon + 1) /
                      static_cast<unsigned>(local.tm_mday);
    const auto time = double(local.tm_hour) * units::hour + double(local.tm_min) * units::minute;
    return units::local_time(date, time) - (local.tm_isdst > 0 ? units::hour : 0.0 * units::hour);
}

}  // namespace

Surroundings surroundings_of_this_process() {
    return {.standard_input = all_of_standard_input,
            .columns = terminal_columns(),
            .utf8 = locale_is_utf8(),
            .locale = locale_of_messages(),
            .colour = isatty(STDOUT_FILENO) == 1 && environment("NO_COLOR").empty() &&
                      environment("TERM") != "dumb",
            .clock = standard_time()};
}

Written write_all(int descriptor, std::string_view text) {
    while (!text.empty()) {
        const ssize_t count = write(descriptor, text.data(), text.size());
        if (count >= 0) {
            text.remove_prefix(static_cast<std::size_t>(count));
        } else if (errno == EPIPE) {
            return Written::reader_gone;
        } else if (errno != EINTR) {
            return Written::failed;
        }
    }
    return Written::whole;
}

void cut_standard_output(const std::string& file, std::size_t bytes) {
    struct stat written {};
    struct stat named {};
    const bool same = fstat(STDOUT_FILENO, &written) == 0 && stat(file.c_str(), &named) == 0 &&
                      written.st_dev == named.st_dev && written.st_ino == named.st_ino;
    if (!same || static_cast<std::size_t>(written.st_size) <= bytes) return;
    (void)!ftruncate(STDOUT_FILENO, static_cast<off_t>(bytes));
}

}  // namespace command_line
