#include "models/days_model.hpp"

#include <memory>

#include <QAbstractItemModelTester>
#include <QLineSeries>
#include <QSignalSpy>
#include <gtest/gtest.h>

#include "models/days_view_of.hpp"
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
    model.fillPowers(&other, nullptr);
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

}  // namespace
