// A question of the scenario on the screen, answered as the command line answers it.
#pragma once

#include <QString>

#include "models/answer_view.hpp"
#include "models/file/watch.hpp"
#include "questions/asked.hpp"

namespace touch {

// What a question leaves open, as a screen is filled in; each question takes what is its own.
struct Asks {
    QString pack;               // join: that is plugged in; empty: the last one
    QString reads;              // gauge: as it was typed, for its digits tell how sharp it is
    double rested_hours = 0.0;  // gauge: since the last charge or use; 0: not known
    QString at;                 // now: the moment, as "2026-01-14T21:30:00"
    QString other_file;         // compare: the new build
    int members = 0;            // outage, packs, sun: of the chance; 0: as many as is usual

    friend bool operator==(const Asks&, const Asks&) = default;
};

// Whether there is such a question for a screen.
[[nodiscard]] bool is_question(const QString& name);

// What a screen asks.
//   takes   a name of is_question
//   fails   where what is left open cannot be used
[[nodiscard]] units::Result<questions::Asked> asked_of(const QString& question, const Asks& asks);

//   takes  text of a scenario file; watch, told how far it has come; may be null
//          file, beside which lie the files that the scenario names; may be empty
[[nodiscard]] AnswerView ask_question(const questions::Asked& asked, const QString& text,
                                      const QString& file, Watch* watch = nullptr);
[[nodiscard]] AnswerView ask_question(const QString& question, const QString& text,
                                      const Asks& asks, const QString& file,
                                      Watch* watch = nullptr);

}  // namespace touch
