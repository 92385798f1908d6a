#include "models/plan_runner.hpp"

#include <atomic>
#include <chrono>
#include <thread>

#include <QCoreApplication>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace {

using touch::DaysView;
using touch::PlanRunner;

// Plans by repeating the text, taking its time; counts its runs.
class Slow {
  public:
    Slow() {
        PlanRunner::set_planner([this](const QString& text, const QString&) {
            ++runs;
            std::this_thread::sleep_for(std::chrono::milliseconds(30));
            DaysView view;
            view.answered = true;
            view.sentence = text;
            return view;
        });
    }
    ~Slow() { PlanRunner::set_planner({}); }
    std::atomic<int> runs = 0;
};

TEST(plan_runner, shows_what_was_planned) {
    const Slow slow;
    PlanRunner runner;
    runner.request("one");
    EXPECT_TRUE(runner.running());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.running(); }));
    EXPECT_EQ(runner.sentence(), "one");
}

TEST(plan_runner, lets_a_run_finish_and_of_those_that_wait_plans_only_the_newest) {
    Slow slow;
    PlanRunner runner;
    const QSignalSpy planned(&runner, &PlanRunner::planned);
    for (int i = 0; i < 50; ++i)
        runner.request(QString::number(i));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.running(); }));
    EXPECT_EQ(slow.runs, 2);  // the first and the newest
    EXPECT_EQ(planned.count(), 2);
    EXPECT_EQ(runner.sentence(), "49");
}

TEST(plan_runner, keeps_feeding_the_screen_while_a_finger_keeps_tapping) {
    const Slow slow;
    PlanRunner runner;
    const QSignalSpy planned(&runner, &PlanRunner::planned);
    for (int i = 0; i < 40; ++i) {
        runner.request(QString::number(i));
        QTest::qWait(10);
    }
    // 400 ms of taps at 30 ms a run: several answers come in between, not one at the end.
    EXPECT_GE(planned.count(), 3);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.running(); }));
    EXPECT_EQ(runner.sentence(), "39");
}

TEST(plan_runner, can_be_left_in_the_middle_of_a_run) {
    Slow slow;
    {
        PlanRunner runner;
        runner.request("gone");
        QTest::qWait(5);
    }
    QCoreApplication::processEvents();
    EXPECT_LE(slow.runs, 1);
}

}  // namespace
