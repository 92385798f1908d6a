#include "models/words/plan_text.hpp"

#include <algorithm>
#include <cmath>

#include "answers/answer_of.hpp"
#include "models/days/days_view_of.hpp"
#include "models/fields/weather_choices.hpp"
#include "models/words/told.hpp"
#include "questions/outage.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/set_aside.hpp"
#include "units/said.hpp"

namespace touch {

namespace {

// What the screen shows first; then as many members as every question takes.
constexpr int first_members = 64;

QList<LoadUseText> uses_of(const outage::Plan& plan) {
    units::Energy most{};
    for (const outage::LoadUse& use : plan.loads)
        most = std::max(most, use.per_day);
    QList<LoadUseText> uses;
    for (const outage::LoadUse& use : plan.loads) {
        uses.append({.name = words_of(use.name),
                     .per_day = QObject::tr("%1 a day").arg(told(units::amount(use.per_day))),
                     .share = most > units::Energy() ? double(use.per_day / most) : 0.0});
    }
    return uses;
}

}  // namespace

namespace {

// The plan, and how surely; of the first few members what more packs would do is left out.
DaysView view_of(const QString& text, const QString& file, bool first) {
    auto read = read_shown(text, file);
    if (!read) return refusal(read.error());
    scenario::set_aside(read->scenario);
    const auto found = questions::find(
        *read,
        first ? questions::OutageAsked{.members = first_members, .more_packs = false}
              : questions::OutageAsked{},
        questions::How{});
    if (!found) return refusal(found.error());
    DaysView view = days_view_of(answers::answer_of(*found));
    view.findings += error_texts(read->warnings, scenario::Severity::note);
    view.uses = uses_of(found->plan);
    if (!first)
        view.chances =
            QObject::tr("The chance lies between %1 and %2 in 100, as %3 members tell it.")
                .arg(std::floor(100.0 * found->chance->figures.low.value()))
                .arg(std::ceil(100.0 * found->chance->figures.high.value()))
                .arg(found->chance->figures.members);
    return view;
}

}  // namespace

DaysView plan_text(const QString& text, const QString& file) {
    return view_of(text, file, true);
}

DaysView weighed_text(const QString& text, const QString& file) {
    return view_of(text, file, false);
}

}  // namespace touch
