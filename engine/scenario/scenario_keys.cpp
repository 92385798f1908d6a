// The keys at the top of the file, and what its tables must be to one another.
#include <array>

#include "scenario/log_check.hpp"
#include "scenario/most.hpp"
#include "scenario/tables.hpp"
#include "units/quote.hpp"

namespace scenario {
namespace {

// `format` is not a value of the scenario; read.cpp looks at it before anything else.
class FormatKey : public Key<Scenario> {
  public:
    FormatKey()
        : Key<Scenario>({.name = "format",
                         .means = "version of this file format",
                         .demand = Demand::required}) {}

    [[nodiscard]] std::string example() const override { return "1"; }
    [[nodiscard]] std::string limits() const override { return "1"; }
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
        reading.refuse(
            root.at(*list, label).at(list->items[later], later).at(*name, "name"),
            fmt::format("found {}, which the {} on line {} is named already", shown(*name), label,
                        earlier_name == nullptr ? 0 : earlier_name->line),
            "give each a name of its own; count says how many are alike");
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
                fmt::format("nothing in this file is named '{}'", units::quote(fed)),
                nearest.empty()
                    ? "name a load, a pack, a charger, inverter, charge_controller or panels"
                    : fmt::format("did you mean {}?", nearest));
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
                ? "found circuits that begin at one another in a ring"
                : fmt::format("found '{}', which is no circuit of this file", units::quote(*from)),
            nearest.empty() || in_a_ring
                ? "give \"bus\", \"inverter\", or the name of the circuit it branches from"
                : fmt::format("did you mean {}?", nearest));
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
                       fmt::format("found {} {}s together so far", together, label),
                       fmt::format("give counts that come to at most {} in all", most));
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

}  // namespace

template <>
const Description<Scenario>& describe<Scenario>() {
    static const Description<Scenario> description = {
        .silent = "none",
        .keys = keys_of(
            AKey<Scenario>(std::make_unique<const FormatKey>()),
            key<&Scenario::title>(
                {.name = "title",
                 .means = "what the answers are headed with; a name of your own",
                 .on_screen = {.label = on_screen("Title")}},
                WordsForm{.sample = "Ice storm, four nights", .may_be_empty = true}),
            key<&Scenario::outage>({.name = "outage",
                                    .means = "the outage to be planned for",
                                    .demand = Demand::required,
                                    .on_screen = {.label = on_screen("Outage")}},
                                   TableForm<Outage>()),
            key<&Scenario::place>(
                {.name = "place",
                 .means = "where it happens: from there come sun, snow and warmth",
                 .on_screen = {.label = on_screen("Place")}},
                TableForm<Place>()),
            key<&Scenario::packs>(
                {.name = "pack",
                 .means = "each kind of battery pack; the first is the one in the case",
                 .demand = Demand::required,
                 .on_screen = {.label = on_screen("Packs")}},
                TablesForm<Pack>{"pack", most_packs}),
            key<&Scenario::inverter>({.name = "inverter",
                                      .means = "what makes AC of the battery",
                                      .on_screen = {.label = on_screen("Inverter")}},
                                     TableForm<Inverter>()),
            key<&Scenario::panels>({.name = "panel",
                                    .means = "each kind of solar panel",
                                    .on_screen = {.label = on_screen("Panels")}},
                                   TablesForm<Panel>{"panel", most_panels}),
            key<&Scenario::controller>({.name = "charge_controller",
                                        .means = "what stands between the panels and the packs",
                                        .on_screen = {.label = on_screen("Charge controller")}},
                                       TableForm<ChargeController>()),
            key<&Scenario::chargers>(
                {.name = "charger",
                 .means = "each other charger: on a wall outlet, a generator or a vehicle",
                 .on_screen = {.label = on_screen("Chargers")}},
                TablesForm<Charger>{"charger", 64}),
            key<&Scenario::loads>({.name = "load",
                                   .means = "each appliance that is to run",
                                   .on_screen = {.label = on_screen("Loads")}},
                                  TablesForm<Load>{"load", 200}),
            key<&Scenario::circuits>({.name = "circuit",
                                      .means = "each circuit: what it feeds, through which parts",
                                      .on_screen = {.label = on_screen("Circuits")}},
                                     TablesForm<Circuit>{"circuit", 200}),
            key<&Scenario::enclosure>({.name = "case",
                                       .means = "the case the unit is built into",
                                       .on_screen = {.label = on_screen("Case")}},
                                      TableForm<Case>()),
            key<&Scenario::storage>({.name = "storage",
                                     .means = "how the unit waits between outages",
                                     .on_screen = {.label = on_screen("Storage")}},
                                    TableForm<Storage>()),
            key<&Scenario::goal>({.name = "goal",
                                  .means = "what the build is to reach, and what limits it",
                                  .on_screen = {.label = on_screen("Goal")}},
                                 TableForm<Goal>()),
            key<&Scenario::log>(
                {.name = "log",
                 .means = "what was read, done or seen while living through the outage",
                 .silent = "nothing was written down",
                 .on_screen = {.label = on_screen("While it lasts")}},
                TablesForm<LogEntry>{"log", most_log_entries})),
        .check = check_scenario};
    return description;
}

}  // namespace scenario
