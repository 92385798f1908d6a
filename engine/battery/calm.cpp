#include "battery/calm.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <utility>

#include "battery/decay.hpp"

// The same code for processors with lanes of four and for those without, chosen when the program
// starts; every one gives the same bits, for no product and sum become one rounding.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && \
    !defined(CANDLEMARK_ONE_WIDTH)
#define CANDLEMARK_WIDTHS [[gnu::target_clones("arch=x86-64-v3", "default")]]
#else
#define CANDLEMARK_WIDTHS
#endif
// Lanes are never passed in registers: everything that takes one is inlined.
#pragma GCC diagnostic ignored "-Wpsabi"

namespace battery {

namespace {

using Lanes [[gnu::vector_size(32)]] = double;
using Mask [[gnu::vector_size(32)]] = std::int64_t;

constexpr double never = std::numeric_limits<double>::infinity();
constexpr double full = 1.0 - 1e-12;  // fill from which an available well counts as full
constexpr double at_knot = 1e-7;      // of fill, as in bank.cpp
constexpr double apart = 0.3;         // of the tolerance: how far packs may part in a substep
constexpr int rounds = 8;             // guesses at who gives and who takes
constexpr double level = 1e-12;       // V: rounding, who stands so near the bus stays as it was
constexpr double least_ohms = 1e-7;   // as in bank.cpp
constexpr double nearly_full = 0.9;   // fill below which no pack is held; beyond a step it is seen

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
[[gnu::always_inline]] inline Lanes smaller(const Lanes& a, const Lanes& b) {
    return a < b ? a : b;
}
[[gnu::always_inline]] inline Lanes magnitude(const Lanes& x) {
    return larger(x, -x);
}

alignas(32) constexpr Lanes none{0.0, 0.0, 0.0, 0.0};

// What the integral of the voltage begins with on this piece, so that it is right above its low
// end.
double at_empty(const OpenCircuit& table, const Piece& piece) {
    const double below = piece.low * (piece.at_zero + 0.5 * piece.slope * piece.low);
    return table.integral(units::StateOfCharge(piece.low)) / units::volt - below;
}

// Of one pack, positive out of it. (26), (27)
template <class Block, class Face>
[[gnu::always_inline]] inline Lanes current_of(const Block& b, const Face& f, double node) {
    const Lanes below = f.rested - node;  // rounding neither gives nor takes
    const Lanes free =
        f.taking ? smaller(none, below) * f.receiving : larger(none, below) * f.giving;
    return (f.held ? -f.most_in : free) * b.per_count;
}

}  // namespace

void Calm::load(const std::vector<CalmPack>& packs, double shared) {
    packs_ = packs.size();
    shared_ = shared;
    Block empty_lanes{};
    empty_lanes.resistance = empty_lanes.coulombic = none + 1.0;
    empty_lanes.current_above = empty_lanes.high = empty_lanes.bound_high = none + never;
    empty_lanes.cut_off = empty_lanes.empty = empty_lanes.restored = none - never;
    empty_lanes.absent = none - never;
    empty_lanes.low = empty_lanes.bound_low = empty_lanes.least_removed = none - never;
    empty_lanes.most_removed = none + never;
    blocks_.resize((packs_ + width - 1) / width, empty_lanes);
    absorption_ = never;
    removed_ = 0.0;
    any_gives_ = any_takes_ = two_wells_ = false;
    one_efficiency_ = true;
    one_rate_ = packs.front().pack.rate;
    fill_tolerance_ = packs.front().pack.fill_tolerance;
    decayed_for_ = -1.0;
    at_present_ = false;
    solved_for_.reset();
    for (std::size_t i = 0; i < packs_; ++i) {
        const Prepared& pack = packs[i].pack;
        const WellState& state = packs[i].state;
        Block& block = blocks_[i / width];
        const std::size_t lane = i % width;
        const bool takes = packs[i].takes && pack.charge_floor < 0.0;
        const int last = pack.open_circuit->pieces() - 1;
        const Piece& piece = pack.open_circuit->piece(state.available_piece);
        const Piece& beneath = pack.open_circuit->piece(state.bound_piece);
        block.absent[lane] = 0.0;
        block.count[lane] = packs[i].count;
        block.resistance[lane] = pack.resistance;
        block.inner[lane] = pack.inner;
        block.path[lane] = pack.path;
        block.coulombic[lane] = coulombic(pack, state);
        const double hair = at_knot * pack.total;
        block.least_removed[lane] = next_charging_piece(pack, state) - hair;
        block.most_removed[lane] = pack.coulombic_edge[state.charging_piece] + hair;
        one_efficiency_ = one_efficiency_ && pack.coulombic_edge[1] == -never;
        block.width[lane] = pack.width;
        block.bound[lane] = pack.bound;
        block.bound_gain[lane] = pack.bound_gain;
        block.head_gain[lane] = pack.head_gain;
        block.rate[lane] = pack.rate;
        block.per_total[lane] = pack.per_total;
        block.exchange[lane] = pack.exchange;
        block.gives[lane] = packs[i].gives ? packs[i].count : 0.0;
        block.takes[lane] = takes ? packs[i].count : 0.0;
        block.floor[lane] = pack.charge_floor;
        block.current_above[lane] = pack.current_above;
        block.cut_off[lane] = pack.pack_cut_off > 0.0 ? pack.pack_cut_off : -never;
        block.empty[lane] = pack.empty_voltage;
        block.restored[lane] = packs[i].restored_below;
        block.per_count[lane] = 1.0 / packs[i].count;
        block.now.in_ohms[lane] = std::max(least_ohms, pack.resistance);
        block.now.giving[lane] = block.gives[lane] / block.now.in_ohms[lane];
        block.now.receiving[lane] = block.takes[lane] / block.now.in_ohms[lane];
        block.at_zero[lane] = piece.at_zero;
        block.slope[lane] = piece.slope;
        block.counted_slope[lane] = counted_slope(pack, piece);
        block.low[lane] = state.available_piece > 0 ? piece.low - at_knot : -never;
        block.high[lane] = state.available_piece < last ? piece.high + at_knot : never;
        block.bound_at_zero[lane] = beneath.at_zero;
        block.bound_slope[lane] = beneath.slope;
        const bool deep = pack.bound > 0.0;
        block.bound_low[lane] = deep && state.bound_piece > 0 ? beneath.low - at_knot : -never;
        block.bound_high[lane] = deep && state.bound_piece < last ? beneath.high + at_knot : never;
        block.capacity[lane] = packs[i].count * pack.total * pack.width;
        block.bound_capacity[lane] = packs[i].count * pack.total * pack.bound;
        block.at_empty[lane] = at_empty(*pack.open_circuit, piece);
        block.bound_at_empty[lane] = at_empty(*pack.open_circuit, beneath);
        block.removed[lane] = state.removed;
        block.head[lane] = state.head;
        block.available[lane] = state.available;
        block.below[lane] = state.bound;
        if (!packs[i].gives)
            block.now.taking[lane] = block.mean.taking[lane] = block.taking_at_rest[lane] = -1;
        if (takes) absorption_ = std::min(absorption_, pack.absorption);
        any_gives_ = any_gives_ || packs[i].gives;
        any_takes_ = any_takes_ || takes;
        two_wells_ = two_wells_ || pack.bound > 0.0;
        if (pack.rate != one_rate_) one_rate_ = -1.0;
        removed_ += packs[i].count * state.removed;
    }
}

double Calm::current(std::size_t pack) const {
    return blocks_[pack / width].current_now[pack % width];
}

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
        const Lanes mean_fill = 1.0 - (b.removed + b.bound * b.head * b.once) * b.per_total;
        b.per_ampere = b.slope * (time * (0.5 + b.bound_gain * b.twice) * b.per_total);
        b.mean.rested = b.at_zero + b.slope * mean_fill;
        b.mean.giving = b.gives / larger(none + least_ohms, b.resistance + b.per_ampere);
        b.mean.in_ohms = larger(none + least_ohms, b.resistance + b.coulombic * b.per_ampere);
        b.mean.receiving = b.takes / b.mean.in_ohms;
        b.mean.most_in = none + never;
        if (!any(b.available > none + nearly_full)) continue;
        const Lanes shortfall = b.removed + b.bound * b.head * b.left;
        const Lanes each = time * (1.0 + b.bound_gain * b.once) * b.coulombic;
        b.mean.most_in = b.count * larger(none, shortfall / each);
    }
}

