#include "command_line/ask_learnt.hpp"

#include <algorithm>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include "answers/answer_of.hpp"
#include "answers/learnt/answer.hpp"
#include "command_line/questions.hpp"
#include "questions/found.hpp"
#include "scenario/document.hpp"
#include "scenario/place_of_key.hpp"
#include "scenario/save.hpp"
#include "scenario/saving.hpp"
#include "units/quote.hpp"

namespace command_line {

namespace {

using estimate::Learnt;
using estimate::LearntValue;

// By its key, or by the load or pack that it is about.
units::Result<LearntValue> named(const Learnt& learnt, const std::string& name) {
    const LearntValue* found = nullptr;
    for (const LearntValue& value : learnt.values)
        if (value.key == name || value.of == name) found = &value;
    if (found != nullptr) return *found;
    std::string offered;
    for (const LearntValue& value : learnt.values)
        offered += (offered.empty() ? "" : ", ") + value.key;
    return units::fail(
        {.where = "--take",
         .found = fmt::format("found \"{}\", and no such value is offered", units::quote(name)),
         .remedy =
             offered.empty() ? "nothing was learnt of this outage" : "give one of " + offered});
}

// The text with the value, and above its line where it came from.
units::Result<std::string> taken_into(const std::string& text, const LearntValue& value,
                                      const std::string& comment) {
    auto with = scenario::with_value(text, value.key, value.likely);
    if (!with) return with;
    const auto document = scenario::read_document(*with, "");
    if (!document) return units::fail(document.error());
    const auto place = scenario::place_of_key(*document, value.key);
    if (!place || place->value == nullptr) return with;
    const std::size_t before = with->rfind('\n', place->value->begin);
    const std::size_t line = before == std::string::npos ? 0 : before + 1;
    const bool dos = before != std::string::npos && before > 0 && (*with)[before - 1] == '\r';
    return with->insert(line, "# " + comment + (dos ? "\r\n" : "\n"));
}

}  // namespace

void add_learnt_options(CLI::App& command, Request& request) {
    command
        .add_option("--take", request.take,
                    "Writes the value of this load, pack or key into the file, with a\n"
                    "comment of where it came from")
        ->type_name("NAME");
}

units::Result<answers::Answer> ask_learnt(const scenario::ReadScenario& read,
                                          const Request& request) {
    const auto found =
        questions::find(read, questions::Asked{questions::LearntAsked{}}, how_of(request));
    if (!found) return units::fail(found.error());
    const auto* learnt = &std::get<questions::LearntFound>(*found).learnt;
    if (!request.take) return answers::answer_of(*found);
    if (request.file == "-" || !request.set.empty())
        return units::fail({.where = "--take",
                            .found = request.file == "-" ? "standard input cannot be written to"
                                                         : "--set holds for one answer alone",
                            .remedy = "name the scenario's file, without --set"});
    const auto value = named(*learnt, *request.take);
    if (!value) return units::fail(value.error());
    const auto text =
        taken_into(read.text, *value, answers::where_it_came_from(read.scenario, *learnt, *value));
    if (!text) return units::fail(text.error());
    if (const auto again = scenario::read_scenario(*text, read.file_name); !again)
        return units::fail(again.error());
    const auto saving = scenario::save_bytes_over(read.file_name, read.text, *text);
    if (!saving.saved()) return units::fail(scenario::not_saved(read.file_name, saving));
    return answers::learnt_answer(read.scenario, *learnt, *value);
}

}  // namespace command_line
