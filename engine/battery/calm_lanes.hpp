// The quiet substep of a bank, four packs at a time: included once a width of the processor, each
// in a source file compiled for it. Every one gives the same bits, for no product and sum become
// one rounding.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "battery/calm.hpp"
#include "battery/decay.hpp"
#include "battery/step/in_bank.hpp"

namespace battery {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();
constexpr step::Kind of_all_kinds{};
using Lanes [[gnu::vector_size(32)]] = double;
using Mask [[gnu::vector_size(32)]] = std::int64_t;

constexpr double full = step::brim_in_bank;
constexpr int rounds = 8;  // guesses at who gives and who takes
constexpr double least_ohms = step::least_resistance;
constexpr double nearly_full = step::nearly_full;

[[gnu::always_inline]] inline double sum(const Lanes& x) {
    return (x[0] + x[1]) + (x[2] + x[3]);
}
[[gnu::always_inline]] inline double largest_of(const Lanes& x) {
    return std::max(std::max(x[0], x[1]), std::max(x[2], x[3]));
}
[[gnu::always_inline]] inline bool any(const Mask& x) {
    return ((x[0] | x[1]) | (x[2] | x[3])) != 0;
}
[[gnu::always_inline]] inline Lanes larger(const Lanes& a, const Lanes& b) {
    return a > b ? a : b;
}
[[gnu::always_inline]] inline Lanes magnitude(const Lanes& x) {
    return larger(x, -x);
}

alignas(32) constexpr Lanes none{0.0, 0.0, 0.0, 0.0};

template <class Block>
[[gnu::always_inline]] inline step::Standing<Lanes> standing_of(const Block& b) {
    return {{b.removed}, {b.head}, b.available, b.below};
}
template <class Block>
[[gnu::always_inline]] inline step::Constants<Lanes> constants_of(const Block& b) {
    return {{b.per_total}, b.bound, b.width, b.head_gain, {b.rate}};
}

// What charging adds to the resistance of one pack, up to the knee. (60)
template <class Block>
[[gnu::always_inline]] inline Lanes added_of(const Block& b, const Lanes& removed) {
    return step::added_at<Lanes>(
               {removed},
               step::Resists<Lanes>{
                   {b.charging_empty}, b.charging_rise, {b.per_rated}, {}, {}, {b.inner}})
        .up_to_knee.value;
}

template <class Block>
[[gnu::always_inline]] inline step::Ends<Lanes> ends_of(const Block& b) {
    return {b.low, b.high, b.bound_low, b.bound_high};
}
template <class Face>
[[gnu::always_inline]] inline step::Meets<Lanes> meets_of(const Face& f) {
    return {{f.rested}, {f.giving}, {f.receiving}, {f.in_ohms}};
}
template <class Face>
[[gnu::always_inline]] inline step::Way<Mask> way_of(const Face& f) {
    return {f.taking, f.held};
}
// Of one pack, positive out of it.
template <class Block, class Face>
[[gnu::always_inline]] inline Lanes current_of(const Block& b, const Face& f, double node) {
    return step::current_on_bus<Lanes>({none + node}, meets_of(f), {f.most_in}, way_of(f),
                                       b.per_count)
        .value;
}

}  // namespace

[[gnu::always_inline]] inline void Calm::decay_for(double time) {
    if (time == decayed_for_) return;
    decayed_for_ = time;
    if (one_rate_ >= 0.0) {
        const Decay decayed = decay(one_rate_ * time);
        for (Block& block : blocks_) {
            block.left = none + decayed.left;
            block.once = none + decayed.once;
            block.twice = none + decayed.twice;
            block.thrice = none + decayed.thrice;
        }
        return;
    }
    for (Block& block : blocks_)
        for (std::size_t lane = 0; lane < width; ++lane) {
            const Decay decayed = decay(block.rate[lane] * time);
            block.left[lane] = decayed.left;
            block.once[lane] = decayed.once;
            block.twice[lane] = decayed.twice;
            block.thrice[lane] = decayed.thrice;
        }
}

