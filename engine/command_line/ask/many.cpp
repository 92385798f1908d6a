#include "command_line/ask/many.hpp"

#include <algorithm>
#include <exception>
#include <new>
#include <set>
#include <sstream>

#include <nlohmann/json.hpp>

#include "command_line/left_unsaid.hpp"
#include "command_line/made_by.hpp"
#include "command_line/questions.hpp"
#include "command_line/read_request.hpp"
#include "command_line/version.hpp"
#include "faces/json.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/placed.hpp"

namespace command_line {

namespace {

using answers::Answer;
using Json = nlohmann::json;
using words::said;
using words::said_of;

constexpr std::size_t largest_list = 256U << 20U;    // bytes; a million names of 256 letters
constexpr std::size_t largest_lines = 16ULL << 30U;  // bytes; a million lines of 16 kB

units::Result<std::vector<std::string>> files_of(const Request& request,
                                                 const Surroundings& around) {
    if (!request.files_from) {
        std::vector<std::string> files{request.file};
        files.insert(files.end(), request.more_files.begin(), request.more_files.end());
        return files;
    }
    const auto text =
        *request.files_from == "-"
            ? around.standard_input()
            : scenario::bytes_of_file(*request.files_from,
                                      {.largest = largest_list,
                                       .usual = said<"a list has a name in each line">(),
                                       .remedy = said<"give a list of scenario files">()});
    if (!text) return units::fail(text.error());
    std::vector<std::string> files;
    std::istringstream lines(*text);
    for (std::string line; std::getline(lines, line);) {
        if (line.ends_with('\r')) line.pop_back();
        if (!line.empty()) files.push_back(line);
    }
    if (files.empty())
        return units::fail(
            {.where = "--files-from",
             .found = said<"found no name of a file">(),
             .remedy = said<"give a list with the name of a scenario file in each line">()});
    return files;
}

// The words that ask, without the files and what only says how the lines are written.
std::vector<std::string> asked_of_each(const Request& request,
                                       const std::vector<std::string>& files) {
    const std::set<std::string> names(files.begin(), files.end());
    std::vector<std::string> words;
    for (std::size_t i = 0; i < request.arguments.size(); ++i) {
        const auto& word = request.arguments[i];
        const bool with_next = word == "--files-from" || word == "--resume";
        const bool alone = word == "--quiet" || word.starts_with("--files-from=") ||
                           word.starts_with("--resume=") || names.contains(word);
        if (with_next) ++i;
        if (!with_next && !alone) words.push_back(word);
    }
    return words;
}

// What tells one line from another: the file with its content, and what was asked of it.
std::string mark_of(const std::string& file, const std::string& digest, const Json& asked) {
    return Json{file, digest, asked}.dump(-1, ' ', false, Json::error_handler_t::replace);
}

struct Before {
    std::set<std::string> marks;
    std::size_t whole = 0;  // bytes up to the end of the last whole line
};

units::Result<Before> lines_before(const Request& request) {
    Before before;
    if (!request.resume) return before;
    const auto text = scenario::bytes_of_file(
        *request.resume, {.largest = largest_lines,
                          .usual = "it has a line of JSON for each file",
                          .remedy = said<"give the file that the lines were written to">()});
    if (!text) return units::fail(text.error());
    for (std::size_t from = 0; from < text->size();) {
        const auto end = text->find('\n', from);
        if (end == std::string::npos) break;  // cut off while it was written
        const auto line =
            Json::parse(text->begin() + static_cast<std::ptrdiff_t>(from),
                        text->begin() + static_cast<std::ptrdiff_t>(end), nullptr, false);
        from = end + 1;
        before.whole = from;
        if (!line.is_object() || !line.contains("file") || !line.contains("made_by")) continue;
        const auto& made = line["made_by"];
        const auto& files = made["files"];
        const auto digest = files.empty() ? std::string() : files[0].value("sha256", std::string());
        Json asked = made["arguments"];
        before.marks.insert(mark_of(line["file"].get<std::string>(), digest, asked));
    }
    return before;
}

struct Counts {
    std::size_t answered = 0;
    std::size_t stops = 0;
    std::size_t refused = 0;
    std::size_t faults = 0;
    std::size_t skipped = 0;
};

units::Errors fault(const words::Said& what) {
    return {{.where = "",
             .found = said<"a fault of this program: {what}">(what),
             .remedy = said<"please report it with the scenario">()}};
}

// One file's answer, its warnings added to the line; refusals and faults are its errors.
std::optional<Answer> answer_to(const Request& one, const Surroundings& around, faces::Line& line,
                                Counts& counts) {
    try {
        auto read = read_request(one, around);
        if (!read) {
            line.errors = read.error();
            ++counts.refused;
            return std::nullopt;
        }
        warn_of_what_is_left_unsaid(*read);
        line.made_by = made_by(*read, one);
        line.warnings = read->warnings;
        auto answer = answer_to(*read, one);
        if (!answer) {
            line.errors = scenario::placed(answer.error(), *read);
            ++counts.refused;
            return std::nullopt;
        }
        if (answer->defect) {
            line.errors = fault(*answer->defect);
            ++counts.faults;
            return std::nullopt;
        }
        counts.stops += answers::holds_a_stop(*answer) ? 1 : 0;
        ++counts.answered;
        return std::move(*answer);
    } catch (const std::bad_alloc&) {
        throw;
    } catch (const std::exception& exception) {
        line.errors = fault(exception.what());
        ++counts.faults;
        return std::nullopt;
    }
}

// The counts that are not zero, as clauses of one sentence.
words::Said in_words(const Counts& counts) {
    const auto number = [](std::size_t count) { return static_cast<std::int64_t>(count); };
    std::vector<words::Said> clauses;
    clauses.push_back(counts.stops > 0 ? said<"{n} answered, {stops} of them with a STOP">(
                                             number(counts.answered), number(counts.stops))
                                       : said<"{n} answered">(number(counts.answered)));
    if (counts.skipped > 0)
        clauses.push_back(
            said_of<"{n} was there already", "{n} were there already">(number(counts.skipped)));
    if (counts.refused > 0)
        clauses.push_back(said<"{n} could not be used">(number(counts.refused)));
    if (counts.faults > 0)
        clauses.push_back(said<"{n} met a fault of this program">(number(counts.faults)));
    return words::joined(std::move(clauses), words::List::Joint::semicolon);
}

Outcome unusable(const units::Errors& errors, const words::Language& language) {
    Outcome outcome{.status = Status::unusable};
    for (const auto& error : errors)
        outcome.errors += units::print(error, language) + "\n";
    return outcome;
}

// The same request of one file, of which more is told by of_file.
Request of_one(const Request& request) {
    Request one = request;
    one.progress = {};  // the share that is told is that of the files
    one.files_from.reset();
    one.more_files.clear();
    return one;
}

// The line of a file before it is read: what is asked, and the digest of what it holds.
faces::Line line_of(const Request& one) {
    faces::Line line{
        .file = one.file,
        .question = one.question->name,
        .made_by = answers::MadeBy{
            .version = std::string(version), .arguments = one.arguments, .seed = one.seed}};
    if (one.file == "-") return line;
    if (const auto bytes = scenario::bytes_of_file(one.file))
        line.made_by->files.push_back({.name = one.file, .sha256 = sha256_of(*bytes)});
    return line;
}

std::string mark_of(const faces::Line& line) {
    const auto& files = line.made_by->files;
    return mark_of(line.file, files.empty() ? std::string() : files.front().sha256,
                   line.made_by->arguments);
}

// False where nobody reads on.
bool write_line(const std::string& text, const Surroundings& around, Outcome& outcome) {
    if (around.line) return around.line(text);
    outcome.output += text;
    return true;
}

Outcome unwritten(Outcome outcome, const words::Language& language) {
    outcome.status = Status::unusable;
    outcome.errors +=
        "candlemark: " + words::in(language, said<"the lines could not be written">()) + "\n";
    return outcome;
}

Outcome ended(Outcome outcome, const Counts& counts, const Request& request) {
    if (counts.refused > 0) outcome.status = Status::unusable;
    if (counts.faults > 0) outcome.status = Status::defect;
    if (!request.quiet)
        outcome.errors = "candlemark: " + words::in(request.language, in_words(counts)) + "\n";
    return outcome;
}

}  // namespace

Outcome answer_many(const Request& request, const Surroundings& around) {
    const auto files = files_of(request, around);
    if (!files) return unusable(files.error(), request.language);
    const auto before = lines_before(request);
    if (!before) return unusable(before.error(), request.language);
    if (request.resume && around.cut_output) around.cut_output(*request.resume, before->whole);
    Request one = of_one(request);
    const auto asked = asked_of_each(request, *files);
    std::set<std::string> done = before->marks;
    Outcome outcome;
    Counts counts;
    for (std::size_t i = 0; i < files->size(); ++i) {
        one.file = (*files)[i];
        one.arguments = asked;
        one.arguments.insert(one.arguments.begin() + 1, one.file);
        auto line = line_of(one);
        if (request.resume && !done.insert(mark_of(line)).second) {
            ++counts.skipped;
            continue;
        }
        const auto answer = answer_to(one, around, line, counts);
        const auto text = faces::in_json_line(line, answer ? &*answer : nullptr);
        if (!write_line(text, around, outcome))
            return unwritten(std::move(outcome), request.language);
        if (around.progress)
            (void)around.progress(static_cast<double>(i + 1) / static_cast<double>(files->size()));
    }
    return ended(std::move(outcome), counts, request);
}

}  // namespace command_line
