#include "answers/wiring/diagram.hpp"

#include <algorithm>
#include <map>

#include "answers/wiring/answer.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using fitting::CircuitState;
using fitting::Fit;
using fitting::LinkState;
using fitting::Role;
using scenario::Scenario;
using scenario::Severity;
using words::Said;
using words::said;
using Joint = words::List::Joint;

BoxKind kind_of(const LinkState& link) {
    if (link.kind == "switch") {
        return BoxKind::switch_;
    }
    if (link.kind == "wire") {
        return BoxKind::wire;
    }
    if (link.kind == "connector") {
        return BoxKind::connector;
    }
    return link.kind == "outlet" ? BoxKind::outlet : BoxKind::fuse;
}

struct Drawing {
    const Scenario& scenario;
    const Fit& fit;
    WiringDiagram diagram = {};

    // The worst finding about a part of a circuit: by the part's title, or the circuit's as a
    // whole.
    void judge(DiagramBox& box, const std::string& circuit, const Said& title,
               bool is_fuse = false) const {
        for (const fitting::Check& check : fit.checks) {
            const bool about =
                check.circuit == circuit && (check.about == title || check.part == title ||
                                             (is_fuse && check.about == fitting::about_window()));
            if (!about || check.verdict == fitting::Verdict::fits) {
                continue;
            }
            const Severity severity = fitting::severity_of(check.verdict);
            if (!box.severity || severity < *box.severity) {
                box.severity = severity;
                box.finding = check.text;
            }
        }
    }

    std::string add(DiagramBox box) {
        diagram.width = std::max(diagram.width, box.x + 0.5);
        diagram.height = std::max(diagram.height, box.y + 0.5 * box.height);
        diagram.boxes.push_back(std::move(box));
        return diagram.boxes.back().id;
    }

    void line(std::string from, std::string to, Said text = {}) {
        std::optional<Severity> severity;
        for (const DiagramBox& box : diagram.boxes) {
            if (box.id == to) {
                severity = box.severity;
            }
        }
        diagram.lines.push_back({std::move(from), std::move(to), std::move(text), severity});
    }

    DiagramBox box_of(const CircuitState& circuit, std::size_t i, double x, double y) const {
        const LinkState& link = circuit.links[i];
        const bool loaded = link.carries > units::Current();
        DiagramBox box{.id = "circuit " + circuit.name + " " + std::to_string(i + 1),
                       .kind = kind_of(link),
                       .x = x,
                       .y = y,
                       .title = link.title,
                       .detail = !link.derated ? said<"rating not known">()
                                 : loaded ? said<"{current} of {most}">(link.carries, *link.derated)
                                          : said<"up to {current}">(*link.derated)};
        judge(box, circuit.name, link.title, link.kind == "fuse");
        return box;
    }

    // Links from the left to the right, each joined to the one before.
    std::string chain(const CircuitState& circuit, std::string from, double x, double y) {
        for (std::size_t i = 0; i < circuit.links.size(); ++i) {
            const std::string id = add(box_of(circuit, i, x + static_cast<double>(i), y));
            line(from, id, i == 0 ? Said(circuit.name) : Said());
            from = id;
        }
        return from;
    }

    // A pack and its lead: listed from the bus outwards, drawn towards it.
    void lead(const scenario::Pack& pack, const CircuitState* circuit, double bus, double y) {
        const auto links = circuit == nullptr ? 0 : circuit->links.size();
        DiagramBox box{
            .id = "pack " + pack.name,
            .kind = BoxKind::pack,
            .x = bus - 1.0 - static_cast<double>(links),
            .y = y,
            .title = pack.count > 1 ? said<"{n} x {pack}">(pack.count, pack.name) : Said(pack.name),
            .detail = said<"{capacity}">(pack.capacity)};
        judge(box, circuit == nullptr ? "" : circuit->name, said<"pack {pack}">(pack.name));
        judge(box, circuit == nullptr ? "" : circuit->name, said<"pack {pack} fuse">(pack.name));
        std::string from = add(std::move(box));
        for (std::size_t i = links; i-- > 0;) {
            const double x = bus - 1.0 - static_cast<double>(i);
            const std::string id = add(box_of(*circuit, i, x, y));
            line(from, id);
            from = id;
        }
        line(from, "bus", circuit == nullptr ? said<"lead not described">() : Said(circuit->name));
    }

    const CircuitState* circuit_of(Role role, std::string_view feeds) const {
        const auto found = std::ranges::find_if(fit.circuits, [&](const CircuitState& state) {
            const auto& names = scenario.circuits[state.index].feeds;
            return state.role == role && std::ranges::find(names, feeds) != names.end();
        });
        return found == fit.circuits.end() ? nullptr : &*found;
    }
};

Said loads_of(const Scenario& scenario, const CircuitState& circuit) {
    const auto& feeds = scenario.circuits[circuit.index].feeds;
    return words::joined({feeds.begin(), feeds.end()}, Joint::comma);
}

