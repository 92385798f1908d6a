// What is said of two builds: what changed, what to look at again, and what is better or worse.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "fitting/swap.hpp"
#include "questions/compare.hpp"
#include "words/said.hpp"

namespace answers {

// The circuit's name; "the unit" for none.
[[nodiscard]] words::Said place_in_words(const std::string& circuit);

// "fits"; "absent" where there was or is no such check.
[[nodiscard]] words::Said verdict_in_words(const std::optional<fitting::Verdict>& verdict);

// What a check of the wiring looks at, a few words without a verb: "voltage drop".
//   takes    check, "C1" to "C16"
[[nodiscard]] words::Said check_in_words(std::string_view check);

// What a question asks, a few words: "how long it lasts".
//   takes    question, its command
[[nodiscard]] words::Said question_in_words(const std::string& question);

// The questions beside wiring whose answers a change may move, each by its command: "outage".
[[nodiscard]] std::set<std::string> questions_of(const std::vector<fitting::Change>& changes);

// "What changed: work lamps: the switch is 5 A instead of 10 A."
//   takes    changes, at least one
[[nodiscard]] words::Said changes_in_words(const std::vector<fitting::Change>& changes);

// "Check again: fuse size and voltage drop of work lamps. 11 checks are now worse. Ask again: how
// long it lasts."
[[nodiscard]] words::Said to_look_at_again(const questions::CompareFound& found);

// A load's start in the new build beside the old one.
//   takes    before, null where the load was not there
[[nodiscard]] words::Said start_in_words(const questions::ComparedStart* before,
                                         const questions::ComparedStart& after);

// How long either lasts; empty where it is not known of both.
[[nodiscard]] words::Said runtime_in_words(const questions::ComparedBuild& before,
                                           const questions::ComparedBuild& after);

}  // namespace answers
