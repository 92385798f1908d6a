// What a person writes down while living through the outage: what was read, done or seen, and when.
// One entry is one of it; entries are added and never changed, a wrong one is struck by a later
// one.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scenario/load.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
#include "units/time.hpp"

namespace scenario {

enum class Happened {
    switched_off,
    switched_on,
    pack_joined,  // it was not there when the outage began
    pack_left,
    pack_back,
    fuse_opened,
    supply_back,
    expected_back
};

// How the sky looked; thin is sun through cloud.
enum class SeenSky { clear, thin, grey, dark };

// As a voltmeter shows it.
//   decimals   digits behind the point, of volts; never less than 0
struct VoltageShown {
    units::Voltage volts{};
    int decimals = 0;

    friend bool operator==(const VoltageShown&, const VoltageShown&) = default;
};

// Of a voltage as it is written: "12.90 V" has two, "12900 mV" three.
[[nodiscard]] int decimals_of(std::string_view text);

//   fails   as units::read
[[nodiscard]] units::Result<VoltageShown> read_voltage_shown(std::string_view text);

// Half a unit of the last digit: the true value lies so near, whatever the meter's own error.
[[nodiscard]] units::Voltage half_last_digit(const VoltageShown& shown);

// What was drawn from the packs while the voltage was read; one of the two.
struct DrawnMeanwhile {
    std::optional<units::Power> power;
    std::optional<units::Current> current;

    friend bool operator==(const DrawnMeanwhile&, const DrawnMeanwhile&) = default;
};

// What a controller counted since midnight; nothing in an entry that strikes another, where it says
// which.
struct SunCounted {
    std::optional<units::Energy> taken;

    friend bool operator==(const SunCounted&, const SunCounted&) = default;
};

struct LogEntry {
    units::LocalTime at;
    std::optional<std::string> pack;  // silent: all, joined
    std::optional<std::string> load;
    std::optional<std::string> keeps;  // what is kept cold or warm, where a thermometer hangs
    std::optional<int> count;          // of packs of that name; silent: all
    std::optional<VoltageShown> reads;
    std::optional<DrawnMeanwhile> under;
    std::optional<units::Duration> rested;
    std::optional<units::StateOfCharge> shows;
    std::optional<MeteredUse> metered;
    std::optional<SunCounted> sun;
    std::optional<SeenSky> sky;
    std::optional<units::Temperature> temperature;
    std::optional<Happened> happened;
    std::optional<units::LocalTime> by;
    std::optional<units::LocalTime> strikes;
};

// Places of the entries that hold, in the order of their times, whatever their order in the file:
// without what was struck, without what strikes, and the same entry written twice once. At one
// instant what was read comes before what was done.
[[nodiscard]] std::vector<std::size_t> standing(const std::vector<LogEntry>& log);

// Whether one entry strikes the other.
[[nodiscard]] bool is_struck_by(const LogEntry& entry, const LogEntry& by);

// The entry as it stands in a file, without a line end: "[[log]]" and a key a line.
[[nodiscard]] std::string print(const LogEntry& entry);

}  // namespace scenario
