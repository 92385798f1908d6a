#include "models/now/now_view.hpp"

#include <QTest>
#include <gtest/gtest.h>

#include "models/now/now_runner.hpp"

namespace {

QString lived_through() {
    touch::ScenarioDocument document;
    document.openExample();
    return document.text() +
           "\n[[log]]\nat = 2026-01-15T06:00:00\nshows = \"70 %\"\n"
           "[[log]]\nat = 2026-01-15T20:05:00\nhappened = \"switched off\"\n"
           "load = \"furnace blower\"\n";
}

TEST(now_view, says_three_sentences_and_pins_each_entry) {
    const auto view = touch::now_view(lived_through(), {}, "2026-01-15T21:30:00");
    ASSERT_TRUE(view.answer.answered);
    ASSERT_EQ(view.leading.size(), view.act_first ? 4 : 3);
    EXPECT_TRUE(view.leading.back().startsWith("Read next") ||
                view.leading.back().startsWith("No one reading"));
    EXPECT_NEAR(view.now, 27.5 / 96.0, 1e-6);
    ASSERT_TRUE(view.days);
    ASSERT_EQ(view.days->pins.size(), 2);
    EXPECT_NEAR(view.days->pins.front().at, 12.0 / 96.0, 1e-9);
    EXPECT_EQ(view.days->moments.size(), 97);
}

TEST(now_view, what_burnt_so_far_is_solid_and_the_fan_begins_now) {
    const auto view = touch::now_view(lived_through(), {}, "2026-01-15T21:30:00");
    const auto& low = view.days->stored_low;
    const auto& high = view.days->stored_high;
    for (const QPointF& point : low)
        if (point.x() < 27.5) EXPECT_EQ(point.y(), 0.0);
    double widest = 0.0;
    for (qsizetype i = 0; i < std::min(low.size(), high.size()); ++i)
        widest = std::max(widest, high.back().y() - low.back().y());
    EXPECT_EQ(high.front().y(), view.days->stored.front().y());
    EXPECT_GE(widest, 0.0);
    EXPECT_EQ(low.back().x(), high.back().x());
}

TEST(now_view, refuses_a_moment_outside_the_outage_in_words) {
    const auto view = touch::now_view(lived_through(), {}, "2026-13-99T00:00:00");
    EXPECT_FALSE(view.answer.answered);
    EXPECT_FALSE(view.leading.front().isEmpty());
}

TEST(now_runner, asks_again_when_something_is_written_down) {
    int asked = 0;
    touch::NowRunner::set_asker([&asked](const QString&, const QString&, const QString& at) {
        ++asked;
        touch::NowView view{.answer = {.answered = true},
                            .days = std::make_shared<touch::DaysView>()};
        view.leading << at;
        return view;
    });
    touch::ScenarioDocument document;
    document.openExample();
    touch::NowRunner runner;
    runner.set_document(&document);
    EXPECT_EQ(asked, 0);
    runner.set_at("2026-01-15T21:30:00");
    ASSERT_TRUE(QTest::qWaitFor([&] { return runner.answered() && !runner.running(); }));
    EXPECT_EQ(runner.leading().front(), "2026-01-15T21:30:00");
    document.set_text(document.text() + "# a comment\n");
    ASSERT_TRUE(QTest::qWaitFor([&] { return asked == 2 && !runner.running(); }));
    touch::NowRunner::set_asker({});
}

}  // namespace
