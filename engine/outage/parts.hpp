// The 12 V loads as parts of the supply, each with its own lowest voltage, for what goes on when
// not all of them can be met. method.md (15)
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "demand/demand.hpp"
#include "outage/clock/branches.hpp"
#include "outage/unit.hpp"

namespace outage {

// From one moment on.
//   at_bus   with its adaptor, without what its circuits lose
struct DirectDraw {
    units::Duration from{};
    units::Power at_bus{};
    units::Power useful{};
};

//   load    its place in Demand::loads
//   lowest  at its plug; a little higher it comes on again
//   ways    in Parts::ways, the circuits that its current flows through
struct DirectPart {
    std::size_t load = 0;
    units::Voltage lowest{};
    std::vector<std::size_t> ways;
    std::vector<DirectDraw> draws;  // in order of time, the first at 0
};

//   fuses      of the ways, in their order; empty where no way has one
//   may_open   so much may be drawn through a fuse that it opens
struct Parts {
    std::vector<DirectPart> direct;
    std::vector<units::Resistance> ways;
    units::Voltage bus{};  // nominal
    std::vector<std::optional<MainFuse>> fuses = {};
    bool may_open = false;
};

// Lamps and chargers of a 12 V bus go out below 10.5 V: common practice, no source.
[[nodiscard]] units::Voltage usual_lowest(units::Voltage bus);

[[nodiscard]] Parts parts_of(const demand::Demand& demand, demand::Case which,
                             const std::vector<unit::Branch>& branches, units::Voltage bus);

// What the loads that are in draw from each way, for the place of each in Parts::ways.
//   in   whether a part counts, by its place in Parts::direct
template <class In>
[[nodiscard]] std::vector<units::Power> on_ways(const Parts& parts, units::Duration now, In in);

// The draw that holds at a moment.
[[nodiscard]] const DirectDraw& draw_at(const DirectPart& part, units::Duration now);

// At the bus, where the load stands at its lowest voltage.
//   on_ways   what flows through each way
[[nodiscard]] units::Voltage lowest_at_bus(const Parts& parts, const DirectPart& part,
                                           const std::vector<units::Power>& on_ways);

// What flows through each way where the bus stands at this voltage; nothing through one that no
// load is on.
//   in   as above
template <class In>
[[nodiscard]] std::vector<units::Current> currents_on_ways(const Parts& parts, units::Duration now,
                                                           units::Voltage bus, In in);

// The steps with DemandStep::lowest: of all loads that draw at any moment of it the highest.
[[nodiscard]] std::vector<demand::DemandStep> with_lowest(std::vector<demand::DemandStep> steps,
                                                          const Parts& parts);

template <class In>
std::vector<units::Power> on_ways(const Parts& parts, units::Duration now, In in) {
    std::vector<units::Power> sums(parts.ways.size());
    if (sums.empty()) return sums;
    for (std::size_t i = 0; i < parts.direct.size(); ++i)
        if (in(i))
            for (const std::size_t way : parts.direct[i].ways)
                sums[way] += draw_at(parts.direct[i], now).at_bus;
    return sums;
}

template <class In>
std::vector<units::Current> currents_on_ways(const Parts& parts, units::Duration now,
                                             units::Voltage bus, In in) {
    const auto flows = on_ways(parts, now, in);
    std::vector<units::Current> currents(flows.size());
    for (std::size_t i = 0; i < parts.direct.size(); ++i) {
        const DirectPart& part = parts.direct[i];
        if (part.ways.empty() || !in(i)) continue;
        units::Voltage there = bus;
        for (const std::size_t way : part.ways)
            there -= bus - at_end_of(parts.ways[way], bus, flows[way]).at_load;
        // no lower than where a load goes out
        const auto current = draw_at(part, now).at_bus / std::max(there, part.lowest);
        for (const std::size_t way : part.ways)
            currents[way] += current;
    }
    return currents;
}

}  // namespace outage
