#include "command_line/arguments.hpp"

#include <algorithm>
#include <charconv>
#include <map>
#include <optional>

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include "command_line/complaints.hpp"
#include "command_line/help_page.hpp"
#include "command_line/questions.hpp"
#include "command_line/reference/answer_schema.hpp"
#include "command_line/reference/file_schema.hpp"
#include "command_line/reference/keys_manual.hpp"
#include "command_line/reference/keys_text.hpp"
#include "command_line/reference/places_text.hpp"
#include "command_line/reference/sayings_text.hpp"
#include "command_line/version.hpp"
#include "scenario/file/reading.hpp"

namespace command_line {

namespace {

using words::said;
// Each paragraph is broken where the page ends.
constexpr const char* about =
    "Plans a hand-built emergency power unit before the lights go out: a battery in a case, an "
    "inverter, packs that plug in, a few panels. Describe yours in a text file and ask.\n";

constexpr const char* example =
    "\nExample:\n"
    "  candlemark outage storm.toml\n"
    "  candlemark outage storm.toml --set pack.expansion.count=4\n"
    "  candlemark outage storm.toml --as csv > hours.csv\n"
    "\nExit status: 0 answered; 1 answered, and something must be mended first (STOP); 2 the file "
    "or the command cannot be used; 3 a fault of this program, or not enough memory.\n"
    "\nArithmetic, not approval. Local codes and licensed practice decide.";

const std::map<std::string, Face> faces{{"text", Face::text},   {"json", Face::json},
                                        {"jsonl", Face::jsonl}, {"csv", Face::csv},
                                        {"html", Face::html},   {"svg", Face::svg}};

// Every digit counts: a seed that is cut or wrapped would name other weathers than the one asked
// for.
std::uint64_t seed_of(const std::string& text) {
    std::uint64_t seed = 0;
    const char* const end = text.data() + text.size();
    const auto [read_to, error] = std::from_chars(text.data(), end, seed);
    if (text.empty() || error != std::errc() || read_to != end) {
        throw Misunderstood("--seed", found(text),
                            said<"give {limits}">(said<"a whole number from {least} to {most}">(
                                "0", "18446744073709551615")));
    }
    return seed;
}

// As a person is told of them: "en, de".
std::string codes_of_languages() {
    return fmt::format("{}", fmt::join(words::language_codes(), ", "));
}

words::Language language_of(const std::string& code) {
    const auto language = words::language(code);
    if (!language || code.empty()) {
        throw Misunderstood("--language", found(code),
                            said<"give one of {values}">(codes_of_languages()));
    }
    return *language;
}

// How the reader likes it said.
void add_options_of_words(CLI::App& command, Request& request) {
    command
        .add_option_function<std::string>(
            "--language",
            [&request](const std::string& code) { request.asked_language = language_of(code); },
            "Language of text, csv, html and svg: " + codes_of_languages() +
                "; without it that of the locale")
        ->type_name("CODE");
    command
        .add_option_function<std::string>(
            "--units", [&request](const std::string& units) { request.us_units = units == "us"; },
            "us adds degrees Fahrenheit, pounds and feet")
        ->check(one_of("--units", {"metric", "us"}))
        ->type_name("metric|us");
    command
        .add_option_function<std::string>(
            "--clock",
            [&request](const std::string& hours) { request.twelve_hours = hours == "12"; },
            "12 tells the time as 3:00 PM")
        ->check(one_of("--clock", {"12", "24"}))
        ->type_name("12|24");
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
            "text for people, json for programs, jsonl for a line of "
            "JSON a file, csv for spreadsheets, html to print, svg for "
            "the pictures where there are any")
        ->check(one_of("--as", {"text", "json", "jsonl", "csv", "html", "svg"}))
        ->type_name("text|json|jsonl|csv|html|svg");
    command.add_flag("--quiet", request.quiet, "Tells no progress and no counts");
    command
        .add_option("--set", request.set,
                    "Takes this value instead of the file's, such as "
                    "load.refrigerator.count=2 or 'outage.lasts=\"3 d\"'; may be given again")
        ->type_name("KEY=VALUE")
        ->allow_extra_args(false);
    command
        .add_option("--weather-from", request.weather_from,
                    "Folder in which the weather file of a scenario may lie, besides the "
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
    add_options_of_words(command, request);
}

// Each is answered by a line of its own.
void add_options_of_many(CLI::App& command, Request& request) {
    command.add_option("MORE", request.more_files,
                       "Further files: then each is answered by one line of JSON");
    command
        .add_option("--files-from", request.files_from,
                    "Reads the names of the files from this one, a line each; - reads "
                    "them from standard input")
        ->type_name("FILE");
    command
        .add_option("--resume", request.resume,
                    "Leaves out what this file of lines has already: the same content "
                    "asked the same; what is written to it goes on behind its last "
                    "whole line")
        ->type_name("LINES");
}

// Nothing where a question can be asked.
std::optional<words::Said> lacking(const Request& request) {
    if (request.file.empty() && !request.files_from) return said<"{name} is missing">("FILE");
    if (!request.file.empty() && request.files_from)
        return said<"give files, or --files-from, not both">();
    const bool many = request.files_from || !request.more_files.empty();
    if (many && request.face_given && request.face != Face::jsonl)
        return said<"--as: many files are answered by a line of JSON each; give --as jsonl">();
    if (!request.lines.empty() && request.face == Face::jsonl)
        return said<"--as: a note is written into one file; give --as json">();
    if (request.resume && !many && request.face != Face::jsonl)
        return said<"--resume is for --as jsonl">();
    return std::nullopt;
}

void add_command(CLI::App& program, Request& request, const Question& question) {
    CLI::App* command = program.add_subcommand(question.name, std::string(question.asks));
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
    Notice refused{.text = {}, .is_error = true};
    for (const auto& error : text.error()) {
        refused.text += units::print(error) + "\n";
    }
    return refused;
}

units::Result<std::string> keys_as(const std::string& face, const std::string& key, int columns,
                                   const words::Language& language) {
    if (face == "text") return keys_text(key, columns, language);
    if (!key.empty()) {
        return units::fail({.where = "--as " + face,
                            .found = said<"tells all keys, and one is named">(),
                            .remedy = said<"leave the name out, or ask for text">()});
    }
    if (face == "manual") return keys_manual();
    return face == "schema" ? file_schema() : answer_schema();
}

// What an unknown first word may have meant; empty where it is known or nothing is near.
std::string_view meant(const std::string& word) {
    std::vector<std::string_view> known{"places", "keys", "sayings", "help"};
    for (const auto& question : questions())
        known.emplace_back(question.name);
    if (std::ranges::find(known, word) != known.end()) return {};
    return scenario::nearest_word(word, known);
}

// A line each: what is wrong, what may have been meant, and where to look.
Notice complaint(const words::Said& wrong, std::string_view meant,
                 const words::Language& language) {
    std::string text = "candlemark: " + words::in(language, wrong) + "\n";
    if (!meant.empty()) text += words::in(language, said<"Did you mean {word}?">(meant)) + "\n";
    text += words::in(language, said<"Ask {command} for what can be asked.">("candlemark --help")) +
            "\n";
    return {.text = std::move(text), .is_error = true};
}

CLI::App* add_places(CLI::App& program, std::vector<std::string>& where) {
    CLI::App* places =
        program.add_subcommand("places", "Which places are built in, and which lie nearest?");
    places->add_option("WHERE", where,
                       "A name or the beginning of some, or latitude and longitude in degrees, "
                       "north and east positive; without it all are listed");
    places->footer("\nExample:\n  candlemark places Golden\n  candlemark places 40.0 -105.3");
    return places;
}

CLI::App* add_keys(CLI::App& program, std::vector<std::string>& key, std::string& as,
                   words::Language& language) {
    CLI::App* keys =
        program.add_subcommand("keys", "What does a key of the file mean, and what does it take?");
    keys->add_option("NAME", key,
                     "A key such as pack.capacity or capacity, or a table such as pack; without "
                     "it all are listed");
    keys->add_option("--as", as,
                     "text to read, manual for man(1), schema for editors of the file, "
                     "answer-schema for programs that read --as json")
        ->check(one_of("--as", {"text", "manual", "schema", "answer-schema"}))
        ->type_name("text|manual|schema|answer-schema");
    keys->add_option_function<std::string>(
            "--language", [&language](const std::string& code) { language = language_of(code); },
            "Language of the text: " + codes_of_languages() + "; without it that of the locale")
        ->type_name("CODE");
    keys->footer(
        "\nExample:\n  candlemark keys pack\n  candlemark keys rated_over\n"
        "  candlemark keys --as schema > scenario.schema.json");
    return keys;
}

CLI::App* add_sayings(CLI::App& program, std::string& code) {
    CLI::App* sayings =
        program.add_subcommand("sayings", "What can the program say, for those who translate it?");
    sayings
        ->add_option_function<std::string>(
            "--language",
            [&code](const std::string& given) { code = std::string(language_of(given).code()); },
            "With what this language says: " + codes_of_languages() +
                "; without it everything is still to be translated")
        ->type_name("CODE");
    sayings->footer("\nExample:\n  candlemark sayings --language de > de.toml");
    return sayings;
}

// What is said in the place of an answer: help, the version, or what cannot be understood.
std::optional<Notice> parsed(CLI::App& program, const std::vector<std::string>& arguments,
                             const words::Language& language) {
    if (arguments.empty()) return Notice{.text = program.help(), .is_error = true};
    try {
        program.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
    } catch (const CLI::CallForHelp&) {
        const auto chosen = program.get_subcommands();
        return Notice{.text = chosen.empty() ? program.help() : chosen.front()->help("candlemark")};
    } catch (const CLI::CallForVersion&) {
        return Notice{.text = "candlemark " + std::string(version) + "\n"};
    } catch (const CLI::ParseError& error) {
        return complaint(in_words(error, program, arguments), meant(arguments.front()), language);
    }
    return std::nullopt;
}

}  // namespace

std::variant<Request, Notice> read_arguments(const std::vector<std::string>& arguments, int columns,
                                             const words::Language& locale) {
    // "help" and "help QUESTION" are --help, wherever people expect it.
    if (!arguments.empty() && arguments.front() == "help") {
        std::vector<std::string> asked(arguments.begin() + 1, arguments.end());
        asked.emplace_back("--help");
        return read_arguments(asked, columns, locale);
    }
    Request request;
    CLI::App program(about, "candlemark");
    program.formatter(help_page(columns));
    program.footer(example);
    program.set_version_flag("-V,--version", "candlemark " + std::string(version));
    program.require_subcommand(1);
    for (const auto& question : questions())
        add_command(program, request, question);
    std::vector<std::string> where;
    const CLI::App* places = add_places(program, where);
    std::vector<std::string> key;
    std::string as = "text";
    words::Language language = locale;
    const CLI::App* keys = add_keys(program, key, as, language);
    std::string code = "en";
    const CLI::App* sayings = add_sayings(program, code);
    const auto complaints_in = language_for_complaints(arguments, locale);
    if (auto notice = parsed(program, arguments, complaints_in)) return std::move(*notice);
    if (places->parsed()) return notice_of(places_text(together(where), columns));
    if (keys->parsed()) return notice_of(keys_as(as, together(key), columns, language));
    if (sayings->parsed()) return Notice{.text = sayings_text(code)};
    if (const auto lack = lacking(request)) return complaint(*lack, {}, complaints_in);
    return request;
}

}  // namespace command_line
