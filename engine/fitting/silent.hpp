// Figures of parts that a file leaves open and that a check of the wiring turns on, each with the
// range it may lie in: what is not known is never better than the worst of it. See
// method.md, "What the file leaves open".
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "scenario/scenario.hpp"

namespace fitting {

// Which end of its range does harm: the same one in every check, or one here and the other there.
enum class Harm { low, high, either };

struct SilentFigure {
    words::Said where;    // "circuit.lamps, 16 AWG wire"
    std::string key;      // "insulation"
    std::string circuit;  // whose checks it bears on; empty: every one's
    words::Said text;     // "60 to 105 degC, as the file does not say"
    words::Said source;
    Harm harm = Harm::low;
    // Puts a point of the range in, from its low end, 0, to its high end, 1. The scenario may have
    // been completed elsewhere meanwhile; its tables and links must be those it was made for.
    std::function<void(scenario::Scenario&, double)> set;
};

// In the order of the file's tables. Nothing is listed for parts that the file does not name: they
// are not judged. `set` holds no reference to the scenario given.
[[nodiscard]] std::vector<SilentFigure> silent_figures(const scenario::Scenario& scenario);

// One way to complete a scenario.
struct Completion {
    bool harmful = true;  // figures with one bad end: that end; else the other
    // Figures whose bad end depends on the check: at their low end, at their high end, or left to
    // the models' own likely value.
    enum class Other { low, high, likely } others = Other::likely;
    // A cut-off that is low lets more current flow, whatever the rest, and a high one less.
    std::optional<bool> cutoff_high = {};
};

[[nodiscard]] scenario::Scenario completed(scenario::Scenario scenario,
                                           const std::vector<SilentFigure>& silent,
                                           const Completion& how);

}  // namespace fitting
