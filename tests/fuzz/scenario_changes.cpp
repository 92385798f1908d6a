#include <array>

#include "fuzz/changes.hpp"
#include "scenario/keys/descriptions.hpp"

namespace fuzz {

namespace {

struct Table {
    std::string header;             // "[[load]]"
    std::string name;               // "load"
    std::vector<std::string> keys;  // "count"
    std::vector<std::string> lines;
};

template <class Described>
Table table(const std::string& name, bool several) {
    Table made{.header = several ? "[[" + name + "]]" : "[" + name + "]", .name = name};
    for (const auto& key : scenario::describe<Described>().keys) {
        made.keys.emplace_back(key->words.name);
        made.lines.push_back(made.keys.back() + " = " + key->example());
    }
    return made;
}

// Every table of a file with an example of each key.
const std::vector<Table>& tables() {
    static const std::vector<Table> all{
        table<scenario::Outage>("outage", false),
        table<scenario::Place>("place", false),
        table<scenario::Pack>("pack", true),
        table<scenario::Inverter>("inverter", false),
        table<scenario::Panel>("panel", true),
        table<scenario::ChargeController>("charge_controller", false),
        table<scenario::Charger>("charger", true),
        table<scenario::Load>("load", true),
        table<scenario::Motor>("load.motor", false),
        table<scenario::Circuit>("circuit", true),
        table<scenario::Storage>("storage", false),
        table<scenario::Goal>("goal", false),
        table<scenario::LogEntry>("log", true)};
    return all;
}

constexpr std::array<std::string_view, 24> units{
    "W", "kW", "Wh",   "kWh",  "Ah", "A",   "mA",  "V",  "mohm", "ohm", "h",  "min",
    "s", "d",  "degC", "degF", "%",  "deg", "AWG", "ft", "m",    "VA",  "hp", "kWh/yr"};

bool is_header(const std::string& line) {
    return line.starts_with("[");
}

// From a header to the next one; the whole text where there is none.
std::vector<std::string> some_table(const std::vector<std::string>& lines, std::size_t at) {
    std::size_t begin = at;
    while (begin > 0 && !is_header(lines[begin]))
        --begin;
    std::size_t end = begin + 1;
    while (end < lines.size() && !is_header(lines[end]))
        ++end;
    return {lines.begin() + std::ptrdiff_t(begin), lines.begin() + std::ptrdiff_t(end)};
}

const Table* described(const std::vector<std::string>& lines, std::size_t at) {
    for (std::size_t i = at + 1; i-- > 0;)
        if (is_header(lines[i]))
            for (const auto& table : tables())
                if (lines[i].starts_with(table.header)) return &table;
    return nullptr;
}

std::string with_unit_changed(const std::string& line, Random& random) {
    const auto end = line.rfind('"');
    const auto space = line.rfind(' ', end);
    if (end == std::string::npos || space == std::string::npos) return line;
    return line.substr(0, space + 1) + std::string(one_of(units, random)) + line.substr(end);
}

// Tables of one kind must differ in name.
void rename(std::vector<std::string>& table, Random& random) {
    for (auto& line : table)
        if (line.starts_with("name"))
            line = "name = \"part " + std::to_string(random() % 100) + "\"";
}

std::size_t header_of(const std::vector<std::string>& lines, std::size_t at) {
    while (at > 0 && !is_header(lines[at]))
        --at;
    return at;
}

// In the place of the line that has the key already, or below the header.
void put_in_a_key(std::vector<std::string>& lines, std::size_t at, Random& random) {
    const Table* table = described(lines, at);
    if (table == nullptr) return;
    const std::size_t key = below(table->keys.size(), random);
    std::string line = table->lines[key];
    if (random() % 2 == 0) line = with_figure_changed(line, random);
    std::size_t place = header_of(lines, at) + 1;
    for (std::size_t i = place; i < lines.size() && !is_header(lines[i]); ++i)
        if (lines[i].starts_with(table->keys[key] + " ")) {
            lines[i] = line;
            return;
        }
    lines.insert(lines.begin() + std::ptrdiff_t(place), line);
}

void put_in_a_table(std::vector<std::string>& lines, Random& random) {
    const Table& table = one_of(tables(), random);
    std::vector<std::string> made{table.header};
    const auto share = 2 + random() % 6;
    for (std::size_t i = 0; i < table.lines.size(); ++i)
        if (table.keys[i] == "name" || random() % share == 0) made.push_back(table.lines[i]);
    rename(made, random);
    lines.insert(lines.end(), made.begin(), made.end());
}

void put_in_a_table_of(std::vector<std::string>& lines, const std::vector<std::string>& others,
                       Random& random) {
    auto table = some_table(others, below(others.size(), random));
    rename(table, random);
    lines.insert(lines.end(), table.begin(), table.end());
}

void take_out_a_table(std::vector<std::string>& lines, std::size_t at) {
    const auto table = some_table(lines, at);
    if (table.size() == lines.size()) return;
    const auto begin = lines.begin() + std::ptrdiff_t(header_of(lines, at));
    lines.erase(begin, begin + std::ptrdiff_t(table.size()));
}

// What seldom leaves a file that can be read.
void change_any_line(std::vector<std::string>& lines, const std::vector<std::string>& others,
                     std::size_t at, Random& random) {
    const auto place = lines.begin() + std::ptrdiff_t(at);
    switch (random() % 5) {
        case 0:
            if (lines.size() > 1) lines.erase(place);
            break;
        case 1:
            lines.insert(place, std::string(*place));
            break;
        case 2:
            std::swap(*place, lines[below(lines.size(), random)]);
            break;
        case 3:
            *place = one_of(others, random);
            break;
        default:
            *place = with_unit_changed(*place, random);
    }
}

void change_one_thing(std::vector<std::string>& lines, const std::vector<std::string>& others,
                      Random& random) {
    const std::size_t at = below(lines.size(), random);
    switch (random() % 16) {
        case 0:
            change_any_line(lines, others, at, random);
            break;
        case 1:
            take_out_a_table(lines, at);
            break;
        case 2:
            put_in_a_table_of(lines, others, random);
            break;
        case 3:
            put_in_a_table(lines, random);
            break;
        case 4:
        case 5:
        case 6:
        case 7:
        case 8:
            put_in_a_key(lines, at, random);
            break;
        default:
            lines[at] = with_figure_changed(lines[at], random);
    }
}

}  // namespace

std::string with_scenario_changed(std::string_view text, std::string_view other, Random& random) {
    auto lines = parts_of(text, '\n');
    const auto others = parts_of(other, '\n');
    for (auto changes = 1 + random() % 3; changes > 0; --changes)
        change_one_thing(lines, others, random);
    std::string changed = joined(lines, '\n');
    return random() % 24 == 0 ? with_bytes_changed(std::move(changed), random) : changed;
}

std::string any_override(Random& random) {
    const Table& table = one_of(tables(), random);
    const std::size_t key = below(table.keys.size(), random);
    const std::string one = table.header.starts_with("[[") ? "[0]" : "";
    std::string value = table.lines[key].substr(table.keys[key].size() + 3);
    if (random() % 2 == 0) value = with_figure_changed(value, random);
    return table.name + one + "." + table.keys[key] + "=" + value;
}

}  // namespace fuzz
