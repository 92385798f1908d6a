// What a person asked for on the command line.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "command_line/request.hpp"
#include "words/language.hpp"

namespace command_line {

// A text to print instead of an answer: help, the version, or what is wrong with the arguments.
struct Notice {
    std::string text;
    bool is_error = false;
};

[[nodiscard]] std::variant<Request, Notice> read_arguments(
    const std::vector<std::string>& arguments, int columns = 80,
    const words::Language& locale = words::english());

}  // namespace command_line
