#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

#include "models/now/log_model.hpp"
#include "units/clock.hpp"

namespace {

using touch::LogModel;
using touch::ScenarioDocument;

constexpr const char* entries = R"(
[[log]]
at = 2026-01-15T06:00:00
shows = "72 %"
[[log]]
at = 2026-01-15T21:00:00
pack = "main"
reads = "12.9 V"
[[log]]
at = 2026-01-15T18:00:00
load = "chest freezer"
metered = { energy = "1.15 kWh", over = "24 h" }
)";

class Log : public testing::Test {
  protected:
    void SetUp() override {
        document.openExample();
        document.set_text(document.text() + entries);
        log.set_document(&document);
    }
    QVariant role(int row, LogModel::Role role) const { return log.index(row).data(role); }

    ScenarioDocument document;
    LogModel log;
    QAbstractItemModelTester tester{&log, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(Log, has_the_newest_first_with_the_number_of_its_place) {
    ASSERT_EQ(log.count(), 3);
    EXPECT_EQ(role(0, LogModel::NumberRole), 2);
    EXPECT_EQ(role(1, LogModel::NumberRole), 3);
    EXPECT_EQ(role(2, LogModel::NumberRole), 1);
    EXPECT_TRUE(role(0, LogModel::WordsRole).toString().contains("main reads 12.9 V"));
}

TEST_F(Log, a_struck_entry_stays_readable_and_comes_back_by_undo) {
    const QString before = document.text();
    EXPECT_TRUE(log.strike(0));
    ASSERT_EQ(log.count(), 4);
    EXPECT_TRUE(document.text().startsWith(before));
    int struck = 0;
    for (int row = 0; row < log.count(); ++row) {
        const bool is_struck = role(row, LogModel::StruckRole).toBool();
        struck += int(is_struck);
        if (is_struck) {
            EXPECT_TRUE(role(row, LogModel::WordsRole).toString().contains("12.9 V"));
            EXPECT_TRUE(role(row, LogModel::SpokenRole).toString().startsWith("Struck"));
        }
    }
    EXPECT_EQ(struck, 1);
    document.undo();
    EXPECT_EQ(log.count(), 3);
    EXPECT_FALSE(role(0, LogModel::StruckRole).toBool());
}

TEST_F(Log, tells_what_cannot_be_true_together) {
    log.set_odd({1});
    EXPECT_TRUE(role(0, LogModel::OddRole).toBool());
    EXPECT_FALSE(role(1, LogModel::OddRole).toBool());
}

TEST_F(Log, stays_in_sight_while_the_text_cannot_be_read) {
    document.set_text(document.text() + "[[log]]\nat = nonsense\n");
    EXPECT_EQ(log.count(), 3);
    EXPECT_FALSE(log.strike(7));
}

TEST(log_model, strikes_the_sun_by_its_own_word) {
    scenario::LogEntry sun{.at = *units::read_local_time("2026-01-15T16:30:00")};
    sun.sun = scenario::SunCounted{.taken = 420.0 * units::watt_hour};
    const auto made = touch::strike_of(sun, sun.at + units::hour);
    EXPECT_TRUE(scenario::is_struck_by(sun, made));
    scenario::LogEntry other{.at = sun.at};
    other.shows = units::StateOfCharge(0.5);
    EXPECT_FALSE(scenario::is_struck_by(other, made));
}

}  // namespace
