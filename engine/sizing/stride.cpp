#include "sizing/stride.hpp"

#include <cmath>

// The narrowest is what every x86-64 has; elsewhere it is the only one.
#if defined(__x86_64__)
#define CANDLEMARK_WIDE 1
#else
#define CANDLEMARK_WIDE 0
#endif

namespace sizing {

namespace lanes_detail {

namespace {

using battery::advance_detail::brim;
using battery::advance_detail::slack;

// What a whole stride has in common lets it leave work out, never change a bit: no lane may charge
// (then nothing limits a current), packs of one well have no head difference, and where the
// efficiency of charging is one number no lane can leave it.
template <bool may_charge, bool two_wells, bool one_efficiency>
[[gnu::always_inline]] inline void stride_body(const LaneWells& from, LaneWells& to, State& state,
                                               const Thresholds& near, const Prepared& pack,
                                               const Segment& segment, std::size_t count) {
    const double time = segment.time;
    const double taken = segment.taken;
    const double charger = segment.charger;
    const double left = segment.decayed.left;
    const double once = segment.decayed.once;
    const double per_total = pack.per_total;
    const double bound_width = pack.bound;
    const double width = pack.width;
    const double head_gain = pack.head_gain;
    const double rate = pack.rate;
    const double everywhere = pack.coulombic.front();
    const double charge_floor = pack.charge_floor;
    const double absorption = pack.absorption;
    const double* const tolerance_at = state.tolerance.data();
    const double empty_voltage = pack.empty_voltage;
    const double removed_above = pack.removed_above;
    const double filled_to = pack.filled_to;
    const double fill_per_ampere = segment.fill_per_ampere;
    const double* const removed_at = from.removed.data();
    const double* const head_at = from.head.data();
    const double* const available_at = from.available.data();
    double* const to_removed_at = to.removed.data();
    double* const to_head_at = to.head.data();
    double* const to_available_at = to.available.data();
    double* const alone_at = state.alone.data();
    const double* const at_zero_at = state.at_zero.data();
    const double* const slope_at = state.slope.data();
    const double* const available_low_at = state.available_low.data();
    const double* const available_high_at = state.available_high.data();
    const double* const bound_low_at = state.bound_low.data();
    const double* const bound_high_at = state.bound_high.data();
    const double* const coulombic_at = state.coulombic.data();
    const double* const least_removed_at = state.least_removed.data();
    const double* const most_removed_at = state.most_removed.data();
    const double* const count_at = state.count.data();
    const double* const resistance_at = state.resistance.data();
    const double* const sun_at = state.sun.data();
    const double* const near_voltage_at = near.near_voltage.data();
    const double* const near_per_watt_at = near.near_per_watt.data();
    const double* const limit_voltage_at = near.limit_voltage.data();
    const double* const limit_per_watt_at = near.limit_per_watt.data();
    // Answers are 1 or 0, each kept only while the next also holds: selects, no branches.
#pragma GCC ivdep
    for (std::size_t i = 0; i < count; ++i) {
        const double removed = removed_at[i];
        const double head = head_at[i];
        const double available = available_at[i];
        const double slope = slope_at[i];
        const double at_zero = at_zero_at[i];
        const double resistance = resistance_at[i];
        const double amount = (taken - (sun_at[i] + charger)) / count_at[i];
        const double mean_fill =
            1.0 - (two_wells ? removed + bound_width * head * once : removed) * per_total;
        const double at_rest = at_zero + slope * mean_fill;
        const double per_ampere = slope * fill_per_ampere;
        const double coulombic = one_efficiency ? everywhere : coulombic_at[i];
        const double arriving = may_charge && amount < 0.0 ? coulombic : 1.0;
        const double in_step = resistance + arriving * per_ampere;
        const double under_root = at_rest * at_rest - 4.0 * in_step * amount;
        const double root = std::sqrt(under_root > 0.0 ? under_root : 0.0);
        const double free_current = 2.0 * amount / (at_rest + root);
        double current = free_current;
        if constexpr (may_charge) {
            const double over_absorption = (at_rest - absorption) / in_step;
            const double absorbed = at_rest >= absorption ? 0.0 : over_absorption;
            const double floor = charge_floor < absorbed ? absorbed : charge_floor;
            const double limited = free_current < floor ? floor : free_current;
            current = free_current < 0.0 ? limited : free_current;
        }
        const double into = arriving * current;
        const double new_removed = removed + into * time;
        const double new_head = two_wells ? head * left + into * head_gain * time * once : 0.0;
        const double new_available =
            1.0 - (two_wells ? new_removed + bound_width * new_head : new_removed) * per_total;
        const double new_bound =
            two_wells ? 1.0 - (new_removed - width * new_head) * per_total : new_available;

        const double before = at_zero + slope * available;
        const double after = at_zero + slope * new_available;
        const double change = std::abs(after - before);
        const double lowest = before < after ? before : after;
        const double near_level = near_voltage_at[i] + near_per_watt_at[i] * amount;
        const double limit_level = limit_voltage_at[i] + limit_per_watt_at[i] * amount;

        double above = lowest > empty_voltage ? 1.0 : 0.0;
        above = lowest > near_level ? above : 0.0;
        above = lowest > limit_level ? above : 0.0;
        above = lowest * lowest > 4.0 * resistance * amount ? above : 0.0;
        const double far = amount > 0.0 ? above : 1.0;
        double usable = new_removed < removed_above ? 1.0 : 0.0;
        usable = removed < removed_above ? usable : 0.0;
        double filling = new_removed > filled_to ? 1.0 : 0.0;
        filling = removed <= filled_to ? 1.0 : filling;
        double passes = into > 0.0 ? usable : filling;
        passes = under_root >= 0.0 ? passes : 0.0;
        if constexpr (may_charge && !one_efficiency) {
            double same = removed <= most_removed_at[i] ? 1.0 : 0.0;
            same = new_removed > least_removed_at[i] ? same : 0.0;
            same = amount < 0.0 ? same : 1.0;
            passes = same > 0.5 ? passes : 0.0;
        }
        if constexpr (two_wells) {
            const double rise_before = into + bound_width * (into * head_gain - rate * head);
            const double rise_after = into + bound_width * (into * head_gain - rate * new_head);
            passes = rise_before * rise_after < 0.0 ? 0.0 : passes;
            passes = head * new_head < 0.0 ? 0.0 : passes;
        }
        passes = new_available > available_low_at[i] ? passes : 0.0;
        passes = new_available <= available_high_at[i] ? passes : 0.0;
        passes = new_bound > bound_low_at[i] ? passes : 0.0;
        passes = new_bound <= bound_high_at[i] ? passes : 0.0;
        passes = change * at_rest <= tolerance_at[i] * root ? passes : 0.0;
        passes = far * passes;
        // A full pack of one well that is offered charge stays as it is.
        double brims = 0.0;
        if constexpr (may_charge && !two_wells) {
            brims = amount < 0.0 ? 1.0 : 0.0;
            brims = available >= brim ? brims : 0.0;
            brims = new_available > available_high_at[i] + slack ? brims : 0.0;
        }
        to_removed_at[i] = passes > 0.5 ? new_removed : removed;
        to_head_at[i] = passes > 0.5 ? new_head : head;
        to_available_at[i] = passes > 0.5 ? new_available : available;
        const double stays = brims > 0.5 ? 0.0 : 1.0;
        alone_at[i] = passes > 0.5 ? 0.0 : stays;
    }
}

using Stride = void(const LaneWells&, LaneWells&, State&, const Thresholds&, const Prepared&,
                    const Segment&, std::size_t);

// One function a width and kind: in one function together they would take each other's registers.
template <bool... kind>
void by_two(const LaneWells& from, LaneWells& to, State& state, const Thresholds& near,
            const Prepared& pack, const Segment& segment, std::size_t count) {
    stride_body<kind...>(from, to, state, near, pack, segment, count);
}

#if CANDLEMARK_WIDE
template <bool... kind>
[[gnu::target("arch=x86-64-v3")]] void by_four(const LaneWells& from, LaneWells& to, State& state,
                                               const Thresholds& near, const Prepared& pack,
                                               const Segment& segment, std::size_t count) {
    stride_body<kind...>(from, to, state, near, pack, segment, count);
}

template <bool... kind>
[[gnu::target("arch=x86-64-v4")]] void by_eight(const LaneWells& from, LaneWells& to, State& state,
                                                const Thresholds& near, const Prepared& pack,
                                                const Segment& segment, std::size_t count) {
    stride_body<kind...>(from, to, state, near, pack, segment, count);
}
#endif

template <bool... kind>
Stride* of_width(Width width) {
#if CANDLEMARK_WIDE
    if (width == Width::four) return by_four<kind...>;
    if (width == Width::eight) return by_eight<kind...>;
#else
    (void)width;
#endif
    return by_two<kind...>;
}

Stride* fitting(Width width, const Prepared& pack, bool may_charge) {
    const bool two_wells = pack.bound > 0.0;
    // At the narrowest, leaving the limits of charging out is slower by a third:
    // tests/bench/stride.
    if (!may_charge && width != Width::two)
        return two_wells ? of_width<false, true, true>(width) : of_width<false, false, true>(width);
    if (std::isinf(pack.coulombic_edge[1]))
        return two_wells ? of_width<true, true, true>(width) : of_width<true, false, true>(width);
    return two_wells ? of_width<true, true, false>(width) : of_width<true, false, false>(width);
}

}  // namespace

void stride(Width width, const LaneWells& from, LaneWells& to, State& state, const Thresholds& near,
            const Prepared& pack, const Segment& segment, std::size_t count, bool may_charge) {
    fitting(width, pack, may_charge)(from, to, state, near, pack, segment, count);
}

}  // namespace lanes_detail

std::vector<Width> widths_here() {
    std::vector<Width> widths{Width::two};
#if CANDLEMARK_WIDE
    if (__builtin_cpu_supports("x86-64-v3")) widths.push_back(Width::four);
    if (__builtin_cpu_supports("x86-64-v4")) widths.push_back(Width::eight);
#endif
    return widths;
}

}  // namespace sizing
