#include "wiring/ampacity.hpp"

#include <algorithm>
#include <cmath>

namespace wiring {

namespace {

using units::Current;
using units::Temperature;

Temperature reference() {
    return units::celsius(table_ambient_celsius);
}

// The row of this size, or of the next thinner gauge for a metric size; of a cord's odd sizes too.
const AmpacityRow* row_for(const AmpacityColumns& columns, const units::WireSize& size) {
    const auto* gauge = std::get_if<units::AmericanGauge>(&size);
    const AmpacityRow* best = nullptr;
    for (const AmpacityRow& row : columns.rows) {
        const bool fits = gauge != nullptr ? row.size.number == gauge->number
                                           : area_of(row.size) <= 1.000001 * area_of(size);
        if (fits && (best == nullptr || area_of(row.size) > area_of(best->size))) {
            best = &row;
        }
    }
    return best;
}

// The hottest column that the insulation stands.
std::optional<std::size_t> column_for(const AmpacityColumns& columns, Temperature insulation) {
    std::optional<std::size_t> chosen;
    for (std::size_t i = 0; i < columns.insulation.size(); ++i) {
        if (units::in_celsius(columns.insulation[i]) <= units::in_celsius(insulation) + 1e-6) {
            chosen = i;
        }
    }
    return chosen;
}

AmpacityTable table_of(const scenario::Wire& wire, AmpacityTable otherwise) {
    if (!wire.table) {
        return otherwise;
    }
    return *wire.table == "boat"       ? AmpacityTable::boat
           : *wire.table == "building" ? AmpacityTable::building
                                       : AmpacityTable::cord;
}

// What of the table applies before any derating: ampacity and the temperature it is for.
struct Looked {
    Current allowed{};
    Temperature insulation{};
    const AmpacityRow* row = nullptr;
};

std::optional<Looked> look_up(const AmpacityColumns& columns, const scenario::Wire& wire,
                              Temperature insulation) {
    const AmpacityRow* row = row_for(columns, wire.size);
    if (row == nullptr) {
        return std::nullopt;
    }
    std::size_t column = 0;
    Temperature at = insulation;
    if (columns.insulation.empty()) {
        column = wire.bundle.value_or(2) > 2 ? 1 : 0;
        at = units::celsius(60.0);  // cord unless it is marked, [NEC tables]
    } else {
        const auto found = column_for(columns, insulation);
        if (!found) {
            return std::nullopt;
        }
        column = *found;
        at = columns.insulation[column];
    }
    if (row->allowed[column] <= Current()) {
        return std::nullopt;
    }
    return Looked{row->allowed[column], at, row};
}

}  // namespace

double ambient_factor(Temperature insulation, Temperature around) {
    const double room = (insulation - around) / units::kelvin;
    const double tabled = (insulation - reference()) / units::kelvin;
    if (room <= 0.0 || tabled <= 0.0) {
        return 0.0;
    }
    return std::min(1.0, std::sqrt(room / tabled));
}

double bundle_factor(AmpacityTable table, int conductors) {
    if (table == AmpacityTable::boat) {
        return conductors <= 2    ? 1.0
               : conductors == 3  ? 0.7
               : conductors <= 6  ? 0.6
               : conductors <= 24 ? 0.5
                                  : 0.4;  // [Marine catalogue]
    }
    return conductors <= 3    ? 1.0
           : conductors <= 6  ? 0.8
           : conductors <= 9  ? 0.7
           : conductors <= 20 ? 0.5
           : conductors <= 30 ? 0.45
           : conductors <= 40 ? 0.4
                              : 0.35;  // [NEC] 310.15(C)(1)
}

namespace {

// The figure of whoever built it, in place of a table.
Ampacity stated(Current carries, Temperature insulation, double ambient, double bundle,
                double runs) {
    return {.tabulated = carries,
            .ambient = ambient,
            .bundle = bundle,
            .allowed = runs * ambient * bundle * carries,
            .largest_fuse = std::nullopt,
            .insulation = insulation,
            .source = "circuit.links.ampacity",
            .reliability = Reliability::builder};
}

// Terminals made for less heat than the insulation allow no more than their own column gives.
std::optional<Current> allowed_by_terminals(const AmpacityColumns& columns,
                                            const scenario::Wire& wire, Temperature insulation) {
    if (!wire.terminals || !(*wire.terminals < insulation)) {
        return std::nullopt;
    }
    const auto cooler = look_up(columns, wire, *wire.terminals);
    return cooler ? std::optional(cooler->allowed) : std::nullopt;
}

}  // namespace

std::optional<Ampacity> ampacity_of(const scenario::Wire& wire, const Surroundings& surroundings) {
    const AmpacityTable table = table_of(wire, surroundings.table);
    const AmpacityColumns& columns = ampacity_columns(table);
    const Temperature insulation = wire.insulation.value_or(surroundings.insulation);
    const Temperature around = wire.surroundings.value_or(surroundings.around);
    const double runs = wire.runs.value_or(1);
    const double bundle = bundle_factor(table, wire.bundle.value_or(2));
    if (wire.ampacity) {
        return stated(*wire.ampacity, insulation, ambient_factor(insulation, around), bundle, runs);
    }
    const auto looked = look_up(columns, wire, insulation);
    if (!looked) {
        return std::nullopt;
    }
    const double ambient = ambient_factor(looked->insulation, around);
    const Current by_heat = ambient * bundle * looked->allowed;
    const auto terminals = allowed_by_terminals(columns, wire, looked->insulation);
    const bool by_terminals = terminals && *terminals < by_heat;
    const auto& cap = looked->row->largest_fuse;
    return Ampacity{.tabulated = looked->allowed,
                    .ambient = ambient,
                    .bundle = bundle,
                    .allowed = runs * (by_terminals ? *terminals : by_heat),
                    .largest_fuse = cap ? std::optional(runs * *cap) : std::nullopt,
                    .insulation = looked->insulation,
                    .by_terminals = by_terminals,
                    .source = columns.source,
                    .reliability = looked->row->reliability};
}

}  // namespace wiring
