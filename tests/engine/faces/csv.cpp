#include "faces/csv.hpp"

#include <algorithm>

#include "answers/outage/answer.hpp"
#include "support/made_plan.hpp"

namespace {

using namespace answers;
using namespace faces;
using testing::StartsWith;

// A reader of [RFC 4180] written against its grammar, not against our writer.
std::vector<std::vector<std::string>> records(const std::string& text) {
    std::vector<std::vector<std::string>> result(1, std::vector<std::string>(1));
    bool quoted = false;
    for (std::size_t place = 0; place < text.size(); ++place) {
        const char letter = text[place];
        if (quoted && letter == '"' && place + 1 < text.size() && text[place + 1] == '"') {
            result.back().back() += '"';
            ++place;
        } else if (letter == '"') {
            quoted = !quoted;
        } else if (!quoted && letter == ',') {
            result.back().emplace_back();
        } else if (!quoted && letter == '\r' && text[place + 1] == '\n') {
            ++place;
            if (place + 1 < text.size()) {
                result.emplace_back(1);
            }
        } else {
            result.back().back() += letter;
        }
    }
    return result;
}

TEST(csv, an_outage_is_one_heading_and_one_line_an_hour) {
    const auto rows = records(in_csv(outage_answer(made::scenario(), made::plan(), {})));
    ASSERT_EQ(rows.size(), 97U);
    for (const auto& row : rows) {
        EXPECT_EQ(row.size(), rows.front().size());
    }
    EXPECT_EQ(rows[1][0], "2026-01-14 18:00");
    EXPECT_EQ(rows[1][1], "2026-01-14 19:00");
    EXPECT_EQ(rows.back()[1], "2026-01-18 18:00");
}

TEST(csv, headings_hold_the_units) {
    const auto heading = records(in_csv(outage_answer(made::scenario(), made::plan(), {}))).front();
    EXPECT_THAT(heading,
                testing::IsSupersetOf({"stored at the end [W.h]", "how full at the end [%]",
                                       "voltage at the end [V]", "wanted by the loads, mean [W]"}));
}

TEST(csv, hourly_means_add_up_to_the_energy_account) {
    const auto plan = made::plan();
    const auto rows = records(in_csv(outage_answer(made::scenario(), plan, {})));
    const auto column = std::ranges::find(rows.front(), "served, mean [W]") - rows.front().begin();
    double served = 0.0;
    for (std::size_t row = 1; row < rows.size(); ++row) {
        served += std::stod(rows[row][static_cast<std::size_t>(column)]);
    }
    EXPECT_NEAR(served, plan.likely.ledger.loads / units::watt_hour, 1e-6 * served);
}

// Common practice, no source: spreadsheets work out cells that begin so, an apostrophe keeps them
// words.
TEST(csv, words_that_a_spreadsheet_would_work_out_begin_with_an_apostrophe) {
    const std::vector<std::pair<std::string, std::string>> words{
        {"=cmd|' /C calc'!A0", "'=cmd|' /C calc'!A0"},
        {"-2+3*9", "'-2+3*9"},
        {"+1 555", "'+1 555"},
        {"@SUM(A1)", "'@SUM(A1)"},
        {"\tx", "'\tx"},
        {"\rx", "'\rx"},
        {"-2.5", "-2.5"},
        {"-3e-4", "-3e-4"},
        {"a=b", "a=b"},
        {"", ""}};
    Answer answer;
    Series series;
    Column names{.name = "name", .heading = "=name", .unit = {}, .points = {}};
    Column numbers{.name = "n", .heading = "n", .unit = "W", .points = {}};
    std::vector<words::Said> cells;
    for (const auto& [word, due] : words) {
        cells.push_back(word);
    }
    numbers.points = std::vector<double>(cells.size(), -4.0);
    names.points = std::move(cells);
    series.columns = {names, numbers};
    answer.series = {series};
    const auto rows = records(in_csv(answer));
    ASSERT_EQ(rows.size(), words.size() + 1);
    EXPECT_EQ(rows[0][0], "'=name");
    for (std::size_t row = 0; row < words.size(); ++row) {
        EXPECT_EQ(rows[row + 1][0], words[row].second);
        EXPECT_EQ(rows[row + 1][1], "-4");
    }
    answer.series.clear();
    answer.values = {{"title", "title", {std::string("=1+1")}}};
    EXPECT_EQ(records(in_csv(answer))[1][1], "'=1+1");
}

TEST(csv, commas_quotes_and_line_ends_are_quoted) {
    Answer answer;
    answer.series = {{.name = "loads",
                      .title = "",
                      .columns = {{.name = "name",
                                   .heading = "load",
                                   .unit = "",
                                   .points = std::vector<words::Said>{"a, \"b\"\r\nc"}}}}};
    EXPECT_EQ(in_csv(answer), "load\r\n\"a, \"\"b\"\"\r\nc\"\r\n");
    EXPECT_EQ(records(in_csv(answer))[1][0], "a, \"b\"\r\nc");
}

TEST(csv, a_code_in_a_table_is_told_in_words_but_a_time_is_not) {
    Answer answer;
    const std::vector<Code> codes{{.code = "low_voltage", .said = "low voltage"},
                                  {.code = "2026-01-15", .said = "Thu 15 Jan", .is_time = true}};
    answer.series = {{.name = "ends",
                      .title = "ends",
                      .columns = {{.name = "why", .heading = "why", .unit = "", .points = codes}},
                      .brief = true}};
    EXPECT_EQ(in_csv(answer), "why\r\nlow voltage\r\n2026-01-15\r\n");
}

TEST(csv, an_answer_without_a_table_gives_its_values) {
    Answer answer;
    answer.values = {{"allowed", "", {false}},
                     {"current", "", {Quantity{64.3, "A", "64.3 A"}}},
                     {"loads", "", {List{{std::string("saw")}, {std::string("pump")}}}}};
    EXPECT_EQ(in_csv(answer),
              "key,value,unit\r\nallowed,false,\r\ncurrent,64.3,A\r\nloads[0],saw,\r\n"
              "loads[1],pump,\r\n");
}

TEST(csv, every_line_ends_in_carriage_return_and_line_feed) {
    const auto text = in_csv(outage_answer(made::scenario(), made::plan(), {}));
    EXPECT_EQ(std::ranges::count(text, '\n'), std::ranges::count(text, '\r'));
    EXPECT_TRUE(text.ends_with("\r\n"));
}

}  // namespace
