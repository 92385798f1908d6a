#include "models/days/days_view_of.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "answers/exhibits.hpp"
#include "models/words/shown_amount.hpp"
#include "scenario/finding.hpp"
#include "units/said.hpp"

namespace touch {

namespace {

using answers::DaysChart;
using units::hour;
using units::watt;
using units::watt_hour;

QString text(const words::Said& said) {
    return told(said);
}

template <class Print>
QList<Tick> ticks_of(const Scale& scale, Print print) {
    QList<Tick> ticks;
    for (int number = 0; number * scale.step <= scale.top * 1.0001; ++number) {
        const double value = number * scale.step;
        ticks.append({.at = value / scale.top, .text = print(value)});
    }
    return ticks;
}

QString energy(double value) {
    return told(units::amount(value * watt_hour));
}

QString power(double value) {
    return told(units::amount(value * watt));
}

QList<QPointF> curve(const std::vector<double>& at, const std::vector<double>& value) {
    QList<QPointF> points;
    points.reserve(static_cast<qsizetype>(at.size()));
    for (std::size_t i = 0; i < std::min(at.size(), value.size()); ++i)
        points.append({at[i], value[i]});
    return thinned(points, most_points);
}

// Stairs: the mean power of each hour.
template <class Mean>
QList<QPointF> stairs(const DaysChart& chart, Mean mean) {
    QList<QPointF> stairs;
    for (const DaysChart::Hour& of : chart.hours) {
        stairs.append({of.from, mean(of)});
        stairs.append({of.to, mean(of)});
    }
    return thinned(stairs, most_stairs);
}

// What the first `count` priorities ask for together; all of it where none are told apart.
double asked_by(const DaysChart::Hour& of, std::size_t count, std::size_t priorities) {
    if (count == priorities || of.wanted_by.size() < count) return of.mean(of.wanted);
    double energy = 0.0;
    for (std::size_t first = 0; first < count; ++first)
        energy += of.wanted_by[first];
    return of.mean(std::min(energy, of.wanted));
}

// The uppermost ends at what the account of the hour says is wanted.
QList<Stack> stacks_of(const DaysChart& chart) {
    const std::size_t priorities = std::max<std::size_t>(1, chart.priorities.size());
    const auto up_to = [&](std::size_t count) {
        return stairs(chart, [&](const DaysChart::Hour& of) {
            return count == 0 ? 0.0 : asked_by(of, count, priorities);
        });
    };
    QList<Stack> stacks;
    for (std::size_t number = 0; number < priorities; ++number)
        stacks.append({.priority = chart.priorities.empty() ? 0 : chart.priorities[number],
                       .lower = up_to(number),
                       .upper = up_to(number + 1)});
    return stacks;
}

double highest(const QList<QPointF>& curve) {
    double top = 0.0;
    for (const QPointF& point : curve)
        top = std::max(top, point.y());
    return top;
}

double largest(const std::vector<double>& values) {
    return values.empty() ? 0.0 : *std::ranges::max_element(values);
}

units::LocalTime time_at(const DaysChart& chart, double hours) {
    return chart.starts + hours * hour;
}

void show_nights(const DaysChart& chart, DaysView& view) {
    const auto share = [&chart](double at) { return std::clamp(at / chart.lasts, 0.0, 1.0); };
    for (const auto& night : chart.nights) {
        view.nights.append({.from = share(night.from), .to = share(night.to)});
    }
}

QString sky_at(const DaysChart& chart, double at) {
    const bool night = std::ranges::any_of(
        chart.nights, [at](const auto& span) { return span.from <= at && at < span.to; });
    return night ? QObject::tr("night") : QObject::tr("day");
}

// The balance of an hour by the clock's own account: what was stored, what came and went, and what
// is stored at its end.
QStringList working_of_hour(const DaysChart::Hour& of) {
    QStringList lines{
        QObject::tr("%1 is stored as this hour begins.").arg(energy(of.stored_before)),
        QObject::tr("+ %1 comes from the sun, which offers %2.")
            .arg(energy(of.sun_taken), energy(of.sun_offered)),
        QObject::tr("− %1 goes to the loads.").arg(energy(of.served)),
        QObject::tr("− %1 is lost in inverter, wiring and packs.").arg(energy(of.lost)),
        QObject::tr("= %1 is stored at its end: likely; %2 to %3 four times in five.")
            .arg(energy(of.stored), energy(of.nine_in_ten), energy(of.one_in_ten))};
    if (of.charger_taken > 0.05)
        lines.insert(2,
                     QObject::tr("+ %1 comes from other chargers.").arg(energy(of.charger_taken)));
    if (of.wanted - of.served > 0.05)
        lines << QObject::tr("The loads go without %1.").arg(energy(of.wanted - of.served));
    lines << QObject::tr(
        "Each loss with its formula and source stands under “How it was worked "
        "out”.");
    return lines;
}

// One row for every hour of the outage, and one for its end.
void show_moments(const DaysChart& chart, DaysView& view) {
    const auto row = [&](double at) {
        const double left = view.candle.burns - at;
        return Moment{
            .at = at / chart.lasts,
            .burnt = at,
            .time = text(answers::weekday_and_time(time_at(chart, at))),
            .sky = sky_at(chart, at),
            .left = left > 0.0 ? text(answers::length_in_words(left * hour)) : QObject::tr("out")};
    };
    const auto range = [](double low, double high) {
        return QObject::tr("%1 to %2").arg(energy(low), energy(high));
    };
    double low = chart.nine_in_ten.empty() ? 0.0 : chart.nine_in_ten.front();
    double high = chart.one_in_ten.empty() ? 0.0 : chart.one_in_ten.front();
    for (const DaysChart::Hour& of : chart.hours) {
        const bool dark = of.wanted - of.served > 1e-6 * of.wanted;
        Moment moment = row(of.from);
        moment.level = of.stored_before / view.energy_top;
        moment.stored = QObject::tr("%1 stored").arg(energy(of.stored_before));
        moment.range = range(low, high);
        moment.loads = dark ? QObject::tr("loads go without")
                            : QObject::tr("loads %1").arg(power(of.mean(of.wanted)));
        moment.sun = QObject::tr("sun %1").arg(power(of.mean(of.sun_offered)));
        moment.working = working_of_hour(of);
        view.moments.append(moment);
        low = of.nine_in_ten;
        high = of.one_in_ten;
    }
    if (chart.hours.empty()) return;
    Moment end = row(chart.lasts);
    end.level = chart.hours.back().stored / view.energy_top;
    end.stored = QObject::tr("%1 stored").arg(energy(chart.hours.back().stored));
    end.range = range(low, high);
    end.loads = chart.still_out.empty() ? QObject::tr("the outage is over")
                                        : QObject::tr("still out %1 times in 100")
                                              .arg(std::lround(100.0 * chart.still_out.back()));
    end.working = {QObject::tr("%1 is stored at the end.").arg(energy(chart.hours.back().stored))};
    view.moments.append(end);
}

// Full hours at whose end more is stored than at their beginning.
QList<Candle::Hours> sunny_hours(const DaysChart& chart) {
    QList<Candle::Hours> sunny;
    for (const DaysChart::Hour& of : chart.hours) {
        if (!(of.stored > of.stored_before) || of.to - of.from < 0.999) continue;
        if (!sunny.isEmpty() && sunny.back().to == of.from) {
            sunny.back().to = of.to;
        } else {
            sunny.append({.from = of.from, .to = of.to});
        }
    }
    return sunny;
}

void show_candle(const DaysChart& chart, DaysView& view) {
    Candle& candle = view.candle;
    candle.outage = chart.lasts;
    candle.burns = chart.burns.half;
    candle.likely = std::min(candle.burns, chart.lasts);
    candle.earliest = std::min(chart.burns.nine_in_ten, candle.likely);
    candle.latest = std::clamp(chart.burns.one_in_ten, candle.likely, chart.lasts);
    candle.sunny = sunny_hours(chart);
    const int days = static_cast<int>(std::floor(chart.lasts / 24.0));
    for (int day = 1; day <= days; ++day) {
        candle.marks.append(
            {.hours = 24.0 * day,
             .text = day == 1 ? QObject::tr("1 day") : QObject::tr("%1 days").arg(day)});
    }
    const double of = chart.looked_at.value_or(candle.outage);
    const double burns = std::min(candle.burns, of);
    candle.spoken = (chart.looked_at ? QObject::tr("Burns %1 of the %2 that are looked at.")
                                     : QObject::tr("Burns %1 of the %2 that the outage lasts."))
                        .arg(text(answers::length_in_words(burns * hour)),
                             text(answers::length_in_words(of * hour)));
}

constexpr double a_minute = 1.0 / 60.0;  // h

// A time of the answer, no sharper than it is known.
QString time_told(const DaysChart& chart, double hours, bool counted_on) {
    const double of = chart.looked_at.value_or(chart.lasts);
    if (hours >= of - 1e-6)
        return chart.looked_at ? QObject::tr("all days looked at") : QObject::tr("the end");
    const auto lasts = hours * hour;
    return text(counted_on ? answers::counted_on_in_words(chart.starts, lasts)
                           : answers::end_in_words(chart.starts, lasts));
}

std::optional<double> percent_at(const answers::Answer& answer, std::string_view path) {
    const answers::Value* value = answers::value_at(answer.values, path);
    const auto* quantity = value ? std::get_if<answers::Quantity>(&value->held) : nullptr;
    return quantity ? std::optional(quantity->value) : std::nullopt;
}

// Of 100 cases, downwards; neither never nor always, which nobody knows.
QString of_a_hundred(double percent) {
    if (percent < 1.0) return QObject::tr("under 1 in 100");
    if (percent > 99.0) return QObject::tr("over 99 in 100");
    return QObject::tr("%1 in 100").arg(int(std::floor(percent + 1e-6)));
}

std::optional<AnswerFigure> chance_told(const answers::Answer& answer, bool open_ended) {
    const auto of = percent_at(answer, "chance.of");
    if (!of) return std::nullopt;
    AnswerFigure told{.label = open_ended ? QObject::tr("longer than the outage")
                                          : QObject::tr("chance to the end"),
                      .value = of_a_hundred(*of),
                      .detail = {}};
    const auto low = percent_at(answer, "chance.low");
    const auto high = percent_at(answer, "chance.high");
    if (low && high)
        told.detail = QObject::tr("%1 to %2")
                          .arg(QString::number(int(std::floor(*low + 1e-6))),
                               QString::number(int(std::ceil(*high - 1e-6))));
    return told;
}

void show_answer(const answers::Answer& answer, DaysView& view) {
    if (!answer.days) return;
    const DaysChart& chart = *answer.days;
    // Where the unit may not carry its loads at all the sentence tells why, and no time does.
    if (chart.burns.nine_in_ten < a_minute) return;
    const auto chance = chance_told(answer, chart.looked_at.has_value());
    if (!chance) {
        view.told = {{.label = QObject::tr("on likely figures until"),
                      .value = time_told(chart, chart.burns.half, false),
                      .detail = {}}};
        return;
    }
    view.told = {{.label = QObject::tr("nine times in ten until"),
                  .value = time_told(chart, chart.burns.nine_in_ten, true),
                  .detail = {}},
                 {.label = QObject::tr("most likely until"),
                  .value = time_told(chart, chart.burns.half, false),
                  .detail = {}},
                 *chance};
}

void show_curves(const DaysChart& chart, DaysView& view) {
    view.starts = chart.starts;
    view.hours = chart.lasts;
    view.ends = {.from = chart.burns.nine_in_ten / chart.lasts,
                 .to = chart.burns.one_in_ten / chart.lasts};
    view.likely_end = chart.burns.half / chart.lasts;
    view.stored_low = curve(chart.at, chart.nine_in_ten);
    view.stored = curve(chart.at, chart.likely);
    view.stored_high = curve(chart.at, chart.one_in_ten);
    view.stored_lower = curve(chart.at, chart.three_in_four);
    view.stored_upper = curve(chart.at, chart.one_in_four);
    view.stacks = stacks_of(chart);
    view.sun = stairs(chart, [](const DaysChart::Hour& of) { return of.mean(of.sun_offered); });
    const Scale energies = scale_above(std::max(chart.top, largest(chart.one_in_ten)));
    const Scale powers =
        scale_above(std::max(highest(view.stacks.back().upper), highest(view.sun)));
    view.energy_top = energies.top;
    view.power_top = powers.top;
    view.empty_at = chart.empty / energies.top;
    view.energy_ticks = ticks_of(energies, energy);
    view.power_ticks = ticks_of(powers, power);
}

// One overload a kind of exhibit: what the Days page shows of it.
struct Drawn {
    DaysView& view;

