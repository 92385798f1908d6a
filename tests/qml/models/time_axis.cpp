#include "models/days/time_axis.hpp"

#include <gtest/gtest.h>

namespace {

using touch::time_axis;
using touch::TimeAxis;

// Wednesday 14 January 2026 18:00, as by a calendar.
const units::LocalTime starts =
    units::local_time(std::chrono::year(2026) / 1 / 14, 18.0 * units::hour);

QStringList names(const TimeAxis& axis) {
    QStringList names;
    for (const touch::TimeSpan& span : axis.spans)
        names << span.name;
    return names;
}

QStringList hours(const TimeAxis& axis) {
    QStringList texts;
    for (const touch::TimeTick& tick : axis.ticks)
        texts << tick.text;
    return texts;
}

TEST(time_axis, names_weeks_by_their_monday_where_days_are_too_narrow) {
    const TimeAxis axis = time_axis(starts, 0.0, 30.0 * 24.0, 300.0, 8.0);
    EXPECT_EQ(names(axis), (QStringList{"12 Jan", "26 Jan", "9 Feb"}));  // 70 px a week are too few
    EXPECT_DOUBLE_EQ(axis.spans[0].from, -66.0);  // Monday 00:00 before Wednesday 18:00
    EXPECT_TRUE(axis.ticks.isEmpty());
}

TEST(time_axis, names_days_as_fully_as_they_fit) {
    EXPECT_EQ(names(time_axis(starts, 0.0, 48.0, 600.0, 8.0)),
              (QStringList{"Wed 14 Jan", "Thu 15 Jan", "Fri 16 Jan"}));
    EXPECT_EQ(names(time_axis(starts, 0.0, 96.0, 300.0, 8.0)),
              (QStringList{"Wed 14", "Thu 15", "Fri 16", "Sat 17", "Sun 18"}));
    EXPECT_EQ(names(time_axis(starts, 0.0, 96.0, 170.0, 8.0))[1], "Thu");
}

// The week of four days would be named by a Monday that is not shown.
TEST(time_axis, names_every_second_or_third_day_where_each_is_too_narrow) {
    const TimeAxis second = time_axis(starts, 0.0, 96.0, 250.0, 15.0);
    EXPECT_EQ(names(second), (QStringList{"", "Thu 15", "", "Sat 17", ""}));
    EXPECT_DOUBLE_EQ(second.spans[1].from, 6.0);  // from Wednesday 18:00 to midnight
    EXPECT_DOUBLE_EQ(second.spans[1].to, 30.0);
    EXPECT_EQ(names(time_axis(starts, 0.0, 96.0, 120.0, 15.0)),
              (QStringList{"", "Thu", "", "", ""}));
}

TEST(time_axis, tells_hours_in_steps_that_keep_them_apart) {
    // 72 px a six hours: seven letters of 8 and no less.
    const TimeAxis six = time_axis(starts, 0.0, 24.0, 288.0, 8.0);
    EXPECT_EQ(hours(six), (QStringList{"18:00", "00:00", "06:00", "12:00", "18:00"}));
    const TimeAxis one = time_axis(starts, 26.5, 31.0, 300.0, 8.0);
    EXPECT_EQ(hours(one), (QStringList{"21:00", "22:00", "23:00", "00:00", "01:00"}));
    EXPECT_DOUBLE_EQ(one.ticks[0].at, 27.0);
    EXPECT_EQ(names(one), (QStringList{"Thu 15 Jan", "Fri 16 Jan"}));
}

TEST(time_axis, keeps_its_figures_apart_at_every_nearness) {
    for (double sight = 6.0; sight <= 2000.0; sight *= 1.17) {
        for (const double width : {200.0, 300.0, 560.0, 1200.0}) {
            const TimeAxis axis = time_axis(starts, 11.0, 11.0 + sight, width, 8.0);
            for (qsizetype i = 1; i < axis.ticks.size(); ++i)
                EXPECT_GE((axis.ticks[i].at - axis.ticks[i - 1].at) / sight * width,
                          8.0 * double(axis.ticks[i].text.size()))
                    << sight << " h in " << width;
            ASSERT_FALSE(axis.spans.isEmpty());
            EXPECT_LE(axis.spans.front().from, 11.0);
            EXPECT_GE(axis.spans.back().to, 11.0 + sight - 1e-6);
        }
    }
}

TEST(time_axis, is_empty_without_room) {
    EXPECT_TRUE(time_axis(starts, 0.0, 0.0, 300.0, 8.0).spans.isEmpty());
    EXPECT_TRUE(time_axis(starts, 0.0, 24.0, 0.0, 8.0).spans.isEmpty());
}

}  // namespace
