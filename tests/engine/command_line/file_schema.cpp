#include "command_line/reference/file_schema.hpp"

#include <filesystem>
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "scenario/file/document.hpp"
#include "scenario/file/file.hpp"
#include "scenario/keys/reference.hpp"
#include "support/json_schema.hpp"

namespace {

namespace fs = std::filesystem;
using json_schema::Json;
using scenario::Node;

// As an editor hands a TOML file to a schema: times are text.
Json json_of(const Node& node) {
    using enum Node::Kind;
    if (node.kind == whole) return node.whole;
    if (node.kind == real) return node.number;
    if (node.kind == truth) return node.truth;
    if (node.kind == table) {
        Json object = Json::object();
        for (const auto& entry : node.entries)
            object[entry.key] = json_of(entry.value);
        return object;
    }
    if (node.kind == list) {
        Json items = Json::array();
        for (const auto& item : node.items)
            items.push_back(json_of(item));
        return items;
    }
    return node.text;
}

Json read(const std::string& text) {
    const auto document = scenario::read_document(text, "");
    EXPECT_TRUE(document.has_value()) << text;
    return document ? json_of(*document) : Json();
}

const json_schema::Schema& schema() {
    static const json_schema::Schema one(Json::parse(command_line::file_schema()));
    return one;
}

constexpr const char* smallest =
    "format = 1\n[outage]\nstarts = 2026-01-14T18:00:00\nlasts = \"2 d\"\n"
    "[[pack]]\nname = \"main\"\nchemistry = \"agm\"\ncapacity = \"100 Ah\"\n";

json_schema::Complaints with(const std::string& lines) {
    return schema().complaints(read(smallest + lines));
}

TEST(file_schema, takes_every_scenario_that_comes_with_the_program) {
    int seen = 0;
    for (const auto& entry :
         fs::recursive_directory_iterator(fs::path(CANDLEMARK_SOURCE_DIR) / "scenarios")) {
        if (entry.path().extension() != ".toml") continue;
        ++seen;
        const auto text = scenario::bytes_of_file(entry.path());
        ASSERT_TRUE(text.has_value());
        EXPECT_THAT(schema().complaints(read(*text)), testing::IsEmpty()) << entry.path();
    }
    EXPECT_GE(seen, 9);
}

TEST(file_schema, takes_the_example_of_every_key) {
    const Json whole = Json::parse(command_line::file_schema());
    int tried = 0;
    const std::function<void(const Json&, const std::string&)> look = [&](const Json& part,
                                                                          const std::string& at) {
        if (part.is_object() && part.contains("examples")) {
            ++tried;
            Json alone = part;
            alone["definitions"] = whole["definitions"];
            EXPECT_THAT(json_schema::Schema(alone).complaints(part["examples"][0]),
                        testing::IsEmpty())
                << at;
        }
        if (!part.is_structured()) return;
        for (const auto& [name, inner] : part.items())
            look(inner, at + '/' + name);
    };
    look(whole, "");
    EXPECT_GE(tried, 180);
}

TEST(file_schema, takes_quantities_as_people_write_them) {
    EXPECT_THAT(with("[place]\ntemperature = [\"−4 °C\", \"-4 degC\", \"20 °F\", \"1 degC\", "
                     "\"1 degC\", \"1 degC\", \"1 degC\", \"1 degC\", \"1 degC\", \"1 degC\", "
                     "\"1 degC\", \"1 degC\"]\n"),
                testing::IsEmpty());
    EXPECT_THAT(with("[[load]]\nname = \"saw\"\npower = \"1,2 kW\"\nmotor = {horsepower = \"1 1/2 "
                     "hp\"}\n"),
                testing::IsEmpty());
    EXPECT_THAT(with("[[circuit]]\nname = \"a\"\nlinks = [{wire = \"16 AWG\", length = \"3 ft 6 "
                     "in\"}]\n"),
                testing::IsEmpty());
    EXPECT_THAT(with("[goal]\nchance = 0.9\n"), testing::IsEmpty());
}

TEST(file_schema, complains_of_what_the_program_refuses_or_leaves_out) {
    EXPECT_THAT(schema().complaints(read(smallest)), testing::IsEmpty());
    EXPECT_THAT(with("resistance = \"4 W\"\n"), testing::Not(testing::IsEmpty()));
    EXPECT_THAT(with("count = 65\n"), testing::Not(testing::IsEmpty()));
    EXPECT_THAT(with("colour = \"blue\"\n"), testing::Not(testing::IsEmpty()));
    EXPECT_THAT(with("age = \"young\"\n"), testing::Not(testing::IsEmpty()));
    EXPECT_THAT(with("[goal]\nchance = 90\n"), testing::Not(testing::IsEmpty()));
    EXPECT_THAT(with("[inverter]\nidle = \"18 W\"\n"),
                testing::Contains(testing::HasSubstr("lacks continuous")));
    EXPECT_THAT(with("[[circuit]]\nname = \"a\"\nlinks = [{fuse = \"5 A\", length = \"1 m\"}]\n"),
                testing::Not(testing::IsEmpty()));
    EXPECT_THAT(schema().complaints(read("format = 1\n")),
                testing::Contains(testing::HasSubstr("lacks outage")));
}

}  // namespace
