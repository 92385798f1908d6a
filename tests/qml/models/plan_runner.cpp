#include "models/plan_runner.hpp"

#include <atomic>
#include <chrono>
#include <thread>

#include <QCoreApplication>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

#include "models/words/scenario_text.hpp"

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

// A planner and a weigher that tell which of them made what, and count.
class Counted {
  public:
    Counted() {
        PlanRunner::set_planner(
            [this](const QString& text, const QString&) {
                ++first;
                return view(text, "few");
            },
            [this](const QString& text, const QString&) {
                ++whole;
                return view(text, "all");
            });
    }
    ~Counted() { PlanRunner::set_planner({}); }
    std::atomic<int> first = 0;
    std::atomic<int> whole = 0;

  private:
    static DaysView view(const QString& text, const QString& members) {
        DaysView made;
        made.answered = true;
        made.sentence = QString::number(touch::counts_in(text).packs->above);
        made.range = members;
        return made;
    }
};

// The document's steps say what the next touch may ask for: it is there before the touch.
TEST(plan_runner, what_the_next_touch_asks_for_is_shown_at_once_and_then_made_again) {
    const Counted counted;
    touch::ScenarioDocument document;
    PlanRunner runner;
    document.openExample();
    runner.set_document(&document);
    ASSERT_TRUE(QTest::qWaitFor([&] { return runner.range() == "all" && !runner.looks_ahead(); }));
    EXPECT_EQ(counted.first, 5);  // and one more and one less of packs and of panels
    const QString before = runner.sentence();
    document.packs()->more();
    EXPECT_NE(runner.sentence(), before);  // without a turn of the loop
    EXPECT_EQ(runner.range(), "few");
    EXPECT_TRUE(runner.weighing());
    ASSERT_TRUE(QTest::qWaitFor([&] { return runner.range() == "all"; }));
    EXPECT_EQ(counted.whole, 2);
    document.undo();
    EXPECT_EQ(runner.sentence(), before);
    EXPECT_EQ(runner.range(), "all");  // as it was weighed before, and is again
    EXPECT_TRUE(runner.weighing());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.weighing(); }));
    EXPECT_EQ(counted.whole, 3);
}

TEST(plan_runner, a_text_that_is_told_again_is_planned_again) {
    const Counted counted;
    touch::ScenarioDocument document;
    PlanRunner runner;
    document.openExample();
    runner.set_document(&document);
    const auto settled = [&] { return !runner.running() && !runner.weighing(); };
    ASSERT_TRUE(QTest::qWaitFor(settled));
    QTest::qWait(50);
    const int before = counted.first;
    document.tellAgain();
    EXPECT_TRUE(runner.running());
    ASSERT_TRUE(QTest::qWaitFor(settled));
    EXPECT_GT(counted.first, before);
    EXPECT_EQ(counted.whole, 2);
}

TEST(plan_runner, a_trial_is_of_few_members_and_ends_with_the_document) {
    const Counted counted;
    touch::ScenarioDocument document;
    PlanRunner runner;
    document.openExample();
    runner.set_document(&document);
    const auto settled = [&] { return !runner.running() && !runner.weighing(); };
    ASSERT_TRUE(QTest::qWaitFor(settled));
    const QString before = runner.sentence();
    const int whole = counted.whole;
    runner.set_trial(document.text().replace("count = 3", "count = 30"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return runner.sentence() != before; }));
    EXPECT_EQ(counted.whole, whole);
    runner.set_trial({});
    EXPECT_EQ(runner.sentence(), before);
    ASSERT_TRUE(QTest::qWaitFor(settled));
    EXPECT_EQ(runner.range(), "all");
    EXPECT_EQ(runner.sentence(), before);
}

}  // namespace
