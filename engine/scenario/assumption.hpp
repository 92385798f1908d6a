// What was taken because the file was silent. Every default that enters an answer leaves one.
#pragma once

#include <string>
#include <vector>

#include "words/said.hpp"

namespace scenario {

struct Assumption {
    std::string where;  // the key that was silent, such as "pack[0].resistance"
    words::Said text;   // what was taken, in plain words with its value
    words::Said
        source;  // a key of references.md with page or table, or "common practice, no source"

    words::Said named = {};  // what people read in place of `where` where it is no key

    friend bool operator==(const Assumption&, const Assumption&) = default;
};

using Assumptions = std::vector<Assumption>;

// What it is about, for people.
[[nodiscard]] inline words::Said place_of(const Assumption& assumption) {
    return assumption.named.empty() ? words::Said(assumption.where) : assumption.named;
}

}  // namespace scenario
