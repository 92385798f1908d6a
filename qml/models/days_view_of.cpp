#include "models/days_view_of.hpp"

#include <algorithm>
#include <array>
#include <cmath>

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
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString mark_of(scenario::Severity severity) {
    return text(report::word_for(severity));
}

QString word_of(scenario::Severity severity) {
    switch (severity) {
        case scenario::Severity::stop:
            return QObject::tr("STOP");
        case scenario::Severity::caution:
            return QObject::tr("CAUTION");
        case scenario::Severity::note:
            break;
    }
    return QObject::tr("NOTE");
}

// The rounded number that three or four steps of 1, 2 or 5 reach above `most`.
struct Scale {
    double step = 1.0;
    double top = 4.0;
};

Scale scale_above(double most) {
    if (!(most > 0.0)) return {};
    const double size = std::pow(10.0, std::floor(std::log10(most / 3.0)));
    double step = 10.0 * size;
    for (const double digit : {1.0, 2.0, 5.0}) {
        if (most / (digit * size) <= 4.0) {
            step = digit * size;
            break;
        }
    }
    return {.step = step, .top = step * std::ceil(most / step * 1.001)};
}

template <class Print>
QList<Tick> ticks_of(const Scale& scale, Print print) {
    QList<Tick> ticks;
    for (int number = 0; number * scale.step <= scale.top * 1.0001; ++number) {
        const double value = number * scale.step;
        ticks.append({.at = value / scale.top, .text = text(print(value))});
    }
    return ticks;
}

std::string energy(double value) {
    return units::show(value * watt_hour);
}

std::string power(double value) {
    return units::show(value * watt);
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
             .stored = QObject::tr("%1 stored").arg(text(energy(chart.likely[point]))),
             .range =
                 QObject::tr("%1 to %2")
                     .arg(text(energy(chart.earliest[point])), text(energy(chart.latest[point]))),
             .loads = dark ? QObject::tr("loads go without")
                           : QObject::tr("loads %1").arg(text(power(chart.wanted[point]))),
             .sun = QObject::tr("sun %1").arg(text(power(chart.sun[point]))),
             .sky = sky_at(chart, row),
             .left = left > 0.0 ? text(report::length_in_words(left * hour)) : QObject::tr("out")});
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
    for (const report::PinnedFinding& pinned : answer.findings) {
        const scenario::Finding& finding = pinned.finding;
        const bool has_hour = pinned.at.has_value() && view.hours > 0.0;
        view.findings.append({.mark = mark_of(finding.severity),
                              .word = word_of(finding.severity),
                              .where = text(finding.where),
                              .text = text(finding.text),
                              .mend = text(finding.mend),
                              .source = text(finding.source),
                              .pin = has_hour ? ++number : 0});
        if (!has_hour) continue;
        view.pins.append(
            {.at = std::clamp<double>(*pinned.at / hour / view.hours, 0.0, 1.0),
             .mark = mark_of(finding.severity),
             .text = QStringLiteral("%1: %2").arg(text(pinned.when), text(finding.text)),
             .number = number});
    }
}

// A fault of ours goes first: no number on the page may be relied on.
void show_defect(const report::Answer& answer, DaysView& view) {
    if (!answer.defect) return;
    view.findings.append({.mark = mark_of(scenario::Severity::stop),
                          .word = word_of(scenario::Severity::stop),
                          .where = QObject::tr("this program"),
                          .text = text(*answer.defect),
                          .mend = {},
                          .source = {}});
}

void show_what_stands_behind(const report::Answer& answer, DaysView& view) {
    for (const report::Caution& caution : answer.cautions) {
        view.cautions.append({.mark = mark_of(scenario::Severity::caution),
                              .word = text(caution.hazard),
                              .where = {},
                              .text = text(caution.text),
                              .mend = {},
                              .source = text(caution.source)});
    }
    for (const scenario::Assumption& assumption : answer.assumptions) {
        view.assumptions.append({.mark = {},
                                 .word = text(assumption.where),
                                 .where = {},
                                 .text = text(assumption.text),
                                 .mend = text(assumption.source),
                                 .source = text(assumption.source)});
    }
    view.closing = text(answer.closing);
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
    show_defect(answer, view);
    show_findings(answer, view);
    show_what_stands_behind(answer, view);
    return view;
}

DaysView refusal(const units::Errors& errors) {
    DaysView view;
    view.sentence = QObject::tr("This file cannot be used yet.");
    view.range = QObject::tr("What stands in the way is listed below.");
    for (const units::Error& error : errors) {
        const QString line = error.line > 0 ? QObject::tr("line %1").arg(error.line) : QString();
        QStringList where{text(error.where), line};
        where.removeAll(QString());
        view.findings.append({.mark = mark_of(scenario::Severity::stop),
                              .word = word_of(scenario::Severity::stop),
                              .where = where.join(QStringLiteral(", ")),
                              .text = text(error.found),
                              .mend = text(error.remedy),
                              .source = {}});
    }
    return view;
}

}  // namespace touch
