// Scenario files for tests: one as a person would write it, and one that uses every key.
#pragma once

#include <string>
#include <string_view>

namespace sample {

inline constexpr std::string_view ice_storm = R"(format = 1
title  = "Ice storm, four nights"

[outage]
starts = 2026-01-14T18:00:00      # local standard time at the place
lasts  = "4 d"
cause  = "storm"                  # storm | clear | unknown
battery_temperature = "5 degC"

[place]
name = "Chicago IL"

[[pack]]
name = "main"                     # the pack in the case
count = 1
chemistry = "lifepo4"
capacity = "100 Ah"
rated_over = "5 h"
voltage = "12.8 V"
charge = "100 %"

# bought in spring
[[pack]]
name = "expansion"
count = 3

[inverter]
continuous = "2400 W"
surge = "4800 W"
surge_lasts = "1 s"
idle = "18 W"
efficiency = [{at="10 %", is="0.86"}, {at="50 %", is="0.91"}, {at="100 %", is="0.88"}]
cutoff_voltage = "10.5 V"
waveform = "sine"
off = ["23:00-06:00"]

[[panel]]
count = 3
power = "100 W"
placement = "fixed"
tilt = "45 deg"
azimuth = "180 deg"

[charge_controller]
kind = "mppt"
input_limit = "520 W"

[[load]]
name = "refrigerator"
from = "ac"
metered = {energy = "1.9 kWh", over = "31 h"}
runs = {on = "15 min", every = "45 min"}
priority = 2
evidence = "metered"
motor = {kind = "compressor_rsir", locked_rotor_current = "11 A"}

[[load]]
name = "cabin lights"
from = "12V"
power = "12 W"
hours = ["06:00-07:00", "17:30-22:00"]

[[circuit]]
name = "cabin lights"
feeds = ["cabin lights"]
links = [{fuse = "7.5 A"}, {switch = "10 A"}, {wire = "16 AWG", length = "3 ft", insulation = "105 degC"}]

[storage]
since = 2026-04-01
temperature = "25 degC"
drain = "15 mA"

[goal]
chance = "90 %"
carry_at_most = "20 kg"
)";

inline constexpr std::string_view every_key = R"(format = 1
title = "Every key there is"

[outage]
starts = 2026-07-01T06:30:00
lasts = "3 d 6 h"
cause = "unknown"
battery_temperature = "77 degF"
battery_follows_room = true
room_temperature = "18.5 degC"

[place]
name = "the cabin"
latitude = "43.7 deg"
longitude = "-87.9 deg"
elevation = "700 ft"
utc_offset = "-6 h"
irradiation = ["1.5 kWh/m^2/d", "2.5 kWh/m^2/d", "3.5 kWh/m^2/d", "4.5 kWh/m^2/d", "5.5 kWh/m^2/d", "6.1 kWh/m^2/d",
               "6.0 kWh/m^2/d", "5.2 kWh/m^2/d", "4.0 kWh/m^2/d", "2.8 kWh/m^2/d", "1.7 kWh/m^2/d", "1.3 kWh/m^2/d"]
sunshine = ["4.1 h/d", "5 h/d", "6 h/d", "7.1 h/d", "8.5 h/d", "9.6 h/d", "9.8 h/d", "9 h/d", "7.6 h/d", "6 h/d", "4 h/d", "3.5 h/d"]
temperature = ["-4 degC", "-2 degC", "3 degC", "9 degC", "15 degC", "21 degC", "24 degC", "23 degC", "19 degC", "12 degC", "5 degC", "-1 degC"]
temperature_range = ["8 K", "8 K", "9 K", "10 K", "11 K", "11 K", "10 K", "10 K", "10 K", "10 K", "8 K", "7 K"]
weather_file = "weather/station.epw"
ground_reflectance = "60 %"

[[pack]]
name = "main"
count = 1
chemistry = "agm"
capacity = "100 Ah"
rated_over = "20 h"
voltage = "12 V"
charge = "95 %"
rested_voltage = "12.6 V"
rested_for = "8 h"
two_well = {c = "0.3", k = "0.6 1/h", total = "120 Ah"}
resistance = "4 mohm"
lead_resistance = "2 mohm"
current_limit = "100 A"
pulse = [{current = "200 A", for = "5 s"}, {current = "150 A", for = "30 s"}]
charge_limit = "25 A"
absorption_voltage = "14.4 V"
absorption_per_kelvin = "30 mV/K"
cutoff_voltage = "10.5 V"
coldest_charge = "-10 degC"
usable = "80 %"
age = "mid_life"
tested_capacity = "92 Ah"
fuse = "100 A"
connector = "175 A"
weight = "28 kg"
price = 249.5

[[pack]]
name = "from the camper"
chemistry = "flooded"
capacity = "105 Ah"
rates = [{charge = "95 Ah", over = "10 h"}, {charge = "81 Ah", over = "5 h"}]
reserve = "160 min"

