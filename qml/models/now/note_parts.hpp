// The parts that a person touches together for one entry of the log, and the entry that they make.
#pragma once

#include <optional>

#include <QList>
#include <QString>
#include <QStringList>

#include "scenario/log.hpp"
#include "scenario/scenario.hpp"

namespace touch {

// What the six buttons write down.
inline const QStringList note_kinds{"volts", "meter", "sun", "thermometer", "switched", "happened"};

// A number as it is typed, and its unit.
struct TypedNumber {
    QString typed;
    QString unit;
};

//   what     pack, load, place or event that is picked, by its key
//   detail   volts: what went on meanwhile; meter: over what time; sun: the sky; happened: whose
//   number   the reading; other: what was drawn meanwhile, or over what time
//   count    of packs; by: when the supply is expected
struct NoteParts {
    QString kind;
    QString what;
    QString detail;
    TypedNumber number;
    TypedNumber other;
    int count = 1;
    units::LocalTime at;
    units::LocalTime by;
};

struct NoteChoice {
    QString key;
    QString name;
    QString detail;
};

// What can be picked for a kind, and beside what was picked.
[[nodiscard]] QList<NoteChoice> choices_of(const scenario::Scenario& scenario, const QString& kind);
[[nodiscard]] QList<NoteChoice> details_of(const scenario::Scenario& scenario,
                                           const NoteParts& parts);
[[nodiscard]] QStringList units_of(const NoteParts& parts, bool of_other, bool fahrenheit);

// "129" of volts is 12.9: a point less to touch.
[[nodiscard]] QString with_its_point(const QString& typed);

// Whether the log has a load switched off at a moment.
[[nodiscard]] bool is_off(const scenario::Scenario& scenario, const std::string& load,
                          units::LocalTime at);

// How many of its kind the pack of a name has.
[[nodiscard]] int packs_named(const scenario::Scenario& scenario, const QString& name);

// The entry; nothing while a part is missing or does not read.
[[nodiscard]] std::optional<scenario::LogEntry> entry_of(const scenario::Scenario& scenario,
                                                         const NoteParts& parts);

}  // namespace touch
