#include "models/fields/keys_model.hpp"

#include <QTest>
#include <gtest/gtest.h>

namespace {

using touch::KeysModel;

QModelIndex row_of(const KeysModel& keys, const QString& key) {
    for (int row = 0; row < keys.count(); ++row) {
        if (keys.index(row).data(KeysModel::KeyRole).toString() == key) return keys.index(row);
    }
    return {};
}

TEST(every_key, of_the_file_is_shown_with_its_line_and_changed_in_its_place) {
    touch::ScenarioDocument document;
    document.openExample();
    KeysModel keys;
    keys.set_document(&document);
    const QModelIndex idle = row_of(keys, "inverter.idle");
    ASSERT_TRUE(idle.isValid());
    EXPECT_EQ(idle.data(KeysModel::ValueRole).toString(), "18 W");
    EXPECT_TRUE(idle.data(KeysModel::OriginRole).toString().startsWith("line "));
    EXPECT_TRUE(keys.put("inverter.idle", "20 W"));
    EXPECT_TRUE(document.text().contains("idle = \"20 W\""));
    EXPECT_FALSE(keys.put("inverter.idle", "20 V"));
    EXPECT_TRUE(keys.trouble().contains("inverter.idle"));
    EXPECT_TRUE(document.text().contains("idle = \"20 W\""));
}

TEST(every_key, that_the_file_leaves_open_is_told_with_what_holds_then) {
    touch::ScenarioDocument document;
    document.openExample();
    KeysModel keys;
    keys.set_document(&document);
    EXPECT_FALSE(row_of(keys, "inverter.restart_voltage").isValid());
    const int given = keys.count();
    keys.set_given_only(false);
    EXPECT_GT(keys.count(), given);
    const QModelIndex restart = row_of(keys, "inverter.restart_voltage");
    ASSERT_TRUE(restart.isValid());
    EXPECT_FALSE(restart.data(KeysModel::GivenRole).toBool());
    EXPECT_TRUE(keys.put("inverter.restart_voltage", "12.5 V"));
    EXPECT_TRUE(row_of(keys, "inverter.restart_voltage").data(KeysModel::GivenRole).toBool());
    keys.set_wanted("outage.");
    EXPECT_FALSE(row_of(keys, "inverter.idle").isValid());
}

TEST(every_key, is_found_by_what_the_pages_call_it_and_stands_under_its_group) {
    touch::ScenarioDocument document;
    document.openExample();
    KeysModel keys;
    keys.set_document(&document);
    keys.set_wanted("nothing plugged");
    ASSERT_EQ(keys.count(), 1);
    EXPECT_EQ(keys.index(0).data(KeysModel::TitleRole),
              "Draw with nothing plugged in (inverter.idle)");
    EXPECT_EQ(keys.index(0).data(KeysModel::HeadingRole), "Inverter");
    keys.set_wanted("inverter.");
    ASSERT_GT(keys.count(), 2);
    EXPECT_EQ(keys.index(0).data(KeysModel::HeadingRole), "Inverter");
    EXPECT_EQ(keys.index(1).data(KeysModel::HeadingRole), "");
}

TEST(every_key, is_taken_out_and_what_holds_instead_is_told) {
    touch::ScenarioDocument document;
    document.openExample();
    KeysModel keys;
    keys.set_document(&document);
    const QString before = document.text();
    EXPECT_TRUE(keys.isGiven("inverter.idle"));
    ASSERT_TRUE(keys.takeOut("inverter.idle"));
    EXPECT_FALSE(keys.isGiven("inverter.idle"));
    EXPECT_FALSE(document.text().contains("idle"));
    // The rest of the file stays as it was, byte for byte.
    QStringList lines = before.split(QLatin1Char('\n'));
    lines.removeIf([](const QString& line) { return line.startsWith(QLatin1String("idle")); });
    EXPECT_EQ(document.text(), lines.join(QLatin1Char('\n')));
    EXPECT_TRUE(keys.told().startsWith("inverter.idle was taken out."))
        << keys.told().toStdString();
    // Its row stays in its place and says what holds.
    const QModelIndex now = row_of(keys, "inverter.idle");
    ASSERT_TRUE(now.isValid());
    EXPECT_FALSE(now.data(KeysModel::GivenRole).toBool());
    EXPECT_TRUE(now.data(KeysModel::OriginRole).toString().startsWith("Taken out; now silent:"))
        << now.data(KeysModel::OriginRole).toString().toStdString();
    EXPECT_TRUE(keys.told().contains("silent:")) << keys.told().toStdString();
    // A moment later with the figure that the questions take.
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            return keys.told().startsWith(
                "inverter.idle was taken out. Now: draw with nothing plugged in: ");
        },
        20000))
        << keys.told().toStdString();
    EXPECT_TRUE(row_of(keys, "inverter.idle")
                    .data(KeysModel::OriginRole)
                    .toString()
                    .startsWith("Taken out; now draw with nothing plugged in"));
    document.undo();
    EXPECT_EQ(document.text(), before);
    EXPECT_TRUE(keys.told().isEmpty());
    EXPECT_TRUE(keys.isGiven("inverter.idle"));
    EXPECT_TRUE(
        row_of(keys, "inverter.idle").data(KeysModel::OriginRole).toString().startsWith("line "));
    ASSERT_TRUE(keys.takeOut("inverter.idle"));
    ASSERT_TRUE(keys.put("outage.lasts", "3 d"));
    EXPECT_TRUE(keys.told().isEmpty());
    EXPECT_FALSE(row_of(keys, "inverter.idle").isValid());
}

