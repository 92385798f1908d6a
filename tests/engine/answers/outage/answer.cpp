#include "answers/outage/answer.hpp"

#include <limits>

#include "support/made_plan.hpp"

namespace {

using namespace answers;
using units::hour;

double number(const Answer& answer, std::string_view path) {
    return std::get<Quantity>(value_at(answer.values, path)->held).value;
}

TEST(outage_answer, figures_are_those_of_the_likely_course_in_hours_and_watt_hours) {
    const auto plan = made::plan();
    const auto answer = outage_answer(made::scenario(), plan, {});
    EXPECT_DOUBLE_EQ(number(answer, "lasts"), plan.likely.lasts / hour);
    EXPECT_DOUBLE_EQ(number(answer, "energy.loads"), plan.likely.ledger.loads / units::watt_hour);
    EXPECT_FALSE(std::get<bool>(value_at(answer.values, "survives")->held));
    EXPECT_EQ(std::get<std::string>(value_at(answer.values, "limited_by")->held), "charge");
}

TEST(outage_answer, the_end_is_a_local_time) {
    auto plan = made::plan();
    plan.likely.lasts = 9.0 * hour;
    EXPECT_EQ(std::get<std::string>(
                  value_at(outage_answer(made::scenario(), plan, {}).values, "ends_at")->held),
              "2026-01-15T03:00:00");
}

TEST(outage_answer, more_packs_are_a_list_with_their_own_ends) {
    const auto answer = outage_answer(made::scenario(), made::plan(),
                                      {{.packs = 2, .lasts = 50.0 * hour, .survives = false}});
    const auto& list = std::get<List>(value_at(answer.values, "next_packs")->held);
    ASSERT_EQ(list.size(), 1U);
    const auto& entry = std::get<Members>(list.front().held);
    EXPECT_EQ(std::get<std::int64_t>(value_at(entry, "packs")->held), 2);
    EXPECT_EQ(std::get<std::string>(value_at(entry, "ends_at")->held), "2026-01-16T20:00:00");
}

TEST(outage_answer, an_account_that_does_not_close_is_a_defect) {
    auto plan = made::plan();
    EXPECT_FALSE(outage_answer(made::scenario(), plan, {}).defect.has_value());
    plan.earliest.ledger.relative_residual = 2e-9;
    EXPECT_TRUE(outage_answer(made::scenario(), plan, {}).defect.has_value());
    plan.earliest.ledger.relative_residual = -2e-9;
    EXPECT_TRUE(outage_answer(made::scenario(), plan, {}).defect.has_value());
    plan.earliest.ledger.relative_residual = std::numeric_limits<double>::quiet_NaN();
    EXPECT_TRUE(outage_answer(made::scenario(), plan, {}).defect.has_value());
}

TEST(outage_answer, the_headline_is_the_chance_where_members_were_run) {
    questions::OutageChance chance{.packs = 1};
    chance.figures.of = units::Probability(0.95);
    chance.figures.low = units::Probability(0.94);
    chance.figures.high = units::Probability(0.96);
    chance.figures.goal = units::Probability(0.9);
    chance.figures.members = 1024;
    const auto answer = outage_answer(made::scenario(), made::plan(), {}, chance);
    EXPECT_EQ(answer.sentences, chance_sentences(made::scenario().outage, chance));
    EXPECT_DOUBLE_EQ(number(answer, "chance.of"), 95.0);
    EXPECT_DOUBLE_EQ(number(answer, "chance_of_lasting"), 95.0);
    EXPECT_TRUE(std::get<bool>(value_at(answer.values, "count_on.survives")->held));
}

TEST(outage_answer, the_working_names_each_load_and_the_idle_draw) {
    const auto working = outage_answer(made::scenario(), made::plan(), {}).working;
    const auto about = [&](std::string_view words) {
        return std::ranges::any_of(working, [words](const WorkingRow& row) {
            return row.quantity.find(words) != std::string::npos;
        });
    };
    EXPECT_TRUE(about("refrigerator"));
    EXPECT_TRUE(about("with nothing plugged in"));
    EXPECT_TRUE(about("not explained"));
}

}  // namespace
