// Five questions make a scenario that can be read, after each answer.
#include "models/file/first_run.hpp"

#include <gtest/gtest.h>

#include "models/line_picture.hpp"
#include "models/words/plan_text.hpp"
#include "scenario/file/read.hpp"

namespace {

using touch::FirstRun;
using touch::LinePicture;
using touch::ScenarioDocument;

scenario::Scenario made(const FirstRun& run) {
    const auto read = scenario::read_scenario(run.text().toStdString(), {});
    EXPECT_TRUE(read) << run.text().toStdString();
    if (!read) return {};
    EXPECT_TRUE(read->warnings.empty()) << run.text().toStdString();
    return read->scenario;
}

TEST(first_run, every_answer_to_every_question_makes_a_file_that_can_be_read) {
    FirstRun run;
    for (int question = 0; question < FirstRun::questions(); ++question) {
        for (const QVariant& option : run.options()) {
            run.choose(option.toMap()["key"].toString());
            made(run);
        }
        run.forth();
    }
    EXPECT_EQ(made(run).loads.size(), 12U);
    EXPECT_TRUE(made(run).outage.open_ended);
    EXPECT_EQ(run.number(), FirstRun::questions() - 1);
}

TEST(first_run, what_was_picked_is_in_the_file_and_goes_again) {
    FirstRun run;
    run.choose("refrigerator");
    run.choose("LED lamp");
    ASSERT_EQ(made(run).loads.size(), 2U);
    run.choose("LED lamp");
    ASSERT_EQ(made(run).loads.size(), 1U);
    EXPECT_EQ(made(run).loads.front().priority, 2);
    run.forth();
    run.choose("agm");
    run.setCount(3);
    EXPECT_EQ(made(run).packs.front().count, 3);
    EXPECT_EQ(made(run).packs.front().chemistry, scenario::Chemistry::agm);
    run.forth();
    EXPECT_TRUE(made(run).panels.empty());
    run.choose("200");
    ASSERT_EQ(made(run).panels.size(), 1U);
    run.setCount(0);
    EXPECT_TRUE(made(run).panels.empty());
    run.setCount(99);
    EXPECT_EQ(made(run).panels.front().count, FirstRun::most());
    run.forth();
    run.forth();
    run.setPlace("Tacoma WA");
    EXPECT_EQ(made(run).place.name, std::string("Tacoma WA"));
}

TEST(first_run, the_first_answer_begins_a_plan_and_each_further_one_is_one_step_back) {
    ScenarioDocument document;
    document.openExample();
    const QString example = document.text();
    FirstRun run;
    run.setProperty("document", QVariant::fromValue(&document));
    run.forth();
    EXPECT_EQ(document.text(), example);  // a question that is skipped changes nothing
    run.back();
    run.choose("refrigerator");
    EXPECT_FALSE(document.example());
    EXPECT_EQ(document.text(), run.text());
    const QString first = run.text();
    run.choose("phone charger");
    document.undo();
    EXPECT_EQ(document.text(), first);
    EXPECT_TRUE(touch::plan_text(document.text()).answered);
}

TEST(first_run, has_a_picture_for_each_thing) {
    FirstRun run;
    for (int question = 0; question < 3; ++question, run.forth())
        for (const QVariant& option : run.options())
            EXPECT_TRUE(LinePicture::names().contains(option.toMap()["picture"].toString()));
}

}  // namespace
