#include "starting/settle.hpp"

#include <algorithm>
#include <array>

#include "units/said.hpp"

namespace starting {

using namespace units;
using words::Said;
using words::said;

namespace {

void fix(auto& ends, End end) {
    ends = exactly(at(ends, end));
}

bool has_plate_current(const StartingMotor& motor) {
    return motor.locked.evidence.front().from == motor::Evidence::plate_current;
}

void take_demand_anew(StartingMotor& motor, const InverterSide& inverter) {
    motor.demand = motor::demand_at(motor.locked, inverter.model.output_voltage);
}

bool fix_locked_current(StartQuestion& question, End end) {
    bool open = false;
    for (auto& motor : question.motors) {
        if (has_plate_current(motor)) continue;
        open = true;
        fix(motor.locked.current, end);
        take_demand_anew(motor, question.inverter);
    }
    return open;
}

bool fix_power_factor(StartQuestion& question, End end) {
    for (auto& motor : question.motors) {
        fix(motor.locked.power_factor, end);
        take_demand_anew(motor, question.inverter);
    }
    return true;
}

bool fix_surge_time(InverterSide& inverter, End end) {
    if (inverter.overload.duration_known) return false;
    fix(inverter.overload.curve, opposite(end));
    inverter.overload.duration_known = true;
    return true;
}

bool fix_pulse(DirectSource& source, End end) {
    bool open = false;
    for (auto& branch : source.branches) {
        if (!branch.limits.pulse.empty() || !branch.limits.continuous) continue;
        open = true;
        constexpr Duration long_enough = 10.0 * second;
        const double times = end == End::low ? 3.0 : end == End::likely ? 2.0 : 1.0;
        branch.limits.pulse.push_back({times * *branch.limits.continuous, long_enough});
    }
    return open;
}

bool fix_resistance(DirectSource& source, End end) {
    bool open = false;
    for (auto& branch : source.branches) {
        open = open || branch.path.low() < branch.path.high();
        fix(branch.path, end);
    }
    return open;
}

bool fix_other_loads(Background& others, End end) {
    const bool open = others.real.low < others.real.high || others.direct.low < others.direct.high;
    fix(others.real, end);
    fix(others.reactive, end);
    fix(others.direct, end);
    return open;
}

// Whether the datum is still open; then it is fixed at one end, good (low) or bad (high).
bool fix_datum(StartQuestion& question, Datum datum, End end) {
    auto& inverter = question.inverter;
    switch (datum) {
        case Datum::locked_rotor_current:
            return fix_locked_current(question, end);
        case Datum::start_power_factor:
            return fix_power_factor(question, end);
        case Datum::surge_rating:
            fix(inverter.surge, end);
            return !inverter.surge_stated;
        case Datum::surge_duration:
            return fix_surge_time(inverter, end);
        case Datum::pack_pulse:
            return fix_pulse(question.source, end);
        case Datum::pack_resistance:
            return fix_resistance(question.source, end);
        case Datum::cutoff_voltage:
            fix(inverter.cutoff, end);
            return !inverter.cutoff_stated;
        case Datum::cutoff_delay:
            fix(inverter.cutoff_delay, end);
            return !inverter.delay_stated;
        case Datum::other_loads:
            return fix_other_loads(question.background, end);
    }
    return false;
}

Said words_for(Datum datum, const StartQuestion& question) {
    const Said motor =
        question.motors.empty() ? said<"motor">() : Said(question.motors.front().name);
    switch (datum) {
        case Datum::locked_rotor_current:
            return said<"read the locked-rotor current (LRA) on the plate of the {motor}">(motor);
        case Datum::start_power_factor:
            return said<"measure the power factor of the {motor} while it starts">(motor);
        case Datum::surge_rating:
            return said<"find the surge rating of the inverter in its manual">();
        case Datum::surge_duration:
            return said<"find in the inverter's manual how long it holds its surge">();
        case Datum::pack_pulse:
            return said<
                "find on the pack's sheet what current its protection lets through for a "
                "second">();
        case Datum::pack_resistance:
            return said<
                "measure the resistance of a pack: its voltage before and under a known load">();
        case Datum::cutoff_voltage:
            return said<"find the low-voltage cut-off of the inverter in its manual">();
        case Datum::cutoff_delay:
            return said<"find how long the inverter waits below its low-voltage cut-off">();
        case Datum::other_loads:
            return said<"meter what else is on at that moment">();
    }
    return {};
}

}  // namespace

Judgement judge_start(const StartQuestion& question) {
    return judge_start(question.motors, question.background, question.inverter, question.source);
}

std::optional<Settling> settle_with(const StartQuestion& question) {
    constexpr std::array by_ease{
        Datum::locked_rotor_current, Datum::surge_rating,   Datum::surge_duration,
        Datum::pack_pulse,           Datum::cutoff_voltage, Datum::cutoff_delay,
        Datum::pack_resistance,      Datum::other_loads,    Datum::start_power_factor};
    std::optional<Settling> best;
    for (const Datum datum : by_ease) {
        StartQuestion good = question;
        StartQuestion bad = question;
        if (!fix_datum(good, datum, End::low) || !fix_datum(bad, datum, End::high)) continue;
        Settling found{.datum = datum,
                       .find = words_for(datum, question),
                       .good = judge_start(good).verdict,
                       .bad = judge_start(bad).verdict};
        const bool may =
            found.good != StartVerdict::marginal || found.bad != StartVerdict::marginal;
        found.either_way =
            found.good != StartVerdict::marginal && found.bad != StartVerdict::marginal;
        if (found.either_way) return found;
        if (may && !best) best = std::move(found);
    }
    return best;
}

}  // namespace starting
