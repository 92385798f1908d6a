#include "command_line/ask/ask_learnt.hpp"

#include <algorithm>

#include <CLI/CLI.hpp>

#include "answers/answer_of.hpp"
#include "answers/learnt/answer.hpp"
#include "questions/found.hpp"
#include "scenario/file/document.hpp"
#include "scenario/file/save.hpp"
#include "scenario/file/saving.hpp"
#include "scenario/keys/place_of_key.hpp"
#include "units/quote.hpp"

namespace command_line {

namespace {

using estimate::Learnt;
using estimate::LearntValue;
using words::said;

// By its key, or by the load or pack that it is about.
units::Result<LearntValue> named(const Learnt& learnt, const std::string& name) {
    const LearntValue* found = nullptr;
    for (const LearntValue& value : learnt.values)
        if (value.key == name || value.of == name) found = &value;
    if (found != nullptr) return *found;
    std::vector<words::Said> offered;
    for (const LearntValue& value : learnt.values)
        offered.emplace_back(value.key);
    return units::fail(
        {.where = "--take",
         .found = said<"found \"{name}\", and no such value is offered">(units::quote(name)),
         .remedy = offered.empty() ? said<"nothing was learnt of this outage">()
                                   : said<"give one of {keys}">(words::joined(
                                         std::move(offered), words::List::Joint::comma))});
}

// The text with the value, and above its line where it came from.
units::Result<std::string> taken_into(const std::string& text, const LearntValue& value,
                                      const std::string& comment) {
    auto with = scenario::with_value(text, value.key, value.likely.text());
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

void add_options(CLI::App& command, Request& request) {
    command
        .add_option("--take", request.take,
                    "Writes the value of this load, pack or key into the file, with a "
                    "comment of where it came from")
        ->type_name("NAME");
}

units::Result<answers::Answer> write(const scenario::ReadScenario& read, const Request& request) {
    const auto found =
        questions::find(read, questions::Asked{questions::LearntAsked{}}, how_of(request));
    if (!found) return units::fail(found.error());
    const auto* learnt = &std::get<questions::LearntFound>(*found).learnt;
    if (!request.take) return answers::answer_of(*found);
    if (request.file == "-" || !request.set.empty())
        return units::fail({.where = "--take",
                            .found = request.file == "-"
                                         ? said<"standard input cannot be written to">()
                                         : said<"--set holds for one answer alone">(),
                            .remedy = said<"name the scenario's file, without --set">()});
    const auto value = named(*learnt, *request.take);
    if (!value) return units::fail(value.error());
    const auto comment =
        words::in(request.language, answers::where_it_came_from(read.scenario, *learnt, *value));
    const auto text = taken_into(read.text, *value, comment);
    if (!text) return units::fail(text.error());
    if (const auto again = scenario::read_scenario(*text, read.file_name); !again)
        return units::fail(again.error());
    const auto saving = scenario::save_bytes_over(read.file_name, read.text, *text);
    if (!saving.saved()) return units::fail(scenario::not_saved(read.file_name, saving));
    return answers::learnt_answer(read.scenario, *learnt, *value);
}

}  // namespace

Question learnt_question() {
    return {.name = "learnt",
            .asks = words::said<"Did it go as planned, and what was learnt?">(),
            .examples =
                "  candlemark learnt storm.toml\n"
                "  candlemark learnt storm.toml --take \"chest freezer\"",
            .add_options = add_options,
            .write = write,
            .of_one_file = true};
}

}  // namespace command_line
