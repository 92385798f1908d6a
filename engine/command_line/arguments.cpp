#include "command_line/arguments.hpp"

#include <algorithm>
#include <charconv>
#include <map>

#include <CLI/CLI.hpp>

#include "command_line/answer_schema.hpp"
#include "command_line/file_schema.hpp"
#include "command_line/keys_manual.hpp"
#include "command_line/keys_text.hpp"
#include "command_line/places_text.hpp"
#include "command_line/questions.hpp"
#include "command_line/version.hpp"
#include "scenario/reading.hpp"
#include "units/quote.hpp"

namespace command_line {

namespace {

constexpr const char* about =
    "Plans a hand-built emergency power unit before the lights go out: a battery in a case, an\n"
    "inverter, packs that plug in, a few panels. Describe yours in a text file and ask.\n";

constexpr const char* example =
    "\nExample:\n"
    "  candlemark outage storm.toml\n"
    "  candlemark outage storm.toml --set pack.expansion.count=4\n"
    "  candlemark outage storm.toml --as csv > hours.csv\n"
    "\nExit status: 0 answered; 1 answered, and something must be mended first (STOP);\n"
    "2 the file or the command cannot be used; 3 a fault of this program, or\n"
    "not enough memory.\n"
    "\nArithmetic, not approval. Local codes and licensed practice decide.";

const std::map<std::string, Face> faces{{"text", Face::text},   {"json", Face::json},
                                        {"jsonl", Face::jsonl}, {"csv", Face::csv},
                                        {"html", Face::html},   {"svg", Face::svg}};

constexpr int longest_complaint = 4096;  // characters; it holds what was typed

// Every digit counts: a seed that is cut or wrapped would name other weathers than the one asked
// for.
std::uint64_t seed_of(const std::string& text) {
    std::uint64_t seed = 0;
    const char* const end = text.data() + text.size();
    const auto [read_to, error] = std::from_chars(text.data(), end, seed);
    if (text.empty() || error != std::errc() || read_to != end) {
        throw CLI::ValidationError(
            "--seed", "found '" + text + "'; give a whole number from 0 to 18446744073709551615");
    }
    return seed;
}

void add_common_options(CLI::App& command, Request& request) {
    command.add_option("FILE", request.file, "The scenario file; - reads standard input");
    command
        .add_option_function<std::string>(
            "--as",
            [&request](const std::string& face) {
                request.face = faces.at(face);
                request.face_given = true;
            },
            "text for people, json for programs, jsonl for a line of\n"
            "JSON a file, csv for spreadsheets, html to print, svg for\n"
            "the pictures where there are any")
        ->check(CLI::IsMember({"text", "json", "jsonl", "csv", "html", "svg"}))
        ->type_name("text|json|jsonl|csv|html|svg");
    command.add_flag("--quiet", request.quiet, "Tells no progress and no counts");
    command
        .add_option("--set", request.set,
                    "Takes this value instead of the file's, such as\n"
                    "load.refrigerator.count=2 or 'outage.lasts=\"3 d\"'; may be given again")
        ->type_name("KEY=VALUE")
        ->allow_extra_args(false);
    command
        .add_option("--weather-from", request.weather_from,
                    "Folder in which the weather file of a scenario may lie, besides the\n"
                    "scenario's own; may be given again")
        ->type_name("FOLDER")
        ->allow_extra_args(false);
    command
        .add_option_function<std::string>(
            "--seed", [&request](const std::string& text) { request.seed = seed_of(text); },
            "Number that chooses the chance weathers (1)")
        ->type_name("N");
    command.add_flag("--full", request.full,
                     "Prints everything: findings with remedies, the working, what was assumed");
    command.add_flag("--ascii", request.ascii, "Draws with plain ASCII characters only");
}

// Each is answered by a line of its own.
void add_options_of_many(CLI::App& command, Request& request) {
    command.add_option("MORE", request.more_files,
                       "Further files: then each is answered by one line of JSON");
    command
        .add_option("--files-from", request.files_from,
                    "Reads the names of the files from this one, a line each; - reads\n"
                    "them from standard input")
        ->type_name("FILE");
    command
        .add_option("--resume", request.resume,
                    "Leaves out what this file of lines has already: the same content\n"
                    "asked the same; what is written to it goes on behind its last\n"
                    "whole line")
        ->type_name("LINES");
}

// Nothing where a question can be asked.
std::optional<std::string> lacking(const Request& request) {
    if (request.file.empty() && !request.files_from) return "FILE is required";
    if (!request.file.empty() && request.files_from) return "give files, or --files-from, not both";
    const bool many = request.files_from || !request.more_files.empty();
    if (many && request.face_given && request.face != Face::jsonl)
        return "--as: many files are answered by a line of JSON each; give --as jsonl";
    if (!request.lines.empty() && request.face == Face::jsonl)
        return "--as: a note is written into one file; give --as json";
    if (request.resume && !many && request.face != Face::jsonl) return "--resume is for --as jsonl";
    return std::nullopt;
}

void add_command(CLI::App& program, Request& request, const Question& question) {
    CLI::App* command = program.add_subcommand(question.name, question.asks);
    add_common_options(*command, request);
    if (!question.of_one_file) add_options_of_many(*command, request);
    if (question.add_options) {
        question.add_options(*command, request);
    }
    command->footer("\nExample:\n" + std::string(question.examples));
    command->callback([&request, &question] { request.question = &question; });
}

// Words given one by one, as one.
std::string together(const std::vector<std::string>& asked) {
    std::string words;
    for (const auto& word : asked) {
        words += (words.empty() ? "" : " ") + word;
    }
    return words;
}

Notice notice_of(const units::Result<std::string>& text) {
    if (text) return Notice{.text = *text};
    Notice refused{.is_error = true};
    for (const auto& error : text.error()) {
        refused.text += units::print(error) + "\n";
    }
    return refused;
}

units::Result<std::string> keys_as(const std::string& face, const std::string& key, int columns) {
    if (face == "text") return keys_text(key, columns);
    if (!key.empty()) {
        return units::fail({.where = "--as " + face,
                            .found = "tells all keys, and one is named",
                            .remedy = "leave the name out, or ask for text"});
    }
    if (face == "manual") return keys_manual();
    return face == "schema" ? file_schema() : answer_schema();
}

// What an unknown first word may have meant, as an addition to the complaint.
std::string meant(const std::string& word) {
    std::vector<std::string_view> known{"places", "keys", "help"};
    for (const auto& question : questions())
        known.emplace_back(question.name);
    if (std::ranges::find(known, word) != known.end()) return {};
    const auto nearest = scenario::nearest_word(word, known);
    return nearest.empty() ? std::string() : "\nDid you mean " + std::string(nearest) + "?";
}

}  // namespace

std::variant<Request, Notice> read_arguments(const std::vector<std::string>& arguments,
                                             int columns) {
    Request request;
    // "help" and "help QUESTION" are --help, wherever people expect it.
    if (!arguments.empty() && arguments.front() == "help") {
        std::vector<std::string> asked(arguments.begin() + 1, arguments.end());
        asked.emplace_back("--help");
        return read_arguments(asked, columns);
    }
    CLI::App program(about, "candlemark");
    program.footer(example);
    program.set_version_flag("-V,--version", "candlemark " + std::string(version));
    program.require_subcommand(1);
    for (const auto& question : questions()) {
        add_command(program, request, question);
    }
    std::vector<std::string> asked;
    CLI::App* places =
        program.add_subcommand("places", "Which places are built in, and which lie nearest?");
    places->add_option("WHERE", asked,
                       "A name or the beginning of some, or latitude and longitude in degrees,\n"
                       "north and east positive; without it all are listed");
    places->footer("\nExample:\n  candlemark places Golden\n  candlemark places 40.0 -105.3");
    std::vector<std::string> key;
    CLI::App* keys =
        program.add_subcommand("keys", "What does a key of the file mean, and what does it take?");
    keys->add_option("NAME", key,
                     "A key such as pack.capacity or capacity, or a table such as pack;\n"
                     "without it all are listed");
    std::string as = "text";
    keys->add_option("--as", as,
                     "text to read, manual for man(1), schema for editors of the\n"
                     "file, answer-schema for programs that read --as json")
        ->check(CLI::IsMember({"text", "manual", "schema", "answer-schema"}))
        ->type_name("text|manual|schema|answer-schema");
    keys->footer(
        "\nExample:\n  candlemark keys pack\n  candlemark keys rated_over\n"
        "  candlemark keys --as schema > scenario.schema.json");
    if (arguments.empty()) {
        return Notice{.text = program.help(), .is_error = true};
    }
    try {
        program.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
    } catch (const CLI::CallForHelp&) {
        const auto chosen = program.get_subcommands();
        return Notice{.text = chosen.empty() ? program.help() : chosen.front()->help("candlemark")};
    } catch (const CLI::CallForVersion&) {
        return Notice{.text = "candlemark " + std::string(version) + "\n"};
    } catch (const CLI::ParseError& error) {
        return Notice{.text = "candlemark: " + units::quote(error.what(), longest_complaint) +
                              meant(arguments.front()) +
                              "\nAsk candlemark --help for what can be asked.\n",
                      .is_error = true};
    }
    if (places->parsed()) {
        return notice_of(places_text(together(asked), columns));
    }
    if (keys->parsed()) {
        return notice_of(keys_as(as, together(key), columns));
    }
    if (const auto lack = lacking(request)) {
        return Notice{
            .text = "candlemark: " + *lack + "\nAsk candlemark --help for what can be asked.\n",
            .is_error = true};
    }
    return request;
}

}  // namespace command_line
