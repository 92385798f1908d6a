// Every sentence that stops a person is made by a scenario here; the sources are read for
// sentences that none makes.
#include <cctype>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <regex>
#include <set>
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
    // Of a comparison: words of the base, and what the new build has in their place.
    std::pair<std::string, std::string> in_the_new = {};
};

// The winch and the refrigerator of the bases, each driven into one danger.
const std::vector<Stop>& stops() {
    static const std::string two_kilowatts = "load.lamps.power=2 kW";
    static const std::string alone = "pack.expansion.count=0";
    static const std::string medical = "load.refrigerator.medical=true";
    static const std::string of_240_volts =
        "load.refrigerator.motor={kind=\"compressor_rsir\", voltage=\"240 V\"}";
    static const std::string lid_open = "case.lid=open";
    const auto of = [](const char* circuit) {
        return [circuit](const char* links) {
            return std::string("circuit.") + circuit + ".links=[" + links + "]";
        };
    };
    const auto lights = of("lights");
    const auto outlet = of("outlet");
    const auto lead = of("lead");
    const auto main_path = of("\"main path\"");
    static const std::string few_amperes = "pack.expansion.current_limit=5 A";
    static const std::string twelve_amperes = "pack.expansion.current_limit=12 A";
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
        {"240 V motor cannot be run from 120 V", Of::lithium, {"start", of_240_volts}},
        // wiring: a circuit
        {"How much the 10 A switch carries here is not known",
         Of::lithium,
         {"wiring", lid_open,
          lights("{fuse = \"5 A\"}, {switch = \"10 A\", rated_for = \"ac\"}, {wire = \"16 AWG\", "
                 "length = \"5 ft\"}")}},
        {"The 40 A fuse is larger than what it guards",
         Of::lithium,
         {"wiring", lid_open, lights("{fuse = \"40 A\"}, {wire = \"16 AWG\", length = \"5 ft\"}")}},
        {"There is no fuse between the bus and this circuit",
         Of::lithium,
         {"wiring", lights("{wire = \"16 AWG\", length = \"5 ft\"}")}},
        {"of wire lies between the bus and its fuse; a short there meets none",
         Of::lithium,
         {"wiring", lights("{wire = \"16 AWG\", length = \"5 ft\"}, {fuse = \"5 A\"}")}},
        {"its connector is rated 5 A",
         Of::lithium,
         {"wiring", "pack.main.connector=5 A", "load.lamps.power=200 W"}},
        {"of wire lies between the battery of the vehicle and the first fuse",
         Of::lead,
         {"wiring", "circuit.outlet.feeds=[\"garage charger\"]"}},
        {"the 5 A fuse would open or age",
         Of::lithium,
         {"wiring", lid_open, "load.lamps.power=60 W"}},
        {"No fuse fits: the load asks for at least ",
         Of::lithium,
         {"wiring", lid_open, "load.lamps.power=150 W"}},
        {" of the 70 A fuse: it opens",
         Of::lithium,
         {"wiring", lid_open, "inverter.surge_lasts=10 s",
          main_path("{fuse = \"70 A\", family = \"maxi blade\"}, {wire = \"3/0 AWG\", length = "
                    "\"2 ft\"}")}},
        {"Rated 12 V; up to 14.6 V is across it",
         Of::lithium,
         {"wiring", lights("{fuse = \"5 A\", voltage = \"12 V\"}, {wire = \"16 AWG\", length = "
                           "\"5 ft\"}")}},
        {"The 16 AWG wire may carry ", Of::lithium, {"wiring", lid_open, "load.lamps.power=500 W"}},
        {"The 16 AWG wire is not usable here",
         Of::lithium,
         {"wiring", "case.inside=80 degC",
          lights("{fuse = \"5 A\"}, {wire = \"16 AWG\", length = \"5 ft\", insulation = \"60 "
                 "degC\"}")}},
        {"when one end loosens the others carry its part",
         Of::lithium,
         {"wiring", outlet("{fuse = \"15 A\"}, {wire = \"14 AWG\", length = \"3 ft\", runs = 2}, "
                           "{outlet = \"15 A\"}")}},
        {"It has been mated 20000 times; it is made for 10000",
         Of::lithium,
         {"wiring", lead("{fuse = \"125 A\"}, {connector = \"120 A\", part = \"two-pole 50\", "
                         "cycles_used = 20000}, {wire = \"2 AWG\", length = \"3 ft\"}")}},
        {"No breaker keeps it within that",
         Of::lithium,
         {"wiring", outlet("{wire = \"14 AWG\", length = \"3 ft\"}, {outlet = \"15 A\"}")}},
        {"The 280 A connector takes wire up to 10 AWG; 2 AWG comes to it",
         Of::lithium,
         {"wiring", lead("{fuse = \"125 A\"}, {connector = \"280 A\", takes = \"10 AWG\"}, {wire = "
                         "\"2 AWG\", length = \"3 ft\"}")}},
        // wiring: the whole unit
        {"A short draws ",
         Of::lithium,
         {"wiring", lights("{fuse = \"5 A\", interrupts = \"100 A\"}, {wire = \"16 AWG\", length "
                           "= \"5 ft\"}")}},
        {"of the packs; the voltage collapses beyond ",
         Of::lithium,
         {"wiring", main_path("{fuse = \"350 A\"}, {wire = \"10 AWG\", length = \"40 ft\"}")}},
        {"the inverter sees ",
         Of::lithium,
         {"wiring", "pack.main.resistance=15 mohm", "pack.expansion.resistance=15 mohm", lid_open,
          main_path("{fuse = \"350 A\"}, {wire = \"2 AWG\", length = \"2 ft\"}")}},
        {"packs open one after another", Of::lithium, {"wiring", "pack.main.current_limit=20 A"}},
        {"its limit is 50 A", Of::lithium, {"wiring", "pack.main.current_limit=50 A"}},
        {"the pack has 10 A", Of::lithium, {"wiring", "pack.main.fuse=10 A"}},
        // 60 A of the charger and 6 A of the panel, through 15 A
        {"66 A for hours while charging, which asks for at least ",
         Of::lead,
         {"wiring", "charger.\"garage charger\".current=60 A", "inverter.continuous=100 W",
          "load.lamps.power=100 W", "circuit.outlet.feeds=[\"main\"]", "pack.expansion.count=0",
          "circuit.outlet.links=[{fuse = \"15 A\"}, {wire = \"16 AWG\", length = \"6 in\"}]"}},
        {"A short at this pack is fed by the others through ",
         Of::lithium,
         {"wiring", "pack.main.fuse=125 A",
          lead("{connector = \"280 A\"}, {wire = \"14 AWG\", length = \"3 ft\"}, {fuse = \"125 "
               "A\"}")}},
        {"The other packs' fuses are not given",
         Of::lithium,
         {"wiring", lead("{connector = \"280 A\"}, {wire = \"14 AWG\", length = \"3 ft\"}, {fuse = "
                         "\"125 A\"}")}},
        {"Without a fuse of its own it depends on the 350 A fuse of main path",
         Of::lithium,
         {"wiring", "circuit.lights.from=main path",
          lights("{wire = \"16 AWG\", length = \"5 ft\"}")}},
        {"refrigerator is made for 240 V; the inverter gives 120 V",
         Of::lithium,
         {"wiring", of_240_volts}},
        {"It carries the bus's direct current, and refrigerator needs ",
         Of::lithium,
         {"wiring", "circuit.lights.feeds=[\"lamps\", \"refrigerator\"]"}},
        {"It begins behind the inverter, and lamps needs the bus's direct current",
         Of::lithium,
         {"wiring", "circuit.outlet.feeds=[\"lamps\", \"refrigerator\"]"}},
        {" of heat would bring the inside to ", Of::lithium, {"wiring", "case.lid=closed"}},
        {"hydrogen gathers and one spark sets it off", Of::lead, {"wiring", "case.lid=closed"}},
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
        {"they can give at most ",
         Of::lead,
         {"outage", "load.lamps.power=5 kW", outlet("{wire = \"4 AWG\", length = \"12 ft\"}")}},
        {"flows to it through a connector rated 50 A",
         Of::lithium,
         {"outage", alone, "load.refrigerator.power=1 kW",
          main_path("{fuse = \"350 A\", family = \"class T\"}, {connector = \"50 A\"}, "
                    "{wire = \"3/0 AWG\", length = \"2 ft\"}")}},
        {"A pack has to give ",
         Of::lithium,
         {"outage", alone, "pack.main.current_limit=5 A", "load.lamps.power=200 W"}},
        {"what it feeds stays off until somebody replaces it",
         Of::lithium,
         {"outage", alone, "pack.main.fuse=5 A", "load.lamps.power=200 W"}},
        {"through a connector rated 5 A",
         Of::lithium,
         {"outage", alone, "pack.main.connector=5 A", "load.lamps.power=200 W"}},
        {"A pack is charged with up to ",
         Of::lithium,
         {"outage", alone, "pack.main.connector=5 A", "charger.\"garage charger\".current=20 A"}},
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
        {"then pack expansion gives again at ", Of::lead, {"outage", twelve_amperes}},
        {"then pack expansion opens on low voltage at ",
         Of::lead,
         {"outage", twelve_amperes, "pack.expansion.cutoff_voltage=12.2 V", "panel.count=0"}},
        {"and so on; the others go on",
         Of::lead,
         {"outage", "pack.expansion.current_limit=6 A", "load.refrigerator.power=200 W",
          "load.refrigerator.runs={on=\"15 min\", every=\"45 min\"}"}},
        {" A of charge; the others go on",
         Of::lithium,
         {"outage", "pack.expansion.fuse=5 A", "charger.\"garage charger\".current=50 A"}},
        // outage: starts
        {"Does not start, not even the first time: ",
         Of::lithium,
         {"outage", "load.refrigerator.motor={kind=\"capacitor_start\", horsepower=\"5 hp\"}"}},
        {"Starts until ",
         Of::lithium,
         {"outage", "outage.lasts=6 d", "panel.count=0", "pack.main.resistance=32 mohm",
          "load.refrigerator.motor={kind=\"capacitor_start\", horsepower=\"1/3 hp\"}"}},
        {"Does not start 2 of 64 times, the first on ", Of::lead, {"outage", few_amperes}},
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
        {"its draw is counted as if it ran", Of::lithium, {"outage", of_240_volts}},
        {"may run together at ", Of::lithium, {"outage", "load.refrigerator.power=3 kW"}},
        // what charges
        {"and the generator gives 100 VA",
         Of::lithium,
         {"outage", "charger.generator_rating=100 W"}},
        {" panels in series reach ",
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
        {"refrigerator does not start: ",
         Of::lithium,
         {"compare"},
         {"kind = \"compressor_rsir\"", "kind = \"capacitor_start\", horsepower = \"5 hp\""}},
    };
    return all;
}

