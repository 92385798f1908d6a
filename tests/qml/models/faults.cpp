// What the engine throws becomes words on the screen, wherever it was asked.
#include <stdexcept>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

#include "models/answer_runner.hpp"
#include "models/fields/keys_model.hpp"
#include "models/plan_runner.hpp"
#include "models/print_desk.hpp"
#include "scenario/file/save.hpp"

namespace {

using touch::ScenarioDocument;

class Faulty : public testing::Test {
  protected:
    void SetUp() override { document.openExample(); }
    void TearDown() override {
        touch::PlanRunner::set_planner({});
        touch::AnswerRunner::set_asker({});
    }
    static touch::DaysView view_or_fault(const QString& text, const QString&) {
        if (text.contains("four nights")) {
            touch::DaysView view;
            view.answered = true;
            return view;
        }
        throw std::runtime_error("a level lies below zero");
    }
    ScenarioDocument document;
};

TEST_F(Faulty, a_plan_that_throws_is_told_shows_no_figures_and_leads_back) {
    touch::PlanRunner::set_planner(view_or_fault);
    touch::PlanRunner plan;
    plan.set_document(&document);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return !plan.running() && !plan.weighing() && plan.answered(); }, 60000));
    const QString good = document.text();
    EXPECT_FALSE(document.has_good());
    document.put("title", "a fault");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !document.fault().isEmpty(); }, 60000));
    EXPECT_EQ(document.fault(), "a level lies below zero");
    EXPECT_FALSE(plan.answered());
    EXPECT_TRUE(plan.findings()->count() > 0);
    EXPECT_TRUE(document.has_good());
    EXPECT_TRUE(document.changed());
    // It is the plan's: no other page is without it.
    document.leavePage();
    EXPECT_FALSE(document.fault().isEmpty());
    document.backToGood();
    EXPECT_EQ(document.text(), good);
    EXPECT_TRUE(document.fault().isEmpty());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !plan.running() && plan.answered(); }, 60000));
}

TEST_F(Faulty, chances_that_throw_are_told) {
    touch::PlanRunner::set_planner(
        view_or_fault,
        [](const QString&, const QString&) -> touch::DaysView { throw std::bad_alloc(); });
    touch::PlanRunner plan;
    plan.set_document(&document);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !document.fault().isEmpty(); }, 60000));
    EXPECT_FALSE(plan.weighing());
    EXPECT_TRUE(plan.chances().isEmpty());
}

TEST_F(Faulty, a_question_that_throws_is_told_and_goes_with_its_page) {
    touch::AnswerRunner::set_asker([](const QString&, const QString&, const touch::Asks&,
                                      const QString&) -> touch::AnswerView { throw 7; });
    touch::AnswerRunner answer;
    answer.set_document(&document);
    answer.set_question("storage");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !document.fault().isEmpty(); }, 60000));
    EXPECT_FALSE(answer.running());
    EXPECT_FALSE(answer.answered());
    document.leavePage();
    EXPECT_TRUE(document.fault().isEmpty());
}

TEST_F(Faulty, of_a_newer_request_nothing_is_told_of_the_older) {
    int asked = 0;
    touch::PlanRunner::set_planner([&asked](const QString&, const QString&) -> touch::DaysView {
        if (++asked == 1) throw std::runtime_error("the older");
        touch::DaysView view;
        view.answered = true;
        return view;
    });
    touch::PlanRunner plan;
    plan.request("one");
    plan.request("two");
    plan.set_document(&document);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !plan.running() && plan.answered(); }, 60000));
    EXPECT_TRUE(document.fault().isEmpty());
}

TEST_F(Faulty, an_edit_that_throws_leaves_the_text_as_it_was) {
    const QString before = document.text();
    const QString trouble = document.change(
        [](const std::string&) -> units::Result<std::string> { throw std::runtime_error("no"); });
    EXPECT_TRUE(trouble.contains("A fault of this program"));
    EXPECT_EQ(document.text(), before);
    EXPECT_EQ(document.fault(), "no");
}

TEST_F(Faulty, who_throws_as_it_hears_of_a_text_does_not_end_the_program) {
    QObject::connect(&document, &ScenarioDocument::textChanged, &document,
                     [] { throw std::runtime_error("no"); });
    document.packs()->more();
    EXPECT_EQ(document.fault(), "no");
    EXPECT_TRUE(document.changed());
}

// Texts that ended the program before.
TEST_F(Faulty, whatever_the_engine_makes_of_them_no_text_ends_the_program) {
    const std::pair<const char*, const char*> values[] = {{"pack[0].temperature", "65 degC"},
                                                          {"pack[0].temperature", "-50 degC"},
                                                          {"case.temperature", "65 degC"},
                                                          {"place.weather_file", "."},
                                                          {"place.weather_file", "/dev/null"}};
    touch::PlanRunner plan;
    touch::PrintDesk desk;
    touch::AnswerRunner answer;
    touch::KeysModel keys;
    plan.set_document(&document);
    desk.set_document(&document);
    answer.set_document(&document);
    answer.set_question("storage");
    keys.set_document(&document);
    const QString before = document.text();
    for (const auto& [key, value] : values) {
        const auto text = scenario::with_value(before.toStdString(), key, value);
        if (!text) continue;
        document.set_text(QString::fromStdString(*text));
        ASSERT_TRUE(QTest::qWaitFor(
            [&] {
                return !plan.running() && !plan.weighing() && !desk.busy() && !answer.running();
            },
            120000));
        EXPECT_TRUE(plan.answered() || plan.findings()->count() > 0) << key << " " << value;
    }
}

}  // namespace
