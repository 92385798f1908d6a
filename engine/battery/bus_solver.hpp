// Packs that differ, in parallel on one bus, at one moment: plain SI numbers for the inner loop.
// Every branch's current falls, or stays, as the bus voltage rises and is straight between a few
// turning points, so a guess at who gives and who takes makes one quadratic; where the guess does
// not hold out, the turning points are searched from the top. method.md (26) to (30)
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <span>

namespace battery {

// How a branch behaves at the voltage found.
enum class Flowing : unsigned char {
    giving,
    taking,
    taking_fast,  // beyond its knee
    held,         // takes the most it may
    nothing,      // may not give, or may not take, what the voltage asks of it
};

// One pack, or several alike together.
//   rested    its voltage without current
//   giving    conductance while it gives, 1/ohm; 0 where it may not
//   taking    while it takes; 0 where it may not be charged
//   most_in   largest current into it, as a magnitude
//   gap       V above `rested` up to which it takes nothing
//   knee      current into it, as a magnitude, from which on `fast` is its conductance
struct Branch {
    double rested = 0.0;
    double giving = 0.0;
    double taking = 0.0;
    double most_in = std::numeric_limits<double>::infinity();
    double gap = 0.0;
    double knee = std::numeric_limits<double>::infinity();
    double fast = 0.0;
    Flowing flowing = Flowing::giving;

