// What is wrong with the arguments, as data: it is told in the reader's language.
#pragma once

#include <string>
#include <vector>

#include <CLI/CLI.hpp>

#include "words/language.hpp"
#include "words/said.hpp"

namespace command_line {

// Thrown where the value of an option cannot be used.
class Misunderstood : public CLI::ParseError {
  public:
    // "--seed", `found "many"`, "give a whole number …"
    Misunderstood(std::string option, words::Said found, words::Said remedy);

    [[nodiscard]] const words::Said& wrong() const { return wrong_; }

  private:
    words::Said wrong_;
};

// A value as it was typed, in quotes.
[[nodiscard]] words::Said found(const std::string& typed);

// Refuses what is none of these values.
[[nodiscard]] CLI::Validator one_of(std::string option, std::vector<std::string> values);

// Refuses what is no whole number from least to most.
[[nodiscard]] CLI::Validator whole_number(std::string option, int least, int most);

// What the reading of these arguments stopped at.
[[nodiscard]] words::Said in_words(const CLI::ParseError& error, const CLI::App& program,
                                   const std::vector<std::string>& arguments);

// The language that the arguments ask for; the locale's where they ask for none that is known.
[[nodiscard]] words::Language language_for_complaints(const std::vector<std::string>& arguments,
                                                      const words::Language& locale);

}  // namespace command_line
