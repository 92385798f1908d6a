#include "models/now/now_view.hpp"

#include <algorithm>

#include "answers/answer_of.hpp"
#include "answers/now/days.hpp"
#include "answers/now/leading.hpp"
#include "models/days/days_view_of.hpp"
#include "models/fields/weather_choices.hpp"
#include "models/words/told.hpp"
#include "notes/understand.hpp"
#include "questions/now.hpp"
#include "units/clock.hpp"

namespace touch {

namespace {

NowView refused(const units::Errors& errors) {
    NowView view{.answer = no_answer(errors), .days = std::make_shared<const DaysView>()};
    view.leading << view.answer.sentence;
    return view;
}

// Height of a curve at a place of its width.
double height_at(const QList<QPointF>& curve, double at) {
    const auto after =
        std::lower_bound(curve.begin(), curve.end(), at,
                         [](const QPointF& point, double x) { return point.x() < x; });
    if (after == curve.end()) return curve.isEmpty() ? 0.0 : curve.back().y();
    if (after == curve.begin()) return after->y();
    const QPointF& before = *(after - 1);
    const double wide = after->x() - before.x();
    return wide > 0.0 ? before.y() + (after->y() - before.y()) * (at - before.x()) / wide
                      : after->y();
}

QList<QPointF> behind(const QList<QPointF>& curve, double at) {
    QList<QPointF> points;
    for (const QPointF& point : curve)
        if (point.x() > at) points.append(point);
    return points;
}

// An entry is pinned to its hour under the number that it has in the log.
QList<Pin> pins_of(const scenario::Scenario& scenario, const std::vector<std::size_t>& odd,
                   double hours) {
    QList<Pin> pins;
    for (const std::size_t place : scenario::standing(scenario.log)) {
        const auto& entry = scenario.log[place];
        const double at = (entry.at - scenario.outage.starts) / units::hour;
        if (at < 0.0 || at > hours) continue;
        const bool is_odd = std::ranges::find(odd, place) != odd.end();
        pins.append({.at = at / hours,
                     .mark = is_odd ? QStringLiteral("caution") : QStringLiteral("note"),
                     .text = told(notes::in_short(entry)),
                     .number = int(place) + 1});
    }
    return pins;
}

}  // namespace

DaysView burnt_until(DaysView view, double now) {
    const double at = now * view.hours;
    const double stored = height_at(view.stored, at);
    const double low = height_at(view.stored_low, at);
    const double high = height_at(view.stored_high, at);
    QList<QPointF> upper;
    for (const QPointF& point : view.stored)
        if (point.x() < at) upper.append(point);
    upper.append({at, stored});
    QList<QPointF> lower{{0.0, 0.0}, {at, 0.0}, {at, low}};
    upper.append({at, high});
    lower.append(behind(view.stored_low, at));
    upper.append(behind(view.stored_high, at));
    view.stored_low = lower;
    view.stored_high = upper;
    return view;
}

NowView now_view(const QString& text, const QString& file, const QString& at) {
    const auto read = read_shown(text, file);
    if (!read) return refused(read.error());
    const auto moment = units::read_local_time(at.toStdString());
    if (!moment) return refused(moment.error());
    const auto found = questions::find(*read, questions::NowAsked{.at = *moment, .fan = true}, {});
    if (!found) return refused(found.error());
    const auto& outlook = found->outlook;
    auto answer = answers::answer_of(*found);
    answer.days = answers::now_days(found->scenario, outlook);
    NowView view;
    const auto leading = answers::leading_sentences(found->scenario, *moment, outlook);
    view.act_first = leading > 3;
    for (std::size_t i = 0; i < answer.sentences.size(); ++i)
        (i < leading ? view.leading : view.further) << told(answer.sentences[i]);
    std::vector<std::size_t> odd;
    if (outlook.contradiction) odd = outlook.contradiction->odd;
    for (const std::size_t place : odd)
        view.odd << int(place);
    DaysView days = days_view_of(answer);
    view.now =
        days.hours > 0.0 ? std::min<double>(1.0, outlook.now / units::hour / days.hours) : 0.0;
    days = burnt_until(std::move(days), view.now);
    days.pins = pins_of(found->scenario, odd, days.hours);
    view.days = std::make_shared<const DaysView>(std::move(days));
    answer.days.reset();
    view.answer = answer_view_of(std::move(answer), read->warnings);
    return view;
}

}  // namespace touch
