#include <string>
#include <variant>
#include <vector>

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "scenario/keys/reference.hpp"
#include "words/catalogue.hpp"
#include "words/language.hpp"

namespace {

using words::Said;

const words::Language& german() {
    static const words::Language language = *words::language("de");
    return language;
}

// The sayings within what is said that the language lacks.
std::vector<std::string> unknown_in(const Said& said) {
    std::vector<std::string> unknown;
    const auto add = [&unknown](const Said& inner) {
        const auto more = unknown_in(inner);
        unknown.insert(unknown.end(), more.begin(), more.end());
    };
    // A person's own words and the values of keys are the same in every language.
    if (said.saying->has_words() && german().catalogue->text_of(*said.saying, 1).empty())
        unknown.emplace_back(said.saying->english);
    for (const words::Part& part : said.parts) {
        if (const auto* inner = std::get_if<Said>(&part.held())) add(*inner);
        if (const auto* list = std::get_if<words::List>(&part.held()))
            for (const Said& item : list->items)
                add(item);
    }
    return unknown;
}

TEST(german, tells_every_key) {
    for (const scenario::ToldKey& key : scenario::reference()) {
        for (const Said& said :
             {key.means, key.limits, key.silent, key.on_screen.label, key.on_screen.silent})
            EXPECT_EQ(unknown_in(said), std::vector<std::string>()) << key.key;
        for (const auto* picks : {&key.shape.choices, &key.on_screen.picks})
            for (const scenario::Pick& pick : *picks)
                EXPECT_EQ(unknown_in(pick.label), std::vector<std::string>()) << key.key;
    }
}

// Each error of a file in one line, without its place.
std::vector<std::string> refused(const std::string& text) {
    std::vector<std::string> lines;
    const auto read = scenario::read_scenario(text, "");
    if (read) return lines;
    for (const units::Error& error : read.error())
        lines.push_back(units::print(
            {.where = error.where, .found = error.found, .remedy = error.remedy}, german()));
    return lines;
}

TEST(german, refuses_a_value_and_says_what_to_write) {
    const auto lines = refused(R"(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "2 d"
[[pack]]
name = "main"
chemistry = "sealed"
capacity = 100
count = "two"
)");
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[0],
              "pack[0].chemistry: bei pack \"main\": \"sealed\" gefunden; schreiben Sie agm oder "
              "gel, wie es auf dem Etikett steht; die meisten geschlossenen Batterien sind agm");
    EXPECT_EQ(lines[1],
              "pack[0].capacity: bei pack \"main\": 100 ohne Einheit gefunden: 100 was?; schreiben "
              "Sie auch die Einheit in die Anführungszeichen, etwa \"100 Ah\"");
    EXPECT_EQ(lines[2],
              "pack[0].count: bei pack \"main\": \"two\" gefunden; geben Sie eine ganze Zahl von 0 "
              "bis 64 an, ohne Anführungszeichen");
}

TEST(german, counts_what_a_list_holds) {
    const auto lines = refused("format = 1\n[outage]\nstarts = [1]\nlasts = [\"1 d\", \"2 d\"]\n");
    ASSERT_EQ(lines.size(), 3U);  // there is no pack
    EXPECT_TRUE(lines[1].starts_with("outage.starts: eine Liste mit 1 Eintrag gefunden"))
        << lines[1];
    EXPECT_TRUE(lines[2].starts_with("outage.lasts: eine Liste mit 2 Einträgen gefunden"))
        << lines[2];
}

}  // namespace
