// The limits of single values, each answered in words.
#include <algorithm>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "scenario/file/read.hpp"

namespace {

using testing::HasSubstr;

struct Refused {
    const char* table;
    const char* line;
    const char* where;
    const char* words;  // in what was found or what would be right
};

constexpr const char* load_lines = "[[load]]\nname = \"lamp\"";

constexpr Refused refused_values[] = {
    {"[[pack]]", "capacity = \"0 Ah\"", "pack[0].capacity", "too little"},
    {"[[pack]]", "capacity = \"-5 Ah\"", "pack[0].capacity", "too little"},
    {"[[pack]]", "capacity = \"1e12 Ah\"", "pack[0].capacity", "too much"},
    {"[[pack]]", "capacity = 100", "pack[0].capacity", "100 what?"},
    {"[[pack]]", "capacity = 100", "pack[0].capacity", "\"100 Ah\""},
    {"[[pack]]", "capacity = inf", "pack[0].capacity", "not a number"},
    {"[[pack]]", "capacity = nan", "pack[0].capacity", "not a number"},
    {"[[pack]]", "capacity = \"inf Ah\"", "pack[0].capacity", "Ah"},
    {"[[pack]]", "capacity = \"nan Ah\"", "pack[0].capacity", "Ah"},
    {"[[pack]]", "capacity = true", "pack[0].capacity", "yes or no"},
    {"[[pack]]", "capacity = [\"100 Ah\"]", "pack[0].capacity", "a list of 1"},
    {"[[pack]]", "capacity = \"100 Wh\"", "pack[0].capacity", "energy"},
    {"[[pack]]", "age = \"5 yr\"", "pack[0].age", "years alone do not tell"},
    {"[[pack]]", "age = 5", "pack[0].age", "tested_capacity"},
    {"[[pack]]", "age = \"mid\"", "pack[0].age", "mid_life"},
    {"[[pack]]", "count = -1", "pack[0].count", "too little"},
    {"[[pack]]", "count = -2", "pack[0].count", "too little"},
    {"[[pack]]", "count = 65", "pack[0].count", "from 0 to 64"},
    {"[[pack]]", "count = 1.5", "pack[0].count", "whole number"},
    {"[[pack]]", "count = \"3\"", "pack[0].count", "without quotes"},
    {"[[pack]]", "count = 9223372036854775807", "pack[0].count", "too much"},
    {"[[pack]]", "charge = \"101 %\"", "pack[0].charge", "100 %"},
    {"[[pack]]", "charge = \"-1 %\"", "pack[0].charge", "0 %"},
    {"[[pack]]", "charge = 80", "pack[0].charge", "80 what?"},
    {"[[pack]]", "usable = \"120 %\"", "pack[0].usable", "100 %"},
    {"[[pack]]", "usable = \"0 %\"", "pack[0].usable", "too little"},
    {"[[pack]]", "rated_over = \"0 h\"", "pack[0].rated_over", "too little"},
    {"[[pack]]", "voltage = \"5000 V\"", "pack[0].voltage", "too much"},
    {"[[pack]]", "weight = \"0 kg\"", "pack[0].weight", "too little"},
    {"[[pack]]", "name = \"\"", "pack[0].name", "no words"},
    {"[[pack]]", "name = \"a\\nb\"", "pack[0].name", "one line"},
    {"[[pack]]", "two_well = {c = \"0.3\"}", "pack[0].two_well.k", "1/h"},
    {"[[pack]]", "pulse = [{current = \"200 A\"}]", "pack[0].pulse[0].for", "5 s"},
    {"[[pack]]", "pulse = []", "pack[0].pulse", "empty list"},
    {"[outage]", "lasts = \"0 h\"", "outage.lasts", "too little"},
    {"[outage]", "lasts = \"1000 yr\"", "outage.lasts", "too much"},
    {"[outage]", "lasts = \"61 d\"", "outage.lasts", "from 1 min to 60 d"},
    {"[outage]", "lasts = \"-4 d\"", "outage.lasts", "too little"},
    {"[outage]", "starts = 2026-01-14T18:00:00Z", "outage.starts", "offset"},
    {"[outage]", "starts = \"next Tuesday\"", "outage.starts", "next Tuesday"},
    {"[outage]", "starts = 18:00:00", "outage.starts", "local standard time"},
    {"[outage]", "starts = 1066-10-14", "outage.starts", "1900"},
    {"[outage]", "battery_temperature = \"-300 degC\"", "outage.battery_temperature",
     "absolute zero"},
    {"[outage]", "battery_temperature = \"200 degC\"", "outage.battery_temperature", "too much"},
    {"[outage]", "cause = \"strom\"", "outage.cause", "did you mean \"storm\"?"},
    {"[inverter]", "continuous = \"0 W\"", "inverter.continuous", "too little"},
    {"[inverter]", "continuous = \"-1 W\"", "inverter.continuous", "too little"},
    {"[inverter]", "efficiency = [{at = \"50 %\", is = \"1.2\"}]", "inverter.efficiency[0].is",
     "100 %"},
    {"[inverter]", "efficiency = [{at = \"50 %\", is = \"0\"}]", "inverter.efficiency[0].is",
     "too little"},
    {"[inverter]", "efficiency = [{at = \"50 %\", is = nan}]", "inverter.efficiency[0].is",
     "not a number"},
    {"[inverter]", "efficiency = 0.9", "inverter.efficiency", "list"},
    {"[inverter]", "efficiency = [{at=\"50 %\", is=\"0.9\"}, {at=\"10 %\", is=\"0.8\"}]",
     "inverter.efficiency", "order"},
    {"[inverter]", "continuous = \"2 kW\"\nsurge = \"1 kW\"", "inverter.surge", "less than"},
    {"[inverter]", "cutoff_voltage = \"12 V\"\nrestart_voltage = \"11 V\"",
     "inverter.restart_voltage", "not above"},
    {"[inverter]", "off = [\"23:00-25:00\"]", "inverter.off[0]", "24 hours"},
    {"[inverter]", "off = [\"06:00\"]", "inverter.off[0]", "span"},
    {"[inverter]", "waveform = 7", "inverter.waveform", "sine"},
    {"[[inverter]]", "continuous = \"2 kW\"", "inverter", "[inverter]"},
    {"[panel]", "power = \"100 W\"", "panel", "[[panel]]"},
    {"[[panel]]", "power = \"0 W\"", "panel[0].power", "too little"},
    {"[[panel]]", "power = \"100 W\"\ntilt = \"91 deg\"", "panel[0].tilt", "too much"},
    {"[[panel]]", "power = \"100 W\"\nazimuth = \"south\"", "panel[0].azimuth", "angle"},
    {"[[panel]]", "power = \"100 W\"\ncovered_days = [0]", "panel[0].covered_days[0]",
     "from 1 to 60"},
    {"[[panel]]",
     "power = \"100 W\"\naims = [{at = \"25:00\", tilt = \"5 deg\", azimuth = \"180 deg\"}]",
     "panel[0].aims[0].at", "24 hours"},
    {"[[panel]]",
     "power = \"100 W\"\npeak_power_voltage = \"22 V\"\nopen_circuit_voltage = \"18 V\"",
     "panel[0].peak_power_voltage", "not below"},
    {"[place]", "latitude = \"95 deg\"\nlongitude = \"0 deg\"", "place.latitude", "too much"},
    {"[place]", "latitude = \"45 deg\"", "place.longitude", "longitude ="},
    {"[place]", "irradiation = [\"4 kWh/m^2/d\"]", "place.irradiation", "twelve"},
    {"[place]",
     "sunshine = [\"25 h/d\", \"1 h/d\", \"1 h/d\", \"1 h/d\", \"1 h/d\", \"1 h/d\", "
     "\"1 h/d\", \"1 h/d\", "
     "\"1 h/d\", \"1 h/d\", \"1 h/d\", \"1 h/d\"]",
     "place.sunshine[0]", "from 0 h/d to 24 h/d"},
    {load_lines, "power = \"-5 W\"", "load[0].power", "too little"},
    {load_lines, "power = \"0 W\"", "load[0].power", "too little"},
    {load_lines, "power = \"60 Wh\"", "load[0].power", "energy"},
    {load_lines, "power = \"60 W\"\nlabel = \"450 kWh/yr\"", "load[0]", "found 2 of"},
    {load_lines, "fuse = \"15 A\"", "load[0].fuse", "not what the load draws"},
    {load_lines, "breaker = \"15 A\"", "load[0].breaker", "metered"},
    {load_lines, "fuse_rating = 15", "load[0].fuse_rating", "[[circuit]]"},
    {load_lines, "power = \"60 W\"\nruns = {on = \"50 min\", every = \"45 min\"}", "load[0].runs",
     "out of every"},
    {load_lines, "power = \"60 W\"\nhours = [\"06:00-07:60\"]", "load[0].hours[0]", "60 minutes"},
    {load_lines, "power = \"60 W\"\nhours = []", "load[0].hours", "empty list"},
    {load_lines, "power = \"60 W\"\npriority = 6", "load[0].priority", "from 1 to 5"},
    {load_lines, "power = \"60 W\"\ncount = -1", "load[0].count", "too little"},
    {load_lines, "power = \"60 W\"\nfrom = \"acc\"", "load[0].from", "did you mean \"ac\"?"},
    {load_lines, "metered = {energy = \"1.9 kWh\", over = \"0 h\"}", "load[0].metered.over",
     "too little"},
    {load_lines, "metered = {energy = \"1.9 kWh\"}", "load[0].metered.over", "31 h"},
    {load_lines, "metered = \"1.9 kWh\"", "load[0].metered", "energy = \"1.9 kWh\""},
    {load_lines, "power = \"60 W\"\nmotor = {code_letter = \"I\"}", "load[0].motor.code_letter",
     "\"A\", \"B\", \"C\""},
    {load_lines, "power = \"60 W\"\npower_factor = 0.0", "load[0].power_factor", "too little"},
    {"[[circuit]]\nname = \"x\"", "links = [{wire = \"16 AWG\"}]", "circuit[0].links[0].length",
     "3 ft"},
    {"[[circuit]]\nname = \"x\"", "links = [{fuse = \"5 A\", switch = \"10 A\"}]",
     "circuit[0].links[0]", "fuse and switch"},
    {"[[circuit]]\nname = \"x\"", "links = [{rating = \"5 A\"}]", "circuit[0].links[0]",
     "none of the parts"},
    {"[[circuit]]\nname = \"x\"", "links = [\"5 A\"]", "circuit[0].links[0]", "together"},
    {"[goal]", "chance = \"0 %\"", "goal.chance", "too little"},
    {"[goal]", "chance = 90", "goal.chance", "\"90 %\""}};

units::Errors errors_of(const std::string& text) {
    const auto result = scenario::read_scenario(text, "plan.toml");
    return result ? units::Errors{} : result.error();
}

units::Error error_at(const units::Errors& errors, std::string_view where) {
    const auto found = std::ranges::find(errors, where, &units::Error::where);
    return found == errors.end() ? units::Error{} : *found;
}

// The smallest file with this line in its table, in place of the line that gives the same key.
std::string file_with(const Refused& refused) {
    std::string text = sample::smallest();
    const std::string line = std::string(refused.line) + "\n";
    const bool in_pack = std::string_view(refused.table) == "[[pack]]";
    const bool in_outage = std::string_view(refused.table) == "[outage]";
    if (!in_pack && !in_outage) {
        return text + refused.table + "\n" + line;
    }
    const std::size_t old = text.find("\n" + line.substr(0, line.find(' ')) + " ");
    if (old != std::string::npos) {
        text.erase(old + 1, text.find('\n', old + 1) - old);
    }
    return text.insert(in_pack ? text.size() : text.find("[[pack]]"), line);
}

TEST(limits, are_answered_in_words) {
    for (const Refused& refused : refused_values) {
        const std::string text = file_with(refused);
        const auto errors = errors_of(text);
        const units::Error error = error_at(errors, refused.where);
        EXPECT_THAT(error.found + "; " + error.remedy, HasSubstr(refused.words))
            << text << testing::PrintToString(errors);
        EXPECT_GT(error.line, 0) << text;
        EXPECT_NE(error.remedy, "") << text;
    }
}

}  // namespace
