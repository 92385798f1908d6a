#include "answers/sun/answer.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "answers/answer_of.hpp"
#include "faces/bars.hpp"
#include "faces/json.hpp"
#include "faces/text.hpp"
#include "scenario/file/read.hpp"
#include "support/known_in_german.hpp"
#include "support/weather_text.hpp"

namespace {

using namespace answers;
using namespace faces;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

const std::string january = R"(format = 1
title = "January"
[outage]
starts = 2026-01-14T18:00:00
lasts = "4 d"
[place]
name = "Chicago IL"
[[panel]]
count = 3
power = "100 W"
placement = "fixed"
tilt = "60 deg"
[charge_controller]
kind = "mppt"
)";

const std::string unit = R"([[pack]]
name = "main"
count = 3
chemistry = "lifepo4"
capacity = "100 Ah"
[[load]]
name = "lamp"
from = "12V"
power = "40 W"
)";

scenario::Scenario scenario_of(const std::string& text) {
    auto read = scenario::read_scenario(text, "sun.toml");
    if (!read) throw std::runtime_error(read.error().front().where);
    return read->scenario;
}

Answer answer_of(const std::string& text, const questions::SunAsked& asked = {.weathers = 200},
                 const std::string& folder = {}) {
    const scenario::ReadScenario read{.scenario = scenario_of(text),
                                      .file_name = folder.empty() ? "" : folder + "/sun.toml"};
    const auto found = questions::find(read, asked, {});
    if (!found) throw std::runtime_error(words::in_english(found.error().front().found));
    return answers::answer_of(*found);
}

double number_at(const Answer& answer, std::string_view path) {
    const auto* value = value_at(answer.values, path);
    return value == nullptr ? -1.0 : std::get<Quantity>(value->held).value;
}

const Bar& bar_at(const Answer& answer, std::string_view chart, std::size_t row) {
    return std::ranges::find(answer.bars, chart, &BarChart::name)->bars.at(row);
}

TEST(sun_answer, tells_low_likely_and_high_of_the_outage_and_of_each_day) {
    const auto answer = answer_of(january + unit);
    EXPECT_LT(number_at(answer, "recharge.low"), number_at(answer, "recharge.likely"));
    EXPECT_LT(number_at(answer, "recharge.likely"), number_at(answer, "recharge.high"));
    EXPECT_DOUBLE_EQ(number_at(answer, "per_day.mean"), number_at(answer, "recharge.mean") / 4.0);
    const auto& days = std::get<List>(value_at(answer.values, "days")->held);
    EXPECT_EQ(days.size(), 5u);
    EXPECT_THAT(answer.sentences.front(), HasSubstr("Three panels at Chicago IL give back"));
}

TEST(sun_answer, the_bars_of_the_days_are_the_values_of_the_days) {
    const auto answer = answer_of(january + unit);
    const auto& bar = bar_at(answer, "recharge", 2);
    const auto& days = std::get<List>(value_at(answer.values, "days")->held);
    const auto& day = std::get<Members>(days[2].held);
    EXPECT_DOUBLE_EQ(std::get<Quantity>(value_at(day, "likely")->held).value, bar.likely);
    EXPECT_EQ(bar.label, "Fri 16 Jan");
}

TEST(sun_answer, compares_the_ways_to_stand_with_flat_and_marks_the_one_there_is) {
    const auto answer = answer_of(january + unit);
    const auto& placements = std::get<List>(value_at(answer.values, "placements")->held);
    ASSERT_EQ(placements.size(), 5u);
    const auto& first = std::get<Members>(placements[0].held);
    const double times = std::get<Quantity>(value_at(first, "times_flat")->held).value;
    EXPECT_GT(times, 1.7);
    EXPECT_LT(times, 2.4);
    EXPECT_TRUE(bar_at(answer, "placements", 0).chosen);
    EXPECT_THAT(answer.sentences, Contains(HasSubstr("60° facing south")));
}

TEST(sun_answer, counts_panels_from_none_and_tells_what_the_battery_makes_of_them) {
    const auto answer = answer_of(january + unit, {.weathers = 100, .most_panels = 4});
    const auto& counts = std::get<List>(value_at(answer.values, "panels")->held);
    ASSERT_EQ(counts.size(), 5u);
    EXPECT_TRUE(bar_at(answer, "panels", 3).chosen);
    const double offered = number_at(answer, "energy.offered");
    const double used = number_at(answer, "energy.used");
    const double stored = number_at(answer, "energy.stored");
    const double unused = number_at(answer, "energy.unused");
    EXPECT_NEAR(offered, used + stored + unused, 1e-6 * offered);
}

