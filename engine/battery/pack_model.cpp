#include "battery/pack_model.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "battery/cell/charge_efficiency.hpp"
#include "battery/cell/chemistry.hpp"
#include "battery/cell/fit.hpp"
#include "battery/cell/gassing.hpp"
#include "battery/cell/percent.hpp"
#include "battery/cell/temperature.hpp"
#include "battery/rest.hpp"
#include "units/said.hpp"

namespace battery {

using namespace units;
using scenario::Age;
using scenario::Assumptions;
using scenario::Chemistry;
using scenario::Pack;
using words::Said;
using words::said;

namespace {

Said practice() {
    return said<"common practice, no source">();
}

Said a_charge(std::string_view example) {
    return said<"give charge above zero, such as {example}">(example);
}
Said a_voltage(std::string_view example) {
    return said<"give a voltage such as {example}">(example);
}
Said a_current(std::string_view example) {
    return said<"give a current such as {example}">(example);
}
Said a_resistance(std::string_view example) {
    return said<"give a resistance such as {example}">(example);
}

words::Number percent(double share, int decimals = 0) {
    return words::with_decimals(100.0 * share, decimals);
}

// Collects what was taken, under the pack's key.
class Taken {
  public:
    Taken(const std::string& where, Assumptions& list) : where_(where), list_(list) {}
    void note(std::string_view key, Said text, Said source) {
        list_.push_back({fmt::format("{}.{}", where_, key), std::move(text), std::move(source)});
    }

  private:
    const std::string& where_;
    Assumptions& list_;
};

// Collects what no pack can have, under the pack's key.
class Faults {
  public:
    explicit Faults(const std::string& where) : where_(where) {}
    void unless(bool good, std::string_view key, Said remedy) {
        if (!good)
            errors_.push_back({.where = fmt::format("{}.{}", where_, key),
                               .found = said<"a value that no pack can have">(),
                               .remedy = std::move(remedy)});
    }
    [[nodiscard]] Errors taken() { return std::move(errors_); }

