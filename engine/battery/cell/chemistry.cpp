#include "battery/cell/chemistry.hpp"

#include <algorithm>
#include <cassert>
#include <initializer_list>
#include <iterator>
#include <vector>

#include "units/said.hpp"

namespace battery {

using namespace units;
using scenario::Chemistry;
using words::Said;
using words::said;

namespace {

Said practice() {
    return said<"common practice, no source">();
}

// The gas of a sealed pack becomes water again.
Said recombines() {
    return said<
        "recharge factors of 1.02 to 1.05 in a sealed battery maker's charging notes; the "
        "gas recombines">();
}

Said no_protection() {
    return said<"no protection of its own">();
}

Said not_forbidden() {
    return said<"charging is not forbidden by cold">();
}

Said low_end(std::string_view source, double low, double high) {
    return said<"{source}, low end of {low} to {high}">(source, words::with_decimals(low, 1),
                                                        amount_in(high * volt, "V", 1));
}

// Widths, rates and totals: fitted to the makers' tables named; method.md, "Defaults".
const ChemistryDefaults& flooded() {
    static const ChemistryDefaults defaults{
        .name = said<"flooded lead-acid">(),
        .cells = 6.0,
        .nominal = 12.0 * volt,
        .available = {Share(0.43),
                      said<"fitted to the rate rows of {source}">("[Flooded 225 Ah sheet]")},
        .rate = {0.70 * per_hour,
                 said<"fitted to the rate rows of {source}">("[Flooded 225 Ah sheet]")},
        .rated_over = {20.0 * hour, practice()},
        .resistance_of_100_ampere_hours = {0.011 * ohm, said<"from memory, weak">()},
        .charging = {ChargingOf100AmpereHours{0.050 * ohm, 0.30},
                     said<"ours, between [Schiffer 2007] and a trade chart of charging volts (from "
                          "memory)">()},
        .charge_rate = {0.13 * per_hour, said<"{source}, 10 to 13 %">("[Charger size]")},
        .absorption = {14.82 * volt, "[Flooded 225 Ah sheet]"},
        .floating = {13.50 * volt, "[Flooded 225 Ah sheet]"},
        .pack_cut_off = {std::nullopt, no_protection()},
        .coldest_charge = {std::nullopt, not_forbidden()},
        .usable = {Share(0.80), practice()},
        .coulombic = {std::nullopt,
                      said<"[Copetti 1993], at most 95 %: [IEC 61427] (both from memory)">()},
        .self_discharge = {Share(0.06), "[Storage table]"},
        .open_circuit_source =
            said<"specific gravity rows of {source} + 0.845 V a cell; 0 % extrapolated">(
                "[Flooded 225 Ah sheet]")};
    return defaults;
}

const ChemistryDefaults& agm() {
    static const ChemistryDefaults defaults{
        .name = "AGM",
        .cells = 6.0,
        .nominal = 12.0 * volt,
        // Ours: 100, 92, 83.5, 77 and 60 Ah over 20, 10, 5, 3 and 1 h to 10.5 V, between the exponents
        // of [Peukert list] and [AGM 100 Ah sheet]; fitted with the voltage of (49), 1.9 % rms.
        .available = {Share(0.465), said<"ours: between {first} and {second}">(
                                        "[Peukert list]", "[AGM 100 Ah sheet]")},
        .rate = {0.87 * per_hour, said<"ours: between {first} and {second}">("[Peukert list]",
                                                                             "[AGM 100 Ah sheet]")},
        .rated_over = {20.0 * hour, practice()},
        .resistance_of_100_ampere_hours = {0.0080 * ohm, said<"ours, set with the wells; weak">()},
        // Above the level (53): what [Schiffer 2007]'s law gives at C/7 above the rested voltage, where
        // [AGM charge]'s authors' battery of 17 Ah met it, and the 31.2 A of [AGM charge].
        .charging = {ChargingOf100AmpereHours{0.036 * ohm, 0.55, 0.20},
                     said<"ours, set to [Schiffer 2007] at C/7 and to [AGM charge] at 0.31 C">()},
        .charge_rate = {0.30 * per_hour, "[AGM 100 Ah sheet]"},
        .absorption = {14.4 * volt, low_end("[AGM 100 Ah sheet]", 14.4, 15.0)},
        .floating = {13.5 * volt, "[AGM 100 Ah sheet]"},
        .pack_cut_off = {std::nullopt, no_protection()},
        .coldest_charge = {std::nullopt, not_forbidden()},
        .usable = {Share(0.80), practice()},
        .coulombic = {Efficiency(0.97), recombines()},
        .self_discharge = {Share(0.03), "[Storage table]"},
        .open_circuit_source = "[AGM 26 Ah data file]"};
    return defaults;
}

const ChemistryDefaults& gel() {
    static const ChemistryDefaults defaults{
        .name = said<"gel">(),
        .cells = 6.0,
        .nominal = 12.0 * volt,
        .available = {Share(0.63), said<"fitted to 20 h capacities and reserve times of four gel "
                                        "batteries, [Gel ratings]">()},
        .rate = {0.50 * per_hour, said<"assumed in the fit to [Gel ratings]">()},
        .rated_over = {20.0 * hour, practice()},
        .resistance_of_100_ampere_hours = {0.010 * ohm, said<"from memory, weak">()},
        .charging = {ChargingOf100AmpereHours{0.0252 * ohm, 0.888},
                     said<"{source} as open models carry its constants; its cells were flooded">(
                         "[Schiffer 2007]")},
        .charge_rate = {0.20 * per_hour, said<"ours; trade notes have 5 to 40 %">()},
        .absorption = {14.1 * volt, low_end("[Gel regimen]", 14.1, 14.4)},
        .floating = {13.5 * volt, "[Deep-cycle guide]"},
        .pack_cut_off = {std::nullopt, no_protection()},
        .coldest_charge = {std::nullopt, not_forbidden()},
        .usable = {Share(0.80), practice()},
        .coulombic = {Efficiency(0.97), recombines()},
        .self_discharge = {Share(0.02), "[Storage table]"},
        .open_circuit_source = said<"{source}, a valve-regulated battery standing in for gel">(
            "[Sealed 104 Ah data file]")};
    return defaults;
}

const ChemistryDefaults& lifepo4() {
    static const ChemistryDefaults defaults{
        .name = "LiFePO4",
        .cells = 4.0,
        .nominal = 12.8 * volt,
        .available = {Share(1.0),
                      said<"nearly independent of the rate; common practice, no table found">()},
        .rate = {Frequency{}, said<"one well needs none">()},
        .rated_over = {5.0 * hour, practice()},
        .resistance_of_100_ampere_hours =
            {0.010 * ohm,
             said<"from memory; makers' limit 20 milliohm at 100 Ah, [LFP 100 sheet]">()},
        .charging = {std::nullopt, said<"the inner resistance; its charging curve ends higher">()},
        .charge_rate = {0.50 * per_hour, said<"{source}, recommended">("[LFP 100 sheet]")},
        .absorption = {14.4 * volt, low_end("[LFP 100 sheet]", 14.4, 14.6)},
        .floating = {13.9 * volt, "[LFP 100 sheet]"},
        .pack_cut_off = {10.0 * volt, said<"{source}, 2.5 V a cell">("[LFP 100 sheet]")},
        .coldest_charge = {celsius(0.0), said<"{source}, charge from {temperature}">(
                                             "[LFP 100 sheet]", celsius(0.0))},
        .usable = {Share(0.90), practice()},
        .coulombic = {Efficiency(0.995), "[Li-ion efficiency 2019]"},
        .self_discharge = {Share(0.03), said<"makers' limit, {source}">("[LFP 100 sheet]")},
        .open_circuit_source =
            said<"{source}, cell measured at C/32, four in series">("[Sunil 2025]")};
    return defaults;
}

struct Row {
    double fill;
    double volts;
};

OpenCircuit table(std::initializer_list<Row> rows, double cells) {
    std::vector<Knot> knots;
    for (const Row& row : rows)
        knots.push_back({StateOfCharge(row.fill), cells * row.volts * volt});
    const auto made = OpenCircuit::through(knots);
    assert(made.has_value());
    return *made;
}

// [Flooded 225 Ah sheet]: specific gravity at 100 … 10 %; a cell rests at that + 0.845 V. The row at 0 %
// goes on by the last difference.
OpenCircuit flooded_table() {
    constexpr double offset = 0.845;
    return table({{0.0, 1.048 + offset},
                  {0.1, 1.073 + offset},
                  {0.2, 1.098 + offset},
                  {0.3, 1.124 + offset},
                  {0.4, 1.148 + offset},
                  {0.5, 1.172 + offset},
                  {0.6, 1.195 + offset},
                  {0.7, 1.217 + offset},
                  {0.8, 1.238 + offset},
                  {0.9, 1.258 + offset},
                  {1.0, 1.277 + offset}},
                 6.0);
}

// [AGM 26 Ah data file]: 12 V 26 Ah AGM
OpenCircuit agm_table() {
    return table({{0.0, 11.70},
                  {0.1, 11.85},
                  {0.2, 11.96},
                  {0.3, 12.11},
                  {0.4, 12.26},
                  {0.5, 12.37},
                  {0.6, 12.48},
                  {0.7, 12.59},
                  {0.8, 12.67},
                  {0.9, 12.78},
                  {1.0, 12.89}},
                 1.0);
}

// The level of an AGM pack while it is drawn, behind 8 milliohm at 100 Ah: ours, a curve that two
// batteries (100 Ah [AGM charge] at 10 A, 17 Ah from C/37 to C/6.5, eight discharges) meet within
// about 25 mV rms below 90 %; above 90 % its last line goes on. Below 0 % it falls to where a
// discharge at the rated current ends at 10.5 V.
constexpr Row agm_level[] = {{-0.066, 10.62}, {-0.03, 11.07}, {0.0, 11.23}, {0.05, 11.42},
                             {0.1, 11.56},    {0.2, 11.77},   {0.3, 11.94}, {0.4, 12.09},
                             {0.5, 12.23},    {0.6, 12.36},   {0.7, 12.50}, {0.8, 12.63},
                             {0.9, 12.75},    {1.0, 12.87}};

// [Sealed 104 Ah data file]: 12 V 104 Ah valve-regulated
OpenCircuit valve_regulated_table() {
    return table({{0.0, 11.6}, {0.2, 12.0}, {0.4, 12.2}, {0.6, 12.4}, {0.8, 12.7}, {1.0, 13.0}},
                 1.0);
}

// [Sunil 2025], four cells at C/32. Up to 98.5 % the mean of both ways; what the cells show above
// that while they are charged is surface charge, method.md (64): rested, a full pack stands at
// 13.50 V (ours: 13.30 to 13.56 V is told of packs that rested for days).
OpenCircuit lifepo4_table() {
    constexpr double full = 13.50;
    constexpr double charged_at_99 = 13.415 + (full - 13.415) * (0.995 - 0.985) / (1.0 - 0.985);
    std::vector<Knot> knots;
    constexpr Row rows[] = {{0.0, 8.041},     {0.0033, 9.671},  {0.0117, 10.962}, {0.0267, 11.720},
                            {0.0534, 12.349}, {0.0885, 12.777}, {0.15, 12.863},   {0.20, 12.965},
                            {0.25, 13.047},   {0.30, 13.111},   {0.35, 13.153},   {0.40, 13.179},
                            {0.60, 13.213},   {0.65, 13.228},   {0.70, 13.265},   {0.75, 13.332},
                            {0.80, 13.348},   {0.97, 13.378},   {0.98, 13.392},   {0.985, 13.415}};
    for (const Row& row : rows)
        knots.push_back({StateOfCharge(row.fill), row.volts * volt});
    knots.push_back({StateOfCharge(0.995), charged_at_99 * volt, (13.672 - charged_at_99) * volt});
    knots.push_back({StateOfCharge(1.0), full * volt, (14.392 - full) * volt});
    const auto made = OpenCircuit::through(knots);
    assert(made.has_value());
    return *made;
}

}  // namespace

const ChemistryDefaults& defaults_of(Chemistry chemistry) {
    switch (chemistry) {
        case Chemistry::flooded:
            return flooded();
        case Chemistry::agm:
            return agm();
        case Chemistry::gel:
            return gel();
        case Chemistry::lifepo4:
            break;
    }
    return lifepo4();
}

OpenCircuit agm_level_while_drawn(StateOfCharge lowest) {
    const auto fill_of = [&](double charge) {
        return StateOfCharge((charge - lowest.value()) / lowest.complement().value());
    };
    constexpr double hair = 1e-9;
    // At the lowest charge: on the line it lies on, or that of the last two rows.
    std::size_t above = 1;
    while (above + 1 < std::size(agm_level) && agm_level[above].fill <= lowest.value() + hair)
        ++above;
    const Row& high = agm_level[above];
    const Row& low = agm_level[above - 1];
    const double there =
        low.volts + (lowest.value() - low.fill) * (high.volts - low.volts) / (high.fill - low.fill);
    constexpr double least = 6.0;  // ours; half of what a pack has, and of no use
    std::vector<Knot> knots{{StateOfCharge(0.0), std::max(least, there) * volt}};
    for (const Row& row : agm_level)
        if (row.fill > lowest.value() + hair && row.volts * volt > knots.back().voltage)
            knots.push_back({fill_of(row.fill), row.volts * volt});
    knots.back().fill = StateOfCharge(1.0);
    const auto made = OpenCircuit::through(knots);
    assert(made.has_value());
    return *made;
}

const OpenCircuit& open_circuit_of(Chemistry chemistry) {
    static const OpenCircuit of_flooded = flooded_table();
    static const OpenCircuit of_agm = agm_table();
    static const OpenCircuit of_gel = valve_regulated_table();
    static const OpenCircuit of_lifepo4 = lifepo4_table();
    switch (chemistry) {
        case Chemistry::flooded:
            return of_flooded;
        case Chemistry::agm:
            return of_agm;
        case Chemistry::gel:
            return of_gel;
        case Chemistry::lifepo4:
            break;
    }
    return of_lifepo4;
}

}  // namespace battery
