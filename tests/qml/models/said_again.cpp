// The answers to join, gauge, storage and start, said in the other language by their forms.
#include "models/said_again.hpp"

#include <QDir>
#include <QRegularExpression>
#include <gtest/gtest.h>

#include "command_line/arguments.hpp"
#include "command_line/questions.hpp"
#include "command_line/read_request.hpp"
#include "models/answer_view.hpp"
#include "models/as_wished.hpp"
#include "models/look.hpp"

namespace {

using touch::Look;

// Words of English that German has not; names of packs and loads are taken out before.
QString english_left_in(QString said, const QStringList& names) {
    for (const QString& name : names)
        said.remove(name);
    static const QRegularExpression english(
        QStringLiteral("\\b(the|it|its|of|to|until|then|packs?|lasts|and|is|are|at|now|with|onto|"
                       "may|not|start|starts|plug|plugging|out|into|more|means|full|between|about|"
                       "likely|either|way|charge|current|voltage|limit|left|ready|top|up|by|from|"
                       "on|least|most|worst|best|end|reads|rest|load|other|kind|nothing|each|"
                       "inverter|fuse|sure|surely|because|number|days?|moved|level|apart)\\b"),
        QRegularExpression::CaseInsensitiveOption);
    const QRegularExpressionMatch match = english.match(said);
    return match.hasMatch() ? match.captured() : QString();
}

class SaidInGerman : public testing::Test {
  protected:
    void SetUp() override { look.set_language("de"); }
    void TearDown() override {
        look.set_language("en");
        look.set_clock("24");
        look.set_units("metric");
    }
    void expect_german(const QString& said, const QStringList& names, const std::string& of) {
        EXPECT_EQ(english_left_in(said, names), QString()) << of << ": " << said.toStdString();
        EXPECT_FALSE(said.contains(QRegularExpression(QStringLiteral("%\\d"))))
            << said.toStdString();
    }