TEST(sun_answer, where_no_plan_is_possible_the_panels_alone_are_answered_for_and_it_says_so) {
    std::string no_inverter = unit;  // an AC load that nothing feeds
    no_inverter.replace(no_inverter.find("12V"), 3, "ac");
    const auto answer = answer_of(january + no_inverter);
    EXPECT_GT(number_at(answer, "recharge.likely"), 0.0);
    EXPECT_TRUE(std::holds_alternative<Absent>(value_at(answer.values, "panels")->held));
    EXPECT_EQ(answer.bars.size(), 2u);
    const auto told = std::ranges::any_of(answer.findings, [](const auto& pinned) {
        return pinned.finding.where == "packs" &&
               pinned.finding.severity == scenario::Severity::note;
    });
    EXPECT_TRUE(told);
}

TEST(sun_answer, without_panels_it_says_that_nothing_comes) {
    std::string none = january;
    none.replace(none.find("count = 3"), 9, "count = 0");
    const auto answer = answer_of(none + unit);
    EXPECT_THAT(answer.sentences.front(), HasSubstr("no panels"));
    EXPECT_TRUE(answer.bars.empty());
}

TEST(sun_answer, polar_night_is_told_as_no_sun_and_not_as_a_small_number) {
    const auto answer = answer_of(R"(format = 1
title = "Night"
[outage]
starts = 2026-12-20T00:00:00
lasts = "3 d"
[place]
latitude = "78.2 deg"
longitude = "15.6 deg"
elevation = "10 m"
irradiation = ["0 Wh/m2", "30 Wh/m2", "1 kWh/m2", "3 kWh/m2", "5 kWh/m2", "5 kWh/m2",
               "4 kWh/m2", "3 kWh/m2", "1 kWh/m2", "0.2 kWh/m2", "0 Wh/m2", "0 Wh/m2"]
[[panel]]
power = "100 W"
)" + unit);
    EXPECT_THAT(answer.sentences.front(), HasSubstr("nothing back"));
    EXPECT_THAT(in_json(answer), Not(HasSubstr("nan")));
    EXPECT_THAT(in_json(answer), HasSubstr("panels flat on the ground give nothing"));
}

TEST(sun_answer, a_weather_file_answers_with_its_own_hours_and_start_dates) {
    const auto folder = std::filesystem::temp_directory_path() / "candlemark_sun_answer";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "station.epw") << test_support::epw_text(test_support::plain_hour);
    std::string text = january;
    text.replace(text.find("name = \"Chicago IL\""), 19, "weather_file = \"station.epw\"");
    const auto answer =
        answer_of(text + unit, {.weathers = 200, .most_panels = 3}, folder.string());
    EXPECT_THAT(answer.sentences.front(), HasSubstr("start dates in the weather file"));
    EXPECT_THAT(answer.sentences.front(), HasSubstr("Made Up Field"));
    std::filesystem::remove_all(folder);
}

TEST(sun_answer, a_file_that_cannot_be_read_is_an_error_at_its_key) {
    std::string text = january;
    text.replace(text.find("name = \"Chicago IL\""), 19, "weather_file = \"missing.epw\"");
    EXPECT_FALSE(
        questions::find({.scenario = scenario_of(text + unit)}, questions::SunAsked{}, {}));
}

TEST(sun_answer, is_known_in_german_with_its_bars_curves_findings_and_working) {
    const auto answer = answer_of(january + unit, {.weathers = 100, .most_panels = 4});
    const auto known = words::expect_known_in_german;
    std::ranges::for_each(answer.sentences, known);
    for (const auto& chart : answer.bars) {
        known(chart.title);
        for (const Bar& bar : chart.bars) {
            known(bar.label);
            known(bar.words);
        }
    }
    known(answer.curves->title);
    for (const auto& curve : answer.curves->curves)
        known(curve.label);
    for (const auto& pinned : answer.findings)
        for (const auto* said : {&pinned.finding.where, &pinned.finding.text, &pinned.finding.mend})
            known(*said);
    for (const auto& row : answer.working)
        for (const auto* said : {&row.section, &row.quantity, &row.value.shown, &row.source})
            known(*said);
    EXPECT_THAT(words::in(words::german(), answer.sentences.front()),
                HasSubstr("Drei Module in Chicago IL geben über 4 Tage"));
}

TEST(sun_answer, no_line_is_wider_than_the_page) {
    const auto answer = answer_of(january + unit);
    for (const int width : {60, 80, 132}) {
        std::istringstream stream(in_text(answer, {.width = width, .full = true}));
        for (std::string line; std::getline(stream, line);) {
            EXPECT_LE(width_of(line), width) << line;
        }
    }
}

TEST(sun_answer, ascii_is_nothing_but_ascii) {
    const auto text = in_text(answer_of(january + unit), {.ascii = true, .full = true});
    EXPECT_TRUE(std::ranges::all_of(
        text, [](char letter) { return static_cast<unsigned char>(letter) < 0x80; }));
}

}  // namespace
