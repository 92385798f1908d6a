#include <algorithm>
#include <cctype>

#include <fmt/format.h>

#include "scenario/file/tables.hpp"
#include "units/quote.hpp"

namespace scenario {

using words::Said;
using words::said;

void warn_of_unknown_key(Reading& reading, const Spot& table, const Entry& entry,
                         const std::vector<std::string_view>& known) {
    Spot spot = table.at(entry.value, units::quote(entry.key));
    const std::string_view nearest = nearest_word(entry.key, known);
    const Said keys = one_after_the_other(known);
    if (nearest.empty()) {
        reading.warn_of_unknown(spot, said<"it is kept in the file when that is saved">(),
                                said<"there are {keys}">(keys));
    } else {
        reading.warn_of_unknown(spot, said<"did you mean {word}?">(nearest),
                                said<"did you mean {word}? There are {keys}">(nearest, keys));
    }
}

namespace {

// "1.9 kWh / 31 h" or "120 V, 1.5 A" as the table that was meant; empty where the parts of the text
// are not as many as the keys.
std::string as_table(const Node& node, const std::vector<std::string_view>& required) {
    if (node.kind != Node::Kind::text || required.size() < 2) {
        return {};
    }
    std::vector<std::string> parts(1);
    for (const char c : node.text) {
        if (c == '/' || c == ',') {
            parts.emplace_back();
        } else if (c != ' ' || !parts.back().empty()) {
            parts.back() += c;
        }
    }
    if (parts.size() != required.size()) {
        return {};
    }
    std::string table = "{";
    for (std::size_t i = 0; i < parts.size(); ++i) {
        parts[i].erase(parts[i].find_last_not_of(' ') + 1);
        if (parts[i].empty()) {
            return {};
        }
        // "1 kWh/d" is a kilowatt-hour in one day.
        if (i > 0 && std::isalpha(static_cast<unsigned char>(parts[i].front())) != 0) {
            parts[i].insert(0, "1 ");
        }
        table += fmt::format("{}{} = {}", i > 0 ? ", " : "", required[i],
                             in_quotes(units::quote(parts[i])));
    }
    return table + '}';
}

}  // namespace

void refuse_no_table(Reading& reading, const Spot& spot, std::string_view example,
                     const std::vector<std::string_view>& required) {
    const bool doubled =
        spot.node->kind == Node::Kind::list && spot.node->form == Node::Form::header;
    if (doubled) {
        reading.refuse(spot, said<"found [[{table}]], though there is only one">(spot.path),
                       said<"write [{table}], once">(spot.path));
        return;
    }
    const std::string meant = as_table(*spot.node, required);
    reading.refuse(spot, said<"found {value}">(shown(*spot.node)),
                   meant.empty() ? said<"give several keys together, such as {example}">(example)
                                 : said<"write {value}">(meant));
}

bool is_list_of_tables(Reading& reading, const Spot& spot, std::string_view label,
                       std::size_t most) {
    const Node& node = *spot.node;
    const Said remedy = said<"write [[{table}]] in double brackets above each">(label);
    if (node.kind == Node::Kind::table && node.form == Node::Form::header) {
        reading.refuse(spot, said<"found [{table}], though there may be several">(label), remedy);
        return false;
    }
    if (node.kind != Node::Kind::list) {
        reading.refuse(spot, said<"found {value}">(shown(node)), remedy);
        return false;
    }
    if (node.items.size() > most) {
        reading.refuse(spot, said<"found {n} entries">(node.items.size()),
                       said<"give at most {n}; count says how many are alike">(most));
        return false;
    }
    for (std::size_t i = 0; i < node.items.size(); ++i) {
        if (node.items[i].kind != Node::Kind::table) {
            reading.refuse(spot.at(node.items[i], i), said<"found {value}">(shown(node.items[i])),
                           remedy);
            return false;
        }
    }
    return true;
}

std::string key_in_path(std::string_view name) {
    const bool plain = std::ranges::none_of(name, [](char c) {
        return c == '.' || c == '[' || c == ']' || c == '"' || c == '=' || c == '\\';
    });
    const bool outer_space = name.starts_with(' ') || name.ends_with(' ');
    return plain && !outer_space && !name.empty() ? std::string(name) : in_quotes(name);
}

namespace {

template <class Table>
bool has_key(std::string_view name) {
    return std::ranges::any_of(describe<Table>().keys,
                               [&](const AKey<Table>& key) { return key->words.name == name; });
}

}  // namespace

bool is_key_of(std::string_view label, std::string_view name) {
    if (label == "pack") return has_key<Pack>(name);
    if (label == "panel") return has_key<Panel>(name);
    if (label == "charger") return has_key<Charger>(name);
    if (label == "load") return has_key<Load>(name);
    if (label == "circuit") return has_key<Circuit>(name);
    if (label == "log") return has_key<LogEntry>(name);
    return true;
}

}  // namespace scenario
