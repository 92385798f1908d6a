#include "command_line/arguments.hpp"

#include <algorithm>
#include <charconv>
#include <map>

#include <CLI/CLI.hpp>

#include "command_line/places_text.hpp"
#include "command_line/questions.hpp"
#include "command_line/version.hpp"
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

const std::map<std::string, Face> faces{{"text", Face::text},
                                        {"json", Face::json},
                                        {"csv", Face::csv},
                                        {"html", Face::html},
                                        {"svg", Face::svg}};

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
    command.add_option("FILE", request.file, "The scenario file; - reads standard input")
        ->required();
    command
        .add_option_function<std::string>(
            "--as", [&request](const std::string& face) { request.face = faces.at(face); },
            "text for people, json for programs, csv for spreadsheets,\n"
            "html to print, svg for the picture where there is one")
        ->check(CLI::IsMember({"text", "json", "csv", "html", "svg"}))
        ->type_name("text|json|csv|html|svg");
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

void add_command(CLI::App& program, Request& request, const Question& question) {
    CLI::App* command = program.add_subcommand(question.name, question.asks);
    add_common_options(*command, request);
    if (question.add_options) {
        question.add_options(*command, request);
    }
    command->footer("\nExample:\n" + std::string(question.examples));
    command->callback([&request, &question] { request.question = &question; });
}

Notice places_notice(const std::vector<std::string>& asked) {
    std::string words;
    for (const auto& word : asked) {
        words += (words.empty() ? "" : " ") + word;
    }
    const auto text = places_text(words);
    if (text) return Notice{.text = *text};
    Notice refused{.is_error = true};
    for (const auto& error : text.error()) {
        refused.text += units::print(error) + "\n";
    }
    return refused;
}

}  // namespace

std::variant<Request, Notice> read_arguments(const std::vector<std::string>& arguments) {
    Request request;
    CLI::App program(about, "candlemark");
    program.footer(example);
    program.set_version_flag("--version", "candlemark " + std::string(version));
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
                              "\nAsk candlemark --help for what can be asked.\n",
                      .is_error = true};
    }
    if (places->parsed()) {
        return places_notice(asked);
    }
    return request;
}

}  // namespace command_line
