#include "models/days/days_model.hpp"

#include <memory>

#include <QAbstractItemModelTester>
#include <QLineSeries>
#include <QSignalSpy>
#include <gtest/gtest.h>

#include "models/days/days_view_of.hpp"
#include "support/hand_made_plan.hpp"

namespace {

using touch::DaysModel;

std::shared_ptr<const touch::DaysView> view(double lasts = 30.0) {
    return std::make_shared<const touch::DaysView>(
        touch::days_view_of(touch_tests::hand_made_answer(lasts)));
}

TEST(days_model, keeps_to_the_rules_of_item_models_when_shown_again) {
    DaysModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show(view());
    model.show(std::make_shared<const touch::DaysView>());
    model.show(view(40.0));
    EXPECT_EQ(model.rowCount(), 49);  // 48 h: one row an hour, both ends
}

TEST(days_model, hands_every_point_to_the_series) {
    DaysModel model;
    model.show(view());
    QLineSeries low;
    QLineSeries high;
    QLineSeries likely;
    model.fillStored(&low, &high, &likely);
    ASSERT_EQ(likely.count(), 193);  // quarters of 48 h
    EXPECT_EQ(likely.at(0), QPointF(0.0, 4000.0));
    EXPECT_EQ(likely.at(192), QPointF(48.0, 0.0));
    EXPECT_LE(low.at(40).y(), likely.at(40).y());
    EXPECT_GE(high.at(40).y(), likely.at(40).y());
}

TEST(days_model, leaves_alone_what_is_no_series) {
    DaysModel model;
    model.show(view());
    QObject other;
    model.fillSun(&other);
    model.fillStack(0, &other, nullptr, &other);
    model.fillStack(7, nullptr, nullptr, nullptr);
    EXPECT_EQ(model.rowCount(), 49);
}

TEST(days_model, looks_at_the_hour_under_a_finger) {
    DaysModel model;
    model.show(view());
    const QSignalSpy moved(&model, &DaysModel::rowChanged);
    model.lookAt(0.5);
    EXPECT_EQ(model.row(), 24);
    EXPECT_EQ(model.moment_time(), "Thursday 18:00");
    EXPECT_EQ(moved.count(), 1);
    model.lookAt(-3.0);
    EXPECT_EQ(model.row(), 0);
    model.lookAt(7.0);
    EXPECT_EQ(model.row(), 48);
    EXPECT_FALSE(model.has_later());
}

TEST(days_model, stops_at_both_ends) {
    DaysModel model;
    model.show(view());
    model.earlier();
    EXPECT_EQ(model.row(), 0);
    model.later();
    EXPECT_EQ(model.row(), 1);
    EXPECT_TRUE(model.has_earlier());
    model.toStart();
    EXPECT_EQ(model.row(), 0);
}

TEST(days_model, says_nothing_before_there_is_a_plan) {
    DaysModel model;
    EXPECT_EQ(model.moment_text(), "");
    model.lookAt(0.5);
    model.later();
    EXPECT_EQ(model.row(), 0);
}

// Two hours of 48 that lie ten pixels apart of 480: beside each other, each with a line to its own.
std::shared_ptr<const touch::DaysView> view_with_pins(const QList<double>& hours) {
    auto shown = std::make_shared<touch::DaysView>(*view());
    shown->pins.clear();
    for (const double hour : hours)
        shown->pins.append({.at = hour / 48.0,
                            .mark = shown->pins.isEmpty() ? "note" : "stop",
                            .text = QString::number(hour),
                            .number = int(shown->pins.size()) + 1,
                            .finding = {.word = "STOP", .text = QString::number(hour)}});
    return shown;
}

TEST(days_model, pins_stand_beside_each_other_and_point_to_their_hours) {
    DaysModel model;
    model.show(view_with_pins({20.0, 21.0}));
    const QVariantList pins = model.pinsIn(0.0, 1.0, 480.0, 48.0);
    ASSERT_EQ(pins.size(), 2);
    EXPECT_DOUBLE_EQ(pins[0].toMap()["x"].toDouble(), 181.0);
    EXPECT_DOUBLE_EQ(pins[1].toMap()["x"].toDouble(), 229.0);
    EXPECT_DOUBLE_EQ(pins[0].toMap()["places"].toList()[0].toDouble(), 200.0);
    EXPECT_EQ(pins[1].toMap()["number"], "2");
    EXPECT_TRUE(model.pinsIn(0.5, 1.0, 480.0, 48.0).isEmpty());  // out of sight
}

TEST(days_model, pins_for_which_there_is_no_room_are_one_that_opens_all) {
    DaysModel model;
    model.show(view_with_pins({30.0, 20.0, 21.0}));
    const QVariantList pins = model.pinsIn(0.0, 1.0, 100.0, 48.0);
    ASSERT_EQ(pins.size(), 2);
    const QVariantMap both = pins[0].toMap();
    EXPECT_EQ(both["number"], "×2");
    EXPECT_EQ(both["mark"], "stop");
    const QVariantList found = model.findingsOf(both["of"].toList());
    ASSERT_EQ(found.size(), 2);
    EXPECT_EQ(found[0].toMap()["text"], "20");
    EXPECT_EQ(found[1].toMap()["spoken"], "STOP. 21 ");
    EXPECT_TRUE(model.findingsOf({9, -1}).isEmpty());
}

TEST(days_model, an_hour_of_the_axis_says_what_stands_above_it) {
    DaysModel model;
    model.show(view());
    const QVariantMap axis = model.axisIn(0.0, 0.5, 480.0, 8.0);
    const QVariantMap tick = axis["ticks"].toList()[1].toMap();
    EXPECT_EQ(tick["text"], "21:00");
    EXPECT_DOUBLE_EQ(tick["at"].toDouble(), 3.0 / 48.0);
    EXPECT_EQ(tick["row"], 3);
    EXPECT_EQ(tick["spoken"], model.data(model.index(3), DaysModel::SpokenRole));
    EXPECT_EQ(axis["spans"].toList()[1].toMap()["name"], "Thu 15 Jan");
}

TEST(days_model, goes_to_either_end) {
    DaysModel model;
    model.show(view());
    model.toEnd();
    EXPECT_EQ(model.row(), 48);
    EXPECT_FALSE(model.moment_lines().isEmpty());
    model.toStart();
    EXPECT_EQ(model.row(), 0);
    EXPECT_GT(model.moment_level(), 0.5);
}

}  // namespace
