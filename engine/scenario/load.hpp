// What is switched on during the outage, as a person describes it.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "units/clock.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"

namespace scenario {

//   generator  runs only while a generator does, and takes nothing from the packs
enum class Outlet { ac, twelve_volt, usb, generator };

enum class Evidence { metered, label, guess };

// What is known of a load's draw; each kind of evidence has its own way to a power.
struct MeteredUse {
    units::Energy energy;
    units::Duration over;
    std::optional<units::Temperature> room;  // mean warmth of its room while the meter ran
};
struct YearlyLabel {
    units::Power average;  // 450 kWh/yr is 51.3 W
};
struct Nameplate {
    units::Voltage voltage;
    units::Current current;
    std::optional<units::PowerFactor> power_factor;
};
struct StatedPower {
    units::Power power;  // drawn while it runs
};
using Draw = std::variant<StatedPower, MeteredUse, YearlyLabel, Nameplate>;

// On for `on` out of every `every`; the first on-time of a day's midnight starts at `starts_at`.
struct DutyCycle {
    units::Duration on;
    units::Duration every;
    std::optional<units::Duration> starts_at;  // phase: time after the outage starts
};

enum class MotorKind {
    split_phase,
    capacitor_start,
    permanent_split_fan,
    permanent_split_compressor,
    compressor_rsir,
    compressor_csir,
    submersible,
    shaded_pole,
    universal,
    electronic,
    direct_current,
};

struct Motor {
    MotorKind kind = MotorKind::split_phase;
    std::optional<units::Current> locked_rotor_current;
    std::optional<units::Power> horsepower;
    std::optional<std::string> code_letter;
    std::optional<units::Current> full_load_current;
    std::optional<units::Voltage> voltage;
    std::optional<bool> soft_start;
    std::optional<units::Share> pull;  // of a winch's rated pull
    std::optional<int> rope_layer;     // 1 is the first on the drum
};

// What a load keeps cold, for its draw follows the warmth of its room.
enum class KeepsCold { nothing, refrigerator, refrigerator_freezer, freezer };

struct Load {
    std::string name;
    Outlet from = Outlet::ac;
    std::optional<Draw> draw;
    std::optional<DutyCycle> runs;
    std::optional<units::Share> duty;     // part of the time that it is on, where runs is not known
    std::vector<units::DailySpan> hours;  // empty: at all hours
    std::vector<int> days;                // days of the outage, 1 is the first; empty: every day
    int count = 1;
    int priority = 3;  // 1 life and health, 2 property, 3 word and light, 4 comfort, 5 work
    std::optional<Evidence> evidence;
    std::optional<units::PowerFactor> power_factor;
    std::optional<units::Efficiency> converter_efficiency;  // of a 12 V or USB adaptor
    std::optional<units::Voltage> lowest_voltage;           // of a 12 V or USB load, at its plug
    std::optional<bool> medical;  // that of its row of the appliance library, where silent
    std::optional<KeepsCold> keeps_cold;
    std::optional<units::Temperature> room;                  // in which it stands during the outage
    std::optional<units::Duration> age;                      // since it was made
    std::optional<std::string> like;                         // a row of the appliance library
    std::optional<units::Range<units::Power>> listed_power;  // of that row, where the draw is its
    bool usual_hours = false;  // `hours` are those of that row: a guess, others are as likely
    std::optional<Motor> motor;
    std::optional<std::size_t> written_as;  // its place in the file, where others were set aside
};

}  // namespace scenario
