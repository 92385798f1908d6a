// The questions that can be asked: one row each, one file ask_<question>.cpp each.
#pragma once

#include <vector>

#include "answers/answer.hpp"
#include "command_line/request.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace CLI {
class App;
}

namespace command_line {

struct Question {
    const char* name;      // the word on the command line
    words::Said asks;      // the question in plain words
    const char* examples;  // whole lines to type
    // Adds the options that only this question has; may be nothing.
    void (*add_options)(CLI::App& command, Request& request) = nullptr;
    // What is asked, out of the request's text; the scenario tells what a time of day alone means.
    // Nothing for those that write into the file.
    units::Result<questions::Asked> (*asked)(const scenario::ReadScenario& read,
                                             const Request& request) = nullptr;
    units::Result<answers::Answer> (*write)(const scenario::ReadScenario& read,
                                            const Request& request) = nullptr;
    // The answer itself tells the warnings of reading; elsewhere they go to standard error.
    bool tells_warnings = false;
    // Asked of one file alone.
    bool of_one_file = false;
};

// In the order of the help.
[[nodiscard]] const std::vector<Question>& questions();

[[nodiscard]] questions::How how_of(const Request& request);

//   fails   where the request cannot be used, or the scenario lacks what the question needs
[[nodiscard]] units::Result<answers::Answer> answer_to(const scenario::ReadScenario& read,
                                                       const Request& request);

}  // namespace command_line
