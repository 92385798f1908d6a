#include "fitting/swap.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <map>

#include "fitting/circuit.hpp"
#include "fitting/swaps_text.hpp"
#include "fitting/unit.hpp"
#include "scenario/differences.hpp"
#include "units/said.hpp"
#include "units/text.hpp"
#include "words/toml.hpp"

namespace fitting {

namespace {

using scenario::Circuit;
using scenario::Link;
using scenario::Scenario;
using words::Said;
using words::said;
using Joint = words::List::Joint;

// ---- The rows of swaps.toml.

struct SwapRow {
    std::vector<std::string> here;
    std::vector<std::string> trunk;
    std::vector<std::string> everywhere;
    std::vector<std::string> of_trunk;
    std::vector<std::string> ask;
};

const std::map<std::string, SwapRow, std::less<>>& swap_rows() {
    static const auto rows = [] {
        std::map<std::string, SwapRow, std::less<>> read;
        const toml::table file = toml::parse(swaps_text);
        for (const toml::node& node : *file["swap"].as_array()) {
            const toml::table& row = *node.as_table();
            const auto names = [&row](std::string_view key) {
                std::vector<std::string> list;
                if (const toml::array* items = row[key].as_array()) {
                    for (const toml::node& item : *items) {
                        list.push_back(item.value_or(std::string()));
                    }
                }
                return list;
            };
            read[row["kind"].value_or(std::string())] = {.here = names("here"),
                                                         .trunk = names("trunk"),
                                                         .everywhere = names("everywhere"),
                                                         .of_trunk = names("of_trunk"),
                                                         .ask = names("ask")};
        }
        return read;
    }();
    return rows;
}

const SwapRow& row_of(const Change& change) {
    const auto found = swap_rows().find(change.kind);
    assert(found != swap_rows().end());
    return found->second;
}

// What else a change asks for, by its row.
Said advice_of(std::string_view kind) {
    if (kind == "inverter") {
        return said<
            "Its efficiency and cut-off move the smallest main fuse; every pack sees the new "
            "current.">();
    }
    if (kind == "switch") {
        return said<"A weaker switch lowers the largest fuse, and the load with it.">();
    }
    if (kind == "pack added") {
        return said<
            "Every fuse must break the larger fault current; top voltages must be equal.">();
    }
    if (kind == "pack removed") {
        return said<"The others carry its part.">();
    }
    if (kind == "chemistry") {
        return said<"Set every charger anew before the first charge.">();
    }
    if (kind == "wire") {
        return said<"A longer or thinner wire lowers the fault current; that is not counted on.">();
    }
    if (kind == "connector") {
        return said<"Both halves must be of one kind.">();
    }
    if (kind == "neutral") {
        return said<
            "Leave the bonding of the neutral to the inverter's maker and to whoever is licensed "
            "for it.">();
    }
    if (kind == "voltage") {
        return said<
            "Look at C5 first: parts for 12 V are not for 48 V. Every 12 V load needs a "
            "converter.">();
    }
    if (kind == "case") {
        return said<"Warmth lowers what wires, contacts and fuses may carry.">();
    }
    if (kind == "fuse") {
        return said<
            "What lies behind another circuit's fuse is guarded by that one: look at its branches "
            "too.">();
    }
    return {};
}

// A part of the main path or of a pack's lead: what it changes, every pack and the inverter see.
bool lies_in_trunk(const Scenario& scenario, const std::string& circuit) {
    const auto found = std::ranges::find(scenario.circuits, circuit, &Circuit::name);
    if (found == scenario.circuits.end()) {
        return false;
    }
    const Role role = role_of(scenario, *found);
    return role == Role::main || role == Role::pack_lead;
}

// ---- Differences in words: keys and values as a file has them.

std::string without_quotes(const std::string& value) {
    const bool quoted = value.size() > 1 && value.front() == '"' && value.back() == '"';
    return quoted ? value.substr(1, value.size() - 2) : value;
}

Said value_words(const std::string& value) {
    return value.empty() ? said<"nothing given">() : Said(without_quotes(value));
}

// "power 40 W instead of 30 W and priority 2 instead of 3"
Said differences_in_words(const scenario::KeyDifferences& differences) {
    std::vector<Said> each;
    for (const auto& [key, before, after] : differences) {
        each.push_back(said<"{key} {after} instead of {before}">(key, value_words(after),
                                                                 value_words(before)));
    }
    // Each with its own "and": "power 40 W instead of 30 W and priority 2 instead of 3 and ..."
    Said all;
    for (Said& one : each)
        all = all.empty() ? std::move(one)
                          : said<"{one} and {other}">(std::move(all), std::move(one));
    return all;
}

// "the lamp has power 40 W instead of 30 W"
Said words_of(const Said& what, const scenario::KeyDifferences& differences) {
    return differences.empty()
               ? Said()
               : said<"{what} has {differences}">(what, differences_in_words(differences));
}

// A part of a circuit, of which nothing but its kind is said.
Said the_kind(std::size_t index) {
    switch (index) {
        case 0:
            return said<"the fuse">();
        case 1:
            return said<"the switch">();
        case 2:
            return said<"the wire">();
        case 3:
            return said<"the connector">();
        default:
            return said<"the outlet">();
    }
}

// ---- Parts of circuits.

constexpr std::array<std::string_view, 5> link_kinds{"fuse", "switch", "wire", "connector",
                                                     "outlet"};

// Two links of one kind.
Change changed_link(const Link& before, const Link& after, const std::string& circuit) {
    const std::string kind(link_kinds[after.index()]);
    auto differences = std::visit(
        [&before](const auto& now) {
            return scenario::differences(std::get<std::decay_t<decltype(now)>>(before), now);
        },
        after);
    Said rated;
    if (!differences.empty() && differences.front().key == kind) {
        rated = said<"{part} is {after} instead of {before}">(
            the_kind(after.index()), without_quotes(differences.front().after),
            without_quotes(differences.front().before));
        differences.erase(differences.begin());
    }
    const Said others = words_of(said<"the {part}">(title_of(after)), differences);
    return {kind, circuit, words::joined({rated, others}, Joint::semicolon)};
}

void compare_links(std::vector<Change>& changes, const Circuit& before, const Circuit& after) {
    // Links of one kind stand against one another in their order.
    for (std::size_t kind = 0; kind < link_kinds.size(); ++kind) {
        const auto of_kind = [kind](const Circuit& circuit) {
            std::vector<const Link*> links;
            for (const Link& link : circuit.links) {
                if (link.index() == kind) {
                    links.push_back(&link);
                }
            }
            return links;
        };
        const auto olds = of_kind(before);
        const auto news = of_kind(after);
        for (std::size_t i = 0; i < std::max(olds.size(), news.size()); ++i) {
            if (i >= olds.size()) {
                changes.push_back(
                    {"circuit", after.name, said<"a {part} is new">(title_of(*news[i]))});
            } else if (i >= news.size()) {
                changes.push_back(
                    {"circuit", after.name, said<"the {part} is gone">(title_of(*olds[i]))});
            } else if (!scenario::same(*olds[i], *news[i])) {
                changes.push_back(changed_link(*olds[i], *news[i], after.name));
            }
        }
    }
    const auto order = [](const Circuit& circuit) {
        std::vector<std::size_t> kinds;
        for (const Link& link : circuit.links) {
            kinds.push_back(link.index());
        }
        return kinds;
    };
    if (before.links.size() == after.links.size() && order(before) != order(after)) {
        changes.push_back({"circuit", after.name, said<"its parts are in another order">()});
    }
}

// The circuit's own keys, each with the row that it belongs to.
void compare_circuit(std::vector<Change>& changes, const Circuit& before, const Circuit& after) {
    compare_links(changes, before, after);
    for (const auto& difference : scenario::differences(before, after)) {
        if (difference.key == "links") {
            continue;
        }
        const std::string kind = difference.key == "joints" || difference.key == "drop_limit" ||
                                         difference.key == "neutral"
                                     ? difference.key
                                 : difference.key == "weight" || difference.key == "price"
                                     ? "burden"
                                     : "circuit";
        changes.push_back({kind, after.name, words_of(said<"it">(), {difference})});
    }
}

template <class Table>
const Table* named(const std::vector<Table>& tables, const std::string& name) {
    const auto found = std::ranges::find(tables, name, &Table::name);
    return found == tables.end() ? nullptr : &*found;
}

// New, gone, and for those in both `both`.
// Of a kind of table: one that is new, and one that is gone.
struct ComesAndGoes {
    Said (*is_new)(const std::string& name);
    Said (*is_gone)(const std::string& name);
};

template <class Table, class Both>
void pair_by_name(std::vector<Change>& changes, const std::vector<Table>& before,
                  const std::vector<Table>& after, const std::string& kind,
                  const ComesAndGoes& in_words, Both both) {
    for (const Table& now : after) {
        if (const Table* then = named(before, now.name)) {
            if (!scenario::same(*then, now)) {
                both(*then, now);
            }
        } else {
            changes.push_back({kind, "", in_words.is_new(now.name)});
        }
    }
    for (const Table& then : before) {
        if (named(after, then.name) == nullptr) {
            changes.push_back({kind, "", in_words.is_gone(then.name)});
        }
    }
}

void compare_circuits(std::vector<Change>& changes, const Scenario& before, const Scenario& after) {
    for (const Circuit& circuit : after.circuits) {
        const Circuit* old = named(before.circuits, circuit.name);
        if (old == nullptr) {
            changes.push_back({"circuit", circuit.name, said<"the circuit is new">()});
        } else {
            compare_circuit(changes, *old, circuit);
        }
    }
    for (const Circuit& circuit : before.circuits) {
        if (named(after.circuits, circuit.name) == nullptr) {
            changes.push_back({"circuit", circuit.name, said<"the circuit is gone">()});
        }
    }
}

// ---- Packs, of which some keys have a row of their own.

// Outlives the key.
std::string_view row_of_pack_key(std::string_view key) {
    for (const std::string_view own : {"chemistry", "voltage"}) {
        if (key == own) {
            return own;
        }
    }
    return key == "weight" || key == "price" ? "burden" : "pack";
}

void compare_packs(std::vector<Change>& changes, const Scenario& before, const Scenario& after) {
    const auto count_of = [](const Scenario& scenario) {
        int count = 0;
        for (const auto& pack : scenario.packs) {
            count += pack.count;
        }
        return count;
    };
    const int old_count = count_of(before);
    const int new_count = count_of(after);
    if (new_count != old_count) {
        changes.push_back(
            {new_count > old_count ? "pack added" : "pack removed", "",
             words::said_of<"{n} pack instead of {before}", "{n} packs instead of {before}">(
                 new_count, old_count)});
    }
    pair_by_name(changes, before.packs, after.packs, "pack",
                 {[](const std::string& pack) { return said<"the pack {pack} is new">(pack); },
                  [](const std::string& pack) { return said<"the pack {pack} is gone">(pack); }},
                 [&](const scenario::Pack& then, const scenario::Pack& now) {
                     std::map<std::string_view, scenario::KeyDifferences> by_row;
                     for (const auto& difference : scenario::differences(then, now)) {
                         const bool told = difference.key == "count" && new_count != old_count;
                         if (!told) {
                             by_row[row_of_pack_key(difference.key)].push_back(difference);
                         }
                     }
                     for (const auto& [row, differences] : by_row) {
                         changes.push_back({std::string(row), "",
                                            words_of(said<"pack {pack}">(now.name), differences)});
                     }
                 });
}

// ---- Tables there is one of, and panels, which have no name.

template <class Table>
void compare_one(std::vector<Change>& changes, const std::optional<Table>& before,
                 const std::optional<Table>& after, const std::string& kind, const Said& what) {
    if (before && after && !scenario::same(*before, *after)) {
        changes.push_back({kind, "", words_of(what, scenario::differences(*before, *after))});
    } else if (before.has_value() != after.has_value()) {
        changes.push_back(
            {kind, "", after ? said<"{what} is new">(what) : said<"{what} is gone">(what)});
    }
}

void compare_inverters(std::vector<Change>& changes, const Scenario& before,
                       const Scenario& after) {
    const auto& then = before.inverter;
    const auto& now = after.inverter;
    if (!then || !now || then->continuous == now->continuous) {
        compare_one(changes, then, now, "inverter", said<"the inverter">());
        return;
    }
    auto others = scenario::differences(*then, *now);
    std::erase_if(others, [](const auto& one) { return one.key == "continuous"; });
    const Said power = said<"the inverter is {power} instead of {before}">(
        units::amount(now->continuous, 4), units::amount(then->continuous, 4));
    changes.push_back(
        {"inverter", "", words::joined({power, words_of(said<"it">(), others)}, Joint::semicolon)});
}

void compare_panels(std::vector<Change>& changes, const Scenario& before, const Scenario& after) {
    const std::size_t olds = before.panels.size();
    const std::size_t news = after.panels.size();
    for (std::size_t i = 0; i < std::max(olds, news); ++i) {
        const Said what = std::max(olds, news) > 1 ? said<"panel {n}">(i + 1) : said<"the panel">();
        if (i >= olds || i >= news) {
            changes.push_back(
                {"charging", "",
                 i >= olds ? said<"{what} is new">(what) : said<"{what} is gone">(what)});
        } else if (!scenario::same(before.panels[i], after.panels[i])) {
            changes.push_back(
                {"charging", "",
                 words_of(what, scenario::differences(before.panels[i], after.panels[i]))});
        }
    }
}

int weight_of(const std::optional<Verdict>& verdict) {
    if (!verdict) {
        return 0;
    }
    switch (*verdict) {
        case Verdict::fails:
            return 3;
        case Verdict::may_not:
            return 2;
        case Verdict::unknown:
            return 1;
        default:
            return 0;
    }
}

using Key = std::pair<std::string, std::string>;

std::map<Key, const Check*> worst_by_place(const Fit& fit) {
    std::map<Key, const Check*> worst;
    for (const Check& check : fit.checks) {
        const Check*& now = worst[{check.id, check.circuit}];
        if (now == nullptr || weight_of(check.verdict) > weight_of(now->verdict)) {
            now = &check;
        }
    }
    return worst;
}

}  // namespace

std::vector<Change> changes_between(const Scenario& old_build, const Scenario& new_build) {
    std::vector<Change> changes;
    compare_circuits(changes, old_build, new_build);
    compare_packs(changes, old_build, new_build);
    compare_inverters(changes, old_build, new_build);
    compare_one(changes, old_build.enclosure, new_build.enclosure, "case", said<"the case">());
    pair_by_name(changes, old_build.loads, new_build.loads, "load",
                 {[](const std::string& load) { return said<"the load {load} is new">(load); },
                  [](const std::string& load) { return said<"the load {load} is gone">(load); }},
                 [&](const scenario::Load& then, const scenario::Load& now) {
                     changes.push_back({"load", "",
                                        words_of(said<"the load {load}">(now.name),
                                                 scenario::differences(then, now))});
                 });
    pair_by_name(
        changes, old_build.chargers, new_build.chargers, "charger",
        {[](const std::string& charger) { return said<"the charger {charger} is new">(charger); },
         [](const std::string& charger) { return said<"the charger {charger} is gone">(charger); }},
        [&](const scenario::Charger& then, const scenario::Charger& now) {
            changes.push_back({"charger", "",
                               words_of(said<"the charger {charger}">(now.name),
                                        scenario::differences(then, now))});
        });
    compare_one(changes, old_build.controller, new_build.controller, "charging",
                said<"the charge controller">());
    compare_panels(changes, old_build, new_build);
    if (!scenario::same(old_build.outage, new_build.outage)) {
        changes.push_back({"outage", "",
                           words_of(said<"the outage">(),
                                    scenario::differences(old_build.outage, new_build.outage))});
    }
    if (!scenario::same(old_build.place, new_build.place)) {
        changes.push_back({"place", "",
                           words_of(said<"the place">(),
                                    scenario::differences(old_build.place, new_build.place))});
    }
    compare_one(changes, old_build.storage, new_build.storage, "storage", said<"storage">());
    compare_one(changes, old_build.goal, new_build.goal, "goal", said<"the goal">());
    for (Change& change : changes) {
        change.trunk =
            lies_in_trunk(old_build, change.circuit) || lies_in_trunk(new_build, change.circuit);
    }
    return changes;
}

std::set<Dirty> dirtied_by(const Change& change) {
    const SwapRow& row = row_of(change);
    std::set<Dirty> dirty;
    for (const std::string& check : row.here) {
        dirty.insert({check, Reach::here, change.circuit});
    }
    for (const std::string& check : row.trunk) {
        dirty.insert({check, Reach::trunk, ""});
    }
    if (change.trunk) {
        for (const std::string& check : row.of_trunk) {
            dirty.insert({check, Reach::trunk, ""});
        }
    }
    for (const std::string& check : row.everywhere) {
        dirty.insert({check, Reach::everywhere, ""});
    }
    return dirty;
}

Said advice_for(const Change& change) {
    return advice_of(change.kind);
}

std::span<const std::string> questions_of(const Change& change) {
    return row_of(change).ask;
}

bool is_worse(const Moved& moved) {
    return weight_of(moved.after) > weight_of(moved.before);
}

std::vector<Moved> moved_verdicts(const Fit& old_fit, const Fit& new_fit) {
    const auto before = worst_by_place(old_fit);
    const auto after = worst_by_place(new_fit);
    std::vector<Moved> moved;
    for (const auto& [place, check] : after) {
        const auto old = before.find(place);
        if (old == before.end()) {
            moved.push_back({place.first, place.second, std::nullopt, check->verdict, check->text,
                             check->mend});
        } else if (old->second->verdict != check->verdict) {
            moved.push_back({place.first, place.second, old->second->verdict, check->verdict,
                             check->text, check->mend});
        }
    }
    for (const auto& [place, check] : before) {
        if (!after.contains(place)) {
            moved.push_back(
                {place.first, place.second, check->verdict, std::nullopt, check->text, Said()});
        }
    }
    std::ranges::stable_sort(moved, {}, [](const Moved& one) {
        return std::pair(is_worse(one) ? -weight_of(one.after) : 1, weight_of(one.before));
    });
    return moved;
}

}  // namespace fitting
