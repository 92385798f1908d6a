// Tables as forms of a value: read, printed and listed by the description of their keys.
#pragma once

#include <algorithm>

#include "scenario/keys/descriptions.hpp"
#include "scenario/keys/keys.hpp"

namespace scenario {

void warn_of_unknown_key(Reading&, const Spot& table, const Entry&,
                         const std::vector<std::string_view>& known);
// A text whose parts could be the required keys is shown as the table it would be.
void refuse_no_table(Reading&, const Spot&, std::string_view example,
                     const std::vector<std::string_view>& required);
[[nodiscard]] bool is_list_of_tables(Reading&, const Spot&, std::string_view label,
                                     std::size_t most);
[[nodiscard]] std::string key_in_path(std::string_view name);  // in quotes where it needs them
// Whether a [[table]] has such a key; true of lists that are no tables of their own.
[[nodiscard]] bool is_key_of(std::string_view label, std::string_view name);

template <class Table>
[[nodiscard]] std::string name_of(const Table& table) {
    if constexpr (requires { table.name.empty(); }) {
        return table.name;
    } else {
        return {};
    }
}

// Reads what is there; refuses or warns of what is no key.
template <class Table>
[[nodiscard]] Table read_entries(Reading& reading, const Spot& spot) {
    const Description<Table>& description = describe<Table>();
    Table table{};
    for (const Entry& entry : spot.node->entries) {
        const auto key =
            std::ranges::find(description.keys, entry.key,
                              [](const AKey<Table>& known) { return known->words.name; });
        const auto mistake = std::ranges::find(description.mistakes, entry.key, &Mistake::name);
        if (key != description.keys.end()) {
            (*key)->read(reading, spot.at(entry.value, entry.key), table);
        } else if (mistake != description.mistakes.end()) {
            reading.refuse(spot.at(entry.value, entry.key), mistake->found, mistake->remedy);
        } else {
            std::vector<std::string_view> known;
            for (const AKey<Table>& one : description.keys) {
                known.push_back(one->words.name);
            }
            warn_of_unknown_key(reading, spot, entry, known);
        }
    }
    return table;
}

// Whether a table that takes so much from the first of its kind takes this key.
[[nodiscard]] inline bool is_lent(Copied key, Copied lent) {
    return key != Copied::never && (lent == Copied::by_twins ||
                                    (lent == Copied::by_relatives && key == Copied::by_relatives));
}

// Whether a mistake in the table was meant in the place of this key.
[[nodiscard]] inline bool is_stood_for(const std::vector<Mistake>& mistakes, const Node& node,
                                       std::string_view key) {
    return std::ranges::any_of(mistakes, [&](const Mistake& mistake) {
        return node.find(mistake.name) != nullptr &&
               std::ranges::find(mistake.stands_for, key) != mistake.stands_for.end();
    });
}

// Reads what is there, copies what the first of its kind lends, demands the rest.
template <class Table>
[[nodiscard]] Table read_table(Reading& reading, const Spot& spot, const Table* first = nullptr) {
    const Description<Table>& description = describe<Table>();
    Table table = read_entries<Table>(reading, spot);
    const bool kin = first != nullptr && description.kinship != nullptr;
    const Copied lent = kin ? description.kinship(*spot.node, table, *first) : Copied::never;
    for (const AKey<Table>& key : description.keys) {
        if (spot.node->find(key->words.name) != nullptr) {
            continue;
        }
        if (is_lent(key->words.copied, lent)) {
            key->copy(*first, table);
        } else if (key->words.demand == Demand::required &&
                   !is_stood_for(description.mistakes, *spot.node, key->words.name)) {
            reading.demand(spot, key->words.name, key->example());
        }
    }
    if (description.check != nullptr) {
        description.check(reading, spot, table);
    }
    return table;
}

template <class Table>
[[nodiscard]] std::string print_inside(const Table& table) {
    std::string text = "{";
    for (const AKey<Table>& key : describe<Table>().keys) {
        if (const std::optional<std::string> value = key->print(table)) {
            text += text.size() > 1 ? ", " : "";
            text += key->words.name;
            text += " = " + *value;
        }
    }
    return text + '}';
}

template <class Table>
[[nodiscard]] std::string print_lines(const Table& table) {
    std::string text;
    for (const AKey<Table>& key : describe<Table>().keys) {
        if (const std::optional<std::string> value = key->print(table)) {
            text += key->words.name;
            text += " = " + *value + '\n';
        }
    }
    return text;
}

template <class Table>
void list_table(Rows& rows, const Stop& stop, const Table& table, const words::Said& lent = {}) {
    const Description<Table>& description = describe<Table>();
    for (const AKey<Table>& key : description.keys) {
        const Node* node = stop.node == nullptr ? nullptr : stop.node->find(key->words.name);
        const bool borrowed = node == nullptr && !lent.empty() &&
                              key->words.copied != Copied::never && key->print(table).has_value();
        const words::Said& silent = borrowed                    ? lent
                                    : key->words.silent.empty() ? description.silent
                                                                : key->words.silent;
        const std::string path = stop.path.empty() ? std::string(key->words.name)
                                                   : stop.path + '.' + std::string(key->words.name);
        const std::string described =
            (stop.described.empty() ? "" : stop.described + '.') + std::string(key->words.name);
        key->list(rows, {.path = path, .node = node, .silent = silent, .described = described},
                  table);
    }
}

// The keys of a table and of the tables inside it, in the order in which they are printed.
template <class Table>
[[nodiscard]] ToldKeys told_keys() {
    const Description<Table>& description = describe<Table>();
    ToldKeys told;
    for (const AKey<Table>& key : description.keys) {
        const KeyWords& words = key->words;
        told.push_back({.key = std::string(words.name),
                        .means = words.means,
                        .limits = key->limits(),
                        .example = key->example(),
                        .silent = words.silent.empty() ? description.silent : words.silent,
                        .required = words.demand == Demand::required,
                        .lent = words.copied != Copied::never,
                        .shape = key->shape(),
                        .on_screen = words.on_screen});
        for (ToldKey& inner : key->inside()) {
            inner.key = std::string(words.name) + '.' + inner.key;
            told.push_back(std::move(inner));
        }
    }
    return told;
}

// Inside braces: this key at this value and the others at their example where they are demanded.
template <class Table>
[[nodiscard]] std::string with_key_at(const AKey<Table>& key, const std::string& value) {
    std::string text = "{";
    for (const AKey<Table>& other : describe<Table>().keys) {
        if (other == key || other->words.demand == Demand::required) {
            text += (text.size() > 1 ? ", " : "") + std::string(other->words.name) + " = " +
                    (other == key ? value : other->example());
        }
    }
    return text + '}';
}

template <class Table>
[[nodiscard]] Ends ends_inside() {
    Ends ends;
    for (const AKey<Table>& key : describe<Table>().keys) {
        ends.add(key->ends(), [&](const std::string& value) { return with_key_at(key, value); });
    }
    return ends;
}

// A table: [name] with lines under it, or {…} inside a line.
template <class Table>
struct TableForm {
    using Value = Table;

