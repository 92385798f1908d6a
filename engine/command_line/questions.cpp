#include "command_line/questions.hpp"

#include "command_line/ask_outage.hpp"
#include "command_line/ask_read.hpp"

namespace command_line {

const std::vector<Question>& questions() {
    static const std::vector<Question> all{
        {.name = "outage",
         .asks = "How long does it last, hour by hour, and what do the panels give back?",
         .examples = "  candlemark outage storm.toml --set outage.lasts=\"3 d\" --full",
         .add_options = add_outage_options,
         .ask = ask_outage},
        {.name = "read",
         .asks = "What did you understand of my file?",
         .examples = "  candlemark read storm.toml --full",
         .ask = ask_read,
         .tells_warnings = true},
    };
    return all;
}

}  // namespace command_line
