// From an answer of the report to what the Days page shows: the same texts, and the same points
// thinned to what a screen can show, with the places of marks as shares of the plot.
#pragma once

#include "answers/answer.hpp"
#include "models/days/days_view.hpp"
#include "units/result.hpp"

namespace touch {

inline constexpr qsizetype most_points = 1000;  // of one curve; about a screen's width
inline constexpr qsizetype most_stairs = 4000;  // of hourly means: 83 days of them are all drawn

[[nodiscard]] DaysView days_view_of(const answers::Answer& answer);

// Why a file cannot be used, as findings of the gravest kind, so that one list shows both.
[[nodiscard]] DaysView refusal(const units::Errors& errors);

// At most `most` points, the ends kept and of every stretch its lowest and highest, so that no
// dip or peak is lost.
[[nodiscard]] QList<QPointF> thinned(const QList<QPointF>& points, qsizetype most);

}  // namespace touch
