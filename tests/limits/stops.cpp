// Every sentence that stops a person is made by a scenario here; the sources are read for
// sentences that none makes.
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <regex>
#include <sstream>
#include <unistd.h>

#include "key_trials.hpp"
#include <gtest/gtest.h>

#include "command_line/run.hpp"

namespace {

enum class Of { lithium, lead };

struct Stop {
    const char* says;  // a part of the sentence
    Of base;
    std::vector<std::string> arguments;  // the question, its options, and values as KEY=VALUE
};

// The winch and the refrigerator of the bases, each driven into one danger.
const std::vector<Stop>& stops() {
    static const std::string two_kilowatts = "load.lamps.power=2 kW";
    static const std::string alone = "pack.expansion.count=0";
    static const std::string medical = "load.refrigerator.medical=true";
    static const std::string few_amperes = "pack.expansion.current_limit=5 A";
    static const std::vector<Stop> all = {
        // start
        {"a medical device is not for a quasi-square wave",
         Of::lithium,
         {"start", "inverter.waveform=quasi_square", medical}},
        {"Will not start: ",
         Of::lithium,
         {"start", "load.refrigerator.motor={kind=\"capacitor_start\", horsepower=\"5 hp\"}"}},
        {"Will not start: one pack would carry ",
         Of::lead,
         {"start", few_amperes, "pack.main.current_limit=5 A", "load.lamps.power=500 W"}},
        // storage
        {"the pack's own draw may empty it for good within weeks",
         Of::lithium,
         {"storage", "--on", "2026-08-01", "storage.drain=50 mA"}},
        {"lead plates begin to sulphate",
         Of::lead,
         {"storage", "--on", "2026-12-01", "storage.drain=15 mA"}},
        {"is left: the case may break",
         Of::lead,
         {"storage", "--on", "2026-12-01", "storage.drain=15 mA", "storage.temperature=-40 degC"}},
        // join
        {"would flow, and its fuse is 5 A",
         Of::lithium,
         {"join", "pack.main.fuse=5 A", "pack.main.rested_voltage=13.4 V",
          "pack.expansion.rested_voltage=12.6 V"}},
        {"their voltages at rest differ at every charge",
         Of::lithium,
         {"join", "pack.expansion.chemistry=agm", "pack.expansion.capacity=60 Ah"}},
        {"t has another number of cells in series than main",
         Of::lithium,
         {"join", "pack.expansion.voltage=25.6 V", "pack.expansion.charge_limit=10 A"}},
        {"and this cold it must not be",
         Of::lithium,
         {"join", "outage.battery_temperature=-5 degC", "pack.main.rested_voltage=13.4 V",
          "pack.expansion.rested_voltage=12.8 V"}},
        {"in parallel a fault in one is fed by all the others", Of::lithium, {"join"}},
        // outage: frost, and an inverter that sleeps
        {"on: the case may break and spill acid",
         Of::lead,
         {"outage", "outage.battery_temperature=-30 degC", "pack.main.charge=30 %",
          "pack.expansion.charge=30 %"}},
        {"gets nothing for ", Of::lithium, {"outage", medical, "inverter.search_threshold=300 W"}},
        // outage: the power itself
        {"The loads ask for ", Of::lithium, {"outage", "load.lamps.from=ac", two_kilowatts}},
        {"they can give at most ", Of::lead, {"outage", "load.lamps.power=5 kW"}},
        {"A pack has to give ",
         Of::lithium,
         {"outage", alone, "pack.main.current_limit=5 A", "load.lamps.power=200 W"}},
        {"what it feeds stays off until somebody replaces it",
         Of::lithium,
         {"outage", alone, "pack.main.fuse=5 A", "load.lamps.power=200 W"}},
        {"through a connector rated 5 A",
         Of::lithium,
         {"outage", alone, "pack.main.connector=5 A", "load.lamps.power=200 W"}},
        {"everything behind it stays off until somebody replaces it",
         Of::lithium,
         {"outage",
          "circuit.\"main path\".links=[{fuse = \"10 A\", family = \"class T\"}, "
          "{wire = \"3/0 AWG\", length = \"2 ft\"}]",
          "load.refrigerator.power=1 kW"}},
        {"ts wires cannot carry 1.25 kW at ",
         Of::lithium,
         {"outage",
          "circuit.lights.links=[{fuse = \"50 A\"}, {wire = \"18 AWG\", length = \"60 ft\"}]",
          "load.lamps.power=500 W"}},
        // outage: packs that differ
        {"the others go on", Of::lead, {"outage", few_amperes}},
        {"The fuse of pack expansion opens on ", Of::lead, {"outage", "pack.expansion.fuse=5 A"}},
        {"the bus is dead", Of::lead, {"outage", few_amperes, "pack.main.current_limit=20 A"}},
        // outage: starts
        {"Does not start, not even the first time: ",
         Of::lithium,
         {"outage", "load.refrigerator.motor={kind=\"capacitor_start\", horsepower=\"5 hp\"}"}},
        {"Does not start 2 of 64 times, first ", Of::lead, {"outage", few_amperes}},
        // outage: loads
        {"Life and health: refrigerator has no supply",
         Of::lithium,
         {"outage", medical, alone, "outage.lasts=14 d"}},
        {"in which the inverter is switched off",
         Of::lithium,
         {"outage", medical, "inverter.off=[\"00:00-06:00\"]"}},
        {"makers warn that it may fail",
         Of::lithium,
         {"outage", medical, "inverter.waveform=quasi_square"}},
        {"its draw is counted as if it ran",
         Of::lithium,
         {"outage", "load.refrigerator.motor={kind=\"compressor_rsir\", voltage=\"240 V\"}"}},
        {"may run together at ", Of::lithium, {"outage", "load.refrigerator.power=3 kW"}},
        // what charges
        {"and the generator gives 100 W",
         Of::lithium,
         {"outage", "charger.generator_rating=100 W"}},
        {" panel(s) in series reach ",
         Of::lithium,
         {"sun", "--weathers", "10", "--panels", "1", "panel.in_series=2",
          "charge_controller.voltage_limit=20 V", "panel.open_circuit_voltage=22 V"}},
        // how many
        {"meets the goal",
         Of::lithium,
         {"packs", "--most-packs", "2", "--most-panels", "1", "--weathers", "10",
          "load.lamps.power=3 kW", "load.lamps.hours=[\"00:00-24:00\"]"}},
        // compare
        {"Still fails as before: ",
         Of::lead,
         {"compare",
          "circuit.outlet.links=[{fuse = \"80 A\"}, {wire = \"18 AWG\", length = \"3 ft\"}]"}},
    };
    return all;
}

const key_trials::Base& base_of(const Stop& stop) {
    return key_trials::bases()[stop.base == Of::lithium ? 0 : 1];
}

// The new build of a comparison is the base as it is; the values change both.
std::string file_of(const key_trials::Base& base) {
    const auto path = std::filesystem::temp_directory_path() /
                      ("candlemark_stops_" + std::to_string(getpid()) + ".toml");
    std::ofstream(path) << base.text;
    return path.string();
}

command_line::Outcome asked(const Stop& stop) {
    std::vector<std::string> arguments = {stop.arguments.front(), "-"};
    const bool compares = stop.arguments.front() == "compare";
    if (compares) {
        arguments.push_back(file_of(base_of(stop)));
    }
    for (std::size_t i = 1; i < stop.arguments.size(); ++i) {
        if (stop.arguments[i].find('=') != std::string::npos) {
            arguments.emplace_back("--set");
        }
        arguments.push_back(stop.arguments[i]);
    }
    arguments.emplace_back("--full");
    command_line::Surroundings around;
    around.columns = 4000;
    around.standard_input = [&] {
        return units::Result<std::string>(std::string(base_of(stop).text));
    };
    auto outcome = command_line::run(arguments, around);
    if (compares) {
        std::filesystem::remove(arguments[2]);
    }
    return outcome;
}

// The sentences of an answer that stop, a line each.
std::vector<std::string> sentences(const std::string& output) {
    std::vector<std::string> found;
    std::istringstream lines(output);
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("STOP")) {
            found.push_back(line);
        }
    }
    return found;
}

