// Fused and switched circuits: chains of parts from the bus to a load.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "units/quantities.hpp"
#include "units/size.hpp"

namespace scenario {

struct Fuse {
    units::Current rating;
    std::optional<std::string> family;
    std::optional<units::Current> interrupts;
};
struct Switch {
    units::Current rating;
    std::optional<std::string> rated_for;  // "dc", "ac" or "both"
};
struct Wire {
    units::WireSize size;
    units::Length length{};  // one way, supply only
    std::optional<units::Length> round_trip;
    std::optional<units::Temperature> insulation;
};
struct Connector {
    units::Current rating;
    std::optional<units::Resistance> resistance;
};
struct SocketOutlet {
    units::Current rating;
};
using Link = std::variant<Fuse, Switch, Wire, Connector, SocketOutlet>;

struct Circuit {
    std::string name;
    std::vector<std::string> feeds;
    std::vector<Link> links;
};

}  // namespace scenario
