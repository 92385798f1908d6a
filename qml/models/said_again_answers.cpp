#include <array>
#include <utility>

#include <QLocale>
#include <QObject>

#include "models/as_wished.hpp"
#include "models/said_again_forms.hpp"

namespace touch {

namespace {

// One saying whose words have no parts.
Saying as_it_stands(const char* english, QString (*again)()) {
    return {QRegularExpression(QRegularExpression::anchoredPattern(
                QRegularExpression::escape(QString::fromUtf8(english)))),
            [again](const Captured&) { return again(); }};
}

// All parts must be known for the sentence to be said.
template <class... Parts>
QString filled(const QString& sentence, const Parts&... parts) {
    const std::initializer_list<QString> all{parts...};
    for (const QString& part : all)
        if (part.isEmpty()) return {};
    return sentence.arg(parts...);
}

// "0.53 V"; "1 to 2.5 kVA" where it is a range.
QString amount_again(const QString& english) {
    static const QList<Saying> forms{
        as_it_stands("not known", [] { return QObject::tr("not known"); }),
        as_it_stands("nothing more", [] { return QObject::tr("nothing more"); }),
        as_it_stands("its cut-off", [] { return QObject::tr("its cut-off"); }),
        saying("([-\\d.]+(?: [^ ]+)?) to ([-\\d.]+ [^ ]+)",
               [](const Captured& c) {
                   return QObject::tr("%1 to %2", "a range")
                       .arg(amount_again(c[1]), amount_again(c[2]));
               }),
        saying("[-\\d.]+(?: [^ ]+)?", [](const Captured& c) {
            QString amount = c[0];
            static const QRegularExpression point(QStringLiteral("(?<=\\d)\\.(?=\\d)"));
            return wishes().decimal_comma ? amount.replace(point, QStringLiteral(",")) : amount;
        })};
    return only_if_known(forms, english);
}

// "35 min", "9 h", "3.5 days"
QString length_again(const QString& english) {
    static const QList<Saying> forms{
        saying("([\\d.]+) days",
               [](const Captured& c) {
                   return QObject::tr("%1 days").arg(QLocale().toString(c[1].toDouble(), 'g', 6));
               }),
        saying("\\d+ (?:min|h)", [](const Captured& c) { return c[0]; })};
    return only_if_known(forms, english);
}

// "14 January 2026"
QString date_again(const QString& english) {
    const QLocale from(QLocale::English);
    const QString name = english.section(QLatin1Char(' '), 1, 1);
    for (int month = 1; month <= 12; ++month)
        if (name == from.standaloneMonthName(month))
            return QObject::tr("%1 %2 %3", "day, name of the month, year")
                .arg(english.section(QLatin1Char(' '), 0, 0), QLocale().monthName(month),
                     english.section(QLatin1Char(' '), 2, 2));
    return {};
}

// "main and 2 more of its kind", "the other wet pair": what a pack is plugged onto.
QString one_of_unit_again(const QString& english) {
    static const QList<Saying> forms{
        saying("(\\d+) more of its kind",
               [](const Captured& c) { return QObject::tr("%1 more of its kind").arg(c[1]); }),
        saying("the other (.+)",
               [](const Captured& c) { return QObject::tr("the other %1").arg(c[1]); })};
    return first_that_fits(forms, english);
}

QString unit_again(const QString& english) {
    static const QRegularExpression last_two(QStringLiteral("^(.+) and (.+)$"));
    const QRegularExpressionMatch match = last_two.match(english);
    if (!match.hasMatch()) return one_of_unit_again(english);
    QStringList first;
    for (const QString& one : match.captured(1).split(QStringLiteral(", ")))
        first << one_of_unit_again(one);
    return QObject::tr("%1 and %2", "two packs")
        .arg(first.join(QStringLiteral(", ")), one_of_unit_again(match.captured(2)));
}

QString flow_again(const QString& english) {
    static const QList<Saying> forms{
        as_it_stands(
            "their voltages are level, and next to nothing flows",
            [] { return QObject::tr("their voltages are level, and next to nothing flows"); }),
        saying("(.+) flow at first, out of (.+) into (.+)", [](const Captured& c) {
            return filled(QObject::tr("%1 flow at first, out of %2 into %3"), amount_again(c[1]),
                          unit_again(c[2]), unit_again(c[3]));
        })};
    return only_if_known(forms, english);
}

QString part_of_pack_again(const QString& english) {
    const std::array<std::pair<const char*, QString>, 6> parts{
        {{"fuse", QObject::tr("fuse", "of a pack")},
         {"connector", QObject::tr("connector", "of a pack")},
         {"current limit", QObject::tr("current limit")},
         {"charge limit", QObject::tr("charge limit")},
         {"limit you asked for", QObject::tr("limit you asked for")},
         {"charging this cold", QObject::tr("charging this cold")}}};
    for (const auto& [words, again] : parts)
        if (english == QLatin1String(words)) return again;
    return {};
}

// "all packs", "pack spare"
QString what_is_read_again(const QString& english) {
    static const QList<Saying> forms{
        as_it_stands("all packs", [] { return QObject::tr("all packs"); }),
        saying("pack (.+)", [](const Captured& c) { return QObject::tr("pack %1").arg(c[1]); })};
    return only_if_known(forms, english);
}

QString reads_again(const QString& english) {
    static const QList<Saying> forms{
        saying("(.+) under that load",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 under that load"), amount_again(c[1]));
               }),
        saying("(.+) at rest", [](const Captured& c) {
            return filled(QObject::tr("%1 at rest"), amount_again(c[1]));
        })};
    return only_if_known(forms, english);
}

QString until_again(const QString& english) {
    static const QList<Saying> forms{
        as_it_stands("to the end of the outage",
                     [] { return QObject::tr("to the end of the outage"); }),
        saying("until (.+)",
               [](const Captured& c) { return QObject::tr("until %1").arg(time_again(c[1])); })};
    return only_if_known(forms, english);
}

QString constraint_again(const QString& english) {
    const std::array<std::pair<const char*, QString>, 10> constraints{
        {{"voltage of the motor", QObject::tr("voltage of the motor")},
         {"surge of the inverter", QObject::tr("surge of the inverter")},
         {"time the surge is held", QObject::tr("time the surge is held")},
         {"torque of the motor", QObject::tr("torque of the motor")},
         {"inverter once it runs", QObject::tr("inverter once it runs")},
         {"low-voltage cut-off", QObject::tr("low-voltage cut-off")},
         {"power the packs can give", QObject::tr("power the packs can give")},
         {"current limit of the packs", QObject::tr("current limit of the packs")},
         {"fuse of packs or inverter", QObject::tr("fuse of packs or inverter")},
         {"connector or switch", QObject::tr("connector or switch")}}};
    for (const auto& [words, again] : constraints)
        if (english == QLatin1String(words)) return again;
    return {};
}

// "13 to 116 % of the limit"
QString used_again(const QString& english) {
    static const QList<Saying> forms{
        saying(
            "(\\d+) % of the limit and more",
            [](const Captured& c) { return QObject::tr("%1 % of the limit and more").arg(c[1]); }),
        saying("(\\d+) % of the limit",
               [](const Captured& c) { return QObject::tr("%1 % of the limit").arg(c[1]); }),
        saying("(\\d+) to (\\d+) % of the limit", [](const Captured& c) {
            return QObject::tr("%1 to %2 % of the limit").arg(c[1], c[2]);
        })};
    return only_if_known(forms, english);
}

const QList<Saying>& reasons_of_inverter() {
    static const QList<Saying> forms{
        as_it_stands("it is not made for the voltage of this unit",
                     [] { return QObject::tr("it is not made for the voltage of this unit"); }),
        saying("a (\\d+) V motor cannot be run from (\\d+) V, however strong the inverter",
               [](const Captured& c) {
                   return QObject::tr(
                              "a %1 V motor cannot be run from %2 V, however strong the inverter")
                       .arg(c[1], c[2]);
               }),
        saying("it asks up to (.+) of the inverter, and nobody told how long it holds that",
               [](const Captured& c) {
                   return filled(QObject::tr("it asks up to %1 of the inverter, and nobody told "
                                             "how long it holds that"),
                                 amount_again(c[1]));
               }),
        saying("it asks (.+) of the inverter, whose surge is (.+) \\((.+)\\)",
               [](const Captured& c) {
                   return filled(QObject::tr("it asks %1 of the inverter, whose surge is %2 (%3)"),
                                 amount_again(c[1]), amount_again(c[2]), used_again(c[3]));
               }),
        saying("the start takes (.+), and the inverter may hold (.+) for less than that",
               [](const Captured& c) {
                   return filled(QObject::tr("the start takes %1, and the inverter may hold %2 for "
                                             "less than that"),
                                 amount_again(c[1]), amount_again(c[2]));
               }),
        as_it_stands("motors with a capacitor or a compressor suffer from a quasi-square wave",
                     [] {
                         return QObject::tr(
                             "motors with a capacitor or a compressor suffer from a "
                             "quasi-square wave");
                     }),
        saying(
            "what it turns takes (\\d+) to (\\d+) % of its torque",
            [](const Captured& c) {
                return QObject::tr("what it turns takes %1 to %2 % of its torque").arg(c[1], c[2]);
            }),
        saying("once it runs, more is on than the inverter carries for long \\((.+)\\)",
               [](const Captured& c) {
                   return filled(QObject::tr("once it runs, more is on than the inverter carries "
                                             "for long (%1)"),
                                 used_again(c[1]));
               }),
        saying("the voltage at the inverter stays at (.+) at best, or collapses, and it switches "
               "off at (.+)",
               [](const Captured& c) {
                   return filled(QObject::tr("the voltage at the inverter stays at %1 at best, or "
                                             "collapses, and it switches off at %2"),
                                 amount_again(c[1]), amount_again(c[2]));
               }),
        saying("the voltage at the inverter falls to (.+), and it switches off at (.+)",
               [](const Captured& c) {
                   return filled(QObject::tr("the voltage at the inverter falls to %1, and it "
                                             "switches off at %2"),
                                 amount_again(c[1]), amount_again(c[2]));
               })};
    return forms;
}

const QList<Saying>& reasons_of_packs() {
    static const QList<Saying> forms{
        saying("(.+) is asked of the packs, which is more than they can give at any voltage",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 is asked of the packs, which is more than they "
                                             "can give at any voltage"),
                                 amount_again(c[1]));
               }),
        saying("(.+) is asked of the packs, which is (.+) they can give at any voltage",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 is asked of the packs, which is %2 they can give "
                                             "at any voltage"),
                                 amount_again(c[1]), used_again(c[2]));
               }),
        saying("one pack would carry (.+), and its protection lets (.+) through for (.+)",
               [](const Captured& c) {
                   return filled(QObject::tr("one pack would carry %1, and its protection lets %2 "
                                             "through for %3"),
                                 amount_again(c[1]), amount_again(c[2]), amount_again(c[3]));
               }),
        saying("a fuse of the packs or the inverter may melt in (.+) \\((.+)\\)",
               [](const Captured& c) {
                   return filled(
                       QObject::tr("a fuse of the packs or the inverter may melt in %1 (%2)"),
                       amount_again(c[1]), used_again(c[2]));
               }),
        saying("a connector or switch of the inverter would carry (.+) \\((.+)\\)",
               [](const Captured& c) {
                   return filled(
                       QObject::tr("a connector or switch of the inverter would carry %1 (%2)"),
                       amount_again(c[1]), used_again(c[2]));
               })};
    return forms;
}

