#include "models/days/sun_controls.hpp"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>

#include "models/days/tilt_picture.hpp"

namespace {

using touch::PlacesModel;
using touch::ScenarioDocument;
using touch::SunControls;

class Sun : public testing::Test {
  protected:
    void SetUp() override {
        document.openExample();
        controls.set_document(&document);
    }

    ScenarioDocument document;
    SunControls controls;
};

TEST_F(Sun, reads_place_month_and_tilt) {
    EXPECT_EQ(controls.place(), "Chicago IL");
    EXPECT_EQ(controls.month(), 1);
    EXPECT_EQ(controls.tilt(), 60);
    EXPECT_TRUE(controls.has_panels());
}

// Chicago stands at 41.9 degrees; on 14 January the sun's declination is -21.5 degrees [Cooper
// 1969], so it culminates at 90 - 41.9 - 21.5 = 26.6 degrees.
TEST_F(Sun, the_noon_sun_of_january_in_chicago_is_low) {
    EXPECT_NEAR(controls.noon(), 26.7, 0.4);
}

TEST_F(Sun, the_tilt_turns_by_five_degrees_and_stops_upright) {
    controls.more();
    EXPECT_EQ(controls.tilt(), 65);
    EXPECT_TRUE(document.text().contains("tilt = \"65 deg\"                     # steep"));
    controls.setTilt(88.0);
    EXPECT_EQ(controls.tilt(), 90);
    EXPECT_FALSE(controls.can_more());
    controls.setTilt(-3.0);
    EXPECT_EQ(controls.tilt(), 0);
}

TEST_F(Sun, one_drag_is_one_step_back) {
    const QString before = document.text();
    QStringList tried;
    QObject::connect(&controls, &SunControls::trialChanged, [&] { tried << controls.trial(); });
    for (const double degrees : {62.0, 66.0, 71.0, 68.0, 52.0, 44.0, 38.0, 33.0, 31.0}) {
        controls.turn(degrees);
        EXPECT_EQ(document.text(), before);  // not before the finger is lifted
    }
    EXPECT_EQ(controls.tilt(), 30);
    EXPECT_TRUE(controls.trial().contains("tilt = \"30 deg\""));
    controls.settle();
    EXPECT_TRUE(document.text().contains("tilt = \"30 deg\""));
    EXPECT_EQ(controls.trial(), "");
    EXPECT_EQ(tried.last(), "");
    EXPECT_GE(tried.size(), 7);
    document.undo();
    EXPECT_EQ(document.text(), before);
    EXPECT_FALSE(document.can_undo());
    EXPECT_EQ(controls.tilt(), 60);
}

TEST_F(Sun, a_drag_that_comes_back_changes_nothing) {
    controls.turn(45.0);
    controls.turn(60.0);
    EXPECT_EQ(controls.trial(), "");
    controls.settle();
    EXPECT_FALSE(document.can_undo());
    EXPECT_EQ(controls.tilt(), 60);
}

// What another hand does meanwhile is neither lost nor undone by the drag.
TEST_F(Sun, a_change_during_a_drag_stays) {
    controls.turn(45.0);
    document.packs()->more();
    EXPECT_EQ(controls.tilt(), 45);
    controls.settle();
    EXPECT_TRUE(document.text().contains("count = 4"));
    EXPECT_TRUE(document.text().contains("tilt = \"45 deg\""));
}

TEST_F(Sun, flat_panels_that_are_turned_are_propped_up) {
    document.set_text(document.text().replace("placement = \"fixed\"", "placement = \"flat\""));
    EXPECT_EQ(controls.tilt(), 0);
    EXPECT_EQ(controls.tilt_text(), "flat");
    controls.setTilt(40.0);
    EXPECT_TRUE(document.text().contains("placement = \"fixed\""));
    EXPECT_EQ(controls.tilt(), 40);
}

TEST_F(Sun, another_month_keeps_day_and_hour) {
    controls.setMonth(7);
    EXPECT_TRUE(document.text().contains("starts = 2026-07-14T18:00:00"));
    EXPECT_EQ(controls.month(), 7);
    EXPECT_GT(controls.noon(), 60.0);
}

TEST_F(Sun, the_thirty_first_becomes_the_last_of_a_shorter_month) {
    document.set_text(document.text().replace("2026-01-14T18:00:00", "2026-01-31T18:00:00"));
    controls.setMonth(2);
    EXPECT_TRUE(document.text().contains("starts = 2026-02-28T18:00:00"));
}

TEST_F(Sun, a_picked_place_takes_the_place_of_all_that_was_said_of_the_former) {
    document.set_text(document.text().replace(
        "name = \"Chicago IL\"",
        "latitude = \"10 deg\"\nlongitude = \"20 deg\"\nutc_offset = \"1 h\""));
    EXPECT_EQ(controls.place(), "a place of your own");
    controls.setPlace("Chicago IL");
    EXPECT_EQ(controls.place(), "Chicago IL");
    EXPECT_FALSE(document.text().contains("latitude"));
    EXPECT_NEAR(controls.noon(), 26.7, 0.4);
}

TEST(places_model, is_narrowed_by_a_part_of_a_name) {
    PlacesModel places;
    const QAbstractItemModelTester tester(&places,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_GT(places.count(), 50);
    places.set_wanted("chica");
    ASSERT_EQ(places.count(), 1);
    EXPECT_EQ(places.index(0).data(PlacesModel::NameRole), "Chicago IL");
}

TEST(tilt_picture, a_finger_above_the_foot_stands_the_panel_upright) {
    touch::TiltPicture picture;
    picture.setSize({400.0, 150.0});
    EXPECT_NEAR(picture.tiltTowards(400.0 * 0.42, 10.0), 90.0, 1e-6);
    EXPECT_NEAR(picture.tiltTowards(10.0, 150.0 - 16.0), 0.0, 1e-6);
    EXPECT_NEAR(picture.tiltTowards(400.0 * 0.42 - 50.0, 150.0 - 16.0 - 50.0), 45.0, 1e-6);
}

}  // namespace
