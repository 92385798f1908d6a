#include "estimate/likelihood.hpp"

#include <algorithm>
#include <cmath>

#include "battery/cell/chemistry.hpp"
#include "estimate/closed_form.hpp"
#include "outage/clock/banks.hpp"

namespace estimate {

using namespace units;
using scenario::LogEntry;

namespace {

// All common practice, no source, where nothing else is said; method.md, Assumptions.
constexpr double four_in_five = 1.2816;
constexpr double of_a_voltmeter = 0.005;
constexpr double of_a_uniform_digit = 1.7321;  // half the digit over its standard deviation
constexpr double of_a_display = 0.03;
constexpr double of_a_display_once = 0.015;  // of it, what is not the same each time; ours
constexpr double of_a_counter = 0.01;        // of the charge through it
constexpr Current missed_by_a_counter = 0.05 * ampere;
constexpr double of_a_controller = 0.03;
constexpr double of_a_controller_once = 0.10;  // a day's sky is not even; ours
constexpr Energy least_of_a_controller = 5.0 * watt_hour;
// Either way, as the gauge has it: LiFePO4 of four cells, [Roscher 2011]; lead of six, makers'
// tables.
constexpr Voltage between_tables_of_lithium = 0.04 * volt;
constexpr Voltage between_tables_of_lead = 0.1 * volt;
// Of how far the table is off, what is not the same at every charge and after every rest; ours.
constexpr double of_a_table_once = 0.25;
// Of LiFePO4, how much more the inner resistance is some minutes into a draw, and half of how much
// it may differ; [LiFePO4 bank], as the gauge has it.
constexpr double more_after_minutes = 0.45;

Voltage table_deviation(const PacksRead& packs) {
    const bool lithium = packs.chemistry == scenario::Chemistry::lifepo4;
    return packs.nominal / battery::defaults_of(packs.chemistry).nominal / four_in_five *
           (lithium ? between_tables_of_lithium : between_tables_of_lead);
}

Compared of_voltage(const LogEntry& entry, const State& state, const PacksRead& packs,
                    const OwnErrors& own) {
    const Voltage shown = entry.reads->volts;
    Voltage expected = state.rested;
    const double of_table = table_deviation(packs) / volt;
    double squares = std::pow(half_last_digit(*entry.reads) / volt / of_a_uniform_digit, 2) +
                     std::pow(of_a_table_once * of_table, 2);
    if (entry.under) {
        const Current drawn = entry.under->current.value_or(entry.under->power.value_or(Power{}) /
                                                            std::max(shown, 0.1 * volt));
        const double later =
            packs.chemistry == scenario::Chemistry::lifepo4 ? more_after_minutes : 0.0;
        const Voltage more = later * (drawn * state.inside);
        expected = state.unloaded - drawn * state.resistance - more;
        squares += std::pow(more / volt, 2);
    } else if (!entry.rested) {
        // What runs at that moment comes and goes.
        expected = 0.5 * (state.unloaded + state.loaded);
        squares += std::pow(0.5 * ((state.unloaded - state.loaded) / volt), 2);
    }
    expected += own.table * of_table * volt + own.meter * (of_a_voltmeter * shown);
    return {.read = shown / volt, .expected = expected / volt, .error = std::sqrt(squares)};
}

Compared of_charge(const LogEntry& entry, const State& state, const PacksRead& packs,
                   const OwnErrors& own, Duration since_start) {
    const double shown = entry.shows->value();
    const double all = std::max(1.0, double(packs.capacity / ampere_hour));
    const double drift = counter_error((1.0 - shown) * all, of_a_counter,
                                       missed_by_a_counter / ampere, since_start / hour) /
                         all;
    const double always =
        std::sqrt(of_a_display * of_a_display - of_a_display_once * of_a_display_once);
    return {.read = shown,
            .expected = state.charge.value() + own.display * std::hypot(always, drift),
            .error = of_a_display_once};
}

Compared of_sun(const LogEntry& entry, const State& state, const OwnErrors& own) {
    const double counted = *entry.sun->taken / watt_hour;
    return {.read = counted,
            .expected = state.sun_taken / watt_hour + own.sun * (of_a_controller * counted),
            .error = std::hypot(of_a_controller_once * counted,
                                double(least_of_a_controller / watt_hour)),
            .as_product = true};
}

}  // namespace

PacksRead packs_read(const outage::Ready& ready) {
    PacksRead packs;
    for (const outage::PackKind& kind : ready.kinds) {
        if (kind.count == 0) continue;
        packs.chemistry = kind.model->chemistry;
        packs.nominal = kind.model->nominal;
        packs.capacity += double(kind.count) * kind.model->capacity;
    }
    return packs;
}

Compared compared(const LogEntry& entry, const State& state, const PacksRead& packs,
                  const OwnErrors& own, Duration since_start) {
    if (entry.reads) return of_voltage(entry, state, packs, own);
    if (entry.shows) return of_charge(entry, state, packs, own, since_start);
    return of_sun(entry, state, own);
}

double distance(const Compared& compared) {
    if (!std::isfinite(compared.error)) return 0.0;
    return (compared.read - compared.expected) / compared.error;
}

double expected_above(const Compared& compared) {
    if (!compared.as_product || !std::isfinite(compared.error)) return -distance(compared);
    constexpr double beside = 50.0;  // Wh; keeps a dark day's count from counting for everything
    constexpr double least = 5.0;
    const double read = compared.read + beside;
    const double expected = std::max(least, compared.expected + beside);
    return std::log(expected / read) * read / compared.error;
}

double log_likelihood(const Compared& compared) {
    if (!std::isfinite(compared.error)) return 0.0;
    const double far = distance(compared);
    return -0.5 * far * far - std::log(compared.error);
}

double MeterError::both() const {
    return std::hypot(own, fresh);
}

MeterError meter_error(Power mean, double power_factor, bool compressor, Duration over,
                       double day_deviation) {
    constexpr Power small = 20.0 * watt;
    double meter = mean > small ? 0.05 : 0.15;
    if (power_factor < 0.6) meter = std::max(meter, 0.10);
    const double days = std::max(1.0, double(over / day));
    double squares = day_deviation * day_deviation / days;
    if (compressor && over < day) squares += 0.24 * 0.24 / std::max(0.1, double(over / hour));
    return {.own = meter, .fresh = std::sqrt(squares)};
}

}  // namespace estimate
