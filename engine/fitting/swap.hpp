// What a swap of parts changes: which checks it dirties, and which verdicts moved.
#pragma once

#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "fitting/wiring.hpp"
#include "scenario/scenario.hpp"

namespace fitting {

// One difference between two builds.
struct Change {
    std::string kind;     // a row of swaps.toml
    std::string circuit;  // its name; empty: the unit
    words::Said words;    // "the switch is 5 A instead of 10 A"
    bool trunk = false;   // it lies in the main path or a pack's lead
};

// Old to new, by the values of the parts: circuit by circuit by name, link by link of a kind, then
// every other table but the title. Empty only where nothing but the title differs.
[[nodiscard]] std::vector<Change> changes_between(const scenario::Scenario& old_build,
                                                  const scenario::Scenario& new_build);

enum class Reach { here, trunk, everywhere };

struct Dirty {
    std::string check;  // "C1"
    Reach reach = Reach::here;
    std::string circuit;  // where `reach` is here

    friend auto operator<=>(const Dirty&, const Dirty&) = default;
};

// What the row of swaps.toml names for this change.
[[nodiscard]] std::set<Dirty> dirtied_by(const Change& change);
// What else such a change asks for; may be empty.
[[nodiscard]] words::Said advice_for(const Change& change);
// The questions beside `wiring` whose answers this change may move.
[[nodiscard]] std::span<const std::string> questions_of(const Change& change);

// A verdict that is another one now. Absent in one of them: nothing.
struct Moved {
    std::string check;
    std::string circuit;
    std::optional<Verdict> before;
    std::optional<Verdict> after;
    words::Said text;  // of the new build, else of the old one
    words::Said mend;
};

[[nodiscard]] bool is_worse(const Moved& moved);

// The worst verdict of each check in each circuit, where it moved; what became worse first.
[[nodiscard]] std::vector<Moved> moved_verdicts(const Fit& old_fit, const Fit& new_fit);

}  // namespace fitting
