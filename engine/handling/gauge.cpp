#include "handling/gauge.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "battery/chemistry.hpp"
#include "battery/percent.hpp"
#include "battery/rest.hpp"
#include "battery/surface_charge.hpp"
#include "unit/built.hpp"
#include "units/text.hpp"

namespace handling {

using namespace units;
using scenario::Chemistry;
using scenario::Pack;
using scenario::Severity;

namespace {

constexpr std::string_view practice = "common practice, no source";

// Four LiFePO4 cells in series, either way: charge and discharge leave them 5 to 25 mV a cell apart
// after long rest, [Roscher 2011], and makes differ by as much.
constexpr Voltage hysteresis_of_four_cells = 0.04 * volt;

// Six lead cells, either way: [T-105 sheet], [ESS_PB25] and [ESS_PB104] lie 0.1 to 0.2 V apart at
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
                              .found = "packs of different chemistries give one voltage",
                              .remedy = "name the pack that was read with --pack"});
    }
    if (!chosen.empty()) told.assumptions = unit::assumptions_of(*built, chosen);
    told.findings = built->findings;
    if (packs.empty() && errors.empty())
        errors.push_back({.where = reading.pack ? "--pack" : "pack",
                          .found = reading.pack
                                       ? fmt::format("there is no pack named {}", *reading.pack)
                                       : std::string("there is no pack"),
                          .remedy = "give the name of a [[pack]] of the file"});
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

