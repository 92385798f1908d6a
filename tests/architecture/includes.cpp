// The folders of the engine include only what the design allows them.
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

const fs::path engine = fs::path(CANDLEMARK_SOURCE_DIR) / "engine";

std::vector<std::string> words_in(const std::string& text) {
    static const std::regex word("[a-z_]+");
    return {std::sregex_token_iterator(text.begin(), text.end(), word), {}};
}

// What each folder may include besides itself: the table of DEVELOPERS.md, "The house".
const std::map<std::string, std::set<std::string>>& may_include() {
    static const auto table = [] {
        static const std::regex row(R"(^\| (`[a-z_`, ]+`) \| [^|]+ \| ([a-z_, -]+) \|$)");
        std::map<std::string, std::set<std::string>> read;
        std::ifstream file(fs::path(CANDLEMARK_SOURCE_DIR) / "DEVELOPERS.md");
        bool in_the_house = false;
        for (std::string line; std::getline(file, line);) {
            if (line.starts_with("## ")) in_the_house = line == "## The house";
            std::smatch match;
            if (!in_the_house || !std::regex_match(line, match, row)) continue;
            const auto allowed = words_in(match[2]);
            for (const auto& folder : words_in(match[1]))
                read[folder] = {allowed.begin(), allowed.end()};
        }
        return read;
    }();
    return table;
}

fs::path folder_of(const std::string& room) {
    return room == "qml" ? fs::path(CANDLEMARK_SOURCE_DIR) / room : engine / room;
}

struct Include {
    fs::path file;
    std::string part;
};

std::vector<Include> includes_of(const std::string& part) {
    static const std::regex line_form(R"re(^\s*#include "([a-z_]+)/)re");
    std::vector<Include> found;
    for (const auto& entry : fs::recursive_directory_iterator(folder_of(part))) {
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

TEST(architecture, every_folder_of_the_engine_is_in_the_table) {
    int folders = 0;
    for (const auto& entry : fs::directory_iterator(engine)) {
        if (!entry.is_directory()) continue;
        ++folders;
        EXPECT_TRUE(may_include().contains(entry.path().filename())) << entry.path();
    }
    EXPECT_EQ(may_include().size(), static_cast<std::size_t>(folders) + 1) << "and qml";
}

// A row may name only rows above it, so that no two folders can include each other.
TEST(architecture, the_table_goes_one_way) {
    std::ifstream file(fs::path(CANDLEMARK_SOURCE_DIR) / "DEVELOPERS.md");
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    for (const auto& [room, allowed] : may_include())
        for (const auto& below : allowed)
            EXPECT_LT(text.find("`" + below + "`"), text.find("`" + room + "`"))
                << room << " includes " << below;
}

TEST(architecture, a_folder_includes_only_what_the_table_allows) {
    // Folders of the touch program have names of their own.
    static const std::set<std::string> within_qml = {"models", "print"};
    int seen = 0;
    for (const auto& [part, allowed] : may_include()) {
        for (const auto& include : includes_of(part)) {
            ++seen;
            EXPECT_TRUE(include.part == part || allowed.contains(include.part) ||
                        (part == "qml" && within_qml.contains(include.part)))
                << include.file << " includes " << include.part;
        }
    }
    EXPECT_GT(seen, 1000);
}

TEST(architecture, cmake_links_only_what_the_table_allows) {
    static const std::regex line_form(
        R"(candlemark_part\([a-z_]+(?: PRECOMPILED_OF ([a-z_]+))? MAY_INCLUDE ([a-z_ ]+?)(?: STAND_ALONE [a-z_./ ]+)?\))");
    int seen = 0;
    for (const auto& [part, allowed] : may_include()) {
        std::ifstream file(folder_of(part) / "CMakeLists.txt");
        for (std::string line; std::getline(file, line);) {
            std::smatch match;
            if (!std::regex_search(line, match, line_form)) continue;
            for (const auto& other : words_in(match[2])) {
                ++seen;
                EXPECT_TRUE(allowed.contains(other)) << part << " links " << other;
            }
            if (match[1].matched)
                EXPECT_TRUE(allowed.contains(match[1].str()))
                    << part << " takes the precompiled header of " << match[1];
        }
    }
    EXPECT_GT(seen, 50);
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