TEST(Stops, each_is_made_by_a_scenario) {
    for (const Stop& stop : stops()) {
        const auto outcome = asked(stop);
        EXPECT_EQ(outcome.status, command_line::Status::stop) << stop.says << outcome.errors;
        EXPECT_THAT(sentences(outcome.output), testing::Contains(testing::HasSubstr(stop.says)))
            << stop.arguments.front();
    }
}

// A place in the sources where a stop is made, and the longest part of its sentence that is fixed.
struct Source {
    std::string place;  // "engine/checks/join.cpp:185"
    std::string fixed;  // empty where the sentence is put together elsewhere
};

std::string longest_fixed_part(const std::string& literal) {
    std::string longest;
    std::string part;
    for (std::size_t i = 0; i <= literal.size(); ++i) {
        const bool brace = i < literal.size() && literal[i] == '{';
        if (i == literal.size() || brace) {
            longest = part.size() > longest.size() ? part : longest;
            part.clear();
            i = brace ? std::min(literal.find('}', i), literal.size()) : i;
            continue;
        }
        part += literal[i];
    }
    return longest;
}

// The literals behind a stop, up to the end of the statement; the sentence is the first of words.
std::string sentence_behind(const std::string& text, std::size_t at) {
    const std::size_t end = std::min(text.find(";\n", at), text.find(".mend", at));
    std::string whole = text.substr(at, std::min<std::size_t>(end, at + 900) - at);
    whole = std::regex_replace(whole, std::regex("\"\\s*\n\\s*\""), "");
    static const std::regex literal("\"((?:[^\"\\\\]|\\\\.)*)\"");
    for (std::sregex_iterator i(whole.begin(), whole.end(), literal), last; i != last; ++i) {
        const std::string words = longest_fixed_part((*i)[1]);
        if (words.find(' ') != std::string::npos && words.size() > 14) {
            return words;
        }
    }
    return "";
}

