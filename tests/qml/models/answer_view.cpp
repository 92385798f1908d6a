#include "models/answer_view.hpp"

#include <QAbstractItemModelTester>
#include <QMutex>
#include <QMutexLocker>
#include <QTest>
#include <gtest/gtest.h>

#include "models/answer_runner.hpp"
#include "models/ask_question.hpp"

namespace {

using answers::Absent;
using answers::List;
using answers::Member;
using answers::Members;
using answers::Quantity;
using touch::AnswerRunner;
using touch::AnswerView;
using touch::RowText;

TEST(figures_of, writes_every_kind_of_value_with_its_name) {
    const Members members{
        {"lasts", "it lasts", {Quantity{26.8, "h", "26.8 h"}}},
        {"survives", "", {true}},
        {"limited_by", "ended by", {answers::Code{"low_voltage", "the inverter switches off"}}},
        {"kind", "", {answers::Code{"for_programs", {}}}},
        {"chance", "", {Absent{"the outage is longer than ten days"}}},
        {"energy", "energy", {Members{{"sun_offered", "", {Quantity{1.0, "W.h", "1 Wh"}}}}}}};
    const QList<RowText> rows = touch::figures_of(members);
    ASSERT_EQ(rows.size(), 5);
    EXPECT_EQ(rows[0].label, "it lasts");
    EXPECT_EQ(rows[0].value, "26.8 h");
    EXPECT_EQ(rows[1].label, "survives");
    EXPECT_EQ(rows[1].value, "yes");
    EXPECT_EQ(rows[2].value, "the inverter switches off");
    EXPECT_EQ(rows[3].detail, "the outage is longer than ten days");
    EXPECT_EQ(rows[4].section, "energy");
    EXPECT_EQ(rows[4].label, "sun offered");
}

TEST(figures_of, names_the_items_of_a_list_by_their_own_name) {
    const Members saw{{"name", "", {std::string("saw")}}, {"verdict", "", {std::string("starts")}}};
    const QList<RowText> rows =
        touch::figures_of({{"loads", "", {List{{saw}, {std::int64_t{7}}}}}});
    ASSERT_EQ(rows.size(), 3);
    EXPECT_EQ(rows[1].section, "saw");
    EXPECT_EQ(rows[1].value, "starts");
    EXPECT_EQ(rows[2].label, "loads 2");
}

TEST(table_of, has_a_cell_for_every_heading) {
    const auto table =
        touch::table_of({.name = "days",
                         .title = "Day by day",
                         .columns = {{"day", "day", "", std::vector<words::Said>{"Thu", "Fri"}},
                                     {"sun", "sun", "W.h", std::vector<double>{1234.56, 0.5}},
                                     {"warmth", "warmth", "Cel", std::vector<double>{-3.0}}}});
    EXPECT_EQ(table.headings, (QStringList{"day", "sun (Wh)", "warmth (°C)"}));
    ASSERT_EQ(table.rows.size(), 2);
    EXPECT_EQ(table.rows[0], (QStringList{"Thu", "1235", QStringLiteral("−3")}));
    EXPECT_EQ(table.rows[1], (QStringList{"Fri", "0.5", ""}));
}

TEST(ask_question, answers_as_the_command_line_does) {
    touch::ScenarioDocument document;
    document.openExample();
    const AnswerView view = touch::ask_question("outage", document.text(), {}, {});
    EXPECT_TRUE(view.answered);
    EXPECT_TRUE(view.sentence.startsWith("Count on it until"));
    EXPECT_FALSE(view.working.isEmpty());
    EXPECT_FALSE(view.tables.isEmpty());
    EXPECT_NE(view.answer, nullptr);
}

TEST(ask_question, a_file_that_cannot_be_used_is_told_line_by_line) {
    const AnswerView view =
        touch::ask_question("outage", "format = 1\n[outage]\nlasts = 3\n", {}, {});
    EXPECT_FALSE(view.answered);
    EXPECT_FALSE(view.findings.isEmpty());
}

TEST(ask_question, what_is_left_open_and_cannot_be_used_is_told) {
    touch::ScenarioDocument document;
    document.openExample();
    const AnswerView view = touch::ask_question("gauge", document.text(), {.reads = "12.9 A"}, {});
    EXPECT_FALSE(view.answered);
    ASSERT_FALSE(view.findings.isEmpty());
    EXPECT_TRUE(view.findings[0].text.contains("12.9 A"));
}

TEST(answer_runner, asks_again_after_every_change_and_ends_with_the_newest) {
    AnswerRunner::set_asker(
        [](const QString& question, const QString& text, const touch::Asks&, const QString&) {
            AnswerView view;
            view.answered = true;
            view.sentence = question + (text.contains("count = 7") ? " of seven" : " of fewer");
            view.figures = {{.section = {}, .label = "a", .value = "b", .detail = {}}};
            return view;
        });
    touch::ScenarioDocument document;
    document.openExample();
    AnswerRunner runner;
    const QAbstractItemModelTester tester(runner.figures(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    runner.set_question("sun");
    runner.set_document(&document);
    ASSERT_TRUE(QTest::qWaitFor([&] { return runner.answered(); }));
    EXPECT_EQ(runner.sentence(), "sun of fewer");
    for (int tap = 0; tap < 4; ++tap)
        document.packs()->more();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.running(); }));
    EXPECT_EQ(runner.sentence(), "sun of seven");
    EXPECT_EQ(runner.figures()->count(), 1);
    AnswerRunner::set_asker({});
}

