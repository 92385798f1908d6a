#include "answers/wiring/tables.hpp"

#include <fmt/format.h>

#include "answers/shown.hpp"

namespace answers {

namespace {

using fitting::CircuitState;
using fitting::Fit;
using fitting::FuseState;
using fitting::LinkState;
using units::Current;

template <class Written>
Value value_of(Written quantity, int significant = 3) {
    return quantity_or_reason(shown(quantity, significant), "the number is not finite");
}

template <class Written>
Value value_or(const std::optional<Written>& quantity, std::string reason, int significant = 3) {
    return quantity ? value_of(*quantity, significant) : Value{Absent{std::move(reason)}};
}

// ---- The keys of the answer.

Members link_members(const LinkState& link) {
    return {{"part", "", {link.title}},
            {"rating", "rated", value_or(link.rating, "not known", 4)},
            {"derated", "may carry here", value_or(link.derated, "not known", 4)},
            {"carries", "carries", value_of(link.carries, 4)},
            {"drop", "drop", value_of(link.drop)},
            {"loss", "loss", value_of(link.loss)}};
}

Value window_of(const CircuitState& circuit) {
    if (circuit.fuses.empty()) {
        return {Absent{"the circuit has no fuse"}};
    }
    const FuseState& fuse = circuit.fuses.front();
    return {Members{
        {"least", "asked by the load", value_of(fuse.window.least, 4)},
        {"most", "allowed by the weakest part", value_or(fuse.window.most, "no part is known", 4)},
        {"smallest", "smallest fuse",
         value_or(fuse.window.smallest, "no standard size reaches what the load asks", 4)},
        {"largest", "largest fuse",
         value_or(fuse.window.largest, "the weakest part allows less than any size", 4)}}};
}

Members circuit_members(const Fit& fit, const CircuitState& circuit) {
    const auto weakest = [&]() -> Value {
        return circuit.weakest ? Value{circuit.links[*circuit.weakest].title}
                               : Value{Absent{"no part of it has a known rating"}};
    };
    const auto worst = [&]() -> Value {
        return circuit.worst_drop ? Value{circuit.links[*circuit.worst_drop].title}
                                  : Value{Absent{"it has no part"}};
    };
    List links;
    for (const LinkState& link : circuit.links) {
        links.push_back({link_members(link)});
    }
    return {{"name", "", {circuit.name}},
            {"verdict", "verdict", {std::string(fitting::word_for(fit, circuit.name))}},
            {"carries", "carries", value_of(circuit.carries(), 4)},
            {"continuous", "of it for hours", value_of(circuit.continuous, 4)},
            {"fuse_window", "fuse", window_of(circuit)},
            {"weakest_link", "weakest part", weakest()},
            {"drop", "drop", value_of(circuit.drop)},
            {"drop_share", "drop", value_of(units::Share(circuit.drop / circuit.nominal))},
            {"loss", "loss", value_of(circuit.loss)},
            {"worst_drop", "most of it in", worst()},
            {"links", "parts", {std::move(links)}}};
}

// ---- Tables.

Column words(std::string name, std::string heading, std::vector<std::string> points) {
    return {.name = std::move(name),
            .heading = std::move(heading),
            .unit = "",
            .points = std::move(points)};
}

std::string amperes_or(const std::optional<Current>& current, std::string otherwise) {
    return current ? in_words(*current, 4) : std::move(otherwise);
}

std::string fuses_of(const CircuitState& circuit) {
    std::string text;
    for (const FuseState& fuse : circuit.fuses) {
        text += fmt::format("{}{}", text.empty() ? "" : ", ",
                            amperes_or(circuit.links[fuse.link].rating, "?"));
    }
    return text.empty() ? "none" : text;
}

std::string span_of(const CircuitState& circuit) {
    if (circuit.fuses.empty()) {
        return "-";
    }
    const auto& window = circuit.fuses.front().window;
    if (window.empty()) {
        return "none fits";
    }
    return *window.smallest == *window.largest
               ? in_words(*window.smallest, 4)
               : fmt::format("{} to {}", in_words(*window.smallest, 4),
                             window.most ? in_words(*window.largest, 4) : "any");
}

Series circuit_table(const Fit& fit) {
    std::vector<std::string> names, verdicts, carries, fuses, spans, drops, weakest;
    for (const CircuitState& circuit : fit.circuits) {
        names.push_back(circuit.name);
        verdicts.push_back(std::string(fitting::word_for(fit, circuit.name)));
        carries.push_back(in_words(circuit.carries(), 3));
        fuses.push_back(fuses_of(circuit));
        spans.push_back(span_of(circuit));
        drops.push_back(fmt::format("{:.1f} %", 100.0 * (circuit.drop / circuit.nominal)));
        weakest.push_back(circuit.weakest ? circuit.links[*circuit.weakest].title : "-");
    }
    const bool any = !names.empty();
    return {.name = "circuits",
            .title = "The circuits",
            .columns = {words("circuit", "circuit", names), words("verdict", "verdict", verdicts),
                        words("carries", "carries", carries), words("fuse", "fuse", fuses),
                        words("fuse_may_be", "may be", spans), words("drop", "drop", drops),
                        words("weakest", "weakest part", weakest)},
            .brief = any};
}

Series link_table(const Fit& fit) {
    std::vector<std::string> circuits, parts, rated, derated, carries, drops, losses, why;
    for (const CircuitState& circuit : fit.circuits) {
        for (const LinkState& link : circuit.links) {
            circuits.push_back(circuit.name);
            parts.push_back(link.title);
            rated.push_back(amperes_or(link.rating, "not known"));
            derated.push_back(amperes_or(link.derated, "not known"));
            carries.push_back(in_words(link.carries, 3));
            drops.push_back(in_words(link.drop, 3));
            losses.push_back(in_words(link.loss, 3));
            why.push_back(link.why.empty() ? "-" : link.why);
        }
    }
    return {.name = "links",
            .title = "Part by part",
            .columns = {words("circuit", "circuit", circuits), words("part", "part", parts),
                        words("rated", "rated", rated), words("may_carry", "may carry", derated),
                        words("carries", "carries", carries), words("drop", "drop", drops),
                        words("loss", "loss", losses), words("why", "why less", why)}};
}

Series check_table(const Fit& fit) {
    std::vector<std::string> ids, verdicts, texts;
    for (const fitting::Check& check : fit.checks) {
        const std::string where = check.circuit.empty() ? "unit" : check.circuit;
        ids.push_back(check.id);
        verdicts.push_back(std::string(fitting::word_for(check)));
        texts.push_back(fmt::format("{}{}: {}", where,
                                    check.about.empty() ? "" : ", " + check.about, check.text));
    }
    return {.name = "checks",
            .title = "Every check",
            .columns = {words("check", "check", ids), words("verdict", "verdict", verdicts),
                        words("text", "what was found", texts)}};
}

Series way_table(const std::vector<fitting::WayOut>& ways) {
    std::vector<std::string> circuits, changes, results;
    for (const fitting::WayOut& way : ways) {
        circuits.push_back(way.circuit);
        changes.push_back(way.change);
        results.push_back(way.result);
    }
    return {.name = "ways",
            .title = "What would fit, tried on the whole build",
            .columns = {words("circuit", "circuit", circuits), words("change", "change", changes),
                        words("result", "result", results)}};
}

// ---- Working.

void add(std::vector<WorkingRow>& rows, std::string section, std::string what, Quantity value,
         std::string formula, std::string source) {
    rows.push_back({.section = std::move(section),
                    .quantity = std::move(what),
                    .value = std::move(value),
                    .formula = std::move(formula),
                    .source = std::move(source)});
}

void add_main(std::vector<WorkingRow>& rows, const scenario::Scenario& scenario, const Fit& fit) {
    if (!fit.continuous) {
        return;
    }
    const auto& at = *fit.continuous;
    const std::string section = "Inverter and packs";
    add(rows, section, "output, continuous", shown(scenario.inverter->continuous), "",
        "inverter.continuous");
    add(rows, section, "drawn from the packs for it", shown(at.feed.drawn, 4),
        "inverter method.md (1)", "inverter.efficiency");
    add(rows, section, "packs' voltage at rest, the first", shown(at.feed.sources.front().emf, 4),
        "battery method.md", "pack.charge");
    add(rows, section, "inside one pack and its path", shown(at.feed.sources.front().resistance),
        "wiring method.md (15)", "pack.resistance and its lead");
    add(rows, section, "bus to inverter, both conductors", shown(at.feed.main),
        "wiring method.md (5)", "the circuit that feeds the inverter, or cable_resistance");
    add(rows, section, "most that could be drawn before collapse", shown(at.state.largest),
        "wiring method.md (17)", "");
    add(rows, section, "voltage at the bus", shown(at.state.bus, 4), "wiring method.md (16)", "");
    add(rows, section, "voltage at the inverter", shown(at.state.at_load, 4),
        "wiring method.md (16)", "");
    add(rows, section, "current", shown(at.state.main, 4), "wiring method.md (16)", "");
    if (fit.surge) {
        add(rows, section, "current at the surge", shown(fit.surge->state.main, 4),
            "wiring method.md (16)", "inverter.surge");
        add(rows, section, "voltage at the inverter then", shown(fit.surge->state.at_load, 4),
            "wiring method.md (16)", "");
    }
    if (fit.prospective) {
        add(rows, section, "into a dead short, all packs, at most", shown(*fit.prospective),
            "wiring method.md (19)", "pack.resistance");
    }
}

void add_circuit(std::vector<WorkingRow>& rows, const CircuitState& circuit) {
    const std::string section = "Circuit " + circuit.name;
    add(rows, section, "voltage its currents are reckoned at", shown(circuit.design, 4), "",
        "the lowest it works at");
    add(rows, section, "for 3 h or more", shown(circuit.continuous, 4), "fitting method.md (2)",
        circuit.charging > Current() ? "all that charges at once"
                                     : "loads' hours, or the inverter's rating");
    add(rows, section, "more, for shorter times", shown(circuit.further, 4), "", "loads' cycles");
    for (const LinkState& link : circuit.links) {
        if (link.derated) {
            add(rows, section,
                fmt::format("{} may carry{}", link.title,
                            link.why.empty() ? "" : " (" + link.why + ")"),
                shown(*link.derated, 4), "wiring method.md (6), (9)", link.source);
        }
        add(rows, section, link.title + ", resistance", shown(link.resistance),
            "wiring method.md (3) to (5)", "");
    }
    add(rows, section, "lugs and bolts", shown(circuit.joints), "", "circuit.joints");
    for (const FuseState& fuse : circuit.fuses) {
        add(rows, section, circuit.links[fuse.link].title + " must be at least",
            shown(fuse.window.least, 4), "wiring method.md (8)", "[NEC] 210.20(A)");
        if (fuse.window.most) {
            add(rows, section, "and at most", shown(*fuse.window.most, 4), "fitting method.md (1)",
                fuse.weakest ? circuit.links[*fuse.weakest].title : "");
        }
    }
    add(rows, section, "drop", shown(circuit.drop), "fitting method.md (3)", "");
    add(rows, section, "loss", shown(circuit.loss), "fitting method.md (3)", "");
}

}  // namespace

Members wiring_values(const Fit& fit) {
    List circuits;
    for (const CircuitState& circuit : fit.circuits) {
        circuits.push_back({circuit_members(fit, circuit)});
    }
    Members values{{"circuits", "circuits", {std::move(circuits)}},
                   {"inside", "warmth inside, taken", value_of(fit.inside)}};
    const Absent none{"the unit has no inverter"};
    values.push_back({"voltage_at_inverter", "voltage at the inverter, at its rating",
                      fit.continuous ? value_of(fit.continuous->state.at_load, 4) : Value{none}});
    values.push_back({"current", "current to it",
                      fit.continuous ? value_of(fit.continuous->state.main, 4) : Value{none}});
    values.push_back({"short_circuit", "into a dead short of all packs, at most",
                      value_or(fit.prospective, "not known")});
    values.push_back({"shut_case", "inside a shut case at the inverter's rating",
                      value_or(fit.shut, "the case's surface is not given")});
    return values;
}

std::vector<WorkingRow> wiring_working(const scenario::Scenario& scenario, const Fit& fit) {
    std::vector<WorkingRow> rows;
    add_main(rows, scenario, fit);
    for (const CircuitState& circuit : fit.circuits) {
        add_circuit(rows, circuit);
    }
    return rows;
}

std::vector<Series> wiring_series(const Fit& fit, const std::vector<fitting::WayOut>& ways) {
    std::vector<Series> series{circuit_table(fit), link_table(fit)};
    if (!ways.empty()) {
        series.push_back(way_table(ways));
    }
    series.push_back(check_table(fit));
    return series;
}

}  // namespace answers