    [[nodiscard]] std::string example() const {
        std::string text = "{";
        for (const AKey<Table>& key : describe<Table>().keys) {
            if (key->words.demand == Demand::required) {
                text += (text.size() > 1 ? ", " : "") + std::string(key->words.name) + " = " +
                        key->example();
            }
        }
        return text + '}';
    }
    [[nodiscard]] words::Said limits() const { return {}; }
    [[nodiscard]] Ends ends() const { return ends_inside<Table>(); }
    [[nodiscard]] Shape shape() const { return {.kind = Shape::Kind::table}; }
    [[nodiscard]] ToldKeys inside() const { return told_keys<Table>(); }
    [[nodiscard]] std::optional<Table> read(Reading& reading, const Spot& spot) const {
        if (spot.node->kind != Node::Kind::table) {
            std::vector<std::string_view> required;
            for (const AKey<Table>& key : describe<Table>().keys) {
                if (key->words.demand == Demand::required) {
                    required.push_back(key->words.name);
                }
            }
            refuse_no_table(reading, spot, example(), required);
            return std::nullopt;
        }
        return read_table<Table>(reading, spot);
    }
    [[nodiscard]] std::string print(const Table& table) const { return print_inside(table); }
    [[nodiscard]] std::string print_block(std::string_view name, const Table& table) const {
        const std::string lines = print_lines(table);
        return lines.empty() ? lines : "\n[" + std::string(name) + "]\n" + lines;
    }
    void list(Rows& rows, const Stop& stop, const Table& table) const {
        list_table(rows, stop, table);
    }
};

// Several tables of one kind: [[name]] each.
template <class Table>
struct TablesForm {
    using Value = std::vector<Table>;
    std::string_view label;  // the key, such as "pack"
    std::size_t most = 64;

    [[nodiscard]] std::string example() const { return "[[" + std::string(label) + "]]"; }
    [[nodiscard]] words::Said limits() const { return words::said<"at most {n}">(most); }
    [[nodiscard]] ToldKeys inside() const { return told_keys<Table>(); }
    [[nodiscard]] Shape shape() const {
        return {.kind = Shape::Kind::table, .several = true, .fewest_items = 0, .most_items = most};
    }
    // How many there may be; the keys of one have their own.
    [[nodiscard]] Ends ends() const {
        const std::string one = TableForm<Table>().example();
        return {
            .within = {}, .beyond = {repeated(one, most + 1)}, .crowded = {repeated(one, most)}};
    }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        if (!is_list_of_tables(reading, spot, label, most)) {
            return std::nullopt;
        }
        Value tables;
        tables.reserve(spot.node->items.size());
        for (std::size_t i = 0; i < spot.node->items.size(); ++i) {
            Spot one = spot.at(spot.node->items[i], i);
            const Node* name = one.node->find("name");
            if (name != nullptr && name->kind == Node::Kind::text) {
                one.owner = std::string(label) + ' ' + text_of(*name);
            }
            tables.push_back(
                read_table<Table>(reading, one, tables.empty() ? nullptr : &tables.front()));
        }
        return tables;
    }
    [[nodiscard]] std::string print(const Value& tables) const {
        std::string text = "[";
        for (const Table& table : tables) {
            text += (text.size() > 1 ? ", " : "") + print_inside(table);
        }
        return text + ']';
    }
    [[nodiscard]] std::string print_block(std::string_view name, const Value& tables) const {
        std::string text;
        for (const Table& table : tables) {
            text += "\n[[" + std::string(name) + "]]\n" + print_lines(table);
        }
        return text;
    }
    void list(Rows& rows, const Stop& stop, const Value& tables) const {
        for (std::size_t i = 0; i < tables.size(); ++i) {
            const bool there = stop.node != nullptr && i < stop.node->items.size();
            const std::string name = name_of(tables[i]);
            list_table(rows,
                       {.path = stop.path + (name.empty() ? '[' + std::to_string(i) + ']'
                                                          : '.' + key_in_path(name)),
                        .node = there ? &stop.node->items[i] : nullptr,
                        .described = stop.described},
                       tables[i],
                       i == 0 ? words::Said() : words::said<"as in the first {table}">(label));
        }
    }
};

}  // namespace scenario
