#include "command_line/questions.hpp"

#include "answers/answer_of.hpp"
#include "command_line/ask/ask_compare.hpp"
#include "command_line/ask/ask_gauge.hpp"
#include "command_line/ask/ask_join.hpp"
#include "command_line/ask/ask_learnt.hpp"
#include "command_line/ask/ask_note.hpp"
#include "command_line/ask/ask_now.hpp"
#include "command_line/ask/ask_outage.hpp"
#include "command_line/ask/ask_packs.hpp"
#include "command_line/ask/ask_read.hpp"
#include "command_line/ask/ask_start.hpp"
#include "command_line/ask/ask_storage.hpp"
#include "command_line/ask/ask_sun.hpp"
#include "command_line/ask/ask_wiring.hpp"
#include "questions/found.hpp"

namespace command_line {

const std::vector<Question>& questions() {
    static const std::vector<Question> all{outage_question(), packs_question(),  sun_question(),
                                           join_question(),   gauge_question(),  storage_question(),
                                           start_question(),  wiring_question(), compare_question(),
                                           now_question(),    note_question(),   learnt_question(),
                                           read_question()};
    return all;
}

questions::How how_of(const Request& request) {
    return {.seed = request.seed, .threads = request.threads, .progress = request.progress};
}

units::Result<answers::Answer> answer_to(const scenario::ReadScenario& read,
                                         const Request& request) {
    if (request.question->write) return request.question->write(read, request);
    const auto asked = request.question->asked(read, request);
    if (!asked) return units::fail(asked.error());
    const auto found = questions::find(read, *asked, how_of(request));
    if (!found) return units::fail(found.error());
    return answers::answer_of(*found);
}

}  // namespace command_line