    Look look{nullptr};
};

// ---- Every form, as the engine writes it. Where it changes its words, the scenarios below tell.

TEST_F(SaidInGerman, every_form_of_joining) {
    const QStringList names{"spare", "main", "wet pair"};
    const QStringList flows{"their voltages are level, and next to nothing flows",
                            "64 A flow at first, out of spare into main",
                            "0.61 A flow at first, out of main, the other wet pair and 2 more of "
                            "its kind into spare"};
    for (const QString& onto :
         {QString("main"), QString("main and 2 more of its kind"), QString("the other wet pair"),
          QString("2 more of its kind"), QString("main, wet pair and 3 more of its kind")}) {
        for (const QString& flow : flows) {
            for (const char* form : {"Nothing found against plugging spare onto %1 now: %2.",
                                     "Do not plug spare onto %1 now: %2."}) {
                const QString english = QString::fromLatin1(form).arg(onto, flow);
                expect_german(touch::said_again(english), names, english.toStdString());
            }
        }
        const QString level =
            QString("Do not plug spare onto %1 now, level as their voltages are: see below.")
                .arg(onto);
        expect_german(touch::said_again(level), names, level.toStdString());
    }
    for (const char* part : {"fuse", "connector", "current limit", "charge limit",
                             "limit you asked for", "charging this cold"}) {
        const QString english =
            QString(
                "The voltages at rest are 0.90 V apart; up to 0.70 V keeps every part within "
                "its limit (the first to reach it: pack spare, %1, 50 A).")
                .arg(QLatin1String(part));
        expect_german(touch::said_again(english), names, english.toStdString());
    }
    for (const char* english :
         {"No limit of any part is known, so none could be held against it.",
          "The current falls as the voltages meet: below 1 A after 6 h, when 58 Ah have moved.",
          "The current falls as the voltages meet: below 1 A after 35 min, when 1.2 Ah have moved.",
          "The current falls as the voltages meet, but more than 1 A still flows after two days; "
          "58 Ah move until then."})
        expect_german(touch::said_again(QLatin1String(english)), names, english);
    EXPECT_EQ(touch::said_again("Do not plug spare onto main and 2 more of its kind now: 64 A flow "
                                "at first, out of spare into main and 2 more of its kind."),
              QString("Stecken Sie spare jetzt nicht mit main und 2 weiteren seiner Art zusammen: "
                      "anfangs fließen 64 A, von spare zu main und 2 weiteren seiner Art."));
}

TEST_F(SaidInGerman, every_form_of_a_reading) {
    const QStringList names{"spare"};
    for (const char* reads : {"12.9 V at rest", "12.1 V under that load"}) {
        for (const char* what : {"all packs", "pack spare"}) {
            for (const char* form :
                 {"%1 tells no one charge, on the plateau: %2 between 40 % and 70 % full.",
                  "%1 says little: %2 between 9 % and 90 % full.",
                  "%1 means %2 between 9 % and 25 % full, most likely about 17 %."}) {
                const QString english =
                    QString(QLatin1String(form)).arg(QLatin1String(reads), QLatin1String(what));
                expect_german(touch::said_again(english), names, english.toStdString());
            }
        }
        for (const char* whose : {"the packs are", "pack spare is"}) {
            const QString english =
                QString("%1 cannot tell how full %2: anywhere between 27 % and 82 % full.")
                    .arg(QLatin1String(reads), QLatin1String(whose));
            expect_german(touch::said_again(english), names, english.toStdString());
        }
    }
    for (const char* english :
         {"0.13 V either way, at 16 mV for each hundredth of the charge, is what makes it so wide.",
          "From Friday 21:30 on it lasts to the end of the outage, whichever end is true.",
          "From Friday 21:30 on it lasts until Saturday 05:00, whichever end is true.",
          "From Tuesday 21:30 on it lasts at least until the early hours of Friday and at most to "
          "the end of the outage: plan with the first.",
          "From Friday 21:30 on it lasts until about noon on Sunday; at worst until Friday 21:30, "
          "at best to the end of the outage."})
        expect_german(touch::said_again(QLatin1String(english)), names, english);
    look.set_clock("12");
    EXPECT_EQ(touch::told("12.9 V at rest means all packs between 9 % and 25 % full, most likely "
                          "about 17 %."),
              QString("12,9 V in Ruhe heißt: alle Akkus zwischen 9 % und 25 % voll, am ehesten "
                      "etwa 17 %."));
}

TEST_F(SaidInGerman, every_form_of_storing) {
    for (const char* english :
         {"Ready on 14 January 2026: 92 % left, of 100 % when it was put away on 1 October 2025.",
          "Not ready on 3 March 2027: 9 % left, of 100 % when it was put away on 31 May 2025.",
          "A charger is left on it, and keeps it full.", "It needs no topping up within ten years.",
          "It should have been topped up by 20 December 2025.", "Top it up by 20 September 2029.",
          "With the master switch open it would have 94 % left.",
          "With the master switch open it would have 94 % left, and want topping up by 19 June "
          "2033."})
        expect_german(touch::said_again(QLatin1String(english)), {"September"}, english);
    EXPECT_EQ(touch::said_again("Top it up by 20 March 2029."),
              QString("Laden Sie bis zum 20. März 2029 nach."));
}

TEST_F(SaidInGerman, every_form_of_a_start) {
    const QStringList names{"saw", "pump", "sump pump 1/3 hp", "motor = {...}", "like ="};
    QStringList all{
        "No load of this file has a motor, so there is nothing that has to start. Give a load "
        "motor = {...}, or like = \"sump pump 1/3 hp\".",
        "The saw will not start: a 230 V motor cannot be run from 120 V, however strong the "
        "inverter.",
        "All at once, as after a switch-on, they start."};
    const QStringList constraints{"voltage of the motor",      "surge of the inverter",
                                  "time the surge is held",    "torque of the motor",
                                  "inverter once it runs",     "low-voltage cut-off",
                                  "power the packs can give",  "current limit of the packs",
                                  "fuse of packs or inverter", "connector or switch"};
    for (const QString& constraint : constraints) {
        all << QString("The saw starts (nearest limit: %1, at most 69 % used).").arg(constraint)
            << QString(
                   "The saw starts (nearest limit: %1, at most 69 % used), surely down to a "
                   "charge of 92 %.")
                   .arg(constraint);
        for (const char* packs :
             {"No number of packs helps, because of the %1.",
              "No number of packs makes it sure, because of the %1.",
              "With one more pack (3 in all) it may start; no number of packs makes it sure, "
              "because of the %1.",
              "With two more packs (4 in all) it may start; no number of packs makes it sure, "
              "because of the %1."})
            all << QString(
                       "The saw may or may not start: it is not made for the voltage of this "
                       "unit. ") +
                       QString(QLatin1String(packs)).arg(constraint);
    }
    for (const char* reason :
         {"it is not made for the voltage of this unit",
          "it asks 536 VA to 4.64 kVA of the inverter, whose surge is 4 kVA (13 to 116 % of the "
          "limit)",
          "it asks 3 to 4.64 kVA of the inverter, whose surge is not known (120 % of the limit and "
          "more)",
          "it asks up to 4.64 kVA of the inverter, and nobody told how long it holds that",
          "the start takes 0.3 s to 1.2 s, and the inverter may hold 4.6 kVA for less than that",
          "motors with a capacitor or a compressor suffer from a quasi-square wave",
          "what it turns takes 60 to 110 % of its torque",
          "once it runs, more is on than the inverter carries for long (105 % of the limit)",
          "the voltage at the inverter stays at 12.3 V at best, or collapses, and it switches off "
          "at 10.5 V",
          "the voltage at the inverter falls to 9.8 V to 10.6 V, and it switches off at 10.5 V",
          "2 kW to 3.1 kW is asked of the packs, which is more than they can give at any voltage",
          "2 kW to 3.1 kW is asked of the packs, which is 80 to 120 % of the limit they can give "
          "at "
          "any voltage",
          "one pack would carry 180 A to 260 A, and its protection lets 200 A through for 1.4 s",
          "one pack would carry 180 A, and its protection lets nothing more through for 1.4 s",
          "a fuse of the packs or the inverter may melt in 0.4 s (104 % of the limit)",
          "a connector or switch of the inverter would carry 260 A to 310 A (90 to 130 % of the "
          "limit)"}) {
        for (const char* verdict : {"may or may not start", "will not start"}) {
            const QString said =
                QString("The saw %1: %2.").arg(QLatin1String(verdict), QLatin1String(reason));
            all << said << said + " One more pack (3 in all) makes it start."
                << said + " Three more packs (5 in all) make it start."
                << QString(
                       "All at once, as after a switch-on, they %1: %2. Switch on one by one, "
                       "1.2 s apart: saw, then pump; so each starts.")
                       .arg(QLatin1String(verdict), QLatin1String(reason))
                << QString(
                       "All at once, as after a switch-on, they %1: %2. Switch on one by one, "
                       "2 s apart: pump, then saw.")
                       .arg(QLatin1String(verdict), QLatin1String(reason));
        }
    }
    for (const QString& english : std::as_const(all))
        expect_german(touch::said_again(english), names, english.toStdString());
    EXPECT_GT(all.size(), 200);
}

TEST_F(SaidInGerman, a_sentence_of_which_a_part_is_not_known_stays_whole) {
    const QString strange = QStringLiteral(
        "The saw may or may not start: the moon is full. One more pack (3 in all) "
        "makes it start.");
    EXPECT_EQ(touch::said_again(strange), strange);
    const QString date = QStringLiteral("Top it up by the day after tomorrow.");
    EXPECT_EQ(touch::said_again(date), date);
    look.set_language("en");
    EXPECT_EQ(touch::said_again("Top it up by 20 March 2029."),
              QString("Top it up by 20 March 2029."));
}

// ---- As the engine answers the scenarios that come with the program, with what changes its
// answer.

struct Asked {
    const char* question;
    QStringList options;
    int sentences;  // how many of the answer are said again at least
};

// The answer to a line of the command, as the screen would show it.
touch::AnswerView as_typed(const char* question, const QStringList& options, const QString& text,
                           const QString& file) {
    std::vector<std::string> arguments{question, "-"};
    for (const QString& option : options)
        arguments.push_back(option.toStdString());
    const auto request = std::get<command_line::Request>(command_line::read_arguments(arguments));
    const auto read = scenario::read_scenario(text.toStdString(), file.toStdString(),
                                              command_line::overrides_of(request.set).value());
    if (!read) return touch::no_answer(read.error());
    auto answer = command_line::answer_to(*read, request);
    return answer ? touch::answer_view_of(std::move(*answer), read->warnings)
                  : touch::no_answer(answer.error());
}

TEST_F(SaidInGerman, the_answers_of_every_scenario_that_comes_with_the_program) {
    const QDir scenarios(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios"));
    const QStringList files = scenarios.entryList({"*.toml"}, QDir::Files);
    ASSERT_GE(files.size(), 5);
    const QList<Asked> questions{
        {"join", {}, 2},
        {"join", {"--set", "pack[0].charge=\"35 %\""}, 2},
        {"join", {"--set", "pack[0].charge=\"35 %\"", "--at-most", "1 A"}, 2},
        {"join",
         {"--set", "outage.battery_temperature=\"-10 degC\"", "--set", "pack[0].charge=\"35 %\""},
         2},
        {"gauge", {"--reads", "12.9 V"}, 2},
        {"gauge", {"--reads", "13.2 V", "--now", "21:30"}, 3},
        {"gauge", {"--reads", "12.1 V", "--rested", "8 h", "--now", "21:30"}, 3},
        {"gauge", {"--reads", "12.6 V", "--under", "100 W", "--rested", "1 h"}, 2},
        {"storage", {"--set", "storage.since=2025-10-01", "--on", "2026-01-14"}, 2},
        {"storage", {"--set", "storage.since=2020-10-01", "--on", "2026-03-14"}, 2},
        {"storage",
         {"--set", "storage.since=2025-10-01", "--set", "storage.drain=\"0 A\"", "--on",
          "2026-01-14"},
         2},
        {"start", {}, 1},
        {"start", {"--set", "inverter.surge=\"600 W\""}, 1},
        {"start", {"--set", "inverter.cutoff_voltage=\"12.4 V\""}, 1},
        {"start", {"--set", "pack[0].charge=\"8 %\""}, 1},
    };
    int said = 0;
    QMap<QString, int> of_question;
    for (const QString& name : files) {
        QFile file(scenarios.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(file.readAll());
        QStringList names;
        static const QRegularExpression named(QStringLiteral("\\bname\\s*=\\s*\"([^\"]+)\""));
        for (auto at = named.globalMatch(text); at.hasNext();)
            names << at.next().captured(1);
        names << QStringLiteral("motor = {...}") << QStringLiteral("like =")
              << QStringLiteral("sump pump 1/3 hp");
        std::ranges::sort(names, std::ranges::greater(), &QString::size);
        for (const Asked& asked : questions) {
            const auto view =
                as_typed(asked.question, asked.options, text, scenarios.filePath(name));
            if (!view.answer) continue;  // the file cannot be asked so, such as without a storage
            const std::string of = name.toStdString() + " " + asked.question + " " +
                                   asked.options.join(QLatin1Char(' ')).toStdString();
            EXPECT_GE(static_cast<int>(view.answer->sentences.size()), asked.sentences) << of;
            for (const std::string& sentence : view.answer->sentences) {
                expect_german(touch::told(sentence), names, of);
                ++said;
            }
            expect_german(view.sentence + QLatin1Char(' ') + view.rest, names, of);
            ++of_question[QLatin1String(asked.question)];
        }
    }
    EXPECT_GT(said, 100);
    for (const char* question : {"join", "gauge", "storage", "start"})
        EXPECT_GE(of_question[QLatin1String(question)], 5) << question;
}

}  // namespace
