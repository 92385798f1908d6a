#include "command_line/run.hpp"

#include <exception>
#include <filesystem>
#include <new>
#include <sstream>

#include <fmt/format.h>

#include "command_line/arguments.hpp"
#include "command_line/ask/many.hpp"
#include "command_line/left_unsaid.hpp"
#include "command_line/made_by.hpp"
#include "command_line/questions.hpp"
#include "command_line/read_request.hpp"
#include "faces/csv.hpp"
#include "faces/json.hpp"
#include "faces/pictures/pictures.hpp"
#include "faces/sheet.hpp"
#include "faces/text.hpp"
#include "scenario/file/named_file.hpp"
#include "scenario/file/placed.hpp"
#include "units/quote.hpp"

namespace command_line {

namespace {

using answers::Answer;
using scenario::ReadScenario;
using words::said;

// In words beside the answer; a program that asked for JSON finds them in its place too.
Outcome unusable(const units::Errors& errors, const Request& request) {
    Outcome outcome{.status = Status::unusable};
    if (request.face == Face::json) {
        outcome.output = faces::in_json(request.file, errors);
    }
    for (const auto& error : errors) {
        outcome.errors += units::print(error, request.language) + "\n";
    }
    return outcome;
}

std::string in_face(const Answer& answer, const ReadScenario& read, const Request& request,
                    const Surroundings& around) {
    switch (request.face) {
        case Face::json:
            return faces::in_json(answer, made_by(read, request));
        case Face::csv:
            return faces::in_csv(answer, request.language);
        case Face::html:
            return faces::in_html(answer, request.language);
        case Face::svg:
            return faces::in_svg(answer, request.language);
        case Face::jsonl:
        case Face::text:
            break;
    }
    return faces::in_text(answer, {.width = around.columns,
                                   .ascii = request.ascii || !around.utf8,
                                   .colour = around.colour,
                                   .full = request.full,
                                   .language = request.language});
}

// Warnings are findings of `read`; elsewhere they must not be lost either.
std::string warnings_of(const ReadScenario& read, const words::Language& language) {
    std::string text;
    for (const auto& warning : read.warnings) {
        text +=
            words::in(language, said<"warning: {what}">(units::print(warning, language))) + "\n";
    }
    return text;
}

// Folders of --weather-from that are none.
units::Errors no_folders(const std::vector<std::string>& named) {
    units::Errors errors;
    for (const auto& folder : named) {
        std::error_code failed;
        if (!std::filesystem::is_directory(folder, failed)) {
            errors.push_back(
                {.where = "--weather-from",
                 .found = said<"there is no folder \"{folder}\"">(units::quote(folder, 80)),
                 .remedy = said<"give the folder in which the weather file lies">()});
        }
    }
    return errors;
}

// Lines that come through standard input, in the place of "-".
units::Result<std::vector<std::string>> lines_of(const Request& request,
                                                 const Surroundings& around) {
    std::vector<std::string> lines;
    for (const auto& line : request.lines) {
        if (line != "-") {
            lines.push_back(line);
            continue;
        }
        const auto text = around.standard_input();
        if (!text) return units::fail(text.error());
        std::istringstream input(*text);
        for (std::string one; std::getline(input, one);)
            lines.push_back(one);
    }
    return lines;
}

// What was asked for, or the locale's; English where there is no catalogue of that.
words::Language language_of(const Request& request, const Surroundings& around) {
    words::Language language =
        request.asked_language.value_or(words::language(around.locale).value_or(words::english()));
    language.us_units = request.us_units;
    language.twelve_hours = request.twelve_hours;
    return language;
}

Outcome answer(Request request, const Surroundings& around) {
    auto lines = lines_of(request, around);
    if (!lines) return unusable(lines.error(), request);
    request.lines = std::move(*lines);
    auto read = read_request(request, around);
    if (!read) {
        return unusable(read.error(), request);
    }
    warn_of_what_is_left_unsaid(*read);
    const auto answer = answer_to(*read, request);
    if (!answer) {
        return unusable(scenario::placed(answer.error(), *read), request);
    }
    if (request.face == Face::svg && faces::in_svg(*answer).empty()) {
        return unusable({{.where = "--as",
                          .found = said<"this answer has no picture">(),
                          .remedy = said<"ask for it as text, json, csv or html">()}},
                        request);
    }
    Outcome outcome{
        .status = answers::holds_a_stop(*answer) ? Status::stop : Status::answered,
        .output = in_face(*answer, *read, request, around),
        .errors = request.question->tells_warnings ? "" : warnings_of(*read, request.language)};
    if (answer->defect) {
        outcome.status = Status::defect;
        outcome.errors +=
            "candlemark: " + words::in(request.language, said<"{defect}.">(*answer->defect)) + "\n";
    }
    return outcome;
}

}  // namespace

Outcome run(const std::vector<std::string>& arguments, const Surroundings& around) {
    try {
        const auto asked = read_arguments(
            arguments, around.columns, words::language(around.locale).value_or(words::english()));
        if (const auto* notice = std::get_if<Notice>(&asked)) {
            return notice->is_error ? Outcome{.status = Status::unusable, .errors = notice->text}
                                    : Outcome{.output = notice->text};
        }
        auto request = std::get<Request>(asked);
        request.progress = around.progress;
        request.arguments = arguments;
        request.clock = around.clock;
        request.language = language_of(request, around);
        if (const auto errors = no_folders(request.weather_from); !errors.empty()) {
            return unusable(errors, request);
        }
        const scenario::AlsoAllowed allowed(request.weather_from);
        const bool many = request.face == Face::jsonl || request.files_from.has_value() ||
                          !request.more_files.empty();
        return many ? answer_many(request, around) : answer(request, around);
    } catch (const std::bad_alloc&) {
        return {.status = Status::defect, .errors = std::string(not_enough_memory)};
    } catch (const std::exception& exception) {
        return {.status = Status::defect,
                .errors = std::string("candlemark: a fault of this program: ") + exception.what() +
                          ". Please report it with the scenario.\n"};
    }
}

}  // namespace command_line
