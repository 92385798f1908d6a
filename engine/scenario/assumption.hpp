// What was taken because the file was silent. Every default that enters an answer leaves one.
#pragma once

#include <string>
#include <vector>

namespace scenario {

struct Assumption {
    std::string where;  // the key that was silent, such as "pack[0].resistance"
    std::string text;   // what was taken, in plain words with its value
    std::string
        source;  // a key of references.md with page or table, or "common practice, no source"

    friend bool operator==(const Assumption&, const Assumption&) = default;
};

using Assumptions = std::vector<Assumption>;

}  // namespace scenario