// Likewise at this moment, or at the end of the trial.
[[gnu::always_inline]] inline void Calm::stand_at(bool then) {
    for (Block& b : blocks_) {
        const Lanes available = then ? b.then_available : b.available;
        b.now.rested = b.at_zero + b.slope * available;
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
    if (!(conductance > 0.0)) return false;
    const double source = offered / conductance;
    const double resistance = 1.0 / conductance + shared_;
    const double under_root = source * source - 4.0 * resistance * power;
    if (!(under_root >= 0.0) || !(source > 0.0)) return false;
    const double current = 2.0 * power / (source + std::sqrt(under_root));
    point.node = (offered - current) / conductance;
    point.voltage = point.node - shared_ * current;
    point.current = current;
    point.source = source;
    if (!(power < 0.0) || (point.voltage <= absorption_ && point.node <= highest_node)) return true;
    point.node =
        std::min(highest_node, (absorption_ + shared_ * offered) / (1.0 + shared_ * conductance));
    point.current = offered - conductance * point.node;
    point.voltage = point.source = point.node - shared_ * point.current;
    if (point.current < 0.0) return true;
    point = {source, 0.0, source, source};  // they stand above what is offered them
    return true;
}

// Nobody gives and nothing is offered, or nobody takes what is: no current, and the bus shows the
// highest of them.
[[gnu::always_inline]] inline bool Calm::still(double power) const {
    return !any_gives_ && !(power > 0.0) && (power == 0.0 || !any_takes_);
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
            const Mask limited = (b.takes > none) & (f.most_in > -b.count * b.floor);
            lowest = smaller(lowest, limited ? f.rested - b.floor * f.in_ohms : none + never);
        }
        highest_node = -largest_of(-lowest);
    }
    for (int round = 0; round < rounds; ++round) {
        Lanes conductance = none;
        Lanes offered = none;
        for (const Block& b : blocks_) {
            const Face& f = b.*face;
            const Lanes conducts = f.held ? none : f.taking ? f.receiving : f.giving;
            conductance += conducts;
            offered += f.held ? -f.most_in : conducts * f.rested;
        }
        if (!solve_sums(power, sum(conductance), sum(offered), highest_node, point)) return false;
        Mask changed{};
        for (Block& b : blocks_) {
            Face& f = b.*face;
            const Lanes above = point.node - f.rested;
            const Mask taking = above > (f.taking ? none - level : none + level);
            const Mask held = taking & (above * f.receiving > f.most_in);
            changed |= (taking ^ f.taking) | (held ^ f.held);
            f.taking = taking;
            f.held = held;
        }
        if (!any(changed)) return true;
    }
    return false;
}

