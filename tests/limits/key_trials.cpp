#include "key_trials.hpp"

#include <algorithm>

#include "scenario/keys/descriptions.hpp"

namespace key_trials {

namespace {

using scenario::Ends;

constexpr std::string_view lithium = R"toml(format = 1
title = "every table once"

[outage]
starts = 2026-01-14T18:00:00
lasts = "2 d"
cause = "storm"
battery_temperature = "5 degC"
room_temperature = "18 degC"

[place]
name = "Chicago IL"

[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
voltage = "12.8 V"
charge_limit = "50 A"
weight = "11 kg"
price = "310"

[[pack]]
name = "expansion"
count = 2

[inverter]
continuous = "2400 W"
surge = "4800 W"
surge_lasts = "1 s"
idle = "18 W"
cutoff_voltage = "10.5 V"

[[panel]]
count = 2
power = "100 W"
placement = "fixed"
tilt = "60 deg"
azimuth = "180 deg"

[charge_controller]
kind = "mppt"

[[charger]]
name = "garage charger"
kind = "generator"
current = "20 A"
hours = ["17:00-19:00"]

[[load]]
name = "refrigerator"
like = "refrigerator"
motor = {kind = "compressor_rsir"}
runs = {on = "15 min", every = "45 min"}
priority = 2

[[load]]
name = "lamps"
from = "12V"
power = "9 W"
count = 2
hours = ["16:30-22:30"]

[case]
length = "56 cm"
width = "45 cm"
height = "27 cm"

[[circuit]]
name = "main path"
feeds = ["inverter"]
links = [{fuse = "350 A", family = "class T"}, {wire = "3/0 AWG", length = "2 ft"}]

[[circuit]]
name = "lead"
feeds = ["expansion"]
links = [{fuse = "125 A", family = "class T"}, {connector = "280 A"}, {wire = "2 AWG", length = "3 ft"}]

[[circuit]]
name = "outlet"
from = "inverter"
feeds = ["refrigerator"]
links = [{fuse = "15 A", family = "breaker"}, {wire = "14 AWG", length = "3 ft"}, {outlet = "15 A"}]

[[circuit]]
name = "lights"
feeds = ["lamps"]
links = [{fuse = "5 A", family = "blade"}, {wire = "16 AWG", length = "5 ft"}]

[storage]
since = 2025-10-01

[goal]
chance = "90 %"

[clock]
ahead_by = "7 min"

[[log]]
at = 2026-01-14T21:00:00
pack = "main"
reads = "13.1 V"
under = "150 W"
)toml";

// Two wells, packs that differ, a winch on the bus and a controller that only switches.
constexpr std::string_view lead = R"toml(format = 1
title = "lead, packs that differ"

[outage]
starts = 2026-07-14T06:00:00
lasts = "2 d"
room_temperature = "20 degC"

[place]
latitude = "40 deg"
longitude = "-105 deg"

[[pack]]
name = "main"
chemistry = "agm"
capacity = "100 Ah"

[[pack]]
name = "expansion"
capacity = "60 Ah"

[inverter]
continuous = "1000 W"

[[panel]]
power = "100 W"
open_circuit_voltage = "22 V"
short_circuit_current = "6 A"

[charge_controller]
kind = "pwm"

[[charger]]
name = "garage charger"
kind = "vehicle"
current = "20 A"
days = [2]

[[load]]
name = "refrigerator"
like = "refrigerator"

[[load]]
name = "lamps"
from = "12V"
power = "300 W"
motor = {kind = "direct_current", pull = "50 %"}
hours = ["12:00-12:30"]

[case]
surface = "1.05 m2"

[[circuit]]
name = "main path"
feeds = ["inverter"]
links = [{fuse = "150 A", family = "class T"}, {wire = "1 AWG", length = "2 ft"}]

[[circuit]]
name = "outlet"
feeds = ["lamps"]
links = [{fuse = "80 A"}, {wire = "4 AWG", length = "3 ft"}]

[storage]
since = 2026-01-01

[goal]
carry_at_most = "80 kg"

[[log]]
at = 2026-07-14T09:00:00
load = "refrigerator"
happened = "switched off"
)toml";

constexpr std::string_view odd_values[] = {"0",
                                           "-1",
                                           "0.5",
                                           "1e308",
                                           "nan",
                                           "-inf",
                                           "9223372036854775807",
                                           "\"\"",
                                           "\" \"",
                                           "\"0\"",
                                           "\"nan W\"",
                                           "\"1e400 Ah\"",
                                           "true",
                                           "[]",
                                           "[[1]]",
                                           "{}",
                                           "{a = 1}",
                                           "\"−5 °C\"",
                                           "\"1e-300 V\"",
                                           "2026-01-14",
                                           "18:00",
                                           "\"x\"",
                                           "\"\\u0007\"",
                                           "\"999999999999999999999999 d\""};

template <class Table>
void add_keys(std::vector<Trial>& trials, const std::string& table) {
    for (const auto& key : scenario::describe<Table>().keys) {
        const std::string path = (table.empty() ? "" : table + '.') + std::string(key->words.name);
        const Ends ends = key->ends();
        const auto add = [&](const std::string& value, Kind kind) {
            trials.push_back({path, value, kind, std::string(key->limits())});
        };
        std::ranges::for_each(ends.within, [&](const auto& v) { add(v, Kind::within); });
        std::ranges::for_each(ends.crowded, [&](const auto& v) { add(v, Kind::crowded); });
        std::ranges::for_each(ends.beyond, [&](const auto& v) { add(v, Kind::beyond); });
        for (const std::string_view value : odd_values) {
            add(std::string(value), Kind::odd);
        }
    }
}

// A table of the format and where the bases have one.
struct Walked {
    std::string_view key;
    std::vector<std::string_view> at;
    void (*add)(std::vector<Trial>&, const std::string&);
};

const std::vector<Walked>& walked() {
    using namespace scenario;
    static const std::vector<Walked> tables = {
        {"outage", {"outage"}, add_keys<Outage>},
        {"place", {"place"}, add_keys<Place>},
        {"pack", {"pack.main", "pack.expansion"}, add_keys<Pack>},
        {"inverter", {"inverter"}, add_keys<Inverter>},
        {"panel", {"panel"}, add_keys<Panel>},
        {"charge_controller", {"charge_controller"}, add_keys<ChargeController>},
        {"charger", {"charger"}, add_keys<Charger>},
        {"load", {"load.refrigerator", "load.lamps"}, add_keys<Load>},
        {"circuit", {"circuit.\"main path\"", "circuit.outlet"}, add_keys<Circuit>},
        {"case", {"case"}, add_keys<Case>},
        {"storage", {"storage"}, add_keys<Storage>},
        {"goal", {"goal"}, add_keys<Goal>},
        {"clock", {"clock"}, add_keys<Clock>},
        {"log", {"log[0]"}, add_keys<LogEntry>}};
    return tables;
}

}  // namespace

const std::vector<Base>& bases() {
    static const std::vector<Base> all = {{"lithium", lithium}, {"lead", lead}};
    return all;
}

std::vector<Trial> all_trials() {
    std::vector<Trial> trials;
    add_keys<scenario::Scenario>(trials, "");
    for (const Walked& table : walked()) {
        for (const std::string_view at : table.at) {
            table.add(trials, std::string(at));
        }
    }
    return trials;
}

std::vector<std::string> tables_not_walked() {
    std::vector<std::string> missed;
    const scenario::Scenario empty;
    for (const auto& key : scenario::describe<scenario::Scenario>().keys) {
        const bool is_table = key->example().find_first_of("[{") == 0;
        if (is_table &&
            std::ranges::find(walked(), key->words.name, &Walked::key) == walked().end()) {
            missed.emplace_back(key->words.name);
        }
    }
    return missed;
}

}  // namespace key_trials
