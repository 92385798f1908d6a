#include "models/days/time_axis.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "models/words/told.hpp"
#include "units/clock.hpp"
#include "units/said.hpp"

namespace touch {

namespace {

using units::LocalTime;
using words::said;
using Form = words::Moment::Form;

constexpr double hours_of_day = 24.0;
constexpr double hours_of_week = 7.0 * hours_of_day;
constexpr double gap = 2.0;  // letters between two names

QString named(LocalTime time, Form form) {
    return told(said<"{when}">(units::moment(time, form)));
}

struct Part {
    LocalTime starts;
    double from = 0.0;
    double to = 0.0;
    double letters_an_hour = 0.0;

    [[nodiscard]] LocalTime at(double hours) const { return starts + hours * units::hour; }
    [[nodiscard]] bool fits(const QString& name, double hours) const {
        return double(name.size()) + gap <= hours * letters_an_hour;
    }
    // Of the day in which the part begins; 0 or before it.
    [[nodiscard]] double midnight() const {
        return (units::midnight_before(at(from)) - starts) / units::hour;
    }
};

QList<TimeTick> hours_in(const Part& part) {
    QList<TimeTick> ticks;
    const double midnight = part.midnight();
    for (const double step : {1.0, 2.0, 3.0, 6.0, 12.0}) {
        const QString longest = named(part.at(midnight + 22.0), Form::clock);
        if (!part.fits(longest, step)) continue;
        const double first = midnight + std::ceil((part.from - midnight) / step - 1e-9) * step;
        for (int number = 0; first + number * step <= part.to + 1e-9; ++number) {
            const double at = first + number * step;
            ticks.append({.at = at, .text = named(part.at(at), Form::clock)});
        }
        return ticks;
    }
    return ticks;
}

// The fullest name of a day that fits into so many hours; empty where none does.
QString day_name(const Part& part, LocalTime day, double hours) {
    const QString weekday = named(day, Form::short_weekday);
    const auto number = unsigned(units::date_of(day).day());
    for (const QString& name : {named(day, Form::short_weekday_date),
                                QStringLiteral("%1 %2").arg(weekday).arg(number), weekday})
        if (part.fits(name, hours)) return name;
    return {};
}

QList<TimeSpan> days_in(const Part& part) {
    QList<TimeSpan> spans;
    for (double at = part.midnight(); at < part.to; at += hours_of_day) {
        const QString name = day_name(part, part.at(at + 0.5 * hours_of_day), hours_of_day);
        if (name.isEmpty()) return {};
        spans.append({.from = at, .to = at + hours_of_day, .name = name});
    }
    return spans;
}

// Every second or third day by its name, which may then reach over its neighbours; none of a long
// part, which is told by weeks. A day that is not whole in the part stays without a name, which would
// stand beside it.
QList<TimeSpan> days_apart_in(const Part& part) {
    constexpr double most_hours = 2.0 * hours_of_week;
    if (part.to - part.from > most_hours) return {};
    for (const int apart : {2, 3}) {
        QList<TimeSpan> spans;
        int whole_days = 0;
        bool all_fit = true;
        for (double at = part.midnight(); at < part.to; at += hours_of_day) {
            TimeSpan span{.from = at, .to = at + hours_of_day, .reach = double(apart)};
            const bool is_whole = span.from >= part.from && span.to <= part.to;
            if (is_whole && whole_days++ % apart == 0) {
                span.name = day_name(part, part.at(at + 0.5 * hours_of_day), apart * hours_of_day);
                all_fit = all_fit && !span.name.isEmpty();
            }
            spans.append(span);
        }
        if (all_fit && whole_days > 0) return spans;
    }
    return {};
}

// So many weeks as it takes for the date of their Monday to fit.
QList<TimeSpan> weeks_in(const Part& part) {
    const double midnight = part.midnight();
    const auto weekday = std::chrono::weekday(
        std::chrono::sys_days(units::date_of(part.at(midnight + 0.5 * hours_of_day))));
    const double monday = midnight - (weekday.iso_encoding() - 1.0) * hours_of_day;
    double together = hours_of_week;
    const QString sample = named(part.at(monday + hours_of_day), Form::day_and_month);
    while (!part.fits(sample + QLatin1Char(' '), together) && together < part.to - part.from)
        together *= 2.0;
    QList<TimeSpan> spans;
    for (double at = monday; at < part.to; at += together)
        spans.append({.from = at,
                      .to = at + together,
                      .name = named(part.at(at + 0.5 * hours_of_day), Form::day_and_month)});
    return spans;
}

}  // namespace

TimeAxis time_axis(LocalTime starts, double from, double to, double width, double letter) {
    if (!(to > from) || !(width > 0.0) || !(letter > 0.0)) return {};
    const Part part{starts, from, to, width / letter / (to - from)};
    TimeAxis axis{.ticks = hours_in(part), .spans = days_in(part)};
    if (axis.spans.isEmpty()) axis.spans = days_apart_in(part);
    if (axis.spans.isEmpty()) axis.spans = weeks_in(part);
    return axis;
}

}  // namespace touch
