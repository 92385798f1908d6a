#include "outage/clock/supply.hpp"

#include <limits>

namespace outage {

using namespace units;

namespace {

// All common practice, no source; method.md (15).
constexpr Duration inverter_rest = 5.0 * minute;
constexpr Voltage by_hand_above_cut_off = 0.2 * volt;
constexpr Voltage load_on_above_lowest = 0.3 * volt;
constexpr Duration load_rest = 1.0 * minute;  // before it comes on by itself; ours

}  // namespace

Supply::Supply(const Unit& unit, const Parts* parts) : unit_(unit), ways_of_(parts) {
    if (unit_.inverter) parts_.push_back({.id = the_inverter});
    if (ways_of_ == nullptr) {
        parts_.push_back({});
        return;
    }
    for (std::size_t i = 0; i < ways_of_->direct.size(); ++i)
        parts_.push_back({.id = ways_of_->direct[i].load, .direct = i});
}

void Supply::look_at(const demand::DemandStep& demand, Duration now) {
    std::vector<Power> flows;
    if (ways_of_ != nullptr) flows = on_ways(*ways_of_, now, [](std::size_t) { return true; });
    for (Part& part : parts_) {
        if (part.is_inverter()) {
            part.draws = draw_.at_terminals;
            part.useful = demand.inverter_on ? demand.ac : Power{};
            part.lowest = draw_.needs;
        } else if (ways_of_ == nullptr) {
            part.draws = demand.direct;
            part.useful = demand.direct_useful;
            part.lowest = demand.lowest;
        } else {
            const auto& direct = ways_of_->direct[part.direct];
            const auto& draw = draw_at(direct, now);
            part.draws = draw.at_bus;
            part.useful = draw.useful;
            part.lowest = lowest_at_bus(*ways_of_, direct, flows);
        }
    }
}

Voltage Supply::lowest() const {
    Voltage lowest{};
    for (const Part& part : parts_)
        if (!part.is_inverter() && !part.out && part.draws > Power{})
            lowest = std::max(lowest, part.lowest);
    return lowest;
}

void Supply::ask_all() {
    for (Part& part : parts_)
        part.asked = part.out;
}

void Supply::lighter_ask_again(const Part& heavy) {
    for (Part& part : parts_)
        if (part.out && part.draws < heavy.draws) part.asked = true;
}

// Of the 12 V loads those that are in; what is wanted is summed alike, so that both are equal to
// the last bit when nobody who is out wants anything.
void Supply::take_direct(Taken& taken, Duration now) const {
    Power at_bus{};
    taken.wanted = Power{};
    for (const Part& part : parts_) {
        if (part.is_inverter()) continue;
        taken.wanted += part.useful;
        if (part.out) continue;
        at_bus += part.draws;
        taken.served += part.useful;
    }
    if (ways_of_ != nullptr) {
        const auto flows =
            on_ways(*ways_of_, now, [&](std::size_t i) { return !parts_[first_direct() + i].out; });
        for (std::size_t way = 0; way < flows.size(); ++way)
            taken.branches += at_end_of(ways_of_->ways[way], ways_of_->bus, flows[way]).lost;
    }
    taken.direct = at_bus + taken.branches;
    taken.converter = at_bus - taken.served;
}

Part* Supply::first_to_go(const demand::DemandStep& demand) {
    constexpr Voltage as_good_as_equal = 1e-3 * volt;
    Part* first = nullptr;
    for (Part& part : parts_) {
        if (!draws(part, demand)) continue;
        if (first == nullptr || part.lowest > first->lowest + as_good_as_equal ||
            (part.lowest > first->lowest - as_good_as_equal && part.draws > first->draws))
            first = &part;
    }
    return first;
}

Part* Supply::heaviest(const demand::DemandStep& demand) {
    Part* most = nullptr;
    for (Part& part : parts_)
        if (draws(part, demand) && (most == nullptr || part.draws > most->draws)) most = &part;
    return most;
}

Voltage Supply::needed(const Part& part) const {
    Voltage needed = part.lowest;
    if (!part.is_inverter() && part.why == LimitedBy::low_voltage) needed += load_on_above_lowest;
    for (const Part& other : parts_)
        if (!other.out && other.draws > Power{}) needed = std::max(needed, other.lowest);
    return needed;
}

bool Supply::comes_by_itself(const Part& part, Duration now) const {
    if (!part.wants()) return false;
    if (part.is_inverter())
        return unit_.inverter->restart == scenario::Restart::by_itself && !overloaded &&
               !main_blown && !rests(part, now);
    return part.why == LimitedBy::low_voltage && !part.dead && now >= part.since + load_rest;
}

bool Supply::rests(const Part& part, Duration now) const {
    return part.is_inverter() && now < part.since + inverter_rest;
}

Duration Supply::rest_ends(Duration now) const {
    Duration first = std::numeric_limits<double>::infinity() * second;
    if (out_ == 0 || !serves()) return first;
    for (const Part& part : parts_) {
        if (!part.wants()) continue;
        const bool waits =
            part.is_inverter() ? part.asked || !by_hand(part) : part.why == LimitedBy::low_voltage;
        const Duration ends = part.since + (part.is_inverter() ? inverter_rest : load_rest);
        if (waits && ends > now) first = std::min(first, ends);
    }
    return first;
}

Voltage Supply::by_hand_above() const {
    return unit_.inverter->cutoff_voltage + by_hand_above_cut_off;
}

}  // namespace outage
