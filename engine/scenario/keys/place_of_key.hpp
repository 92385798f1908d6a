// Where in a document a key such as pack.expansion.count points.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scenario/file/document.hpp"
#include "units/result.hpp"

namespace scenario {

// The way to a key: each table or list passed, from the file on, and the name it was left by.
struct Passed {
    const Node* node = nullptr;
    std::string left_by;  // of a list, empty
};

struct PlaceOfKey {
    std::string path;                 // "pack[1].count"
    std::vector<Passed> passed;       // never empty; the last one holds the value, or would
    const Node* value = nullptr;      // null when it is absent
    std::vector<std::string> absent;  // keys that are missing below the last table passed
};

// Keys are parted by full stops. An entry of a list is named by its `name`, or by [0], [1] …;
// where there is only one entry, neither is needed. Names and keys with full stops may stand in
// double quotes.
//   fails   at the key when it names an entry that is not there, or is not written like a key
[[nodiscard]] units::Result<PlaceOfKey> place_of_key(const Node& document, std::string_view key);

}  // namespace scenario
