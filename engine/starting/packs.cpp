#include "starting/packs.hpp"

#include <algorithm>

namespace starting {

using units::Voltage;

namespace {

constexpr int any_number = 1'000'000;

// The fewest for which it holds, when it holds for the most.
template <class Holds>
int fewest(int too_few, int enough, Holds holds) {
    while (enough - too_few > 1) {
        const int middle = too_few + (enough - too_few) / 2;
        (holds(middle) ? enough : too_few) = middle;
    }
    return enough;
}

}  // namespace

DirectSource with_last(DirectSource source, int count) {
    source.branches.back().count = count;
    return source;
}

DirectSource standing_at(DirectSource source, Voltage emf) {
    for (auto& branch : source.branches)
        branch.emf = emf;
    return source;
}

PacksNeeded packs_needed(const DirectSource& source, const JudgeBehind& judge) {
    PacksNeeded needed;
    const int others = packs_of(source) - source.branches.back().count;
    const int least = others > 0 ? 0 : 1;
    const auto no_worse_than = [&](StartVerdict verdict) {
        return
            [&, verdict](int count) { return judge(with_last(source, count)).verdict <= verdict; };
    };
    const auto find = [&](StartVerdict verdict) -> std::optional<int> {
        const auto holds = no_worse_than(verdict);
        if (!holds(most_packs_tried)) return std::nullopt;
        return others + fewest(least - 1, most_packs_tried, holds);
    };
    needed.surely = find(StartVerdict::starts);
    needed.perhaps = find(StartVerdict::marginal);
    if (!needed.surely) {
        const auto best = judge(with_last(source, any_number));
        needed.because = best.binding;
        needed.at_best = best.verdict;
    }
    return needed;
}

std::optional<Voltage> lowest_voltage_for(StartVerdict verdict,
                                          const std::function<StartVerdict(Voltage)>& verdict_at,
                                          Voltage lowest, Voltage highest) {
    if (verdict_at(highest) > verdict) return std::nullopt;
    if (verdict_at(lowest) <= verdict) return lowest;
    constexpr Voltage close = 0.001 * units::volt;
    while (highest - lowest > close) {
        const Voltage middle = 0.5 * (lowest + highest);
        (verdict_at(middle) <= verdict ? highest : lowest) = middle;
    }
    return highest;
}

}  // namespace starting
