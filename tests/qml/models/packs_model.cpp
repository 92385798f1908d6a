#include "models/fields/packs_model.hpp"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

#include "units/text.hpp"

namespace {

using touch::PacksModel;
using touch::ScenarioDocument;

class Packs : public testing::Test {
  protected:
    void SetUp() override {
        document.openExample();
        packs.set_document(&document);
    }
    QString role(int row, PacksModel::Role role) const {
        return packs.index(row).data(role).toString();
    }

    ScenarioDocument document;
    PacksModel packs;
    QAbstractItemModelTester tester{&packs, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(Packs, say_how_many_what_they_hold_and_how_they_are) {
    ASSERT_EQ(packs.count(), 2);
    EXPECT_EQ(role(1, PacksModel::NameRole), "expansion");
    EXPECT_EQ(role(1, PacksModel::HeldRole), "3 of 100 Ah, 12.8 V, lithium iron phosphate");
    EXPECT_EQ(role(0, PacksModel::StateRole), "full, new");
}

TEST_F(Packs, an_old_half_empty_pack_on_a_long_lead_says_so) {
    const auto text =
        touch::pack_text({.name = "b",
                          .count = 1,
                          .chemistry = scenario::Chemistry::agm,
                          .capacity = 80.0 * units::ampere_hour,
                          .charge = units::StateOfCharge(0.5),
                          .lead_resistance = units::read<units::Resistance>("4 mOhm").value(),
                          .age = scenario::Age::end_of_life});
    EXPECT_EQ(text.state, QStringLiteral("50 % full, old, lead 4 mΩ"));
    EXPECT_EQ(text.held, "1 of 80 Ah, lead, sealed (AGM)");
}

TEST_F(Packs, another_kind_takes_what_it_does_not_say_from_the_first) {
    EXPECT_EQ(packs.add(), 2);
    EXPECT_EQ(role(2, PacksModel::HeldRole), "1 of 100 Ah, 12.8 V, lithium iron phosphate");
    EXPECT_TRUE(packs.remove(2));
    EXPECT_EQ(packs.count(), 2);
}

TEST_F(Packs, the_last_pack_stays) {
    EXPECT_TRUE(packs.remove(1));
    EXPECT_FALSE(packs.remove(0));
}

}  // namespace
