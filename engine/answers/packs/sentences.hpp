// The plain answer to how many packs to build.
#pragma once

#include <vector>

#include "answers/packs/answer.hpp"

namespace answers {

[[nodiscard]] std::vector<words::Said> packs_sentences(const scenario::Scenario& scenario,
                                                       const questions::PacksFound& found);

// Of so many in all, those that are made beside what the case holds: the packs of the first entry,
// where there is more than one.
[[nodiscard]] int packs_to_build(const scenario::Scenario& scenario, int packs);

// "seven packs", "one panel", "seven packs and three panels": packs in all.
[[nodiscard]] words::Said packs_in_words(int packs);
[[nodiscard]] words::Said panels_in_words(int panels);
[[nodiscard]] words::Said build_in_words(int packs, int panels);

}  // namespace answers
