#include "models/fields/loads_model.hpp"

#include <algorithm>

#include <QAbstractItemModelTester>
#include <QTest>
#include <gtest/gtest.h>

#include "models/fields/appliances_model.hpp"
#include "models/words/plan_text.hpp"
#include "models/words/told.hpp"
#include "motor/appliances/appliances.hpp"

namespace {

using touch::AppliancesModel;
using touch::LoadsModel;
using touch::PlanRunner;
using touch::ScenarioDocument;

class Loads : public testing::Test {
  protected:
    void SetUp() override {
        document.openExample();
        loads.set_document(&document);
    }
    QString role(int row, LoadsModel::Role role) const {
        return loads.index(row).data(role).toString();
    }

    ScenarioDocument document;
    LoadsModel loads;
    QAbstractItemModelTester tester{&loads, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(Loads, say_what_each_draws_and_when_and_how_sure_that_is) {
    ASSERT_EQ(loads.count(), 5);
    EXPECT_EQ(role(1, LoadsModel::NameRole), "furnace blower");
    EXPECT_EQ(role(1, LoadsModel::DrawRole), "120 W, 10 min of every 30 min");
    EXPECT_EQ(role(1, LoadsModel::EvidenceRole), "a guess");
    EXPECT_EQ(role(2, LoadsModel::DrawRole), "2 of 9 W, 06:30-08:00, 16:30-22:30");
    EXPECT_EQ(role(2, LoadsModel::EvidenceRole), "metered");
}

TEST_F(Loads, show_what_the_plan_says_they_take_a_day) {
    PlanRunner::set_planner({});
    PlanRunner plan;
    loads.set_plan(&plan);
    plan.set_document(&document);
    ASSERT_TRUE(QTest::qWaitFor([&] { return plan.answered() && !plan.running(); }));
    EXPECT_EQ(role(0, LoadsModel::PerDayRole),
              "654 Wh a day");  // 300 kWh / 365, 0.7955 of it at 18 degC
    EXPECT_EQ(role(1, LoadsModel::PerDayRole), "960 Wh a day");  // 120 W a third of the time
    EXPECT_DOUBLE_EQ(loads.index(1).data(LoadsModel::ShareRole).toDouble(), 1.0);
    EXPECT_NEAR(loads.index(0).data(LoadsModel::ShareRole).toDouble(), 654.0 / 960.0, 1e-3);
}

TEST_F(Loads, one_like_the_library_is_added_and_taken_back) {
    const QString before = document.text();
    const int number = loads.addLike("toaster");
    EXPECT_EQ(number, 5);
    EXPECT_EQ(role(number, LoadsModel::NameRole), "toaster");
    EXPECT_EQ(role(number, LoadsModel::EvidenceRole), "a guess");
    // Nothing is taken away: what stood before the new lines and what stands behind them is whole.
    const QString after = document.text();
    const qsizetype begins = std::ranges::mismatch(before, after).in1 - before.begin();
    EXPECT_TRUE(after.endsWith(before.mid(begins)));
    document.undo();
    EXPECT_EQ(document.text(), before);
    EXPECT_EQ(loads.count(), 5);
}

TEST_F(Loads, two_of_a_kind_have_two_names) {
    loads.addLike("toaster");
    const int second = loads.addLike("toaster");
    EXPECT_EQ(role(second, LoadsModel::NameRole), "toaster 2");
}

TEST_F(Loads, every_appliance_of_the_library_can_be_added_and_planned) {
    for (const motor::Appliance& appliance : motor::appliances()) {
        EXPECT_GE(loads.addLike(QString::fromStdString(appliance.name)), 0) << appliance.name;
    }
    EXPECT_TRUE(touch::plan_text(document.text()).answered);
}

TEST_F(Loads, one_is_taken_out) {
    EXPECT_TRUE(loads.remove(0));
    EXPECT_EQ(loads.count(), 4);
    EXPECT_EQ(role(0, LoadsModel::NameRole), "furnace blower");
    EXPECT_FALSE(document.text().contains("name = \"chest freezer\""));
}

TEST(appliances_model, narrows_by_a_part_of_any_of_its_names) {
    AppliancesModel appliances;
    const QAbstractItemModelTester tester(&appliances,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(appliances.count(), static_cast<int>(motor::appliances().size()));
    appliances.set_wanted("deep fr");
    ASSERT_EQ(appliances.count(), 1);
    EXPECT_EQ(appliances.index(0).data(AppliancesModel::NameRole), "chest freezer");
    EXPECT_EQ(appliances.index(0).data(AppliancesModel::DetailRole),
              "100 W while on (70 W to 150 W), on 30 % of the time");
    appliances.set_wanted("zzz");
    EXPECT_EQ(appliances.count(), 0);
}

class LoadsInGerman : public Loads {
  protected:
    void SetUp() override {
        Loads::SetUp();
        touch::set_language_wished(*words::language("de"));
    }
    void TearDown() override { touch::set_language_wished(words::english()); }
};

// The list is searched and shown in the person's language; the file has the list's own name.
TEST_F(LoadsInGerman, an_appliance_is_found_named_and_added) {
    AppliancesModel appliances;
    appliances.set_wanted("gefriertr");
    ASSERT_EQ(appliances.count(), 1);
    EXPECT_EQ(appliances.index(0).data(AppliancesModel::NameRole), "Gefriertruhe");
    EXPECT_EQ(appliances.index(0).data(AppliancesModel::KeyRole), "chest freezer");
    const int number = loads.addLike("chest freezer");
    ASSERT_GE(number, 0);
    EXPECT_EQ(role(number, LoadsModel::NameRole), "Gefriertruhe");
    EXPECT_EQ(role(number, LoadsModel::EvidenceRole), QStringLiteral("geschätzt"));
    EXPECT_TRUE(document.text().contains("like = \"chest freezer\""));
}

}  // namespace
