// What each target of the fuzzer gives to the two programs that drive it: libFuzzer of clang, which
// follows the branches that an input takes, and driver.cpp, which every compiler builds.
#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <string_view>
#include <vector>

namespace fuzz {

using Random = std::mt19937_64;

//   mark    of the kind of answer: inputs of equal marks led to nothing different
//   worth   changing further: a new kind of answer, not only a new way to be refused
struct Came {
    std::uint64_t mark = 0;
    bool worth = true;
};

// One run of what is tested. Ends the program where something came that must not.
[[nodiscard]] Came run(std::string_view input);

// The input changed in one or a few places, so that much of it still makes sense.
//   other   a second input that parts may be taken from
[[nodiscard]] std::string mutated(std::string_view input, std::string_view other, Random& random);

// Inputs made here, beside the files of a target's folder of seeds.
[[nodiscard]] std::vector<std::string> made_seeds();

// Ends the program with these words where the condition does not hold.
void must(bool holds, std::string_view words);

// Counts what came of the runs, for the driver to tell: "refused", "answered".
void count(std::string_view what);
[[nodiscard]] std::string counts();

// The mark of a text in which figures do not count.
[[nodiscard]] std::uint64_t mark_of(std::string_view text);

}  // namespace fuzz
