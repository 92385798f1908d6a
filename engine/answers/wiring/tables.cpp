#include "answers/wiring/tables.hpp"

#include "answers/shown.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using fitting::CircuitState;
using fitting::Fit;
using fitting::FuseState;
using fitting::LinkState;
using units::Current;
using words::Said;
using words::said;
using Joint = words::List::Joint;

template <class Written>
Value value_of(Written quantity, int significant = 3) {
    return quantity_or_reason(shown(quantity, significant), said<"the number is not finite">());
}

template <class Written>
Value value_or(const std::optional<Written>& quantity, Said reason, int significant = 3) {
    return quantity ? value_of(*quantity, significant) : Value{Absent{std::move(reason)}};
}

// ---- The keys of the answer.

Members link_members(const LinkState& link) {
    return {{"part", said<"part">(), {link.title}},
            {"rating", said<"rated">(), value_or(link.rating, said<"not known">(), 4)},
            {"derated", said<"may carry here">(), value_or(link.derated, said<"not known">(), 4)},
            {"carries", said<"carries">(), value_of(link.carries, 4)},
            {"drop", said<"drop">(), value_of(link.drop)},
            {"loss", said<"loss">(), value_of(link.loss)}};
}

Value window_of(const CircuitState& circuit) {
    if (circuit.fuses.empty()) {
        return {Absent{said<"the circuit has no fuse">()}};
    }
    const FuseState& fuse = circuit.fuses.front();
    return {Members{
        {"least", said<"asked by the load">(), value_of(fuse.window.least, 4)},
        {"most", said<"allowed by the weakest part">(),
         value_or(fuse.window.most, said<"no part is known">(), 4)},
        {"smallest", said<"smallest fuse">(),
         value_or(fuse.window.smallest, said<"no standard size reaches what the load asks">(), 4)},
        {"largest", said<"largest fuse">(),
         value_or(fuse.window.largest, said<"the weakest part allows less than any size">(), 4)}}};
}

Members circuit_members(const Fit& fit, const CircuitState& circuit) {
    const auto weakest = [&]() -> Value {
        return circuit.weakest ? Value{circuit.links[*circuit.weakest].title}
                               : Value{Absent{said<"no part of it has a known rating">()}};
    };
    const auto worst = [&]() -> Value {
        return circuit.worst_drop ? Value{circuit.links[*circuit.worst_drop].title}
                                  : Value{Absent{said<"it has no part">()}};
    };
    List links;
    for (const LinkState& link : circuit.links) {
        links.push_back({link_members(link)});
    }
    return {{"name", said<"circuit">(), {circuit.name}},
            {"verdict", said<"verdict">(), {fitting::word_for(fit, circuit.name)}},
            {"carries", said<"carries">(), value_of(circuit.carries(), 4)},
            {"continuous", said<"of it for hours">(), value_of(circuit.continuous, 4)},
            {"fuse_window", said<"fuse">(), window_of(circuit)},
            {"weakest_link", said<"weakest part">(), weakest()},
            {"drop", said<"drop">(), value_of(circuit.drop)},
            {"drop_share", said<"drop">(), value_of(units::Share(circuit.drop / circuit.nominal))},
            {"loss", said<"loss">(), value_of(circuit.loss)},
            {"worst_drop", said<"most of it in">(), worst()},
            {"links", said<"parts">(), {std::move(links)}}};
}

// ---- Tables.

Column words(std::string name, Said heading, std::vector<Said> points) {
    return {.name = std::move(name),
            .heading = std::move(heading),
            .unit = "",
            .points = std::move(points)};
}

Said shown_amperes(Current current, int digits = 4) {
    return said<"{current}">(units::amount(current, digits));
}

Said amperes_or(const std::optional<Current>& current, Said otherwise) {
    return current ? shown_amperes(*current) : std::move(otherwise);
}

Said fuses_of(const CircuitState& circuit) {
    std::vector<Said> fuses;
    for (const FuseState& fuse : circuit.fuses) {
        fuses.push_back(amperes_or(circuit.links[fuse.link].rating, "?"));
    }
    return fuses.empty() ? said<"none">() : words::joined(std::move(fuses), Joint::comma);
}

Said span_of(const CircuitState& circuit) {
    if (circuit.fuses.empty()) {
        return "-";
    }
    const auto& window = circuit.fuses.front().window;
    if (window.empty()) {
        return said<"none fits">();
    }
    if (*window.smallest == *window.largest) return shown_amperes(*window.smallest);
    return window.most ? said<"{smallest} to {largest}">(units::amount(*window.smallest, 4),
                                                         units::amount(*window.largest, 4))
                       : said<"{smallest} to any">(units::amount(*window.smallest, 4));
}

