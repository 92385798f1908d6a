#include "battery/bank.hpp"

#include <algorithm>
#include <cassert>

#include <boost/math/tools/toms748_solve.hpp>

namespace battery {

using namespace units;

namespace {

constexpr double never = std::numeric_limits<double>::infinity();
constexpr double found_within = step::found_within_in_bank;
constexpr double full = step::brim_in_bank;
constexpr double at_knot = step::hair_in_bank;  // how far behind a knot a piece is left; (34)
using step::apart;
using step::no_current;
using step::no_longer;
using step::shortest;

double conductance(double count, double resistance) {
    return count / std::max(step::least_resistance, resistance);
}

// The most that the available well takes for the time before it is full, at the terminals. (33)
double most_taken(const Prepared& pack, const WellState& state, const Decay& decayed, double time) {
    if (!(time > 0.0)) {
        if (state.available < full) return never;
        return std::max(0.0, -pack.exchange * state.head) / coulombic(pack, state);
    }
    const double most =
        step::most_taken(step::Coulombs<double>{state.removed}, step::Coulombs<double>{state.head},
                         pack.bound, decayed.left, step::Seconds<double>{time}, pack.bound_gain,
                         decayed.once)
            .value;
    return std::max(0.0, most) / coulombic(pack, state);
}

void add(BankAdvanced& sum, const CalmEnergy& energy) {
    (energy.at_bus > 0.0 ? sum.energy.delivered : sum.energy.accepted) +=
        std::abs(energy.at_bus) * joule;
    sum.charge += energy.charge * coulomb;
    sum.energy.in_resistance += (energy.in_inner + energy.in_paths) * joule;
    sum.in_paths += energy.in_paths * joule;
    sum.energy.between_wells += energy.between * joule;
    sum.energy.in_charging += energy.in_charging * joule;
}

// What nobody set is out of reach.
CalmLimits limits_of(const BankStops& stops) {
    return {.cut_off = stops.cut_off.value_or(-never * volt) / volt,
            .voltage_above = stops.voltage_above.value_or(never * volt) / volt,
            .removed_above = stops.removed_above.value_or(never * coulomb) / coulomb,
            .removed_below = stops.removed_below.value_or(-never * coulomb) / coulomb,
            .filled_to = stops.filled_to.value_or(-never * coulomb) / coulomb};
}

}  // namespace

Bank::Bank(std::span<const PackGroup> groups, Resistance shared, Voltage tolerance)
    : shared_(shared / ohm), tolerance_(tolerance / volt), length_(never) {
    assert(!groups.empty());
    for (const auto& group : groups) {
        Member member{.pack = prepare(group.setup, tolerance),
                      .kinetics = group.setup.kinetics,
                      .count = static_cast<double>(group.count)};
        member.state = state_of(member.pack, group.at_start.removed / coulomb,
                                group.at_start.head_difference / coulomb);
        member.per_ohm = conductance(member.count, member.pack.resistance);
        members_.push_back(member);
    }
    trial_.resize(members_.size());
    now_.resize(members_.size());
}

int Bank::count(std::size_t group) const {
    return static_cast<int>(members_[group].count);
}

Wells Bank::wells(std::size_t group) const {
    const auto& state = members_[group].state;
    return {.removed = state.removed * coulomb, .head_difference = state.head * coulomb};
}

Energy Bank::stored() const {
    Energy sum{};
    for (std::size_t i = 0; i < members_.size(); ++i)
        sum += members_[i].count *
               stored_energy(members_[i].kinetics, *members_[i].pack.open_circuit, wells(i));
    return sum;
}

Energy Bank::stored_to_rounding() const {
    return calm_is_current_ ? calm_.stored() * joule : stored();
}

double Bank::total_removed(bool at_trial_end) const {
    double sum = 0.0;
    for (const Member& member : members_)
        sum += member.count * (at_trial_end ? member.removed : member.state.removed);
    return sum;
}

Charge Bank::removed() const {
    return total_removed(false) * coulomb;
}

void Bank::let(std::size_t group, bool give, bool take) {
    calm_is_current_ = false;
    members_[group].gives = give;
    members_[group].takes = take;
}

bool Bank::any_gives() const {
    return std::ranges::any_of(members_, &Member::gives);
}

void Bank::restore_below(std::size_t group, std::optional<Charge> removed) {
    calm_is_current_ = false;
    members_[group].may_restore = removed.has_value();
    members_[group].restored_below = removed.value_or(Charge{}) / coulomb;
}

void Bank::refit(std::size_t group, const Arrangement& setup) {
    calm_is_current_ = false;
    Member& member = members_[group];
    member.pack = prepare(setup, tolerance_ * volt);
    member.kinetics = setup.kinetics;
    member.per_ohm = conductance(member.count, member.pack.resistance);
    member.state = state_of(member.pack, member.state.removed, member.state.head);
}

// The bus without a current: what flows from one pack to another, or, where nobody gives and nobody
// takes, the highest of them.
BusPoint Bank::solve_at_rest(std::span<Branch> branches) const {
    const bool any_gives =
        std::ranges::any_of(branches, [](const Branch& branch) { return branch.giving > 0.0; });
    if (any_gives) {
        const BusPoint point = bus_at_current(branches, 0.0, shared_);
        if (point.possible) return point;
    }
    BusPoint highest;
    for (Branch& branch : branches) {
        highest.node = std::max(highest.node, branch.rested);
        branch.flowing = Flowing::nothing;
    }
    highest.voltage = highest.source = highest.node;
    return highest;
}

// The lowest absorption voltage of who takes charge, and the node at which the weakest pack has all
// that it may be charged with.
Bank::Ceiling Bank::ceiling(std::span<const Branch> branches) const {
    Ceiling found{.voltage = never, .node = never};
    for (std::size_t i = 0; i < branches.size(); ++i) {
        const Branch& branch = branches[i];
        if (!(branch.taking > 0.0)) continue;
        found.any_takes = true;
        const Prepared& pack = members_[i].pack;
        found.voltage = std::min(found.voltage, pack.absorption);
        const double largest = -pack.charge_floor * members_[i].count;
        if (branch.most_in > largest) found.node = std::min(found.node, branch.node_at(largest));
    }
    return found;
}

BusPoint Bank::solve_at_node(std::span<Branch> branches, double node) const {
    (void)bus_detail::settle(branches, node);
    const Together sum = bus_detail::together(branches);
    BusPoint point{.node = node, .current = sum.offered - sum.conductance * node, .source = node};
    point.voltage = point.node - shared_ * point.current;
    return point;
}

// The bus at a power: what is offered beyond the absorption voltage, or beyond what the weakest
// pack may be charged with, is refused. (35)
BusPoint Bank::solve(std::span<Branch> branches, double power) const {
    if (power > 0.0) return bus_at_power(branches, power, shared_);
    if (power == 0.0) return solve_at_rest(branches);
    const Ceiling most = ceiling(branches);
    if (!most.any_takes) return solve_at_rest(branches);
    BusPoint point = bus_at_power(branches, power, shared_);
    const bool beyond = !point.possible || point.voltage > most.voltage || point.node > most.node;
    if (!beyond) return point;
    if (most.voltage < never) point = bus_at_voltage(branches, most.voltage, shared_);
    if (point.node > most.node || most.voltage == never) {
        if (most.node == never) return solve_at_rest(branches);
        point = solve_at_node(branches, most.node);
    }
    return point.current < 0.0 ? point : solve_at_rest(branches);
}

// How the member takes charge from a voltage on, the inner resistance or what stands for it in a
// mean being this of one pack. (61), (64)
void Bank::faces(Branch& branch, const Member& member, double taking_from, double taking) const {
    const Prepared& pack = member.pack;
    branch.gap = std::max(0.0, taking_from - branch.rested);
    branch.knee = never;
    branch.taking = 0.0;
    if (!member.takes || !(pack.charge_floor < 0.0)) return;
    if (!pack.resists) {
        branch.taking = conductance(member.count, taking);
        return;
    }
    branch.taking = conductance(member.count, taking + member.added.up_to_knee.value);
    branch.fast = conductance(member.count, taking + member.added.beyond.value);
    branch.knee = member.count * pack.charging_knee;
}

// Raises who takes charge in the trial by what it meets in its mean more than at its start. (63a)
//   gives  whether there is any
bool Bank::lag_behind(double time) {
    bool any = false;
    for (std::size_t i = 0; i < members_.size(); ++i) {
        Member& member = members_[i];
        member.lag = 0.0;
        const double current = trial_[i].current_at(trial_point_.node) / member.count;
        if (!member.pack.resists || !(current < 0.0)) continue;
        member.lag =
            lag_at(member.pack, current, coulombic(member.pack, member.state), member.added, time)
                .value;
        trial_[i].gap += member.lag;
        any = true;
    }
    return any;
}

// Largest change of a charging voltage in the trial because the charge changes, or would at the
// current of its start. (63)
double Bank::drift() const {
    double largest = 0.0;
    for (const Member& member : members_) {
        largest = std::max(largest, 2.0 * member.lag);
        if (!member.pack.resists || !(member.current < 0.0)) continue;
        const double later = added_at(member.pack, member.removed).up_to_knee.value;
        largest = std::max(largest, (later - member.added.up_to_knee.value) * -member.current);
    }
    return largest;
}

void Bank::point_now(double power, bool at_trial_end) {
    for (std::size_t i = 0; i < members_.size(); ++i) {
        Member& member = members_[i];
        const Prepared& pack = member.pack;
        WellState state = member.state;
        if (at_trial_end) {
            state.removed = member.removed;
            state.head = member.head;
            state.available = member.available;
        }
        Branch& branch = now_[i];
        branch.rested = rested_voltage(pack, state);
        branch.giving = member.gives ? member.per_ohm : 0.0;
        const step::Added<double> of_trial = member.added;
        member.added = added_at(pack, state.removed);
        faces(branch, member, charging_voltage(pack, state), pack.resistance);
        member.added = of_trial;
        branch.most_in = member.count * most_taken(pack, state, {}, 0.0);
    }
    now_point_ = solve(now_, power);
}

OperatingPoint Bank::operating_point(Power power) {
    load_calm();
    calm_has_point_ = calm_.meets(power / watt);
    if (calm_has_point_)
        return {.voltage = calm_.point().voltage * volt,
                .current = calm_.point().current * ampere,
                .possible = true};
    point_now(power / watt, false);
    return {.voltage = now_point_.voltage * volt,
            .current = now_point_.current * ampere,
            .possible = now_point_.possible};
}

Voltage Bank::voltage_at_rest() {
    load_calm();
    double voltage = 0.0;
    if (calm_.rests(voltage)) return voltage * volt;
    return operating_point(Power{}).voltage;
}

double Bank::current_now(std::size_t group) const {
    return now_[group].current_at(now_point_.node) / members_[group].count;
}

Current Bank::current_of(std::size_t group) const {
    return (calm_has_point_ ? calm_.current(group) : current_now(group)) * ampere;
}

// The mean that a member shows the bus in a trial, its wells decayed so far. (32)
void Bank::face_mean(Branch& branch, Member& member, double time) const {
    const Prepared& pack = member.pack;
    const MeanVoltage mean = mean_voltage(pack, member.state, member.decayed, time);
    member.at_rest = mean.at_rest;
    member.per_ampere = mean.per_ampere;
    branch.rested = mean.at_rest;
    branch.giving =
        member.gives ? conductance(member.count, pack.resistance + mean.per_ampere) : 0.0;
    member.added = added_at(pack, member.state.removed);
    MeanVoltage charging = mean;
    if (pack.stands_above)
        charging = mean_voltage(charging_on(pack.open_circuit->piece(member.state.available_piece)),
                                pack, member.state, member.decayed, time);
    member.charging_at_rest = charging.at_rest;
    member.charging_per_ampere = charging.per_ampere;
    faces(branch, member, charging.at_rest,
          pack.resistance + coulombic(pack, member.state) * charging.per_ampere);
    branch.most_in = member.count * most_taken(pack, member.state, member.decayed, time);
}

// Where its current of the trial leads a member.
void Bank::lead(Member& member, double current, double time) {
    const Prepared& pack = member.pack;
    member.current = current;
    member.into =
        member.current < 0.0 ? coulombic(pack, member.state) * member.current : member.current;
    const auto to = step::stand_after<of_any_kind, double>(
        standing(member.state), {member.into}, constants_of(pack), step::Seconds<double>{time},
        member.decayed.left, member.decayed.once);
    member.removed = to.removed.value;
    member.head = to.head.value;
    member.available = to.available;
    member.bound = to.bound;
}

void Bank::try_for(double power, double time) {
    trial_time_ = time;
    Decay decayed;
    double rate = -1.0;
    for (std::size_t i = 0; i < members_.size(); ++i) {
        Member& member = members_[i];
        if (member.pack.rate != rate) {
            rate = member.pack.rate;
            decayed = decay(rate * time);
        }
        member.decayed = decayed;
        face_mean(trial_[i], member, time);
    }
    trial_point_ = solve(trial_, power);
    if (lag_behind(time)) trial_point_ = solve(trial_, power);
    for (std::size_t i = 0; i < members_.size(); ++i)
        lead(members_[i], trial_[i].current_at(trial_point_.node) / members_[i].count, time);
}

// Largest change of a rested voltage over the trial, amplified as the power amplifies it, or the
// largest parting of one pack from the others, whichever is nearer to what is allowed. (36)
double Bank::change(double power) const {
    double largest = 0.0;
    double lowest = never;
    double highest = -never;
    double most_filled = 0.0;
    double charging = drift() * (tolerance_ / members_.front().pack.drift_tolerance);
    for (const Member& member : members_) {
        const Piece& piece = member.pack.open_circuit->piece(member.state.available_piece);
        const double filled = member.available - member.state.available;
        const double parted = counted_slope(member.pack, piece) * filled;
        const double steeper = member.current < 0.0 ? piece.steeper : 0.0;
        largest = std::max(largest, std::abs(piece.slope * filled));
        // charging alone, where it has a curve of its own, as tolerance_on counts it
        if (steeper != 0.0)
            charging = std::max(charging, std::abs((piece.slope + steeper) * filled) * tolerance_ /
                                              tolerance_on(member.pack, piece, true));
        lowest = std::min(lowest, parted);
        highest = std::max(highest, parted);
        most_filled = std::max(most_filled, std::abs(filled));
    }
    const double root = 2.0 * trial_point_.voltage - trial_point_.source;
    const double amplified =
        root > 0.0 && trial_point_.source > root ? largest * trial_point_.source / root : largest;
    return std::max(charging,
                    counted_change(std::max(amplified, (highest - lowest) / apart), most_filled,
                                   tolerance_, members_.front().pack.fill_tolerance, power > 0.0));
}

bool Bank::fit_to_tolerance(double power, double length) {
    for (;;) {
        try_for(power, length);
        if (!trial_point_.possible) {
            if (length < no_longer) return false;
            length *= 0.5;
            continue;
        }
        const double moved = change(power);
        if (moved <= tolerance_ || length <= shortest) {
            length_ = moved > 0.0 ? length * std::min(4.0, 0.9 * tolerance_ / moved) : never;
            length_ = std::max(length_, shortest);
            return true;
        }
        length = std::max(shortest, length * std::max(0.05, 0.9 * tolerance_ / moved));
    }
}

// Ends the trial where a well would turn round beyond its straight piece.
void Bank::before_turns(double power) {
    double earliest = trial_time_;
    for (const Member& member : members_) {
        const Prepared& pack = member.pack;
        if (pack.bound == 0.0 || pack.rate == 0.0) continue;
        const WellState& state = member.state;
        const bool turns = shortfall_rise(pack, state.head, member.into) *
                               shortfall_rise(pack, member.head, member.into) <
                           0.0;
        const bool crosses = state.head * member.head < 0.0;
        if (!turns && !crosses) continue;
        const double settled = member.into * pack.head_gain / pack.rate;
        const auto check = [&](double head, bool of_available) {
            const double ratio = (state.head - settled) / (head - settled);
            const double instant = ratio > 1.0 ? std::log(ratio) / pack.rate : 0.0;
            const double removed = state.removed + member.into * instant;
            const Piece& piece =
                pack.open_circuit->piece(of_available ? state.available_piece : state.bound_piece);
            const double fill =
                of_available ? available_of(pack, removed, head) : bound_of(pack, removed, head);
            if ((fill < piece.low - at_knot || fill > piece.high + at_knot) && instant > shortest)
                earliest = std::min(earliest, instant);
        };
        if (turns) check(settled / pack.bound, true);
        if (crosses) check(0.0, false);
    }
    if (earliest < trial_time_) try_for(power, earliest);
}

// The part of the trial up to the first knot that a well meets, were fills straight in time, and
// that knot remembered; 1 where none is met.
double Bank::part_before_knot() {
    double part = 1.0;
    for (std::size_t i = 0; i < members_.size(); ++i) {
        const Member& member = members_[i];
        const int last = member.pack.open_circuit->pieces() - 1;
        const auto look = [&](int index, double from, double to, bool bound) {
            const Piece& piece = member.pack.open_circuit->piece(index);
            const bool below = to < piece.low - at_knot && index > 0;
            const bool above = to > piece.high + at_knot && index < last;
            if (!below && !above) return;
            // past the knot, so that whoever comes back to it has moved
            const double knot = below ? piece.low - 0.5 * at_knot : piece.high + 0.5 * at_knot;
            const double where = (knot - from) / (to - from);
            if (where >= part) return;
            part = where;
            knot_ = {.well = bound ? 2 : 1,
                     .pack = i,
                     .move = below ? -1 : 1,
                     .fill = below ? piece.low : piece.high};
        };
        look(member.state.available_piece, member.state.available, member.available, false);
        if (member.pack.bound > 0.0)
            look(member.state.bound_piece, member.state.bound, member.bound, true);
        const double edge = next_charging_piece(member.pack, member.state);
        const double hair = at_knot * member.pack.total;
        if (!(member.removed < edge - hair)) continue;
        const double where =
            (member.state.removed - (edge - 0.5 * hair)) / (member.state.removed - member.removed);
        if (where >= part) continue;
        part = where;
        knot_ = {.well = 3, .pack = i, .move = 1, .fill = 1.0 - edge * member.pack.per_total};
    }
    return std::max(0.0, part);
}

// Ends the trial at the first knot that a well meets, and remembers which well that is. (34)
void Bank::before_knots(double power) {
    // Currents hardly change with the length, so a secant lands close at once,
    constexpr int tries = 8;
    knot_ = {};
    for (int attempt = 0; attempt < tries; ++attempt) {
        const double part = part_before_knot();
        if (part >= 1.0) return;
        try_for(power, part * trial_time_);
    }
    // but wells that even out over many times their rate come to it on a curve that hardly rises.
    if (part_before_knot() >= 1.0) return;
    double before = 0.0;
    double beyond = trial_time_;
    while (beyond - before > step::found_within_in_bank) {
        const double middle = before + 0.5 * (beyond - before);
        if (middle <= before || middle >= beyond) break;
        try_for(power, middle);
        (part_before_knot() >= 1.0 ? before : beyond) = middle;
    }
    try_for(power, beyond);
}

// Moves the well that has come to its knot on to the next piece.
void Bank::pass_knot() {
    if (knot_.well == 0) return;
    WellState& state = members_[knot_.pack].state;
    if (knot_.well == 3) {
        const double fill = 1.0 - state.removed * members_[knot_.pack].pack.per_total;
        if (fill >= knot_.fill) state.charging_piece += knot_.move;
        return;
    }
    const bool bound = knot_.well == 2;
    const double fill = bound ? state.bound : state.available;
    const bool there = knot_.move < 0 ? fill <= knot_.fill : fill >= knot_.fill;
    if (!there) return;
    (bound ? state.bound_piece : state.available_piece) += knot_.move;
    if (!(members_[knot_.pack].pack.bound > 0.0)) state.bound_piece = state.available_piece;
}

// Discharge needs no look at the way, only the piece it has come to.
void Bank::stand_on_charging_pieces() {
    for (Member& member : members_) {
        WellState& state = member.state;
        const double hair = at_knot * member.pack.total;
        if (state.removed < next_charging_piece(member.pack, state) - hair ||
            state.removed > member.pack.coulombic_edge[state.charging_piece] + hair)
            state.charging_piece = charging_piece_of(member.pack, state.removed);
    }
}

double Bank::beyond(const Threshold& threshold, double power, bool at_trial_end) const {
    const std::size_t i = threshold.pack;
    switch (threshold.ending) {
        case Ending::cannot_be_delivered:
            return now_point_.possible ? -1.0 : 1.0;
        case Ending::cut_off:
            return power > 0.0 ? limits_.cut_off - now_point_.voltage : -1.0;
        case Ending::available_well_empty:
            return empty_level(members_[i].pack,
                               now_[i].current_at(now_point_.node) / members_[i].count) -
                   now_[i].rested;
        case Ending::pack_cut_off:
            return members_[i].pack.pack_cut_off -
                   (now_[i].rested - now_[i].current_at(now_point_.node) / members_[i].count *
                                         members_[i].pack.inner);
        case Ending::current_limit:
            return now_[i].current_at(now_point_.node) / members_[i].count -
                   members_[i].pack.current_above;
        case Ending::usable_limit:
            return total_removed(at_trial_end) - limits_.removed_above;
        case Ending::voltage_restored:
            return now_point_.voltage - limits_.voltage_above;
        case Ending::charge_restored:
            return limits_.removed_below - total_removed(at_trial_end);
        case Ending::full:
            return removed_before_ > limits_.filled_to
                       ? limits_.filled_to - total_removed(at_trial_end)
                       : -1.0;
        case Ending::pack_restored:
            return members_[i].restored_below -
                   (at_trial_end ? members_[i].removed : members_[i].state.removed);
        case Ending::completed:
            break;
    }
    return -1.0;
}

// What is met at the last point, the gravest first; of packs beyond their limit the one that is
// furthest beyond it.
Bank::Threshold Bank::first_met(double power, bool at_trial_end) const {
    if (!now_point_.possible) return {Ending::cannot_be_delivered, 0, 1.0};
    Threshold worst;
    double worst_ratio = 0.0;
    for (std::size_t i = 0; i < members_.size(); ++i) {
        const Member& member = members_[i];
        const double current = now_[i].current_at(now_point_.node) / member.count;
        if (!(current > no_current)) continue;
        if (current >= member.pack.current_above &&
            current > worst_ratio * member.pack.current_above) {
            worst_ratio = current / member.pack.current_above;
            worst = {Ending::current_limit, i, current - member.pack.current_above};
        }
        if (worst_ratio > 0.0) continue;
        // An empty well that is refilled faster than it is drawn from is no ending. method.md (5)
        const double head = at_trial_end ? member.head : member.state.head;
        const double empty = empty_level(member.pack, current);
        const bool refilled =
            current < member.pack.exchange * head && now_[i].rested > empty - step::beneath_empty;
        if (now_[i].rested <= empty && !refilled)
            worst = {Ending::available_well_empty, i, 0.0};
        else if (now_[i].rested - current * member.pack.inner <= member.pack.pack_cut_off)
            worst = {Ending::pack_cut_off, i, 0.0};
    }
    if (worst.ending != Ending::completed) return worst;
    for (std::size_t i = 0; i < members_.size(); ++i)
        if (members_[i].may_restore &&
            beyond({Ending::pack_restored, i}, power, at_trial_end) >= 0.0)
            return {Ending::pack_restored, i, 0.0};
    const auto met = [&](Ending ending) { return beyond({ending}, power, at_trial_end) >= 0.0; };
    if (power > 0.0) {
        if (now_point_.voltage <= limits_.cut_off) return {Ending::cut_off};
        if (met(Ending::usable_limit)) return {Ending::usable_limit};
    } else {
        if (met(Ending::voltage_restored)) return {Ending::voltage_restored};
        if (met(Ending::charge_restored)) return {Ending::charge_restored};
    }
    if (at_trial_end && met(Ending::full)) return {Ending::full};
    return {};
}

// Shortens the trial to the first threshold that it meets.
Bank::Threshold Bank::before_thresholds(double power) {
    point_now(power, true);
    Threshold found;
    const auto rounds = 2 * members_.size() + 8;
    for (std::size_t round = 0; round < rounds; ++round) {
        const Threshold met = first_met(power, true);
        if (met.ending == Ending::completed) break;
        if (met.ending == found.ending && met.pack == found.pack) break;
        found = met;
        const double longest = trial_time_;
        const auto at = [&](double time) {
            try_for(power, time);
            if (!trial_point_.possible) return 1.0;
            point_now(power, true);
            return beyond(met, power, true);
        };
        const double at_start = at(0.0);
        if (at_start >= 0.0) break;  // it begins here
        std::uintmax_t steps = 100;
        const auto bracket = boost::math::tools::toms748_solve(
            at, 0.0, longest, at_start, at(longest),
            [](double low, double high) { return high - low <= found_within; }, steps);
        (void)at(bracket.second);
        if (!trial_point_.possible) (void)at(bracket.first);
    }
    return found;
}

// What the charging of a member in the trial gasses and heats beyond its resistance is added to a
// sum.
void Bank::add_lost_in_charging(double& sum, std::size_t group) const {
    const Member& member = members_[group];
    const Prepared& pack = member.pack;
    const double rested = member.at_rest - member.per_ampere * member.into;
    const double charge = member.count * member.current * trial_time_;
    sum += member.count * (member.into - member.current) * trial_time_ * rested;
    // a full pack is driven above its voltage: that part gasses and heats
    if (trial_[group].flowing == Flowing::held)
        sum -= charge * (trial_point_.node - rested + member.current * pack.resistance);
    else if (pack.resists || pack.stands_above)
        sum -= charge * (risen(pack, member.current, member.added) + member.lag +
                         ((member.charging_at_rest - member.at_rest) -
                          (member.charging_per_ampere - member.per_ampere) * member.into));
}

// Where the energy of the trial goes. (16) to (20)
CalmEnergy Bank::spent() const {
    const double time = trial_time_;
    CalmEnergy energy{.at_bus = trial_point_.voltage * trial_point_.current * time,
                      .charge = trial_point_.current * time,
                      .in_paths = shared_ * trial_point_.current * trial_point_.current * time};
    for (std::size_t i = 0; i < members_.size(); ++i) {
        const Member& member = members_[i];
        const Prepared& pack = member.pack;
        const double charge = member.count * member.current * time;
        energy.in_inner += charge * member.current * pack.inner;
        energy.in_paths += charge * member.current * pack.path;
        if (charge < 0.0) add_lost_in_charging(energy.in_charging, i);
        const Trial trial{.time = time, .decayed = member.decayed, .into = member.into};
        if (pack.bound > 0.0)
            energy.between += member.count * lost_between_wells(pack, member.state, trial);
    }
    return energy;
}

// Adds up where the energy of the trial went, and moves the wells on.
void Bank::take(BankAdvanced& sum) {
    add(sum, spent());
    for (Member& member : members_) {
        WellState& state = member.state;
        state.removed = member.removed;
        state.head = member.head;
        state.available = member.available;
        state.bound = member.bound;
    }
}

void Bank::load_calm() {
    if (calm_is_current_) return;
    to_load_.clear();
    for (const Member& member : members_)
        to_load_.push_back({.pack = member.pack,
                            .state = member.state,
                            .count = member.count,
                            .gives = member.gives,
                            .takes = member.takes,
                            .restored_below = member.may_restore ? member.restored_below : -never});
    calm_.load(to_load_, shared_);
    calm_is_current_ = true;
}

void Bank::leave_calm() {
    for (std::size_t i = 0; i < members_.size(); ++i) {
        const auto wells = calm_.wells(i);
        WellState& state = members_[i].state;
        state.removed = wells.removed;
        state.head = wells.head;
        state.available = wells.available;
        state.bound = wells.bound;
    }
}

Calm& Bank::quiet() {
    load_calm();
    return calm_;
}

void Bank::went_on_quietly(double removed) {
    calm_.stands_elsewhere(removed);
    leave_calm();
}

// One substep in which nothing happens, or none.
bool Bank::calm_step(double power, double until, BankAdvanced& sum, double& passed) {
    const double left = until - passed;
    double time = std::min(left, length_);
    for (;;) {
        const auto tried = calm_.step(power, time, tolerance_, limits_);
        if (tried == Calm::Tried::disturbed) return false;
        const double moved = calm_.moved();
        if (tried == Calm::Tried::done) {
            length_ = moved > 0.0 ? time * std::min(4.0, 0.9 * tolerance_ / moved) : never;
            length_ = std::max(length_, shortest);
            break;
        }
        length_ = std::max(shortest, time * std::max(0.05, 0.9 * tolerance_ / moved));
        if (time <= shortest) return false;
        time = length_;
    }
    add(sum, calm_.energy());
    sum.largest = std::max(sum.largest, calm_.largest() * ampere);
    passed = time >= left ? until : passed + time;
    return true;
}

void Bank::bear(Member& member, double current) {
    member.most_given = std::max(member.most_given, current);
    member.most_received = std::max(member.most_received, -current);
}

// At the point asked for last.
void Bank::bear_now(bool calm) {
    for (std::size_t i = 0; i < members_.size(); ++i)
        bear(members_[i], calm ? calm_.current(i) : current_now(i));
}

Borne Bank::borne(std::size_t group) const {
    return {members_[group].most_given * ampere, members_[group].most_received * ampere};
}

// One substep in which something is met, or may be.
//   stuck   many before it have passed no time
//   gives   what ended it; none where there is no substep in which the power can be delivered
std::optional<Bank::Threshold> Bank::watched_step(double power, double left, bool stuck,
                                                  BankAdvanced& sum) {
    calm_is_current_ = false;
    removed_before_ = total_removed(false);
    if (!fit_to_tolerance(power, std::min({left, length_, stuck ? shortest : never})))
        return std::nullopt;
    knot_ = {};
    if (!stuck) {
        before_turns(power);
        before_knots(power);
    }
    const Threshold met = before_thresholds(power);
    take(sum);
    pass_knot();
    stand_on_charging_pieces();
    for (Member& member : members_) {
        sum.largest = std::max(sum.largest, std::abs(member.current) * ampere);
        if (trial_time_ > 0.0) bear(member, member.current);
    }
    return met;
}

// What the bank stands at before any time has passed.
Bank::Ended Bank::stands_at(double power) {
    load_calm();
    Ended now{.calm = calm_.stands(power, limits_)};
    if (now.calm) return now;
    point_now(power, false);
    now.met = first_met(power, false);
    return now;
}

// One substep after another until the time is over or something ends it.
void Bank::go_on(Ended& now, double power, double time, BankAdvanced& sum) {
    int idle = 0;
    bool ahead = false;  // the calm is further than the members
    while (now.met.ending == Ending::completed && now.passed < time) {
        const double left = time - now.passed;
        ++sum.substeps;
        load_calm();
        now.calm = calm_step(power, time, sum, now.passed);
        ahead = ahead || now.calm;
        if (now.calm) continue;
        if (ahead) leave_calm();
        ahead = false;
        const bool stuck = idle > static_cast<int>(2 * members_.size()) + 4;
        const auto met = watched_step(power, left, stuck, sum);
        if (!met) {
            point_now(power, false);
            now.met = {Ending::cannot_be_delivered, 0, 1.0};
            break;
        }
        now.met = *met;
        idle = trial_time_ > 0.0 ? 0 : idle + 1;
        now.passed = trial_time_ >= left ? time : now.passed + trial_time_;
    }
    if (ahead) leave_calm();
}

// The bus as it stands at the end.
void Bank::show(BankAdvanced& sum, const Ended& end, double power) const {
    if (end.calm) {
        const CalmPoint& point = calm_.point();
        sum.voltage = point.voltage * volt;
        sum.current = point.current * ampere;
        sum.at_pack = calm_.current(end.met.pack) * ampere;
        return;
    }
    sum.voltage = now_point_.voltage * volt;
    sum.current = now_point_.current * ampere;
    sum.at_pack = current_now(end.met.pack) * ampere;
    for (std::size_t i = 0; i < members_.size(); ++i)
        sum.largest = std::max(sum.largest, std::abs(current_now(i)) * ampere);
    if (end.met.ending == Ending::cannot_be_delivered)
        sum.at_most = std::min(power, now_point_.voltage * now_point_.current) * watt;
}

BankAdvanced Bank::advance(const BankStops& stops, Power asked, Duration lasts) {
    const double power = asked / watt;
    const double time = lasts / second;
    assert(time >= 0.0 && std::isfinite(time) && std::isfinite(power));
    limits_ = limits_of(stops);
    length_ = never;  // what comes does not depend on how the time before was cut
    BankAdvanced sum;
    Ended end = stands_at(power);
    if (end.met.ending == Ending::completed && time > 0.0) bear_now(end.calm);
    go_on(end, power, time, sum);
    if (end.passed > 0.0) bear_now(end.calm);
    sum.time = end.passed * second;
    sum.ending = end.met.ending;
    sum.pack = end.met.pack;
    if (power < 0.0)
        sum.energy.unaccepted =
            std::max(0.0, -power * end.passed - sum.energy.accepted / joule) * joule;
    show(sum, end, power);
    return sum;
}

}  // namespace battery
