#include "battery/advance.hpp"

#include <cassert>

#include <boost/math/tools/toms748_solve.hpp>

namespace battery {

using namespace units;

// A fuller well asks for less current, of which less is locked: one level where the two meet, or
// where what is locked leaps past it.
double empty_level(const Prepared& pack, AtPower demand) {
    const auto voltage_at = [&](double fill) {
        return pack.open_circuit->voltage(StateOfCharge(fill)) / volt;
    };
    const auto locked_at = [&](double fill) {
        const Drawn now = drawn(pack, demand, voltage_at(fill), pack.resistance);
        return now.possible ? pack.locked.at_amperes(now.current) : pack.locked.most();
    };
    double low = pack.locked.least();
    double high = pack.locked.most();
    if (locked_at(low) <= low) return voltage_at(low);
    constexpr double close = 1e-12;
    while (high - low > close) {
        const double middle = 0.5 * (low + high);
        (locked_at(middle) > middle ? low : high) = middle;
    }
    return voltage_at(high);
}

namespace advance_detail {

namespace {

using step::found_within;
using step::no_longer;
using step::shortest;

// The charging voltage without current from which absorption holds the current of a pack whose
// charging has a curve of its own; minus infinity where it does from the start.
double held_from(const Prepared& pack, AtCurrent demand) {
    const double most = std::max(demand.amount, pack.charge_floor);
    return pack.stands_above && most < 0.0 && std::isfinite(pack.absorption)
               ? pack.absorption + pack.resistance * most
               : std::numeric_limits<double>::infinity();
}
double held_from(const Prepared& pack, AtPower demand) {
    return held_from(pack, AtCurrent{demand.amount / pack.absorption});
}

// One substep after another until the time is over or something ends it.
template <class Demand>
class Substeps {
  public:
    Substeps(const Prepared& pack, Demand demand, double time, Course& course)
        : pack_(pack),
          demand_(demand),
          time_(time),
          course_(course),
          fall_(falling_level(pack, demand)),
          rise_(rising_level(pack, demand)),
          held_from_(held_from(pack, demand)) {}

    void run() {
        double length = time_;
        while (met_at_once(), course_.ending == Ending::completed && course_.time < time_) {
            const double left = std::min(time_ - course_.time, refilling_);
            const double before = course_.state.removed;
            ++course_.substeps;
            if (brimming())
                keep_full(left);
            else
                length = step(std::min(left, length));
            // also where a piece ends just there
            if (course_.ending == Ending::completed && before > pack_.filled_to &&
                course_.state.removed <= pack_.filled_to)
                course_.ending = Ending::full;
        }
    }

  private:
    const Prepared& pack_;
    Demand demand_;
    double time_;
    Course& course_;
    Level fall_;
    double rise_;
    double held_from_;
    int idle_steps_ = 0;  // in a row, each without time passing
    double refilling_ = std::numeric_limits<double>::infinity();  // s, from an empty well on

    const Piece& available_piece() const {
        return pack_.open_circuit->piece(course_.state.available_piece);
    }
    const Piece& bound_piece() const {
        return pack_.open_circuit->piece(course_.state.bound_piece);
    }
    double rested() const { return rested_voltage(pack_, course_.state); }
    bool charging() const { return demand_.amount < 0.0; }
    bool rising() const { return rises(pack_, demand_); }

    // The threshold the present state is on or beyond, if any. A power that cannot be had comes
    // first, since then no voltage is there to compare.
    void met_at_once() {
        const double voltage = rested();
        const double removed = course_.state.removed;
        refilling_ = std::numeric_limits<double>::infinity();
        if (demand_.amount > 0.0) {
            const Drawn now = drawn(pack_, demand_, voltage, pack_.resistance);
            if (!now.possible)
                course_.ending = Ending::cannot_be_delivered;
            else if (voltage <= fall_.voltage && !refills(voltage, now.current))
                course_.ending = fall_.ending;
            else if (removed >= pack_.removed_above)
                course_.ending = Ending::usable_limit;
            return;
        }
        if ((rising() || voltage >= rise_) && voltage_now() >= pack_.voltage_above)
            course_.ending = Ending::voltage_restored;
        else if (charging() && removed <= pack_.removed_below)
            course_.ending = Ending::charge_restored;
    }

