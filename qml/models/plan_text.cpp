#include "models/plan_text.hpp"

#include <algorithm>
#include <cmath>
#include <memory>

#include "answers/outage/answer.hpp"
#include "models/as_wished.hpp"
#include "models/days_view_of.hpp"
#include "models/weather_choices.hpp"
#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "scenario/file.hpp"
#include "scenario/read.hpp"
#include "scenario/set_aside.hpp"
#include "sizing/members_of.hpp"
#include "units/text.hpp"

namespace touch {

namespace {

constexpr std::uint64_t seed = 1;  // so that the same scenario gives the same chance

// What the screen shows first; then as many members as every question takes.
constexpr int first_members = 64;

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

namespace {

// The plan, and how surely; of the first few members what more packs would do is left out.
DaysView view_of(const QString& text, const QString& file, bool first) {
    auto read = read_shown(text, file);
    if (!read) return refusal(read.error());
    scenario::set_aside(read->scenario);
    const std::string folder = folder_of(file);
    auto made = outage::make_ready(read->scenario, folder);
    if (!made) return refusal(made.error());
    const auto ready = std::make_shared<const outage::Ready>(std::move(*made));
    const auto plan = outage::plan_outage(*ready);
    const auto members = sizing::members_of(read->scenario, folder, ready, seed,
                                            first ? std::optional(first_members) : std::nullopt);
    const auto chance = first ? answers::first_chance_of_outage(read->scenario, members)
                              : answers::chance_of_outage(read->scenario, members);
    DaysView view =
        days_view_of(answers::outage_answer(read->scenario, plan, plan.more_packs, chance));
    view.findings += error_texts(read->warnings, scenario::Severity::note);
    view.uses = uses_of(plan);
    if (!first)
        view.chances =
            QObject::tr("The chance lies between %1 and %2 in 100, as %3 members tell it.")
                .arg(std::floor(100.0 * chance.figures.low.value()))
                .arg(std::ceil(100.0 * chance.figures.high.value()))
                .arg(chance.figures.members);
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
