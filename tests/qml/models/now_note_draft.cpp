#include <optional>

#include <gtest/gtest.h>

#include "models/now/note_draft.hpp"
#include "models/words/told.hpp"
#include "scenario/file/read.hpp"
#include "units/clock.hpp"

namespace {

using touch::NoteDraft;
using touch::NowClock;
using touch::ScenarioDocument;

// Thursday evening of the example: packs "main" and "expansion", a chest freezer among its loads.
class Draft : public testing::Test {
  protected:
    void SetUp() override {
        NowClock::set_source([] { return *units::read_local_time("2026-01-15T21:30:00"); });
        document.openExample();
        clock.emplace();
        clock->set_document(&document);
        draft.setProperty("document", QVariant::fromValue(&document));
        draft.setProperty("clock", QVariant::fromValue(&*clock));
        before = document.text();
    }
    void TearDown() override { NowClock::set_source({}); }
    void type(const QString& number) {
        for (const QChar sign : number)
            draft.press(QString(sign));
    }
    // What stands behind the file's own text.
    QString added() const {
        EXPECT_TRUE(document.text().startsWith(before));
        return document.text().mid(before.size());
    }
    scenario::LogEntry last() const {
        const auto read = scenario::read_scenario(document.text().toStdString(), "");
        return read && !read->scenario.log.empty() ? read->scenario.log.back()
                                                   : scenario::LogEntry{};
    }

