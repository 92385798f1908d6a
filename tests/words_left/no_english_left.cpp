// An answer in another language holds no word of English: whatever is said of a shipped scenario
// went through the catalogue on its way to a face.
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <set>
#include <sstream>

#include "command_line/arguments.hpp"
#include "command_line/left_unsaid.hpp"
#include "command_line/questions.hpp"
#include "command_line/read_request.hpp"
#include "faces/csv.hpp"
#include "faces/pictures/pictures.hpp"
#include "faces/sheet.hpp"
#include "faces/text.hpp"
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

// What a person wrote into the file, in quotes, which no language changes.
std::set<std::string> names_of(std::string_view file) {
    std::set<std::string> names;
    for (auto opens = file.find('"'); opens != file.npos; opens = file.find('"')) {
        const auto closes = std::min(file.find('"', opens + 1), file.size() - 1);
        names.merge(words_of(file.substr(opens, closes - opens)));
        file.remove_prefix(closes + 1);
    }
    return names;
}

// An option, a key, a file, the name of a command.
bool is_code(std::string_view token, std::string_view before) {
    const auto end = token.find_last_not_of(".,;:!?)");
    token = token.substr(0, end == token.npos ? 0 : end + 1);
    return token.starts_with("--") || token.find_first_of("_./=") != token.npos ||
           before.ends_with("candlemark");
}

// A face's words without codes, references in brackets and the page's own marks.
std::set<std::string> said_in(std::string text) {
    const auto style = text.find("<style>");
    if (style != text.npos) text.erase(style, text.find("</style>") - style);
    text = without(bare(without(text, '<', '>')), '&', ';');
    std::set<std::string> words;
    std::istringstream tokens(text);
    std::string before;
    for (std::string token; tokens >> token; before = token)
        if (!is_code(token, before)) words.merge(words_of(token));
    return words;
}

// ---- Answers.

struct Asked {
    fs::path scenario;
    std::vector<std::string> arguments;
};

struct Whole {
    answers::Answer answer;
    std::string names;  // texts in which names stand
};

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
    return Whole{
        std::move(*answer),
        contents(asked.scenario) + (given->other_file.empty() ? "" : contents(given->other_file))};
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
        {"packs", "--members", "64", "--packs", "4", "--panels", "4"},
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

std::string in_all_faces(const answers::Answer& answer, const words::Language& language) {
    return faces::in_text(answer, {.width = 200, .full = false, .language = language}) +
           faces::in_text(answer, {.width = 1000, .full = true, .language = language}) +
           faces::in_html(answer, language) + faces::in_svg(answer, language) +
           faces::in_csv(answer, language);
}

// Words of English that are no names, in any face.
std::vector<std::string> left_in(const Whole& whole, const std::string& code) {
    static std::map<std::string, std::set<std::string>> of_code;
    auto& english = of_code[code];
    if (english.empty()) english = english_alone(*words::catalogue_of(code));
    const auto names = names_of(whole.names);
    std::vector<std::string> left;
    for (const std::string& word : said_in(in_all_faces(whole.answer, *words::language(code))))
        if (english.contains(word) && !names.contains(word)) left.push_back(word);
    return left;
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