QString reason_again(const QString& english) {
    const QString again = only_if_known(reasons_of_inverter(), english);
    return again.isEmpty() ? only_if_known(reasons_of_packs(), english) : again;
}

bool says_one(const QString& number) {
    return number.toLower() == QStringLiteral("one");
}

// What more packs do for a start: a sentence of its own.
QString packs_again(const QString& english) {
    static const QList<Saying> forms{
        saying("(\\w+) more packs? \\((\\d+) in all\\) makes? it start",
               [](const Captured& c) {
                   return says_one(c[1])
                              ? QObject::tr("One more pack (%1 in all) makes it start").arg(c[2])
                              : QObject::tr("%1 more packs (%2 in all) make it start")
                                    .arg(number_again(c[1]), c[2]);
               }),
        saying("No number of packs helps, because of the (.+)",
               [](const Captured& c) {
                   return filled(QObject::tr("No number of packs helps, because of this limit: %1"),
                                 constraint_again(c[1]));
               }),
        saying("No number of packs makes it sure, because of the (.+)",
               [](const Captured& c) {
                   return filled(
                       QObject::tr("No number of packs makes it sure, because of this limit: %1"),
                       constraint_again(c[1]));
               }),
        saying("With (\\w+) more packs? \\((\\d+) in all\\) it may start; no number of packs makes "
               "it sure, because of the (.+)",
               [](const Captured& c) {
                   return says_one(c[1])
                              ? filled(QObject::tr("With one more pack (%1 in all) it may start; "
                                                   "no number of packs makes it sure, because of "
                                                   "this limit: %2"),
                                       c[2], constraint_again(c[3]))
                              : filled(QObject::tr("With %1 more packs (%2 in all) it may start; "
                                                   "no number of packs makes it sure, because of "
                                                   "this limit: %3"),
                                       number_again(c[1]), c[2], constraint_again(c[3]));
               })};
    return only_if_known(forms, english);
}

