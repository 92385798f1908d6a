#include "models/days_view_of.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "models/as_wished.hpp"
#include "models/shown_amount.hpp"

#include "report/clock_words.hpp"
#include "scenario/finding.hpp"
#include "units/text.hpp"

namespace touch {

namespace {

using report::DaysChart;
using units::hour;
using units::watt;
using units::watt_hour;

QString text(std::string_view words) {
    return told(words);
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
    return told_amount(units::show(value * watt_hour));
}

QString power(double value) {
    return told_amount(units::show(value * watt));
}

QList<QPointF> curve(const std::vector<double>& at, const std::vector<double>& value) {
    QList<QPointF> points;
    points.reserve(static_cast<qsizetype>(at.size()));
    for (std::size_t i = 0; i < at.size(); ++i)
        points.append({at[i], value[i]});
    return thinned(points, most_points);
}

double largest(const std::vector<double>& values) {
    return values.empty() ? 0.0 : *std::ranges::max_element(values);
}

double number_at(const report::Answer& answer, std::string_view path, double otherwise) {
    const report::Value* value = report::value_at(answer.values, path);
    if (!value) return otherwise;
    const auto* quantity = std::get_if<report::Quantity>(&value->held);
    return quantity ? quantity->value : otherwise;
}

units::LocalTime time_at(const DaysChart& chart, double hours) {
    return chart.starts + hours * hour;
}

void show_days(const DaysChart& chart, DaysView& view) {
    const auto share = [&chart](double at) { return std::clamp(at / chart.lasts, 0.0, 1.0); };
    for (const auto& night : chart.nights) {
        view.nights.append({.from = share(night.from), .to = share(night.to)});
    }
    units::LocalTime midnight = units::midnight_before(chart.starts);
    while (midnight < chart.starts + chart.lasts * hour) {
        const units::LocalTime next = midnight + units::day;
        const QString name = text(report::short_weekday(midnight));
        const auto date = units::date_of(midnight);
        view.days.append({.span = {.from = share((midnight - chart.starts) / hour),
                                   .to = share((next - chart.starts) / hour)},
                          .name = QStringLiteral("%1 %2").arg(name).arg(unsigned(date.day())),
                          .short_name = name});
        midnight = next;
    }
}

QString sky_at(const DaysChart& chart, double at) {
    const bool night = std::ranges::any_of(
        chart.nights, [at](const auto& span) { return span.from <= at && at < span.to; });
    return night ? QObject::tr("night") : QObject::tr("day");
}

// The last point at or before an hour after the start.
std::size_t point_at(const DaysChart& chart, double hours) {
    const auto after = std::ranges::upper_bound(chart.at, hours);
    return after == chart.at.begin() ? 0 : static_cast<std::size_t>(after - chart.at.begin()) - 1;
}

// Energy of a power that holds from one point to the next, between two hours.
double energy_between(const DaysChart& chart, const std::vector<double>& of, double from,
                      double to) {
    double sum = 0.0;
    for (std::size_t point = point_at(chart, from); point < chart.at.size() && chart.at[point] < to;
         ++point) {
        const double begins = std::max(from, chart.at[point]);
        const double ends = point + 1 < chart.at.size() ? std::min(to, chart.at[point + 1]) : to;
        sum += of[point] * std::max(0.0, ends - begins);
    }
    return sum;
}

// The balance of the hour before: what was stored, what came and went, what is stored.
QStringList working_of_hour(const DaysChart& chart, double hour_ends) {
    const double begins = hour_ends - 1.0;
    if (begins < 0.0)
        return {QObject::tr("%1 is stored as the outage begins.")
                    .arg(energy(chart.likely[point_at(chart, hour_ends)]))};
    const double before = chart.likely[point_at(chart, begins)];
    const double after = chart.likely[point_at(chart, hour_ends)];
    const double sun = energy_between(chart, chart.sun, begins, hour_ends);
    const double wanted = energy_between(chart, chart.wanted, begins, hour_ends);
    const double served = energy_between(chart, chart.served, begins, hour_ends);
    const double rest = before + sun - served - after;
    QStringList lines{
        QObject::tr("%1 was stored an hour before.").arg(energy(before)),
        QObject::tr("+ %1 was offered by the sun in that hour.").arg(energy(sun)),
        QObject::tr("− %1 went to the loads.").arg(energy(served)),
        rest >= 0.0
            ? QObject::tr("− %1 was lost in inverter, wiring and packs, or not taken up by full or "
                          "cold packs.")
                  .arg(energy(rest))
            : QObject::tr("+ %1 came from other chargers, beyond all losses.").arg(energy(-rest)),
        QObject::tr("= %1 is stored now: likely; %2 to %3 when all turns out badly or well.")
            .arg(energy(after), energy(chart.earliest[point_at(chart, hour_ends)]),
                 energy(chart.latest[point_at(chart, hour_ends)]))};
    if (wanted - served > 1.0)
        lines << QObject::tr("The loads went without %1.").arg(energy(wanted - served));
    lines << QObject::tr(
        "Each loss with its formula and source stands under “How it was worked "
        "out”.");
    return lines;
}

// One row for every full hour: the last point at or before it.
void show_moments(const DaysChart& chart, DaysView& view) {
    const int hours = static_cast<int>(std::floor(chart.lasts));
    for (int row = 0; row <= hours && !chart.at.empty(); ++row) {
        const std::size_t point = point_at(chart, row);
        const bool dark = chart.served[point] < chart.wanted[point];
        const double left = view.candle.likely - row;
        view.moments.append(
            {.at = row / chart.lasts,
             .burnt = double(row),
             .time = text(report::weekday_and_time(time_at(chart, row))),
             .stored = QObject::tr("%1 stored").arg(energy(chart.likely[point])),
             .range = QObject::tr("%1 to %2")
                          .arg(energy(chart.earliest[point]), energy(chart.latest[point])),
             .loads = dark ? QObject::tr("loads go without")
                           : QObject::tr("loads %1").arg(power(chart.wanted[point])),
             .sun = QObject::tr("sun %1").arg(power(chart.sun[point])),
             .sky = sky_at(chart, row),
             .left = left > 0.0 ? text(report::length_in_words(left * hour)) : QObject::tr("out"),
             .working = working_of_hour(chart, row)});
    }
}

// Full hours at whose end more is stored than at their beginning.
QList<Candle::Hours> sunny_hours(const DaysChart& chart) {
    QList<Candle::Hours> sunny;
    for (double hour_begins = 0.0; hour_begins + 1.0 <= chart.lasts; hour_begins += 1.0) {
        const double before = chart.likely[point_at(chart, hour_begins)];
        const double after = chart.likely[point_at(chart, hour_begins + 1.0)];
        if (!(after > before)) continue;
        if (!sunny.isEmpty() && sunny.back().to == hour_begins) {
            sunny.back().to = hour_begins + 1.0;
        } else {
            sunny.append({.from = hour_begins, .to = hour_begins + 1.0});
        }
    }
    return sunny;
}

void show_candle(const report::Answer& answer, const DaysChart& chart, DaysView& view) {
    Candle& candle = view.candle;
    candle.outage = chart.lasts;
    candle.likely = std::min(number_at(answer, "lasts", 0.0), chart.lasts);
    candle.earliest = std::min(number_at(answer, "earliest.lasts", candle.likely), candle.likely);
    candle.latest =
        std::clamp(number_at(answer, "latest.lasts", candle.likely), candle.likely, chart.lasts);
    candle.sunny = sunny_hours(chart);
    const int days = static_cast<int>(std::floor(chart.lasts / 24.0));
    for (int day = 1; day <= days; ++day) {
        candle.marks.append(
            {.hours = 24.0 * day,
             .text = day == 1 ? QObject::tr("1 day") : QObject::tr("%1 days").arg(day)});
    }
    candle.spoken = QObject::tr("Burns %1 of the %2 that the outage lasts.")
                        .arg(text(report::length_in_words(candle.likely * hour)),
                             text(report::length_in_words(candle.outage * hour)));
}

void show_curves(const DaysChart& chart, DaysView& view) {
    view.hours = chart.lasts;
    view.stored_low = curve(chart.at, chart.earliest);
    view.stored = curve(chart.at, chart.likely);
    view.stored_high = curve(chart.at, chart.latest);
    view.loads = curve(chart.at, chart.wanted);
    view.sun = curve(chart.at, chart.sun);
    const Scale energies = scale_above(std::max(chart.top, largest(chart.latest)));
    const Scale powers = scale_above(std::max(largest(chart.wanted), largest(chart.sun)));
    view.energy_top = energies.top;
    view.power_top = powers.top;
    view.energy_ticks = ticks_of(energies, energy);
    view.power_ticks = ticks_of(powers, power);
}

void show_findings(const report::Answer& answer, DaysView& view) {
    int number = 0;
    view.findings = defect_texts(answer);
    for (const report::PinnedFinding& pinned : answer.findings) {
        FindingText finding = finding_text(pinned.finding);
        const bool has_hour = pinned.at.has_value() && view.hours > 0.0;
        if (has_hour) {
            finding.pin = ++number;
            view.pins.append({.at = std::clamp<double>(*pinned.at / hour / view.hours, 0.0, 1.0),
                              .mark = finding.mark,
                              .text = QStringLiteral("%1: %2").arg(text(pinned.when), finding.text),
                              .number = number});
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

DaysView days_view_of(const report::Answer& answer) {
    DaysView view;
    view.answered = answer.days.has_value();
    QStringList rest;
    for (const std::string& sentence : answer.sentences)
        rest << text(sentence);
    if (!rest.isEmpty()) view.sentence = rest.takeFirst();
    view.range = rest.join(QLatin1Char(' '));
    view.spoken = view.sentence;
    if (answer.days) {
        const DaysChart& chart = *answer.days;
        show_curves(chart, view);
        show_days(chart, view);
        show_candle(answer, chart, view);
        show_moments(chart, view);
    }
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
