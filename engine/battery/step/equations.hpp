// The equations of a pack's step, method.md (1) to (33): each over any real, one or many abreast,
// and each over dimensions, so that what is not of the dimension asked for does not compile. A
// pack alone, a bank, its quiet substeps and the strides of a sweep all step by these.
// The order of the operations is part of them: every width gives the same bits.
#pragma once

#include "battery/step/dimensioned.hpp"

#define CANDLEMARK_EQUATION [[nodiscard, gnu::always_inline]] inline

namespace battery::step {

// ---- the wells

// (2); `bound` is the bound well's width
CANDLEMARK_EQUATION Number auto available_fill(In<Coulombs> auto removed, In<Coulombs> auto head,
                                               Number auto bound, In<PerCoulomb> auto per_total) {
    return 1.0 - (removed + bound * head) * per_total;
}
// (2); `width` is the available well's
CANDLEMARK_EQUATION Number auto bound_fill(In<Coulombs> auto removed, In<Coulombs> auto head,
                                           Number auto width, In<PerCoulomb> auto per_total) {
    return 1.0 - (removed - width * head) * per_total;
}
// (2) with one well
CANDLEMARK_EQUATION Number auto whole_fill(In<Coulombs> auto removed,
                                           In<PerCoulomb> auto per_total) {
    return 1.0 - removed * per_total;
}
// (3)
CANDLEMARK_EQUATION In<Coulombs> auto removed_after(In<Coulombs> auto removed,
                                                    In<Amperes> auto into, In<Seconds> auto time) {
    return removed + into * time;
}
// (3); `left` and `once` of Decay
CANDLEMARK_EQUATION In<Coulombs> auto head_after(In<Coulombs> auto head, Number auto left,
                                                 In<Amperes> auto into, Number auto head_gain,
                                                 In<Seconds> auto time, Number auto once) {
    return head * left + into * head_gain * time * once;
}
// (1)
CANDLEMARK_EQUATION In<Amperes> auto head_rise(In<Amperes> auto into, Number auto head_gain,
                                               In<PerSecond> auto rate, In<Coulombs> auto head) {
    return into * head_gain - rate * head;
}
// of the charge by which the available well is short of full
CANDLEMARK_EQUATION In<Amperes> auto shortfall_rise(In<Amperes> auto into, Number auto bound,
                                                    In<Amperes> auto head_rises) {
    return into + bound * head_rises;
}

// ---- the voltage

CANDLEMARK_EQUATION In<Volts> auto voltage_on(In<Volts> auto at_zero, In<Volts> auto slope,
                                              Number auto fill) {
    return at_zero + slope * fill;
}
// (12), of the available well, were there no current
CANDLEMARK_EQUATION Number auto mean_fill(In<Coulombs> auto removed, In<Coulombs> auto head,
                                          Number auto bound, Number auto once,
                                          In<PerCoulomb> auto per_total) {
    return 1.0 - (removed + bound * head * once) * per_total;
}
// (12), that each ampere lowers it by
CANDLEMARK_EQUATION In<PerAmpere> auto fill_per_ampere(In<Seconds> auto time,
                                                       Number auto bound_gain, Number auto twice,
                                                       In<PerCoulomb> auto per_total) {
    return time * (0.5 + bound_gain * twice) * per_total;
}
// (12)
CANDLEMARK_EQUATION In<Ohms> auto volts_per_ampere(In<Volts> auto slope, In<PerAmpere> auto fills) {
    return slope * fills;
}
CANDLEMARK_EQUATION In<Volts> auto mean_rested(In<Volts> auto at_rest, In<Ohms> auto per_ampere,
                                               In<Amperes> auto into) {
    return at_rest - per_ampere * into;
}

// ---- the current

CANDLEMARK_EQUATION In<Ohms> auto resistance_of_step(In<Ohms> auto resistance, Number auto arriving,
                                                     In<Ohms> auto per_ampere) {
    return resistance + arriving * per_ampere;
}
// (13), the square of the root
CANDLEMARK_EQUATION In<SquareVolts> auto under_root(In<Volts> auto voltage,
                                                    In<Ohms> auto resistance,
                                                    In<Watts> auto power) {
    return voltage * voltage - 4.0 * resistance * power;
}
// (13)
CANDLEMARK_EQUATION In<Amperes> auto current_of(In<Watts> auto power, In<Volts> auto voltage,
                                                In<Volts> auto root) {
    return 2.0 * power / (voltage + root);
}
// The current at which absorption holds its voltage, where the rested voltage is below it: then
// negative, and minus infinity without resistance.
CANDLEMARK_EQUATION In<Amperes> auto absorbed(In<Volts> auto voltage, In<Volts> auto absorption,
                                              In<Ohms> auto resistance) {
    return (voltage - absorption) / resistance;
}
// (20a); `rises` is by how much an ampere for the whole step lifts the voltage, `done` the part of
// the way that is behind at its end
CANDLEMARK_EQUATION In<Amperes> auto settling(In<Volts> auto voltage, In<Volts> auto absorption,
                                              In<Ohms> auto rises, Number auto done) {
    return (voltage - absorption) / rises * done;
}
// (60), of a pack that takes charge; `per_short` is one over 1.001 - charge, the charge from 0 to 1
CANDLEMARK_EQUATION In<Ohms> auto charging_resistance(In<Ohms> auto when_empty, Number auto rise,
                                                      Number auto charge, Number auto per_short) {
    return when_empty * (1.0 + rise * charge * per_short);
}
// by which it rises for each unit of charge
CANDLEMARK_EQUATION In<Ohms> auto charging_slope(In<Ohms> auto when_empty, Number auto rise,
                                                 Number auto per_short) {
    return 1.001 * rise * per_short * per_short * when_empty;
}
// (61), the voltage at which a stretch of the charging voltage ends, and from which the next begins
CANDLEMARK_EQUATION In<Volts> auto voltage_at_knee(In<Volts> auto voltage, In<Ohms> auto resistance,
                                                   In<Amperes> auto knee) {
    return voltage + resistance * knee;
}
CANDLEMARK_EQUATION In<Volts> auto voltage_beyond(In<Volts> auto at_knee, In<Ohms> auto resistance,
                                                  In<Amperes> auto knee) {
    return at_knee - resistance * knee;
}
// (61), the power at which it ends
CANDLEMARK_EQUATION In<Watts> auto power_at_knee(In<Volts> auto at_knee, In<Amperes> auto knee) {
    return at_knee * knee;
}
// (62), above the rested voltage and the inner resistance
CANDLEMARK_EQUATION In<Volts> auto charging_rise(In<Ohms> auto added, In<Ohms> auto added_beyond,
                                                 In<Amperes> auto up_to_knee,
                                                 In<Amperes> auto beyond) {
    return added * up_to_knee + added_beyond * beyond;
}
// (63), by which the charging voltage rises in a step because the charge does
CANDLEMARK_EQUATION In<Volts> auto charging_drift(In<Ohms> auto from, In<Ohms> auto to,
                                                  In<Amperes> auto current) {
    return (to - from) * current;
}
// (63a), half of what it rises by in a step: its mean above its start
CANDLEMARK_EQUATION In<Ohms> auto mean_rise(In<Ohms> auto slope, In<Amperes> auto into,
                                            In<PerCoulomb> auto per_rated, In<Seconds> auto time) {
    return slope * (-0.5 * into * per_rated * time);
}
// (33), the most that the available well takes for the time before it is full, a magnitude
CANDLEMARK_EQUATION In<Amperes> auto most_taken(In<Coulombs> auto removed, In<Coulombs> auto head,
                                                Number auto bound, Number auto left,
                                                In<Seconds> auto time, Number auto bound_gain,
                                                Number auto once) {
    return (removed + bound * head * left) / (time * (1.0 + bound_gain * once));
}
// (9), into the bound well while the available one is kept full
CANDLEMARK_EQUATION In<Amperes> auto seeping(In<PerSecond> auto exchange, In<Coulombs> auto head) {
    return exchange * head;
}

// ---- where the energy goes

CANDLEMARK_EQUATION In<Joules> auto at_far_end(In<Coulombs> auto charge, In<Volts> auto rested,
                                               In<Amperes> auto current, In<Ohms> auto resistance) {
    return charge * (rested - current * resistance);
}
// (20)
CANDLEMARK_EQUATION In<Joules> auto in_resistance(In<Coulombs> auto charge,
                                                  In<Amperes> auto current,
                                                  In<Ohms> auto resistance) {
    return charge * current * resistance;
}
// (62)
CANDLEMARK_EQUATION In<Joules> auto in_charging_rise(In<Coulombs> auto charge,
                                                     In<Volts> auto rise) {
    return charge * rise;
}
// (20), of what arrives at the terminals and not in the wells
CANDLEMARK_EQUATION In<Joules> auto in_charging(In<Amperes> auto into, In<Amperes> auto current,
                                                In<Seconds> auto time, In<Volts> auto rested) {
    return (into - current) * time * rested;
}
// (19): the integrals over the time of head, removed * head and head squared, each divided by it.
// `gained` is the head gained were there no exchange.
CANDLEMARK_EQUATION In<Coulombs> auto gained(In<Amperes> auto into, Number auto head_gain,
                                             In<Seconds> auto time) {
    return into * head_gain * time;
}
CANDLEMARK_EQUATION In<Coulombs> auto mean_head(In<Coulombs> auto head, In<Coulombs> auto gain,
                                                Number auto once, Number auto twice) {
    return head * once + gain * twice;
}
CANDLEMARK_EQUATION auto mean_removed_head(In<Coulombs> auto removed, In<Coulombs> auto means,
                                           In<Coulombs> auto charge, In<Coulombs> auto head,
                                           In<Coulombs> auto gain, Number auto once,
                                           Number auto twice, Number auto thrice) {
    return removed * means + charge * (head * (once - twice) + gain * (twice - thrice));
}
CANDLEMARK_EQUATION auto mean_head_squared(In<Coulombs> auto head, In<Coulombs> auto gain,
                                           Number auto left, Number auto once, Number auto twice,
                                           Number auto thrice, In<PerSecond> auto rate,
                                           In<Seconds> auto time) {
    return once * head * (0.5 * (1.0 + left) * head + once * gain) +
           gain * gain * (twice - thrice - 0.5 * rate * time * twice * twice);
}

// ---- thresholds

// (25): the rested voltage above which a threshold is far
CANDLEMARK_EQUATION In<Volts> auto far_above(In<Volts> auto voltage, In<PerAmpere> auto per_watt,
                                             In<Watts> auto power) {
    return voltage + per_watt * power;
}
// (22): whether the power can be had at this rested voltage
CANDLEMARK_EQUATION auto can_be_had(In<Volts> auto rested, In<Ohms> auto resistance,
                                    In<Watts> auto power) {
    return rested * rested > 4.0 * resistance * power;
}
// whether the voltage changes by no more than the tolerance, as the power amplifies it
CANDLEMARK_EQUATION auto within_tolerance(In<Volts> auto change, In<Volts> auto at_rest,
                                          In<Volts> auto tolerance, In<Volts> auto root) {
    return change * at_rest <= tolerance * root;
}

}  // namespace battery::step

#undef CANDLEMARK_EQUATION
