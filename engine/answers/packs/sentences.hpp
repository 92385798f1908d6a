// The plain answer to how many packs to build.
#pragma once

#include <string>
#include <vector>

#include "answers/packs/answer.hpp"

namespace answers {

[[nodiscard]] std::vector<std::string> packs_sentences(const scenario::Scenario& scenario,
                                                       const questions::PacksFound& found);

// Of so many in all, those that are made beside what the case holds: the packs of the first entry,
// where there is more than one.
[[nodiscard]] int packs_to_build(const scenario::Scenario& scenario, int packs);

// "seven packs", "one panel", "seven packs and three panels": packs in all.
[[nodiscard]] std::string packs_in_words(int packs);
[[nodiscard]] std::string panels_in_words(int panels);
[[nodiscard]] std::string build_in_words(int packs, int panels);

}  // namespace answers
