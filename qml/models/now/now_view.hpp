// What the Now page shows of one moment: the sentences that stand first, those behind them, and the
// days with what burnt so far. Made off the screen's thread, then only handed on.
#pragma once

#include <memory>

#include <QList>
#include <QString>
#include <QStringList>

#include "models/answer_view.hpp"
#include "models/days/days_view.hpp"

namespace touch {

//   leading   until when, what to switch off, what to read next; who depends on a medical device is
//             told before them by when to act
//   further   departures, contradictions, what it was before the last reading
//   odd       places in the log of what cannot be true together
//   now       share of the days that has gone by
struct NowView {
    AnswerView answer;
    bool act_first = false;
    QStringList leading;
    QStringList further;
    QList<int> odd;
    double now = 0.0;
    std::shared_ptr<const DaysView> days;
};

//   takes   text of a scenario file; at "2026-01-15T21:30:00"; file, beside which lie the files
//           that the scenario names, may be empty
[[nodiscard]] NowView now_view(const QString& text, const QString& file, const QString& at);

// Before a moment the whole of what is stored, from then on the fan.
//   now   share of the width
[[nodiscard]] DaysView burnt_until(DaysView view, double now);

}  // namespace touch
