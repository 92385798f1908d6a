#include "command_line/ask/ask_note.hpp"

#include <algorithm>

#include <CLI/CLI.hpp>

#include "answers/note/answer.hpp"
#include "command_line/ask/moments.hpp"
#include "notes/understand.hpp"
#include "scenario/file/saving.hpp"
#include "units/clock.hpp"

namespace command_line {

namespace {

using notes::Understood;
using units::Errors;
using words::said;

units::Error no_line() {
    return {.where = "LINE",
            .found = said<"no line to write down">(),
            .remedy = said<"add such as \"21:30 main 12.9 V under 150 W\", or - to read lines from "
                           "standard input">()};
}

// What stands in the way before a line is read.
Errors in_the_way(const Request& request) {
    Errors errors;
    if (request.file == "-")
        errors.push_back(
            {.where = "FILE",
             .found = said<"standard input cannot be written to">(),
             .remedy = said<"name the scenario's file; lines may come from standard input">()});
    if (!request.set.empty())
        errors.push_back({.where = "--set",
                          .found = said<"a value that holds for one answer alone">(),
                          .remedy = said<"leave it out; what is noted goes into the file">()});
    if (request.lines.empty()) errors.push_back(no_line());
    return errors;
}

// Entries that lie outside the outage, which the computer's clock may be the reason of.
Errors out_of_the_outage(const std::vector<Understood>& noted, const scenario::Outage& outage) {
    Errors errors;
    for (const Understood& one : noted)
        if (!one.entry.strikes && !is_within(one.entry.at, outage))
            errors.push_back(
                {.where = units::show_clock(one.entry.at),
                 .found =
                     said<"found {time}, and the outage of this file is from {start} to {end}">(
                         units::print(one.entry.at), units::print(outage.starts),
                         units::print(outage.starts + outage.lasts)),
                 .remedy =
                     said<"give --at where the computer's clock is wrong, or mend outage.starts "
                          "and outage.lasts">()});
    return errors;
}

// Their places are those of a text that nobody has seen.
Errors without_places(Errors errors) {
    for (auto& error : errors) {
        error.file.clear();
        error.line = 0;
        if (error.where.starts_with("log")) error.where = "log";
    }
    return errors;
}

Errors new_ones(const Errors& after, const Errors& before) {
    Errors fresh;
    for (const auto& warning : after)
        if (std::ranges::find(before, warning) == before.end()) fresh.push_back(warning);
    return fresh;
}

void add_options(CLI::App& command, Request& request) {
    command.add_option("LINE", request.lines,
                       "What was read, done or seen, each line in quotes; - reads lines "
                       "from standard input");
    command
        .add_option("--at", request.at,
                    "When the lines are written (now): for lines without a time, and "
                    "where the computer's clock is wrong")
        ->type_name("21:30|2026-01-15T21:30");
}

units::Result<answers::Answer> write(const scenario::ReadScenario& read, const Request& request) {
    if (auto errors = in_the_way(request); !errors.empty()) return units::fail(std::move(errors));
    const auto& outage = read.scenario.outage;
    const auto now = now_of(request.at, put_right(request.clock, read.scenario), outage);
    if (!now) return units::fail(now.error());
    const auto noted = notes::understand_all(request.lines, read.scenario, *now);
    if (!noted) return units::fail(noted.error());
    if (noted->empty()) return units::fail(no_line());  // blank ones
    if (auto errors = out_of_the_outage(*noted, outage); !errors.empty())
        return units::fail(std::move(errors));
    std::vector<scenario::LogEntry> entries;
    for (const Understood& one : *noted)
        entries.push_back(one.entry);
    const auto text = notes::with_entries(read.text, entries);
    if (!text) return units::fail(text.error());
    const auto again = scenario::read_scenario(*text, read.file_name);
    if (!again) return units::fail(without_places(again.error()));
    const auto saving = scenario::save_bytes_over(read.file_name, read.text, *text);
    if (!saving.saved()) return units::fail(scenario::not_saved(read.file_name, saving));
    return answers::note_answer(read.scenario, *noted, new_ones(again->warnings, read.warnings));
}

}  // namespace

Question note_question() {
    return {.name = "note",
            .asks = words::said<"Write down what I read, did or saw while the power is out.">(),
            .examples =
                "  candlemark note storm.toml \"21:30 main 12.9 V under 150 W\"\n"
                "  candlemark note storm.toml \"modem off\" \"freezer -11 degC\"\n"
                "  candlemark note storm.toml \"strike 21:30 main\"",
            .add_options = add_options,
            .write = write,
            .of_one_file = true};
}

}  // namespace command_line