// Currents of the trial and where they lead; false where something happens on the way.
[[gnu::always_inline]] inline bool Calm::follow(double power, double time, double tolerance,
                                                const CalmPoint& point) {
    Mask disturbed{};
    Lanes rises_most = none - never;
    Lanes falls_most = none - never;
    Lanes changes_most = none;
    Lanes fills_most = none;
    Lanes largest = none;
    const bool quiet = still(power);
    for (Block& b : blocks_) {
        b.current = quiet ? none : current_of(b, b.mean, point.node);
        b.into = b.mean.taking ? b.coulombic * b.current : b.current;
        b.then_removed = b.removed + b.into * time;
        const Lanes gain = b.into * b.head_gain;
        b.then_head = b.head * b.left + gain * time * b.once;
        b.then_available = 1.0 - (b.then_removed + b.bound * b.then_head) * b.per_total;
        b.then_below = 1.0 - (b.then_removed - b.width * b.then_head) * b.per_total;
        disturbed |= b.mean.taking & (b.then_available > none + 1.0 + level);
        disturbed |= (b.then_available < b.low) | (b.then_available > b.high);
        const Lanes filled = b.then_available - b.available;
        const Lanes parted = b.counted_slope * filled;
        changes_most = larger(changes_most, magnitude(b.slope * filled));
        fills_most = larger(fills_most, magnitude(filled));
        rises_most = larger(rises_most, parted + b.absent);
        falls_most = larger(falls_most, b.absent - parted);
        largest = larger(largest, magnitude(b.current));
    }
    if (!one_efficiency_)
        for (const Block& b : blocks_)
            disturbed |= (b.then_removed < b.least_removed) | (b.then_removed > b.most_removed);
    if (two_wells_)
        for (Block& b : blocks_) {
            disturbed |= (b.then_below < b.bound_low) | (b.then_below > b.bound_high);
            // a well may turn round on the way, but not beyond its straight piece
            const Lanes gain = b.into * b.head_gain;
            const Lanes before = b.into + b.bound * (gain - b.rate * b.head);
            const Lanes after = b.into + b.bound * (gain - b.rate * b.then_head);
            const Lanes beyond = larger(magnitude(before), magnitude(after)) * b.per_total * time;
            disturbed |= (before * after < none) &
                         ((smaller(b.available, b.then_available) - beyond < b.low) |
                          (larger(b.available, b.then_available) + beyond > b.high));
            const Lanes deeper = larger(magnitude(b.head), magnitude(b.then_head)) * b.width *
                                 b.rate * b.per_total * time;
            disturbed |= (b.head * b.then_head < none) &
                         ((smaller(b.below, b.then_below) - deeper < b.bound_low) |
                          (larger(b.below, b.then_below) + deeper > b.bound_high));
        }
    const double rise = largest_of(rises_most);
    const double fall = largest_of(falls_most);
    const double root = 2.0 * point.voltage - point.source;
    double amplified = largest_of(changes_most);
    if (root > 0.0 && point.source > root) amplified *= point.source / root;
    moved_ = counted_change(std::max(amplified, (rise + fall) / apart), largest_of(fills_most),
                            tolerance, fill_tolerance_, power > 0.0);
    largest_ = largest_of(largest);
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
    }
    if (two_wells_)
        for (const Block& b : blocks_) {
            const Lanes gain = b.into * b.head_gain * time;
            const Lanes head = b.head * b.once + gain * b.twice;
            const Lanes removed_head =
                b.removed * head +
                b.into * time * (b.head * (b.once - b.twice) + gain * (b.twice - b.thrice));
            const Lanes head_squared =
                b.once * b.head * (0.5 * (1.0 + b.left) * b.head + b.once * gain) +
                gain * gain * (b.twice - b.thrice - 0.5 * b.rate * time * b.twice * b.twice);
            const Lanes by_removed = (b.slope - b.bound_slope) * b.per_total;
            const Lanes by_head = (b.slope * b.bound + b.bound_slope * b.width) * b.per_total;
            const Lanes unlike = (b.bound_at_zero + b.bound_slope) - (b.at_zero + b.slope);
            between += b.count * b.exchange * time *
                       (unlike * head + by_removed * removed_head + by_head * head_squared);
        }
    energy_ = {.at_bus = mean.voltage * mean.current * time,
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

CANDLEMARK_WIDTHS bool Calm::meets(double power) {
    if (!stand_under(power)) return false;
    const bool quiet = still(power);
    for (Block& b : blocks_)
        b.current_now = quiet ? none : current_of(b, b.now, point_.node);
    return true;
}

// Who gives and who takes without a power is remembered apart from who does under one.
CANDLEMARK_WIDTHS bool Calm::rests(double& voltage) {
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

CANDLEMARK_WIDTHS double Calm::stored() const {
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

CANDLEMARK_WIDTHS bool Calm::stands(double power, const CalmLimits& limits) {
    largest_ = 0.0;
    return stand_under(power) && free_of_thresholds(power, false, point_, limits);
}

CANDLEMARK_WIDTHS Calm::Tried Calm::step(double power, double time, double tolerance,
                                         const CalmLimits& limits) {
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
