#include "battery/bus_solver.hpp"

#include <algorithm>
#include <vector>

#include "battery/step/tolerances.hpp"

namespace battery::bus_detail {

namespace {

// Node voltages at which some branch changes its behaviour, highest first.
std::vector<double> turning_points(std::span<const Branch> branches) {
    std::vector<double> turns;
    for (const Branch& branch : branches) {
        turns.push_back(branch.rested);
        if (!(branch.taking > 0.0)) continue;
        if (branch.gap > 0.0) turns.push_back(branch.taking_from());
        if (std::isfinite(branch.knee)) turns.push_back(branch.node_at(branch.knee));
        if (std::isfinite(branch.most_in)) turns.push_back(branch.node_at(branch.most_in));
    }
    std::sort(turns.begin(), turns.end(), std::greater<>());
    return turns;
}

constexpr double slack = step::meeting;

template <class Asked>
BusPoint search(std::span<Branch> branches, Asked asked) {
    const auto turns = turning_points(branches);
    const double above = std::numeric_limits<double>::infinity();
    BusPoint strongest{.possible = false};
    double high = above;
    for (std::size_t i = 0; i <= turns.size(); ++i) {
        const double low = i < turns.size() ? turns[i] : 0.0;
        const double inside = high == above ? low + 1.0 : 0.5 * (low + high);
        (void)settle(branches, inside);
        const Together sum = together(branches);
        const BusPoint point = asked.point(sum);
        const bool within = point.node >= low - slack && point.node <= high + slack;
        if (point.possible && within) return point;
        if (sum.conductance > 0.0 && within &&
            point.voltage * point.current > strongest.voltage * strongest.current)
            strongest = point;
        high = low;
    }
    // The strongest of the stretches' ends, for a largest power between two of them.
    strongest.possible = false;
    for (const double node : turns) {
        (void)settle(branches, node);
        const Together sum = together(branches);
        const double current = sum.offered - sum.conductance * node;
        const double voltage = node - asked.shared * current;
        if (voltage * current > strongest.voltage * strongest.current)
            strongest = {.node = node, .voltage = voltage, .current = current, .possible = false};
    }
    (void)settle(branches, strongest.node);
    return strongest;
}

}  // namespace

BusPoint searched(std::span<Branch> branches, PowerAsked asked) {
    return search(branches, asked);
}
BusPoint searched(std::span<Branch> branches, CurrentAsked asked) {
    return search(branches, asked);
}
BusPoint searched(std::span<Branch> branches, VoltageHeld asked) {
    return search(branches, asked);
}

}  // namespace battery::bus_detail