QString verdict_again(const QString& name, const QString& verdict, const QString& why) {
    if (why.isEmpty()) return {};
    return verdict == QStringLiteral("will not start")
               ? QObject::tr("%1 will not start: %2.").arg(name, why)
               : QObject::tr("%1 may or may not start: %2.").arg(name, why);
}

QString together_again(const QString& verdict) {
    return verdict == QStringLiteral("start")
               ? QObject::tr("All at once, as after a switch-on, they start")
           : verdict == QStringLiteral("will not start")
               ? QObject::tr("All at once, as after a switch-on, they will not start")
               : QObject::tr("All at once, as after a switch-on, they may or may not start");
}

QString in_order_again(QString order) {
    return order.replace(QStringLiteral(", then "), QObject::tr(", then "));
}

}  // namespace

const QList<Saying>& sayings_of_joining() {
    static const QList<Saying> forms{
        saying("Nothing found against plugging (.+) onto (.+) now: (.+)\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("Nothing found against plugging %1 onto %2 now: %3."),
                                 c[1], unit_again(c[2]), flow_again(c[3]));
               }),
        saying("Do not plug (.+) onto (.+) now, level as their voltages are: see below\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("Do not plug %1 onto %2 now, level as their voltages "
                                             "are: see below."),
                                 c[1], unit_again(c[2]));
               }),
        saying("Do not plug (.+) onto (.+) now: (.+)\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("Do not plug %1 onto %2 now: %3."), c[1],
                                 unit_again(c[2]), flow_again(c[3]));
               }),
        as_it_stands("No limit of any part is known, so none could be held against it.",
                     [] {
                         return QObject::tr(
                             "No limit of any part is known, so none could be held against it.");
                     }),
        saying("The voltages at rest are (.+) apart; up to (.+) keeps every part within its limit "
               "\\(the first to reach it: pack (.+), ([^,]+), ([^,]+)\\)\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("The voltages at rest are %1 apart; up to %2 keeps "
                                             "every part within its limit (the first to reach it: "
                                             "pack %3, %4, %5)."),
                                 amount_again(c[1]), amount_again(c[2]), c[3],
                                 part_of_pack_again(c[4]), amount_again(c[5]));
               }),
        saying("The current falls as the voltages meet, but more than 1 A still flows after two "
               "days; (.+) move until then\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("The current falls as the voltages meet, but more "
                                             "than 1 A still flows after two days; %1 move until "
                                             "then."),
                                 amount_again(c[1]));
               }),
        saying("The current falls as the voltages meet: below 1 A after (.+), when (.+) have "
               "moved\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("The current falls as the voltages meet: below 1 A "
                                             "after %1, when %2 have moved."),
                                 length_again(c[1]), amount_again(c[2]));
               })};
    return forms;
}

