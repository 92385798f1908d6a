// The plain answer to how many packs to build.
#pragma once

#include <string>
#include <vector>

#include "report/packs_answer.hpp"

namespace report {

[[nodiscard]] std::vector<std::string> packs_sentences(const scenario::Scenario& scenario,
                                                       const PacksFound& found);

// "93 % (91 to 95, of 1,000 weathers)"; never a bare percentage.
[[nodiscard]] std::string chance_in_words(const sizing::Chance& chance);

// "7 packs and 3 panels", "one pack".
[[nodiscard]] std::string build_in_words(int packs, int panels);

}  // namespace report
