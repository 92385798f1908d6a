#include "handling/gauge.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "battery/cell/chemistry.hpp"
#include "battery/cell/percent.hpp"
#include "battery/cell/surface_charge.hpp"
#include "battery/rest.hpp"
#include "unit/built.hpp"
#include "units/said.hpp"

namespace handling {

using namespace units;
using scenario::Chemistry;
using scenario::Pack;
using scenario::Severity;
using words::Said;
using words::said;

namespace {

// Four LiFePO4 cells in series, either way: charge and discharge leave them 5 to 25 mV a cell apart
// after long rest, [Roscher 2011], and makes differ by as much.
constexpr Voltage hysteresis_of_four_cells = 0.04 * volt;

// Six lead cells, either way: [Flooded 225 Ah sheet], [AGM 26 Ah data file] and [Sealed 104 Ah data file] lie 0.1 to 0.2 V apart at
// one charge.
constexpr Voltage between_makers = 0.1 * volt;

// After so long nothing is left of a charge that filled the pack.
constexpr Duration without_end = 1000.0 * hour;

// V from empty to full were it all so level, at four cells: half of what lead-acid has, twice what
// the plateau has.
constexpr double flat_below = 0.8;

constexpr double too_wide = 1.0 / 3.0;    // common practice, no source
constexpr double weak_resistance = 0.25;  // of a typical resistance; common practice, no source

// Of LiFePO4, the inner resistance a few minutes into a draw over that of its first seconds: 11, 17
// and 21 milliohm at 4 s, 1 min and 4 min, [LiFePO4 bank].
constexpr double lithium_after_minutes = 1.9;

bool is_read(const Pack& pack, const Reading& reading) {
    return pack.count > 0 && (!reading.pack || pack.name == *reading.pack);
}

struct Read {
    const Pack* pack = nullptr;
    battery::PackModel model;
    units::Resistance path{};
    bool assumed = false;  // its resistance
};

units::Result<std::vector<Read>> packs_read(const scenario::Scenario& scenario,
                                            const Reading& reading, ChargeRead& told) {
    const unit::Warmth warmth = unit::usual_warmth(scenario);
    told.temperature = warmth.packs;
    const auto built = unit::built(scenario, warmth);
    if (!built) return fail(built.error());
    std::vector<Read> packs;
    std::vector<std::size_t> chosen;
    Errors errors;
    for (const unit::Packs& one : built->packs) {
        const Pack& pack = scenario.packs[one.index];
        if (!is_read(pack, reading)) continue;
        chosen.push_back(one.index);
        packs.push_back({&pack, *one.model, one.path(), one.inner.assumed()});
        if (pack.chemistry != packs.front().pack->chemistry)
            errors.push_back({.where = one.where + ".chemistry",
                              .found = said<"packs of different chemistries share one voltage">(),
                              .remedy = said<"name the pack that was read with --pack">()});
    }
    if (!chosen.empty()) told.assumptions = unit::assumptions_of(*built, chosen);
    told.findings = built->findings;
    if (packs.empty() && errors.empty())
        errors.push_back({.where = reading.pack ? "--pack" : "pack",
                          .found = reading.pack
                                       ? said<"there is no pack named {pack}">(*reading.pack)
                                       : said<"there is no pack">(),
                          .remedy = said<"give the name of a [[pack]] of the file">()});
    if (!errors.empty()) return fail(std::move(errors));
    return packs;
}

// What the loads take off the voltage. The typical resistance is worth no more than a quarter.
void undo_load(const std::vector<Read>& packs, const Reading& reading, ChargeRead& told) {
    double per_ohm = 0.0;
    bool assumed = false;
    for (const Read& read : packs) {
        const Resistance path = std::max(read.path, 1e-7 * ohm);
        per_ohm += read.pack->count / (path / ohm).value();
        assumed = assumed || read.assumed;
    }
    told.resistance = 1.0 / per_ohm * ohm;
    told.rested = reading.reads;
    told.error = reading.error;
    if (!reading.power) return;
    told.current = *reading.power / reading.reads;
    const Voltage sag = told.current * told.resistance;
    told.rested += sag;
    if (assumed) told.error += weak_resistance * abs(sag);
    if (packs.front().pack->chemistry != Chemistry::lifepo4) return;
    // How long it has been drawn is not known.
    double inner_per_ohm = 0.0;
    for (const Read& read : packs)
        inner_per_ohm += read.pack->count / std::max(1e-7, (read.model.inner / ohm).value());
    const Voltage more =
        0.5 * (lithium_after_minutes - 1.0) * told.current * (1.0 / inner_per_ohm * ohm);
    told.rested += more;
    told.error += abs(more);
}

bool is_drawn(const Reading& reading) {
    return reading.power && *reading.power > Power{};
}

// Of a pack of this nominal voltage, what holds of one of 12 V.
double twelves(const battery::PackModel& model) {
    return model.nominal / battery::defaults_of(model.chemistry).nominal;
}

// What the reading stands on: while it is drawn, the level that AGM is drawn from.
const battery::OpenCircuit& table_of(const battery::PackModel& model, const Reading& reading) {
    return is_drawn(reading) ? model.open_circuit : model.at_rest;
}

Duration rest_wanted(Chemistry chemistry) {
    return chemistry == Chemistry::lifepo4 ? 24.0 * hour : 6.0 * hour;
}

// Of a pack that was drawn a while ago, the fill by what comes back in that time; it is the fuller
// one, since a pack that was charged in between would stand on its table or above it.
StateOfCharge fullest_at(const battery::PackModel& model, const Reading& reading, Voltage voltage) {
    const auto& table = table_of(model, reading);
    const bool resting =
        !reading.power && reading.rested_for && *reading.rested_for < rest_wanted(model.chemistry);
    return resting
               ? battery::fill_after_rest(model.open_circuit, table, voltage, *reading.rested_for)
               : table.fill_at(voltage);
}

// What a slow draw still gets from a pack that has less than nothing left at the rated one.
Charge left_beyond(const battery::PackModel& model, StateOfCharge charge) {
    const auto lowest = battery::lowest_charge(model.kinetics, model.capacity);
    return std::max(0.0, charge.value() - lowest.value()) * model.capacity;
}

// Whether any of the interval lies where the voltage hardly rises with the charge.
bool reaches_plateau(const battery::PackModel& model, const ChargeRead& told) {
    const auto& table = model.at_rest;
    const double level = flat_below * twelves(model);
    const auto fill_of = [&](StateOfCharge charge) {
        return battery::fill_with(model.kinetics, model.capacity, charge).value();
    };
    for (int i = 0; i < table.pieces(); ++i) {
        const auto& piece = table.piece(i);
        if (piece.slope < level && fill_of(told.high) > piece.low && fill_of(told.low) < piece.high)
            return true;
    }
    return false;
}

StateOfCharge charge_of(const battery::PackModel& model, StateOfCharge fill) {
    return battery::charge_at_fill(model.kinetics, model.capacity, fill);
}

// The middle, and the ends by the error either way.
//   gives   the middle as it is, which may lie below nothing left
StateOfCharge tell_ends(const battery::PackModel& model, const Reading& reading, ChargeRead& told) {
    const auto& table = table_of(model, reading);
    const StateOfCharge middle = charge_of(model, table.fill_at(told.rested));
    told.low = battery::shown(charge_of(model, table.fill_at(told.rested - told.error)));
    told.likely = battery::shown(middle);
    told.high =
        battery::shown(charge_of(model, fullest_at(model, reading, told.rested + told.error)));
    // A full pack comes down on the plateau that one of three quarters stands on.
    const Voltage full =
        twelves(model) * battery::full_lithium_after(reading.rested_for.value_or(without_end));
    if (model.chemistry == Chemistry::lifepo4 && told.rested + told.error >= full)
        told.high = StateOfCharge(1.0);
    return middle;
}

// What the cold keeps back: by the draw of the reading, where there is one.
StateOfCharge locked_in(const std::vector<Read>& packs, const Reading& reading, Current drawn) {
    const battery::PackModel& model = packs.front().model;
    double all_packs = 0.0;
    for (const Read& read : packs)
        all_packs += read.pack->count;
    const Share locked =
        is_drawn(reading) ? model.locked.at(drawn / all_packs) : model.reachable.complement();
    return battery::shown(charge_of(model, StateOfCharge(locked.value())));
}

// A long draw leaves the bound well higher by I/(c k): method.md (2), (3). At rest so much more of
// the charge comes back.
double recovered_after(const std::vector<Read>& packs, Current drawn) {
    const auto& wells = packs.front().model.kinetics;
    if (!(wells.rate > Frequency{})) return 0.0;
    Charge whole{};
    for (const Read& read : packs)
        whole += static_cast<double>(read.pack->count) * read.model.capacity;
    const double bound = wells.available.complement().value();
    return bound / wells.available.value() * (drawn / wells.rate / whole);
}

void add_what_comes_back(const std::vector<Read>& packs, ChargeRead& told) {
    told.now_low = told.low;
    told.now_high = told.high;
    const double recovers = recovered_after(packs, told.current);
    told.high = battery::shown(StateOfCharge(told.high.value() + recovers));
    told.likely = battery::shown(StateOfCharge(told.likely.value() + 0.5 * recovers));
}

void tell_interval(const std::vector<Read>& packs, const Reading& reading, ChargeRead& told) {
    const battery::PackModel& model = packs.front().model;
    told.chemistry = model.chemistry;
    told.error += twelves(model) * (told.chemistry == Chemistry::lifepo4 ? hysteresis_of_four_cells
                                                                         : between_makers);
    const StateOfCharge middle = tell_ends(model, reading, told);
    told.locked = locked_in(packs, reading, told.current);
    if (middle < StateOfCharge(0.0))
        for (const Read& read : packs)
            told.beyond += static_cast<double>(read.pack->count) * left_beyond(read.model, middle);
    told.per_hundredth =
        0.01 * (model.capacity / model.kinetics.total) *
        table_of(model, reading)
            .slope(battery::fill_with(model.kinetics, model.capacity, told.likely));
    if (is_drawn(reading) && model.kinetics.available < Share(1.0))
        add_what_comes_back(packs, told);
    // However fine the meter: on the plateau no one charge is likelier than those beside it.
    told.plateau = told.chemistry == Chemistry::lifepo4 && reaches_plateau(model, told);
    told.readable = !told.plateau && told.high.value() - told.low.value() <= too_wide;
}

// ---- What is to be known of the reading.

using FoundOfIt = std::optional<scenario::Finding>;

FoundOfIt level_voltage(const ChargeRead& told) {
    if (!told.plateau) return {};
    return {
        {Severity::caution, told.what,
         said<"LiFePO4 holds its voltage nearly level there, so a voltage cannot tell one "
              "charge from the next">(),
         said<"count the charge that went in and out, or charge it full and start from there">(),
         "[Sunil 2025]"}};
}

FoundOfIt nothing_left(const ChargeRead& told) {
    if (!(told.beyond > Charge{})) return {};
    return {{Severity::caution, told.what,
             said<"nothing is left at the rated draw; a slow draw still gets about {charge}">(
                 amount(told.beyond, 1)),
             said<"charge it before you ask anything of it">(), "battery method.md (48)"}};
}

FoundOfIt locked_by_cold(const ChargeRead& told) {
    if (!(told.locked > StateOfCharge(0.0))) return {};
    const auto drawn = [&](StateOfCharge charge) {
        return amount(StateOfCharge(std::max(0.0, charge.value() - told.locked.value())), 2);
    };
    return {{told.low <= told.locked ? Severity::caution : Severity::note, told.what,
             said<"at {temperature} the cold locks in the last {locked} of the charge: {low} can "
                  "be drawn at the low end of this reading, {high} at the high end; under a load "
                  "the voltage may end it sooner">(told.temperature, amount(told.locked, 2),
                                                   drawn(told.low), drawn(told.high)),
             said<"warm the packs: nothing of what is locked in is lost">(),
             "battery method.md (5), Defaults"}};
}

Said of_the_rest(const Reading& reading, Duration wanted) {
    if (!reading.rested_for)
        return said<
            "how long it has rested is not given; in the first hour after use it shows less than "
            "it holds, and in the first {wanted} after charging more">(wanted);
    return said<
        "it has rested for {time}; in the first hour after use it shows less than it holds, and "
        "in the first {wanted} after charging more">(*reading.rested_for, wanted);
}

FoundOfIt too_short_a_rest(const Reading& reading, const ChargeRead& told) {
    const Duration wanted = rest_wanted(told.chemistry);
    if (reading.power || (reading.rested_for && *reading.rested_for >= wanted)) return {};
    return {{reading.rested_for ? Severity::caution : Severity::note, told.what,
             of_the_rest(reading, wanted),
             said<"read again after the rest, and say so with --rested">(),
             said<"makers' sheets, {source}">("[Rest]")}};
}

FoundOfIt read_under_load(const Reading& reading, const ChargeRead& told) {
    if (!reading.power || !told.now_low) return {};
    return {{Severity::note,
             told.what,
             said<"under load the terminals show only the part that feeds them, now {range} full; "
                  "at rest some comes back">(between(*told.now_low, *told.now_high, 2)),
             {},
             "[Manwell 1993]"}};
}

FoundOfIt makers_differ(const ChargeRead& told) {
    if (told.chemistry == Chemistry::lifepo4) return {};
    return {{Severity::note, told.what,
             said<"tables of different makers differ by {volts} at one charge, which is {charge} "
                  "of it; {allowed} either way is allowed for">(
                 between(0.1 * volt, 0.2 * volt), between(StateOfCharge(0.1), StateOfCharge(0.2)),
                 between_makers),
             said<"note the voltage of your own packs when they are surely full, and when half is "
                  "used">(),
             said<"{sheets} against each other">(
                 "[Flooded 225 Ah sheet], [AGM 26 Ah data file], [Sealed 104 Ah data file]")}};
}

void find_faults(const Reading& reading, ChargeRead& told) {
    for (auto& found :
         {level_voltage(told), nothing_left(told), locked_by_cold(told),
          too_short_a_rest(reading, told), read_under_load(reading, told), makers_differ(told)})
        if (found) told.findings.push_back(*found);
}

}  // namespace

Result<ChargeRead> gauge(const scenario::Scenario& scenario, const Reading& reading) {
    ChargeRead told;
    told.what = reading.pack ? said<"pack {pack}">(*reading.pack) : said<"all packs">();
    const auto packs = packs_read(scenario, reading, told);
    if (!packs) return fail(packs.error());
    const double times = reading.reads / packs->front().model.nominal;
    if (!(times > 0.5 && times < 1.4))
        return fail(
            {.where = "--reads",
             .found = said<"no pack of {nominal} shows {reads}">(packs->front().model.nominal,
                                                                 reading.reads),
             .remedy = said<"give the voltage between its terminals, such as \"12.9 V\"">()});
    undo_load(*packs, reading, told);
    tell_interval(*packs, reading, told);
    find_faults(reading, told);
    return told;
}

scenario::Scenario at_charge(scenario::Scenario scenario, const Reading& reading,
                             StateOfCharge charge) {
    for (Pack& pack : scenario.packs) {
        if (!is_read(pack, reading)) continue;
        pack.charge = charge;
        pack.rested_voltage.reset();
    }
    return scenario;
}

}  // namespace handling
