// A sentence is data until a face shows it: nothing below the faces writes one out, takes one apart
// or compares it.
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <string>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>

namespace {

namespace fs = std::filesystem;

const fs::path project = CANDLEMARK_SOURCE_DIR;

std::string without_comments(const std::string& text) {
    static const std::regex comment(R"((^|[^:"])//[^\n]*)");
    return std::regex_replace(text, comment, "$1");
}

struct Source {
    fs::path path;
    std::string text;
};

std::vector<Source> sources_below(std::string_view folder) {
    std::vector<Source> found;
    for (const auto& entry : fs::recursive_directory_iterator(project / folder)) {
        const auto ending = entry.path().extension();
        if (ending != ".cpp" && ending != ".hpp") continue;
        std::ifstream file(entry.path(), std::ios::binary);
        found.push_back({fs::relative(entry.path(), project),
                         without_comments({std::istreambuf_iterator<char>(file), {}})});
    }
    return found;
}

bool is_of(const Source& source, std::string_view room) {
    return source.path.string().starts_with(room);
}

// Text between the places for values that a person would read as words: one of three letters or
// more, and a space beside it.
bool reads_as_words(const std::string& form) {
    static const std::regex place(R"(\{[^{}]*\})");
    static const std::regex escaped(R"(\\.)");
    static const std::regex words(R"([a-z]{3,},? |[ ][a-z]{3,})");
    const std::string bare = std::regex_replace(std::regex_replace(form, place, "#"), escaped, "");
    return std::regex_search(bare, words);
}

TEST(sentences, words_are_told_from_keys_and_numbers) {
    EXPECT_TRUE(reads_as_words("{} of {} starts"));
    EXPECT_TRUE(reads_as_words("until {}"));
    EXPECT_FALSE(reads_as_words("day/{}/warm"));
    EXPECT_FALSE(reads_as_words("{:.6g} W {:.6g} of {:.6g} s"));
    EXPECT_FALSE(reads_as_words("[[{}]]\\n{} = {}"));
}

// The faces and the command line write for a terminal or a machine, what they say is a Said;
// `words` puts a Said into a language.
TEST(sentences, nothing_below_the_faces_writes_one_out) {
    static const std::regex formats(
        R"(fmt::format\(\s*(?:FMT_COMPILE\()?((?:"(?:[^"\\]|\\.)*"\s*)+))");
    int looked_at = 0;
    for (const Source& source : sources_below("engine")) {
        if (is_of(source, "engine/faces") || is_of(source, "engine/command_line") ||
            is_of(source, "engine/words"))
            continue;
        for (std::sregex_iterator found(source.text.begin(), source.text.end(), formats), end;
             found != end; ++found) {
            ++looked_at;
            EXPECT_FALSE(reads_as_words((*found)[1])) << source.path << ": " << (*found)[1];
        }
    }
    EXPECT_GT(looked_at, 20);
}

// Answers are not searched for a form of words, by the engine or by a screen.
TEST(sentences, none_is_taken_apart) {
    static const std::regex takes_apart(R"(std::regex|<regex>)");
    static const std::regex on_a_screen(R"(QRegularExpression)");
    for (const Source& source : sources_below("engine"))
        EXPECT_FALSE(std::regex_search(source.text, takes_apart)) << source.path;
    for (const Source& source : sources_below("qml"))
        if (is_of(source, "qml/models/words"))
            EXPECT_FALSE(std::regex_search(source.text, on_a_screen)) << source.path;
}

// What would be compared is the saying, or the data it was made of.
TEST(sentences, none_is_compared) {
    static const std::regex in_english(R"(\bin\(\s*(?:words::)?english\(\))");
    for (const Source& source : sources_below("engine")) {
        // Who puts it into a language: for logs, for programs that read JSON, for the manual.
        if (is_of(source, "engine/words") || is_of(source, "engine/units") ||
            is_of(source, "engine/faces") || is_of(source, "engine/command_line"))
            continue;
        EXPECT_FALSE(std::regex_search(source.text, in_english)) << source.path;
        EXPECT_EQ(source.text.find("in_english"), std::string::npos) << source.path;
    }
    for (const Source& source : sources_below("qml")) {
        EXPECT_FALSE(std::regex_search(source.text, in_english)) << source.path;
        EXPECT_EQ(source.text.find("in_english"), std::string::npos) << source.path;
    }
}

}  // namespace