const QList<Saying>& sayings_of_gauge() {
    static const QList<Saying> forms{
        saying("(.+) tells no one charge, on the plateau: (.+) between (\\d+) % and (\\d+) % "
               "full\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 tells no one charge, on the plateau: %2 between "
                                             "%3 % and %4 % full."),
                                 reads_again(c[1]), what_is_read_again(c[2]), c[3], c[4]);
               }),
        saying("(.+) cannot tell how full the packs are: anywhere between (\\d+) % and (\\d+) % "
               "full\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 cannot tell how full the packs are: anywhere "
                                             "between %2 % and %3 % full."),
                                 reads_again(c[1]), c[2], c[3]);
               }),
        saying("(.+) cannot tell how full pack (.+) is: anywhere between (\\d+) % and (\\d+) % "
               "full\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 cannot tell how full pack %2 is: anywhere between "
                                             "%3 % and %4 % full."),
                                 reads_again(c[1]), c[2], c[3], c[4]);
               }),
        saying("(.+) says little: (.+) between (\\d+) % and (\\d+) % full\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 says little: %2 between %3 % and %4 % full."),
                                 reads_again(c[1]), what_is_read_again(c[2]), c[3], c[4]);
               }),
        saying("(.+) means (.+) between (\\d+) % and (\\d+) % full, most likely about (\\d+) %\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 means %2 between %3 % and %4 % full, most likely "
                                             "about %5 %."),
                                 reads_again(c[1]), what_is_read_again(c[2]), c[3], c[4], c[5]);
               }),
        saying("(.+) either way, at (.+) for each hundredth of the charge, is what makes it so "
               "wide\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 either way, at %2 for each hundredth of the "
                                             "charge, is what makes it so wide."),
                                 amount_again(c[1]), amount_again(c[2]));
               }),
        saying("From (.+) on it lasts (.+), whichever end is true\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("From %1 on it lasts %2, whichever end is true."),
                                 time_again(c[1]), until_again(c[2]));
               }),
        saying("From (.+) on it lasts at least (.+) and at most (.+): plan with the first\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("From %1 on it lasts at least %2 and at most %3: plan "
                                             "with the first."),
                                 time_again(c[1]), until_again(c[2]), until_again(c[3]));
               }),
        saying("From (.+) on it lasts (.+); at worst (.+), at best (.+)\\.", [](const Captured& c) {
            return filled(QObject::tr("From %1 on it lasts %2; at worst %3, at best %4."),
                          time_again(c[1]), until_again(c[2]), until_again(c[3]),
                          until_again(c[4]));
        })};
    return forms;
}

