#include "models/now/now_clock.hpp"

#include <optional>

#include <QTest>
#include <gtest/gtest.h>

#include "models/now/first_page.hpp"
#include "units/clock.hpp"

namespace {

using touch::NowClock;
using touch::ScenarioDocument;

// The example is out from Wednesday 14 January 2026 18:00, four days.
class ClockOfLog : public testing::Test {
  protected:
    void SetUp() override {
        NowClock::set_source([this] { return computer; });
        document.openExample();
        clock.emplace();
        clock->set_document(&document);
    }
    void TearDown() override { NowClock::set_source({}); }
    void computer_says(const char* at) {
        computer = *units::read_local_time(at);
        clock->look();
    }
    void add(const QString& text) { document.set_text(document.text() + text); }

    std::optional<units::LocalTime> computer = *units::read_local_time("2026-01-15T21:30:42");
    ScenarioDocument document;
    std::optional<NowClock> clock;
};

TEST_F(ClockOfLog, says_the_minute_within_the_outage) {
    EXPECT_EQ(clock->at(), "2026-01-15T21:30:00");
    EXPECT_TRUE(clock->within());
    EXPECT_EQ(clock->asked(), "2026-01-15T21:30:00");
    EXPECT_TRUE(clock->outside().isEmpty());
}

TEST_F(ClockOfLog, asks_again_after_some_minutes_and_at_once_after_hours_off) {
    computer_says("2026-01-15T21:33:00");
    EXPECT_EQ(clock->at(), "2026-01-15T21:33:00");
    EXPECT_EQ(clock->asked(), "2026-01-15T21:30:00");
    computer_says("2026-01-15T21:35:00");
    EXPECT_EQ(clock->asked(), "2026-01-15T21:35:00");
    computer_says("2026-01-16T07:10:00");
    EXPECT_EQ(clock->asked(), "2026-01-16T07:10:00");
}

TEST_F(ClockOfLog, asks_of_the_minute_in_which_something_is_written_down) {
    computer_says("2026-01-15T21:33:00");
    add("\n[[log]]\nat = 2026-01-15T21:33:00\nshows = \"60 %\"\n");
    EXPECT_EQ(clock->asked(), "2026-01-15T21:33:00");
}

TEST_F(ClockOfLog, tells_that_the_outage_is_not_now) {
    computer_says("2026-11-30T09:00:00");
    EXPECT_FALSE(clock->within());
    EXPECT_TRUE(clock->over());
    EXPECT_TRUE(clock->asked().isEmpty());
    EXPECT_TRUE(clock->outside().contains("was over")) << clock->outside().toStdString();
    EXPECT_EQ(clock->guess(), "2026-01-14T18:00:00");
    computer_says("2026-01-14T17:59:00");
    EXPECT_FALSE(clock->within());
    EXPECT_FALSE(clock->over());
    computer.reset();
    clock->look();
    EXPECT_FALSE(clock->within());
}

TEST_F(ClockOfLog, doubts_a_clock_that_is_behind_the_log) {
    add("\n[[log]]\nat = 2026-01-15T23:30:00\nshows = \"60 %\"\n");
    EXPECT_TRUE(clock->within());
    EXPECT_FALSE(clock->doubt().isEmpty());
    computer_says("2026-01-15T23:31:00");
    EXPECT_TRUE(clock->doubt().isEmpty());
}

TEST_F(ClockOfLog, takes_off_what_the_file_says_it_is_ahead) {
    add("\n[clock]\nahead_by = \"90 min\"\n");
    EXPECT_EQ(clock->at(), "2026-01-15T20:00:00");
    EXPECT_FALSE(clock->off().isEmpty());
    document.undo();
    EXPECT_EQ(clock->at(), "2026-01-15T21:30:00");
}

TEST_F(ClockOfLog, begins_the_outage_now_and_lets_it_last_longer) {
    computer_says("2026-02-03T06:12:00");
    EXPECT_TRUE(clock->beginNow());
    EXPECT_TRUE(document.text().contains("starts = 2026-02-03T06:12:00"));
    EXPECT_TRUE(clock->within());
    computer_says("2026-02-07T09:00:00");
    EXPECT_FALSE(clock->within());
    EXPECT_TRUE(clock->lastLonger());
    EXPECT_TRUE(clock->within());
    EXPECT_TRUE(document.text().contains("lasts = \"6 d\"") ||
                document.text().contains("lasts  = \"6 d\""));
}

TEST_F(ClockOfLog, is_put_right_by_what_somebody_else_s_watch_says) {
    computer_says("2026-11-30T09:17:20");
    EXPECT_TRUE(clock->setRight("2026-01-15T21:40:00")) << document.trouble().toStdString();
    EXPECT_TRUE(clock->within());
    EXPECT_EQ(clock->at(), "2026-01-15T21:40:00");
    EXPECT_TRUE(document.text().contains("ahead_by"));
    computer_says("2026-11-30T09:27:20");
    EXPECT_EQ(clock->at(), "2026-01-15T21:50:00");
    EXPECT_TRUE(clock->setRight("2026-01-15T21:49:00"));
    EXPECT_EQ(clock->at(), "2026-01-15T21:49:00");
    document.undo();
    document.undo();
    EXPECT_FALSE(clock->within());
}

TEST_F(ClockOfLog, steps_over_midnight) {
    EXPECT_EQ(NowClock::stepped("2026-01-15T00:05:00", -10), "2026-01-14T23:55:00");
    EXPECT_EQ(NowClock::stepped("nonsense", -10), "nonsense");
}

TEST_F(ClockOfLog, a_file_whose_outage_runs_is_begun_with_now) {
    ScenarioDocument other;
    touch::FirstPage first;
    int wanted = 0;
    QObject::connect(&first, &touch::FirstPage::nowWanted, [&wanted] { ++wanted; });
    first.set_document(&other);
    other.openExample();
    EXPECT_EQ(wanted, 1);
    computer = *units::read_local_time("2026-11-30T09:00:00");
    touch::FirstPage later;
    ScenarioDocument third;
    QObject::connect(&later, &touch::FirstPage::nowWanted, [&wanted] { ++wanted; });
    later.set_document(&third);
    third.openExample();
    EXPECT_EQ(wanted, 1);
}

}  // namespace
