// What can be changed of one table of a scenario: each key with its words, what the file says, and
// how it is typed or picked.
#pragma once

#include <string>

#include <QList>
#include <QString>
#include <QStringList>

#include "scenario/file/document.hpp"
#include "units/dimension.hpp"
#include "units/result.hpp"

namespace touch {

struct FieldOption {
    QString value;
    QString label;
    QString detail;
    QString asks_for;  // the key whose number has to be typed when this is picked; may be empty
};

struct Field {
    enum class Kind { number, choice, count, words, hours, moment, several };

    QString key;  // "load[2].metered.energy"
    Kind kind = Kind::number;
    QString label;
    QString value;    // as in the file, or the value of the option that holds
    QString silent;   // what holds where the file is silent; may be empty
    QString example;  // of a number or words
    units::Dimension dimension = units::Dimension::power;
    QStringList units = {};  // to pick from, the usual first
    QList<FieldOption> options = {};
    int least = 0;  // of counts
    int most = 0;
    bool optional = false;   // may be taken out again
    QStringList spans = {};  // of hours: "06:30-08:00"; of several: those that are picked
    bool hidden = false;     // not shown, but may be asked for by an option
};

// Fields of a table: "load", "pack", "panel", "outage", "place", "storage", "inverter", "circuit",
// "circuit[2].links", "charge_controller", "charger", "case", "goal". A table that there is one of
// and that the file has not yet offers what it begins with.
//   takes  number: which of the entries, from 0; of no account for single tables
[[nodiscard]] QList<Field> fields_of(const scenario::Node& document, const QString& table,
                                     int number);

// The text with a field's value put; an empty value takes the key out. What a load draws is known
// one way only: putting another way takes the former one out.
[[nodiscard]] units::Result<std::string> with_field(const std::string& text, const QString& key,
                                                    const QString& value);

// A date and time of the file moved by so many months, days and minutes.
[[nodiscard]] QString with_moment_moved(const QString& moment, int months, int days, int minutes);

// Moves one end of "06:30-08:00" by so many minutes, around midnight.
[[nodiscard]] QString with_end_moved(const QString& span, bool its_end, int minutes);

// `["06:30-08:00"]` as it stands after the =; empty for none.
[[nodiscard]] QString hours_value(const QStringList& spans);
// The same of any words.
[[nodiscard]] QString list_value(const QStringList& words);

}  // namespace touch