std::vector<Source> sources_of_stops() {
    std::vector<Source> found;
    const std::filesystem::path root = CANDLEMARK_SOURCE_DIR;
    for (const char* part : {"checks", "outage", "report", "sizing", "solar"}) {
        for (const auto& file : std::filesystem::directory_iterator(root / "engine" / part)) {
            if (file.path().extension() != ".cpp") {
                continue;
            }
            std::stringstream content;
            content << std::ifstream(file.path()).rdbuf();
            const std::string text = content.str();
            static const std::regex made(
                "(?:find\\(|add\\([a-z]*,?\\s*|severity = [^,;]*?)(?:scenario::)?"
                "Severity::stop");
            for (std::sregex_iterator i(text.begin(), text.end(), made), last; i != last; ++i) {
                const auto at = static_cast<std::size_t>(i->position() + i->length());
                const auto line = 1 + std::count(text.begin(), text.begin() + i->position(), '\n');
                found.push_back({file.path().filename().string() + ":" + std::to_string(line),
                                 sentence_behind(text, at)});
            }
        }
    }
    return found;
}

// Their sentences are put together before they are handed over; rows above make each kind.
const std::vector<std::string> put_together_elsewhere = {"bank_findings.cpp", "outage_starts.cpp",
                                                         "start_answer.cpp",  "chargers.cpp",
                                                         "branches.cpp",      "compare_answer.cpp"};

TEST(Stops, no_sentence_of_the_sources_is_left_out) {
    std::string all;
    for (const Stop& stop : stops()) {
        for (const auto& sentence : sentences(asked(stop).output)) {
            all += sentence + '\n';
        }
    }
    const auto sources = sources_of_stops();
    EXPECT_GT(sources.size(), 20U);
    for (const Source& source : sources) {
        const bool elsewhere = std::ranges::any_of(
            put_together_elsewhere,
            [&](const std::string& file) { return source.place.starts_with(file + ":"); });
        if (elsewhere) {
            continue;
        }
        ASSERT_FALSE(source.fixed.empty()) << source.place << ": no sentence found";
        // The first letter may have become a capital.
        EXPECT_THAT(all, testing::HasSubstr(source.fixed.substr(1))) << source.place;
    }
}

}  // namespace
