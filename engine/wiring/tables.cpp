#include "wiring/tables.hpp"

#include <algorithm>
#include <cassert>
#include <cctype>

#include "wiring/table_words.hpp"
#include "wiring/tables_text.hpp"
#include "words/toml.hpp"

namespace wiring {

namespace {

using units::ampere;

constexpr double metres_in_1000_feet = 304.8;  // [NIST SP 811] B.8, exact

// The tables are compiled in and read by the tests: what is wrong with them is ours to mend.
toml::table parsed(std::string_view text) {
    return toml::parse(text);
}

double number(const toml::table& table, std::string_view key) {
    const auto value = table[key].value<double>();
    assert(value);
    return value.value_or(0.0);
}

std::optional<double> maybe(const toml::table& table, std::string_view key) {
    return table[key].value<double>();
}

std::string words(const toml::table& table, std::string_view key) {
    return table[key].value_or(std::string());
}

std::vector<std::string> also_of(const toml::table& table) {
    std::vector<std::string> names;
    if (const toml::array* list = table["also"].as_array()) {
        for (const toml::node& name : *list) {
            names.push_back(name.value_or(std::string()));
        }
    }
    return names;
}

Reliability reliability_of(const toml::table& table) {
    const std::string word = words(table, "reliability");
    assert(word == "read" || word == "memory" || word == "practice");
    return word == "read" ? Reliability::read
                          : (word == "memory" ? Reliability::memory : Reliability::practice);
}

units::WireSize size_of(const toml::table& table, std::string_view key = "size") {
    const auto size = units::read_wire_size(words(table, key));
    assert(size);
    return *size;
}

units::AmericanGauge gauge_of(const toml::table& table) {
    return std::get<units::AmericanGauge>(size_of(table));
}

std::vector<const toml::table*> tables_of(const toml::table& file, std::string_view key) {
    std::vector<const toml::table*> found;
    if (const toml::array* list = file[key].as_array()) {
        for (const toml::node& node : *list) {
            found.push_back(node.as_table());
        }
    }
    return found;
}

std::vector<double> numbers(const toml::node* node) {
    std::vector<double> values;
    if (const toml::array* list = node == nullptr ? nullptr : node->as_array()) {
        for (const toml::node& value : *list) {
            values.push_back(value.value_or(0.0));
        }
    }
    return values;
}

std::vector<units::Current> currents(const toml::node* node) {
    std::vector<units::Current> values;
    for (const double value : numbers(node)) {
        values.push_back(value * ampere);
    }
    return values;
}

template <class Quantity>
std::optional<Quantity> maybe(const toml::table& table, std::string_view key, Quantity unit) {
    const auto value = maybe(table, key);
    return value ? std::optional(*value * unit) : std::nullopt;
}

// ---- Conductors.

std::vector<GaugeRow> read_gauges() {
    const toml::table file = parsed(conductors_text);
    constexpr auto unit = ResistancePerLength::from_value(1.0 / metres_in_1000_feet);
    std::vector<GaugeRow> rows;
    for (const toml::table* row : tables_of(file, "gauge")) {
        rows.push_back({.size = gauge_of(*row),
                        .strands = static_cast<int>(number(*row, "strands")),
                        .circular_mils = number(*row, "cmil"),
                        .boat_circular_mils = maybe(*row, "sae_cmil"),
                        .stranded = number(*row, "stranded") * unit,
                        .solid = maybe(*row, "solid", unit),
                        .coated = maybe(*row, "coated", unit),
                        .source = said_of_tables(words(*row, "source")),
                        .reliability = reliability_of(*row)});
    }
    return rows;
}

std::vector<MetricRow> read_metric() {
    const toml::table file = parsed(conductors_text);
    constexpr auto unit = ResistancePerLength::from_value(1e-3);
    std::vector<MetricRow> rows;
    for (const toml::table* row : tables_of(file, "metric")) {
        rows.push_back({.size = std::get<units::Area>(size_of(*row)),
                        .plain = number(*row, "plain") * unit,
                        .tinned = number(*row, "tinned") * unit,
                        .class2 = maybe(*row, "class2", unit),
                        .source = said_of_tables(words(*row, "source")),
                        .reliability = reliability_of(*row)});
    }
    return rows;
}

AmpacityColumns read_ampacity(std::string_view name) {
    const toml::table file = parsed(ampacity_text);
    const toml::table& table = *file[name].as_table();
    AmpacityColumns columns;
    for (const double degrees : numbers(table.get("insulation"))) {
        columns.insulation.push_back(units::celsius(degrees));
    }
    for (const double count : numbers(table.get("conductors"))) {
        columns.conductors.push_back(static_cast<int>(count));
    }
    columns.source = said_of_tables(words(table, "source"));
    for (const toml::table* row : tables_of(table, "row")) {
        columns.rows.push_back({.size = gauge_of(*row),
                                .allowed = currents(row->get("allowed")),
                                .largest_fuse = maybe(*row, "largest_fuse", ampere),
                                .reliability = reliability_of(*row)});
    }
    return columns;
}

// ---- Fuses and connectors.

std::optional<units::Duration> known_time(double seconds) {
    return seconds < 0.0 ? std::nullopt : std::optional(seconds * units::second);
}

FuseFamily fuse_family(const toml::table& row) {
    FuseFamily family{.name = words(row, "name"),
                      .also = also_of(row),
                      .sizes = currents(row.get("sizes")),
                      .breaks = {},
                      .drop = maybe(row, "drop", units::volt),
                      .opens = {},
                      .opens_by_size = {},
                      .source = said_of_tables(words(row, "source")),
                      .reliability = reliability_of(row)};
    if (const auto voltage = maybe(row, "voltage", units::volt)) {
        family.breaks.push_back({*voltage, number(row, "interrupts") * ampere});
    }
    const auto each_list = [&row](std::string_view key, auto use) {
        if (const toml::array* list = row[key].as_array()) {
            for (const toml::node& node : *list) {
                use(numbers(&node));
            }
        }
    };
    each_list("also_breaks", [&](const std::vector<double>& point) {
        family.breaks.push_back({point[0] * units::volt, point[1] * ampere});
    });
    each_list("opens", [&](const std::vector<double>& point) {
        family.opens.push_back({point[0] / 100.0, known_time(point[1]), known_time(point[2])});
    });
    each_list("opens_by_size", [&](const std::vector<double>& point) {
        family.opens_by_size.push_back(
            {point[0] * ampere, point[1] * units::second, point[2] * units::second});
    });
    return family;
}

ConnectorRow connector(const toml::table& row) {
    const auto whole = [&row](std::string_view key) {
        const auto value = row[key].value<int>();
        return value ? std::optional(*value) : std::nullopt;
    };
    const auto hottest = maybe(row, "hottest");
    return {.name = words(row, "name"),
            .also = also_of(row),
            .ul = maybe(row, "ul", ampere),
            .csa = maybe(row, "csa", ampere),
            .contact = maybe(row, "contact", units::ohm),
            .hottest = hottest ? std::optional(units::celsius(*hottest)) : std::nullopt,
            .hot_plug = maybe(row, "hot_plug", ampere),
            .hot_cycles = whole("hot_cycles"),
            .cycles = whole("cycles"),
            .voltage = maybe(row, "voltage", units::volt),
            .takes = row.contains("takes") ? std::optional(size_of(row, "takes")) : std::nullopt,
            .source = said_of_tables(words(row, "source")),
            .reliability = reliability_of(row)};
}

template <class Row>
std::vector<Row> rows_of(std::string_view text, std::string_view key,
                         Row (*make)(const toml::table&)) {
    const toml::table file = parsed(text);
    std::vector<Row> rows;
    for (const toml::table* row : tables_of(file, key)) {
        rows.push_back(make(*row));
    }
    return rows;
}

bool same_words(std::string_view a, std::string_view b) {
    return std::ranges::equal(a, b, [](char x, char y) {
        return std::tolower(static_cast<unsigned char>(x)) ==
               std::tolower(static_cast<unsigned char>(y));
    });
}

template <class Row>
const Row* named(const std::vector<Row>& rows, std::string_view name) {
    const auto row = std::ranges::find_if(rows, [name](const Row& candidate) {
        return same_words(candidate.name, name) ||
               std::ranges::any_of(candidate.also, [name](const std::string& other) {
                   return same_words(other, name);
               });
    });
    return row == rows.end() ? nullptr : &*row;
}

}  // namespace

words::Said words_for(Reliability reliability) {
    using words::said;
    switch (reliability) {
        case Reliability::read:
            return {};
        case Reliability::memory:
            return said<"from memory: confirm with the data sheet">();
        case Reliability::practice:
            return said<"common practice, no source">();
        case Reliability::builder:
            return said<"as you give it">();
    }
    return {};
}

const std::vector<GaugeRow>& gauge_rows() {
    static const std::vector<GaugeRow> rows = read_gauges();
    return rows;
}

const std::vector<MetricRow>& metric_rows() {
    static const std::vector<MetricRow> rows = read_metric();
    return rows;
}

const AmpacityColumns& ampacity_columns(AmpacityTable table) {
    static const AmpacityColumns boat = read_ampacity("boat");
    static const AmpacityColumns building = read_ampacity("building");
    static const AmpacityColumns cord = read_ampacity("cord");
    return table == AmpacityTable::boat ? boat
                                        : (table == AmpacityTable::building ? building : cord);
}

const std::vector<FuseFamily>& fuse_families() {
    static const std::vector<FuseFamily> rows = rows_of(fuses_text, "family", fuse_family);
    return rows;
}

const std::vector<ConnectorRow>& connector_rows() {
    static const std::vector<ConnectorRow> rows = rows_of(connectors_text, "connector", connector);
    return rows;
}

const FuseFamily* find_fuse_family(std::string_view name) {
    return named(fuse_families(), name);
}

const ConnectorRow* find_connector(std::string_view name) {
    return named(connector_rows(), name);
}

const std::vector<units::Current>& standard_sizes() {
    static const std::vector<units::Current> sizes = [] {
        std::vector<units::Current> all;
        for (const double size :
             {1.0,   2.0,   3.0,   4.0,   5.0,   6.0,   7.5,    10.0,  15.0,  20.0,
              25.0,  30.0,  35.0,  40.0,  45.0,  50.0,  60.0,   70.0,  80.0,  90.0,
              100.0, 110.0, 125.0, 150.0, 175.0, 200.0, 225.0,  250.0, 300.0, 350.0,
              400.0, 450.0, 500.0, 600.0, 700.0, 800.0, 1000.0, 1200.0}) {
            all.push_back(size * ampere);
        }
        return all;
    }();
    return sizes;
}

}  // namespace wiring
