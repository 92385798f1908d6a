#include "answers/read/answer.hpp"

#include "words/language.hpp"

namespace {

using namespace answers;

constexpr std::string_view cabin = R"(format = 1
title = "Cabin"
[outage]
starts = 2026-01-14T18:00:00
lasts = "2 d"
[[pack]]
name = "main"
count = 3
chemistry = "lifepo4"
capacity = "100 Ah"
[[load]]
name = "lamp"
power = "20 W"
lumens = "800"
)";

scenario::ReadScenario read(std::string_view text) {
    auto read = scenario::read_scenario(text, "cabin.toml", {});
    EXPECT_TRUE(read);
    return *std::move(read);
}

std::vector<words::Said> column_of(const Answer& answer, std::size_t series, std::size_t column) {
    std::vector<words::Said> cells;
    for (std::size_t row = 0;
         const auto* said_one = words_at(answer.series[series].columns[column], row); ++row)
        cells.push_back(*said_one);
    return cells;
}

// The row of a key in the table of those that are given.
std::size_t row_of(const Answer& answer, std::string_view key) {
    const auto keys = column_of(answer, 0, 0);
    const auto at = std::ranges::find_if(keys, [&](const words::Said& one) { return one == key; });
    return static_cast<std::size_t>(at - keys.begin());
}

TEST(read_answer, what_was_read_is_counted) {
    const auto answer = read_answer(read(cabin), {});
    ASSERT_EQ(answer.sentences.size(), 1U);
    EXPECT_EQ(answer.sentences.front(),
              "Read cabin.toml: an outage of 2 days from Wed 14 Jan 18:00; 3 packs, 0 panels, 1 "
              "load, no inverter.");
    EXPECT_EQ(words::in(*words::language("de"), answer.sentences.front()),
              "Gelesen: cabin.toml, ein Ausfall ab Mi 14. Jan 18:00, Dauer 2 Tage; 3 Akkus, 0 "
              "Module, 1 Verbraucher, kein Wechselrichter.");
}

TEST(read_answer, where_nobody_knows_how_long_it_lasts_no_length_is_told) {
    std::string text(cabin);
    text.replace(text.find("\"2 d\""), 5, "\"?\"\nhalf_over_by = \"1 d\"");
    EXPECT_EQ(read_answer(read(text), {}).sentences.front(),
              "Read cabin.toml: an outage from Wed 14 Jan 18:00, nobody knows how long; 3 packs, 0 "
              "panels, 1 load, no inverter.");
}

TEST(read_answer, every_given_key_has_its_value_and_its_line) {
    const auto answer = read_answer(read(cabin), {});
    const auto row = row_of(answer, "pack.main.count");
    ASSERT_LT(row, column_of(answer, 0, 0).size());
    EXPECT_EQ(column_of(answer, 0, 1)[row], "3");
    EXPECT_EQ(column_of(answer, 0, 2)[row], "line 8");
}

TEST(read_answer, a_code_is_shown_by_its_words_and_kept_for_programs) {
    const auto answer = read_answer(read(cabin), {});
    const auto row = row_of(answer, "pack.main.chemistry");
    ASSERT_LT(row, column_of(answer, 0, 0).size());
    EXPECT_EQ(column_of(answer, 0, 1)[row], "lithium iron phosphate");
    const auto& codes = std::get<std::vector<Code>>(answer.series[0].columns[1].points);
    EXPECT_EQ(codes[row].code, "\"lifepo4\"");
}

TEST(read_answer, a_key_that_nobody_knows_is_a_caution_at_its_line) {
    const auto answer = read_answer(read(cabin), {});
    ASSERT_EQ(answer.findings.size(), 1U);
    EXPECT_EQ(answer.findings.front().finding.severity, scenario::Severity::caution);
    EXPECT_EQ(answer.findings.front().finding.where, "line 14, load[0].lumens");
    EXPECT_FALSE(answer.findings.front().finding.mend.empty());
}

}  // namespace
