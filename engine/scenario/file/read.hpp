// From the bytes of a scenario file to plain values, or to everything that is wrong with it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scenario/scenario.hpp"
#include "units/result.hpp"

namespace scenario {

inline constexpr int format_version = 1;  // newer ones are refused

// A value that holds in place of the file's, such as pack.expansion.count=4.
struct Override {
    std::string key;    // as save.hpp takes it
    std::string value;  // with or without quotes

    friend bool operator==(const Override&, const Override&) = default;
};
using Overrides = std::vector<Override>;

// "KEY=VALUE" at its first = outside quotes.
[[nodiscard]] units::Result<Override> read_override(std::string_view text);

struct ReadScenario {
    Scenario scenario;
    units::Errors warnings;  // what a person should look at, in the shape of errors
    std::string text;        // the bytes as they came, without the overrides
    std::string file_name;
    Overrides overrides;
};

// Reads the whole file. Keys nobody knows are warned of; [[pack]] entries after the first take
// what they do not give from the first (pack_keys.cpp says what).
//   fails   with every error at once: file, line, key, what was found, what would be right. Errors
//           in an overridden value name the override in the place of file and line
[[nodiscard]] units::Result<ReadScenario> read_scenario(std::string_view bytes,
                                                        std::string file_name,
                                                        Overrides overrides = {});

// The same from a file; also fails when it is missing, a folder, not readable or too large.
[[nodiscard]] units::Result<ReadScenario> read_scenario_file(const std::string& path,
                                                             Overrides overrides = {});

}  // namespace scenario
