// An answer in another language holds no word of English: whatever is said of a shipped scenario
// went through the catalogue on its way to a face.
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <map>
#include <optional>
#include <set>
#include <sstream>

#include <gtest/gtest.h>

#include "command_line/arguments.hpp"
#include "command_line/left_unsaid.hpp"
#include "command_line/questions.hpp"
#include "command_line/read_request.hpp"
#include "faces/csv.hpp"
#include "faces/pictures/pictures.hpp"
#include "faces/sheet.hpp"
#include "faces/text.hpp"
#include "scenario/file/read.hpp"
#include "scenario/keys/listing.hpp"
#include "words/catalogue.hpp"

namespace {

namespace fs = std::filesystem;

const fs::path scenarios = fs::path(CANDLEMARK_SOURCE_DIR) / "scenarios";

std::string contents(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

// ---- Words.

bool is_of_a_word(char letter) {
    return static_cast<unsigned char>(letter) >= 0x80 || (letter >= 'a' && letter <= 'z') ||
           (letter >= 'A' && letter <= 'Z');
}

// Small letters, three and more; what is shorter is a unit or a code.
std::set<std::string> words_of(std::string_view text) {
    std::set<std::string> words;
    std::string word;
    const auto end_word = [&] {
        if (word.size() >= 3) words.insert(word);
        word.clear();
    };
    for (const char letter : text)
        if (is_of_a_word(letter))
            word += letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter + 32) : letter;
        else
            end_word();
    end_word();
    return words;
}

// The text without what stands from one sign to the next other one, such as { to }.
std::string without(std::string_view text, char from, char to) {
    std::string rest;
    for (auto opens = text.find(from); opens != text.npos; opens = text.find(from)) {
        rest.append(text.substr(0, opens)) += ' ';
        const auto closes = text.find(to, opens);
        text.remove_prefix(closes == text.npos ? text.size() : closes + 1);
    }
    return rest.append(text);
}

// A template without the names of its parts, and without references in brackets.
std::string bare(std::string_view saying) {
    return without(without(saying, '{', '}'), '[', ']');
}

// Words that English says and this language does not.
std::set<std::string> english_alone(const words::Catalogue& catalogue) {
    std::set<std::string> english;
    std::set<std::string> ours;
    for (const auto& [key, entry] : catalogue.entries()) {
        english.merge(words_of(bare(key)));
        english.merge(words_of(bare(entry.many)));
        for (const std::string& form : entry.as)
            ours.merge(words_of(bare(form)));
    }
    for (const std::string& word : ours)
        english.erase(word);
    return english;
}

// Whether a key takes a person's own words, or a list of them.
bool takes_words(const words::Said& limits) {
    if (limits.saying == &words::saying<"words of at most {n} bytes">) return true;
    return std::ranges::any_of(limits.parts, [](const words::Part& part) {
        const auto* inner = std::get_if<words::Said>(&part.held());
        return inner != nullptr && takes_words(*inner);
    });
}

// What a person called things, and files, which no language changes. A code that stands in the
// file, such as "storm", is none of them.
std::set<std::string> names_in(const scenario::ReadScenario& read) {
    std::set<std::string> names = words_of(read.file_name);
    for (const scenario::ListedKey& key : scenario::listing(read))
        if (key.given && takes_words(key.limits)) names.merge(words_of(key.value));
    return names;
}

// An option, a key, a file, the name of a command.
bool is_code(std::string_view token, std::string_view before, std::string_view behind) {
    const auto end = token.find_last_not_of(".,;:!?)");
    token = token.substr(0, end == token.npos ? 0 : end + 1);
    return token.starts_with("--") || token.find_first_of("_./=") != token.npos || behind == "=" ||
           before.ends_with("candlemark");
}

// The text without what is to be typed, which stands in straight quotes. A quote that is not closed
// soon is a letter.
std::string without_typed(std::string_view text) {
    constexpr std::size_t longest = 80;
    std::string rest;
    for (auto opens = text.find('"'); opens != text.npos; opens = text.find('"')) {
        const auto closes = text.find('"', opens + 1);
        const bool is_typed = closes != text.npos && closes - opens <= longest;
        rest.append(text.substr(0, opens)) += ' ';
        text.remove_prefix(is_typed ? closes + 1 : opens + 1);
    }
    return rest.append(text);
}

// The words of a text without what is typed, codes and references in brackets.
std::set<std::string> said_in(std::string_view text) {
    std::vector<std::string> tokens;
    std::istringstream read(bare(without_typed(text)));
    for (std::string token; read >> token;)
        tokens.push_back(token);
    std::set<std::string> words;
    for (std::size_t i = 0; i < tokens.size(); ++i)
        if (!is_code(tokens[i], i == 0 ? "" : tokens[i - 1],
                     i + 1 < tokens.size() ? tokens[i + 1] : ""))
            words.merge(words_of(tokens[i]));
    return words;
}

// A page's own marks, its styles, and its name for the shelf, which is that of the question.
std::string without_marks(std::string text) {
    for (const auto& [begin, end] :
         {std::pair{"<style>", "</style>"}, std::pair{"<title>", "</title>"}})
        for (auto from = text.find(begin); from != text.npos; from = text.find(begin))
            text.erase(from, text.find(end, from) + std::string_view(end).size() - from);
    text = without(text, '<', '>');
    for (auto at = text.find("&quot;"); at != text.npos; at = text.find("&quot;"))
        text.replace(at, 6, "\"");
    return without(text, '&', ';');
}

// The fields of a table, without the quotes around them.
std::string fields_of(std::string_view csv) {
    std::string fields;
    bool quoted = false;
    for (std::size_t i = 0; i < csv.size(); ++i) {
        const bool doubled = quoted && csv.substr(i, 2) == "\"\"";
        if (csv[i] != '"' || doubled)
            fields += !quoted && csv[i] == ',' ? ' ' : csv[i];
        else
            quoted = !quoted;
        if (doubled) ++i;
    }
    return fields;
}

// ---- Answers.

struct Asked {
    fs::path scenario;
    std::vector<std::string> arguments;
};

struct Whole {
    answers::Answer answer;
    std::set<std::string> names;
};

// Of both files where two are compared.
std::set<std::string> names_of(const scenario::ReadScenario& read, const std::string& other) {
    std::set<std::string> names = names_in(read);
    if (other.empty()) return names;
    const auto compared = scenario::read_scenario(contents(other), other);
    if (compared) names.merge(names_in(*compared));
    return names;
}

std::optional<Whole> answer_to(const Asked& asked) {
    const auto read_arguments = command_line::read_arguments(asked.arguments);
    const auto* given = std::get_if<command_line::Request>(&read_arguments);
    if (given == nullptr) {
        ADD_FAILURE() << std::get<command_line::Notice>(read_arguments).text;
        return std::nullopt;
    }
    auto read = command_line::read_request(*given, {});
    if (!read) return std::nullopt;
    command_line::warn_of_what_is_left_unsaid(*read);
    auto answer = command_line::answer_to(*read, *given);
    if (!answer) return std::nullopt;
    return Whole{std::move(*answer), names_of(*read, given->other_file)};
}

std::vector<fs::path> shipped() {
    std::vector<fs::path> found;
    for (const auto& entry : fs::recursive_directory_iterator(scenarios))
        if (entry.path().extension() == ".toml") found.push_back(entry.path());
    std::ranges::sort(found);
    return found;
}

std::vector<Asked> all_asked() {
    const std::vector<std::vector<std::string>> questions{
        {"outage", "--members", "64"},
        {"packs", "--members", "64", "--most-packs", "4", "--most-panels", "4"},
        {"sun", "--members", "64", "--panels", "4"},
        {"start"},
        {"wiring"},
        {"join"},
        {"gauge", "--reads", "12.9 V", "--under", "10 A"},
        {"storage"},
        {"now", "--at", "03:00"},
        {"learnt"},
        {"read"}};
    std::vector<Asked> all;
    for (const fs::path& scenario : shipped())
        for (auto arguments : questions) {
            arguments.insert(arguments.begin() + 1, scenario.string());
            all.push_back({scenario, std::move(arguments)});
        }
    const fs::path planned = scenarios / "swap" / "as_planned.toml";
    const fs::path built = scenarios / "swap" / "as_built.toml";
    all.push_back({planned, {"compare", planned.string(), built.string()}});
    return all;
}

std::vector<std::set<std::string>> words_of_faces(const answers::Answer& answer,
                                                  const words::Language& language) {
    const auto text = [&](bool full, int width) {
        return faces::in_text(answer, {.width = width, .full = full, .language = language});
    };
    return {said_in(text(false, 200)), said_in(text(true, 1000)),
            said_in(without_marks(faces::in_html(answer, language))),
            said_in(without_marks(faces::in_svg(answer, language))),
            said_in(fields_of(faces::in_csv(answer, language)))};
}

// Words of English that are no names, in any face.
std::vector<std::string> left_in(const Whole& whole, const std::string& code) {
    static std::map<std::string, std::set<std::string>> of_code;
    auto& english = of_code[code];
    if (english.empty()) english = english_alone(*words::catalogue_of(code));
    std::set<std::string> left;
    for (const auto& said : words_of_faces(whole.answer, *words::language(code)))
        for (const std::string& word : said)
            if (english.contains(word) && !whole.names.contains(word)) left.insert(word);
    return {left.begin(), left.end()};
}

TEST(no_english_left, in_any_answer_over_the_shipped_scenarios) {
    int answered = 0;
    for (const Asked& asked : all_asked()) {
        const auto whole = answer_to(asked);
        if (!whole) continue;
        ++answered;
        for (const char* code : {"de", "es"})
            EXPECT_THAT(left_in(*whole, code), testing::IsEmpty())
                << code << ": " << asked.arguments[0] << " of " << asked.scenario.filename();
    }
    EXPECT_GE(answered, 80);
}

}  // namespace
