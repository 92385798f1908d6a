// One base with some values changed, put through every question.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "key_trials.hpp"

#include "scenario/file/read.hpp"

namespace key_trials {

struct Asked {
    std::string question;
    int status = 0;      // as the program would end
    std::string errors;  // what it would write there
};

enum class Options {
    few,     // as few weathers and builds as a question can do with
    itself,  // what the question takes by itself
};

[[nodiscard]] std::vector<std::vector<std::string>> questions(Options options);

// Reads the base with the values; the errors as lines, empty where it can be read.
[[nodiscard]] std::string refusal_of(const Base& base, const std::vector<Trial>& values);

//   takes   arguments of one of questions(); the scenario comes as standard input
[[nodiscard]] Asked ask(const std::vector<std::string>& question, const Base& base,
                        const std::vector<Trial>& values);

}  // namespace key_trials
