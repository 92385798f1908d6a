#include "answers/wiring/answer.hpp"

#include <algorithm>

#include "faces/json.hpp"
#include "faces/sheet.hpp"
#include "faces/text.hpp"
#include "fitting/ways.hpp"
#include "questions/shared/draws.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace answers;
using namespace faces;
using testing::HasSubstr;
using testing::Not;

scenario::ReadScenario read(const std::string& name, scenario::Overrides overrides = {}) {
    auto file = scenario::read_scenario_file(
        std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name, std::move(overrides));
    EXPECT_TRUE(file) << (file ? "" : units::print(file.error().front()));
    return std::move(*file);
}

Answer answer_of(const scenario::Scenario& scenario) {
    const auto draws = questions::draws_of(scenario);
    EXPECT_TRUE(draws);
    const auto fit = fitting::fit(scenario, *draws);
    EXPECT_TRUE(fit);
    return wiring_answer(scenario, *fit, fitting::ways_out(scenario, *draws, *fit));
}

TEST(wiring_answer, a_build_that_fits_has_no_stop_and_never_says_safe) {
    const Answer answer = answer_of(read("ice_storm.toml").scenario);
    EXPECT_FALSE(holds_a_stop(answer));
    for (const std::string& face :
         {in_text(answer, {.full = true}), in_json(answer), in_html(answer)}) {
        EXPECT_THAT(face, Not(HasSubstr(" safe")));
        EXPECT_THAT(face, Not(HasSubstr("complies")));
        EXPECT_THAT(face, Not(HasSubstr("nan")));
    }
    EXPECT_EQ(answer.closing, closing_line());
}

TEST(wiring_answer, the_answer_has_the_keys_scripts_rely_on) {
    const Answer answer = answer_of(read("swap/as_built.toml").scenario);
    EXPECT_TRUE(holds_a_stop(answer));
    const auto& circuits = std::get<List>(value_at(answer.values, "circuits")->held);
    ASSERT_EQ(circuits.size(), 4U);
    const auto& lamps = std::get<Members>(circuits[3].held);
    EXPECT_EQ(std::get<words::Said>(value_at(lamps, "verdict")->held), "fails");
    EXPECT_EQ(std::get<Quantity>(value_at(lamps, "fuse_window.largest")->held).shown, "5 A");
    EXPECT_EQ(std::get<Quantity>(value_at(lamps, "fuse_window.smallest")->held).shown, "5 A");
    EXPECT_EQ(std::get<words::Said>(value_at(lamps, "weakest_link")->held), "5 A switch");
    const auto& link = std::get<Members>(std::get<List>(value_at(lamps, "links")->held)[1].held);
    EXPECT_EQ(std::get<Quantity>(value_at(link, "derated")->held).value, 5.0);
    EXPECT_NEAR(std::get<Quantity>(value_at(link, "carries")->held).value, 36.0 * 1.1 / 10.5,
                1e-9);  // metered: 10 % more, at the lowest voltage
}

TEST(wiring_answer, what_the_file_does_not_name_is_asked_for) {
    const Answer answer = answer_of(read("saw_and_pump.toml").scenario);
    EXPECT_EQ(answer.sentences.front(),
              "The file describes no circuit, so there is little to check.");
    const auto asked = [&answer](std::string_view words) {
        return std::ranges::any_of(answer.findings, [words](const PinnedFinding& pinned) {
            return in_english(pinned.finding.text).find(words) != std::string::npos;
        });
    };
    EXPECT_TRUE(asked("main fuse, switch and cable cannot be checked"));
    EXPECT_TRUE(asked("pack fuses, leads and connectors cannot be checked"));
    EXPECT_TRUE(asked("lead-acid packs need"));
}

TEST(wiring_answer, lead_acid_in_a_shut_case_is_a_stop) {
    auto scenario = read("saw_and_pump.toml").scenario;
    scenario.enclosure = scenario::Case{.lid = "closed"};
    const Answer answer = answer_of(scenario);
    const auto found = std::ranges::find_if(answer.findings, [](const PinnedFinding& pinned) {
        return in_english(pinned.finding.text).find("hydrogen") != std::string::npos;
    });
    ASSERT_NE(found, answer.findings.end());
    EXPECT_EQ(found->finding.severity, scenario::Severity::stop);
}

TEST(wiring_draws, loads_that_run_for_hours_are_told_from_those_that_do_not) {
    const auto draws = questions::draws_of(read("swap/as_planned.toml").scenario);
    ASSERT_TRUE(draws);
    const auto& lamps = draws->circuits[3];
    EXPECT_NEAR(lamps.at_bus.continuous / units::watt, 39.6, 1e-9);  // metered: 10 % more
    EXPECT_EQ(lamps.at_bus.further, units::Power());
    const auto& refrigerator = draws->circuits[2];
    EXPECT_EQ(refrigerator.at_outlet.continuous, units::Power());  // 15 of 45 min
    EXPECT_GT(refrigerator.at_outlet.further, 100.0 * units::watt);
    EXPECT_TRUE(refrigerator.critical);
}

// ---- The picture.

TEST(wiring_answer, its_page_holds_picture_fuse_table_findings_and_cautions) {
    const std::string html = in_html(answer_of(read("swap/as_built.toml").scenario));
    for (const char* part : {"<svg ", "The circuits", "Part by part", "What would fit", "STOP",
                             "Never put in a larger fuse", "Arithmetic, not approval"}) {
        EXPECT_THAT(html, HasSubstr(part));
    }
    EXPECT_THAT(html, Not(HasSubstr("http-equiv")));
    EXPECT_THAT(html, Not(HasSubstr("src=")));  // nothing from elsewhere
}

}  // namespace
