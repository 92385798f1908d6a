// What happened, or would happen, over one outage: the plain result of running the clock once.
#pragma once

#include <algorithm>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "units/quantities.hpp"

namespace outage {

// What ended the supply first.
//   charge  the available well is empty, or too low for what is asked
//   usable  the share that a person allows: nothing is switched off by it
enum class LimitedBy { none, charge, low_voltage, pack_limit, fuse, inverter_limit, usable };

// Every joule of one outage. All entries are at least zero except residual.
//   identity  method.md (3)
//             in - out - losses - change of store = residual
struct Ledger {
    units::Energy loads{};            // delivered to appliances
    units::Energy inverter_loss{};    // idle and conversion
    units::Energy idle{};             // the part of inverter_loss drawn with nothing plugged in
    units::Energy converter_loss{};   // in 12 V and USB adaptors
    units::Energy wiring_loss{};      // in leads, connectors and main cable
    units::Energy battery_loss{};     // inner resistance, between the wells, incomplete charging
    units::Energy charging_loss{};    // the part of battery_loss that charging did not store
    units::Energy sun_offered{};      // at the battery terminals, before what is full refuses
    units::Energy sun_used{};         // went straight into loads
    units::Energy sun_stored{};       // went into the packs
    units::Energy sun_unused{};       // offered and not taken
    units::Energy sun_clipped{};      // lost at the controller or input limit, before sun_offered
    units::Energy charger_offered{};  // by generator and vehicle, at the battery terminals
    units::Energy charger_taken{};    // into loads or packs
    units::Energy charger_unused{};
    units::Energy stored_at_start{};
    units::Energy stored_at_end{};
    units::Energy unserved{};        // what appliances wanted and did not get
    units::Energy residual{};        // what the ledger does not explain: a defect when not tiny
    double relative_residual = 0.0;  // residual over the largest entry
};

// The state at one moment. Two points may share an instant: before and after a jump.
struct TracePoint {
    units::Duration at{};           // after the outage starts
    units::Energy stored{};         // in all packs, as a state of their wells
    units::StateOfCharge charge{};  // rested charge over rated charge, all packs; never below 0
    units::Voltage voltage{};       // at the bus
    units::Voltage rested{};        // of all packs, were nothing drawn at this moment
    units::Current current{};       // out of all packs together; negative while charging
    units::Power wanted{};          // by appliances, whether served or not
    units::Power served{};          // to appliances
    units::Power sun_offered{};
    units::Power sun_taken{};
};

// A part of the outage: every joule of it by the clock's own account, and the packs at its end.
//   flows   with what is stored at its two ends; the flows of all intervals sum to the ledger's
struct Interval {
    units::Duration from{};
    units::Duration to{};
    Ledger flows;
    units::StateOfCharge charge{};  // at its end, as TracePoint::charge
    units::Voltage voltage{};       // at the bus, at its end
};

enum class EventKind {
    inverter_off_low_voltage,
    inverter_on_again,
    inverter_overload,
    inverter_overload_over,
    inverter_switched_off,  // by its daily hours
    inverter_switched_on,
    packs_empty,  // the available well, and not even the least could be met after a rest
    packs_at_usable_limit,
    packs_cut_off,  // the pack's own low-voltage protection
    packs_over_current,
    fuse_opens,
    main_fuse_opens,      // between the bus and the inverter; what hangs at the bus goes on
    branch_fuse_opens,    // of a circuit of 12 V loads; what lies behind it is off for good
    cannot_be_delivered,  // no operating point: more power than the packs can give
    supply_back,
    load_off,       // a 12 V load, at its own lowest voltage or because the packs cannot carry it
    load_on_again,  // likewise
    inverter_off_empty,  // the available well is empty, and other loads go on or a rest would help
    packs_full,
    one_empty,         // of banks that differ: its available well; the others go on
    one_cut_off,       // its own low-voltage protection
    one_over_current,  // its protection opens on its current
    one_fuse_opens,
    one_back,  // it gives again
    sunrise,
    sunset,
};

struct Event {
    units::Duration at{};
    EventKind kind{};
    units::Power power{};      // what was asked for, where that matters
    units::Power at_most{};    // what could have been delivered, for cannot_be_delivered
    units::Current current{};  // per pack, where that matters
    std::size_t pack = 0;      // which bank, where it is about one: 0 is the unit's first
    std::size_t load = 0;      // which load of the demand, where it is about one
    std::size_t branch = 0;    // which branch of the unit, where it is about one
    units::Duration after{};   // how long it stood more than `above` before it opened
    units::Current above{};
};

// What a pack stood for a time though not forever; zero where none had to.
struct Strain {
    units::Duration longest{};  // at a stretch
    units::Current above{};     // what it bears forever, or for longer
    units::Current most{};
};

// What a stretch without supply is about: a load of the demand by its place, or one of these.
inline constexpr std::size_t everything = std::numeric_limits<std::size_t>::max();
inline constexpr std::size_t the_inverter = everything - 1;

// A part of the supply that gave nothing, whether or not somebody wanted it to.
struct Without {
    std::size_t part = everything;
    units::Duration from{};
    units::Duration to{};
    LimitedBy why{};
};

// A part that went out and would have run again after a rest, had somebody asked; or would not.
//   lasts   so long then, at least ten minutes; zero where rest alone does not bring it back
struct AfterRest {
    std::size_t part = everything;
    units::Duration out{};
    units::Duration from{};
    units::Duration lasts{};
};

// The most that one pack of a bank gave and took at any time of the course.
struct PackCurrents {
    units::Current given{};
    units::Current taken{};

    [[nodiscard]] units::Current largest() const { return std::max(given, taken); }
};

struct Course {
    units::Duration lasts{};  // until the supply first fails; the whole outage when it never does
    bool survives = false;    // it never failed
    LimitedBy limited_by = LimitedBy::none;
    Ledger ledger;
    std::vector<TracePoint> trace;
    std::vector<Interval> intervals;  // of Keep::intervals; they follow one another without a gap
    std::vector<Event> events;
    units::Voltage lowest_voltage{};
    units::Current highest_pack_current{};    // the largest of all of pack_currents
    std::vector<PackCurrents> pack_currents;  // by bank, as Event::pack
    units::Current highest_main_current{};    // between the bus and the inverter
    Strain strain;
    std::vector<Without> out;           // with the trace; in the order in which they begin
    std::vector<AfterRest> after_rest;  // likewise, the first few
    std::optional<units::Duration> crosses_usable_at;  // first
    units::Duration without{};  // time in which at least one appliance went without
};

}  // namespace outage
