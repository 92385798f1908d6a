// How a function says that what it was given cannot be used.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include <tl/expected.hpp>

#include "words/said.hpp"

namespace units {

// One thing a person can put right.
struct Error {
    std::string where;   // the key, such as "pack[0].capacity"; empty where there is none
    words::Said found;   // what was found and why it cannot be used, as a clause of its own
    words::Said remedy;  // what would be right, such as "give charge, such as 100 Ah"
    std::string file = {};
    int line = 0;  // 1 is the first; 0 is unknown

    friend bool operator==(const Error&, const Error&) = default;
};

// The error as one line: `build.toml:12: pack[0].capacity: found 100 Wh, which is energy; give
// charge, such as 100 Ah`. Parts that are empty are left out.
[[nodiscard]] std::string print(const Error& error);  // in English
[[nodiscard]] std::string print(const Error& error, const words::Language& language);

// The same as a clause within a sentence.
[[nodiscard]] words::Said in_words(const Error& error);

using Errors = std::vector<Error>;

// A value, or every reason why there is none (never an empty list).
template <class T>
using Result = tl::expected<T, Errors>;

inline tl::unexpected<Errors> fail(Error error) {
    return tl::unexpected<Errors>(Errors{std::move(error)});
}

inline tl::unexpected<Errors> fail(Errors errors) {
    return tl::unexpected<Errors>(std::move(errors));
}

}  // namespace units