  private:
    const std::string& where_;
    Errors errors_;
};

bool not_negative(const auto& quantity) {
    return !quantity || (quantity->value() >= 0.0 && std::isfinite(quantity->value()));
}
bool positive(const auto& quantity) {
    return !quantity || (quantity->value() > 0.0 && std::isfinite(quantity->value()));
}
bool part_of_one(const auto& share) {
    return !share || (share->value() > 0.0 && share->value() <= 1.0);
}

void look_at_charge(const Pack& pack, Faults& faults) {
    faults.unless(positive(std::optional(pack.capacity)), "capacity", a_charge("100 Ah"));
    faults.unless(positive(pack.rated_over), "rated_over",
                  said<"give a time such as {example}">("20 h"));
    faults.unless(positive(pack.voltage), "voltage", a_voltage("12 V"));
    faults.unless(!pack.charge || (pack.charge->value() >= 0.0 && pack.charge->value() <= 1.0),
                  "charge", said<"give 0 % to 100 %">());
    faults.unless(part_of_one(pack.usable), "usable", said<"give above 0 % to 100 %">());
}

void look_at_limits(const Pack& pack, Faults& faults) {
    faults.unless(not_negative(pack.resistance), "resistance", a_resistance("6 mohm"));
    faults.unless(not_negative(pack.lead_resistance), "lead_resistance", a_resistance("2 mohm"));
    faults.unless(positive(pack.current_limit), "current_limit", a_current("100 A"));
    faults.unless(not_negative(pack.charge_limit), "charge_limit", a_current("20 A"));
    faults.unless(positive(pack.absorption_voltage), "absorption_voltage", a_voltage("14.4 V"));
    faults.unless(positive(pack.cutoff_voltage), "cutoff_voltage", a_voltage("10 V"));
}

void look_at_measured(const Pack& pack, Faults& faults) {
    faults.unless(positive(pack.tested_capacity), "tested_capacity", a_charge("85 Ah"));
    if (pack.two_well)
        faults.unless(positive(std::optional(pack.two_well->total)) &&
                          not_negative(std::optional(pack.two_well->rate)) &&
                          part_of_one(std::optional(pack.two_well->available)),
                      "two_well",
                      said<"give c above 0 to 1, k from 0 1/h and a total above zero">());
}

Errors faults_of(const Pack& pack, const std::string& where, Temperature temperature) {
    Faults faults(where);
    look_at_charge(pack, faults);
    look_at_limits(pack, faults);
    look_at_measured(pack, faults);
    Errors errors = faults.taken();
    const double degrees = in_celsius(temperature);
    if (!(degrees > -80.0 && degrees < 100.0))
        errors.push_back(
            {.where = "outage.battery_temperature",
             .found = said<"{temperature}, at which no battery works">(to_the_degree(temperature)),
             .remedy = said<"give the temperature of the cells, such as {example}">("5 degC")});
    return errors;
}

// How many times a 12 V pack, such as 2 for 24 V or 25.6 V; cells where it is less than 9 V.
double series_of(double nominal, const ChemistryDefaults& defaults) {
    const double whole = defaults.nominal / volt;
    if (nominal < 9.0)
        return std::max(1.0, std::round(nominal * defaults.cells / whole)) / defaults.cells;
    return std::max(1.0, std::round(nominal / whole));
}

struct Ageing {
    double charge = 1.0;
    double resistance = 1.0;
};

// End of life at 80 % of the capacity: [IEEE 485]; the rest from memory, weak.
Ageing ageing_of(Age age) {
    switch (age) {
        case Age::fresh:
            return {1.0, 1.0};
        case Age::mid_life:
            return {0.9, 1.15};
        case Age::end_of_life:
            break;
    }
    return {0.8, 1.5};
}

Ageing aged(const Pack& pack, Taken& taken) {
    if (!pack.age && !pack.tested_capacity)
        taken.note("age", said<"taken as new: full capacity and resistance as new">(), practice());
    Ageing ageing = ageing_of(pack.age.value_or(Age::fresh));
    if (pack.tested_capacity) ageing.charge = *pack.tested_capacity / pack.capacity;
    return ageing;
}

// The rows of a label in one list: the capacity first, then its further rows, then the reserve.
std::vector<RatedCharge> rows_of(const Pack& pack, Duration rated_over) {
    constexpr Current reserve_current = 25.0 * ampere;  // [BCI reserve]
    std::vector<RatedCharge> rows{{.charge = pack.capacity, .over = rated_over}};
    for (const scenario::RateRow& row : pack.rates)
        rows.push_back({.charge = row.charge, .over = row.over});
    if (pack.reserve)
        rows.push_back({.charge = reserve_current * *pack.reserve, .over = *pack.reserve});
    return rows;
}

// Two wells through the rows of a label; of two rows, with the rate of the chemistry.
//   fails  at "<where>.rates", or ".reserve" where that is the one row beside the capacity
Result<Fit> fitted_to_rows(const Pack& pack, const ChemistryDefaults& defaults,
                           const std::string& where) {
    const auto rows = rows_of(pack, pack.rated_over.value_or(defaults.rated_over.value));
    auto fit =
        rows.size() == 2 ? fit_two_rows(rows[0], rows[1], defaults.rate.value) : fit_rows(rows);
    if (fit) return fit;
    Errors errors = fit.error();
    for (Error& error : errors)
        error.where = where + (pack.rates.empty() ? ".reserve" : ".rates");
    if (rows.size() == 2) {
        const auto& [slow, fast] = std::minmax(
            rows[0], rows[1], [](const auto& a, const auto& b) { return a.over > b.over; });
        if (const auto law = peukert_through(slow, fast); !law) {
            errors.front().found = law.error().front().found;
            errors.front().remedy = law.error().front().remedy;
        }
    }
    return fail(std::move(errors));
}

Said in_words(const Kinetics& kinetics) {
    return said<"c = {share}, k = {rate} 1/h, total {charge}">(
        words::with_decimals(kinetics.available.value(), 3),
        words::with_decimals(kinetics.rate / per_hour, 2), amount_in(kinetics.total, "Ah", 1));
}

// Wells that give the rated charge when emptied evenly over the rated time. method.md (10)
//   fit  of the label's rows, where it has more than one
Kinetics kinetics_of(const Pack& pack, const ChemistryDefaults& defaults, double charge_factor,
                     const std::optional<Fit>& fit, Taken& taken) {
    if (pack.two_well && !fit)
        return {.total = charge_factor * pack.two_well->total,
                .available = pack.two_well->available,
                .rate = pack.two_well->rate};
    const Duration rated_over = pack.rated_over.value_or(defaults.rated_over.value);
    if (!pack.rated_over)
        taken.note("rated_over", said<"taken as {value}">(amount_in(rated_over, "h", 0)),
                   defaults.rated_over.source);
    Kinetics kinetics{
        .total = 1.0 * coulomb, .available = defaults.available.value, .rate = defaults.rate.value};
    if (fit) kinetics = {1.0 * coulomb, fit->kinetics.available, fit->kinetics.rate};
    kinetics.total =
        charge_factor * pack.capacity * (1.0 * coulomb / capacity_over(kinetics, rated_over));
    if (fit)
        taken.note("two_well",
                   said<"fitted to the {n} rows of the label within {misfit} %: {wells}">(
                       rows_of(pack, rated_over).size(), percent(fit->residual.value(), 1),
                       in_words(kinetics)),
                   said<"{source}">("method.md (11)"));
    else if (kinetics.available < Share(1.0))
        taken.note("two_well",
                   said<"taken for {chemistry}: {wells}">(defaults.name, in_words(kinetics)),
                   defaults.available.source);
    else
        taken.note("two_well", said<"taken as one well: the charge does not depend on the rate">(),
                   defaults.available.source);
    return kinetics;
}

Resistance inner_of(const Pack& pack, const ChemistryDefaults& defaults, double series,
                    double factor, Taken& taken) {
    if (pack.resistance) return factor * *pack.resistance;
    const Resistance inner = series * (100.0 * ampere_hour / pack.capacity) *
                             defaults.resistance_of_100_ampere_hours.value;
    taken.note("resistance",
               said<"taken as {resistance} at {temperature} when new, typical of {chemistry} of "
                    "{capacity}">(amount_in(inner, "mΩ", 2), celsius(25.0), defaults.name,
                                  amount_in(pack.capacity, "Ah", 0)),
               defaults.resistance_of_100_ampere_hours.source);
    return factor * inner;
}

Resistance lead_of(const Pack& pack, Taken& taken) {
    if (pack.lead_resistance) return *pack.lead_resistance;
    constexpr Resistance usual = 0.002 * ohm;
    taken.note("lead_resistance",
               said<"taken as {resistance} for the pack's leads and connector">(usual), practice());
    return usual;
}

// What a sealed pack stores, less what gasses at the absorption voltage. method.md (71), (72)
ChargeEfficiency efficiency_of_sealed(const ChemistryDefaults& defaults, const Kinetics& kinetics,
                                      Charge rated, Current gassing, Taken& taken) {
    const Efficiency far_from_full = *defaults.coulombic.value;
    const auto at = [&](double charge) {
        return percent(
            sealed_efficiency(kinetics, rated, far_from_full, gassing, StateOfCharge(charge))
                .value());
    };
    taken.note("charge",
               said<"{half} % of the charge at the terminals is stored up to half charge, {fuller} "
                    "% at 97 %, {nearly_full} % at 99 %">(at(0.5), at(0.97), at(0.99)),
               defaults.coulombic.source);
    return sealed_efficiency(kinetics, rated, far_from_full, gassing);
}

//   gassing   at the absorption voltage, of a sealed lead-acid pack
ChargeEfficiency efficiency_of(const ChemistryDefaults& defaults, const Kinetics& kinetics,
                               Charge rated, std::optional<Current> gassing, Taken& taken) {
    if (gassing && defaults.coulombic.value)
        return efficiency_of_sealed(defaults, kinetics, rated, *gassing, taken);
    if (const auto& one = defaults.coulombic.value) {
        taken.note(
            "charge",
            said<"{share} % of the charge at the terminals is stored">(percent(one->value(), 1)),
            defaults.coulombic.source);
        return *one;
    }
    const auto at = [&](double charge) {
        return percent(lead_acid_efficiency(kinetics, rated, StateOfCharge(charge)).value());
    };
    taken.note("charge",
               said<"{half} % of the charge at the terminals is stored up to half charge, {fuller} "
                    "% at 90 %, {nearly_full} % at 97 %">(at(0.5), at(0.9), at(0.97)),
               defaults.coulombic.source);
    return lead_acid_efficiency(kinetics, rated);
}

// What many inverters for 12 V switch off at is 15 to 15.5 V: common practice, no source.
constexpr Voltage highest_absorption = 15.0 * volt;

// Of a charger that follows the warmth of the pack; a stated voltage above the limit is kept. (68)
Voltage compensated(Voltage absorption, Voltage per_kelvin, double series,
                    Temperature temperature) {
    const Voltage limit = std::max<Voltage>(absorption, series * highest_absorption);
    const Voltage least = 0.5 * absorption;
    return std::clamp<Voltage>(absorption - (in_celsius(temperature) - 25.0) * per_kelvin, least,
                               limit);
}

Said held_by_cold(Current current, Temperature temperature) {
    return said<"held to {current} at {temperature}">(amount_in(current, "A", 1),
                                                      to_the_degree(temperature));
}

Said of_another_module() {
    return said<"{source}, a 48 V module standing in for others">("[LiFePO4 48 V manual]");
}

// The most that it may be charged with; none where the grades of the cold allow none.
Current largest_charge_of(const Pack& pack, const ChemistryDefaults& defaults,
                          Temperature temperature, Taken& taken) {
    const Current stated = pack.charge_limit.value_or(defaults.charge_rate.value * pack.capacity);
    if (!pack.charge_limit)
        taken.note("charge_limit", said<"taken as {value}">(amount_in(stated, "A", 1)),
                   defaults.charge_rate.source);
    const auto rate = graded_charge_rate(pack.chemistry, temperature);
    if (!rate) return stated;
    const Current graded = *rate * pack.capacity;
    // A pack whose file lets it be charged this cold is not held to a grade of none.
    const bool allowed_colder = pack.coldest_charge && temperature >= *pack.coldest_charge;
    if (!(graded < stated) || (allowed_colder && graded == Current{})) return stated;
    taken.note("charge_limit", held_by_cold(graded, temperature), of_another_module());
    return graded;
}

Voltage absorption_of(const Pack& pack, const ChemistryDefaults& defaults, double series,
                      Temperature temperature, Taken& taken) {
    const Voltage warm = pack.absorption_voltage.value_or(series * defaults.absorption.value);
    if (!pack.absorption_voltage)
        taken.note("absorption_voltage", said<"taken as {value}">(amount_in(warm, "V", 1)),
                   defaults.absorption.source);
    if (!pack.absorption_per_kelvin || !(*pack.absorption_per_kelvin > Voltage{})) return warm;
    const Voltage now = compensated(warm, *pack.absorption_per_kelvin, series, temperature);
    const words::Amount voltage = amount_in(now, "V", 2);
    const words::Amount warmth = to_the_degree(temperature);
    taken.note("absorption_voltage",
               now >= series * highest_absorption
                   ? said<"{voltage} at {temperature}, and no higher, for what runs on the bus">(
                         voltage, warmth)
                   : said<"{voltage} at {temperature}">(voltage, warmth),
               said<"{source}">("method.md (68)"));
    return now;
}

Charging charging_of(const Pack& pack, const ChemistryDefaults& defaults, double series,
                     const Kinetics& kinetics, Charge rated, Temperature temperature,
                     Taken& taken) {
    Charging charging;
    const Current largest = largest_charge_of(pack, defaults, temperature, taken);
    charging.absorption = absorption_of(pack, defaults, series, temperature, taken);
    const auto coldest = pack.coldest_charge ? pack.coldest_charge : defaults.coldest_charge.value;
    if (coldest && !pack.coldest_charge)
        taken.note("coldest_charge",
                   said<"no charge taken below {temperature}">(to_the_degree(*coldest)),
                   defaults.coldest_charge.source);
    std::optional<Current> gassing;
    if (pack.chemistry != Chemistry::lifepo4)
        gassing =
            gassing_current(rated, *charging.absorption / (series * defaults.cells), temperature);
    charging.coulombic = efficiency_of(defaults, kinetics, rated, gassing, taken);
    charging.allowed = largest > Current{} && !(coldest && temperature < *coldest);
    charging.largest = largest;
    return charging;
}

// method.md (60), (61). The cold counts, warmth does not.
ChargingResistance charging_resistance_of(const ChemistryDefaults& defaults, double series,
                                          Charge rated, Temperature temperature, Taken& taken) {
    const auto& typical = defaults.charging.value;
    if (!typical) return {};
    constexpr double part_a_degree = 0.025;  // [Copetti 1993] (from memory)
    constexpr Duration knee = 7.0 * hour;    // measured up to there
    const double degrees = std::min(0.0, in_celsius(temperature) - 25.0);
    const ChargingResistance resistance{.when_empty = series * (100.0 * ampere_hour / rated) *
                                                      (1.0 - part_a_degree * degrees) *
                                                      typical->when_empty,
                                        .rise = typical->rise,
                                        .rated = rated,
                                        .knee = rated / knee,
                                        .beyond = typical->beyond};
    const auto at = [&](double charge) {
        const double times = 1.0 + typical->rise * charge / (1.001 - charge);
        return resistance.when_empty * times * rated / (10.0 * hour);
    };
    taken.note("charge",
               said<"charging in 10 h raises the voltage above the rested one by {half} at half "
                    "charge, {fuller} at 80 %">(amount_in(Voltage(at(0.5)), "V", 2),
                                                amount_in(Voltage(at(0.8)), "V", 2)),
               defaults.charging.source);
    return resistance;
}

std::optional<Current> current_limit_of(const Pack& pack, Temperature temperature, Taken& taken) {
    std::optional<Current> limit = pack.current_limit;
    if (pack.chemistry != Chemistry::lifepo4) return limit;
    if (!limit) {
        limit = 1.0 * per_hour * pack.capacity;
        taken.note("current_limit", said<"taken as {value}">(amount_in(*limit, "A", 0)),
                   said<"{source}, 100 A for 100 Ah">("[LFP 100 sheet]"));
    }
    const Frequency rate = *graded_discharge_rate(pack.chemistry, temperature);
    // A protection that lets nothing through still closes at rest, so its limit is not nothing:
    // no load draws as little.
    constexpr Frequency hardly_any = 1e-6 * per_hour;
    const Current graded = std::max(rate, hardly_any) * pack.capacity;
    // where the grades hold nothing back, the maker's limit may be above them
    if (graded < *limit && rate < 1.0 * per_hour) {
        limit = graded;
        taken.note("current_limit", held_by_cold(graded, temperature), of_another_module());
    }
    return limit;
}

// Pulses are stated warm: where the cold holds the continuous current back, they are held likewise.
std::vector<scenario::PulseLimit> pulses_of(const Pack& pack, std::optional<Current> limit) {
    std::vector<scenario::PulseLimit> pulses = pack.pulse;
    const std::optional<Current> stated = pack.current_limit;
    if (!stated || !limit || !(*limit < *stated)) return pulses;
    for (auto& pulse : pulses)
        pulse.current *= *limit / *stated;
    return pulses;
}

Share usable_of(const Pack& pack, const ChemistryDefaults& defaults, Taken& taken) {
    if (pack.usable) return *pack.usable;
    taken.note("usable",
               said<"taken as {share} % of the capacity in an emergency; daily use wants less">(
                   percent(defaults.usable.value.value())),
               defaults.usable.source);
    return defaults.usable.value;
}

void note_temperature(const TemperatureFactor& factor, const Said& what, Temperature temperature,
                      Taken& taken) {
    if (factor.within_table && factor.factor == 1.0) return;
    const words::Amount now = to_the_degree(temperature);
    const words::Amount warm = amount(celsius(25.0));
    const words::Number share = percent(factor.factor);
    taken.note(
        "chemistry",
        factor.within_table
            ? said<"{what} at {temperature} is {share} % of that at {warm}">(what, now, share, warm)
            : said<"{what} at {temperature} is {share} % of that at {warm}, beyond the "
                   "table: uncertain">(what, now, share, warm),
        factor.source);
}

// A voltage read at rest outranks a charge, which may come from the first pack of the file. It may
// tell of less than nothing at the rated draw; a charge that is given cannot.
Wells wells_at_start(const Pack& pack, const PackModel& model, Taken& taken) {
    if (pack.rested_voltage) {
        const StateOfCharge fill = std::clamp(model.at_rest.fill_at(*pack.rested_voltage),
                                              StateOfCharge(0.0), StateOfCharge(1.0));
        const StateOfCharge charge = charge_at_fill(model.kinetics, model.capacity, fill);
        taken.note("charge",
                   said<"taken as {share} % from the {voltage} read at rest; ask gauge how far "
                        "that can be off">(percent(shown(charge).value()),
                                           amount_in(*pack.rested_voltage, "V", 2)),
                   defaults_of(pack.chemistry).open_circuit_source);
        return rested_with(model.capacity, charge);
    }
    if (!pack.charge) taken.note("charge", said<"taken as full at the start">(), practice());
    // Wells that are stated to hold less than the rated charge are empty above 0.
    return rested_with(model.capacity, std::max(pack.charge.value_or(StateOfCharge(1.0)),
                                                lowest_charge(model.kinetics, model.capacity)));
}

// The same table without a curve of its own for charging.
OpenCircuit as_rested(const OpenCircuit& table) {
    if (table.charges_as_rested_to() == StateOfCharge(1.0)) return table;
    std::vector<Knot> knots;
    for (int index = 0; index < table.pieces(); ++index) {
        const StateOfCharge low(table.piece(index).low);
        knots.push_back({.fill = low, .voltage = table.voltage(low)});
    }
    const StateOfCharge full(1.0);
    knots.push_back({.fill = full, .voltage = table.voltage(full)});
    return OpenCircuit::through(knots).value();
}

Voltage nominal_of(const Pack& pack, const ChemistryDefaults& defaults, Taken& taken) {
    if (!pack.voltage)
        taken.note("voltage", said<"taken as {value}">(amount_in(defaults.nominal, "V", 1)),
                   practice());
    return pack.voltage.value_or(defaults.nominal);
}

// Of its own label, where that has rows beside the capacity; two_well may be the first pack's.
Result<std::optional<Fit>> fit_of_label(const Pack& pack, const ChemistryDefaults& defaults,
                                        const std::string& where) {
    if (pack.rates.empty() && !pack.reserve) return std::optional<Fit>{};
    auto through = fitted_to_rows(pack, defaults, where);
    if (!through) return fail(std::move(through.error()));
    return std::optional<Fit>(*through);
}

// The voltages of the model, which has its kinetics and capacity. AGM stands on a level while it is
// drawn. (53)
void add_tables(PackModel& model, double series) {
    const StateOfCharge lowest = lowest_charge(model.kinetics, model.capacity);
    model.at_rest = open_circuit_of(model.chemistry).scaled(series).from_lowest(lowest);
    // Of two wells the surface charge is the fuller one's, and no curve of its own.
    if (model.kinetics.available < Share(1.0)) model.at_rest = as_rested(model.at_rest);
    model.open_circuit = model.chemistry == Chemistry::agm
                             ? agm_level_while_drawn(lowest).scaled(series)
                             : model.at_rest;
}

std::optional<Voltage> cut_off_of(const Pack& pack, const ChemistryDefaults& defaults,
                                  double series, Taken& taken) {
    if (pack.cutoff_voltage || !defaults.pack_cut_off.value) return pack.cutoff_voltage;
    const Voltage usual = series * *defaults.pack_cut_off.value;
    taken.note("cutoff_voltage", said<"taken as {value}">(amount_in(usual, "V", 1)),
               defaults.pack_cut_off.source);
    return usual;
}

}  // namespace

Arrangement arranged(const PackModel& model, Resistance shared, const Stops& stops) {
    Arrangement result{
        .kinetics = model.kinetics,
        .open_circuit = &model.open_circuit,
        .at_rest = comes_back(model.open_circuit, model.at_rest) ? &model.at_rest : nullptr,
        .inner = model.inner,
        .path = model.lead + shared,
        .reachable = reachable_slowly(model),
        .locked = model.locked,
        .charging = model.charging,
        .stops = stops};
    if (!result.stops.pack_cut_off) result.stops.pack_cut_off = model.pack_cut_off;
    if (!result.stops.current_above) result.stops.current_above = model.current_limit;
    if (!result.stops.removed_above) result.stops.removed_above = model.usable;
    return result;
}

Result<PackModel> pack_model(const Pack& pack, const std::string& where, Temperature temperature,
                             Assumptions& assumptions) {
    if (Errors errors = faults_of(pack, where, temperature); !errors.empty())
        return fail(std::move(errors));
    Taken taken(where, assumptions);
    const ChemistryDefaults& defaults = defaults_of(pack.chemistry);
    const Voltage nominal = nominal_of(pack, defaults, taken);
    const double series = series_of(nominal / volt, defaults);
    const Ageing ageing = aged(pack, taken);
    const TemperatureFactor capacity = capacity_factor(pack.chemistry, temperature);
    const TemperatureFactor resistance = resistance_factor(pack.chemistry, temperature);
    note_temperature(capacity, said<"charge that can be drawn">(), temperature, taken);
    note_temperature(resistance, said<"resistance">(), temperature, taken);
    auto fit = fit_of_label(pack, defaults, where);
    if (!fit) return fail(std::move(fit.error()));

    PackModel model;
    model.chemistry = pack.chemistry;
    model.kinetics = kinetics_of(pack, defaults, ageing.charge, *fit, taken);
    model.capacity = ageing.charge * pack.capacity;
    add_tables(model, series);
    model.nominal = nominal;
    model.usable = usable_of(pack, defaults, taken).value() * model.capacity;
    // Depth and cold both count, [IEEE 485]; that of LiFePO4 depends on the rate of the draw too,
    // and what its cold locks in is reached before this share of it would be.
    if (pack.chemistry != Chemistry::lifepo4) model.usable = capacity.factor * model.usable;
    model.reachable = Share(capacity.factor);
    model.locked = cold_lock(pack.chemistry, temperature, model.capacity);
    model.inner = inner_of(pack, defaults, series, ageing.resistance * resistance.factor, taken);
    model.lead = lead_of(pack, taken);
    model.charging =
        charging_of(pack, defaults, series, model.kinetics, model.capacity, temperature, taken);
    model.charging.resistance =
        charging_resistance_of(defaults, series, model.capacity, temperature, taken);
    model.pack_cut_off = cut_off_of(pack, defaults, series, taken);
    model.current_limit = current_limit_of(pack, temperature, taken);
    model.pulse = pulses_of(pack, model.current_limit);
    model.at_start = wells_at_start(pack, model, taken);
    return model;
}

}  // namespace battery
