#include "models/days/days_view_of.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "support/hand_made_plan.hpp"

namespace {

using touch::DaysView;

TEST(days_view_of, puts_the_answer_first_and_the_rest_below) {
    const DaysView view = touch::days_view_of(touch_tests::hand_made_answer());
    EXPECT_TRUE(view.answered);
    EXPECT_EQ(view.sentence, "Lasts until some hour.");
    EXPECT_EQ(view.range, "One more pack carries you further.");
}

TEST(days_view_of, makes_the_candle_as_tall_as_the_outage_and_the_wax_as_long_as_it_lasts) {
    const touch::Candle candle = touch::days_view_of(touch_tests::hand_made_answer(30.0)).candle;
    EXPECT_DOUBLE_EQ(candle.outage, 48.0);
    EXPECT_DOUBLE_EQ(candle.likely, 30.0);
    ASSERT_EQ(candle.marks.size(), 2);
    EXPECT_DOUBLE_EQ(candle.marks[0].hours, 24.0);
    EXPECT_EQ(candle.marks[0].text, "1 day");
}

TEST(days_view_of, gives_the_sun_only_hours_that_end_fuller_than_they_began) {
    // 400 Wh come back from hour 14 to 18, 100 an hour; the loads take 4000 over 100 h, 40 an hour.
    const touch::Candle candle = touch::days_view_of(touch_tests::hand_made_answer(100.0)).candle;
    ASSERT_EQ(candle.sunny.size(), 1);
    EXPECT_DOUBLE_EQ(candle.sunny[0].from, 14.0);
    EXPECT_DOUBLE_EQ(candle.sunny[0].to, 18.0);
    // 4000 over 30 h is 133 an hour: more than comes back.
    EXPECT_TRUE(touch::days_view_of(touch_tests::hand_made_answer(30.0)).candle.sunny.isEmpty());
}

TEST(days_view_of, pins_a_finding_to_its_hour_with_the_number_it_has_in_the_list) {
    const DaysView view = touch::days_view_of(touch_tests::hand_made_answer(30.0));
    ASSERT_EQ(view.pins.size(), 1);
    EXPECT_DOUBLE_EQ(view.pins[0].at, 30.0 / 48.0);
    EXPECT_EQ(view.pins[0].mark, "stop");
    ASSERT_EQ(view.findings.size(), 2);
    EXPECT_EQ(view.findings[0].pin, view.pins[0].number);
    EXPECT_EQ(view.findings[1].pin, 0);
    EXPECT_EQ(view.findings[1].word, "NOTE");
}

TEST(days_view_of, says_when_loads_go_without) {
    const DaysView view = touch::days_view_of(touch_tests::hand_made_answer(30.0));
    EXPECT_EQ(view.moments[10].loads, "loads 120 W");
    EXPECT_EQ(view.moments[40].loads, "loads go without");
    EXPECT_EQ(view.moments[40].left, "out");
    EXPECT_EQ(view.moments[1].sky, "night");
    EXPECT_EQ(view.moments[15].sky, "day");
}

// Hours of the outage and its end. By hand: 4000 Wh over 100 h is 40 an hour; in the hour from
// 14 to 15 a hundred come back beyond that.
TEST(days_view_of, an_hour_tells_its_balance) {
    const DaysView view = touch::days_view_of(touch_tests::hand_made_answer(100.0));
    ASSERT_EQ(view.moments.size(), 49);
    const QStringList& working = view.moments[14].working;
    ASSERT_GE(working.size(), 5);
    EXPECT_EQ(working[0], "3.44 kWh is stored as this hour begins.");
    EXPECT_EQ(working[1], "+ 250 Wh comes from the sun, which offers 250 Wh.");
    EXPECT_EQ(working[2], "− 120 Wh goes to the loads.");
    EXPECT_EQ(working[3], "− 70 Wh is lost in inverter, wiring and packs.");
    EXPECT_TRUE(working[4].startsWith("= 3.5 kWh is stored at its end"));
    EXPECT_EQ(view.moments.back().loads, "the outage is over");
    EXPECT_DOUBLE_EQ(view.moments.back().at, 1.0);
}

// A stair for each hour: the mean of the hour, from its beginning to its end.
TEST(days_view_of, loads_are_drawn_as_the_mean_of_each_hour) {
    const DaysView view = touch::days_view_of(touch_tests::hand_made_answer(100.0));
    ASSERT_EQ(view.sun.size(), 96);
    EXPECT_EQ(view.sun[28], QPointF(14.0, 250.0));
    EXPECT_EQ(view.sun[29], QPointF(15.0, 250.0));
    EXPECT_EQ(view.sun[27], QPointF(14.0, 0.0));
}

// 40 Wh of the first priority and 80 of the others in each hour, as it is written down.
TEST(days_view_of, loads_of_each_priority_lie_on_those_before_them) {
    auto answer = touch_tests::hand_made_answer(100.0);
    answer.days->priorities = {1, 3};
    for (auto& hour : answer.days->hours)
        hour.wanted_by = {40.0, 80.0};
    const DaysView view = touch::days_view_of(answer);
    ASSERT_EQ(view.stacks.size(), 2);
    EXPECT_EQ(view.stacks[1].priority, 3);
    EXPECT_EQ(view.stacks[0].lower[20], QPointF(10.0, 0.0));
    EXPECT_EQ(view.stacks[0].upper[20], QPointF(10.0, 40.0));
    EXPECT_EQ(view.stacks[1].lower[20], QPointF(10.0, 40.0));
    EXPECT_EQ(view.stacks[1].upper[20], QPointF(10.0, 120.0));
    EXPECT_EQ(view.stacks[1].upper[21], QPointF(11.0, 120.0));
}

// One stack of all that is wanted, where no priorities are told.
TEST(days_view_of, loads_without_priorities_are_one_stack) {
    const DaysView view = touch::days_view_of(touch_tests::hand_made_answer());
    ASSERT_EQ(view.stacks.size(), 1);
    EXPECT_EQ(view.stacks[0].priority, 0);
    EXPECT_EQ(view.stacks[0].upper[3], QPointF(2.0, 120.0));
}

TEST(days_view_of, the_answer_is_three_figures) {
    auto answer = touch_tests::hand_made_answer(30.0);
    ASSERT_EQ(touch::days_view_of(answer).told.size(), 1);  // without a chance: on likely figures
    answer.days->burns = {.nine_in_ten = 5.0, .half = 30.0, .one_in_ten = 60.0};
    const auto percent = [](const char* key, double value) {
        return answers::Member{
            .key = key, .label = {}, .value = {answers::Quantity{value, "%", {}}}};
    };
    answer.values.push_back({.key = "chance",
                             .label = {},
                             .value = {answers::Members{percent("of", 35.9), percent("low", 31.2),
                                                        percent("high", 38.1)}}});
    const DaysView view = touch::days_view_of(answer);
    ASSERT_EQ(view.told.size(), 3);
    EXPECT_EQ(view.told[0].value, "Wednesday 23:00");
    EXPECT_EQ(view.told[1].value, "Friday 00:00");
    EXPECT_EQ(view.told[2].value, "35 in 100");
    EXPECT_EQ(view.told[2].detail, "31 to 39");
    EXPECT_DOUBLE_EQ(view.ends.from, 5.0 / 48.0);
    EXPECT_DOUBLE_EQ(view.ends.to, 60.0 / 48.0);
    for (const auto& [of, told] :
         {std::pair{0.4, "under 1 in 100"}, std::pair{99.6, "over 99 in 100"}}) {
        answer.values.back() = {
            .key = "chance", .label = {}, .value = {answers::Members{percent("of", of)}}};
        EXPECT_EQ(touch::days_view_of(answer).told[2].value, told);
    }
    answer.days->burns = {.nine_in_ten = 40.0, .half = 48.0, .one_in_ten = 60.0};
    EXPECT_EQ(touch::days_view_of(answer).told[1].value, "the end");
    // What may not carry its loads at all is told in words.
    answer.days->burns = {.nine_in_ten = 0.0, .half = 40.0, .one_in_ten = 60.0};
    EXPECT_TRUE(touch::days_view_of(answer).told.isEmpty());
}

TEST(days_view_of, the_line_of_empty_packs_lies_at_what_is_left) {
    auto answer = touch_tests::hand_made_answer();
    answer.days->empty = 1000.0;
    const DaysView view = touch::days_view_of(answer);
    EXPECT_DOUBLE_EQ(view.empty_at, 1000.0 / view.energy_top);
}

TEST(days_view_of, has_ticks_from_nothing_to_above_the_highest_point) {
    const DaysView view = touch::days_view_of(touch_tests::hand_made_answer());
    ASSERT_GE(view.energy_ticks.size(), 3);
    EXPECT_DOUBLE_EQ(view.energy_ticks.front().at, 0.0);
    EXPECT_DOUBLE_EQ(view.energy_ticks.back().at, 1.0);
    EXPECT_GT(view.energy_top, 4000.0);
    EXPECT_GT(view.power_top, 250.0);
}

TEST(refusal, lists_every_error_with_its_line_and_what_would_be_right) {
    const DaysView view = touch::refusal(
        {{.where = "pack[0].capacity",
          .found = "100 Wh is energy",
          .remedy = "give charge",
          .file = "a",
          .line = 7},
         {.where = "outage.lasts", .found = "is missing", .remedy = "give a duration"}});
    EXPECT_FALSE(view.answered);
    ASSERT_EQ(view.findings.size(), 2);
    EXPECT_EQ(view.findings[0].where, "pack[0].capacity, line 7");
    EXPECT_EQ(view.findings[0].mend, "give charge");
    EXPECT_EQ(view.findings[1].where, "outage.lasts");
    EXPECT_EQ(view.findings[1].mark, "stop");
}

TEST(thinned, keeps_few_points_as_they_are) {
    const QList<QPointF> points{{0, 1}, {1, 5}, {2, 3}};
    EXPECT_EQ(touch::thinned(points, 10), points);
}

TEST(thinned, loses_no_peak_no_dip_and_neither_end) {
    QList<QPointF> points;
    for (int i = 0; i < 20000; ++i)
        points.append({double(i), std::sin(i / 500.0)});
    points[7777].setY(9.0);
    points[12345].setY(-9.0);
    const QList<QPointF> thin = touch::thinned(points, 1000);
    EXPECT_LE(thin.size(), 1000);
    EXPECT_TRUE(thin.contains(QPointF(7777.0, 9.0)));
    EXPECT_TRUE(thin.contains(QPointF(12345.0, -9.0)));
    EXPECT_EQ(thin.front(), points.front());
    EXPECT_EQ(thin.back(), points.back());
    for (qsizetype i = 1; i < thin.size(); ++i)
        EXPECT_LT(thin[i - 1].x(), thin[i].x());
}

}  // namespace
