#include "sizing/panel_counts.hpp"

#include <algorithm>

#include "outage/in_threads.hpp"
#include "outage/panel_counts.hpp"
#include "outage/weathers.hpp"
#include "outage/work.hpp"

namespace sizing {

namespace {

using namespace units;

// Energies need each outage to its end, and are told to two digits: as many members as take part of
// a second.
int members_of_energy(const outage::Ready& ready, std::size_t counts) {
    constexpr double most_steps = 4e6;
    const double reached = most_steps / (outage::steps_of_a_run(ready) * double(counts));
    return static_cast<int>(std::clamp(reached, 8.0, double(chance::lanes)));
}

struct Account {
    Energy taken{};
    Energy lost{};
    Energy unused{};
    Energy clipped{};
};

Account account_of(const chance::Members& members, int number, int panels) {
    const auto& world = members.world();
    const auto values = members.values(number);
    const auto course =
        world.run(world.lived(values), world.packs(), world.sun(values, panels), {.trace = false});
    return {.taken = course.ledger.sun_used + course.ledger.sun_stored,
            .lost = course.ledger.charging_loss,
            .unused = course.ledger.sun_unused,
            .clipped = course.ledger.sun_clipped};
}

PanelCount count_of(MemberRuns& runs, int panels, int accounted, Probability goal,
                    std::uint64_t seed, unsigned threads) {
    // Percentiles of a day's yield are cheap; of them there are as many as for one answer.
    constexpr int recharge_weathers = 2000;
    const auto& members = runs.members();
    const auto& world = members.world();
    PanelCount count{.panels = panels,
                     .offered = {},
                     .figures = members.figures(runs.ends(world.packs(), panels, threads), goal)};
    const auto recharge =
        outage::recharge_of(outage::with_panels(world.ready(), panels), recharge_weathers, seed);
    if (!recharge) return count;
    count.offered = recharge->whole;
    std::vector<Account> accounts(static_cast<std::size_t>(accounted));
    outage::for_each_number(accounted, threads, [&](int number) {
        accounts[std::size_t(number)] = account_of(members, number, panels);
    });
    for (const auto& account : accounts) {
        count.taken += account.taken / double(accounted);
        count.lost += account.lost / double(accounted);
        count.unused += account.unused / double(accounted);
        count.clipped += account.clipped / double(accounted);
    }
    return count;
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
    const Energy held_back = more.clipped - fewer.clipped;
    // What a full lead-acid pack gasses away is refused as well, only later.
    const Energy refused = more.unused + more.lost - (fewer.unused + fewer.lost);
    const Energy kept = more.taken - more.lost - (fewer.taken - fewer.lost);
    if (std::max(held_back, refused) < kept) return PanelLimit::too_little;
    return held_back > refused ? PanelLimit::controller : PanelLimit::packs_full;
}

}  // namespace

std::vector<PanelCount> panel_counts(MemberRuns& runs, int most, Probability goal,
                                     std::uint64_t seed, unsigned threads) {
    std::vector<PanelCount> counts;
    const auto& ready = runs.members().world().ready();
    const auto looked_at = outage::panels_looked_at(ready, most);
    const int accounted = members_of_energy(ready, looked_at.size());
    for (const int panels : looked_at)
        counts.push_back(count_of(runs, panels, accounted, goal, seed, threads));
    return counts;
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