    // Whether an empty well is refilled faster than it is drawn from: then it is no ending, and
    // for half of the time that it rises nothing need be looked for below. method.md (5)
    bool refills(double voltage, double current) {
        if (fall_.ending != Ending::available_well_empty || !(pack_.exchange > 0.0)) return false;
        if (voltage < fall_.voltage - step::beneath_empty) return false;
        const double rising = pack_.rate * pack_.bound *
                              (course_.state.head - current * pack_.head_gain / pack_.rate) /
                              current;
        if (!(rising > 1.0)) return false;
        refilling_ = 0.5 * std::log(rising) / pack_.rate;
        if (refilling_ > step::least_refilling) return true;
        refilling_ = std::numeric_limits<double>::infinity();
        return false;
    }

    // At the far end while resting or charging; a hair of rounding is forgiven.
    double voltage_now() const {
        return now_at(pack_, demand_, course_.state, rested()).voltage + step::restored;
    }
    // Likewise at the end of a trial, the available well not being full.
    double voltage_after(const Trial& trial) const {
        WellState there = course_.state;
        there.removed = trial.removed;
        there.available = trial.available;
        const Drawn now = offered_now(pack_, demand_, there, rested_voltage(pack_, there));
        const double alone = charging_voltage(pack_, there);
        return std::min(pack_.absorption,
                        alone - now.current * pack_.resistance +
                            risen(pack_, now.current, added_at(pack_, there.removed)));
    }

    // The available well is full and more is offered than seeps on into the bound one.
    bool brimming() const {
        if (!charging() || course_.state.available < brim) return false;
        const Drawn offered = offered_now(pack_, demand_, course_.state, rested());
        return coulombic(pack_, course_.state) * offered.current <=
               seeping(pack_, course_.state.head);
    }

    struct Full;
    void keep_full(double left);
    double head_when_full() const;
    void until_charged(Full& full) const;
    void until_next_efficiency(Full& full) const;
    void while_resistance_holds(Full& full) const;
    void flow_while_full(const Full& full, const Decay& decayed);
    void stand_when_full(const Full& full, double left, const Decay& decayed);
    double step(double length);
    double within_tolerance(double length, Trial& trial) const;
    void before_turn(Trial& trial) const;
    struct Moves;
    void before_crossings(Trial& trial);
    void before_knots(Trial& trial, Moves& moves);
    void before_voltages(Trial& trial, Moves& moves);
    void before_charges(Trial& trial, Moves& moves);
    template <class Beyond>
    void before(Trial& trial, Moves& moves, Moves then, Ending ending, Beyond beyond);
    template <class Beyond>
    bool shorten_to(Trial& trial, Beyond beyond) const;
    void take(const Trial& trial);
};

// A stretch in which the available well stays full: the head, and with it the current, dies away.
// What ends it: a threshold, the end of the bound well's piece or of the one of the efficiency of
// charging.
template <class Demand>
struct Substeps<Demand>::Full {
    double head = 0.0;  // at the start
    double rate = 0.0;  // with which it dies away
    double length = 0.0;
    Ending ending = Ending::completed;
    bool crosses = false;  // the bound well comes to its next piece
    bool at_edge = false;  // both wells come to the next piece of the efficiency