    ScenarioDocument document;
    std::optional<NowClock> clock;
    NoteDraft draft;
    QString before;
};

TEST_F(Draft, volts_need_no_point_and_no_pack) {
    draft.begin("volts");
    EXPECT_FALSE(draft.ready());
    type("129");
    EXPECT_EQ(draft.typed(), "12.9 V");
    EXPECT_TRUE(draft.ready()) << draft.trouble().toStdString();
    EXPECT_TRUE(draft.write());
    EXPECT_EQ(added(), "\n[[log]]\nat = 2026-01-15T21:30:00\nreads = \"12.9 V\"\n");
    document.undo();
    EXPECT_EQ(document.text(), before);
}

TEST_F(Draft, volts_with_all_that_is_known) {
    draft.begin("volts");
    type("12.85");
    draft.pick("main");
    draft.pickDetail("under");
    EXPECT_FALSE(draft.ready());
    type("150");
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
    EXPECT_EQ(last().pack, "main");
    ASSERT_TRUE(last().reads && last().under);
    EXPECT_EQ(last().reads->decimals, 2);
    EXPECT_EQ(last().under->power, 150.0 * units::watt);
    draft.begin("volts");
    draft.pickDetail("8 h");
    type("1290");
    draft.step(-10);
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
    EXPECT_EQ(last().rested, 8.0 * units::hour);
}

TEST_F(Draft, a_display_shows_percent) {
    draft.begin("volts");
    draft.choose("%");
    type("62");
    EXPECT_EQ(draft.typed(), "62 %");
    EXPECT_TRUE(draft.write());
    EXPECT_EQ(last().shows, units::StateOfCharge(0.62));
}

TEST_F(Draft, a_meter_counted_over_a_day_unless_it_ran_for_less) {
    draft.begin("meter");
    EXPECT_EQ(draft.detail(), "24 h");
    draft.pick("chest freezer");
    type("1.15");
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
    ASSERT_TRUE(last().metered);
    EXPECT_EQ(last().metered->over, 24.0 * units::hour);
    draft.begin("meter");
    draft.pick("furnace blower");
    type("0.3");
    draft.pickDetail("other");
    type("9");
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
    EXPECT_EQ(last().metered->over, 9.0 * units::hour);
}

TEST_F(Draft, sun_with_its_sky_which_can_be_taken_back) {
    draft.begin("sun");
    type("420");
    draft.pickDetail("grey");
    draft.pickDetail("grey");
    EXPECT_TRUE(draft.ready());
    draft.pickDetail("dark");
    EXPECT_TRUE(draft.write());
    EXPECT_EQ(last().sky, scenario::SeenSky::dark);
    EXPECT_EQ(last().sun->taken, 420.0 * units::watt_hour);
}

TEST_F(Draft, a_thermometer_below_nought) {
    draft.begin("thermometer");
    draft.pick("chest freezer");
    draft.press("-");
    type("11");
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
    EXPECT_NEAR(units::in_celsius(*last().temperature), -11.0, 1e-9);
    touch::set_language_wished({.us_units = true});
    draft.begin("thermometer");
    EXPECT_EQ(draft.unit(), "degF");
    touch::set_language_wished(words::english());
}

TEST_F(Draft, a_load_that_is_on_goes_off_and_then_on) {
    draft.begin("switched");
    draft.pick("furnace blower");
    EXPECT_TRUE(draft.write());
    EXPECT_EQ(last().happened, scenario::Happened::switched_off);
    NowClock::set_source([] { return *units::read_local_time("2026-01-15T22:10:00"); });
    draft.begin("switched");
    draft.pick("furnace blower");
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
    EXPECT_EQ(last().happened, scenario::Happened::switched_on);
    EXPECT_EQ(last().at, *units::read_local_time("2026-01-15T22:10:00"));
}

TEST_F(Draft, a_pack_that_left_comes_back_and_no_other_does) {
    draft.begin("happened");
    draft.pick("back");
    draft.pickDetail("expansion");
    EXPECT_FALSE(draft.ready());
    EXPECT_FALSE(draft.trouble().isEmpty());
    EXPECT_FALSE(draft.write());
    EXPECT_EQ(document.text(), before);
    draft.pick("left");
    draft.pickDetail("expansion");
    EXPECT_GT(draft.most(), 1);
    draft.setCount(2);
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
    EXPECT_EQ(last().count, 2);
}

TEST_F(Draft, a_fuse_that_opened_is_not_replaced_before_the_fault_is_found) {
    draft.begin("happened");
    draft.pick("fuse");
    draft.pickDetail("load:furnace blower");
    ASSERT_EQ(draft.cautions().size(), 1);
    EXPECT_TRUE(draft.cautions().front().contains("fault"));
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
}

TEST_F(Draft, the_supply_is_expected_and_is_back) {
    draft.begin("happened");
    draft.pick("expected");
    EXPECT_TRUE(draft.asks_by());
    draft.step(-10);  // one minute holds one word about the supply
    draft.stepBy(60);
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
    EXPECT_EQ(last().by, *units::read_local_time("2026-01-16T10:40:00"));
    draft.begin("happened");
    draft.pick("supply");
    EXPECT_TRUE(draft.cautions().join(' ').contains("wiring"));
    EXPECT_TRUE(draft.write()) << draft.trouble().toStdString();
}

TEST_F(Draft, its_time_is_never_past_now_nor_before_the_start) {
    draft.begin("volts");
    EXPECT_FALSE(draft.can_later());
    draft.step(10);
    EXPECT_EQ(draft.at(), "2026-01-15T21:30:00");
    draft.step(-60);
    draft.step(-10);
    EXPECT_EQ(draft.at(), "2026-01-15T20:20:00");
    for (int i = 0; i < 40; ++i)
        draft.step(-60);
    EXPECT_EQ(draft.at(), "2026-01-14T18:00:00");
    EXPECT_FALSE(draft.can_earlier());
    draft.toNow();
    EXPECT_EQ(draft.at(), "2026-01-15T21:30:00");
}

TEST_F(Draft, two_readings_of_one_minute_are_refused_with_the_line_of_the_other) {
    draft.begin("volts");
    type("129");
    EXPECT_TRUE(draft.write());
    draft.begin("volts");
    type("131");
    EXPECT_FALSE(draft.ready());
    EXPECT_TRUE(draft.trouble().contains("line")) << draft.trouble().toStdString();
}

TEST(note_parts, a_point_is_put_behind_two_digits_alone) {
    EXPECT_EQ(touch::with_its_point("129"), "12.9");
    EXPECT_EQ(touch::with_its_point("1290"), "12.90");
    EXPECT_EQ(touch::with_its_point("12"), "12");
    EXPECT_EQ(touch::with_its_point("9.8"), "9.8");
    EXPECT_EQ(touch::with_its_point("12900"), "12900");
}

}  // namespace
