#include "models/words/scenario_text.hpp"

#include <algorithm>
#include <cmath>

#include <QObject>

#include "answers/clock_words.hpp"
#include "models/words/saved_words.hpp"
#include "models/words/told.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/save.hpp"
#include "units/said.hpp"

namespace touch {

namespace {

QString each(const words::Amount& amount) {
    return QObject::tr("%1 each").arg(told(amount));
}

Turn turn(int count) {
    return {
        .shown = QString::number(count), .value = count, .below = count - 1, .above = count + 1};
}

// Days that are not whole go to the whole ones around them.
Turn turn_days(units::Duration lasts) {
    const double days = lasts / units::day;
    const double whole = std::round(days);
    if (std::abs(days - whole) < 1e-9) return turn(static_cast<int>(whole));
    return {.shown = told(units::amount(lasts)),
            .value = days,
            .below = static_cast<int>(std::floor(days)),
            .above = static_cast<int>(std::ceil(days))};
}

// Where nobody knows: the whole days around the time by which half are over.
Turn turn_days(const scenario::Outage& outage) {
    if (!outage.open_ended) return turn_days(outage.lasts);
    const double half = *outage.half_over_by / units::day;
    return {.shown = QStringLiteral("?"),
            .value = half,
            .below = std::max(1, static_cast<int>(std::floor(half))),
            .above = std::max(1, static_cast<int>(std::ceil(half)))};
}

// A byte order mark at the head of the text stays there.
QString with_its_mark(const std::string& text) {
    return text_of(QByteArray::fromStdString(text)).value_or(QString::fromStdString(text));
}

bool readable(const std::string& text) {
    return scenario::read_scenario(text, std::string()).has_value();
}

}  // namespace

QString in_words(const units::Errors& errors) {
    QStringList lines;
    for (const units::Error& error : errors) {
        units::Error of_this_text = error;
        of_this_text.file.clear();
        of_this_text.line = 0;
        lines << told(words::said<"{text}.">(units::in_words(of_this_text)));
    }
    return lines.join(QLatin1Char('\n'));
}

Counts counts_in(const QString& text) {
    Counts counts;
    const auto read = scenario::read_scenario(text.toStdString(), std::string());
    if (!read) return counts;
    const scenario::Scenario& scenario = read->scenario;
    counts.readable = true;
    counts.title = QString::fromStdString(scenario.title);
    counts.only_pack = scenario.packs.size() == 1;
    if (!scenario.packs.empty()) {
        const scenario::Pack& last = scenario.packs.back();
        counts.packs = turn(last.count);
        counts.pack_key = QStringLiteral("pack[%1].count").arg(scenario.packs.size() - 1);
        counts.pack_detail = each(units::amount(last.capacity));
    }
    if (!scenario.panels.empty()) {
        counts.panels = turn(scenario.panels.front().count);
        counts.panel_detail = each(units::amount(scenario.panels.front().power));
    }
    counts.days = turn_days(scenario.outage);
    counts.days_detail =
        QObject::tr("from %1").arg(told(answers::date_and_time(scenario.outage.starts)));
    return counts;
}

TextOrTrouble with_value(const QString& text, const QString& key, const QString& value) {
    const auto changed =
        scenario::with_value(text.toStdString(), key.toStdString(), value.toStdString());
    if (!changed) return {.text = text, .trouble = in_words(changed.error())};
    return {.text = with_its_mark(*changed), .trouble = {}};
}

TextOrTrouble with_edit(const QString& text,
                        const std::function<units::Result<std::string>(const std::string&)>& edit) {
    const std::string before = text.toStdString();
    const auto after = edit(before);
    if (!after) return {.text = text, .trouble = in_words(after.error())};
    const auto read = scenario::read_scenario(*after, std::string());
    if (!read && readable(before)) return {.text = text, .trouble = in_words(read.error())};
    return {.text = with_its_mark(*after), .trouble = {}};
}

}  // namespace touch
