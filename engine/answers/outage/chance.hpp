// The words for what the members of the chance make of an outage.
#pragma once

#include <string>
#include <vector>

#include "questions/shared/outage_chance.hpp"
#include "scenario/scenario.hpp"

namespace answers {

// "Count on it until Friday 22:00 (nine times in ten), most likely until Saturday 09:00. To the
// end, Sunday 18:00, about 4 times in ten.": the headline, then what more packs would do, what ends
// it, and what one year of weather leaves open. chance/method.md (15)
[[nodiscard]] std::vector<words::Said> chance_sentences(const scenario::Outage& outage,
                                                        const questions::OutageChance& told);

}  // namespace answers
