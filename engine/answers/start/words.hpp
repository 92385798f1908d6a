// What is said of a start in plain words.
#pragma once

#include <string>
#include <string_view>

#include "starting/plan.hpp"

namespace answers {

[[nodiscard]] std::string_view plain(starting::StartVerdict verdict);  // "may or may not start"

// Both ends with one unit: "3.84 to 4.3 kVA"; one number where they look the same.
template <class Written>
[[nodiscard]] std::string between(const units::Range<Written>& range);

// Why the binding constraint binds, with its numbers, as a clause.
[[nodiscard]] std::string reason_of(const starting::Judgement& judged,
                                    const starting::StartPlan& plan);

// What would make it start: packs, or why none helps; the datum that settles; a sentence or two.
[[nodiscard]] std::string packs_in_words(const starting::PacksNeeded& packs, int now);
[[nodiscard]] std::string mend_of(const starting::LoadStart& start, int packs_now);

}  // namespace answers
