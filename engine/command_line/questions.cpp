#include "command_line/questions.hpp"

#include "answers/answer_of.hpp"
#include "command_line/ask_compare.hpp"
#include "command_line/ask_gauge.hpp"
#include "command_line/ask_join.hpp"
#include "command_line/ask_learnt.hpp"
#include "command_line/ask_note.hpp"
#include "command_line/ask_now.hpp"
#include "command_line/ask_outage.hpp"
#include "command_line/ask_packs.hpp"
#include "command_line/ask_read.hpp"
#include "command_line/ask_start.hpp"
#include "command_line/ask_storage.hpp"
#include "command_line/ask_sun.hpp"
#include "command_line/ask_wiring.hpp"
#include "questions/found.hpp"

namespace command_line {

const std::vector<Question>& questions() {
    static const std::vector<Question> all{
        {.name = "outage",
         .asks = "How long does it last, hour by hour, and what do the panels give back?",
         .examples = "  candlemark outage storm.toml --set outage.lasts=\"3 d\" --full",
         .add_options = add_outage_options,
         .asked = outage_asked},
        {.name = "packs",
         .asks = "How many packs, and panels, should I build?",
         .examples = "  candlemark packs storm.toml --set goal.chance=0.95",
         .add_options = add_packs_options,
         .asked = packs_asked},
        {.name = "sun",
         .asks = "What do the panels give back, how should they stand, how many help?",
         .examples = "  candlemark sun storm.toml\n"
                     "  candlemark sun storm.toml --set panel.tilt=\"70 deg\" --panels 8",
         .add_options = add_sun_options,
         .asked = sun_asked},
        {.name = "join",
         .asks = "May I plug this pack onto that unit now?",
         .examples = "  candlemark join storm.toml --pack spare\n"
                     "  candlemark join storm.toml --set pack.spare.rested_voltage=\"13.4 V\"",
         .add_options = add_join_options,
         .asked = join_asked},
        {.name = "gauge",
         .asks = "What does this voltage reading mean?",
         .examples =
             "  candlemark gauge storm.toml --reads \"12.9 V\" --rested \"8 h\"\n"
             "  candlemark gauge storm.toml --reads \"12.4 V\" --under \"150 W\" --now 21:30",
         .add_options = add_gauge_options,
         .asked = gauge_asked},
        {.name = "storage",
         .asks = "After months in storage, is it ready? When must it be topped up?",
         .examples = "  candlemark storage storm.toml --on 2026-11-01",
         .add_options = add_storage_options,
         .asked = storage_asked},
        {.name = "start",
         .asks = "Will this saw, fridge or pump start? With how many packs?",
         .examples = "  candlemark start storm.toml --set pack.expansion.count=2",
         .asked = start_asked},
        {.name = "wiring",
         .asks = "Do fuse, wire, switch, connector and outlet suit what is drawn?",
         .examples = "  candlemark wiring storm.toml --full\n"
                     "  candlemark wiring storm.toml --as html > sheet.html",
         .asked = wiring_asked},
        {.name = "compare",
         .asks = "What differs between these two builds, and what must be rechecked?",
         .examples = "  candlemark compare old.toml new.toml --full",
         .add_options = add_compare_options,
         .asked = compare_asked,
         .of_one_file = true},
        {.name = "now",
         .asks = "Until when from now, what goes off next, what should I read next?",
         .examples = "  candlemark now storm.toml\n"
                     "  candlemark now storm.toml --at 21:30",
         .add_options = add_now_options,
         .asked = now_asked},
        {.name = "note",
         .asks = "Write down what I read, did or saw while the power is out.",
         .examples = "  candlemark note storm.toml \"21:30 main 12.9 V under 150 W\"\n"
                     "  candlemark note storm.toml \"modem off\" \"freezer -11 degC\"\n"
                     "  candlemark note storm.toml \"strike 21:30 main\"",
         .add_options = add_note_options,
         .write = ask_note,
         .of_one_file = true},
        {.name = "learnt",
         .asks = "Did it go as planned, and what was learnt?",
         .examples = "  candlemark learnt storm.toml\n"
                     "  candlemark learnt storm.toml --take \"chest freezer\"",
         .add_options = add_learnt_options,
         .write = ask_learnt,
         .of_one_file = true},
        {.name = "read",
         .asks = "What did you understand of my file?",
         .examples = "  candlemark read storm.toml --full",
         .asked = read_asked,
         .tells_warnings = true},
    };
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