    void end_at(double wanted_head, Ending reason) {
        if (!(wanted_head < 0.0) || wanted_head <= head) return;
        const double instant = std::log(head / wanted_head) / rate;
        if (instant < length) {
            length = instant;
            ending = reason;
        }
    }
};

// What rounding left above the brim goes to the head difference: charge is not made or lost.
template <class Demand>
double Substeps<Demand>::head_when_full() const {
    return pack_.bound > 0.0 ? std::min(0.0, -course_.state.removed / pack_.bound) : 0.0;
}

template <class Demand>
void Substeps<Demand>::until_charged(Full& full) const {
    const double whole = full.length;
    if (pack_.bound > 0.0 && full.rate > 0.0 && full.head < 0.0) {
        const bool on_last = course_.state.bound_piece + 1 == pack_.open_circuit->pieces();
        if (!on_last) full.end_at((bound_piece().high - 1.0) * pack_.total, Ending::completed);
        full.end_at(-pack_.removed_below / pack_.bound, Ending::charge_restored);
        full.end_at(-pack_.filled_to / pack_.bound, Ending::full);
    }
    full.crosses = full.ending == Ending::completed && full.length < whole;
}

// The fuller the pack the less is stored of a current: on to the next piece, if it comes first.
template <class Demand>
void Substeps<Demand>::until_next_efficiency(Full& full) const {
    const double edge = next_charging_piece(pack_, course_.state);
    if (!(full.head < 0.0) || !std::isfinite(edge)) return;
    const double until = full.rate > 0.0
                             ? std::log(std::max(1.0, full.head * pack_.bound / -edge)) / full.rate
                             : full.length;
    if (!(until < full.length)) return;
    full.length = until;
    full.ending = Ending::completed;
    full.crosses = false;
    full.at_edge = true;
}

// What is offered falls as the charging resistance rises: whether it is still too much is asked
// again before that shows.
template <class Demand>
void Substeps<Demand>::while_resistance_holds(Full& full) const {
    if (!pack_.resists || !(full.rate > 0.0)) return;
    const double offered = -offered_now(pack_, demand_, course_.state, rested()).current;
    const double from = added_at(pack_, course_.state.removed).up_to_knee.value;
    const auto drift = [&] {
        const double removed = -pack_.bound * full.head * std::exp(-full.rate * full.length);
        return offered * (added_at(pack_, removed).up_to_knee.value - from);
    };
    for (double rise = drift(); rise > pack_.drift_tolerance && full.length > shortest;
         rise = drift()) {
        full.length =
            std::max(shortest, full.length * std::max(0.05, 0.9 * pack_.drift_tolerance / rise));
        full.ending = Ending::completed;
        full.crosses = full.at_edge = false;
    }
}

template <class Demand>
void Substeps<Demand>::flow_while_full(const Full& full, const Decay& decayed) {
    const WellState& state = course_.state;
    const double voltage = rested();
    const double once = full.length * decayed.once;  // integral of the decay
    const double squared =
        full.length * decayed.once * 0.5 * (1.0 + decayed.left);  // of its square
    const double into = pack_.exchange * full.head;               // at the start, negative
    const double current = into / coulombic(pack_, state);
    const double heats = current * current * pack_.resistance * squared;
    // what drives a full pack above its voltage gasses, and heats
    const double driven =
        rising()
            ? std::max(0.0, -current * once *
                                    (now_at(pack_, demand_, state, voltage).voltage - voltage) -
                                heats)
            : 0.0;
    course_.flow.accepted += -current * voltage * once + heats + driven;
    course_.flow.in_resistance += heats;
    course_.flow.in_charging += (into - current) * voltage * once + driven;
    course_.flow.charge_in -= current * once;
    course_.taken = std::max(course_.taken, rising() ? -current : 0.0);
    // the bound well stands at 1 + head / total
    const Piece& bound = bound_piece();
    course_.flow.between_wells += pack_.exchange * full.head *
                                  ((bound.at_zero + bound.slope - voltage) * once +
                                   bound.slope * full.head * pack_.per_total * squared);
}

template <class Demand>
void Substeps<Demand>::stand_when_full(const Full& full, double left, const Decay& decayed) {
    WellState& state = course_.state;
    const double edge = next_charging_piece(pack_, state);
    state.head = full.head * decayed.left;
    if (full.head < 0.0) state.removed = -pack_.bound * state.head;
    state.available = 1.0;
    state.bound = bound_of(pack_, state.removed, state.head);
    if (full.crosses) ++state.bound_piece;
    if (full.at_edge) state.removed = edge;
    state.charging_piece = charging_piece_of(pack_, state.removed);
    // rounding must not leave the state a hair short of what ended the time
    if (full.ending == Ending::charge_restored)
        state.removed = std::min(state.removed, pack_.removed_below);
    if (full.ending == Ending::full) state.removed = std::min(state.removed, pack_.filled_to);
    course_.time = full.length < left ? course_.time + full.length : time_;
    course_.ending = full.ending;
}

// method.md (9): the current dies away with the rate k c while the available well stays full.
template <class Demand>
void Substeps<Demand>::keep_full(double left) {
    Full full{.head = head_when_full(), .rate = pack_.rate * pack_.width, .length = left};
    until_charged(full);
    until_next_efficiency(full);
    while_resistance_holds(full);
    const Decay decayed = decay(full.rate * full.length);
    flow_while_full(full, decayed);
    stand_when_full(full, left, decayed);
    idle_steps_ = 0;
}

// Cuts the trial until it is possible and the voltage changes by no more than the tolerance.
//   gives  the length that the next substep may begin with
template <class Demand>
double Substeps<Demand>::within_tolerance(double length, Trial& trial) const {
    const double slope = available_piece().slope + (charging() ? available_piece().steeper : 0.0);
    const double tolerance = tolerance_on(pack_, available_piece(), charging());
    for (;;) {
        trial = try_for(pack_, course_.state, demand_, length);
        // Where a full well runs down over a long time, its steep piece reaches far below any
        // voltage.
        if (!trial.possible || trial.at_rest < 0.5 * rested()) {
            if (length < no_longer) return length;
            length *= 0.5;
            continue;
        }
        const double filled = std::abs(trial.available - course_.state.available);
        const double change =
            std::max(counted_change(slope * filled * trial.at_rest / trial.root, filled, tolerance,
                                    pack_.fill_tolerance, !charging()),
                     trial.drift * (tolerance / pack_.drift_tolerance));
        if (change <= tolerance || length <= shortest)
            return change > 0.0 ? length * std::min(4.0, 0.9 * tolerance / change)
                                : std::numeric_limits<double>::infinity();
        length = std::max(shortest, length * std::max(0.05, 0.9 * tolerance / change));
    }
}

// Ends the trial where a well turns round, if it would leave its piece, pass a threshold or exceed
// the tolerance at the turn. What is left beyond the turn is the next substep's.
template <class Demand>
void Substeps<Demand>::before_turn(Trial& trial) const {
    const WellState& state = course_.state;
    if (pack_.bound == 0.0 || pack_.rate == 0.0) return;
    const double settled = trial.into * pack_.head_gain / pack_.rate;  // head in the end
    const auto instant_of = [&](double head) {
        const double ratio = (state.head - settled) / (head - settled);
        return ratio > 1.0 ? std::log(ratio) / pack_.rate : 0.0;
    };
    const auto cut_at = [&](double instant) {
        if (instant > shortest && instant < trial.time)
            trial = try_for(pack_, state, demand_, instant);
    };
    if (shortfall_rise(pack_, state.head, trial.into) *
            shortfall_rise(pack_, trial.head, trial.into) <
        0.0) {
        const double instant = instant_of(settled / pack_.bound);
        const double removed = state.removed + trial.into * instant;
        const double extreme = available_of(pack_, removed, settled / pack_.bound);
        const double voltage = available_piece().at_zero + available_piece().slope * extreme;
        const bool restores = rising() && pack_.voltage_above < pack_.absorption;
        const bool harmless = on_piece(available_piece(), extreme) && voltage > fall_.voltage &&
                              voltage < rise_ && !restores &&
                              std::abs(voltage - rested()) * trial.at_rest <=
                                  tolerance_on(pack_, available_piece(), charging()) * trial.root;
        if (!harmless) cut_at(instant);
    }
    if (state.head * trial.head < 0.0) {
        const double instant = instant_of(0.0);
        if (!on_piece(bound_piece(), bound_of(pack_, state.removed + trial.into * instant, 0.0)))
            cut_at(instant);
    }
}

// Shortens the trial to the first instant at which `beyond` turns from below to at least zero.
//   gives  whether it does within the trial
template <class Demand>
template <class Beyond>
bool Substeps<Demand>::shorten_to(Trial& trial, Beyond beyond) const {
    const auto after_time = [&](double length) {
        const Trial there = try_for(pack_, course_.state, demand_, length);
        return there.possible ? beyond(there) : std::numeric_limits<double>::max();
    };
    const double at_end = beyond(trial);
    if (!(at_end > 0.0)) return false;
    double from = 0.0;
    double at_start = after_time(from);
    if (at_start >= 0.0) {  // on the boundary already: does it leave, or come back later?
        from = std::min(shortest, 0.5 * trial.time);
        at_start = after_time(from);
        if (at_start >= 0.0) {
            trial = try_for(pack_, course_.state, demand_, 0.0);
            return true;
        }
    }
    std::uintmax_t steps = 100;
    const double close = std::max(found_within, 4e-16 * trial.time);
    const auto bracket = boost::math::tools::toms748_solve(
        after_time, from, trial.time, at_start, at_end,
        [&](double low, double high) { return high - low <= close; }, steps);
    trial = try_for(pack_, course_.state, demand_, bracket.second);
    return true;
}

// The pieces by which the wells move on at the end of a trial.
template <class Demand>
struct Substeps<Demand>::Moves {
    int available = 0;
    int bound = 0;
};

// Ends the trial where `beyond` turns to at least zero, if it does: with that ending and on those
// pieces.
template <class Demand>
template <class Beyond>
void Substeps<Demand>::before(Trial& trial, Moves& moves, Moves then, Ending ending,
                              Beyond beyond) {
    if (!shorten_to(trial, beyond)) return;
    moves = then;
    course_.ending = ending;
}

// A piece is left a hair beyond its end, so that rounding cannot lead back over the knot by which
// it was entered: whoever comes back has moved.
template <class Demand>
void Substeps<Demand>::before_knots(Trial& trial, Moves& moves) {
    const WellState& state = course_.state;
    const Piece& available = available_piece();
    const Piece& bound = bound_piece();
    const int last = pack_.open_circuit->pieces() - 1;
    if (state.available_piece > 0)
        before(trial, moves, {.available = -1}, Ending::completed,
               [&](const Trial& t) { return available.low - slack - t.available; });
    if (state.available_piece < last)
        before(trial, moves, {.available = 1}, Ending::completed,
               [&](const Trial& t) { return t.available - (available.high + slack); });
    if (state.available_piece == last && charging())
        before(trial, moves, {}, Ending::completed,
               [&](const Trial& t) { return t.available - 1.0; });
    if (!(pack_.bound > 0.0)) return;
    if (state.bound_piece > 0)
        before(trial, moves, {.bound = -1}, Ending::completed,
               [&](const Trial& t) { return bound.low - slack - t.bound; });
    if (state.bound_piece < last)
        before(trial, moves, {.bound = 1}, Ending::completed,
               [&](const Trial& t) { return t.bound - (bound.high + slack); });
}

template <class Demand>
void Substeps<Demand>::before_voltages(Trial& trial, Moves& moves) {
    const Piece& available = available_piece();
    const auto voltage = [&](const Trial& there) {
        return available.at_zero + available.slope * there.available;
    };
    if (!std::isfinite(refilling_))
        before(trial, moves, {}, fall_.ending,
               [&](const Trial& t) { return fall_.voltage - voltage(t); });
    if (rising() && pack_.voltage_above <= pack_.absorption && pack_.charge_floor < 0.0)
        before(trial, moves, {}, Ending::voltage_restored,
               [&](const Trial& t) { return voltage_after(t) - pack_.voltage_above; });
    else
        before(trial, moves, {}, Ending::voltage_restored,
               [&](const Trial& t) { return voltage(t) - rise_; });
}

// And where absorption begins to hold the current of who charges above the rested voltage.
template <class Demand>
void Substeps<Demand>::before_charges(Trial& trial, Moves& moves) {
    const WellState& state = course_.state;
    if (trial.into > 0.0)
        before(trial, moves, {}, Ending::usable_limit,
               [&](const Trial& t) { return t.removed - pack_.removed_above; });
    if (charging_voltage(pack_, state) < held_from_)
        before(trial, moves, {}, Ending::completed, [&](const Trial& t) {
            const Piece& piece = available_piece();
            return (piece.at_zero + piece.above_at_zero) +
                   (piece.slope + piece.steeper) * t.available - held_from_;
        });
    if (!(trial.into < 0.0)) return;
    before(trial, moves, {}, Ending::charge_restored,
           [&](const Trial& t) { return pack_.removed_below - t.removed; });
    if (state.removed > pack_.filled_to)
        before(trial, moves, {}, Ending::full,
               [&](const Trial& t) { return pack_.filled_to - t.removed; });
    const double edge = next_charging_piece(pack_, state);
    before(trial, moves, {}, Ending::completed, [&](const Trial& t) { return edge - t.removed; });
}

// Ends the trial at the first knot or threshold that it meets, and says which.
template <class Demand>
void Substeps<Demand>::before_crossings(Trial& trial) {
    Moves moves;
    const bool stuck = idle_steps_ > 1;
    if (!stuck) before_knots(trial, moves);
    before_voltages(trial, moves);
    before_charges(trial, moves);
    take(trial);
    WellState& state = course_.state;
    state.available_piece += moves.available;
    state.bound_piece = pack_.bound > 0.0 ? state.bound_piece + moves.bound : state.available_piece;
}

template <class Demand>
void Substeps<Demand>::take(const Trial& trial) {
    WellState& state = course_.state;
    add(course_.flow, pack_, state, trial);
    state.removed = trial.removed;
    state.head = trial.head;
    state.available = trial.available;
    state.bound = trial.bound;
    state.charging_piece = charging_piece_of(pack_, state.removed);
    if (rising()) course_.taken = std::max(course_.taken, -trial.current);
    const bool finishes = trial.time >= time_ - course_.time;
    course_.time = finishes ? time_ : course_.time + trial.time;
    course_.lowest = std::min(course_.lowest, rested());
    idle_steps_ = trial.time > 0.0 ? 0 : idle_steps_ + 1;
}

template <class Demand>
double Substeps<Demand>::step(double length) {
    Trial trial;
    if (idle_steps_ > 1) length = std::min(length, shortest);
    const double next = within_tolerance(length, trial);
    if (!trial.possible) {
        course_.ending = Ending::cannot_be_delivered;
        return length;
    }
    before_turn(trial);
    before_crossings(trial);
    return std::max(next, shortest);
}

}  // namespace

template <class Demand>
void run_in_substeps(const Prepared& pack, Demand demand, double time, Course& course) {
    assert(time >= 0.0 && std::isfinite(time) && std::isfinite(demand.amount));
    Substeps<Demand>(pack, demand, time, course).run();
}

template void run_in_substeps(const Prepared&, AtPower, double, Course&);
template void run_in_substeps(const Prepared&, AtCurrent, double, Course&);

}  // namespace advance_detail

OperatingPoint operating_point(const Prepared& pack, const Wells& wells, Power power) {
    const WellState state =
        state_of(pack, wells.removed / coulomb, wells.head_difference / coulomb);
    const double rested = rested_voltage(pack, state);
    auto now = advance_detail::now_at(pack, AtPower{power / watt}, state, rested);
    if (!now.possible) now = advance_detail::greatest(pack, rested);
    return {
        .voltage = now.voltage * volt, .current = now.current * ampere, .possible = now.possible};
}

std::optional<Power> largest_power(const Prepared& pack, const Wells& wells) {
    if (pack.resistance == 0.0) return std::nullopt;
    const WellState state =
        state_of(pack, wells.removed / coulomb, wells.head_difference / coulomb);
    const double rested = rested_voltage(pack, state);
    return rested * rested / (4.0 * pack.resistance) * watt;
}

}  // namespace battery
