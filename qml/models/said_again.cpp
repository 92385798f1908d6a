#include "models/said_again.hpp"

#include <array>
#include <atomic>
#include <utility>

#include <QLocale>
#include <QObject>

#include "models/said_again_forms.hpp"

namespace touch {

namespace {

std::atomic<bool>& other_language() {
    static std::atomic<bool> other{false};
    return other;
}

QString day_again(const QString& english) {
    const QLocale from(QLocale::English);
    const QLocale to;
    const QString name = english.section(QLatin1Char(' '), 0, 0);
    for (int day = 1; day <= 7; ++day) {
        for (const auto format : {QLocale::LongFormat, QLocale::ShortFormat}) {
            if (name != from.dayName(day, format)) continue;
            const QString date = english.section(QLatin1Char(' '), 1);
            const QString said = to.dayName(day, format).remove(QLatin1Char('.'));
            if (date.isEmpty()) return said;
            for (int month = 1; month <= 12; ++month) {
                const QString short_name = from.standaloneMonthName(month, QLocale::ShortFormat);
                if (date.section(QLatin1Char(' '), 1, 1) == short_name) {
                    return QObject::tr("%1 %2 %3", "weekday, day, month")
                        .arg(said, date.section(QLatin1Char(' '), 0, 0),
                             to.monthName(month, QLocale::ShortFormat).remove(QLatin1Char('.')));
                }
            }
            return said + QLatin1Char(' ') + date;
        }
    }
    return english;
}

}  // namespace

Saying saying(const char* form, std::function<QString(const Captured&)> again) {
    return {QRegularExpression(QRegularExpression::anchoredPattern(QString::fromUtf8(form))),
            std::move(again)};
}

QString only_if_known(const QList<Saying>& sayings, const QString& text) {
    for (const Saying& one : sayings) {
        const QRegularExpressionMatch match = one.form.match(text);
        if (!match.hasMatch()) continue;
        const QString again = one.again(match.capturedTexts());
        if (!again.isEmpty()) return again;
    }
    return {};
}

QString first_that_fits(const QList<Saying>& sayings, const QString& text) {
    const QString again = only_if_known(sayings, text);
    return again.isEmpty() ? text : again;
}

QString number_again(const QString& english) {
    const QString small = english.toLower();
    const std::array<std::pair<const char*, QString>, 12> numbers{
        {{"one", QObject::tr("one")},
         {"two", QObject::tr("two")},
         {"three", QObject::tr("three")},
         {"four", QObject::tr("four")},
         {"five", QObject::tr("five")},
         {"six", QObject::tr("six")},
         {"seven", QObject::tr("seven")},
         {"eight", QObject::tr("eight")},
         {"nine", QObject::tr("nine")},
         {"ten", QObject::tr("ten")},
         {"eleven", QObject::tr("eleven")},
         {"twelve", QObject::tr("twelve")}}};
    for (const auto& [word, again] : numbers) {
        if (small != QLatin1String(word)) continue;
        QString said = again;
        if (english.front().isUpper()) said.front() = said.front().toUpper();
        return said;
    }
    return english;
}

QString time_again(const QString& english) {
    static const QList<Saying> times{
        saying("about the end of (.+)",
               [](const Captured& c) {
                   return QObject::tr("about the end of %1").arg(day_again(c[1]));
               }),
        saying("the early hours of (.+)",
               [](const Captured& c) {
                   return QObject::tr("the early hours of %1").arg(day_again(c[1]));
               }),
        saying("the morning of (.+)",
               [](const Captured& c) {
                   return QObject::tr("the morning of %1").arg(day_again(c[1]));
               }),
        saying(
            "about noon on (.+)",
            [](const Captured& c) { return QObject::tr("about noon on %1").arg(day_again(c[1])); }),
        saying("the afternoon of (.+)",
               [](const Captured& c) {
                   return QObject::tr("the afternoon of %1").arg(day_again(c[1]));
               }),
        saying("the evening of (.+)",
               [](const Captured& c) {
                   return QObject::tr("the evening of %1").arg(day_again(c[1]));
               }),
        saying("(.+) (\\d\\d:\\d\\d)", [](const Captured& c) {
            return QStringLiteral("%1 %2").arg(day_again(c[1]), c[2]);
        })};
    return first_that_fits(times, english);
}

namespace {

QString what_then_again(const QString& english) {
    const std::array<std::pair<const char*, QString>, 7> endings{
        {{"then the packs are empty", QObject::tr("then the packs are empty")},
         {"then the packs are as far down as you allow",
          QObject::tr("then the packs are as far down as you allow")},
         {"then the inverter switches off on low voltage",
          QObject::tr("then the inverter switches off on low voltage")},
         {"then a pack's own protection opens", QObject::tr("then a pack's own protection opens")},
         {"then a fuse opens", QObject::tr("then a fuse opens")},
         {"then the loads ask for more than the inverter gives",
          QObject::tr("then the loads ask for more than the inverter gives")},
         {"then something goes without", QObject::tr("then something goes without")}}};
    for (const auto& [words, again] : endings) {
        if (english == QLatin1String(words)) return again;
    }
    return english;
}

// How many more packs: said apart for one, as the words around it change.
bool is_one(const QString& number) {
    return number.toLower() == QStringLiteral("one");
}

QString through_again(const Captured& c) {
    return is_one(c[1])
               ? QObject::tr("On likely figures one more pack carries you through to the end, %1.")
                     .arg(time_again(c[2]))
               : QObject::tr("On likely figures %1 more packs carry you through to the end, %2.")
                     .arg(number_again(c[1]), time_again(c[2]));
}

QString short_of_again(const Captured& c) {
    return is_one(c[1]) ? QObject::tr(
                              "On likely figures one more pack carries you to %1, which is still "
                              "short of %2.")
                              .arg(time_again(c[2]), time_again(c[3]))
                        : QObject::tr(
                              "On likely figures %1 more packs carry you to %2, which is still "
                              "short of %3.")
                              .arg(number_again(c[1]), time_again(c[2]), time_again(c[3]));
}

// What would make it surer; nothing where nothing is said of it.
QString surer_again(const QString& english) {
    static const QList<Saying> all{
        saying("; up to (\\d+) more packs do not make it sure enough",
               [](const Captured& c) {
                   return QObject::tr("; up to %1 more packs do not make it sure enough").arg(c[1]);
               }),
        saying("; (\\w+) more packs? lasts? through (\\d+) %", [](const Captured& c) {
            return is_one(c[1]) ? QObject::tr("; one more pack lasts through %1 %").arg(c[2])
                                : QObject::tr("; %1 more packs last through %2 %")
                                      .arg(number_again(c[1]), c[2]);
        })};
    return first_that_fits(all, english);
}

QString weathers_again(const QString& english) {
    if (english == QStringLiteral("chance weathers")) return QObject::tr("chance weathers");
    if (english == QStringLiteral("start dates in the weather file"))
        return QObject::tr("start dates in the weather file");
    return english;
}

QString hundred_again(const QString& english) {
    static const QList<Saying> spreads{saying(
        "(\\d+) to (\\d+) in a hundred",
        [](const Captured& c) { return QObject::tr("%1 to %2 in a hundred").arg(c[1], c[2]); })};
    return first_that_fits(spreads, english);
}

const QList<Saying>& lengths() {
    static const QList<Saying> all{
        saying("([\\d.]+) days",
               [](const Captured& c) {
                   return QObject::tr("%1 days").arg(QLocale().toString(c[1].toDouble(), 'g', 6));
               }),
        saying("out", [](const Captured&) { return QObject::tr("out"); })};
    return all;
}

const QList<Saying>& sentences() {
    static const QList<Saying> all{
        saying("Lasts the whole outage; (.+) is left when the power returns on (.+)\\.",
               [](const Captured& c) {
                   return QObject::tr(
                              "Lasts the whole outage; %1 is left when the power returns on %2.")
                       .arg(c[1], time_again(c[2]));
               }),
        saying("Nothing is switched off by that: the packs could carry everything to the end; "
               "(.+) is left then\\.",
               [](const Captured& c) {
                   return QObject::tr(
                              "Nothing is switched off by that: the packs could carry everything "
                              "to the end; %1 is left then.")
                       .arg(c[1]);
               }),
        saying("Nothing is switched off by that: the packs could carry everything until (.+)\\.",
               [](const Captured& c) {
                   return QObject::tr(
                              "Nothing is switched off by that: the packs could carry everything "
                              "until %1.")
                       .arg(time_again(c[1]));
               }),
        saying("Does not carry these loads from the start: (.+)\\.",
               [](const Captured& c) {
                   return QObject::tr("Does not carry these loads from the start; %1.")
                       .arg(what_then_again(QStringLiteral("then ") + c[1]));
               }),
        saying("Lasts until ([^(]+) \\(at the earliest (.+), at best the whole outage\\); (.+)\\.",
               [](const Captured& c) {
                   return QObject::tr(
                              "Lasts until %1 (at the earliest %2, at best the whole outage); %3.")
                       .arg(time_again(c[1]), time_again(c[2]), what_then_again(c[3]));
               }),
        saying("Lasts until ([^(]+) \\(between (.+) and (.+)\\); (.+)\\.",
               [](const Captured& c) {
                   return QObject::tr("Lasts until %1 (between %2 and %3); %4.")
                       .arg(time_again(c[1]), time_again(c[2]), time_again(c[3]),
                            what_then_again(c[4]));
               }),
        saying("Lasts until ([^;(]+); (.+)\\.",
               [](const Captured& c) {
                   return QObject::tr("Lasts until %1; %2.")
                       .arg(time_again(c[1]), what_then_again(c[2]));
               }),
        saying("On likely figures (\\w+) more packs? carr(?:y|ies) you through to the end, (.+)\\.",
               through_again),
        saying(
            "On likely figures (\\w+) more packs? carr(?:y|ies) you to (.+), which is still short "
            "of (.+)\\.",
            short_of_again),
        saying("More packs alone do not make it last longer\\.",
               [](const Captured&) {
                   return QObject::tr("More packs alone do not make it last longer.");
               }),
        saying("If every doubtful figure turns out badly it lasts until (.+)\\.",
               [](const Captured& c) {
                   return QObject::tr("If every doubtful figure turns out badly it lasts until %1.")
                       .arg(time_again(c[1]));
               }),
        saying("It lasts through none of (\\d+) ([^;]+)(;.+)?\\.",
               [](const Captured& c) {
                   return QObject::tr("It lasts through none of %1 %2%3.")
                       .arg(c[1], weathers_again(c[2]), surer_again(c.value(3)));
               }),
        saying("It lasts through all of (\\d+) (.+) \\((.+)\\)\\.",
               [](const Captured& c) {
                   return QObject::tr("It lasts through all of %1 %2 (%3).")
                       .arg(c[1], weathers_again(c[2]), hundred_again(c[3]));
               }),
        saying("Of (\\d+) (.+) it lasts through (\\d+) % \\(([^)]+)\\)(;.+)?\\.",
               [](const Captured& c) {
                   return QObject::tr("Of %1 %2 it lasts through %3 % (%4)%5.")
                       .arg(c[1], weathers_again(c[2]), c[3], hundred_again(c[4]),
                            surer_again(c.value(5)));
               }),
        saying("Arithmetic, not approval\\. Local codes and licensed practice decide\\.",
               [](const Captured&) {
                   return QObject::tr(
                       "Arithmetic, not approval. Local codes and licensed practice decide.");
               })};
    return all;
}

bool is_time(const QString& text) {
    static const QRegularExpression weekday(
        QStringLiteral("^(?:about |the )?.*(?:Sun|Mon|Tue|Wed|Thu|Fri|Sat)\\w*\\b"));
    return text.size() < 40 && weekday.match(text).hasMatch() && !text.contains(QLatin1Char(','));
}

}  // namespace

bool speaks_another_language() {
    return other_language();
}

void speak_another_language(bool other) {
    other_language() = other;
}

QString said_again(const QString& english) {
    if (!speaks_another_language()) return english;
    for (const QList<Saying>* forms : {&sentences(), &sayings_of_joining(), &sayings_of_gauge(),
                                       &sayings_of_storage(), &sayings_of_starting()}) {
        const QString again = only_if_known(*forms, english);
        if (!again.isEmpty()) return again;
    }
    QString said = first_that_fits(lengths(), english);
    if (said != english) return said;
    if (!is_time(english)) return english;
    said = time_again(english);
    return said == english ? day_again(english) : said;
}

}  // namespace touch
