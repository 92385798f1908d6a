// What is said of a start in plain words.
#pragma once

#include <optional>

#include "starting/plan.hpp"
#include "words/said.hpp"

namespace answers {

[[nodiscard]] words::Said plain(starting::StartVerdict verdict);  // "may or may not start"

// "78 %"; above 999 % no more is told.
[[nodiscard]] words::Said in_percent(starting::Utilised used);
// "78 to 113 %"; one number where both ends look the same.
[[nodiscard]] words::Said in_percent(const units::Range<starting::Utilised>& used);

// Why the binding constraint binds, with its numbers, as a clause.
[[nodiscard]] words::Said reason_of(const starting::Judgement& judged,
                                    const std::optional<starting::InverterSide>& inverter,
                                    const starting::DirectSource& source);

// How many more packs make it start, or why none does, as a clause; empty where those that are
// there surely do.
[[nodiscard]] words::Said packs_in_words(const starting::PacksNeeded& packs, int now);

// What would make it start, in sentences: packs, the datum that settles a doubt, other conditions.
[[nodiscard]] words::Said mend_of(const starting::LoadStart& start, int packs_now);

}  // namespace answers