// Mean rested voltage of the time without current, its fall for each ampere, and the most that the
// wells take. (12), (33)
[[gnu::always_inline]] inline void Calm::predict(double time) {
    for (Block& b : blocks_) {
        const auto mean = step::mean_of<of_all_kinds, Lanes>(
            {{b.at_zero}, {b.slope}}, standing_of(b), constants_of(b), b.once,
            step::fill_per_ampere(step::Seconds<double>{time}, b.bound_gain, b.twice,
                                  step::PerCoulomb<Lanes>{b.per_total}));
        b.per_ampere = mean.per_ampere.value;
        Lanes taking = b.resistance;
        if (resists_) {
            b.added = added_of(b, b.removed);
            taking = taking + b.added;
        }
        const auto meets =
            step::meets_bus<Lanes>(mean, {b.resistance}, {taking}, b.gives, b.takes, b.coulombic);
        b.mean.rested = meets.rested.value;
        b.mean.giving = meets.giving.value;
        b.mean.in_ohms = meets.in_ohms.value;
        b.mean.receiving = meets.receiving.value;
        b.mean.most_in = none + never;
        if (!any(b.available > none + nearly_full)) continue;
        b.mean.most_in =
            step::most_into<Lanes>(b.count, standing_of(b), b.bound, b.bound_gain, b.coulombic,
                                   step::Seconds<double>{time}, b.left, b.once)
                .value;
    }
}

// Likewise at this moment, or at the end of the trial.
[[gnu::always_inline]] inline void Calm::stand_at(bool then) {
    for (Block& b : blocks_) {
        const Lanes available = then ? b.then_available : b.available;
        b.now.rested = b.at_zero + b.slope * available;
        if (resists_) {
            const Lanes added = added_of(b, then ? b.then_removed : b.removed);
            b.now.in_ohms = larger(none + least_ohms, b.resistance + added);
            b.now.receiving = b.takes / b.now.in_ohms;
        }
        b.now.most_in = none + never;
        const Mask brimming = available >= none + full;
        if (!any(brimming)) continue;
        const Lanes seeps = larger(none, -b.exchange * (then ? b.then_head : b.head));
        b.now.most_in = brimming ? b.count * seeps / b.coulombic : b.now.most_in;
    }
}

// The bus, given how the packs behave; false where bank.cpp must look. (28), (35)
[[gnu::always_inline]] inline bool Calm::solve_sums(double power, double conductance,
                                                    double offered, double highest_node,
                                                    CalmPoint& point) const {
    const auto bus = step::bus_of<double>({power}, {conductance}, {offered}, {highest_node},
                                          {absorption_}, {shared_}, power < 0.0);
    if (!bus.possible) return false;
    point = {.voltage = bus.voltage.value,
             .current = bus.current.value,
             .node = bus.node.value,
             .source = bus.source.value};
    return true;
}

// Nobody gives and nothing is offered, or nobody takes what is: no current, and the bus shows the
// highest of them.
[[gnu::always_inline]] inline bool Calm::still(double power) const {
    return !any_gives_ && !(power > 0.0) && (power == 0.0 || !any_takes_);
}

// Whether nobody takes more than its knee, nor where charging has a curve of its own: what else
// bank.cpp must solve.
template <Calm::Face Calm::Block::*face>
[[gnu::always_inline]] inline bool Calm::charges_plainly(const CalmPoint& point) const {
    if (!resists_ && !stands_above_) return true;
    Mask otherwise{};
    for (const Block& b : blocks_) {
        const Face& f = b.*face;
        const Mask fast =
            step::beyond_knee<Lanes>({none + point.node}, meets_of(f), {f.most_in}, {b.knee});
        otherwise |= f.taking & (fast | b.stands_above);
    }
    return !any(otherwise);
}

template <Calm::Face Calm::Block::*face>
[[gnu::always_inline]] inline bool Calm::solve(double power, CalmPoint& point) {
    if (still(power)) {
        Lanes highest = none;
        for (const Block& b : blocks_)
            highest = larger(highest, (b.*face).rested);
        const double node = largest_of(highest);
        point = {node, 0.0, node, node};
        return true;
    }
    if (power < 0.0 && !any_takes_) power = 0.0;
    double highest_node = never;
    if (power < 0.0) {
        Lanes lowest = none + never;
        for (const Block& b : blocks_) {
            const Face& f = b.*face;
            const auto node = step::highest_node_of<Lanes>(meets_of(f), {f.most_in}, b.takes,
                                                           b.count, {b.floor}, {none + never});
            lowest = step::smaller(lowest, node.value);
        }
        highest_node = -largest_of(-lowest);
    }
    for (int round = 0; round < rounds; ++round) {
        Lanes conductance = none;
        Lanes offered = none;
        for (const Block& b : blocks_) {
            const Face& f = b.*face;
            const auto of = step::offers_of<Lanes>(meets_of(f), {f.most_in}, way_of(f));
            conductance += of.conducts.value;
            offered += of.offers.value;
        }
        if (!solve_sums(power, sum(conductance), sum(offered), highest_node, point)) return false;
        Mask changed{};
        for (Block& b : blocks_) {
            Face& f = b.*face;
            const auto way =
                step::way_at<Lanes>({none + point.node}, meets_of(f), {f.most_in}, way_of(f));
            changed |= (way.taking ^ f.taking) | (way.held ^ f.held);
            f.taking = way.taking;
            f.held = way.held;
        }
        if (!any(changed)) return charges_plainly<face>(point);
    }
    return false;
}