// What the reading stands on: while it is drawn, the level that AGM is drawn from.
const battery::OpenCircuit& table_of(const battery::PackModel& model, const Reading& reading) {
    return reading.power && *reading.power > Power{} ? model.open_circuit : model.at_rest;
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
    const double level =
        flat_below * (model.nominal / battery::defaults_of(told.chemistry).nominal);
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

void tell_interval(const std::vector<Read>& packs, const Reading& reading, ChargeRead& told) {
    const battery::PackModel& model = packs.front().model;
    told.chemistry = model.chemistry;
    const auto& table = table_of(model, reading);
    const auto charge_of = [&](StateOfCharge fill) {
        return battery::charge_at_fill(model.kinetics, model.capacity, fill);
    };
    const auto charge_at = [&](Voltage voltage) { return charge_of(table.fill_at(voltage)); };
    const auto most_at = [&](Voltage voltage) {
        return charge_of(fullest_at(model, reading, voltage));
    };
    told.error +=
        model.nominal / battery::defaults_of(told.chemistry).nominal *
        (told.chemistry == Chemistry::lifepo4 ? hysteresis_of_four_cells : between_makers);
    told.low = battery::shown(charge_at(told.rested - told.error));
    const StateOfCharge middle = charge_at(told.rested);
    told.likely = battery::shown(middle);
    told.high = battery::shown(most_at(told.rested + told.error));
    double all_packs = 0.0;
    for (const Read& read : packs)
        all_packs += read.pack->count;
    // by the draw of the reading, where there is one
    const Share locked = reading.power && *reading.power > Power{}
                             ? model.locked.at(told.current / all_packs)
                             : model.reachable.complement();
    told.locked = battery::shown(
        battery::charge_at_fill(model.kinetics, model.capacity, StateOfCharge(locked.value())));
    // A full pack comes down on the plateau that one of three quarters stands on.
    if (told.chemistry == Chemistry::lifepo4 &&
        told.rested + told.error >=
            model.nominal / battery::defaults_of(told.chemistry).nominal *
                battery::full_lithium_after(reading.rested_for.value_or(without_end)))
        told.high = StateOfCharge(1.0);
    if (middle < StateOfCharge(0.0))
        for (const Read& read : packs)
            told.beyond += static_cast<double>(read.pack->count) * left_beyond(read.model, middle);
    told.per_hundredth =
        0.01 * (model.capacity / model.kinetics.total) *
        table.slope(battery::fill_with(model.kinetics, model.capacity, told.likely));
    if (reading.power && *reading.power > Power{} && model.kinetics.available < Share(1.0)) {
        told.now_low = told.low;
        told.now_high = told.high;
        // a long draw leaves the bound well higher by I/(c k): method.md (2), (3)
        Charge whole{};
        for (const Read& read : packs)
            whole += static_cast<double>(read.pack->count) * read.model.capacity;
        const auto& wells = model.kinetics;
        const double bound = wells.available.complement().value();
        double recovers = 0.0;
        if (wells.rate > Frequency{})
            recovers = bound / wells.available.value() * (told.current / wells.rate / whole);
        told.high = battery::shown(StateOfCharge(told.high.value() + recovers));
        told.likely = battery::shown(StateOfCharge(told.likely.value() + 0.5 * recovers));
    }
    // However fine the meter: on the plateau no one charge is likelier than those beside it.
    told.plateau = told.chemistry == Chemistry::lifepo4 && reaches_plateau(model, told);
    told.readable = !told.plateau && told.high.value() - told.low.value() <= too_wide;
}

void find_faults(const Reading& reading, ChargeRead& told) {
    const bool lead = told.chemistry != Chemistry::lifepo4;
    const auto find = [&](Severity severity, std::string text, std::string mend,
                          std::string_view source) {
        told.findings.push_back(
            {severity, told.what, std::move(text), std::move(mend), std::string(source)});
    };
    if (told.plateau)
        find(Severity::caution,
             fmt::format("LiFePO4 holds its voltage almost level: {} more is one hundredth more "
                         "charge, and the reading is worth {} either way, so it cannot tell",
                         show(told.per_hundredth, 2), show(told.error, 2)),
             "count the charge that went in and out, or charge it full and start from there",
             "[Sunil 2025]");
    if (told.beyond > Charge{})
        find(Severity::caution,
             fmt::format("nothing is left at the rated draw; about {} more at a slow one",
                         show(told.beyond, 1)),
             "charge before anything is asked of it", "battery method.md (48)");
    if (told.locked > StateOfCharge(0.0)) {
        const auto drawn = [&](StateOfCharge charge) {
            return show(StateOfCharge(std::max(0.0, charge.value() - told.locked.value())), 2);
        };
        find(told.low <= told.locked ? Severity::caution : Severity::note,
             fmt::format("at {} the cold locks in the last {} of the charge: at the low end of "
                         "this reading {} can be drawn, at the high end {}; the voltage under a "
                         "load may end it sooner",
                         show(told.temperature), show(told.locked, 2), drawn(told.low),
                         drawn(told.high)),
             "warm the packs: nothing of what is locked in is lost",
             "battery method.md (5), Defaults");
    }
    const Duration wanted = rest_wanted(told.chemistry);
    if (!reading.power && (!reading.rested_for || *reading.rested_for < wanted))
        find(reading.rested_for ? Severity::caution : Severity::note,
             fmt::format("{}; within an hour of use it shows less than it holds, and within {} of "
                         "charging more",
                         reading.rested_for
                             ? fmt::format("it has rested {}", show(*reading.rested_for))
                             : std::string("how long it has rested is not given"),
                         show(wanted)),
             "read again after the rest, and say so with --rested", "makers' sheets, [Rest]");
    if (reading.power && told.now_low)
        find(Severity::note,
             fmt::format("under load the terminals feel only the part that feeds them, now {} to "
                         "{} full; at rest some comes back",
                         show(*told.now_low, 2), show(*told.now_high, 2)),
             "", "[Manwell 1993]");
    if (lead)
        find(Severity::note,
             "tables of different makers differ by 0.1 to 0.2 V at one charge, 10 to 20 % of it; "
             "0.1 V either way is in the interval",
             "note the voltage of your own packs when they are surely full, and when half is used",
             "[T-105 sheet], [ESS_PB25], [ESS_PB104] against each other");
}

}  // namespace

Result<ChargeRead> gauge(const scenario::Scenario& scenario, const Reading& reading) {
    ChargeRead told;
    told.what = reading.pack ? "pack " + *reading.pack : "all packs";
    const auto packs = packs_read(scenario, reading, told);
    if (!packs) return fail(packs.error());
    const double times = reading.reads / packs->front().model.nominal;
    if (!(times > 0.5 && times < 1.4))
        return fail({.where = "--reads",
                     .found = fmt::format("{}, which no {} pack shows", show(reading.reads),
                                          show(packs->front().model.nominal)),
                     .remedy = "give the voltage between its terminals, such as \"12.9 V\""});
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
