// What a person asked for on the command line.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "scenario/read.hpp"

namespace command_line {

enum class Question { outage, read };
enum class Face { text, json, csv };

struct Request {
    Question question = Question::outage;
    std::string file;  // "-" is standard input
    Face face = Face::text;
    bool full = false;
    bool ascii = false;
    std::uint64_t seed = 1;
    std::optional<int> weathers;   // absent: as many as the length of the outage allows
    std::vector<std::string> set;  // KEY=VALUE as written
};

// A text to print instead of an answer: help, the version, or what is wrong with the arguments.
struct Notice {
    std::string text;
    bool is_error = false;
};

[[nodiscard]] std::variant<Request, Notice> read_arguments(
    const std::vector<std::string>& arguments);

}  // namespace command_line
