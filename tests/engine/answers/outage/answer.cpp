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
    EXPECT_EQ(std::get<Code>(value_at(answer.values, "limited_by")->held).code, "charge");
}

TEST(outage_answer, the_end_is_a_local_time) {
    auto plan = made::plan();
    plan.likely.lasts = 9.0 * hour;
    const auto answer = outage_answer(made::scenario(), plan, {});
    const auto& at = std::get<Code>(value_at(answer.values, "ends_at")->held);
    EXPECT_EQ(at.code, "2026-01-15T03:00:00");
    EXPECT_EQ(at.said, "Thu 15 Jan 03:00");
}

TEST(outage_answer, more_packs_are_a_list_with_their_own_ends) {
    const auto answer = outage_answer(made::scenario(), made::plan(),
                                      {{.packs = 2, .lasts = 50.0 * hour, .survives = false}});
    const auto& list = std::get<List>(value_at(answer.values, "next_packs")->held);
    ASSERT_EQ(list.size(), 1U);
    const auto& entry = std::get<Members>(list.front().held);
    EXPECT_EQ(std::get<std::int64_t>(value_at(entry, "packs")->held), 2);
    EXPECT_EQ(std::get<Code>(value_at(entry, "ends_at")->held).code, "2026-01-16T20:00:00");
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

// What came from somewhere is what went somewhere and what is left, from the ledger's own figures.
TEST(outage_answer, the_account_names_where_energy_came_from_and_where_it_went) {
    auto plan = made::plan();
    const auto without = outage_answer(made::scenario(), plan, {});
    ASSERT_TRUE(without.account);
    EXPECT_EQ(without.account->from.size(), 5U);
    EXPECT_EQ(without.account->from.front().label, "stored at the start");
    EXPECT_DOUBLE_EQ(without.account->to.front().amount.value,
                     plan.likely.ledger.loads / units::watt_hour);
    plan.likely.ledger.charger_offered = 300.0 * units::watt_hour;
    plan.likely.ledger.charger_taken = 200.0 * units::watt_hour;
    const auto with = outage_answer(made::scenario(), plan, {});
    EXPECT_EQ(with.account->from.at(4).label, "from chargers");
    EXPECT_DOUBLE_EQ(with.account->from.at(4).amount.value, 200.0);
    EXPECT_EQ(with.account->to.at(4).label, "lost in adaptors");
}

TEST(outage_answer, the_plot_burns_as_long_as_half_of_the_members_or_the_likely_course) {
    const auto plan = made::plan();
    const auto likely = outage_answer(made::scenario(), plan, {});
    EXPECT_DOUBLE_EQ(likely.days->burns.half, plan.likely.lasts / hour);
    questions::OutageChance chance{.packs = 1};
    chance.figures.nine_in_ten = 20.0 * hour;
    chance.figures.half = 30.0 * hour;
    chance.figures.one_in_ten = 44.0 * hour;
    const auto told = outage_answer(made::scenario(), plan, {}, chance);
    EXPECT_DOUBLE_EQ(told.days->burns.nine_in_ten, 20.0);
    EXPECT_DOUBLE_EQ(told.days->burns.half, 30.0);
    EXPECT_DOUBLE_EQ(told.days->burns.one_in_ten, 44.0);
    EXPECT_FALSE(told.days->looked_at);
}

TEST(outage_answer, the_working_names_each_load_and_the_idle_draw) {
    const auto working = outage_answer(made::scenario(), made::plan(), {}).working;
    const auto about = [&](std::string_view words) {
        return std::ranges::any_of(working, [words](const WorkingRow& row) {
            return in_english(row.quantity).find(words) != std::string::npos;
        });
    };
    EXPECT_TRUE(about("refrigerator"));
    EXPECT_TRUE(about("with nothing plugged in"));
    EXPECT_TRUE(about("not explained"));
}

}  // namespace