TEST(answer_runner, shows_a_first_picture_and_then_the_whole) {
    QStringList asked;
    QMutex guard;
    AnswerRunner::set_asker(
        [&](const QString&, const QString&, const touch::Asks& asks, const QString&) {
            const QMutexLocker lock(&guard);
            asked << QString::number(asks.members);
            AnswerView view;
            view.answered = true;
            view.sentence = asks.members == 0 ? "whole" : "few";
            return view;
        });
    touch::ScenarioDocument document;
    document.openExample();
    AnswerRunner runner;
    runner.set_first_members(64);
    runner.set_question("packs");
    QStringList seen;
    QObject::connect(&runner, &AnswerRunner::shown,
                     [&] { seen << runner.sentence() + (runner.coarse() ? " coarse" : ""); });
    runner.set_document(&document);
    ASSERT_TRUE(QTest::qWaitFor([&] { return runner.sentence() == "whole"; }));
    EXPECT_EQ(seen.first(), "few coarse");
    EXPECT_EQ(seen.last(), "whole");
    EXPECT_EQ(asked.first(), "64");
    AnswerRunner::set_asker({});
}

// What a finger is about to make is asked; once the document holds it, it is not asked again.
TEST(answer_runner, a_trial_is_asked_once) {
    QStringList asked;
    QMutex guard;
    AnswerRunner::set_asker(
        [&](const QString&, const QString& text, const touch::Asks&, const QString&) {
            const QMutexLocker lock(&guard);
            asked << text.right(5);
            AnswerView view;
            view.answered = true;
            view.sentence = text.right(5);
            return view;
        });
    touch::ScenarioDocument document;
    document.openExample();
    AnswerRunner runner;
    runner.set_question("sun");
    runner.set_document(&document);
    const auto settled = [&] { return !runner.running(); };
    ASSERT_TRUE(QTest::qWaitFor(settled));
    const QString tried = document.text() + "# one";
    runner.set_trial(tried);
    ASSERT_TRUE(QTest::qWaitFor(settled));
    EXPECT_EQ(runner.sentence(), "# one");
    document.set_text(tried);
    runner.set_trial({});
    ASSERT_TRUE(QTest::qWaitFor(settled));
    EXPECT_EQ(asked.size(), 2);
    // Let be, it is the document's answer again.
    runner.set_trial(document.text() + "# two");
    runner.set_trial({});
    ASSERT_TRUE(QTest::qWaitFor(settled));
    EXPECT_EQ(runner.sentence(), "# one");
    AnswerRunner::set_asker({});
}

TEST(answer_runner, what_is_stopped_leaves_what_was_shown) {
    touch::ScenarioDocument document;
    document.openExample();
    AnswerRunner runner;
    runner.set_question("packs");
    runner.set_members(200);
    runner.set_document(&document);
    ASSERT_TRUE(QTest::qWaitFor([&] { return runner.answered() && !runner.running(); }, 20000));
    const QString before = runner.sentence();
    double most = 0.0;
    QObject::connect(&runner, &AnswerRunner::progressed,
                     [&] { most = std::max(most, runner.progress()); });
    // So many that they cannot be done before they are stopped.
    runner.set_members(100000);
    ASSERT_TRUE(runner.running());
    ASSERT_TRUE(QTest::qWaitFor([&] { return most > 0.0; }, 20000));
    EXPECT_LT(most, 1.0);
    runner.stop();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.running(); }, 20000));
    EXPECT_EQ(runner.sentence(), before);
    EXPECT_TRUE(runner.answered());
}

}  // namespace
