// Fused and switched circuits: chains of parts, listed from the bus (or from the inverter's
// outlets) outwards. A circuit that feeds "inverter" is the main path; one that feeds a pack is
// that pack's lead; one that feeds alternating-current loads begins behind the inverter.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "units/quantities.hpp"
#include "units/size.hpp"

namespace scenario {

// One point of a fuse's time-current sheet: at this current it opens between these times.
struct OpeningTime {
    units::Current current;
    std::optional<units::Duration> least;  // absent: may open at once
    units::Duration most{};
};

struct Fuse {
    units::Current rating;
    std::optional<std::string> family;
    std::optional<units::Current> interrupts;
    std::optional<units::Voltage> voltage;  // rated, direct current unless behind the inverter
    std::optional<units::Resistance> resistance;
    std::optional<bool> full_duty;                  // marked to carry 100 % continuously
    std::optional<units::Share> derate_per_kelvin;  // above 25 degC
    std::vector<OpeningTime> opens;                 // replaces the family's envelope
};
struct Switch {
    units::Current rating;
    std::optional<std::string> rated_for;  // "dc", "ac" or "both": what `rating` is for
    std::optional<units::Current> ac_rating;
    std::optional<units::Voltage> voltage;
    std::optional<units::Resistance> resistance;
    std::optional<units::WireSize> takes;  // thickest wire its terminals take
};
struct Wire {
    units::WireSize size;
    units::Length length{};  // one way, supply only
    std::optional<units::Length> round_trip;
    std::optional<units::Temperature> insulation;
    std::optional<units::WireSize> return_size;      // absent: as the supply
    std::optional<units::Length> return_length;      // absent: as the supply
    std::optional<int> runs;                         // equal cables in parallel, each fused
    std::optional<int> bundle;                       // current-carrying conductors side by side
    std::optional<units::Temperature> surroundings;  // absent: that of the case
    std::optional<std::string> built_to;             // "nec", "sae" or "iec": metal of that size
    std::optional<std::string> table;                // "boat", "building" or "cord"
    std::optional<units::Current> ampacity;          // at 30 degC, in place of the table's
    std::optional<bool> tinned;
    std::optional<bool> sheathed;
    std::optional<units::Temperature> terminals;  // what lugs and terminals are marked for
};
struct Connector {
    units::Current rating;
    std::optional<units::Resistance> resistance;  // of one mated contact
    std::optional<std::string> part;              // a row of the connector table
    std::optional<std::string> listing;           // "lower", "ul" or "csa"
    std::optional<units::Temperature> hottest;    // of its housing
    std::optional<units::Voltage> voltage;
    std::optional<int> cycles_used;
    std::optional<units::WireSize> takes;
};
struct SocketOutlet {
    units::Current rating;
    std::optional<bool> ground_fault;  // trips on a fault to ground
    std::optional<units::Voltage> voltage;
    std::optional<units::WireSize> takes;
};
using Link = std::variant<Fuse, Switch, Wire, Connector, SocketOutlet>;

struct Circuit {
    std::string name;
    std::vector<std::string> feeds;
    std::vector<Link> links;
    std::optional<std::string> from;  // "bus", "inverter" or a circuit; absent: by its loads
    std::optional<units::Resistance> joints;  // all lugs and bolts, both conductors
    std::optional<units::Share> drop_limit;   // of the nominal voltage
    std::optional<std::string> neutral;       // bonded, floating, switched, split, unknown
    std::optional<units::Price> price;
    std::optional<units::Mass> weight;
};

// What the unit stands in.
struct Case {
    std::optional<units::Area> surface;
    std::optional<units::Length> length;
    std::optional<units::Length> width;
    std::optional<units::Length> height;
    std::optional<std::string> material;       // "plastic" or "steel"
    std::optional<std::string> lid;            // "open" or "closed", while the inverter runs
    std::optional<units::Temperature> air;     // around it
    std::optional<units::Temperature> inside;  // measured; in place of the estimate
    std::optional<std::string> rating;         // "IP65", as its maker states it shut
    std::optional<units::Area> vent;           // each of inlet and outlet
};

}  // namespace scenario