    [[nodiscard]] double taking_from() const { return rested + gap; }
    // The voltage that what flows beyond the knee seems to come from.
    [[nodiscard]] double fast_from() const { return rested + gap + (knee / taking - knee / fast); }
    // The voltage at which it takes as much, a magnitude.
    [[nodiscard]] double node_at(double in) const {
        return in > knee ? fast_from() + in / fast : taking_from() + in / taking;
    }
    [[nodiscard]] Flowing flowing_at(double node) const {
        if (node <= rested) return giving > 0.0 ? Flowing::giving : Flowing::nothing;
        if (!(taking > 0.0) || (gap > 0.0 && node <= taking_from())) return Flowing::nothing;
        const double in = (node - taking_from()) * taking;
        if (in > knee)
            return (node - fast_from()) * fast > most_in ? Flowing::held : Flowing::taking_fast;
        return in > most_in ? Flowing::held : Flowing::taking;
    }
    [[nodiscard]] double current_at(double node) const {  // positive out of it
        switch (flowing) {
            case Flowing::giving:
                return std::max(0.0, (rested - node) * giving);  // rounding takes nothing
            case Flowing::taking:
                return std::min(0.0, (taking_from() - node) * taking);
            case Flowing::taking_fast:
                return std::min(0.0, (fast_from() - node) * fast);
            case Flowing::held:
                return -most_in;
            case Flowing::nothing:
                break;
        }
        return 0.0;
    }
};

// All branches at their present behaviour: total current = offered - conductance * node voltage.
struct Together {
    double conductance = 0.0;
    double offered = 0.0;
};

//   node      where the packs' own paths meet
//   voltage   at the far end of the path they share
//   current   out of all branches together
//   possible  false when the power cannot be had: the rest is then the point of the largest power
//   source    the voltage there would be without current, were every behaviour the same
struct BusPoint {
    double node = 0.0;
    double voltage = 0.0;
    double current = 0.0;
    double source = 0.0;
    bool possible = true;
};

namespace bus_detail {

[[nodiscard, gnu::always_inline]] inline Together together(std::span<const Branch> branches) {
    Together sum;
    for (const Branch& branch : branches) {
        switch (branch.flowing) {
            case Flowing::giving:
                sum.conductance += branch.giving;
                sum.offered += branch.giving * branch.rested;
                break;
            case Flowing::taking:
                sum.conductance += branch.taking;
                sum.offered += branch.taking * branch.taking_from();
                break;
            case Flowing::taking_fast:
                sum.conductance += branch.fast;
                sum.offered += branch.fast * branch.fast_from();
                break;
            case Flowing::held:
                sum.offered -= branch.most_in;
                break;
            case Flowing::nothing:
                break;
        }
    }
    return sum;
}

// Sets how each branch behaves at this node voltage; whether any changed.
[[nodiscard, gnu::always_inline]] inline bool settle(std::span<Branch> branches, double node) {
    bool changed = false;
    for (Branch& branch : branches) {
        const Flowing now = branch.flowing_at(node);
        changed = changed || now != branch.flowing;
        branch.flowing = now;
    }
    return changed;
}

// What is asked of the bus, given how the branches behave. Where they have no conductance left
// the node's voltage is open: a point that is not possible.
struct PowerAsked {
    double power = 0.0;
    double shared = 0.0;
    // Every branch takes the most it may: the offered power sets the voltage.
    [[nodiscard]] BusPoint into_held(double current) const {
        if (!(power < 0.0 && current < 0.0)) return {.possible = false};
        const double voltage = power / current;
        return {.node = voltage + shared * current,
                .voltage = voltage,
                .current = current,
                .source = voltage};
    }
    [[nodiscard]] BusPoint point(const Together& sum) const {
        if (!(sum.conductance > 0.0)) return into_held(sum.offered);
        const double source = sum.offered / sum.conductance;
        const double resistance = 1.0 / sum.conductance + shared;
        const double under_root = source * source - 4.0 * resistance * power;
        const bool possible = under_root >= 0.0 && (power <= 0.0 || source > 0.0);
        const double current =
            possible ? 2.0 * power / (source + std::sqrt(under_root)) : 0.5 * source / resistance;
        const double node = (sum.offered - current) / sum.conductance;
        return {.node = node,
                .voltage = node - shared * current,
                .current = current,
                .source = source,
                .possible = possible};
    }
};
struct CurrentAsked {
    double current = 0.0;
    double shared = 0.0;
    [[nodiscard]] BusPoint point(const Together& sum) const {
        if (!(sum.conductance > 0.0)) return {.possible = false};
        const double node = (sum.offered - current) / sum.conductance;
        return {.node = node,
                .voltage = node - shared * current,
                .current = current,
                .source = sum.offered / sum.conductance};
    }
};
struct VoltageHeld {
    double voltage = 0.0;
    double shared = 0.0;
    [[nodiscard]] BusPoint point(const Together& sum) const {
        const double node = (voltage + shared * sum.offered) / (1.0 + shared * sum.conductance);
        return {.node = node,
                .voltage = voltage,
                .current = sum.offered - sum.conductance * node,
                .source = voltage};
    }
};

// The turning points from the top down: always finds the point of the highest voltage, or the
// largest power when there is none.
[[nodiscard]] BusPoint searched(std::span<Branch> branches, PowerAsked asked);
[[nodiscard]] BusPoint searched(std::span<Branch> branches, CurrentAsked asked);
[[nodiscard]] BusPoint searched(std::span<Branch> branches, VoltageHeld asked);

// Begins with how the branches behaved last.
template <class Asked>
[[nodiscard, gnu::always_inline]] inline BusPoint solved(std::span<Branch> branches, Asked asked) {
    constexpr int guesses = 6;
    for (int guess = 0; guess < guesses; ++guess) {
        const BusPoint point = asked.point(together(branches));
        if (!point.possible) break;
        if (!settle(branches, point.node)) return point;
    }
    return searched(branches, asked);
}

}  // namespace bus_detail

// Power at the far end of `shared`, positive taken from the packs. Behaviours are left as found, so
// that the next asking begins there; current_at(point.node) then gives each branch's current.
[[nodiscard]] inline BusPoint bus_at_power(std::span<Branch> branches, double power,
                                           double shared) {
    return bus_detail::solved(branches, bus_detail::PowerAsked{power, shared});
}
[[nodiscard]] inline BusPoint bus_at_current(std::span<Branch> branches, double current,
                                             double shared) {
    return bus_detail::solved(branches, bus_detail::CurrentAsked{current, shared});
}
// The far end held at a voltage by something that gives or takes whatever that needs.
[[nodiscard]] inline BusPoint bus_at_voltage(std::span<Branch> branches, double voltage,
                                             double shared) {
    return bus_detail::solved(branches, bus_detail::VoltageHeld{voltage, shared});
}

}  // namespace battery