const QList<Saying>& sayings_of_storage() {
    static const QList<Saying> forms{
        saying("(Ready|Not ready) on (.+): (\\d+) % left, of (\\d+) % when it was put away on "
               "(.+)\\.",
               [](const Captured& c) {
                   return filled(
                       c[1] == QStringLiteral("Ready")
                           ? QObject::tr("Ready on %1: %2 % left, of %3 % when it was put "
                                         "away on %4.")
                           : QObject::tr("Not ready on %1: %2 % left, of %3 % when it was "
                                         "put away on %4."),
                       date_again(c[2]), c[3], c[4], date_again(c[5]));
               }),
        as_it_stands("A charger is left on it, and keeps it full.",
                     [] { return QObject::tr("A charger is left on it, and keeps it full."); }),
        as_it_stands("It needs no topping up within ten years.",
                     [] { return QObject::tr("It needs no topping up within ten years."); }),
        saying("It should have been topped up by (.+)\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("It should have been topped up by %1."),
                                 date_again(c[1]));
               }),
        saying("Top it up by (.+)\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("Top it up by %1."), date_again(c[1]));
               }),
        saying("With the master switch open it would have (\\d+) % left\\.",
               [](const Captured& c) {
                   return QObject::tr("With the master switch open it would have %1 % left.")
                       .arg(c[1]);
               }),
        saying("With the master switch open it would have (\\d+) % left, and want topping up by "
               "(.+)\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("With the master switch open it would have %1 % left, "
                                             "and want topping up by %2."),
                                 c[1], date_again(c[2]));
               })};
    return forms;
}

