#include "motor/locked_rotor.hpp"

#include <cmath>
#include <utility>

#include "motor/code_letter.hpp"
#include "motor/full_load_current.hpp"
#include "motor/supply_voltage.hpp"
#include "units/said.hpp"

namespace motor {

namespace {

using scenario::MotorKind;
using units::Current;
using units::each;
using units::Power;
using units::Range;
using units::Voltage;
using words::Said;
using words::said;

constexpr Voltage usual_plate_voltage = 115.0 * units::volt;  // of motors for 120 V, [NEC] 430.248
constexpr double plate_current_width = 0.10;                  // common practice, no source
constexpr Power letter_from = 0.5 * horsepower;  // letters are required from 1/2 hp, [NEC] 430.7(A)

Said in_amperes(const Range<Current>& current) {
    return said<"{low} to {high}">(words::with_decimals(current.low() / units::ampere, 1),
                                   units::amount_in(current.high(), "A", 1));
}

Voltage rated_voltage(const scenario::Motor& motor, const Installation& at,
                      scenario::Assumptions& assumptions) {
    if (motor.voltage) {
        return *motor.voltage;
    }
    const Voltage rated =
        runs_from(usual_plate_voltage, at.supply) ? usual_plate_voltage : at.supply;
    assumptions.push_back({at.where + ".voltage",
                           said<"taken as a {voltage} motor">(units::amount_in(rated, "V", 0)),
                           said<"common practice, no source">()});
    return rated;
}

// Everything about one motor that the estimates below look at.
struct Plate {
    const scenario::Motor& motor;
    const Installation& at;
    const KindTraits& traits;
    Voltage rated;
};

std::optional<Range<Current>> from_plate_current(const Plate& plate) {
    if (!plate.motor.locked_rotor_current) {
        return std::nullopt;
    }
    const Current read = *plate.motor.locked_rotor_current;
    return units::spanning<Current>((1.0 - plate_current_width) * read, read,
                                    (1.0 + plate_current_width) * read);
}

// The letter V and a letter without horsepower are errors only where there is no plate current.
units::Result<std::optional<Range<Current>>> from_code_letter(const Plate& plate) {
    if (!plate.motor.code_letter) {
        return std::nullopt;
    }
    const bool has_plate_current = plate.motor.locked_rotor_current.has_value();
    const std::string& letter = *plate.motor.code_letter;
    if (has_plate_current && (letter == "V" || letter == "v")) {
        return std::nullopt;
    }
    const auto power = locked_rotor_power(letter, plate.motor.horsepower.value_or(horsepower));
    if (!power) {
        units::Error error = power.error().front();
        error.where = plate.at.where + ".code_letter";
        return units::fail(std::move(error));
    }
    if (plate.motor.horsepower) {
        return each([&](units::ApparentPower end) -> Current { return end.amount() / plate.rated; },
                    *power);
    }
    if (has_plate_current) {
        return std::nullopt;
    }
    return units::fail({.where = plate.at.where + ".horsepower",
                        .found = said<"a code letter counts per horsepower, and there is none">(),
                        .remedy = said<"give horsepower, such as {example}">("\"1/2 hp\"")});
}

std::optional<Range<Current>> from_table(const Plate& plate) {
    if (!plate.motor.horsepower || !plate.traits.follows_full_load_table) {
        return std::nullopt;
    }
    const auto running = full_load_current(*plate.motor.horsepower, plate.rated);
    if (!running) {
        return std::nullopt;
    }
    return each([&](Multiple times) { return times.value() * *running; }, locked_to_full_load());
}

// Running current by the best that is known of the running draw, method.md (3).
std::optional<Range<Current>> running_current(const Plate& plate) {
    const Range<units::PowerFactor> factor = plate.at.running_power_factor
                                                 ? units::exactly(*plate.at.running_power_factor)
                                                 : plate.traits.running_power_factor;
    const auto amperes = [&](Power real, double pf) -> Current { return real / pf / plate.rated; };
    if (plate.motor.full_load_current) {
        return units::exactly(*plate.motor.full_load_current);
    }
    if (plate.at.running_power) {
        const auto& real = *plate.at.running_power;
        return units::spanning(amperes(real.low(), factor.high().value()),
                               amperes(real.likely(), factor.likely().value()),
                               amperes(real.high(), factor.low().value()));
    }
    // Horsepower printed on a brush motor is a peak that it cannot hold.
    if (plate.motor.horsepower && plate.motor.kind != MotorKind::universal) {
        const Power output = *plate.motor.horsepower;
        const auto& efficiency = plate.traits.efficiency;
        return units::spanning(
            amperes(output / efficiency.high().value(), factor.high().value()),
            amperes(output / efficiency.likely().value(), factor.likely().value()),
            amperes(output / efficiency.low().value(), factor.low().value()));
    }
    return std::nullopt;
}

std::optional<Range<Current>> from_running_draw(const Plate& plate) {
    const auto running = running_current(plate);
    if (!running) {
        return std::nullopt;
    }
    return units::spanning(each(
        [](Current amperes, Multiple times) -> Current { return times.value() * amperes; },
        units::more_is_harder(*running), units::more_is_harder(plate.traits.locked_to_running)));
}

units::Errors refusals(const Plate& plate) {
    units::Errors errors;
    if (!runs_from(plate.rated, plate.at.supply)) {
        errors.push_back(voltage_refusal(plate.at.where + ".voltage", Refused::motor, plate.rated,
                                         plate.at.supply));
    }
    const auto& locked = plate.motor.locked_rotor_current;
    const auto& full = plate.motor.full_load_current;
    if (locked && full && *locked < *full) {
        errors.push_back(
            {.where = plate.at.where + ".locked_rotor_current",
             .found = said<"the locked-rotor current of {locked} is below the full-load current "
                           "of {full_load}">(units::amount_in(*locked, "A", 1),
                                             units::amount_in(*full, "A", 1)),
             .remedy = said<"look at the plate again: LRA is the larger one, RLA or FLA the "
                            "smaller">()});
    }
    return errors;
}

Said source_of(Evidence evidence) {
    switch (evidence) {
        case Evidence::plate_current:
            return said<"the plate; width common practice, no source">();
        case Evidence::code_letter:
            return said<"[NEC] Table 430.7(B)">();
        case Evidence::full_load_table:
            return said<"[NEC] Tables 430.248 and 430.251(A)">();
        case Evidence::running_draw:
            return said<"method.md of motor, Kinds">();
    }
    return {};
}

void tell_how_it_was_found(const Plate& plate, LockedRotor& found) {
    const Estimate& best = found.evidence.front();
    found.assumptions.push_back(
        {plate.at.where,
         said<"locked-rotor current {current} from {evidence} ({kind})">(
             in_amperes(best.current), in_words(best.from), in_words(plate.motor.kind)),
         source_of(best.from)});
    for (const Estimate& other : found.evidence) {
        if (!units::overlap(best.current, other.current)) {
            found.findings.push_back(
                {.severity = scenario::Severity::caution,
                 .where = plate.at.where,
                 .text = said<"{evidence} says {current} at start, but {other} says "
                              "{other_current}; the first is used">(
                     in_words(best.from), in_amperes(best.current), in_words(other.from),
                     in_amperes(other.current)),
                 .mend = said<"look at the plate again: it may show another voltage or a service "
                              "factor">(),
                 .source = said<"method.md of motor, Demand">()});
        }
    }
    if (best.from == Evidence::code_letter && *plate.motor.horsepower < letter_from) {
        found.findings.push_back(
            {.severity = scenario::Severity::note,
             .where = plate.at.where + ".code_letter",
             .text = said<"code letters are required from 1/2 hp up only; this smaller one was "
                          "read as kVA per horsepower too">(),
             .mend = said<"compare with the locked-rotor current (LRA) if the plate has one">(),
             .source = said<"{source}, from memory">("[NEC] 430.7(A)(8)")});
    }
}

void fit_soft_start(const Plate& plate, LockedRotor& found) {
    found.let_through = let_through_by_soft_start();
    found.current = units::spanning(
        each([](Current current, units::Share share) -> Current { return share.value() * current; },
             units::more_is_harder(found.current), units::more_is_harder(*found.let_through)));
    found.assumptions.push_back({plate.at.where + ".soft_start",
                                 said<"the device lets 35 to 50 % of the locked-rotor current "
                                      "through, and 12 to 25 % of the torque">(),
                                 said<"common practice, no source">()});
    if (plate.traits.has_start_switch) {
        found.findings.push_back(
            {.severity = scenario::Severity::caution,
             .where = plate.at.where + ".soft_start",
             .text = said<"a soft-start device on a {kind} motor keeps its start winding on for "
                          "longer, which can burn it">(in_words(plate.motor.kind)),
             .mend = said<"ask the maker of the motor first">(),
             .source = said<"common practice, no source">()});
    }
}

// What speaks for a current, the surest first.
auto evidence_of(const Plate& plate, const std::optional<Range<Current>>& by_code_letter) {
    decltype(LockedRotor::evidence) evidence;
    const auto consider = [&](Evidence from, const std::optional<Range<Current>>& current) {
        if (current) {
            evidence.push_back({from, *current});
        }
    };
    consider(Evidence::plate_current, from_plate_current(plate));
    consider(Evidence::code_letter, by_code_letter);
    consider(Evidence::full_load_table, from_table(plate));
    consider(Evidence::running_draw, from_running_draw(plate));
    return evidence;
}

}  // namespace

Said in_words(Evidence evidence) {
    switch (evidence) {
        case Evidence::plate_current:
            return said<"the locked-rotor current on the plate">();
        case Evidence::code_letter:
            return said<"the code letter">();
        case Evidence::full_load_table:
            return said<"the full-load table for its horsepower">();
        case Evidence::running_draw:
            return said<"its running draw and kind">();
    }
    return {};
}

units::Result<LockedRotor> locked_rotor(const scenario::Motor& motor, const Installation& at) {
    if (motor.kind == MotorKind::direct_current) {
        return units::fail(
            {.where = at.where + ".kind",
             .found = said<"a direct-current motor has no alternating-current start">(),
             .remedy = said<"feed it from 12V, or give the kind of its mains motor">()});
    }
    LockedRotor found{.kind = motor.kind};
    const Plate plate{motor, at, traits_of(motor.kind),
                      rated_voltage(motor, at, found.assumptions)};
    units::Errors errors = refusals(plate);
    const auto letter = from_code_letter(plate);
    if (!letter) {
        errors.insert(errors.end(), letter.error().begin(), letter.error().end());
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    found.evidence = evidence_of(plate, *letter);
    if (found.evidence.empty()) {
        return units::fail(
            {.where = at.where,
             .found = said<"nothing says how much this motor draws at start">(),
             .remedy = said<"give locked_rotor_current (LRA), or horsepower with "
                            "code_letter, or full_load_current, or the running power">()});
    }
    found.rated_voltage = plate.rated;
    found.current = found.evidence.front().current;
    found.power_factor = plate.traits.locked_power_factor;
    tell_how_it_was_found(plate, found);
    if (motor.soft_start.value_or(false)) {
        fit_soft_start(plate, found);
    }
    return found;
}

units::Ends<Demand> demand_at(const LockedRotor& motor, Voltage actual) {
    const double ratio = actual / motor.rated_voltage;
    return each(
        [&](Current rated, units::PowerFactor factor) {
            const Current current = ratio * rated;  // method.md (1)
            const units::ApparentPower apparent(current * actual);
            const double sine = std::sqrt(1.0 - factor.value() * factor.value());
            return Demand{.current = current,
                          .apparent = apparent,
                          .real = units::real_power(apparent, factor),
                          .reactive = units::ReactivePower(sine * apparent.amount())};
        },
        units::more_is_harder(motor.current), units::more_is_harder(motor.power_factor));
}

units::Range<units::Share> let_through_by_soft_start() {
    return units::spanning(units::Share(0.35), units::Share(0.42), units::Share(0.50));
}

}  // namespace motor
