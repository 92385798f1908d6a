#include "models/fields/fields_model.hpp"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

#include "scenario/keys/reference.hpp"

namespace {

using touch::FieldsModel;
using touch::ScenarioDocument;

class Fields : public testing::Test {
  protected:
    void SetUp() override {
        document.openExample();
        fields.set_document(&document);
        fields.set_table("load");
    }
    QModelIndex row(const QString& key) const {
        for (int i = 0; i < fields.count(); ++i) {
            if (fields.index(i).data(FieldsModel::KeyRole).toString().endsWith(key))
                return fields.index(i);
        }
        ADD_FAILURE() << key.toStdString();
        return {};
    }
    bool shows(const QString& key) const {
        for (int i = 0; i < fields.count(); ++i) {
            if (fields.index(i).data(FieldsModel::KeyRole).toString().endsWith(key)) return true;
        }
        return false;
    }
    QString shown(const QString& key) const {
        return row(key).data(FieldsModel::ShownRole).toString();
    }

    ScenarioDocument document;
    FieldsModel fields;
    QAbstractItemModelTester tester{&fields, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(Fields, show_what_the_person_wrote) {
    EXPECT_EQ(shown(".name"), "chest freezer");
    EXPECT_EQ(shown(".label"), "300 kWh/yr");
    EXPECT_EQ(shown(".runs.on"), "15 min");
    EXPECT_FALSE(shows(".power"));
}

TEST_F(Fields, put_a_value_in_its_place_and_keep_the_comment_beside_it) {
    EXPECT_TRUE(fields.put("load[0].label", "280 kWh/yr"));
    EXPECT_EQ(shown(".label"), "280 kWh/yr");
    EXPECT_TRUE(
        document.text().contains("label = \"280 kWh/yr\"                # the yellow label"));
    document.undo();
    EXPECT_EQ(shown(".label"), "300 kWh/yr");
}

TEST_F(Fields, a_value_that_cannot_be_is_told_beside_its_field_and_the_file_stays) {
    const QString before = document.text();
    EXPECT_FALSE(fields.put("load[0].label", "0 kWh/yr"));
    EXPECT_EQ(document.text(), before);
    EXPECT_FALSE(row(".label").data(FieldsModel::ErrorRole).toString().isEmpty());
    EXPECT_TRUE(fields.put("load[0].label", "280 kWh/yr"));
    EXPECT_TRUE(row(".label").data(FieldsModel::ErrorRole).toString().isEmpty());
}

TEST_F(Fields, another_way_of_knowing_takes_the_place_of_the_former) {
    EXPECT_TRUE(fields.put("load[0].metered.energy", "1.9 kWh"));
    EXPECT_TRUE(document.text().contains("metered = { energy = \"1.9 kWh\", over = \"24 h\" }"));
    EXPECT_FALSE(shows(".label"));
    EXPECT_EQ(shown(".metered.over"), "24 h");
    EXPECT_TRUE(fields.put("load[0].metered.over", "31 h"));
    EXPECT_EQ(shown(".metered.over"), "31 h");
    EXPECT_TRUE(fields.put("load[0].nameplate.current", "1.5 A"));
    EXPECT_EQ(shown(".nameplate.voltage"), "120 V");
    EXPECT_TRUE(fields.put("load[0].power", "90 W"));
    EXPECT_EQ(shown(".power"), "90 W");
    EXPECT_FALSE(shows(".nameplate.voltage"));
}

TEST_F(Fields, a_count_goes_by_one_and_stops_at_its_end) {
    fields.step("load[0].count", -1);
    EXPECT_EQ(shown(".count"), "0");  // as the file takes it: left out
    fields.step("load[0].count", -1);
    EXPECT_EQ(shown(".count"), "0");
    EXPECT_FALSE(row(".count").data(FieldsModel::CanLessRole).toBool());
    fields.step("load[0].count", 2);
    EXPECT_EQ(shown(".count"), "2");
    EXPECT_TRUE(row(".count").data(FieldsModel::CanLessRole).toBool());
    EXPECT_EQ(row(".count").data(FieldsModel::LeastRole).toInt(), 0);
    EXPECT_GT(row(".count").data(FieldsModel::MostRole).toInt(), 2);
}

TEST_F(Fields, hours_are_added_moved_and_taken_out) {
    fields.set_number(2);  // the lamps
    EXPECT_EQ(row(".hours").data(FieldsModel::SpansRole).toStringList(),
              (QStringList{"06:30-08:00", "16:30-22:30"}));
    fields.moveHours("load[2].hours", 0, true, 30);
    fields.addHours("load[2].hours", "02:00-03:00");
    fields.removeHours("load[2].hours", 1);
    EXPECT_EQ(row(".hours").data(FieldsModel::SpansRole).toStringList(),
              (QStringList{"06:30-08:30", "02:00-03:00"}));
    fields.removeHours("load[2].hours", 0);
    fields.removeHours("load[2].hours", 0);
    EXPECT_EQ(shown(".hours"), "at all hours");
}

TEST_F(Fields, the_time_of_a_span_goes_round_at_midnight) {
    EXPECT_EQ(touch::with_end_moved("22:00-23:45", true, 30), "22:00-00:15");
    EXPECT_EQ(touch::with_end_moved("00:15-06:00", false, -30), "23:45-06:00");
}

TEST_F(Fields, a_picked_option_is_marked) {
    EXPECT_TRUE(fields.put("load[0].evidence", "guess"));
    for (const QVariant& option : row(".evidence").data(FieldsModel::OptionsRole).toList()) {
        const QVariantMap one = option.toMap();
        EXPECT_EQ(one["chosen"].toBool(), one["value"].toString() == "guess");
    }
}

TEST_F(Fields, the_same_fields_stay_where_they_are) {
    const QSignalSpy anew(&fields, &FieldsModel::modelReset);
    fields.step("load[0].count", 1);
    EXPECT_EQ(anew.count(), 0);
}

TEST_F(Fields, every_field_of_every_table_of_the_example_takes_its_own_example) {
    for (const QString table : {"load", "pack", "panel", "outage", "storage", "inverter"}) {
        fields.set_table(table);
        EXPECT_GT(fields.count(), 0) << table.toStdString();
        for (int i = 0; i < fields.count(); ++i) {
            const QString key = fields.index(i).data(FieldsModel::KeyRole).toString();
            if (fields.index(i).data(FieldsModel::KindRole) != "number") continue;
            EXPECT_TRUE(fields.put(key, fields.asked(key)["example"].toString()))
                << key.toStdString() << ": "
                << fields.index(i).data(FieldsModel::ErrorRole).toString().toStdString();
        }
    }
}

// A description with a label is on the page, wherever the page itself does not place it.
TEST_F(Fields, every_key_that_has_a_label_has_its_field) {
    for (const QString table :
         {"load", "pack", "panel", "outage", "storage", "inverter", "charge_controller", "goal"}) {
        const auto document_now =
            scenario::read_document(document.text().toStdString(), std::string());
        QStringList keys;
        for (const auto& field : touch::fields_of(*document_now, table, 0))
            keys << field.key.mid(field.key.indexOf(QLatin1Char('.')) + 1);
        for (const auto& told : scenario::reference()) {
            const auto key = QString::fromStdString(told.key);
            if (!key.startsWith(table + QLatin1Char('.')) || told.on_screen.label.empty()) continue;
            EXPECT_TRUE(keys.contains(key.mid(table.size() + 1))) << told.key;
        }
    }
}

TEST_F(Fields, every_option_of_every_choice_is_taken) {
    for (const QString table : {"load", "pack", "panel", "outage", "storage"}) {
        fields.set_table(table);
        for (int i = 0; i < fields.count(); ++i) {
            const QModelIndex index = fields.index(i);
            const QString key = index.data(FieldsModel::KeyRole).toString();
            if (key.endsWith(".placement") || key.endsWith(".runs") || key.endsWith("chemistry")) {
                continue;  // these ask for further keys
            }
            for (const QVariant& option : index.data(FieldsModel::OptionsRole).toList()) {
                const QVariantMap one = option.toMap();
                if (!one["asks"].toString().isEmpty()) continue;
                EXPECT_TRUE(fields.put(key, one["value"].toString()))
                    << key.toStdString() << " " << one["value"].toString().toStdString();
            }
        }
    }
}

}  // namespace
