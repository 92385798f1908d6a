#include "wiring/network.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "wiring/power_behind.hpp"

namespace wiring {

namespace {

using units::Current;
using units::Power;
using units::Resistance;
using units::Voltage;

// The connected sources as one, with what the branches take off already.
struct Combined {
    Voltage emf{};
    Resistance resistance{};
};

Combined combined(const Feed& feed, const std::vector<bool>& connected) {
    double conductance = 0.0;
    double short_current = 0.0;
    for (std::size_t i = 0; i < feed.sources.size(); ++i) {
        if (connected[i]) {
            assert(feed.sources[i].resistance > Resistance());
            const double each = 1.0 / (feed.sources[i].resistance / units::ohm);
            conductance += each;
            short_current += each * (feed.sources[i].emf / units::volt);
        }
    }
    const auto resistance = (1.0 / conductance) * units::ohm;
    return {.emf = (short_current / conductance) * units::volt - feed.branches * resistance,
            .resistance = resistance};
}

Power largest_power(const Combined& source, Resistance main) {
    if (source.emf <= Voltage()) {
        return Power();
    }
    return source.emf * source.emf / (4.0 * (source.resistance + main));
}

void share_out(const Feed& feed, const std::vector<bool>& connected, Fed& result) {
    result.shares.assign(feed.sources.size(), Current());
    for (std::size_t i = 0; i < feed.sources.size(); ++i) {
        if (connected[i]) {
            result.shares[i] = (feed.sources[i].emf - result.bus) / feed.sources[i].resistance;
        }
    }
}

// The source that must leave: one charged against its will, else the most overloaded.
std::optional<std::size_t> who_leaves(const Feed& feed, const std::vector<bool>& connected,
                                      const Fed& result) {
    std::optional<std::size_t> worst;
    double worst_ratio = 1.0 + 1e-12;
    for (std::size_t i = 0; i < feed.sources.size(); ++i) {
        const Source& source = feed.sources[i];
        if (!connected[i]) {
            continue;
        }
        if (!source.may_be_charged && result.shares[i] < -1e-9 * units::ampere) {
            return i;
        }
        if (source.limit && result.shares[i] / *source.limit > worst_ratio) {
            worst = i;
            worst_ratio = result.shares[i] / *source.limit;
        }
    }
    return worst;
}

}  // namespace

Fed fed(const Feed& feed) {
    Fed result;
    std::vector<bool> connected(feed.sources.size(), true);
    while (std::ranges::find(connected, true) != connected.end()) {
        const Combined source = combined(feed, connected);
        result.largest = largest_power(source, feed.main);
        const bool reachable = source.emf > Voltage() && feed.drawn <= result.largest;
        result.how = reachable ? Feeding::carries : Feeding::collapses;
        result.main = current_into(feed.drawn, source.resistance + feed.main, source.emf);
        result.bus = source.emf - result.main * source.resistance;
        result.at_load = result.bus - result.main * feed.main;
        share_out(feed, connected, result);
        const auto leaves = who_leaves(feed, connected, result);
        if (!leaves) {
            return result;
        }
        connected[*leaves] = false;
        if (result.shares[*leaves] > Current()) {
            result.opened.push_back(*leaves);
        }
    }
    result.how = Feeding::nobody_left;
    result.bus = Voltage();
    result.at_load = Voltage();
    result.main = Current();
    result.shares.assign(feed.sources.size(), Current());
    result.largest = Power();
    return result;
}

Power power_at_voltage(const Feed& feed, Voltage at_load) {
    const Combined source = combined(feed, std::vector<bool>(feed.sources.size(), true));
    const auto left = source.emf - at_load;
    return left <= Voltage() ? Power() : at_load * left / (source.resistance + feed.main);
}

Current prospective_current(Voltage open_circuit, Resistance inside, int packs) {
    return static_cast<double>(packs) * (open_circuit / inside);
}

}  // namespace wiring
