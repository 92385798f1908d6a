// The folders of the engine include only what the design allows them.
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>

namespace {

namespace fs = std::filesystem;

const fs::path engine = fs::path(CANDLEMARK_SOURCE_DIR) / "engine";

// What each part may include besides itself and units.
const std::set<std::string> physics = {"battery", "inverter", "motor", "solar", "wiring"};

std::set<std::string> joined(std::set<std::string> base, const std::set<std::string>& more) {
    base.insert(more.begin(), more.end());
    return base;
}

const std::map<std::string, std::set<std::string>>& may_include() {
    static const std::set<std::string> over_scenario = {"scenario"};
    static const auto over_physics = joined(physics, {"scenario"});
    static const auto over_unit = joined(over_physics, {"unit"});
    static const auto over_clock = joined(over_unit, {"checks", "outage"});
    static const auto over_chance = joined(over_clock, {"abreast", "chance"});
    static const auto over_sizing = joined(over_chance, {"sizing"});
    static const std::map<std::string, std::set<std::string>> table = {
        {"units", {}},
        {"scenario", {}},
        {"notes", over_scenario},
        {"battery", over_scenario},
        {"inverter", over_scenario},
        {"motor", over_scenario},
        {"solar", over_scenario},
        {"wiring", over_scenario},
        {"unit", over_physics},
        {"checks", over_unit},
        {"outage", over_unit},
        {"abreast", joined(over_unit, {"outage"})},
        {"chance", over_clock},
        {"sizing", over_chance},
        {"estimate", over_sizing},
        {"report", joined(over_sizing, {"notes", "estimate"})},
        {"command_line", joined(over_sizing, {"notes", "estimate", "report"})},
    };
    return table;
}

struct Include {
    fs::path file;
    std::string part;
};

std::vector<Include> includes_of(const std::string& part) {
    static const std::regex line_form(R"re(^\s*#include "([a-z_]+)/)re");
    std::vector<Include> found;
    for (const auto& entry : fs::recursive_directory_iterator(engine / part)) {
        if (entry.path().extension() != ".hpp" && entry.path().extension() != ".cpp") continue;
        std::ifstream file(entry.path());
        for (std::string line; std::getline(file, line);) {
            std::smatch match;
            if (std::regex_search(line, match, line_form))
                found.push_back({entry.path(), match[1]});
        }
    }
    return found;
}

TEST(architecture, every_folder_of_the_engine_is_in_the_design) {
    int folders = 0;
    for (const auto& entry : fs::directory_iterator(engine)) {
        if (!entry.is_directory()) continue;
        ++folders;
        EXPECT_TRUE(may_include().contains(entry.path().filename())) << entry.path();
    }
    EXPECT_GE(folders, 6);
}

TEST(architecture, a_folder_includes_only_what_the_design_allows) {
    int seen = 0;
    for (const auto& [part, allowed] : may_include()) {
        if (!fs::exists(engine / part)) continue;
        for (const auto& include : includes_of(part)) {
            ++seen;
            EXPECT_TRUE(include.part == part || include.part == "units" ||
                        allowed.contains(include.part))
                << include.file << " includes " << include.part;
        }
    }
    EXPECT_GT(seen, 20);
}

TEST(architecture, the_engine_does_not_know_qt) {
    static const std::regex qt(R"(#include <Q[A-Za-z]+)");
    for (const auto& entry : fs::recursive_directory_iterator(engine)) {
        if (!entry.is_regular_file()) continue;
        std::ifstream file(entry.path());
        for (std::string line; std::getline(file, line);) {
            EXPECT_FALSE(std::regex_search(line, qt)) << entry.path() << ": " << line;
        }
    }
}

TEST(architecture, the_top_level_holds_only_what_the_design_names) {
    const std::set<std::string> named = {"CMakeLists.txt", "CMakePresets.json",
                                         "README.md",      "DEVELOPERS.md",
                                         "LICENSE",        "qml",
                                         "engine",         "tests",
                                         "scenarios"};
    for (const auto& entry : fs::directory_iterator(CANDLEMARK_SOURCE_DIR)) {
        const auto name = entry.path().filename().string();
        EXPECT_TRUE(named.contains(name) || name.front() == '.' || name == "build") << name;
    }
}

}  // namespace
