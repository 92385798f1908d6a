// The keys at the top of the file, and what its tables must be to one another.
#include <array>

#include "scenario/file/log_check.hpp"
#include "scenario/file/tables.hpp"
#include "scenario/keys/most.hpp"
#include "units/quote.hpp"

namespace scenario {

using words::Said;
using words::said;

namespace {

// `format` is not a value of the scenario; read.cpp looks at it before anything else.
class FormatKey : public Key<Scenario> {
  public:
    FormatKey()
        : Key<Scenario>({.name = "format",
                         .means = said<"version of this file format">(),
                         .demand = Demand::required}) {}

    [[nodiscard]] std::string example() const override { return "1"; }
    [[nodiscard]] Said limits() const override { return "1"; }
    [[nodiscard]] Ends ends() const override { return {.within = {"1"}, .beyond = {"0", "2"}}; }
    [[nodiscard]] Shape shape() const override {
        return {.kind = Shape::Kind::whole, .least = 1, .most = 1};
    }
    void read(Reading&, const Spot&, Scenario&) const override {}
    [[nodiscard]] std::optional<std::string> print(const Scenario&) const override { return "1"; }
    [[nodiscard]] std::optional<std::string> print_block(const Scenario&) const override {
        return std::nullopt;
    }
    void list(Rows& rows, const Stop& stop, const Scenario&) const override {
        rows.push_back(row(stop, "1"));
    }
    void copy(const Scenario&, Scenario&) const override {}
};

const Node* name_in(const Node& list, std::size_t index) {
    return index < list.items.size() ? list.items[index].find("name") : nullptr;
}

template <class Table>
void refuse_equal_names(Reading& reading, const Spot& root, std::string_view label,
                        const std::vector<Table>& tables) {
    const Node* list = root.node->find(label);
    for (std::size_t later = 1; later < tables.size(); ++later) {
        const auto first = std::ranges::find(tables, tables[later].name, &Table::name);
        const auto earlier = static_cast<std::size_t>(first - tables.begin());
        if (earlier >= later || tables[later].name.empty()) {
            continue;
        }
        const Node* name = name_in(*list, later);
        const Node* earlier_name = name_in(*list, earlier);
        reading.refuse(root.at(*list, label).at(list->items[later], later).at(*name, "name"),
                       said<"found {name}, which the {table} on line {line} is named already">(
                           text_of(*name), label, earlier_name == nullptr ? 0 : earlier_name->line),
                       said<"give each a name of its own; count says how many are alike">());
    }
}

// A circuit may feed loads, packs, chargers, or parts of the unit there is one of.
std::vector<std::string_view> what_can_be_fed(const Scenario& scenario) {
    std::vector<std::string_view> names = {"inverter", "charge_controller", "charge controller",
                                           "panels", "panel"};
    const auto add = [&](const auto& tables) {
        for (const auto& table : tables) {
            names.emplace_back(table.name);
        }
    };
    add(scenario.loads);
    add(scenario.packs);
    add(scenario.chargers);
    add(scenario.circuits);
    return names;
}

void warn_of_unknown_feeds(Reading& reading, const Spot& root, const Scenario& scenario) {
    const std::vector<std::string_view> known = what_can_be_fed(scenario);
    for (std::size_t i = 0; i < scenario.circuits.size(); ++i) {
        for (const std::string& fed : scenario.circuits[i].feeds) {
            if (std::ranges::find(known, fed) != known.end()) {
                continue;
            }
            const Node* list = root.node->find("circuit");
            const Spot circuit = root.at(*list, "circuit").at(list->items[i], i);
            const std::string_view nearest = nearest_word(fed, known);
            reading.warn(
                circuit.at(*circuit.node->find("feeds"), "feeds"),
                said<"nothing in this file is named '{name}'">(units::quote(fed)),
                nearest.empty()
                    ? said<
                          "name a load, a pack, a charger, inverter, charge_controller or panels">()
                    : said<"did you mean {word}?">(nearest));
        }
    }
}

// A circuit begins at the bus, behind the inverter, or at the end of another circuit.
void refuse_unknown_beginnings(Reading& reading, const Spot& root, const Scenario& scenario) {
    std::vector<std::string_view> known = {"bus", "inverter"};
    for (const Circuit& circuit : scenario.circuits) {
        known.emplace_back(circuit.name);
    }
    for (std::size_t i = 0; i < scenario.circuits.size(); ++i) {
        const std::optional<std::string>& from = scenario.circuits[i].from;
        if (!from) {
            continue;
        }
        // Following the beginnings must reach the bus or the inverter.
        std::string_view at = *from;
        std::size_t steps = 0;
        while (at != "bus" && at != "inverter" && steps <= scenario.circuits.size()) {
            const auto next = std::ranges::find(scenario.circuits, at, &Circuit::name);
            if (next == scenario.circuits.end()) {
                break;
            }
            at = next->from ? std::string_view(*next->from) : std::string_view("bus");
            ++steps;
        }
        if (at == "bus" || at == "inverter") {
            continue;
        }
        const Node* list = root.node->find("circuit");
        const Spot circuit = root.at(*list, "circuit").at(list->items[i], i);
        const bool in_a_ring = steps > scenario.circuits.size();
        const std::string_view nearest = nearest_word(*from, known);
        reading.refuse(
            circuit.at(*circuit.node->find("from"), "from"),
            in_a_ring
                ? said<"found circuits that begin at one another in a ring">()
                : said<"found '{name}', which is no circuit of this file">(units::quote(*from)),
            nearest.empty() || in_a_ring
                ? said<"give \"bus\", \"inverter\", or the name of the circuit it branches from">()
                : said<"did you mean {word}?">(nearest));
    }
}

// At the count with which there are too many.
template <class Table>
void refuse_too_many(Reading& reading, const Spot& root, std::string_view label,
                     const std::vector<Table>& tables, int most) {
    int together = 0;
    for (std::size_t i = 0; i < tables.size(); ++i) {
        together += tables[i].count;
        if (together <= most) {
            continue;
        }
        const Node* list = root.node->find(label);
        if (list == nullptr || i >= list->items.size()) {
            return;
        }
        const Spot table = root.at(*list, label).at(list->items[i], i);
        const Node* count = table.node->find("count");
        reading.refuse(table.at(count == nullptr ? *table.node : *count, "count"),
                       label == "pack" ? said<"found {n} packs together so far">(together)
                                       : said<"found {n} panels together so far">(together),
                       said<"give counts that come to at most {n} in all">(most));
        return;
    }
}

void check_scenario(Reading& reading, const Spot& root, const Scenario& scenario) {
    refuse_too_many(reading, root, "pack", scenario.packs, most_packs);
    refuse_too_many(reading, root, "panel", scenario.panels, most_panels);
    refuse_equal_names(reading, root, "pack", scenario.packs);
    refuse_equal_names(reading, root, "charger", scenario.chargers);
    refuse_equal_names(reading, root, "load", scenario.loads);
    refuse_equal_names(reading, root, "circuit", scenario.circuits);
    warn_of_unknown_feeds(reading, root, scenario);
    refuse_unknown_beginnings(reading, root, scenario);
    check_log(reading, root, scenario);
}

// What is planned for, and where.
Keys<Scenario> the_event() {
    return keys_of(AKey<Scenario>(std::make_unique<const FormatKey>()),
                   key<&Scenario::title>(
                       {.name = "title",
                        .means = said<"what the answers are headed with; a name of your own">(),
                        .on_screen = {.label = said<"Title">()}},
                       WordsForm{.sample = "Ice storm, four nights", .may_be_empty = true}),
                   key<&Scenario::outage>({.name = "outage",
                                           .means = said<"the outage to be planned for">(),
                                           .demand = Demand::required,
                                           .on_screen = {.label = said<"Outage">()}},
                                          TableForm<Outage>()),
                   key<&Scenario::place>(
                       {.name = "place",
                        .means = said<"where it happens: from there come sun, snow and warmth">(),
                        .on_screen = {.label = said<"Place">()}},
                       TableForm<Place>()));
}

// What supplies it.
Keys<Scenario> the_supply() {
    return keys_of(
        key<&Scenario::packs>(
            {.name = "pack",
             .means = said<"each kind of battery pack; the first is the one in the case">(),
             .demand = Demand::required,
             .on_screen = {.label = said<"Packs">()}},
            TablesForm<Pack>{"pack", most_packs}),
        key<&Scenario::inverter>({.name = "inverter",
                                  .means = said<"what makes AC of the battery">(),
                                  .on_screen = {.label = said<"Inverter">()}},
                                 TableForm<Inverter>()),
        key<&Scenario::panels>({.name = "panel",
                                .means = said<"each kind of solar panel">(),
                                .on_screen = {.label = said<"Panels">()}},
                               TablesForm<Panel>{"panel", most_panels}),
        key<&Scenario::controller>({.name = "charge_controller",
                                    .means = said<"what is between the panels and the packs">(),
                                    .on_screen = {.label = said<"Charge controller">()}},
                                   TableForm<ChargeController>()),
        key<&Scenario::chargers>(
            {.name = "charger",
             .means = said<"each other charger: on a wall outlet, a generator or a vehicle">(),
             .on_screen = {.label = said<"Chargers">()}},
            TablesForm<Charger>{"charger", 64}));
}

// What it supplies, and through what.
Keys<Scenario> the_demand() {
    return keys_of(key<&Scenario::loads>({.name = "load",
                                          .means = said<"each appliance that is to run">(),
                                          .on_screen = {.label = said<"Loads">()}},
                                         TablesForm<Load>{"load", 200}),
                   key<&Scenario::circuits>(
                       {.name = "circuit",
                        .means = said<"each circuit: what it feeds, through which parts">(),
                        .on_screen = {.label = said<"Circuits">()}},
                       TablesForm<Circuit>{"circuit", 200}),
                   key<&Scenario::enclosure>({.name = "case",
                                              .means = said<"the case the unit is built into">(),
                                              .on_screen = {.label = said<"Case">()}},
                                             TableForm<Case>()));
}

// How it waits, what it is to reach, and what was seen.
Keys<Scenario> the_wish() {
    return keys_of(
        key<&Scenario::storage>({.name = "storage",
                                 .means = said<"how the unit waits between outages">(),
                                 .on_screen = {.label = said<"Storage">()}},
                                TableForm<Storage>()),
        key<&Scenario::goal>({.name = "goal",
                              .means = said<"what the build is to reach, and what limits it">(),
                              .on_screen = {.label = said<"Goal">()}},
                             TableForm<Goal>()),
        key<&Scenario::clock>(
            {.name = "clock",
             .means = said<"the clock of the computer on which the log is written">(),
             .silent = said<"taken to be right">(),
             .on_screen = {.label = said<"This computer's clock">()}},
            TableForm<Clock>()),
        key<&Scenario::log>(
            {.name = "log",
             .means = said<"what was read, done or seen while living through the outage">(),
             .silent = said<"nothing was written down">(),
             .on_screen = {.label = said<"While it lasts">()}},
            TablesForm<LogEntry>{"log", most_log_entries}));
}

}  // namespace

template <>
const Description<Scenario>& describe<Scenario>() {
    static const Description<Scenario> description = {
        .silent = said<"none">(),
        .keys = joined(the_event(), the_supply(), the_demand(), the_wish()),
        .check = check_scenario};
    return description;
}

}  // namespace scenario
