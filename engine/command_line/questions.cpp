#include "command_line/questions.hpp"

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
#include "scenario/set_aside.hpp"

namespace command_line {

namespace {

// Asked of the loads that the packs feed; the question of reading alone sees the others too.
template <auto ask>
units::Result<answers::Answer> of_loads_fed(const scenario::ReadScenario& read,
                                            const Request& request) {
    if (!scenario::has_set_aside(read.scenario)) {
        return ask(read, request);
    }
    scenario::ReadScenario fed = read;
    scenario::set_aside(fed.scenario);
    return ask(fed, request);
}

}  // namespace

const std::vector<Question>& questions() {
    static const std::vector<Question> all{
        {.name = "outage",
         .asks = "How long does it last, hour by hour, and what do the panels give back?",
         .examples = "  candlemark outage storm.toml --set outage.lasts=\"3 d\" --full",
         .add_options = add_outage_options,
         .ask = of_loads_fed<ask_outage>},
        {.name = "packs",
         .asks = "How many packs, and panels, should I build?",
         .examples = "  candlemark packs storm.toml --set goal.chance=0.95",
         .add_options = add_packs_options,
         .ask = of_loads_fed<ask_packs>},
        {.name = "sun",
         .asks = "What do the panels give back, how should they stand, how many help?",
         .examples = "  candlemark sun storm.toml\n"
                     "  candlemark sun storm.toml --set panel.tilt=\"70 deg\" --panels 8",
         .add_options = add_sun_options,
         .ask = of_loads_fed<ask_sun>},
        {.name = "join",
         .asks = "May I plug this pack onto that unit now?",
         .examples = "  candlemark join storm.toml --pack spare\n"
                     "  candlemark join storm.toml --set pack.spare.rested_voltage=\"13.4 V\"",
         .add_options = add_join_options,
         .ask = of_loads_fed<ask_join>},
        {.name = "gauge",
         .asks = "What does this voltage reading mean?",
         .examples =
             "  candlemark gauge storm.toml --reads \"12.9 V\" --rested \"8 h\"\n"
             "  candlemark gauge storm.toml --reads \"12.4 V\" --under \"150 W\" --now 21:30",
         .add_options = add_gauge_options,
         .ask = of_loads_fed<ask_gauge>},
        {.name = "storage",
         .asks = "After months in storage, is it ready? When must it be topped up?",
         .examples = "  candlemark storage storm.toml --on 2026-11-01",
         .add_options = add_storage_options,
         .ask = of_loads_fed<ask_storage>},
        {.name = "start",
         .asks = "Will this saw, fridge or pump start? With how many packs?",
         .examples = "  candlemark start storm.toml --set pack.expansion.count=2",
         .ask = of_loads_fed<ask_start>},
        {.name = "wiring",
         .asks = "Do fuse, wire, switch, connector and outlet suit what is drawn?",
         .examples = "  candlemark wiring storm.toml --full\n"
                     "  candlemark wiring storm.toml --as html > sheet.html",
         .ask = of_loads_fed<ask_wiring>},
        {.name = "compare",
         .asks = "What differs between these two builds, and what must be rechecked?",
         .examples = "  candlemark compare old.toml new.toml --full",
         .add_options = add_compare_options,
         .ask = of_loads_fed<ask_compare>,
         .of_one_file = true},
        {.name = "now",
         .asks = "Until when from now, what goes off next, what should I read next?",
         .examples = "  candlemark now storm.toml\n"
                     "  candlemark now storm.toml --at 21:30",
         .add_options = add_now_options,
         .ask = of_loads_fed<ask_now>},
        {.name = "note",
         .asks = "Write down what I read, did or saw while the power is out.",
         .examples = "  candlemark note storm.toml \"21:30 main 12.9 V under 150 W\"\n"
                     "  candlemark note storm.toml \"modem off\" \"freezer -11 degC\"\n"
                     "  candlemark note storm.toml \"strike 21:30 main\"",
         .add_options = add_note_options,
         .ask = ask_note,
         .of_one_file = true},
        {.name = "learnt",
         .asks = "Did it go as planned, and what was learnt?",
         .examples = "  candlemark learnt storm.toml\n"
                     "  candlemark learnt storm.toml --take \"chest freezer\"",
         .add_options = add_learnt_options,
         .ask = of_loads_fed<ask_learnt>,
         .of_one_file = true},
        {.name = "read",
         .asks = "What did you understand of my file?",
         .examples = "  candlemark read storm.toml --full",
         .ask = ask_read,
         .tells_warnings = true},
    };
    return all;
}

}  // namespace command_line
