// The built program run as a process of its own.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace process {

struct Ended {
    int status = -1;  // exit status; 128 + signal when a signal ended it
    std::string output;
    std::string errors;
};

// What the process may take, in bytes; 0 is without a limit.
struct Limits {
    long address_space = 0;
};

// Runs candlemark with these arguments. The environment is empty but for what is given.
[[nodiscard]] Ended candlemark(const std::vector<std::string>& arguments,
                               const std::string& standard_input = "",
                               const std::map<std::string, std::string>& environment = {},
                               const Limits& limits = {});

// A file below the folder of the build that holds this text.
[[nodiscard]] std::string file_with(const std::string& text, const std::string& name);

}  // namespace process
