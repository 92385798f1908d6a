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
#include "battery/step/quiet_bank.hpp"

namespace battery {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();
constexpr step::Kind of_all_kinds{};
using Lanes [[gnu::vector_size(32)]] = double;
using Mask [[gnu::vector_size(32)]] = std::int64_t;

constexpr double full = step::brim_in_bank;
constexpr double least_ohms = step::least_resistance;

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

[[gnu::always_inline]] inline CalmPoint point_of(const step::BusPoint<double>& bus) {
    return {bus.voltage.value, bus.current.value, bus.node.value, bus.source.value};
}
[[gnu::always_inline]] inline step::BusPoint<double> bus_of(const CalmPoint& point) {
    return {{point.node}, {point.voltage}, {point.source}, {point.current}, true};
}

// Of one pack at this moment, positive out of it.
template <class Block>
[[gnu::always_inline]] inline Lanes current_now_of(const Block& b, double node) {
    return step::current_on_bus<Lanes>({none + node}, b.now.meets, b.now.most_in, b.now.way,
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

// The packs of one bank as step/quiet_bank.hpp takes them: in the mean of a substep, or at a
// moment.
template <Calm::Face Calm::Block::*face_of>
class Calm::Abreast {
  public:
    using Each = Lanes;
    using EachMask = Mask;
    using Whole = double;
    using WholeMask = bool;
    using Of = Block;
    struct Sum {
        Lanes of = none;
        [[gnu::always_inline]] void add(const Lanes& x) { of += x; }
        [[gnu::always_inline]] double total() const { return sum(of); }
    };
    struct Pack {
        Block& block;
        Face& face;
        step::InStep<Lanes, Mask>& in_step;
        [[gnu::always_inline]] const Lanes& operator[](Lanes Block::*figure) const {
            return block.*figure;
        }
        [[gnu::always_inline]] const Block& decayed() const { return block; }
        [[gnu::always_inline]] Mask stands_above() const { return block.stands_above; }
        [[gnu::always_inline]] step::Volts<Lanes> absent() const { return {block.absent}; }
    };

    [[gnu::always_inline]] Abreast(Calm& calm, bool still) : of_(calm), still_(still) {}
    template <class Do>
    [[gnu::always_inline]] void for_each(const Do& with) {
        for (Block& block : of_.blocks_) {
            Pack pack{block, block.*face_of, block.in_step};
            with(pack);
        }
    }
    [[gnu::always_inline]] static Lanes each(double x) { return none + x; }
    [[gnu::always_inline]] static bool any(const Mask& mask) { return battery::any(mask); }
    [[gnu::always_inline]] static double largest(const Lanes& x) { return largest_of(x); }
    template <class Unit>
    [[gnu::always_inline]] static step::Dimensioned<Unit, double> largest(
        const step::Dimensioned<Unit, Lanes>& x) {
        return {largest_of(x.value)};
    }
    template <class X>
    [[gnu::always_inline]] static X where(bool condition, const X& x, const X& otherwise) {
        return condition ? x : otherwise;
    }
    [[gnu::always_inline]] step::Volts<double> absorption() const { return {of_.absorption_}; }
    [[gnu::always_inline]] step::Ohms<double> shared() const { return {of_.shared_}; }
    [[gnu::always_inline]] double fill_tolerance() const { return of_.fill_tolerance_; }
    [[gnu::always_inline]] double drift_tolerance() const { return of_.drift_tolerance_; }
    [[gnu::always_inline]] bool still() const { return still_; }
    [[gnu::always_inline]] bool resists() const { return of_.resists_; }
    [[gnu::always_inline]] bool two_wells() const { return of_.two_wells_; }
    [[gnu::always_inline]] bool many_efficiencies() const { return !of_.one_efficiency_; }
    [[gnu::always_inline]] bool bends() const { return of_.resists_ || of_.stands_above_; }

  private:
    Calm& of_;
    bool still_;
};

// Likewise at this moment, or at the end of the trial.
[[gnu::always_inline]] inline void Calm::stand_at(bool then) {
    for (Block& b : blocks_) {
        const Lanes available = then ? b.in_step.to.available : b.available;
        b.now.meets.rested.value = b.at_zero + b.slope * available;
        if (resists_) {
            const Lanes added = added_of(b, then ? b.in_step.to.removed.value : b.removed);
            b.now.meets.in_ohms.value = larger(none + least_ohms, b.resistance + added);
            b.now.meets.receiving.value = b.takes / b.now.meets.in_ohms.value;
        }
        b.now.most_in.value = none + never;
        const Mask brimming = available >= none + full;
        if (!any(brimming)) continue;
        const Lanes seeps = larger(none, -b.exchange * (then ? b.in_step.to.head.value : b.head));
        b.now.most_in.value = brimming ? b.count * seeps / b.coulombic : b.now.most_in.value;
    }
}

// Nobody gives and nothing is offered, or nobody takes what is: no current, and the bus shows the
// highest of them.
[[gnu::always_inline]] inline bool Calm::still(double power) const {
    return !any_gives_ && !(power > 0.0) && (power == 0.0 || !any_takes_);
}

// The bus shows the highest of them, who all rest.
template <Calm::Face Calm::Block::*face>
[[gnu::always_inline]] inline CalmPoint Calm::highest_of_all() const {
    Lanes highest = none;
    for (const Block& b : blocks_)
        highest = larger(highest, (b.*face).meets.rested.value);
    const double node = largest_of(highest);
    return {node, 0.0, node, node};
}

// What nobody takes is not offered.
[[gnu::always_inline]] inline step::Watts<double> Calm::asked_of(double power) const {
    return {power < 0.0 && !any_takes_ ? 0.0 : power};
}

// The bus at this moment, or in the mean of a trial; false where bank.cpp must look.
[[gnu::always_inline]] inline bool Calm::solve_now(double power, CalmPoint& point) {
    if (still(power)) {
        point = highest_of_all<&Block::now>();
        return true;
    }
    Abreast<&Block::now> bank(*this, false);
    const auto asked = asked_of(power);
    const auto found = step::settle(bank, asked, asked.value < 0.0);
    if (found.disturbed) return false;
    point = point_of(found.bus);
    return !step::bends(bank, found.bus.node);
}
[[gnu::always_inline]] inline bool Calm::solve_mean(double power, double time, CalmPoint& point) {
    const step::Seconds<double> lasts{time};
    Abreast<&Block::mean> bank(*this, still(power));
    step::predict<of_all_kinds>(bank, lasts);
    if (bank.still()) {
        point = highest_of_all<&Block::mean>();
        return true;
    }
    const auto asked = asked_of(power);
    const auto found = step::settle_mean(bank, asked, asked.value < 0.0, lasts);
    point = point_of(found.bus);
    return !found.disturbed;
}

// Currents of the trial and where they lead; false where something happens on the way.
[[gnu::always_inline]] inline bool Calm::follow(double power, double time, double tolerance,
                                                const CalmPoint& point) {
    Abreast<&Block::mean> bank(*this, still(power));
    Lanes largest = none;
    const auto found = step::follow<of_all_kinds>(
        bank, bus_of(point), {power}, step::Seconds<double>{time},
        tolerance, [&](const auto& pack) __attribute__((always_inline)) {
            largest = larger(largest, magnitude(pack.in_step.current.value));
            return Mask{};
        });
    moved_ = found.moved.value;
    largest_ = largest_of(largest);
    return !found.disturbed;
}

[[gnu::always_inline]] inline bool Calm::free_of_thresholds(double power, bool then,
                                                            const CalmPoint& point,
                                                            const CalmLimits& limits) {
    Mask met{};
    Lanes largest = none;
    Lanes removed = none;
    const bool quiet = still(power);
    for (Block& b : blocks_) {
        const Lanes out = then ? b.in_step.to.removed.value : b.removed;
        const Lanes rested = b.now.meets.rested.value;
        b.current_now = quiet ? none : current_now_of(b, point.node);
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

// What falls from the one well's voltage to the other's, J. (18)
[[gnu::always_inline]] inline double Calm::lost_between(double time) const {
    Lanes between = none;
    if (two_wells_)
        for (const Block& b : blocks_) {
            const auto lost = step::lost_between<Lanes>(
                {{b.at_zero}, {b.slope}}, {{b.bound_at_zero}, {b.bound_slope}}, standing_of(b),
                {b.in_step.into.value}, constants_of(b),
                step::PerSecond<Lanes>{b.count * b.exchange}, step::Seconds<double>{time}, b);
            between += lost.value;
        }
    return sum(between);
}

// Where the energy of the trial goes. (16) to (20)
[[gnu::always_inline]] inline CalmEnergy Calm::spent(double time, const CalmPoint& mean) const {
    Lanes in_inner = none;
    Lanes in_paths = none;
    Lanes in_charging = none;
    for (const Block& b : blocks_) {
        const Lanes charge = b.count * b.in_step.current.value * time;
        in_inner += charge * b.in_step.current.value * b.inner;
        in_paths += charge * b.in_step.current.value * b.path;
        const Lanes rested =
            b.in_step.mean.at_rest.value - b.in_step.mean.per_ampere.value * b.in_step.into.value;
        in_charging += b.count * (b.in_step.into.value - b.in_step.current.value) * time * rested;
        // a full pack is driven above its voltage: that part gasses and heats
        const Lanes driven = mean.node - rested + b.in_step.current.value * b.resistance;
        in_charging -= b.mean.way.held ? charge * driven : none;
        if (!resists_) continue;
        const Lanes met = charge * (b.in_step.current.value * b.in_step.added.up_to_knee.value -
                                    b.in_step.lag.value);
        in_charging += b.mean.way.taking & ~b.mean.way.held ? met : none;
    }
    return {.at_bus = mean.voltage * mean.current * time,
            .charge = mean.current * time,
            .in_inner = sum(in_inner),
            .in_paths = sum(in_paths) + shared_ * mean.current * mean.current * time,
            .between = lost_between(time),
            .in_charging = sum(in_charging)};
}

// Moves the state on to where the trial leads.
[[gnu::always_inline]] inline void Calm::take(double time, const CalmPoint& mean) {
    energy_ = spent(time, mean);
    for (Block& b : blocks_) {
        b.removed = b.in_step.to.removed.value;
        b.head = b.in_step.to.head.value;
        b.available = b.in_step.to.available;
        b.below = b.in_step.to.bound;
    }
    removed_ = then_removed_;
}

// The bus at the present state and this power, as point_.
[[gnu::always_inline]] inline bool Calm::stand_under(double power) {
    if (!at_present_) stand_at(false);
    at_present_ = true;
    if (solved_for_ == power) return true;
    solved_for_.reset();
    if (!solve_now(power, point_)) return false;
    solved_for_ = power;
    return true;
}

template <Calm::AtOnce at_once>
bool Calm::meets_as(double power) {
    if (!stand_under(power)) return false;
    const bool quiet = still(power);
    for (Block& b : blocks_)
        b.current_now = quiet ? none : current_now_of(b, point_.node);
    return true;
}

// Who gives and who takes without a power is remembered apart from who does under one.
template <Calm::AtOnce at_once>
bool Calm::rests_as(double& voltage) {
    if (!at_present_) stand_at(false);
    at_present_ = true;
    const auto exchange = [this] {
        for (Block& b : blocks_) {
            std::swap(b.now.way.taking, b.taking_at_rest);
            std::swap(b.now.way.held, b.held_at_rest);
        }
    };
    CalmPoint point;
    exchange();
    const bool found = solve_now(0.0, point);
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
    if (!solve_mean(power, time, mean)) return Tried::disturbed;
    const bool calm = follow(power, time, tolerance, mean);
    if (moved_ > tolerance) return Tried::too_long;
    if (!calm) return Tried::disturbed;
    at_present_ = false;
    solved_for_.reset();
    stand_at(true);
    if (!solve_now(power, end) || !free_of_thresholds(power, true, end, limits))
        return Tried::disturbed;
    take(time, mean);
    at_present_ = true;
    solved_for_ = power;
    point_ = end;
    return Tried::done;
}

}  // namespace battery
