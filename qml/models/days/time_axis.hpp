// What stands below a plot of an outage: weeks or days, and hours where it is drawn near enough for
// their figures to stand beside each other.
#pragma once

#include <QList>
#include <QString>

#include "units/time.hpp"

namespace touch {

// A full hour with its time of day; h after the start.
struct TimeTick {
    double at = 0.0;
    QString text;
};

// A day, or so many weeks, by its name; h after the start, and may lie in part out of sight.
struct TimeSpan {
    double from = 0.0;
    double to = 0.0;
    QString name = {};   // empty where a neighbour's name takes the room
    double reach = 1.0;  // its name may be so many times as wide as the span, about its middle
};

struct TimeAxis {
    QList<TimeTick> ticks;  // none where hours stand too close
    QList<TimeSpan> spans;
};

// Of the part of the plot from `from` to `to`, both in h after the start, drawn `width` wide in
// letters that are `letter` wide on average; both in the same unit and above 0.
[[nodiscard]] TimeAxis time_axis(units::LocalTime starts, double from, double to, double width,
                                 double letter);

}  // namespace touch
