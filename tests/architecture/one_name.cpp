// A name of a namespace is one type: two of the same name in two headers are one to the linker,
// which keeps the code of one of them for both.
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>

namespace {

namespace fs = std::filesystem;

// Comments and texts hold braces that are none.
std::string bare(std::string_view text) {
    std::string made;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text.substr(i, 2) == "//") {
            while (i < text.size() && text[i] != '\n')
                ++i;
            made += '\n';
        } else if (text.substr(i, 2) == "R\"") {
            const auto opens = text.find('(', i);
            const std::string closes = ")" + std::string(text.substr(i + 2, opens - i - 2)) + "\"";
            const auto ends = text.find(closes, opens);
            i = ends == text.npos ? text.size() : ends + closes.size() - 1;
        } else if (text[i] == '"' || (text[i] == '\'' && !(i > 0 && std::isalnum(text[i - 1])))) {
            const char quote = text[i];
            while (++i < text.size() && text[i] != quote)
                if (text[i] == '\\') ++i;
        } else {
            made += text[i];
        }
    }
    return made;
}

// The types that stand in a named namespace, each with it before: "sizing::Cell". What stands
// within a type, a function or a namespace without a name is a file's or that type's own.
std::set<std::string> types_in(const std::string& text) {
    static const std::regex token(
        R"(namespace\s+([\w:]+)\s*\{|namespace\s*\{|\b(?:struct|class|enum)\s+(?:class\s+)?(?:alignas\(\w+\)\s*)?(\w+)(?!\w|\s*::)(?:\s+final)?\s*(?::[^;{}()]*)?\{|[{}])");
    std::set<std::string> found;
    std::vector<std::string> within;  // empty for what has no name
    for (std::sregex_iterator at(text.begin(), text.end(), token), end; at != end; ++at) {
        const std::smatch& match = *at;
        if (match.str() == "}") {
            if (!within.empty()) within.pop_back();
            continue;
        }
        if (match[2].matched) {
            std::string name;
            bool is_of_all = true;
            for (const auto& one : within) {
                name += one + "::";
                is_of_all = is_of_all && !one.empty();
            }
            if (is_of_all) found.insert(name + match[2].str());
        }
        within.push_back(match[1].matched ? match[1].str() : "");
    }
    return found;
}

TEST(one_name, types_are_found_where_they_stand) {
    const auto found = types_in(bare(R"x(
        namespace one { struct A { struct B {}; }; enum class E : int { a }; }
        namespace one::two { class C final : public A {}; class D; }
        namespace { struct Own {}; }
        void of() { struct Local {}; }  // struct Said {
        const char* text = "struct Quoted {"; class one::A::B { };
    )x"));
    EXPECT_EQ(found, (std::set<std::string>{"one::A", "one::E", "one::two::C"}));
}

TEST(one_name, stands_for_one_type) {
    std::map<std::string, std::set<std::string>> where;
    const fs::path project = CANDLEMARK_SOURCE_DIR;
    for (const char* folder : {"engine", "qml"})
        for (const auto& entry : fs::recursive_directory_iterator(project / folder)) {
            const auto ending = entry.path().extension();
            if (ending != ".cpp" && ending != ".hpp") continue;
            std::ifstream file(entry.path(), std::ios::binary);
            const std::string text{std::istreambuf_iterator<char>(file), {}};
            for (const auto& name : types_in(bare(text)))
                where[name].insert(fs::relative(entry.path(), project).string());
        }
    ASSERT_GT(where.size(), 500U);
    for (const auto& [name, files] : where)
        EXPECT_EQ(files.size(), 1U)
            << name << " in " << *files.begin() << " and " << *files.rbegin();
}

}  // namespace