const key_trials::Base& base_of(const Stop& stop) {
    return key_trials::bases()[stop.base == Of::lithium ? 0 : 1];
}

// The new build of a comparison is the base but for `in_the_new`; the values change both.
std::string file_of(const Stop& stop) {
    std::string text(base_of(stop).text);
    const auto& [words, others] = stop.in_the_new;
    if (!words.empty()) {
        text.replace(text.find(words), words.size(), others);
    }
    const auto path = std::filesystem::temp_directory_path() /
                      ("candlemark_stops_" + std::to_string(getpid()) + ".toml");
    std::ofstream(path) << text;
    return path.string();
}

command_line::Outcome asked(const Stop& stop) {
    std::vector<std::string> arguments = {stop.arguments.front(), "-"};
    const bool compares = stop.arguments.front() == "compare";
    if (compares) {
        arguments.push_back(file_of(stop));
    }
    for (std::size_t i = 1; i < stop.arguments.size(); ++i) {
        if (stop.arguments[i].find('=') != std::string::npos) {
            arguments.emplace_back("--set");
        }
        arguments.push_back(stop.arguments[i]);
    }
    if (stop.arguments.front() == "outage") arguments.insert(arguments.end(), {"--members", "1"});
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

// What is fixed of a saying, piece by piece: the text between its parts.
using Pieces = std::vector<std::string>;

// Enough letters to know a sentence by.
constexpr std::ptrdiff_t telling = 8;

Pieces pieces_of(const std::string& saying) {
    Pieces pieces(1);
    for (std::size_t i = 0; i < saying.size(); ++i) {
        if (saying[i] == '{') {
            i = std::min(saying.find('}', i), saying.size());
            if (!pieces.back().empty()) pieces.emplace_back();
        } else {
            pieces.back() += saying[i];
        }
    }
    // The first letter may have become a capital, the last full stop belongs to the line.
    if (!saying.starts_with('{') && !pieces.front().empty()) pieces.front().erase(0, 1);
    return pieces;
}

// The sayings of some source text.
std::vector<Pieces> sayings_in(const std::string& text) {
    const auto joined = std::regex_replace(text, std::regex("\"\\s*\n\\s*\""), "");
    static const std::regex literal("\"((?:[^\"\\\\]|\\\\.)*)\"");
    std::vector<Pieces> found;
    for (std::sregex_iterator i(joined.begin(), joined.end(), literal), last; i != last; ++i) {
        const Pieces pieces = pieces_of((*i)[1]);
        std::ptrdiff_t letters = 0;
        for (const auto& piece : pieces)
            letters += std::ranges::count_if(
                piece, [](unsigned char letter) { return std::isalpha(letter) != 0; });
        if (letters >= telling) found.push_back(pieces);
    }
    return found;
}

// Whether a line says it: all that is fixed, in its order.
bool is_said_in(const std::vector<std::string>& lines, const Pieces& pieces) {
    return std::ranges::any_of(lines, [&](const std::string& line) {
        std::size_t from = 0;
        for (const auto& piece : pieces) {
            from = line.find(piece, from);
            if (from == std::string::npos) return false;
            from += piece.size();
        }
        return true;
    });
}

// A statement, and what of its file it says by name: the functions of words it calls and the
// constants it uses, which in turn may call others.
std::string with_what_it_says(const std::string& file, const std::string& statement) {
    std::string whole = statement;
    std::set<std::string> seen;
    static const std::regex name("[a-z_]+");
    for (std::size_t from = 0; from < whole.size();) {
        const std::string more = whole.substr(from);
        from = whole.size();
        for (std::sregex_iterator i(more.begin(), more.end(), name), last; i != last; ++i) {
            const std::string word = i->str();
            if (!seen.insert(word).second) continue;
            for (const auto& [opens, closes] :
                 {std::pair{"Said " + word + "(", "\n}\n"}, {"Said " + word + " =", ";\n"}}) {
                const auto at = file.find(opens);
                if (at != std::string::npos)
                    whole += file.substr(at, file.find(closes, at) - at) + "\n";
            }
        }
    }
    return whole;
}

// A place in the sources where a stop is made, and what may be said there.
struct Source {
    std::string place;  // "engine/handling/join.cpp:185"
    std::vector<Pieces> sayings;
};

// The statement that begins here; not what mends it where that has a name.
std::string statement_at(const std::string& text, std::size_t at) {
    const std::size_t end = std::min(text.find(";\n", at), text.find(".mend", at));
    return text.substr(at, end - at);
}

std::vector<Source> sources_of_stops() {
    std::vector<Source> found;
    const auto engine = std::filesystem::path(CANDLEMARK_SOURCE_DIR) / "engine";
    for (const auto& file : std::filesystem::recursive_directory_iterator(engine)) {
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
            found.push_back(
                {file.path().lexically_relative(engine).string() + ":" + std::to_string(line),
                 sayings_in(with_what_it_says(text, statement_at(text, at)))});
        }
    }
    return found;
}

