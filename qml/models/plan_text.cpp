#include "models/plan_text.hpp"

#include <algorithm>

#include "models/as_wished.hpp"
#include "models/days_view_of.hpp"
#include "models/weather_choices.hpp"

#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "outage/weathers.hpp"
#include "report/outage_answer.hpp"
#include "scenario/file.hpp"
#include "scenario/read.hpp"
#include "units/text.hpp"

namespace touch {

namespace {

constexpr int weathers = 200;      // as the command line runs when nothing is asked for
constexpr std::uint64_t seed = 1;  // so that the same scenario gives the same chance

std::string folder_of(const QString& file) {
    return scenario::folder_of(file.toStdString());
}

QList<LoadUseText> uses_of(const outage::Plan& plan) {
    units::Energy most{};
    for (const outage::LoadUse& use : plan.loads)
        most = std::max(most, use.per_day);
    QList<LoadUseText> uses;
    for (const outage::LoadUse& use : plan.loads) {
        uses.append({.name = words_of(use.name),
                     .per_day = QObject::tr("%1 a day").arg(told_amount(units::show(use.per_day))),
                     .share = most > units::Energy() ? double(use.per_day / most) : 0.0});
    }
    return uses;
}

}  // namespace

DaysView plan_text(const QString& text, const QString& file) {
    const auto read = read_shown(text, file);
    if (!read) return refusal(read.error());
    const auto plan = outage::plan_outage(read->scenario, folder_of(file));
    if (!plan) return refusal(plan.error());
    DaysView view = days_view_of(report::outage_answer(read->scenario, *plan, plan->more_packs));
    view.findings += error_texts(read->warnings, scenario::Severity::note);
    view.uses = uses_of(*plan);
    return view;
}

QString chances_text(const QString& text, const QString& file) {
    const auto read = read_shown(text, file);
    if (!read) return {};
    const auto ready = outage::make_ready(read->scenario, folder_of(file));
    if (!ready || !ready->sky) return {};
    const report::Chances chances =
        report::chances_in_weathers(read->scenario, *ready, weathers, seed);
    return told(report::chance_sentence(chances));
}

}  // namespace touch