double widest_lead(const Drawing& drawing) {
    std::size_t widest = 0;
    for (const CircuitState& circuit : drawing.fit.circuits) {
        if (circuit.role == Role::pack_lead) {
            widest = std::max(widest, circuit.links.size());
        }
    }
    return static_cast<double>(widest);
}

void draw_load(Drawing& drawing, const CircuitState& circuit, const std::string& from) {
    const auto end = std::ranges::find(drawing.diagram.boxes, from, &DiagramBox::id);
    const Said feeds = loads_of(drawing.scenario, circuit);
    if (feeds.empty() || end == drawing.diagram.boxes.end()) {
        return;
    }
    const double x = end->x + 1.0;
    const std::string id = drawing.add({.id = "load of " + circuit.name,
                                        .kind = BoxKind::load,
                                        .x = x,
                                        .y = end->y,
                                        .title = feeds,
                                        .detail = circuit.carries() > units::Current()
                                                      ? said<"{current}">(circuit.carries())
                                                      : Said()});
    drawing.line(from, id);
}

// Circuits that begin here, one a row; those that depend on them follow below.
double draw_branches(Drawing& drawing, const std::string& begins, const std::string& from, double x,
                     double y, Role role) {
    for (const CircuitState& circuit : drawing.fit.circuits) {
        const auto& described = drawing.scenario.circuits[circuit.index];
        const bool here = begins == described.from.value_or(role == Role::ac ? "inverter" : "bus");
        const bool of_role =
            circuit.role == role || (role == Role::branch && circuit.role == Role::charging);
        if (!here || !of_role) {
            continue;
        }
        const std::string end = drawing.chain(circuit, from, x, y);
        draw_load(drawing, circuit, end);
        const double next = x + static_cast<double>(circuit.links.size());
        y = draw_branches(drawing, circuit.name, end, next, y + 1.0, role);
    }
    return y;
}

Said in_plain_words(const Drawing& drawing) {
    std::vector<Said> all{
        words::said_of<"{n} pack on a bus", "{n} packs on a bus">(drawing.fit.packs)};
    for (const CircuitState& circuit : drawing.fit.circuits) {
        std::vector<Said> parts;
        for (const LinkState& link : circuit.links) {
            parts.push_back(link.title);
        }
        all.push_back(said<"{circuit}: {parts} ({verdict})">(
            circuit.name, words::joined(std::move(parts), Joint::comma),
            fitting::word_for(drawing.fit, circuit.name)));
    }
    return said<"{description}.">(words::joined(std::move(all), Joint::semicolon));
}

// From the bus upwards, and what it feeds.
//   y, gives   the first free row
double draw_inverter(Drawing& drawing, double bus, double y) {
    const CircuitState* main = drawing.circuit_of(Role::main, "inverter");
    std::string end = "bus";
    double x = bus + 1.0;
    if (main != nullptr) {
        end = drawing.chain(*main, end, x, y);
        x += static_cast<double>(main->links.size());
    }
    DiagramBox box{
        .id = "inverter",
        .kind = BoxKind::inverter,
        .x = x,
        .y = y,
        .title = said<"inverter">(),
        .detail = said<"{power}">(units::amount(drawing.scenario.inverter->continuous, 4))};
    for (const Said& when : {said<"inverter, at its rating">(), said<"inverter, at its surge">()}) {
        drawing.judge(box, main == nullptr ? "" : main->name, when);
    }
    drawing.add(std::move(box));
    drawing.line(end, "inverter", main == nullptr ? said<"path not described">() : Said());
    return std::max(y + 1.0, draw_branches(drawing, "inverter", "inverter", x + 1.0, y, Role::ac));
}

//   gives   the first free row
double draw_packs(Drawing& drawing, double bus) {
    double y = 0.5;
    for (const scenario::Pack& pack : drawing.scenario.packs) {
        if (pack.count > 0) {
            drawing.lead(pack, drawing.circuit_of(Role::pack_lead, pack.name), bus, y);
            y += 1.0;
        }
    }
    return y;
}

}  // namespace

WiringDiagram wiring_diagram(const Scenario& scenario, const Fit& fit) {
    Drawing drawing{scenario, fit};
    const double bus = widest_lead(drawing) + 1.5;
    drawing.add({.id = "bus",
                 .kind = BoxKind::bus,
                 .x = bus,
                 .y = 0.5,
                 .title = said<"bus">(),
                 .detail = said<"{voltage}">(fit.nominal)});
    const double left = draw_packs(drawing, bus);
    double right = 0.5;
    if (scenario.inverter) {
        right = draw_inverter(drawing, bus, right);
    }
    right = draw_branches(drawing, "bus", "bus", bus + 1.0, right, Role::branch);
    // The bus stands as tall as what hangs on it.
    const double tall = std::max({left, right, 1.5}) - 0.5;
    drawing.diagram.boxes.front().height = tall;
    drawing.diagram.boxes.front().y = 0.5 * tall;
    drawing.diagram.height = std::max(drawing.diagram.height, tall);
    drawing.diagram.description = in_plain_words(drawing);
    return std::move(drawing.diagram);
}

}  // namespace answers
