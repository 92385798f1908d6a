// The whole command: arguments and a scenario in, an answer in every face out. No exception, no
// fault of the account, no number that is not finite, no JSON or table that cannot be read.
//
// The first line of an input holds the arguments with a tab between them, without the file; all
// after it is the scenario. The word OTHER is a scenario that is shipped, for questions about two.
#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "command_line/arguments.hpp"
#include "command_line/questions.hpp"
#include "command_line/read_request.hpp"
#include "command_line/run.hpp"
#include "faces/csv.hpp"
#include "faces/json.hpp"
#include "faces/pictures/wiring_svg.hpp"
#include "faces/sheet.hpp"
#include "faces/text.hpp"
#include "fuzz/changes.hpp"
#include "fuzz/target.hpp"

namespace fuzz {

namespace {

using answers::Answer;
using command_line::Request;
using command_line::Surroundings;

const std::filesystem::path scenarios = CANDLEMARK_SOURCE_DIR "/scenarios";

std::vector<std::string> arguments_of(std::string_view line) {
    std::vector<std::string> arguments;
    for (const auto& word : parts_of(line, '\t')) {
        arguments.push_back(word == "OTHER" ? (scenarios / "swap/as_built.toml").string() : word);
        if (arguments.size() == 1) arguments.emplace_back("-");
    }
    return arguments;
}

Surroundings with_input(std::string_view text) {
    return {.standard_input = [text]() -> units::Result<std::string> { return std::string(text); },
            .utf8 = true};
}

void must_be_finite(const answers::Value& value, const std::string& key) {
    if (const auto* quantity = std::get_if<answers::Quantity>(&value.held)) {
        must(std::isfinite(quantity->value), key + " is not finite");
    } else if (const auto* list = std::get_if<answers::List>(&value.held)) {
        for (const auto& entry : *list)
            must_be_finite(entry, key);
    } else if (const auto* members = std::get_if<answers::Members>(&value.held)) {
        for (const auto& member : *members)
            must_be_finite(member.value, key + "." + member.key);
    }
}

void must_be_finite(const std::vector<double>& values, const std::string& name) {
    must(std::ranges::all_of(values, [](double value) { return std::isfinite(value); }),
         name + " holds what is not finite");
}

// Whether a word stands in the text with no letter beside it.
bool holds_word(std::string_view text, std::string_view word) {
    const auto is_letter = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || (c & 0x80) != 0;
    };
    for (auto at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        const bool begins = at == 0 || !is_letter(text[at - 1]);
        const auto end = at + word.size();
        if (begins && (end == text.size() || !is_letter(text[end]))) return true;
    }
    return false;
}

void must_hold_no_odd_number(const std::string& face, std::string_view input) {
    for (const std::string_view odd : {"nan", "inf"})
        must(input.find(odd) != std::string_view::npos || !holds_word(face, odd),
             fmt::format("\"{}\" among the words:\n{}", odd, face));
}

// Cells of each row of a table as RFC 4180 has it; 0 where a quote is not closed.
std::set<std::size_t> widths_of(const std::string& csv) {
    std::set<std::size_t> widths;
    std::size_t cells = 1;
    bool quoted = false;
    for (const char letter : csv) {
        if (letter == '"') quoted = !quoted;
        if (quoted) continue;
        if (letter == ',') ++cells;
        if (letter == '\n') {
            widths.insert(cells);
            cells = 1;
        }
    }
    if (quoted) widths.insert(0);
    return widths;
}

void check(const Answer& answer, std::string_view input) {
    must(!answer.defect, "a fault of the program: " + std::string(answer.defect.value_or(words::Said())));
    must(!answer.sentences.empty() && !answer.sentences.front().empty(), "no plain answer");
    for (const auto& member : answer.values)
        must_be_finite(member.value, member.key);
    for (const auto& row : answer.working)
        must(std::isfinite(row.value.value), "working: " + std::string(row.quantity) + " is not finite");
    for (const auto& series : answer.series)
        for (const auto& column : series.columns)
            if (const auto* numbers = std::get_if<std::vector<double>>(&column.points))
                must_be_finite(*numbers, series.name + "." + column.name);
    if (answer.days) {
        for (const auto* curve : {&answer.days->at, &answer.days->nine_in_ten, &answer.days->likely,
                                  &answer.days->one_in_ten})
            must_be_finite(*curve, "a curve of the days");
        for (const auto& hour : answer.days->hours)
            must_be_finite({hour.stored_before, hour.sun_offered, hour.sun_taken,
                            hour.charger_taken, hour.wanted, hour.served, hour.lost, hour.stored},
                           "an hour of the days");
    }
    for (const auto& chart : answer.starts)
        for (const auto* curve :
             {&chart.time, &chart.speed, &chart.current, &chart.voltage, &chart.direct_voltage})
            must_be_finite(*curve, "the start of " + chart.name);

    must(nlohmann::json::accept(faces::in_json(answer)), "JSON that cannot be read");
    must(nlohmann::json::accept(faces::in_json_line({.file = "-"}, &answer)),
         "JSON that cannot be read");
    must(widths_of(faces::in_csv(answer)).size() <= 1, "rows of the table differ in length");
    if (answer.wiring) must_hold_no_odd_number(faces::in_svg(*answer.wiring, answer.title), input);
    must_hold_no_odd_number(faces::in_html(answer), input);
    must_hold_no_odd_number(faces::in_text(answer, {}), input);
    must_hold_no_odd_number(faces::in_text(answer, {.width = 40, .ascii = true, .full = true}),
                            input);
}

std::string words_of(const units::Errors& errors) {
    must(!errors.empty(), "refused without a word");
    std::string words;
    for (const auto& error : errors) {
        must(!error.found.empty(), "a refusal that does not say what was found");
        words += error.where + std::string(error.remedy);
    }
    return words;
}

std::string words_of(const Answer& answer) {
    std::string words = answer.question;
    for (const auto& finding : answer.findings)
        words += std::string(answers::word_for(finding.finding.severity)) +
                 std::string(finding.finding.where);
    for (const auto& assumption : answer.assumptions)
        words += assumption.where;
    return words;
}

struct Option {
    const char* question;
    const char* name;
    std::vector<const char*> values;
};

const std::vector<Option>& options() {
    static const std::vector<Option> all{
        {"outage", "--weathers", {"1", "8", "16"}},
        {"outage", "--after-storage", {}},
        {"packs", "--weathers", {"1", "16", "64"}},
        {"packs", "--most-packs", {"1", "2", "5"}},
        {"packs", "--most-panels", {"0", "1", "4"}},
        {"sun", "--weathers", {"1", "16", "64"}},
        {"sun", "--panels", {"0", "1", "4"}},
        {"join", "--pack", {"spare", "main", "nothing"}},
        {"join", "--at-most", {"5 A", "0 A", "1e9 A", "5 V"}},
        {"gauge", "--reads", {"12.9 V", "12.1 V", "13.4 V", "9 V", "0 V", "60 V", "x"}},
        {"gauge", "--under", {"150 W", "0 W", "10 kW", "5 A"}},
        {"gauge", "--rested", {"0 h", "8 h", "30 d"}},
        {"gauge", "--accuracy", {"0.01 V", "0.5 V", "0 V"}},
        {"gauge", "--pack", {"spare", "main"}},
        {"gauge", "--now", {"21:30", "2026-01-15T03:00:00", "25:00"}},
        {"storage", "--on", {"2026-11-01", "1999-01-01", "2099-12-31", "soon"}},
        {"", "--seed", {"0", "2", "18446744073709551615"}},
    };
    return all;
}

std::string some_arguments(Random& random) {
    const std::string question = one_of(command_line::questions(), random).name;
    std::string line = question;
    if (question == "compare") line += "\tOTHER";
    if (question == "packs") line += "\t--weathers\t16\t--most-packs\t3\t--most-panels\t2";
    if (question == "outage") line += "\t--weathers\t4";
    if (question == "sun") line += "\t--weathers\t16\t--panels\t3";
    if (question == "gauge") line += "\t--reads\t12.9 V";
    for (auto more = random() % 3; more > 0; --more) {
        const auto& option = one_of(options(), random);
        if (*option.name == '\0' || (*option.question != '\0' && option.question != question))
            continue;
        if (line.find(option.name) != std::string::npos) continue;
        line += std::string("\t") + option.name;
        if (!option.values.empty()) line += std::string("\t") + one_of(option.values, random);
    }
    if (random() % 6 == 0) line += "\t--set\t" + any_override(random);
    return line;
}

std::vector<std::string> shipped() {
    std::vector<std::string> texts;
    std::set<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(scenarios))
        if (entry.path().extension() == ".toml") files.insert(entry.path());
    for (const auto& path : files) {
        std::ostringstream text;
        text << std::ifstream(path, std::ios::binary).rdbuf();
        texts.push_back(text.str());
    }
    return texts;
}

}  // namespace