[inverter]
continuous = "2400 W"
continuous_apparent = "3000 VA"
surge = "6 kW"
surge_lasts = "500 ms"
idle = "18 W"
efficiency = [{at = "10 %", is = 0.86}, {at = "100 %", is = "88 %"}]
cutoff_voltage = "10.5 V"
restart_voltage = "12.6 V"
restart = "by itself"
cutoff_delay = "5 s"
output_voltage = "120 V"
waveform = "quasi_square"
cable_resistance = "1.2 mohm"
off = "23:00-06:00"
overload = [{at = "110 %", holds = "60 s"}, {at = "150 %", holds = "5 s"}]
when_overloaded = "folds_back"
case_temperature = "45 degC"
search_threshold = "20 W"

[[panel]]
count = 4
power = "100 W"
placement = "aimed"
tilt = "60 deg"
azimuth = "170 deg"
aims = [{at = "08:00", tilt = "70 deg", azimuth = "110 deg"}, {at = 12:00:00, tilt = "60 deg", azimuth = "180 deg"}]
out = ["08:00-16:30"]
shade = [{hours = "15:00-18:00", shaded = "50 %"}]
covered_days = [1, 3]
open_circuit_voltage = "22.3 V"
short_circuit_current = "6.1 A"
peak_power_voltage = "18.2 V"
peak_power_current = "5.5 A"
nominal_cell_temperature = "45 degC"
power_lost_per_kelvin = "0.4 %/K"
derating = "0.85"
in_series = 2
weight = "6.5 kg"
price = "90"

[charge_controller]
kind = "pwm"
input_limit = "520 W"
output_limit = "40 A"
voltage_limit = "100 V"
efficiency = "97 %"

[[charger]]
name = "neighbour's generator"
kind = "generator"
current = "20 A"
hours = ["10:00-12:00"]
days = [2, 4]
efficiency = "85 %"
power_factor = "0.65"
generator_rating = "2 kW"

[[load]]
name = "deep freezer"
from = "ac"
label = "450 kWh/yr"
days = [1, 2]
count = 2
priority = 2
evidence = "label"
power_factor = "0.7"
medical = false
keeps_cold = "freezer"
room = "35 degC"
age = "8 yr"

[[load]]
name = "pump"
nameplate = {voltage = "115 V", current = "9.8 A", power_factor = "0.8"}
runs = {on = "10 s", every = "100 s", starts_at = "5 min"}
hours = ["00:00-24:00"]
motor = {kind = "capacitor_start", horsepower = "1/2 hp", code_letter = "K", full_load_current = "9.8 A", voltage = "115 V", soft_start = true, pull = "50 %", rope_layer = 2}

[[load]]
name = "phone"
from = "usb"
like = "phone"
duty = "50 %"
lowest_voltage = "11 V"
converter_efficiency = "0.9"

[[circuit]]
name = "main feed"
feeds = ["inverter", "pump"]
from = "bus"
links = [{fuse = "250 A", family = "class T", interrupts = "20 kA", voltage = "125 V", resistance = "0.2 mohm", full_duty = false, derate_per_kelvin = "0.2 %", opens = [{current = "500 A", least = "1 s", most = "480 s"}]}, {switch = "300 A", rated_for = "dc", ac_rating = "200 A", voltage = "48 V", resistance = "0.1 mohm", takes = "4/0 AWG"}, {wire = "2/0 AWG", round_trip = "8 ft"}, {connector = "175 A", resistance = "0.2 mohm", part = "two-pole 175", listing = "lower", hottest = "105 degC", voltage = "120 V", cycles_used = 40, takes = "1/0 AWG"}, {outlet = "15 A", ground_fault = true, voltage = "125 V", takes = "12 AWG"}, {wire = "2/0 AWG", length = "4 ft", insulation = "105 degC", return_size = "1/0 AWG", return_length = "3 ft", runs = 2, bundle = 3, surroundings = "50 degC", built_to = "sae", table = "boat", ampacity = "300 A", tinned = true, sheathed = true, terminals = "75 degC"}]
joints = "0.4 mohm"
drop_limit = "3 %"
neutral = "bonded"
weight = "2 kg"
price = "140"

[case]
surface = "1.05 m2"
length = "56 cm"
width = "45 cm"
height = "27 cm"
material = "plastic"
lid = "open"
air = "30 degC"
inside = "45 degC"
rating = "IP65"
vent = "10 cm2"

[storage]
since = "2026-04-01 12:00"
temperature = "25 degC"
drain = "15 mA"
master_switch_open = false
self_discharge_per_month = "3 %"
maintained = true

[goal]
chance = "90 %"
carry_at_most = "44 lb"
spend_at_most = 800
)";

// The smallest file that can be answered, with more lines after it.
inline std::string smallest(std::string_view more = "") {
    return R"(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "4 d"
[[pack]]
name = "main"
chemistry = "agm"
capacity = "100 Ah"
)" + std::string(more);
}

}  // namespace sample
