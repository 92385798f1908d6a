#include "checks/wiring_swap.hpp"

#include <algorithm>
#include <cassert>
#include <map>

#include <fmt/format.h>

#include "checks/swaps_text.hpp"
#include "checks/wiring_circuit.hpp"
#include "units/text.hpp"
#include "units/toml.hpp"
#include "wiring/conductor.hpp"

namespace checks {

namespace {

using scenario::Circuit;
using scenario::Link;
using scenario::Scenario;

// ---- The rows of swaps.toml.

struct SwapRow {
    std::vector<std::string> here;
    std::vector<std::string> trunk;
    std::vector<std::string> everywhere;
    std::string say;
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
            read[row["kind"].value_or(std::string())] = {names("here"), names("trunk"),
                                                         names("everywhere"),
                                                         row["say"].value_or(std::string())};
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

// ---- Links in words, so that what differs is what a person would see.

std::string optional_words(std::string_view before, const auto& value) {
    return value ? fmt::format("{}{}", before, units::show(*value)) : "";
}

struct KindAndWords {
    std::string_view kind;
    std::string words;
};

KindAndWords words_of(const Link& link) {
    struct Words {
        KindAndWords operator()(const scenario::Fuse& fuse) const {
            return {"fuse", fmt::format("{}{}{}{}{}", amperes(fuse.rating),
                                        fuse.family ? " " + *fuse.family : "",
                                        optional_words(", breaks ", fuse.interrupts),
                                        optional_words(", ", fuse.voltage),
                                        fuse.full_duty.value_or(false) ? ", full duty" : "")};
        }
        KindAndWords operator()(const scenario::Switch& part) const {
            return {"switch", fmt::format("{}{}{}{}{}", amperes(part.rating),
                                          part.rated_for ? " " + *part.rated_for : "",
                                          optional_words(", for AC ", part.ac_rating),
                                          optional_words(", ", part.voltage),
                                          optional_words(", ", part.resistance))};
        }
        KindAndWords operator()(const scenario::Wire& wire) const {
            const auto run = wiring::run_of(wire);
            return {
                "wire",
                fmt::format("{}{}, {} out and {} back{}{}{}{}",
                            wire.runs.value_or(1) > 1 ? fmt::format("{} x ", *wire.runs) : "",
                            units::show(wire.size), units::show(run.supply), units::show(run.back),
                            optional_words(", insulation ", wire.insulation),
                            optional_words(" at ", wire.surroundings),
                            wire.bundle ? fmt::format(", {} together", *wire.bundle) : "",
                            wire.table ? ", " + *wire.table + " table" : "")};
        }
        KindAndWords operator()(const scenario::Connector& part) const {
            return {"connector",
                    fmt::format("{}{}{}{}", amperes(part.rating), part.part ? " " + *part.part : "",
                                part.listing ? ", " + *part.listing + " listing" : "",
                                optional_words(", ", part.resistance))};
        }
        KindAndWords operator()(const scenario::SocketOutlet& part) const {
            return {"outlet",
                    fmt::format("{}{}", amperes(part.rating),
                                part.ground_fault.value_or(false) ? ", ground fault" : "")};
        }
    };
    return std::visit(Words{}, link);
}

void compare_circuit(std::vector<Change>& changes, const Circuit& before, const Circuit& after) {
    // Links of one kind stand against one another in their order.
    std::map<std::string_view, std::vector<std::string>> old_links;
    std::map<std::string_view, std::vector<std::string>> new_links;
    for (const Link& link : before.links) {
        const auto [kind, words] = words_of(link);
        old_links[kind].push_back(words);
    }
    for (const Link& link : after.links) {
        const auto [kind, words] = words_of(link);
        new_links[kind].push_back(words);
    }
    for (const std::string_view kind : {"fuse", "switch", "wire", "connector", "outlet"}) {
        const auto& olds = old_links[kind];
        const auto& news = new_links[kind];
        for (std::size_t i = 0; i < std::max(olds.size(), news.size()); ++i) {
            if (i >= olds.size()) {
                changes.push_back(
                    {"circuit", after.name, fmt::format("a {} of {} is new", kind, news[i])});
            } else if (i >= news.size()) {
                changes.push_back(
                    {"circuit", after.name, fmt::format("the {} of {} is gone", kind, olds[i])});
            } else if (olds[i] != news[i]) {
                changes.push_back(
                    {std::string(kind), after.name,
                     fmt::format("the {} is {} instead of {}", kind, news[i], olds[i])});
            }
        }
    }
    if (before.feeds != after.feeds || before.from != after.from) {
        changes.push_back({"circuit", after.name, "it feeds or begins elsewhere"});
    }
    if (before.joints != after.joints) {
        changes.push_back({"wire", after.name, "its lugs and bolts are others"});
    }
}

template <class Table>
const Table* named(const std::vector<Table>& tables, const std::string& name) {
    const auto found = std::ranges::find(tables, name, &Table::name);
    return found == tables.end() ? nullptr : &*found;
}

void compare_circuits(std::vector<Change>& changes, const Scenario& before, const Scenario& after) {
    for (const Circuit& circuit : after.circuits) {
        if (const Circuit* old = named(before.circuits, circuit.name)) {
            compare_circuit(changes, *old, circuit);
        } else {
            changes.push_back({"circuit", circuit.name, "the circuit is new"});
        }
    }
    for (const Circuit& circuit : before.circuits) {
        if (named(after.circuits, circuit.name) == nullptr) {
            changes.push_back({"circuit", circuit.name, "the circuit is gone"});
        }
    }
}

std::string chemistry_words(scenario::Chemistry chemistry) {
    switch (chemistry) {
        case scenario::Chemistry::flooded:
            return "flooded lead-acid";
        case scenario::Chemistry::agm:
            return "AGM";
        case scenario::Chemistry::gel:
            return "gel";
        case scenario::Chemistry::lifepo4:
            return "LiFePO4";
    }
    return "";
}

void compare_packs(std::vector<Change>& changes, const Scenario& before, const Scenario& after) {
    int old_count = 0;
    int new_count = 0;
    for (const auto& pack : before.packs) {
        old_count += pack.count;
    }
    for (const auto& pack : after.packs) {
        new_count += pack.count;
    }
    if (new_count != old_count) {
        changes.push_back({new_count > old_count ? "pack added" : "pack removed", "",
                           fmt::format("{} packs instead of {}", new_count, old_count)});
    }
    for (const auto& pack : after.packs) {
        const auto* old = named(before.packs, pack.name);
        if (old == nullptr) {
            changes.push_back({"pack", "", fmt::format("pack {} is new", pack.name)});
            continue;
        }
        if (old->chemistry != pack.chemistry) {
            changes.push_back(
                {"chemistry", "",
                 fmt::format("pack {} is {} instead of {}", pack.name,
                             chemistry_words(pack.chemistry), chemistry_words(old->chemistry))});
        }
        if (old->voltage != pack.voltage) {
            changes.push_back({"voltage", "",
                               fmt::format("pack {} is of {} instead of {}", pack.name,
                                           pack.voltage ? units::show(*pack.voltage) : "12 V",
                                           old->voltage ? units::show(*old->voltage) : "12 V")});
        }
        if (old->capacity != pack.capacity || old->resistance != pack.resistance ||
            old->current_limit != pack.current_limit || old->fuse != pack.fuse ||
            old->lead_resistance != pack.lead_resistance) {
            changes.push_back({"pack", "", fmt::format("pack {} is another one", pack.name)});
        }
    }
}

bool same_inverter(const std::optional<scenario::Inverter>& a,
                   const std::optional<scenario::Inverter>& b) {
    if (!a || !b) {
        return !a && !b;
    }
    const bool curves = std::ranges::equal(a->efficiency, b->efficiency, [](auto& x, auto& y) {
        return x.at == y.at && x.is == y.is;
    });
    return a->continuous == b->continuous && a->surge == b->surge &&
           a->surge_lasts == b->surge_lasts && a->idle == b->idle && curves &&
           a->cutoff_voltage == b->cutoff_voltage && a->output_voltage == b->output_voltage &&
           a->cable_resistance == b->cable_resistance;
}

bool same_case(const std::optional<scenario::Case>& a, const std::optional<scenario::Case>& b) {
    if (!a || !b) {
        return !a && !b;
    }
    return a->surface == b->surface && a->length == b->length && a->width == b->width &&
           a->height == b->height && a->material == b->material && a->lid == b->lid &&
           a->air == b->air && a->inside == b->inside && a->vent == b->vent;
}

void compare_loads(std::vector<Change>& changes, const Scenario& before, const Scenario& after) {
    std::vector<std::string> others;
    for (const auto& load : after.loads) {
        if (named(before.loads, load.name) == nullptr) {
            others.push_back(load.name + " is new");
        }
    }
    for (const auto& load : before.loads) {
        const auto* now = named(after.loads, load.name);
        if (now == nullptr) {
            others.push_back(load.name + " is gone");
        } else if (now->count != load.count) {
            others.push_back(fmt::format("{} {} instead of {}", now->count, load.name, load.count));
        }
    }
    for (const std::string& words : others) {
        changes.push_back({"load", "", "the load " + words});
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
    if (!same_inverter(old_build.inverter, new_build.inverter)) {
        const auto rating = [](const auto& inverter) {
            return inverter ? units::show(inverter->continuous, 4) : std::string("none");
        };
        const std::string now = rating(new_build.inverter);
        const std::string then = rating(old_build.inverter);
        changes.push_back({"inverter", "",
                           now == then
                               ? fmt::format("the inverter of {} is another one", now)
                               : fmt::format("the inverter is {} instead of {}", now, then)});
    }
    if (!same_case(old_build.enclosure, new_build.enclosure)) {
        const auto lid = [](const auto& enclosure) {
            return enclosure && enclosure->lid ? *enclosure->lid : std::string("not told");
        };
        changes.push_back({"case", "",
                           lid(old_build.enclosure) == lid(new_build.enclosure)
                               ? std::string("the case or the air around it is another")
                               : fmt::format("the lid is {} instead of {}",
                                             lid(new_build.enclosure), lid(old_build.enclosure))});
    }
    compare_loads(changes, old_build, new_build);
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
    for (const std::string& check : row.everywhere) {
        dirty.insert({check, Reach::everywhere, ""});
    }
    return dirty;
}

std::string_view advice_for(const Change& change) {
    return row_of(change).say;
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
                {place.first, place.second, check->verdict, std::nullopt, check->text, ""});
        }
    }
    std::ranges::stable_sort(moved, {}, [](const Moved& one) {
        return std::pair(is_worse(one) ? -weight_of(one.after) : 1, weight_of(one.before));
    });
    return moved;
}

}  // namespace checks