const QList<Saying>& sayings_of_starting() {
    static const QList<Saying> forms{
        as_it_stands("No load of this file has a motor, so there is nothing that has to start. "
                     "Give a load motor = {...}, or like = \"sump pump 1/3 hp\".",
                     [] {
                         return QObject::tr(
                             "No load of this file has a motor, so there is nothing that has to "
                             "start. Give a load motor = {...}, or like = \"sump pump 1/3 hp\".");
                     }),
        saying("The (.+) starts \\(nearest limit: (.+), at most (\\d+) % used\\)\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 starts (nearest limit: %2, at most %3 % used)."),
                                 c[1], constraint_again(c[2]), c[3]);
               }),
        saying("The (.+) starts \\(nearest limit: (.+), at most (\\d+) % used\\), surely down to a "
               "charge of (.+)\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1 starts (nearest limit: %2, at most %3 % used), "
                                             "surely down to a charge of %4."),
                                 c[1], constraint_again(c[2]), c[3], amount_again(c[4]));
               }),
        saying("The (.+?) (may or may not start|will not start): (.+)\\. (\\w.+)\\.",
               [](const Captured& c) {
                   const QString verdict = verdict_again(c[1], c[2], reason_again(c[3]));
                   const QString packs = packs_again(c[4]);
                   return verdict.isEmpty() || packs.isEmpty()
                              ? QString()
                              : QStringLiteral("%1 %2.").arg(verdict, packs);
               }),
        saying("The (.+?) (may or may not start|will not start): (.+)\\.",
               [](const Captured& c) { return verdict_again(c[1], c[2], reason_again(c[3])); }),
        saying("All at once, as after a switch-on, they start\\.",
               [](const Captured&) {
                   return together_again(QStringLiteral("start")) + QLatin1Char('.');
               }),
        saying("All at once, as after a switch-on, they (may or may not start|will not start): "
               "(.+)\\. Switch on one by one, (.+) apart: (.+); so each starts\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1: %2. Switch on one by one, %3 apart: %4; so each "
                                             "starts."),
                                 together_again(c[1]), reason_again(c[2]), amount_again(c[3]),
                                 in_order_again(c[4]));
               }),
        saying("All at once, as after a switch-on, they (may or may not start|will not start): "
               "(.+)\\. Switch on one by one, (.+) apart: (.+)\\.",
               [](const Captured& c) {
                   return filled(QObject::tr("%1: %2. Switch on one by one, %3 apart: %4."),
                                 together_again(c[1]), reason_again(c[2]), amount_again(c[3]),
                                 in_order_again(c[4]));
               })};
    return forms;
}

}  // namespace touch
