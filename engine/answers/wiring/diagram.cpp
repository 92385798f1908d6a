#include "answers/wiring/diagram.hpp"

#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "answers/shown.hpp"
#include "answers/wiring/answer.hpp"

namespace answers {

namespace {

using fitting::CircuitState;
using fitting::Fit;
using fitting::LinkState;
using fitting::Role;
using scenario::Scenario;
using scenario::Severity;

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
    void judge(DiagramBox& box, const std::string& circuit, const std::string& title) const {
        for (const fitting::Check& check : fit.checks) {
            const bool about =
                check.circuit == circuit &&
                (check.about == title || check.about.starts_with(title + ",") ||
                 (check.about == "window" && title.find(" fuse") != std::string::npos));
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

    void line(std::string from, std::string to, std::string text = {}) {
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
        DiagramBox box{.id = fmt::format("circuit {} {}", circuit.name, i + 1),
                       .kind = kind_of(link),
                       .x = x,
                       .y = y,
                       .title = link.title,
                       .detail = !link.derated ? "rating not known"
                                 : loaded      ? fmt::format("{} of {}", in_words(link.carries, 3),
                                                             in_words(*link.derated, 3))
                                          : fmt::format("up to {}", in_words(*link.derated, 3))};
        judge(box, circuit.name, link.title);
        return box;
    }

    // Links from the left to the right, each joined to the one before.
    std::string chain(const CircuitState& circuit, std::string from, double x, double y) {
        for (std::size_t i = 0; i < circuit.links.size(); ++i) {
            const std::string id = add(box_of(circuit, i, x + static_cast<double>(i), y));
            line(from, id, i == 0 ? circuit.name : "");
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
            .title = pack.count > 1 ? fmt::format("{} x {}", pack.count, pack.name) : pack.name,
            .detail = in_words(pack.capacity)};
        judge(box, circuit == nullptr ? "" : circuit->name, "pack " + pack.name);
        judge(box, circuit == nullptr ? "" : circuit->name, "pack " + pack.name + " fuse");
        std::string from = add(std::move(box));
        for (std::size_t i = links; i-- > 0;) {
            const double x = bus - 1.0 - static_cast<double>(i);
            const std::string id = add(box_of(*circuit, i, x, y));
            line(from, id);
            from = id;
        }
        line(from, "bus", circuit == nullptr ? "lead not described" : circuit->name);
    }

    const CircuitState* circuit_of(Role role, std::string_view feeds) const {
        const auto found = std::ranges::find_if(fit.circuits, [&](const CircuitState& state) {
            const auto& names = scenario.circuits[state.index].feeds;
            return state.role == role && std::ranges::find(names, feeds) != names.end();
        });
        return found == fit.circuits.end() ? nullptr : &*found;
    }
};

std::string loads_of(const Scenario& scenario, const CircuitState& circuit) {
    return fmt::format("{}", fmt::join(scenario.circuits[circuit.index].feeds, ", "));
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
    const std::string feeds = loads_of(drawing.scenario, circuit);
    if (feeds.empty() || end == drawing.diagram.boxes.end()) {
        return;
    }
    const double x = end->x + 1.0;
    const std::string id =
        drawing.add({.id = "load of " + circuit.name,
                     .kind = BoxKind::load,
                     .x = x,
                     .y = end->y,
                     .title = feeds,
                     .detail = circuit.carries() > units::Current() ? in_words(circuit.carries(), 3)
                                                                    : std::string()});
    drawing.line(from, id);
}

// Circuits that begin here, one a row; those that hang on them follow below.
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

std::string in_plain_words(const Drawing& drawing) {
    std::string text =
        fmt::format("{} pack{} on a bus", drawing.fit.packs, drawing.fit.packs == 1 ? "" : "s");
    for (const CircuitState& circuit : drawing.fit.circuits) {
        std::string parts;
        for (const LinkState& link : circuit.links) {
            parts += (parts.empty() ? "" : ", ") + link.title;
        }
        text += fmt::format("; {}: {} ({})", circuit.name, parts,
                            fitting::word_for(drawing.fit, circuit.name));
    }
    return text + ".";
}

}  // namespace

WiringDiagram wiring_diagram(const Scenario& scenario, const Fit& fit) {
    Drawing drawing{scenario, fit};
    const double bus = widest_lead(drawing) + 1.5;
    drawing.add({.id = "bus",
                 .kind = BoxKind::bus,
                 .x = bus,
                 .y = 0.5,
                 .title = "bus",
                 .detail = in_words(fit.nominal)});
    double left = 0.5;
    for (const scenario::Pack& pack : scenario.packs) {
        if (pack.count > 0) {
            drawing.lead(pack, drawing.circuit_of(Role::pack_lead, pack.name), bus, left);
            left += 1.0;
        }
    }
    double right = 0.5;
    if (scenario.inverter) {
        const CircuitState* main = drawing.circuit_of(Role::main, "inverter");
        std::string end = "bus";
        double x = bus + 1.0;
        if (main != nullptr) {
            end = drawing.chain(*main, end, x, right);
            x += static_cast<double>(main->links.size());
        }
        DiagramBox box{.id = "inverter",
                       .kind = BoxKind::inverter,
                       .x = x,
                       .y = right,
                       .title = "inverter",
                       .detail = in_words(scenario.inverter->continuous, 4)};
        for (const char* when : {"inverter, at its rating", "inverter, at its surge"}) {
            drawing.judge(box, main == nullptr ? "" : main->name, when);
        }
        drawing.add(std::move(box));
        drawing.line(end, "inverter", main == nullptr ? "path not described" : "");
        right = std::max(right + 1.0,
                         draw_branches(drawing, "inverter", "inverter", x + 1.0, right, Role::ac));
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
