// What the Days page shows of one plan: finished text, and points and places already in the
// units and shares in which they are drawn. Made off the screen's thread, then only handed on.
#pragma once

#include <QList>
#include <QObject>
#include <QPointF>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "models/answer_view.hpp"
#include "units/time.hpp"

namespace touch {

// From and to, as shares 0 to 1 of the plot's width.
struct Span {
    double from = 0.0;
    double to = 0.0;
};

// A line across the plot; `at` is a share of its height from the bottom.
struct Tick {
    double at = 0.0;
    QString text;
};

// A finding or event pinned to its hour.
struct Pin {
    double at = 0.0;  // share of the width
    QString mark;     // "stop", "caution" or "note"
    QString text;
    int number = 0;  // the same number stands beside the finding; 0 when it stands in no list
    FindingText finding;
};

// What all loads of one priority ask for, the mean of each hour, as stairs upon those before it.
struct Stack {
    int priority = 1;
    QList<QPointF> lower;
    QList<QPointF> upper;
};

// One figure of the answer.
struct AnswerFigure {
    QString label;   // "most likely until"
    QString value;   // "Friday 04:00"
    QString detail;  // "as 1024 members tell it"; empty where there is no more to say
};

// The state as an hour begins, and the means of that hour, in words; the last is the outage's end.
struct Moment {
    double at = 0.0;     // share of the width
    double burnt = 0.0;  // hours since the start
    double level = 0.0;  // what is stored, share of the height
    QString time;
    QString stored;
    QString range;
    QString loads;
    QString sun;
    QString sky;
    QString left;         // how long the candle still burns from here
    QStringList working;  // the balance of the hour that begins
};

// The hours of one outage as wax. All in hours; the column is as tall as the outage.
class Candle {
    Q_GADGET
    QML_VALUE_TYPE(candle)
    Q_PROPERTY(QString spoken MEMBER spoken)
  public:
    struct Mark {
        double hours = 0.0;  // above the foot
        QString text;
    };
    struct Hours {
        double from = 0.0;  // after the start
        double to = 0.0;
    };
    double outage = 0.0;  // or as much of it as is shown, likewise those below
    double burns = 0.0;   // likely, however much is shown
    double earliest = 0.0;
    double likely = 0.0;
    double latest = 0.0;
    QList<Hours> sunny;  // in which the sun carries the loads and puts charge back
    QList<Mark> marks;
    QString spoken;  // the candle in words
};

// What one load takes of the likely course.
struct LoadUseText {
    QString name;
    QString per_day;     // "822 Wh a day"
    double share = 0.0;  // of what the thirstiest load takes
};

struct DaysView {
    bool answered = false;  // false: `findings` says why the file cannot be used
    QString chances;        // how well the chance is known; empty until all members were run
    QString sentence;
    QString range;
    QList<AnswerFigure> told;  // until when nine times in ten, most likely; chance to the end
    Candle candle;

    units::LocalTime starts;
    double hours = 0.0;  // the plot's width
    double energy_top = 0.0;
    double power_top = 0.0;
    QList<QPointF> stored_low;
    QList<QPointF> stored;
    QList<QPointF> stored_high;
    // Half of the members lie between them; empty where they are not known.
    QList<QPointF> stored_lower;
    QList<QPointF> stored_upper;
    double empty_at = 0.0;  // share of the height at which the packs may give no more
    // From when one member in ten has ended until nine in ten have; to the right of the plot's end
    // where that many last.
    Span ends;
    double likely_end = 0.0;  // likewise a share
    QList<Stack> stacks;      // of the loads, the first priority below
    QList<QPointF> sun;
    QList<Span> nights;
    QList<Tick> energy_ticks;
    QList<Tick> power_ticks;
    QList<Pin> pins;
    QList<Moment> moments;
    QString spoken;  // the plot in words

    QList<FindingText> findings;
    QList<FindingText> cautions;
    QList<FindingText> assumptions;
    QList<RowText> figures;
    QList<RowText> working;
    QList<LoadUseText> uses;  // in the order of the file
    QString closing;
};

}  // namespace touch
