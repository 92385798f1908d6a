#include "answers/start/answer.hpp"

#include "answers/start/chart.hpp"
#include "faces/text.hpp"
#include "questions/shared/starts.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace answers;
using namespace faces;
using testing::HasSubstr;
using testing::Not;

constexpr std::string_view workshop = R"(
format = 1
title = "Workshop"
[outage]
starts = 2026-06-03T06:00:00
lasts = "1 d"
battery_temperature = "25 degC"
[[pack]]
name = "main"
count = 4
chemistry = "lifepo4"
capacity = "100 Ah"
charge = "80 %"
[inverter]
continuous = "3000 W"
surge = "6000 W"
surge_lasts = "3 s"
[[load]]
name = "pump"
power = "500 W"
evidence = "metered"
runs = {on = "1 min", every = "1 h"}
motor = {kind = "split_phase", horsepower = "1/3 hp", locked_rotor_current = "25 A"}
[[load]]
name = "compressor"
power = "1100 W"
runs = {on = "1 min", every = "1 h"}
motor = {kind = "capacitor_start", horsepower = "1/2 hp"}
[[load]]
name = "bilge pump"
from = "12V"
power = "60 W"
motor = {kind = "direct_current", full_load_current = "5 A"}
[[load]]
name = "lamp"
power = "20 W"
)";

Answer answered(std::string text) {
    const auto read = scenario::read_scenario(text, "test", {});
    EXPECT_TRUE(read);
    const auto starts = questions::planned_starts(read->scenario);
    EXPECT_TRUE(starts);
    return start_answer(starts->scenario, starts->plan, starts->assumptions);
}

std::string with(std::string_view old_words, std::string_view new_words) {
    std::string text(workshop);
    return text.replace(text.find(old_words), old_words.size(), new_words);
}

TEST(start_answer, each_motor_has_a_sentence_a_chart_and_its_figures) {
    const auto answer = answered(std::string(workshop));
    ASSERT_EQ(answer.starts.size(), 3U);
    EXPECT_GE(answer.sentences.size(), 4U);  // one each, and all at once
    const auto* loads = value_at(answer.values, "loads");
    ASSERT_NE(loads, nullptr);
    EXPECT_EQ(std::get<List>(loads->held).size(), 3U);
    EXPECT_FALSE(answer.working.empty());
    EXPECT_FALSE(answer.cautions.empty());
}

TEST(start_answer, the_course_rises_to_speed_and_the_voltage_comes_back) {
    const auto answer = answered(std::string(workshop));
    const auto& pump = answer.starts.front();
    ASSERT_GT(pump.time.size(), 10U);
    EXPECT_EQ(pump.speed.front(), 0.0);
    EXPECT_GT(pump.speed.back(), 0.9);
    EXPECT_GT(pump.direct_voltage.back(), pump.direct_voltage.front());
    EXPECT_LT(pump.current.back(), 0.5 * pump.current.front());
}

TEST(start_answer, a_motor_that_will_not_start_is_a_stop_and_says_what_helps) {
    const auto answer = answered(with("count = 4", "count = 1"));
    EXPECT_TRUE(holds_a_stop(answer) ||
                answer.findings.front().finding.severity == scenario::Severity::caution);
    EXPECT_FALSE(answer.findings.front().finding.mend.empty());
}

// 25 A at 120 V are 3 kVA, twice what this inverter gives for an instant.
TEST(start_answer, where_the_inverter_is_too_small_more_packs_are_not_asked_for) {
    const auto answer =
        answered(with("\"3000 W\"\nsurge = \"6000 W\"", "\"1000 W\"\nsurge = \"1500 W\""));
    std::vector<std::string> sentences;
    for (const auto& sentence : answer.sentences)
        sentences.push_back(in_english(sentence));
    EXPECT_THAT(sentences, testing::Contains(testing::AllOf(
                               HasSubstr("The pump "),
                               HasSubstr("More packs do not help: the inverter is the limit."))));
}

TEST(start_answer, all_at_once_are_mended_by_an_order) {
    const auto answer = answered(with("count = 4", "count = 1"));
    const auto all = std::ranges::find_if(answer.findings, [](const auto& pinned) {
        return pinned.finding.where == "all motors at once";
    });
    ASSERT_NE(all, answer.findings.end());
    EXPECT_THAT(in_english(all->finding.mend), testing::StartsWith("Switch on one by one, "));
}

TEST(start_answer, a_twelve_volt_motor_is_judged_on_the_bus) {
    const auto answer = answered(std::string(workshop));
    EXPECT_EQ(answer.starts.back().name, "bilge pump");
    EXPECT_EQ(answer.starts.back().verdict, "starts");
    EXPECT_TRUE(answer.starts.back().time.empty());
}

TEST(start_answer, medical_loads_are_not_for_a_quasi_square_wave) {
    auto text = with("surge_lasts = \"3 s\"", "surge_lasts = \"3 s\"\nwaveform = \"quasi_square\"");
    const auto at = text.find("name = \"pump\"");
    text.insert(at, "medical = true\n");
    const auto answer = answered(text);
    EXPECT_TRUE(holds_a_stop(answer));
}

TEST(start_answer, search_mode_tells_of_loads_that_never_wake_it) {
    const auto answer = answered(
        with("surge_lasts = \"3 s\"", "surge_lasts = \"3 s\"\nsearch_threshold = \"30 W\""));
    const bool told = std::ranges::any_of(
        answer.findings, [](const auto& pinned) { return pinned.finding.where == "load lamp"; });
    EXPECT_TRUE(told);
}

TEST(start_answer, the_text_stays_within_its_page_and_in_ascii_where_asked) {
    const auto text = in_text(answered(std::string(workshop)), {.width = 80, .ascii = true});
    EXPECT_THAT(text, HasSubstr("pump"));
    std::size_t from = 0;
    for (std::size_t end = text.find('\n'); end != std::string::npos;
         from = end + 1, end = text.find('\n', from))
        EXPECT_LE(end - from, 80U) << text.substr(from, end - from);
    for (const char letter : text)
        EXPECT_LT(static_cast<unsigned char>(letter), 128U);
}

TEST(start_answer, nothing_to_start_is_said_plainly) {
    const auto from = workshop.find("[[load]]");
    std::string text(workshop.substr(0, from));
    text += "[[load]]\nname = \"lamp\"\npower = \"20 W\"\n";
    EXPECT_THAT(in_english(answered(text).sentences.front()),
                HasSubstr("No load of this file has a motor"));
}

}  // namespace
