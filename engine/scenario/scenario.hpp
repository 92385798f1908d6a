// Everything a person says of one outage and one unit. Values only; parts of the engine make
// their models from them and say what they assumed where an optional is absent.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scenario/circuit.hpp"
#include "scenario/inverter.hpp"
#include "scenario/load.hpp"
#include "scenario/log.hpp"
#include "scenario/pack.hpp"
#include "scenario/panel.hpp"
#include "scenario/place.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"

namespace scenario {

enum class Cause { storm, clear, unknown };

// What a forecast says of a day's sky, from the darkest to the brightest.
enum class DaySky { dark, grey, mixed, clear };

//   lasts         how long it is looked at, where nobody knows how long it lasts: open_end.hpp
//   open_ended    nobody knows: lasts = "?"
//   half_over_by  by then half of such outages are over; nothing but that where it is open-ended
//   out_for       it has been out for so long when it is begun to be looked at; open-ended only
struct Outage {
    units::LocalTime starts;
    units::Duration lasts{};
    bool open_ended = false;
    std::optional<units::Duration> half_over_by;
    units::Duration out_for{};
    std::optional<Cause> cause;
    std::vector<DaySky> sky;  // forecast, day by day from the first whose noon lies ahead
    std::optional<units::Temperature> battery_temperature;
    std::optional<bool> battery_follows_room;
    std::optional<units::Temperature> room_temperature;
};

enum class ChargerKind { wall, generator, vehicle };

struct Charger {
    std::string name;
    ChargerKind kind = ChargerKind::wall;
    units::Current current{};  // at the battery
    std::vector<units::DailySpan> hours;
    std::vector<int> days;
    std::optional<units::Efficiency> efficiency;
    std::optional<units::PowerFactor> power_factor;
    std::optional<units::ApparentPower> generator_rating;  // watts of a plate count as volt-amperes
};

struct Storage {
    units::LocalTime since;
    std::optional<units::Temperature> temperature;
    std::optional<units::Current> drain;
    std::optional<bool> master_switch_open;
    std::optional<units::Share> self_discharge_per_month;
    std::optional<bool> maintained;
};

struct Goal {
    std::optional<units::Probability> chance;
    std::optional<units::Mass> carry_at_most;
    std::optional<units::Price> spend_at_most;
};

// Of the computer on which the log is written.
//   ahead_by   it shows so much more than the time at the place; below zero where it is behind
struct Clock {
    std::optional<units::Duration> ahead_by;
};

// What copies, moves and ends it stands in one object file: a hundred files would make it anew.
struct Scenario {
    Scenario();
    Scenario(const Scenario& other);
    Scenario(Scenario&& other) noexcept;
    Scenario& operator=(const Scenario& other);
    Scenario& operator=(Scenario&& other) noexcept;
    ~Scenario();

    std::string title;
    Outage outage;
    Place place;
    std::vector<Pack> packs;
    std::optional<Inverter> inverter;
    std::vector<Panel> panels;
    std::optional<ChargeController> controller;
    std::vector<Charger> chargers;
    std::vector<Load> loads;
    std::vector<Load> on_generator = {};  // set aside from them: set_aside.hpp
    std::vector<Circuit> circuits;
    std::optional<Case> enclosure;  // [case]
    std::optional<Storage> storage;
    std::optional<Goal> goal;
    std::optional<Clock> clock = {};
    std::vector<LogEntry> log = {};  // as in the file; standing() says what holds
};

}  // namespace scenario
