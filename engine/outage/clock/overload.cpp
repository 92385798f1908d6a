#include "outage/clock/overload.hpp"

#include <algorithm>

namespace outage {

using namespace units;

namespace {

// A fuse that has been warm forgets it after so long at what it bears; ours, on the cautious side.
constexpr Duration cools_in = 15.0 * minute;
// How long a fuse may warm at one current before it is looked at again; part of what is left.
constexpr double next_look = 1.0 / 64.0;
constexpr Duration shortest_look = 1.0 * second;
constexpr double hair = 1e-9;  // of a level: rounding, not a change of current

// The longest that a current just above this one is stated to be stood.
Duration stood_above(const std::vector<scenario::PulseLimit>& pulses, Current above) {
    Duration longest{};
    for (const auto& pulse : pulses)
        if (pulse.current > above) longest = std::max(longest, pulse.lasts);
    return longest;
}

}  // namespace

Duration until_looked_at(const Overload::Standing& standing) {
    if (!standing.fuse) return standing.still;
    return std::min(standing.still, std::max(shortest_look, next_look * standing.still));
}

Overload::Overload(const Bank& bank) {
    std::vector<Current> limits;
    if (bank.current_limit) limits.push_back(*bank.current_limit);
    // Where nothing is said of a continuous current, the smallest pulse still bounds it.
    for (const auto& pulse : bank.pulse)
        if (!bank.current_limit || pulse.current > *bank.current_limit)
            limits.push_back(pulse.current);
    for (const Current& limit : limits)
        levels_.push_back({.above = limit, .stands = stood_above(bank.pulse, limit)});
    if (bank.fuse) {
        rating_ = bank.fuse_kept * *bank.fuse;
        opens_ = bank.fuse_opens;
        const double bears = opens_.empty() ? 1.0 : opens_.front().ratio;
        levels_.push_back({.above = bears * rating_, .fuse = true});
    }
    // At equal currents the protection goes first, as it does when both act at once.
    std::ranges::stable_sort(levels_, {}, &Level::above);
    timed_ = std::ranges::any_of(levels_, [&](const Level& level) {
        return level.fuse ? std::ranges::any_of(
                                opens_, [](const auto& point) { return point.least.has_value(); })
                          : level.stands > Duration{};
    });
}

Overload::Overload(const MainFuse& fuse)
    : Overload(Bank{.fuse = fuse.rating,
                    .fuse_opens = fuse.opens,
                    .fuse_kept = fuse.kept,
                    .at_start = {},
                    .name = {}}) {}

Overload Overload::of_charging(const Bank& bank) {
    Bank fuse_alone = bank;
    fuse_alone.current_limit.reset();
    fuse_alone.pulse.clear();
    Overload made(fuse_alone);
    const auto& most = bank.setup.charging.largest;
    const auto bears = made.watched();
    if (!bank.setup.charging.allowed || (bears && most && *most <= *bears)) return {};
    return made;
}

void Overload::rise_to(Current now) {
    while (passed_ < levels_.size() && now > levels_[passed_].above)
        ++passed_;
}

Overload::Overload(const Bank& bank, const Overload& before) : Overload(bank) {
    *this = after(before);
}

Overload Overload::after(const Overload& before) const {
    Overload made = *this;
    made.warmed_ = before.warmed_;
    made.cooled_ = before.cooled_;
    made.strain_ = before.strain_;
    Duration spent{};
    for (const Level& level : before.levels_)
        spent = std::max(spent, level.spent);
    for (Level& level : made.levels_)
        level.spent = spent;
    return made;
}

std::optional<Current> Overload::watched(std::size_t passed) const {
    if (passed >= levels_.size()) return std::nullopt;
    return levels_[passed].above;
}

void Overload::settle(Current now) {
    while (passed_ > 0 && now < (1.0 - hair) * levels_[passed_ - 1].above)
        levels_[--passed_].spent = {};
    if (passed_ > 0) return;
    for (Level& level : levels_)
        level.spent = {};
}

void Overload::forget() {
    settle(Current{});
    warmed_ = 0.0;
}

std::optional<Duration> Overload::opens_after(Current current) const {
    const auto span = wiring::opening_at(opens_, current / rating_);
    if (span.holds) return std::nullopt;
    return span.least.value_or(Duration{});
}

Overload::Standing Overload::standing(Current current) const {
    Standing first;
    for (std::size_t i = 0; i < passed_; ++i) {
        const Level& level = levels_[i];
        Duration still = first.still;
        if (!level.fuse)
            still = level.stands - level.spent;
        else if (const auto opens = opens_after(std::max(current, (1.0 + hair) * level.above)))
            still = std::max(0.0, 1.0 - warmed_) * *opens;
        if (still < first.still)
            first = {.still = std::max(Duration{}, still),
                     .fuse = level.fuse,
                     .since = level.spent,
                     .above = level.above};
    }
    return first;
}

void Overload::pass(Current current, Duration time) {
    bool warms = false;
    const Current most = std::max(strain_.most, passed_ > 0 ? current : Current{});
    for (std::size_t i = 0; i < passed_; ++i) {
        Level& level = levels_[i];
        level.spent += time;
        if (level.spent > strain_.longest) strain_ = {.longest = level.spent, .above = level.above};
        if (!level.fuse) continue;
        warms = true;
        const auto opens = opens_after(std::max(current, (1.0 + hair) * level.above));
        if (opens && *opens > Duration{}) warmed_ += time / *opens;
    }
    strain_.most = most;
    if (warms)
        cooled_ = {};
    else if ((cooled_ += time) >= cools_in)
        warmed_ = 0.0;
}

}  // namespace outage