Series circuit_table(const Fit& fit) {
    std::vector<Said> names, verdicts, carries, fuses, spans, drops, weakest;
    for (const CircuitState& circuit : fit.circuits) {
        names.push_back(circuit.name);
        verdicts.push_back(fitting::word_for(fit, circuit.name));
        carries.push_back(shown_amperes(circuit.carries(), 3));
        fuses.push_back(fuses_of(circuit));
        spans.push_back(span_of(circuit));
        drops.push_back(
            said<"{percent} %">(words::with_decimals(100.0 * (circuit.drop / circuit.nominal), 1)));
        weakest.push_back(circuit.weakest ? circuit.links[*circuit.weakest].title : Said("-"));
    }
    const bool any = !names.empty();
    return {.name = "circuits",
            .title = said<"The circuits">(),
            .columns = {words("circuit", said<"circuit">(), names),
                        words("verdict", said<"verdict">(), verdicts),
                        words("carries", said<"carries">(), carries),
                        words("fuse", said<"fuse">(), fuses),
                        words("fuse_may_be", said<"may be">(), spans),
                        words("drop", said<"drop">(), drops),
                        words("weakest", said<"weakest part">(), weakest)},
            .brief = any};
}

Series link_table(const Fit& fit) {
    std::vector<Said> circuits, parts, rated, derated, carries, drops, losses, why;
    for (const CircuitState& circuit : fit.circuits) {
        for (const LinkState& link : circuit.links) {
            circuits.push_back(circuit.name);
            parts.push_back(link.title);
            rated.push_back(amperes_or(link.rating, said<"not known">()));
            derated.push_back(amperes_or(link.derated, said<"not known">()));
            carries.push_back(shown_amperes(link.carries, 3));
            drops.push_back(said<"{drop}">(link.drop));
            losses.push_back(said<"{loss}">(link.loss));
            why.push_back(link.why.empty() ? Said("-") : link.why);
        }
    }
    return {.name = "links",
            .title = said<"Part by part">(),
            .columns = {
                words("circuit", said<"circuit">(), circuits), words("part", said<"part">(), parts),
                words("rated", said<"rated">(), rated),
                words("may_carry", said<"may carry">(), derated),
                words("carries", said<"carries">(), carries), words("drop", said<"drop">(), drops),
                words("loss", said<"loss">(), losses), words("why", said<"why less">(), why)}};
}

Series check_table(const Fit& fit) {
    std::vector<Said> ids, verdicts, texts;
    for (const fitting::Check& check : fit.checks) {
        const Said where = check.circuit.empty() ? said<"unit">() : Said(check.circuit);
        ids.push_back(check.id);
        verdicts.push_back(fitting::word_for(check));
        texts.push_back(check.about.empty()
                            ? said<"{where}: {finding}">(where, check.text)
                            : said<"{where}, {part}: {finding}">(where, check.about, check.text));
    }
    return {.name = "checks",
            .title = said<"Every check">(),
            .columns = {words("check", said<"check">(), ids),
                        words("verdict", said<"verdict">(), verdicts),
                        words("text", said<"what was found">(), texts)}};
}

Series way_table(const std::vector<fitting::WayOut>& ways) {
    std::vector<Said> circuits, changes, results;
    for (const fitting::WayOut& way : ways) {
        circuits.push_back(way.circuit);
        changes.push_back(way.change);
        results.push_back(way.result);
    }
    return {.name = "ways",
            .title = said<"What would fit, tried on the whole build">(),
            .columns = {words("circuit", said<"circuit">(), circuits),
                        words("change", said<"change">(), changes),
                        words("result", said<"result">(), results)}};
}

// ---- Working.

