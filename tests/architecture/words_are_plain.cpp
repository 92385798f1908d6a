// What a file says is shown letter by letter: no screen reads it as markup, and none fetches
// anything because of it. Held over the sources, so that a new screen cannot forget it.
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>
#include <string>

#include <gtest/gtest.h>

namespace {

namespace fs = std::filesystem;

const fs::path screens = fs::path(CANDLEMARK_SOURCE_DIR) / "qml";

std::string without_comments(const std::string& text) {
    static const std::regex comment(R"(/\*[^]*?\*/|(^|[^:"])//[^\n]*)");
    return std::regex_replace(text, comment, "$1");
}

std::string source_of(const fs::path& path) {
    std::ifstream file(path);
    return without_comments({std::istreambuf_iterator<char>(file), {}});
}

std::vector<fs::path> sources_ending(const std::set<std::string>& endings) {
    std::vector<fs::path> found;
    for (const auto& entry : fs::recursive_directory_iterator(screens))
        if (entry.is_regular_file() && endings.contains(entry.path().extension()))
            found.push_back(entry.path());
    return found;
}

// Types that guess whether their words are markup, and controls of Qt whose words are written by
// such a type.
const std::regex guesses_markup(
    R"(\b(Text|Label|TextEdit|TextArea|Button|RoundButton|ToolButton|TabButton|CheckBox|)"
    R"(RadioButton|Switch|CheckDelegate|RadioDelegate|SwitchDelegate|ItemDelegate|SwipeDelegate|)"
    R"(ComboBox|SpinBox|Tumbler|GroupBox|Dialog|MessageDialog|ToolTip|Menu|MenuItem|MenuBar|)"
    R"(DelayButton|TextField)\s*\{)");
const std::regex chooses_a_format(
    R"(\btextFormat\b|\b(RichText|StyledText|AutoText|Markdown\w*)\b)");
// What loads from an address that a binding could fill with a person's words.
const std::regex fetches(
    R"(\b(Image|AnimatedImage|AnimatedSprite|BorderImage|FontLoader|WebView|WebEngineView|)"
    R"(MediaPlayer|SoundEffect|XMLHttpRequest|WebSocket)\b|openUrlExternally|ToolTip\.)");

TEST(screens, every_word_is_written_by_the_one_plain_part) {
    int looked_at = 0;
    for (const fs::path& path : sources_ending({".qml"})) {
        const std::string text = source_of(path);
        if (path.filename() == "PlainText.qml") {
            EXPECT_NE(text.find("textFormat: Text.PlainText"), std::string::npos);
            continue;
        }
        ++looked_at;
        std::smatch found;
        // T.Button and its like are bare: what writes their words stands in our file.
        const std::string bare = std::regex_replace(text, std::regex(R"(\bT\.\w+)"), "");
        EXPECT_FALSE(std::regex_search(bare, found, guesses_markup))
            << path << " has " << found.str() << "; use PlainText or a part of ours";
        EXPECT_FALSE(std::regex_search(text, found, chooses_a_format))
            << path << " has " << found.str();
        EXPECT_FALSE(std::regex_search(text, found, fetches)) << path << " has " << found.str();
    }
    EXPECT_GT(looked_at, 70);
}

TEST(screens, no_code_of_ours_reads_words_as_markup_or_opens_an_address) {
    static const std::regex markup(
        R"(\bsetHtml\b|\bfromHtml\b|QTextDocument|QMessageBox|QLabel|QGraphicsTextItem|)"
        R"(QDesktopServices|QNetworkRequest|QTcpSocket|QWebSocket)");
    int looked_at = 0;
    for (const fs::path& path : sources_ending({".cpp", ".hpp"})) {
        ++looked_at;
        // It names a request to refuse it.
        if (path.filename() == "no_network.cpp") continue;
        const std::string text = source_of(path);
        std::smatch found;
        EXPECT_FALSE(std::regex_search(text, found, markup)) << path << " has " << found.str();
    }
    EXPECT_GT(looked_at, 100);
}

TEST(screens, the_rule_is_seen_when_it_is_broken) {
    for (const char* line : {"Text { text: a }", "    Label {", "Button {", "MessageDialog {"})
        EXPECT_TRUE(std::regex_search(line, guesses_markup)) << line;
    for (const char* line : {"PlainText {", "ActionButton {", "TextMetrics {", "FileDialog {"})
        EXPECT_FALSE(std::regex_search(line, guesses_markup)) << line;
    EXPECT_TRUE(std::regex_search("textFormat: Text.RichText", chooses_a_format));
    EXPECT_TRUE(std::regex_search("Image { source: one.picture }", fetches));
    EXPECT_EQ(without_comments("a // Text {\nb: \"http://x\""), "a \nb: \"http://x\"");
}

}  // namespace
