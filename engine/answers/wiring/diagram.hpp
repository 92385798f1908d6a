// The build as a picture that any face can draw: boxes at finished places and lines between them,
// with finished texts. Power flows from left to right: packs, their leads, the bus, the main path,
// the inverter, its outlets; branches of the bus stand below the main path.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scenario/finding.hpp"
#include "words/said.hpp"

namespace answers {

enum class BoxKind { pack, bus, inverter, load, fuse, switch_, wire, connector, outlet, other };

// One part. Places are the middle of the box in cells: a cell holds one box with its margins, so
// that faces choose their own size of a cell. x grows to the right, y downwards, both from 0.5.
struct DiagramBox {
    std::string id;  // no two alike: "circuit lamps 2"
    BoxKind kind = BoxKind::other;
    double x = 0.5;
    double y = 0.5;
    double height = 1.0;  // in cells; only a bus is taller than 1
    words::Said title;    // "16 AWG, 3 ft"
    words::Said detail;   // "0.8 A of 25 A"; may be empty
    // The worst finding about it; nothing where there is none.
    std::optional<scenario::Severity> severity = {};
    words::Said finding = {};  // its text, for whoever touches the box
};

struct DiagramLine {
    std::string from;  // ids of boxes
    std::string to;
    words::Said text = {};
    std::optional<scenario::Severity> severity = {};
};

struct WiringDiagram {
    double width = 0.0;   // cells
    double height = 0.0;  // cells
    std::vector<DiagramBox> boxes;
    std::vector<DiagramLine> lines;
    words::Said description;  // the picture in words, for those who cannot see it
};

}  // namespace answers