// Currents of the trial and where they lead; false where something happens on the way.
[[gnu::always_inline]] inline bool Calm::follow(double power, double time, double tolerance,
                                                const CalmPoint& point) {
    Mask disturbed{};
    step::Moves<Lanes> moves{{none - never}, {none - never}, {none}, none};
    Lanes largest = none;
    const bool quiet = still(power);
    for (Block& b : blocks_) {
        b.current = quiet ? none : current_of(b, b.mean, point.node);
        b.into = b.mean.taking ? b.coulombic * b.current : b.current;
        const auto then = step::stand_after<of_all_kinds, Lanes>(
            standing_of(b), {b.into}, constants_of(b), step::Seconds<double>{time}, b.left, b.once);
        b.then_removed = then.removed.value;
        b.then_head = then.head.value;
        b.then_available = then.available;
        b.then_below = then.bound;
        disturbed |= step::leaves_piece<Lanes>(b.mean.taking, then, ends_of(b));
        const Lanes filled = b.then_available - b.available;
        const Lanes parted = b.counted_slope * filled;
        step::widen<Lanes>(moves, {parted + b.absent}, {b.absent - parted}, {b.slope}, filled);
        largest = larger(largest, magnitude(b.current));
    }
    if (!one_efficiency_)
        for (const Block& b : blocks_)
            disturbed |= (b.then_removed < b.least_removed) | (b.then_removed > b.most_removed);
    if (two_wells_)
        for (const Block& b : blocks_)
            disturbed |= step::leaves_beneath<Lanes>(
                standing_of(b), {{b.then_removed}, {b.then_head}, b.then_available, b.then_below},
                {b.into}, constants_of(b), ends_of(b), {none + time});
    const step::Moves<double> moved{{largest_of(moves.rises.value)},
                                    {largest_of(moves.falls.value)},
                                    {largest_of(moves.changes.value)},
                                    largest_of(moves.fills)};
    const step::BusPoint<double> bus{.voltage = {point.voltage}, .source = {point.source}};
    moved_ = step::moved_by<double>(moved, bus, {power}, tolerance, fill_tolerance_).value;
    largest_ = largest_of(largest);
    if (resists_) {
        Lanes drifts = none;
        for (const Block& b : blocks_) {
            const auto drift = step::charging_drift(step::Ohms<Lanes>{b.added},
                                                    step::Ohms<Lanes>{added_of(b, b.then_removed)},
                                                    step::Amperes<Lanes>{magnitude(b.current)});
            drifts = larger(drifts, b.mean.taking ? drift.value : none);
        }
        moved_ = std::max(moved_, largest_of(drifts) * (tolerance / drift_tolerance_));
    }
    return !any(disturbed);
}

[[gnu::always_inline]] inline bool Calm::free_of_thresholds(double power, bool then,
                                                            const CalmPoint& point,
                                                            const CalmLimits& limits) {
    Mask met{};
    Lanes largest = none;
    Lanes removed = none;
    const bool quiet = still(power);
    for (Block& b : blocks_) {
        const Lanes out = then ? b.then_removed : b.removed;
        const Lanes rested = b.now.rested;
        b.current_now = quiet ? none : current_of(b, b.now, point.node);
        const Mask gives = b.current_now > none;
        met |= gives & (b.current_now >= b.current_above);
        met |= gives & (rested <= b.empty);
        met |= gives & (rested - b.current_now * b.inner <= b.cut_off);
        met |= out <= b.restored;
        largest = larger(largest, magnitude(b.current_now));
        removed += b.count * out;
    }
    if (any(met)) return false;
    largest_ = std::max(largest_, largest_of(largest));
    then_removed_ = sum(removed);
    if (power > 0.0) {
        if (point.voltage <= limits.cut_off || then_removed_ >= limits.removed_above) return false;
    } else if (point.voltage >= limits.voltage_above || then_removed_ <= limits.removed_below) {
        return false;
    }
    return !(then && removed_ > limits.filled_to && then_removed_ <= limits.filled_to);
}

