// What differs between two tables of a scenario, key by key, as a file would have it.
#pragma once

#include <string>
#include <vector>

#include "scenario/scenario.hpp"

namespace scenario {

struct KeyDifference {
    std::string key;     // "return_size"
    std::string before;  // as it stands after the =; empty: silent
    std::string after;

    friend bool operator==(const KeyDifference&, const KeyDifference&) = default;
};
using KeyDifferences = std::vector<KeyDifference>;

// Every key of the table whose value is another one, in the order of the format; empty where the
// tables are equal.
//   Table  any table of descriptions.hpp. Tables within it are one key: their whole text differs
template <class Table>
[[nodiscard]] KeyDifferences differences(const Table& before, const Table& after);

// Whether every key of the two tables has the same value.
template <class Table>
[[nodiscard]] bool same(const Table& before, const Table& after) {
    return differences(before, after).empty();
}
[[nodiscard]] bool same(const Link& before, const Link& after);

}  // namespace scenario
