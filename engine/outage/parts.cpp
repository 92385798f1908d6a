#include "outage/parts.hpp"

#include <algorithm>
#include <cmath>
#include <span>

#include "outage/clock/overload.hpp"

namespace outage {

using namespace units;

namespace {

std::vector<DirectDraw> draws_of(const demand::Demand& all, const demand::PlannedLoad& load,
                                 demand::Case which) {
    demand::Demand alone{.lasts = all.lasts, .inverter_on = {}, .loads = {load}, .assumptions = {}};
    std::vector<DirectDraw> draws;
    for (const demand::DemandStep& step : demand::demand_steps(alone, which))
        draws.push_back({step.from, step.direct, step.direct_useful});
    return draws;
}

std::optional<MainFuse> fuse_of(const unit::Branch& branch) {
    if (!branch.fuse) return std::nullopt;
    return MainFuse{
        .rating = branch.fuse->rating, .opens = branch.fuse->opens, .kept = branch.fuse->kept.hard};
}

// Where the voltage of each load is as low as it bears, which no load goes below.
bool a_fuse_may_open(const Parts& parts) {
    for (std::size_t way = 0; way < parts.fuses.size(); ++way) {
        if (!parts.fuses[way]) continue;
        const auto bears = Overload(*parts.fuses[way]).watched();
        const auto through = [&](const DirectPart& part) {
            return std::ranges::find(part.ways, way) != part.ways.end();
        };
        const auto at = [&](Duration now) {
            Current sum{};
            for (const DirectPart& part : parts.direct)
                if (through(part)) sum += draw_at(part, now).at_bus / part.lowest;
            return sum;
        };
        Current most{};  // were all at their largest at once
        for (const DirectPart& part : parts.direct)
            if (through(part))
                most += std::ranges::max(part.draws, {}, &DirectDraw::at_bus).at_bus / part.lowest;
        if (!(most > *bears)) continue;
        for (const DirectPart& part : parts.direct)
            if (through(part))
                for (const DirectDraw& draw : part.draws)
                    if (at(draw.from) > *bears) return true;
    }
    return false;
}

// Which draw holds at a moment, from one that began before on.
std::size_t holding(const DirectPart& part, Duration now, std::size_t at) {
    while (at + 1 < part.draws.size() && part.draws[at + 1].from <= now)
        ++at;
    return at;
}

}  // namespace

Voltage usual_lowest(Voltage bus) {
    return std::max(1.0, std::round(bus / (12.8 * volt))) * 10.5 * volt;
}

Parts parts_of(const demand::Demand& demand, demand::Case which,
               const std::vector<unit::Branch>& branches, Voltage bus) {
    Parts parts{.direct = {}, .ways = {}, .bus = bus};
    for (const unit::Branch& branch : branches)
        parts.ways.push_back(branch.resistance);
    for (std::size_t i = 0; i < demand.loads.size(); ++i) {
        const demand::PlannedLoad& load = demand.loads[i];
        if (load.from == scenario::Outlet::ac || load.strands.empty()) continue;
        DirectPart part{.load = i,
                        .lowest = load.lowest.value_or(usual_lowest(bus)),
                        .ways = {},
                        .draws = draws_of(demand, load, which)};
        for (std::size_t way = 0; way < branches.size(); ++way)
            if (std::ranges::find(branches[way].feeds, load.name) != branches[way].feeds.end())
                part.ways.push_back(way);
        parts.direct.push_back(std::move(part));
    }
    if (std::ranges::any_of(branches, [](const auto& branch) { return branch.fuse.has_value(); }))
        for (const unit::Branch& branch : branches)
            parts.fuses.push_back(fuse_of(branch));
    parts.may_open = a_fuse_may_open(parts);
    return parts;
}

const DirectDraw& draw_at(const DirectPart& part, Duration now) {
    const auto after = std::ranges::upper_bound(part.draws, now, {}, &DirectDraw::from);
    return after == part.draws.begin() ? part.draws.front() : *(after - 1);
}

Voltage lowest_at_bus(const Parts& parts, const DirectPart& part,
                      const std::vector<Power>& on_ways) {
    Voltage drop{};
    for (const std::size_t way : part.ways)
        drop += parts.ways[way] * (on_ways[way] / part.lowest);
    return part.lowest + drop;
}

std::vector<demand::DemandStep> with_lowest(std::vector<demand::DemandStep> steps,
                                            const Parts& parts) {
    std::vector<std::vector<Power>> flows(steps.size(), std::vector<Power>(parts.ways.size()));
    for (const DirectPart& part : parts.direct) {
        if (part.ways.empty()) continue;
        std::size_t at = 0;
        for (std::size_t i = 0; i < steps.size(); ++i) {
            at = holding(part, steps[i].from, at);
            for (const std::size_t way : part.ways)
                flows[i][way] += part.draws[at].at_bus;
        }
    }
    for (const DirectPart& part : parts.direct) {
        std::size_t at = 0;
        for (std::size_t i = 0; i < steps.size(); ++i) {
            at = holding(part, steps[i].from, at);
            std::size_t last = at;  // that begins before the next step
            while (last + 1 < part.draws.size() &&
                   (i + 1 == steps.size() || part.draws[last + 1].from < steps[i + 1].from))
                ++last;
            const auto of = std::span(part.draws).subspan(at, last - at + 1);
            if (std::ranges::any_of(of, [](const auto& draw) { return draw.at_bus > Power{}; }))
                steps[i].lowest = std::max(steps[i].lowest, lowest_at_bus(parts, part, flows[i]));
        }
    }
    return steps;
}

}  // namespace outage
