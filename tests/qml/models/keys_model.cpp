#include "models/keys_model.hpp"

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

}  // namespace
