#include "answers/compare/answer.hpp"

#include <algorithm>

#include "questions/shared/draws.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace answers;
using testing::HasSubstr;
using testing::StartsWith;

scenario::ReadScenario read(const std::string& name, scenario::Overrides overrides = {}) {
    std::string path = CANDLEMARK_SOURCE_DIR;
    path += "/scenarios/swap/";
    path += name;
    return *scenario::read_scenario_file(path, std::move(overrides));
}

questions::ComparedBuild build_of(const scenario::ReadScenario& file) {
    const auto draws = questions::draws_of(file.scenario);
    questions::ComparedBuild build{
        .read = file, .fit = *fitting::fit(file.scenario, *draws), .plan = std::nullopt};
    if (auto plan = outage::plan_outage(file.scenario)) {
        build.plan = std::move(*plan);
    }
    return build;
}

std::string all_of(const Answer& answer) {
    std::string all;
    for (const auto& sentence : answer.sentences) {
        all += in_english(sentence) + "\n";
    }
    for (const auto& pinned : answer.findings) {
        const scenario::Finding& finding = pinned.finding;
        all += in_english(finding.where) + ": " + in_english(finding.text) + " " +
               in_english(finding.mend) + "\n";
    }
    return all;
}

TEST(compare_answer, a_build_and_itself_do_not_differ) {
    const auto file = read("as_planned.toml");
    const Answer answer = compare_answer(questions::compared(build_of(file), build_of(file)));
    EXPECT_EQ(answer.sentences.front(), "The two builds do not differ.");
    EXPECT_FALSE(holds_a_stop(answer));
    EXPECT_TRUE(std::get<bool>(value_at(answer.values, "same")->held));
}

TEST(compare_answer, swapped_parts_are_told_in_words_with_what_they_break) {
    const auto before = read("as_planned.toml");
    const auto after = read("as_built.toml");
    const Answer answer = compare_answer(questions::compared(build_of(before), build_of(after)));
    const std::string all = all_of(answer);
    EXPECT_THAT(in_english(answer.sentences.front()), StartsWith("What changed: "));
    EXPECT_THAT(all, HasSubstr("work lamps: the switch is 5 A instead of 10 A"));
    EXPECT_THAT(all, HasSubstr("the inverter is 1.5 kW instead of 1 kW"));
    EXPECT_THAT(all, HasSubstr("Worse than before: fuse size (fits, now fails). "));
    EXPECT_THAT(all, HasSubstr("Fit a 5 A fuse"));
    EXPECT_TRUE(holds_a_stop(answer));
}

TEST(compare_answer, more_packs_last_longer_and_weigh_more) {
    const auto before = read("as_planned.toml");
    const auto after = read("as_planned.toml", {{"pack.pack.count", "3"}});
    const Answer answer = compare_answer(questions::compared(build_of(before), build_of(after)));
    const auto number = [&answer](std::string_view path) {
        return std::get<Quantity>(value_at(answer.values, path)->held).value;
    };
    EXPECT_GE(number("lasts.new"), number("lasts.old"));
    EXPECT_EQ(number("weight.new"), 36.0);
    EXPECT_EQ(number("weight.old"), 24.0);
    EXPECT_EQ(number("price.new") - number("price.old"), 300.0);
}

TEST(compare_answer, a_weight_nobody_gives_is_unknown_and_not_zero) {
    auto before = read("as_planned.toml");
    auto after = read("as_planned.toml");
    after.scenario.packs[0].weight.reset();
    const Answer answer = compare_answer(questions::compared(build_of(before), build_of(after)));
    EXPECT_TRUE(std::holds_alternative<Absent>(value_at(answer.values, "weight.new")->held));
}

}  // namespace
