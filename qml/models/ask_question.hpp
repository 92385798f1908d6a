// A question of a scenario, as the command line would answer it.
#pragma once

#include <QString>
#include <QStringList>

#include "models/answer_view.hpp"
#include "models/watch.hpp"

namespace touch {

// Whether the command line has such a question.
[[nodiscard]] bool is_question(const QString& name);

//   takes  text of a scenario file; options as on the command line, such as {"--load", "saw"};
//          watch, told how far it has come; may be null
//          file, beside which lie the files that the scenario names; may be empty
[[nodiscard]] AnswerView ask_question(const QString& question, const QString& text,
                                      const QStringList& options, const QString& file,
                                      Watch* watch = nullptr);

}  // namespace touch
