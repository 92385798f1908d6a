#include "models/fields/fields_of_build.hpp"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

#include "models/fields/fields_model.hpp"
#include "models/fields/table_entries.hpp"

namespace {

using touch::FieldsModel;
using touch::ScenarioDocument;
using touch::TableEntries;

class Build : public testing::Test {
  protected:
    void SetUp() override {
        document.openExample();
        fields.set_document(&document);
        entries.set_document(&document);
    }
    void look_at(const QString& table, int number = 0) {
        fields.set_table(table);
        fields.set_number(number);
        entries.set_table(table);
    }
    QModelIndex row(const QString& key) const {
        for (int i = 0; i < fields.count(); ++i) {
            if (fields.index(i).data(FieldsModel::KeyRole).toString() == key)
                return fields.index(i);
        }
        return {};
    }
    QString shown(const QString& key) const {
        return row(key).data(FieldsModel::ShownRole).toString();
    }
    QString error(const QString& key) const {
        return row(key).data(FieldsModel::ErrorRole).toString();
    }
    bool has_line(const QString& line) const { return document.text().contains(line); }

    ScenarioDocument document;
    FieldsModel fields;
    TableEntries entries;
    QAbstractItemModelTester tester{&fields, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(Build, the_inverter_is_changed_in_place) {
    look_at("inverter");
    EXPECT_TRUE(fields.put("inverter.continuous", "3000 W"));
    EXPECT_TRUE(fields.put("inverter.waveform", "quasi_square"));
    EXPECT_TRUE(has_line("continuous = \"3000 W\""));
    EXPECT_TRUE(has_line("waveform = \"quasi_square\""));
    EXPECT_FALSE(fields.put("inverter.cutoff_voltage", "10.5 A"));
    EXPECT_FALSE(error("inverter.cutoff_voltage").isEmpty());
    EXPECT_TRUE(has_line("cutoff_voltage = \"10.5 V\""));
}

TEST_F(Build, a_part_of_a_circuit_is_changed_and_its_neighbours_stay_as_written) {
    look_at("circuit[0].links", 2);
    EXPECT_EQ(shown("circuit[0].links[2].length"), "2 ft");
    EXPECT_TRUE(fields.put("circuit[0].links[2].length", "4 ft"));
    EXPECT_TRUE(has_line("{ wire = \"3/0 AWG\", length = \"4 ft\", insulation = \"105 degC\" },"));
    EXPECT_TRUE(has_line("{ fuse = \"350 A\", family = \"class T\" },"));
}

TEST_F(Build, parts_are_added_and_taken_out) {
    look_at("circuit[0].links");
    ASSERT_EQ(entries.count(), 3);
    const QString before = document.text();
    EXPECT_EQ(entries.add("outlet"), 3);
    EXPECT_EQ(entries.count(), 4);
    EXPECT_TRUE(entries.remove(3));
    EXPECT_TRUE(entries.remove(0));
    EXPECT_EQ(entries.names().front(), "switch 350 A");
    EXPECT_TRUE(entries.remove(0));
    EXPECT_EQ(entries.names(), QStringList("wire 3/0 AWG"));
    for (int step = 0; step < 4; ++step)
        document.undo();
    EXPECT_EQ(document.text(), before);
}

TEST_F(Build, a_circuit_is_added_with_what_it_feeds_picked_from_what_there_is) {
    look_at("circuit");
    const int number = entries.add();
    ASSERT_EQ(number, 7);
    look_at("circuit", number);
    fields.turn("circuit[7].feeds", "lamps");
    fields.turn("circuit[7].feeds", "phones");
    EXPECT_TRUE(has_line("feeds = [\"lamps\", \"phones\"]"));
    fields.turn("circuit[7].feeds", "lamps");
    EXPECT_TRUE(has_line("feeds = [\"phones\"]"));
    const auto options = row("circuit[7].feeds").data(FieldsModel::OptionsRole).toList();
    EXPECT_GE(options.size(),
              9);  // five loads, two packs, the inverter, the controller, the panels
}

TEST_F(Build, chargers_and_panels_come_and_go) {
    look_at("charger");
    EXPECT_EQ(entries.count(), 0);
    ASSERT_EQ(entries.add(), 0);
    look_at("charger", 0);
    EXPECT_TRUE(fields.put("charger[0].kind", "generator"));
    EXPECT_TRUE(fields.put("charger[0].current", "30 A"));
    EXPECT_TRUE(entries.remove(0));
    look_at("panel");
    EXPECT_EQ(entries.add(), 1);
    look_at("panel", 1);
    EXPECT_TRUE(fields.put("panel[1].tilt", "30 deg"));
}

TEST_F(Build, a_goal_and_a_store_that_the_file_had_not_begin_with_their_first_value) {
    document.set_text(QString(document.text()).remove(document.text().indexOf("[storage]"), 10000));
    look_at("goal");
    EXPECT_TRUE(fields.put("goal.chance", "95 %"));
    EXPECT_TRUE(has_line("[goal]\nchance = \"95 %\""));
    look_at("storage");
    EXPECT_TRUE(fields.put("storage.drain", "4 mA")) << error("storage.drain").toStdString();
    EXPECT_TRUE(has_line("since = 2026-01-14T18:00:00"));
}

TEST_F(Build, the_begin_of_the_outage_moves_by_months_days_and_hours) {
    look_at("outage");
    fields.moveMoment("outage.starts", -1, 0, 0);
    fields.moveMoment("outage.starts", 0, 18, 0);
    fields.moveMoment("outage.starts", 0, 0, 360);
    EXPECT_TRUE(has_line("starts = 2026-01-02T00:00:00        # local standard time"))
        << document.text().left(900).toStdString();
}

TEST_F(Build, a_length_that_nobody_knows_is_told_with_by_when_half_are_over) {
    look_at("outage");
    EXPECT_EQ(row("outage.length").data(FieldsModel::OptionsRole).toList().size(), 2);
    EXPECT_TRUE(fields.put("outage.half_over_by", "24 h"))
        << error("outage.half_over_by").toStdString();
    EXPECT_TRUE(has_line("lasts = \"?\""));
    EXPECT_TRUE(has_line("half_over_by = \"24 h\""));
    EXPECT_EQ(shown("outage.half_over_by"), "24 h");
    EXPECT_EQ(document.days()->shown(), "?");
    EXPECT_EQ(document.days()->value(), 1.0);
    EXPECT_TRUE(fields.put("outage.lasts", "3 d"));
    EXPECT_TRUE(has_line("lasts = \"3 d\""));
    EXPECT_FALSE(document.text().contains("half_over_by"));
    EXPECT_EQ(document.days()->shown(), "3");
}

TEST_F(Build, one_month_of_an_own_place_is_changed_alone) {
    document.set_text(
        QString(document.text())
            .replace("name = \"Chicago IL\"", "latitude = \"42 deg\"\nlongitude = \"-88 deg\""));
    look_at("place");
    EXPECT_TRUE(fields.put("place.irradiation[0]", "2 kWh/m2"))
        << error("place.irradiation[0]").toStdString();
    EXPECT_TRUE(fields.put("place.irradiation[6]", "6 kWh/m2"));
    EXPECT_EQ(shown("place.irradiation[6]"), QStringLiteral("6 kWh/m²"));
    EXPECT_EQ(shown("place.irradiation[11]"), QStringLiteral("2 kWh/m²"));
}

TEST_F(Build, a_motor_comes_and_goes_with_its_kind) {
    look_at("load", 2);
    EXPECT_TRUE(fields.put("load[2].motor.kind", "universal"));
    EXPECT_TRUE(row("load[2].motor.horsepower").isValid());
    EXPECT_TRUE(fields.put("load[2].motor.kind", ""));
    EXPECT_FALSE(row("load[2].motor.horsepower").isValid());
    EXPECT_FALSE(has_line("motor = {}"));
}

}  // namespace
