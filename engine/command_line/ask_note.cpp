#include "command_line/ask_note.hpp"

#include <algorithm>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include "answers/note/answer.hpp"
#include "command_line/moments.hpp"
#include "notes/understand.hpp"
#include "scenario/saving.hpp"
#include "units/clock.hpp"

namespace command_line {

namespace {

using notes::Understood;
using units::Errors;

units::Error no_line() {
    return {.where = "LINE",
            .found = "no line to write down",
            .remedy =
                "add such as \"21:30 main 12.9 V under 150 W\", or - to read lines from "
                "standard input"};
}

// What stands in the way before a line is read.
Errors in_the_way(const Request& request) {
    Errors errors;
    if (request.file == "-")
        errors.push_back(
            {.where = "FILE",
             .found = "standard input cannot be written to",
             .remedy = "name the scenario's file; lines may come from standard input"});
    if (!request.set.empty())
        errors.push_back({.where = "--set",
                          .found = "a value that holds for one answer alone",
                          .remedy = "leave it out; what is noted goes into the file"});
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
                 .found = fmt::format("found {}, and the outage of this file is from {} to {}",
                                      units::print(one.entry.at), units::print(outage.starts),
                                      units::print(outage.starts + outage.lasts)),
                 .remedy = "give --at where the computer's clock is wrong, or mend outage.starts "
                           "and outage.lasts"});
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

}  // namespace

void add_note_options(CLI::App& command, Request& request) {
    command.add_option("LINE", request.lines,
                       "What was read, done or seen, each line in quotes; - reads lines\n"
                       "from standard input");
    command
        .add_option("--at", request.at,
                    "When the lines are written (now): for lines without a time, and\n"
                    "where the computer's clock is wrong")
        ->type_name("21:30|2026-01-15T21:30");
}

units::Result<answers::Answer> ask_note(const scenario::ReadScenario& read,
                                        const Request& request) {
    if (auto errors = in_the_way(request); !errors.empty()) return units::fail(std::move(errors));
    const auto& outage = read.scenario.outage;
    const auto now = now_of(request.at, request.clock, outage);
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

}  // namespace command_line