    void operator()(const DaysChart* one) const {
        show_curves(*one, view);
        show_nights(*one, view);
        show_candle(*one, view);
        show_moments(*one, view);
        view.answered = true;
    }
    void operator()(const answers::BuildsView*) const {}
    void operator()(const answers::BarChart*) const {}
    void operator()(const answers::DayCurves*) const {}
    void operator()(const answers::StartChart*) const {}
    void operator()(const answers::WiringDiagram*) const {}
    void operator()(const answers::Account*) const {}  // each moment has that of its hour
    void operator()(const answers::Series*) const {}   // the curves have the same points
};

void show_findings(const answers::Answer& answer, DaysView& view) {
    int number = 0;
    view.findings = defect_texts(answer);
    for (const answers::PinnedFinding& pinned : answer.findings) {
        FindingText finding = finding_text(pinned.finding);
        const bool has_hour =
            pinned.at.has_value() && view.hours > 0.0 && *pinned.at / hour <= view.hours;
        if (has_hour) {
            finding.pin = ++number;
            view.pins.append({.at = std::clamp<double>(*pinned.at / hour / view.hours, 0.0, 1.0),
                              .mark = finding.mark,
                              .text = QStringLiteral("%1: %2").arg(text(pinned.when), finding.text),
                              .number = number,
                              .finding = finding});
        }
        view.findings.append(std::move(finding));
    }
}

}  // namespace

QList<QPointF> thinned(const QList<QPointF>& points, qsizetype most) {
    if (points.size() <= most) return points;
    const qsizetype stretches = std::max<qsizetype>(1, (most - 2) / 2);
    const qsizetype inner = points.size() - 2;
    QList<QPointF> kept{points.front()};
    for (qsizetype stretch = 0; stretch < stretches; ++stretch) {
        const auto first = points.begin() + 1 + stretch * inner / stretches;
        const auto last = points.begin() + 1 + (stretch + 1) * inner / stretches;
        if (first == last) continue;
        auto [low, high] = std::minmax_element(
            first, last, [](const QPointF& a, const QPointF& b) { return a.y() < b.y(); });
        if (high < low) std::swap(low, high);
        kept.append(*low);
        if (high != low) kept.append(*high);
    }
    kept.append(points.back());
    return kept;
}

DaysView days_view_of(const answers::Answer& answer) {
    DaysView view;
    QStringList rest;
    for (const words::Said& sentence : answer.sentences)
        rest << text(sentence);
    if (!rest.isEmpty()) view.sentence = rest.takeFirst();
    view.range = rest.join(QLatin1Char(' '));
    view.spoken = view.sentence;
    for (const answers::Exhibit& exhibit : answers::exhibits_of(answer))
        std::visit(Drawn{view}, exhibit);
    show_answer(answer, view);
    show_findings(answer, view);
    view.cautions = caution_texts(answer);
    view.assumptions = assumption_texts(answer);
    view.figures = figures_of(answer.values);
    view.working = working_of(answer);
    view.closing = text(answer.closing);
    return view;
}

DaysView refusal(const units::Errors& errors) {
    DaysView view;
    view.sentence = QObject::tr("This file cannot be used yet.");
    view.range = QObject::tr("What stands in the way is listed below.");
    view.findings = error_texts(errors, scenario::Severity::stop);
    return view;
}

}  // namespace touch
