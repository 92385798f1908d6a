// Each list of the screen keeps the rules of Qt's models while the scenario changes under it.
#include <QAbstractItemModelTester>
#include <QTest>
#include <gtest/gtest.h>

#include "models/answer_runner.hpp"
#include "models/days/range_bars.hpp"
#include "models/days/sun_controls.hpp"
#include "models/fields/appliances_model.hpp"
#include "models/fields/fields_model.hpp"
#include "models/fields/keys_model.hpp"
#include "models/fields/loads_model.hpp"
#include "models/fields/packs_model.hpp"
#include "models/plan_runner.hpp"
#include "support/hand_made_plan.hpp"

namespace {

class EveryModel : public testing::Test {
  protected:
    void watch(QAbstractItemModel* model) {
        testers.push_back(std::make_unique<QAbstractItemModelTester>(
            model, QAbstractItemModelTester::FailureReportingMode::Fatal));
    }
    void settle(const touch::PlanRunner& plan, const touch::AnswerRunner& answer) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !plan.running() && !answer.running(); }, 30000));
    }
    std::vector<std::unique_ptr<QAbstractItemModelTester>> testers;
};

TEST_F(EveryModel, keeps_the_rules_through_changes_and_the_way_back) {
    touch::PlanRunner::set_planner(touch_tests::hand_made_view);
    touch::ScenarioDocument document;
    document.openExample();
    touch::PlanRunner plan;
    touch::AnswerRunner answer;
    touch::RangeBars bars;
    touch::LoadsModel loads;
    touch::PacksModel packs;
    touch::FieldsModel fields;
    touch::KeysModel keys;
    touch::AppliancesModel appliances;
    touch::PlacesModel places;
    for (QAbstractItemModel* model : std::initializer_list<QAbstractItemModel*>{
             plan.days(), plan.findings(), plan.cautions(), plan.assumptions(), plan.figures(),
             plan.working(), answer.findings(), answer.figures(), &bars, &loads, &packs, &fields,
             &keys, &appliances, &places})
        watch(model);
    plan.set_document(&document);
    answer.set_document(&document);
    answer.set_question("storage");
    bars.set_runner(&answer);
    bars.set_series("months");
    loads.set_document(&document);
    loads.set_plan(&plan);
    packs.set_document(&document);
    fields.set_document(&document);
    keys.set_document(&document);
    settle(plan, answer);
    for (const QString table : {"load", "pack", "inverter", "circuit", "circuit[0].links", "goal",
                                "place", "charger", "charge_controller", "case", "outage"})
        fields.set_table(table);
    keys.set_given_only(false);
    keys.set_wanted("inverter");
    appliances.set_wanted("pump");
    places.set_wanted("miami");
    loads.addLike("toaster");
    packs.add();
    document.days()->less();
    settle(plan, answer);
    while (document.can_undo())
        document.undo();
    settle(plan, answer);
    EXPECT_EQ(testers.size(), 15U);
    touch::PlanRunner::set_planner({});
}

}  // namespace
