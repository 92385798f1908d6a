// The plots of an answer on paper: greys, patterns of lines and words, never colour alone. The same
// points as on the screen; nothing is computed here but places.
#pragma once

#include <QList>
#include <QSizeF>
#include <QString>

#include "answers/answer.hpp"
#include "print/block.hpp"

namespace printing {

// Letters of all plots, in points; a plot printed alone is as large as a hand.
inline constexpr double plot_letters = 9.0;

// Stored energy over the outage: the band from the bad to the good end, the likely course, nights
// shaded, what happens pinned to its hour.
[[nodiscard]] Block days_plot(const answers::DaysChart& chart, double width,
                              const words::Language& language = words::english());

// Rows of bars: at least, likely, at best.
[[nodiscard]] Block bars_plot(const answers::BarChart& chart, double width,
                              const words::Language& language = words::english());

// One load's start: each limit with the share of it that is used.
[[nodiscard]] Block start_plot(const answers::StartChart& chart, double width,
                               const words::Language& language = words::english());

// How a load comes up: speed, current and voltage over the first moments; empty where there is no
// course.
[[nodiscard]] Block course_plot(const answers::StartChart& chart, double width,
                                const words::Language& language = words::english());

// Chance of lasting against weight or price, each build with its interval, the goal as a line.
[[nodiscard]] Block builds_plot(const answers::BuildsChart& chart, const answers::BuildsView& view,
                                double width, const words::Language& language = words::english());

// The build, part by part, as wide as it takes for its words.
[[nodiscard]] Block wiring_plot(const answers::WiringDiagram& diagram,
                                const words::Language& language = words::english());

// The same in pieces, in the order they are read.
//   room   points; no piece is larger. Two columns and the tallest row must fit.
//   gives  where a piece goes on at its right, its last column begins the next one again
[[nodiscard]] QList<Block> wiring_plots(const answers::WiringDiagram& diagram, QSizeF room,
                                        const words::Language& language = words::english());

// A plot to be saved by itself.
//   name    within a file name, the same in every language: "days", "recharge"
//   title   for people, in theirs
struct Plot {
    QString name;
    QString title;
    Block block;
};

// All plots of an answer, in the order they are read; a wiring diagram as wide as it takes.
[[nodiscard]] QList<Plot> plots_of(const answers::Answer& answer, double width,
                                   const words::Language& language = words::english());

}  // namespace printing
