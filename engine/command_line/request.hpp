// A question with its options, as read from the arguments.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace command_line {

struct Question;

enum class Face { text, json, csv };

struct Request {
    const Question* question = nullptr;  // a row of questions(); set whenever arguments were read
    std::string file;                    // "-" is standard input
    Face face = Face::text;
    bool full = false;
    bool ascii = false;
    std::uint64_t seed = 1;
    std::vector<std::string> set;  // KEY=VALUE as written

    // Of single questions.
    std::optional<int> weathers;  // outage; absent: as many as the length of the outage allows
};

}  // namespace command_line
