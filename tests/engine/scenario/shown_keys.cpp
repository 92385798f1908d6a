// Each key of the format can be seen at work in a scenario that comes with the program.
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include <gtest/gtest.h>

#include "scenario/file/document.hpp"
#include "scenario/file/read.hpp"
#include "scenario/keys/reference.hpp"

namespace {

namespace fs = std::filesystem;
using scenario::Node;

const fs::path folder = fs::path(CANDLEMARK_SOURCE_DIR) / "scenarios";

std::string contents(const fs::path& path) {
    std::ostringstream text;
    text << std::ifstream(path, std::ios::binary).rdbuf();
    return text.str();
}

// "pack.two_well.total", and of a part of a circuit "fuse circuit.links.opens".
void add_keys(const Node& node, const std::string& path, const std::string& of,
              std::set<std::string>& keys) {
    for (const Node& item : node.items)
        add_keys(item, path, of, keys);
    std::string kind = of;
    if (path == "circuit.links.")
        for (const char* const part : {"fuse", "switch", "wire", "connector", "outlet"})
            if (node.find(part) != nullptr) kind = part;
    for (const auto& entry : node.entries) {
        keys.insert(kind + ' ' + path + entry.key);
        add_keys(entry.value, path + entry.key + '.', kind, keys);
    }
}

std::set<std::string> shown_keys() {
    std::set<std::string> keys;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.path().extension() != ".toml") continue;
        const auto document = scenario::read_document(contents(entry.path()), "");
        EXPECT_TRUE(document.has_value()) << entry.path();
        if (document) add_keys(*document, "", "", keys);
    }
    return keys;
}

// Keys that no scenario shows, and why.
const std::map<std::string, std::string> not_shown = {
    {"place.weather_file", "needs a year of somebody's measured hours beside the scenario"}};

TEST(shown_keys, every_key_stands_in_a_scenario) {
    const auto shown = shown_keys();
    for (const auto& told : scenario::reference()) {
        EXPECT_EQ(shown.contains(told.of + ' ' + told.key), !not_shown.contains(told.key))
            << told.of << ' ' << told.key;
    }
}

TEST(shown_keys, the_scenarios_that_show_them_hold_no_unknown_one) {
    for (const auto& entry : fs::directory_iterator(folder / "keys")) {
        const auto read = scenario::read_scenario(contents(entry.path()), entry.path());
        ASSERT_TRUE(read.has_value()) << entry.path();
        for (const auto& warning : read->warnings)
            EXPECT_EQ(in_english(warning.found).find("not known"), std::string::npos) << warning.found;
    }
}

// What is told as an example can be typed in.
TEST(shown_keys, an_example_is_taken_in_the_place_of_what_stands_there) {
    for (const char* const name : {"lithium.toml", "lead.toml"}) {
        const auto text = contents(folder / "keys" / name);
        const auto document = scenario::read_document(text, "");
        ASSERT_TRUE(document.has_value());
        for (const auto& told : scenario::reference()) {
            const auto dot = told.key.find('.');
            const bool plain = dot != std::string::npos &&
                               told.key.find('.', dot + 1) == std::string::npos &&
                               told.limits != "" && !told.example.starts_with('[');
            const auto* table = plain ? document->find(told.key.substr(0, dot)) : nullptr;
            const bool one = table != nullptr && table->kind == Node::Kind::table;
            if (!one || table->find(told.key.substr(dot + 1)) == nullptr) continue;
            const auto read =
                scenario::read_scenario(text, name, {{.key = told.key, .value = told.example}});
            EXPECT_TRUE(read.has_value()) << told.key << " = " << told.example << ": "
                                          << (read ? "" : units::print(read.error().front()));
        }
    }
}

}  // namespace
