#include "sizing/start_states.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "outage/clock/work.hpp"
#include "outage/in_threads.hpp"

namespace sizing {

namespace {

using namespace units;

int members_to_run(const chance::Members& members) {
    constexpr double most_steps = 4e6;
    const double reached = most_steps / outage::steps_of_a_run(members.world().ready());
    return static_cast<int>(
        std::clamp(reached, 8.0, double(std::min(members.count(), chance::lanes))));
}

struct Stand {
    Voltage rested{};
    StateOfCharge charge;
};

// Nothing where the member has no supply then.
std::optional<Stand> stand_at(const std::vector<outage::TracePoint>& trace, Duration moment) {
    const auto after = std::ranges::upper_bound(trace, moment, {}, &outage::TracePoint::at);
    if (trace.empty()) return std::nullopt;
    const auto& state = after == trace.begin() ? trace.front() : *(after - 1);
    constexpr double nothing = 1e-9;
    if (state.wanted > (1.0 + nothing) * state.served) return std::nullopt;
    return Stand{.rested = state.rested, .charge = state.charge};
}

StartState state_of(std::vector<Stand> stands) {
    if (stands.empty()) return {};
    std::ranges::sort(stands, {}, &Stand::rested);
    const auto rank = [&](double share) {
        const auto nearest = std::size_t(std::ceil(share * double(stands.size()) - 1e-9));
        return std::clamp<std::size_t>(nearest, 1, stands.size()) - 1;
    };
    StartState state{.members = int(stands.size()),
                     .low = stands[rank(0.1)].rested,
                     .middle = stands[rank(0.5)].rested,
                     .high = stands[rank(0.9)].rested};
    std::ranges::sort(stands, {}, &Stand::charge);
    state.charge = stands[rank(0.5)].charge;
    return state;
}

}  // namespace

std::vector<StartState> start_states(const chance::Members& members,
                                     std::span<const outage::MotorStart> starts, unsigned threads) {
    if (starts.empty()) return {};
    const auto& world = members.world();
    const int count = members_to_run(members);
    std::vector<std::vector<std::optional<Stand>>> all(static_cast<std::size_t>(count));
    outage::for_each_number(count, threads, [&](int number) {
        const auto lived = world.lived(members.values(number));
        const auto course = world.run(lived, world.packs(), lived.sun, {.trace = true});
        for (const auto& start : starts)
            all[std::size_t(number)].push_back(stand_at(course.trace, start.at));
    });
    std::vector<StartState> states;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        std::vector<Stand> stands;
        for (const auto& of_member : all)
            if (of_member[i]) stands.push_back(*of_member[i]);
        states.push_back(state_of(std::move(stands)));
    }
    return states;
}

}  // namespace sizing
