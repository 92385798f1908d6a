// What is tried of each key: the values its description says are its limits, the first beyond
// them, and values of no sense. A key that is new to a description is tried without a word here.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace key_trials {

enum class Kind {
    within,   // a value that the description allows
    crowded,  // as many entries as a list may have, all alike
    beyond,   // the first value that is not allowed
    odd,      // of another kind, of no size, no number
};

struct Trial {
    std::string key;    // "pack.main.capacity", as --set takes it
    std::string value;  // as it stands after the =
    Kind kind = Kind::within;
    std::string limits;  // what the description says of the key
};

// A unit in which every table of the format is described once, so that each key has its place.
struct Base {
    std::string_view name;
    std::string_view text;
};
[[nodiscard]] const std::vector<Base>& bases();

// Every key of every table, in the order of the format.
[[nodiscard]] std::vector<Trial> all_trials();

// The tables of the format that all_trials() does not walk into: none, or the format has grown.
[[nodiscard]] std::vector<std::string> tables_not_walked();

}  // namespace key_trials