Came run(std::string_view input) {
    const auto line = input.substr(0, input.find('\n'));
    const auto text =
        line.size() == input.size() ? std::string_view() : input.substr(line.size() + 1);
    const auto arguments = arguments_of(line);
    const auto around = with_input(text);
    const auto asked = command_line::read_arguments(arguments);
    const auto* request = std::get_if<Request>(&asked);
    if (request == nullptr) {
        count("without a question");
        return {.mark = mark_of(std::get<command_line::Notice>(asked).text), .worth = false};
    }
    if (request->files_from || !request->more_files.empty()) return {};

    // Asked once for all faces: where an exception came, the program would end with status 3.
    std::string words;
    const auto read = command_line::read_request(*request, around);
    if (!read) {
        count("with a file refused");
        words = words_of(read.error());
    } else if (const auto answer = command_line::answer_to(*read, *request); !answer) {
        count("without an answer");
        words = request->question->name + words_of(answer.error());
    } else {
        count("answered");
        check(*answer, input);
        words = words_of(*answer);
    }
    // The outermost function itself now and then, as the program calls it.
    const std::uint64_t mark = mark_of(words);
    if (mark % 16 == 0) {
        const auto outcome = command_line::run(arguments, around);
        must(outcome.status != command_line::Status::defect, outcome.errors);
    }
    return {.mark = mark, .worth = read.has_value()};
}

std::string mutated(std::string_view input, std::string_view other, Random& random) {
    const auto end = std::min(input.find('\n'), input.size());
    std::string line(input.substr(0, end));
    std::string text(input.substr(std::min(end + 1, input.size())));
    const auto other_end = std::min(other.find('\n'), other.size());
    if (random() % 3 == 0) line = some_arguments(random);
    if (random() % 6 != 0 || line == input.substr(0, end))
        text = with_scenario_changed(text, other.substr(std::min(other_end + 1, other.size())),
                                     random);
    return line + "\n" + text;
}

std::vector<std::string> made_seeds() {
    Random random(1);
    std::vector<std::string> seeds;
    for (const auto& text : shipped())
        for (int i = 0; i < 3; ++i)
            seeds.push_back(some_arguments(random) + "\n" + text);
    return seeds;
}

}  // namespace fuzz