TEST(every_key, taken_out_is_told_with_the_value_and_source_of_what_holds) {
    touch::ScenarioDocument document;
    document.openExample();
    KeysModel keys;
    keys.set_document(&document);
    for (const auto& [key, value, source] :
         {std::tuple{"inverter.cutoff_voltage", "10.5 V", "[Inverter manuals]"},
          std::tuple{"pack.main.charge_limit", "50.0 A", "[LFP 100 sheet]"},
          std::tuple{"inverter.idle", " W (", "worked out from the rest of the file"},
          std::tuple{"goal.chance", "nine times in ten", "ours"}}) {
        if (!keys.isGiven(key)) continue;
        ASSERT_TRUE(keys.takeOut(key)) << key;
        EXPECT_TRUE(
            QTest::qWaitFor([&] { return keys.told().contains(QLatin1String(value)); }, 20000))
            << keys.told().toStdString();
        EXPECT_TRUE(keys.told().contains(QLatin1String(source))) << keys.told().toStdString();
        document.undo();
    }
}

TEST(every_key, that_the_file_needs_stays_and_says_why) {
    touch::ScenarioDocument document;
    document.openExample();
    KeysModel keys;
    keys.set_document(&document);
    const QString before = document.text();
    EXPECT_FALSE(keys.takeOut("outage.lasts"));
    EXPECT_EQ(document.text(), before);
    EXPECT_TRUE(keys.trouble().startsWith("outage.lasts stays"));
    EXPECT_TRUE(keys.told().isEmpty());
    EXPECT_FALSE(keys.takeOut("inverter.restart_voltage"));  // the file does not hold it
}

// Each key of each shipped file: it goes and comes back, or stays with a reason.
TEST(every_key, of_every_scenario_goes_and_comes_back_or_says_why_not) {
    int taken = 0;
    for (const char* name : {"ice_storm", "breathing_at_night", "precautionary_shutoff",
                             "saw_and_pump", "summer_storm"}) {
        touch::ScenarioDocument document;
        ASSERT_TRUE(document.open(QUrl::fromLocalFile(
            QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/%1.toml").arg(QLatin1String(name)))));
        KeysModel keys;
        keys.set_document(&document);
        const QString before = document.text();
        QStringList given;
        for (int row = 0; row < keys.count(); ++row)
            given << keys.index(row).data(KeysModel::KeyRole).toString();
        EXPECT_GT(given.size(), 20) << name;
        for (const QString& key : std::as_const(given)) {
            if (keys.takeOut(key)) {
                ++taken;
                EXPECT_NE(document.text(), before) << key.toStdString();
                EXPECT_TRUE(keys.told().startsWith(key)) << key.toStdString();
                document.undo();
            } else {
                EXPECT_FALSE(keys.trouble().isEmpty()) << key.toStdString();
            }
            ASSERT_EQ(document.text(), before) << key.toStdString();
        }
    }
    EXPECT_GT(taken, 100);
}

}  // namespace
