#include "support/hand_made_now.hpp"

#include <memory>

#include "models/days/days_view_of.hpp"
#include "support/hand_made_plan.hpp"

namespace touch_tests {

touch::NowView hand_made_now(const QString& text, const QString&, const QString& at) {
    touch::NowView view;
    const auto answer = hand_made_answer(40.0);
    view.answer = touch::answer_view_of(answer);
    view.leading = {"Count on it until the morning of Friday (nine times in ten). " + at,
                    "Switch off next: chest freezer. By itself it buys about 7 h.",
                    "Read next: a plug-in meter on chest freezer, for a day."};
    const auto entries = text.count(QStringLiteral("[[log]]"));
    view.further << QStringLiteral("%1 entries.").arg(entries);
    view.now = 27.5 / 48.0;
    auto days = touch::burnt_until(touch::days_view_of(answer), view.now);
    for (qsizetype entry = 0; entry < entries; ++entry)
        days.pins.append(
            {.at = view.now, .mark = "note", .text = "entry", .number = int(entry) + 1});
    view.days = std::make_shared<const touch::DaysView>(std::move(days));
    return view;
}

}  // namespace touch_tests
