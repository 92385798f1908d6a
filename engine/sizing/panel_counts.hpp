// What fewer and more panels would do for the same outage.
#pragma once

#include <optional>
#include <vector>

#include "sizing/member_runs.hpp"
#include "sizing/sun_return.hpp"
#include "units/quantities.hpp"

namespace sizing {

// One count of panels.
struct PanelCount {
    int panels = 0;
    SunReturn sun;
    chance::Figures figures;
};

// From no panel to `most`, as outage::panels_looked_at.
//   takes    members of a scenario with at least one panel
//   runs     of all of them, with every load on
[[nodiscard]] std::vector<PanelCount> panel_counts(MemberRuns& runs, int most,
                                                   units::Probability goal, unsigned threads = 0);

// Why one more panel than `panels` adds little.
//   lasts   it lasts nearly surely as it is
//   too_cold     the packs may not be charged when more comes
//   too_little   before it ends they give too little
enum class PanelLimit { controller, packs_full, too_cold, lasts, too_little };
struct EnoughPanels {
    int panels = 0;
    PanelLimit why{};
};

// The first count from which no further panel adds 2 in 100 to the chance or an hour to the time
// that may be counted on (ours); absent where the last that was looked at still does.
[[nodiscard]] std::optional<EnoughPanels> enough_panels(const std::vector<PanelCount>& counts);

// Whether each panel beyond so many adds as much, up to the last count that was looked at.
[[nodiscard]] bool each_helps(const std::vector<PanelCount>& counts, int from);

}  // namespace sizing
