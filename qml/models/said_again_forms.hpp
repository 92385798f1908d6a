// How what the engine says in English is said again: by the form of the sentence. A part that has
// no known form gives an empty text, and then the whole sentence stays as it was: half a sentence
// in another language would be worse.
#pragma once

#include <functional>

#include <QList>
#include <QRegularExpression>
#include <QString>
#include <QStringList>

namespace touch {

using Captured = QStringList;  // 0 is the whole

// A form in which the engine speaks, and how it is said again.
struct Saying {
    QRegularExpression form;
    std::function<QString(const Captured&)> again;
};

[[nodiscard]] Saying saying(const char* form, std::function<QString(const Captured&)> again);

// The first form that fits the whole text; the text itself where none does.
[[nodiscard]] QString first_that_fits(const QList<Saying>& sayings, const QString& text);
// The same, but empty where none does.
[[nodiscard]] QString only_if_known(const QList<Saying>& sayings, const QString& text);

// "Thursday 03:00", "the evening of Thursday 22 Jan"
[[nodiscard]] QString time_again(const QString& english);
// "two" to "twelve"
[[nodiscard]] QString number_again(const QString& english);

// Of the answers to join, gauge, storage and start.
[[nodiscard]] const QList<Saying>& sayings_of_joining();
[[nodiscard]] const QList<Saying>& sayings_of_gauge();
[[nodiscard]] const QList<Saying>& sayings_of_storage();
[[nodiscard]] const QList<Saying>& sayings_of_starting();

}  // namespace touch