// Their sentences are put together before they are handed over; rows above make each kind.
const std::vector<std::string> put_together_elsewhere = {
    "answers/outage/bank_findings.cpp", "answers/outage/starts.cpp", "answers/start/answer.cpp",
    "outage/clock/chargers.cpp",        "outage/clock/branches.cpp", "answers/compare/answer.cpp"};

TEST(Stops, no_sentence_of_the_sources_is_left_out) {
    std::vector<std::string> all;
    for (const Stop& stop : stops()) {
        const auto said = sentences(asked(stop).output);
        all.insert(all.end(), said.begin(), said.end());
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
        ASSERT_FALSE(source.sayings.empty()) << source.place << ": no sentence found";
        EXPECT_TRUE(std::ranges::any_of(source.sayings, [&](const Pieces& saying) {
            return is_said_in(all, saying);
        })) << source.place;
    }
}

// A check that may fail is made to fail by a row: one of the sentences beside its verdict is told.
TEST(Stops, no_failing_check_of_the_wiring_is_left_out) {
    std::vector<std::string> all;
    for (const Stop& stop : stops()) {
        if (stop.arguments.front() != "wiring") {
            continue;
        }
        const auto said = sentences(asked(stop).output);
        all.insert(all.end(), said.begin(), said.end());
    }
    int checks = 0;
    const auto engine = std::filesystem::path(CANDLEMARK_SOURCE_DIR) / "engine";
    for (const char* file : {"fitting/circuit_checks.cpp", "fitting/whole.cpp"}) {
        std::stringstream content;
        content << std::ifstream(engine / file).rdbuf();
        const std::string text = content.str();
        constexpr std::string_view failing = "Verdict::fails";
        for (auto at = text.find(failing); at != std::string::npos;
             at = text.find(failing, at + failing.size())) {
            const auto begin = text.rfind("add(", at);
            const auto end = text.find(";\n", at);
            const std::string statement = text.substr(begin, end - begin);
            const bool of_another = text.substr(begin, at - begin).find(";\n") != std::string::npos;
            if (of_another || statement.find("std::move(text)") != std::string::npos) {
                continue;  // put together elsewhere: the rows above make each
            }
            ++checks;
            EXPECT_TRUE(
                std::ranges::any_of(sayings_in(with_what_it_says(text, statement)),
                                    [&](const Pieces& saying) { return is_said_in(all, saying); }))
                << file << ":"
                << 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at),
                                  '\n');
        }
    }
    EXPECT_GT(checks, 15);
}

}  // namespace
