// The plots of an answer on paper: greys, patterns of lines and words, never colour alone. The same
// points as on the screen; nothing is computed here but places.
#pragma once

#include <QList>
#include <QString>

#include "answers/answer.hpp"
#include "print/block.hpp"

namespace printing {

// Letters of all plots, in points; a plot printed alone is as large as a hand.
inline constexpr double plot_letters = 9.0;

// Stored energy over the outage: the band from the bad to the good end, the likely course, nights
// shaded, what happens pinned to its hour.
[[nodiscard]] Block days_plot(const answers::DaysChart& chart, double width);

// Rows of bars: at least, likely, at best.
[[nodiscard]] Block bars_plot(const answers::BarChart& chart, double width);

// One load's start: each limit with the share of it that is used.
[[nodiscard]] Block start_plot(const answers::StartChart& chart, double width);

// How a load comes up: speed, current and voltage over the first moments; empty where there is no
// course.
[[nodiscard]] Block course_plot(const answers::StartChart& chart, double width);

// Chance of lasting against weight or price, each build with its interval, the goal as a line.
[[nodiscard]] Block builds_plot(const answers::BuildsChart& chart, const answers::BuildsView& view,
                                double width);

// The build, part by part.
[[nodiscard]] Block wiring_plot(const answers::WiringDiagram& diagram, double width);

// A plot to be saved by itself, and its name within a file name: "days", "recharge".
struct Plot {
    QString name;
    QString title;
    Block block;
};

// All plots of an answer, in the order they are read.
[[nodiscard]] QList<Plot> plots_of(const answers::Answer& answer, double width);

}  // namespace printing
