#include "sizing/panel_counts.hpp"

#include <algorithm>

#include "outage/panel_counts.hpp"

namespace sizing {

namespace {

using namespace units;

PanelCount count_of(MemberRuns& runs, int panels, Probability goal, unsigned threads) {
    const auto& members = runs.members();
    return {.panels = panels,
            .sun = sun_return(members, panels, threads),
            .figures = members.figures(runs.ends(members.world().packs(), panels, threads), goal)};
}

// Whether each of the panels from `fewer` to `more` adds something.
bool adds(const PanelCount& fewer, const PanelCount& more) {
    const double panels = more.panels - fewer.panels;
    const double surer = (more.figures.of.value() - fewer.figures.of.value()) / panels;
    const Duration longer = (more.figures.count_on - fewer.figures.count_on) / panels;
    return surer >= 0.02 || longer >= 1.0 * hour;
}

PanelLimit why_not(const PanelCount& fewer, const PanelCount& more) {
    if (fewer.figures.of > Probability(0.98)) return PanelLimit::lasts;
    const auto& before = fewer.sun.mean;
    const auto& after = more.sun.mean;
    const Energy held_back = after.clipped - before.clipped;
    const Energy cold = after.too_cold - before.too_cold;
    // What a full lead-acid pack gasses away is refused as well, only later.
    const Energy full = after.full + after.lost - (before.full + before.lost);
    const Energy kept = after.kept() - before.kept();
    if (std::max(held_back, full + cold) < kept) return PanelLimit::too_little;
    if (held_back > full + cold) return PanelLimit::controller;
    return cold > full ? PanelLimit::too_cold : PanelLimit::packs_full;
}

}  // namespace

std::vector<PanelCount> panel_counts(MemberRuns& runs, int most, Probability goal,
                                     unsigned threads) {
    std::vector<PanelCount> counts;
    for (const int panels : outage::panels_looked_at(runs.members().world().ready(), most))
        counts.push_back(count_of(runs, panels, goal, threads));
    return counts;
}

bool each_helps(const std::vector<PanelCount>& counts, int from) {
    for (std::size_t i = 1; i < counts.size(); ++i)
        if (counts[i - 1].panels >= from && !adds(counts[i - 1], counts[i])) return false;
    return true;
}

std::optional<EnoughPanels> enough_panels(const std::vector<PanelCount>& counts) {
    if (counts.size() < 2) return std::nullopt;
    std::size_t enough = counts.size() - 1;
    while (enough > 0 && !adds(counts[enough - 1], counts[enough]))
        --enough;
    if (enough == counts.size() - 1) return std::nullopt;
    return EnoughPanels{.panels = counts[enough].panels,
                        .why = why_not(counts[enough], counts[enough + 1])};
}

}  // namespace sizing
