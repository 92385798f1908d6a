#include "models/days/range_bars.hpp"

#include <QAbstractItemModelTester>
#include <QTest>
#include <gtest/gtest.h>

#include "models/days/curve.hpp"
#include "models/words/shown_amount.hpp"

namespace {

using touch::AnswerRunner;
using touch::Curve;
using touch::RangeBars;

answers::Answer by_hand() {
    answers::Answer answer;
    answer.sentences = {"By hand."};
    answer.series = {
        {.name = "days",
         .title = "Days",
         .columns = {{"date", "date", "", std::vector<words::Said>{"Thu", "Fri"}},
                     {"low", "low", "W.h", std::vector<double>{200.0, 0.0}},
                     {"likely", "likely", "W.h", std::vector<double>{900.0, 400.0}},
                     {"high", "high", "W.h", std::vector<double>{1800.0, 400.0}}}},
        {.name = "use",
         .title = "Use",
         .columns = {{"load", "load", "", std::vector<words::Said>{"saw", "pump", "pump"}},
                     {"limit", "limit", "", std::vector<words::Said>{"surge", "surge", "fuse"}},
                     {"likely", "likely", "%", std::vector<double>{80.0, 900.0, 50.0}}}},
        {.name = "start",
         .title = "Start",
         .columns = {{"at", "at", "s", std::vector<double>{0.0, 0.5, 1.0}},
                     {"current", "current", "A", std::vector<double>{40.0, 30.0, 9.0}}}}};
    return answer;
}

class Answered : public testing::Test {
  protected:
    void SetUp() override {
        AnswerRunner::set_asker([](const QString&, const QString&, const touch::Asks&,
                                   const QString&) { return touch::answer_view_of(by_hand()); });
        runner = std::make_unique<AnswerRunner>();
        document.openExample();
        runner->set_question("sun");
        runner->set_document(&document);
        ASSERT_TRUE(QTest::qWaitFor([this] { return runner->answered() && !runner->running(); }));
    }
    void TearDown() override { AnswerRunner::set_asker({}); }

    touch::ScenarioDocument document;
    std::unique_ptr<AnswerRunner> runner;
};

TEST_F(Answered, bars_stand_on_one_scale_and_say_their_range) {
    RangeBars bars;
    const QAbstractItemModelTester tester(&bars,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    bars.set_series("days");
    bars.set_names("date");
    bars.set_low("low");
    bars.set_likely("likely");
    bars.set_high("high");
    bars.set_runner(runner.get());
    ASSERT_EQ(bars.count(), 2);
    EXPECT_EQ(bars.top(), "2 kWh");
    EXPECT_EQ(bars.index(0).data(RangeBars::LabelRole), "Thu");
    EXPECT_EQ(bars.index(0).data(RangeBars::TextRole), "900 Wh (200 Wh to 1.8 kWh)");
    EXPECT_DOUBLE_EQ(bars.index(0).data(RangeBars::LikelyRole).toDouble(), 0.45);
    EXPECT_DOUBLE_EQ(bars.index(0).data(RangeBars::HighRole).toDouble(), 0.9);
    EXPECT_DOUBLE_EQ(bars.index(1).data(RangeBars::LowRole).toDouble(), 0.0);
    EXPECT_TRUE(bars.spoken().startsWith("Thu 900 Wh"));
}

TEST_F(Answered, bars_of_one_group_are_held_against_their_limit) {
    RangeBars bars;
    bars.set_series("use");
    bars.set_group("load");
    bars.set_only("pump");
    bars.set_names("limit");
    bars.set_likely("likely");
    bars.set_limit(100.0);
    bars.set_runner(runner.get());
    EXPECT_EQ(bars.groups(), (QStringList{"saw", "pump"}));
    ASSERT_EQ(bars.count(), 2);
    EXPECT_EQ(bars.index(0).data(RangeBars::LabelRole), "surge");
    EXPECT_DOUBLE_EQ(bars.limit_at(), 1.0 / RangeBars::most_limits);
    EXPECT_DOUBLE_EQ(bars.index(0).data(RangeBars::LikelyRole).toDouble(), 1.0);  // cut off
    EXPECT_EQ(bars.index(0).data(RangeBars::TextRole), "900 %");
    EXPECT_DOUBLE_EQ(bars.index(1).data(RangeBars::LikelyRole).toDouble(), 50.0 / 250.0);
}

TEST_F(Answered, a_table_that_is_not_there_gives_no_bars) {
    RangeBars bars;
    bars.set_series("no such");
    bars.set_runner(runner.get());
    EXPECT_EQ(bars.count(), 0);
}

TEST_F(Answered, a_curve_has_its_points_ticks_and_words) {
    Curve curve;
    curve.set_series("start");
    curve.set_across("at");
    curve.set_up("current");
    curve.set_runner(runner.get());
    ASSERT_TRUE(curve.present());
    EXPECT_EQ(curve.points().size(), 3);
    EXPECT_DOUBLE_EQ(curve.width(), 1.0);
    EXPECT_GT(curve.top(), 40.0);
    EXPECT_EQ(curve.spoken(), "current from 40 A to 9 A, at most 40 A");
    EXPECT_EQ(curve.ticks_up().first().toMap()["text"], "0 A");
}

TEST(shown_amount, writes_units_as_people_do) {
    EXPECT_EQ(touch::shown_amount(1234.0, "W.h"), "1.23 kWh");
    EXPECT_EQ(touch::shown_amount(12.5, "%"), "12.5 %");
    EXPECT_EQ(touch::shown_amount(3.0, "1"), "3");
    EXPECT_EQ(touch::shown_amount(2.0, ""), "2");
}

}  // namespace