// Adds up where the energy went, and moves the state on. (16) to (20)
[[gnu::always_inline]] inline void Calm::take(double time, const CalmPoint& mean) {
    Lanes in_inner = none;
    Lanes in_paths = none;
    Lanes in_charging = none;
    Lanes between = none;
    for (const Block& b : blocks_) {
        const Lanes charge = b.count * b.current * time;
        in_inner += charge * b.current * b.inner;
        in_paths += charge * b.current * b.path;
        const Lanes rested = b.mean.rested - b.per_ampere * b.into;
        in_charging += b.count * (b.into - b.current) * time * rested;
        // a full pack is driven above its voltage: that part gasses and heats
        const Lanes driven = mean.node - rested + b.current * b.resistance;
        in_charging -= b.mean.held ? charge * driven : none;
        if (!resists_) continue;
        const Lanes met = charge * b.current * b.added;
        in_charging += b.mean.taking & ~b.mean.held ? met : none;
    }
    if (two_wells_)
        for (const Block& b : blocks_) {
            const auto lost = step::lost_between<Lanes>(
                {{b.at_zero}, {b.slope}}, {{b.bound_at_zero}, {b.bound_slope}}, standing_of(b),
                {b.into}, constants_of(b), step::PerSecond<Lanes>{b.count * b.exchange},
                step::Seconds<double>{time}, b);
            between += lost.value;
        }
    energy_ = {.at_bus = mean.voltage * mean.current * time,
               .charge = mean.current * time,
               .in_inner = sum(in_inner),
               .in_paths = sum(in_paths) + shared_ * mean.current * mean.current * time,
               .between = sum(between),
               .in_charging = sum(in_charging)};
    for (Block& b : blocks_) {
        b.removed = b.then_removed;
        b.head = b.then_head;
        b.available = b.then_available;
        b.below = b.then_below;
    }
    removed_ = then_removed_;
}

// The bus at the present state and this power, as point_.
[[gnu::always_inline]] inline bool Calm::stand_under(double power) {
    if (!at_present_) stand_at(false);
    at_present_ = true;
    if (solved_for_ == power) return true;
    solved_for_.reset();
    if (!solve<&Block::now>(power, point_)) return false;
    solved_for_ = power;
    return true;
}

template <Calm::AtOnce at_once>
bool Calm::meets_as(double power) {
    if (!stand_under(power)) return false;
    const bool quiet = still(power);
    for (Block& b : blocks_)
        b.current_now = quiet ? none : current_of(b, b.now, point_.node);
    return true;
}

// Who gives and who takes without a power is remembered apart from who does under one.
template <Calm::AtOnce at_once>
bool Calm::rests_as(double& voltage) {
    if (!at_present_) stand_at(false);
    at_present_ = true;
    const auto exchange = [this] {
        for (Block& b : blocks_) {
            std::swap(b.now.taking, b.taking_at_rest);
            std::swap(b.now.held, b.held_at_rest);
        }
    };
    CalmPoint point;
    exchange();
    const bool found = solve<&Block::now>(0.0, point);
    exchange();
    voltage = point.voltage;
    return found;
}

template <Calm::AtOnce at_once>
double Calm::stored_as() const {
    Lanes energy = none;
    for (const Block& b : blocks_) {
        const Lanes above = b.available * (b.at_zero + 0.5 * b.slope * b.available);
        energy += b.capacity * (b.at_empty + above);
    }
    if (two_wells_)
        for (const Block& b : blocks_) {
            const Lanes above = b.below * (b.bound_at_zero + 0.5 * b.bound_slope * b.below);
            energy += b.bound_capacity * (b.bound_at_empty + above);
        }
    return sum(energy);
}

template <Calm::AtOnce at_once>
bool Calm::stands_as(double power, const CalmLimits& limits) {
    largest_ = 0.0;
    return stand_under(power) && free_of_thresholds(power, false, point_, limits);
}

template <Calm::AtOnce at_once>
Calm::Tried Calm::step_as(double power, double time, double tolerance, const CalmLimits& limits) {
    CalmPoint mean;
    CalmPoint end;
    moved_ = 0.0;
    decay_for(time);
    predict(time);
    if (!solve<&Block::mean>(power, mean)) return Tried::disturbed;
    const bool calm = follow(power, time, tolerance, mean);
    if (moved_ > tolerance) return Tried::too_long;
    if (!calm) return Tried::disturbed;
    at_present_ = false;
    solved_for_.reset();
    stand_at(true);
    if (!solve<&Block::now>(power, end) || !free_of_thresholds(power, true, end, limits))
        return Tried::disturbed;
    take(time, mean);
    at_present_ = true;
    solved_for_ = power;
    point_ = end;
    return Tried::done;
}

}  // namespace battery