void add(std::vector<WorkingRow>& rows, Said section, Said what, Quantity value,
         std::string formula, Said source) {
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
    const Said section = said<"Inverter and packs">();
    add(rows, section, said<"output, continuous">(), shown(scenario.inverter->continuous), "",
        "inverter.continuous");
    add(rows, section, said<"drawn from the packs for it">(), shown(at.feed.drawn, 4),
        "inverter method.md (1)", "inverter.efficiency");
    add(rows, section, said<"packs' voltage at rest, the first">(),
        shown(at.feed.sources.front().emf, 4), "battery method.md", "pack.charge");
    add(rows, section, said<"inside one pack and its path">(),
        shown(at.feed.sources.front().resistance), "wiring method.md (15)",
        said<"pack.resistance and its lead">());
    add(rows, section, said<"bus to inverter, both conductors">(), shown(at.feed.main),
        "wiring method.md (5)", said<"the circuit that feeds the inverter, or cable_resistance">());
    add(rows, section, said<"most that could be drawn before collapse">(), shown(at.state.largest),
        "wiring method.md (17)", "");
    add(rows, section, said<"voltage at the bus">(), shown(at.state.bus, 4),
        "wiring method.md (16)", "");
    add(rows, section, said<"voltage at the inverter">(), shown(at.state.at_load, 4),
        "wiring method.md (16)", "");
    add(rows, section, said<"current">(), shown(at.state.main, 4), "wiring method.md (16)", "");
    if (fit.surge) {
        add(rows, section, said<"current at the surge">(), shown(fit.surge->state.main, 4),
            "wiring method.md (16)", "inverter.surge");
        add(rows, section, said<"voltage at the inverter then">(),
            shown(fit.surge->state.at_load, 4), "wiring method.md (16)", "");
    }
    if (fit.prospective) {
        add(rows, section, said<"into a dead short, all packs, at most">(), shown(*fit.prospective),
            "wiring method.md (19)", "pack.resistance");
    }
}

void add_circuit(std::vector<WorkingRow>& rows, const CircuitState& circuit) {
    const Said section = said<"Circuit {circuit}">(circuit.name);
    add(rows, section, said<"voltage its currents are reckoned at">(), shown(circuit.design, 4), "",
        said<"the lowest it works at">());
    add(rows, section, said<"for 3 h or more">(), shown(circuit.continuous, 4),
        "fitting method.md (2)",
        circuit.charging > Current() ? said<"all that charges at once">()
                                     : said<"loads' hours, or the inverter's rating">());
    add(rows, section, said<"more, for shorter times">(), shown(circuit.further, 4), "",
        said<"loads' cycles">());
    for (const LinkState& link : circuit.links) {
        if (link.derated) {
            add(rows, section,
                link.why.empty() ? said<"{part} may carry">(link.title)
                                 : said<"{part} may carry ({reason})">(link.title, link.why),
                shown(*link.derated, 4), "wiring method.md (6), (9)", link.source);
        }
        add(rows, section, said<"{part}, resistance">(link.title), shown(link.resistance),
            "wiring method.md (3) to (5)", "");
    }
    add(rows, section, said<"lugs and bolts">(), shown(circuit.joints), "", "circuit.joints");
    for (const FuseState& fuse : circuit.fuses) {
        add(rows, section, said<"{fuse} must be at least">(circuit.links[fuse.link].title),
            shown(fuse.window.least, 4), "wiring method.md (8)", "[NEC] 210.20(A)");
        if (fuse.window.most) {
            add(rows, section, said<"and at most">(), shown(*fuse.window.most, 4),
                "fitting method.md (1)",
                fuse.weakest ? circuit.links[*fuse.weakest].title : Said());
        }
    }
    add(rows, section, said<"drop">(), shown(circuit.drop), "fitting method.md (3)", "");
    add(rows, section, said<"loss">(), shown(circuit.loss), "fitting method.md (3)", "");
}

}  // namespace

Members wiring_values(const Fit& fit) {
    List circuits;
    for (const CircuitState& circuit : fit.circuits) {
        circuits.push_back({circuit_members(fit, circuit)});
    }
    Members values{{"circuits", said<"circuits">(), {std::move(circuits)}},
                   {"inside", said<"warmth inside, taken">(), value_of(fit.inside)}};
    const Absent none{said<"the unit has no inverter">()};
    values.push_back({"voltage_at_inverter", said<"voltage at the inverter, at its rating">(),
                      fit.continuous ? value_of(fit.continuous->state.at_load, 4) : Value{none}});
    values.push_back({"current", said<"current to it">(),
                      fit.continuous ? value_of(fit.continuous->state.main, 4) : Value{none}});
    values.push_back({"short_circuit", said<"into a dead short of all packs, at most">(),
                      value_or(fit.prospective, said<"not known">())});
    values.push_back({"shut_case", said<"inside a shut case at the inverter's rating">(),
                      value_or(fit.shut, said<"the case's surface is not given">())});
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
