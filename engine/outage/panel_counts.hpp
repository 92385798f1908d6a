// What fewer and more panels would do for the same outage.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "outage/weathers.hpp"

namespace outage {

// One count of panels under many weathers. Energies are of the whole outage.
struct PanelCount {
    int panels = 0;
    solar::DayRange offered;      // at the battery; percentiles over solar::recharge's weathers
    units::Energy taken{};        // into loads and packs, mean of the weathers run
    units::Energy lost{};         // of it, what charging did not store, likewise
    units::Energy unused{};       // offered and not taken, likewise
    units::Energy clipped{};      // kept back by the controller's limits, likewise
    std::vector<Ending> endings;  // of the weathers run, in the order of their numbers
};

// Which counts are looked at: each up to 16, then an eighth more at a time, always the file's own
// and `most`.
[[nodiscard]] std::vector<int> panels_looked_at(const Ready& ready, int most);

// From no panel to `most`, as panels_looked_at. Up to the file's own count panels are left out from
// the last entry on; more are like the first entry.
//   takes   a scenario with at least one panel; weathers: at least 1
[[nodiscard]] std::vector<PanelCount> panel_counts(const Ready& ready, int most, int weathers,
                                                   std::uint64_t seed, unsigned threads = 0);

// The same unit with another number of panels.
[[nodiscard]] Ready with_panels(const Ready& ready, int panels);

// Why one more panel than `panels` no longer helps.
enum class PanelLimit { controller, packs_full };
struct EnoughPanels {
    int panels = 0;
    PanelLimit why{};
};

// The fewest panels after which one more adds less than a fifth of what the first one added to
// what is taken and not lost again in charging (ours); absent when each of the counts still adds
// more.
[[nodiscard]] std::optional<EnoughPanels> enough_panels(const std::vector<PanelCount>& counts);

}  // namespace outage
