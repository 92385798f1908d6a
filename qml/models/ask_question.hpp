// A question of the scenario on the screen, answered as the command line answers it.
#pragma once

#include <QString>
#include <QVariantMap>

#include "models/answer_view.hpp"
#include "models/watch.hpp"
#include "questions/asked.hpp"

namespace touch {

// Whether there is such a question for a screen.
[[nodiscard]] bool is_question(const QString& name);

// What a screen asks.
//   takes   a name of is_question; with: by name, what the question leaves open: pack (join),
//           reads and rested (gauge), file (compare), members (outage, packs, sun)
//   fails   where one of these cannot be used
[[nodiscard]] units::Result<questions::Asked> asked_of(const QString& question,
                                                       const QVariantMap& with);

//   takes  text of a scenario file; watch, told how far it has come; may be null
//          file, beside which lie the files that the scenario names; may be empty
[[nodiscard]] AnswerView ask_question(const questions::Asked& asked, const QString& text,
                                      const QString& file, Watch* watch = nullptr);
[[nodiscard]] AnswerView ask_question(const QString& question, const QString& text,
                                      const QVariantMap& with, const QString& file,
                                      Watch* watch = nullptr);

}  // namespace touch
