// Folders, functions and tests keep a size that a reader can take in.
#include <cctype>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace {

namespace fs = std::filesystem;

const fs::path project = CANDLEMARK_SOURCE_DIR;

std::vector<fs::path> files_below(const fs::path& folder, const std::set<std::string>& endings) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder))
        if (endings.contains(entry.path().extension().string())) files.push_back(entry.path());
    return files;
}

TEST(sizes, no_folder_of_the_engine_or_the_screens_holds_more_than_thirty_files) {
    std::map<fs::path, int> files;
    for (const char* top : {"engine", "qml"})
        for (const auto& entry : fs::recursive_directory_iterator(project / top))
            if (entry.is_regular_file()) ++files[entry.path().parent_path()];
    for (const auto& [folder, count] : files)
        EXPECT_LE(count, 30) << folder;
}

// Main functions and instantiations for one width of register are tested through others.
TEST(sizes, nine_sources_in_ten_have_a_test_of_their_own_name) {
    std::set<std::string> tests;
    for (const auto& file : files_below(project / "tests" / "engine", {".cpp"})) {
        const auto room = *fs::relative(file, project / "tests" / "engine").begin();
        tests.insert(room.string() + "/" + file.filename().string());
    }
    std::vector<std::string> without;
    const auto sources = files_below(project / "engine", {".cpp"});
    for (const auto& source : sources) {
        const auto room = *fs::relative(source, project / "engine").begin();
        // Of a folder a question, the folder's name tells the question.
        if (!tests.contains(room.string() + "/" + source.filename().string()))
            without.push_back(fs::relative(source, project).string());
    }
    EXPECT_LE(10 * without.size(), sources.size()) << testing::PrintToString(without);
}

// The file without its comments and without what stands in quotes.
std::string bare(const fs::path& path) {
    std::ifstream file(path);
    std::stringstream all;
    all << file.rdbuf();
    const std::string text = all.str();
    std::string bare;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text.compare(i, 2, "//") == 0) {
            while (i < text.size() && text[i] != '\n')
                ++i;
            bare += '\n';
        } else if (text.compare(i, 2, "R\"") == 0) {
            const auto opens = text.find('(', i);
            const std::string end = ")" + text.substr(i + 2, opens - i - 2) + "\"";
            const auto closes = text.find(end, opens);
            for (; i < closes + end.size() - 1; ++i)
                if (text[i] == '\n') bare += '\n';
        } else if (text[i] == '"' ||
                   (text[i] == '\'' &&
                    (i == 0 || std::isalnum(static_cast<unsigned char>(text[i - 1])) == 0))) {
            const char quote = text[i];
            for (++i; i < text.size() && text[i] != quote; ++i)
                if (text[i] == '\\') ++i;
        } else {
            bare += text[i];
        }
    }
    return bare;
}

// Whether what stands before a brace opens a function: it ends in a list of parameters and is no
// statement of its own.
bool opens_a_function(std::string_view head) {
    const auto begin = head.find_first_not_of(" \n\t");
    if (begin == std::string_view::npos) return false;
    head.remove_prefix(begin);
    for (const std::string_view statement : {"if", "for", "while", "switch", "else", "catch", "do"})
        if (head.starts_with(statement) &&
            std::isalnum(static_cast<unsigned char>(head[statement.size()])) == 0)
            return false;
    const auto parameters = head.find('(');
    if (parameters == std::string_view::npos) return false;
    const std::string_view before = head.substr(0, parameters);
    if (before.find('=') != std::string_view::npos && before.find("operator") == before.npos)
        return false;
    if (before.find("return") != before.npos || before.ends_with(']')) return false;
    const auto closes = head.rfind(')');
    return closes != head.npos && head.substr(closes).find_first_of(";,=") == head.npos;
}

struct Function {
    std::string where;
    std::ptrdiff_t lines;
};

std::vector<Function> functions_of(const fs::path& path) {
    const std::string text = bare(path);
    struct Open {
        std::size_t at;
        bool function;
    };
    std::vector<Open> open;
    std::vector<Function> found;
    std::size_t head = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == ';') head = i + 1;
        if (text[i] == '{') {
            open.push_back({i, opens_a_function(std::string_view(text).substr(head, i - head))});
            head = i + 1;
        }
        if (text[i] == '}' && !open.empty()) {
            const Open one = open.back();
            open.pop_back();
            head = i + 1;
            if (!one.function) continue;
            const auto from = text.begin() + static_cast<std::ptrdiff_t>(one.at);
            const auto to = text.begin() + static_cast<std::ptrdiff_t>(i);
            const auto line = 1 + std::count(text.begin(), from, '\n');
            found.push_back({path.filename().string() + ":" + std::to_string(line),
                             1 + std::count(from, to, '\n')});
        }
    }
    return found;
}

TEST(sizes, few_functions_of_the_engine_are_longer_than_forty_lines) {
    std::vector<std::string> longer;
    std::size_t all = 0;
    for (const auto& file : files_below(project / "engine", {".cpp", ".hpp"})) {
        for (const Function& one : functions_of(file)) {
            ++all;
            if (one.lines > 40) longer.push_back(one.where + " " + std::to_string(one.lines));
        }
    }
    EXPECT_GT(all, 3000u);  // else the scan found no functions
    EXPECT_LE(longer.size(), 20u) << testing::PrintToString(longer);
}

}  // namespace
