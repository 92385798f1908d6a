// What the README shows is what the program answers. CANDLEMARK_PIN=1 writes its answers anew.
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "command_line/run.hpp"

namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

const fs::path project = CANDLEMARK_SOURCE_DIR;

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

std::string contents(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

// As at a terminal of 80 columns, from the top of the project.
std::vector<std::string> answer_to(const std::string& command) {
    const auto here = fs::current_path();
    fs::current_path(project);
    std::istringstream words(command);
    std::vector<std::string> arguments;
    for (std::string word; words >> word;)
        arguments.push_back(word);
    arguments.erase(arguments.begin(), arguments.begin() + 2);  // "$ candlemark"
    const auto outcome =
        command_line::run(arguments, {.standard_input = {}, .columns = 80, .utf8 = true});
    fs::current_path(here);
    return lines_of(outcome.output);
}

// An answer within the README: the lines between "$ candlemark …" and the end of the block. "..."
// stands for what is left out at the end.
struct Shown {
    std::string command;
    std::size_t from = 0;  // index of its first line
    std::size_t to = 0;    // of the line that ends the block
    bool shortened = false;
};

std::vector<Shown> answers_in(const std::vector<std::string>& readme) {
    std::vector<Shown> found;
    for (std::size_t i = 0; i + 1 < readme.size(); ++i) {
        if (readme[i] != "```console") continue;
        Shown one{.command = readme[i + 1], .from = i + 2, .to = i + 2};
        while (one.to < readme.size() && readme[one.to] != "```")
            ++one.to;
        one.shortened = readme[one.to - 1] == "...";
        found.push_back(one);
    }
    return found;
}

// What belongs there: as many lines as there are, or a screen where there is none yet.
std::vector<std::string> due(const Shown& one) {
    constexpr std::size_t screen = 24;
    auto lines = answer_to(one.command);
    const std::size_t held = one.to - one.from - (one.shortened ? 1 : 0);
    const std::size_t kept = held == 0 ? screen : held;
    if (one.shortened && lines.size() > kept) {
        lines.resize(kept);
        lines.emplace_back("...");
    }
    return lines;
}

TEST(readme, its_answers_are_the_programs) {
    auto readme = lines_of(contents(project / "README.md"));
    const auto shown = answers_in(readme);
    ASSERT_GE(shown.size(), 1u);
    for (auto one = shown.rbegin(); one != shown.rend(); ++one) {
        const auto from = readme.begin() + static_cast<std::ptrdiff_t>(one->from);
        const auto to = readme.begin() + static_cast<std::ptrdiff_t>(one->to);
        const auto lines = due(*one);
        if (std::getenv("CANDLEMARK_PIN") == nullptr) {
            EXPECT_EQ(std::vector<std::string>(from, to), lines) << one->command;
        } else {
            const auto at = readme.erase(from, to);
            readme.insert(at, lines.begin(), lines.end());
        }
    }
    if (std::getenv("CANDLEMARK_PIN") == nullptr) return;
    std::ofstream file(project / "README.md", std::ios::binary);
    for (const auto& line : readme)
        file << line << '\n';
}

TEST(readme, its_smallest_file_is_answered) {
    const std::string readme = contents(project / "README.md");
    const auto from = readme.find("```toml\n") + 8;
    const auto path = fs::temp_directory_path() / "candlemark_smallest.toml";
    std::ofstream(path, std::ios::binary) << readme.substr(from, readme.find("```", from) - from);
    const auto outcome =
        command_line::run({"outage", path.string()}, {.standard_input = {}, .columns = 80});
    fs::remove(path);
    EXPECT_EQ(outcome.errors, "");
    EXPECT_THAT(outcome.output, HasSubstr("freezer"));
}

TEST(readme, is_taken_in_at_a_glance) {
    const auto lines = lines_of(contents(project / "README.md"));
    EXPECT_LE(lines.size(), 130u);
    for (const auto& line : lines) {
        const auto picture = line.find("](scenarios/pictures/");
        if (picture == std::string::npos) continue;
        const auto path = line.substr(picture + 2, line.find(')', picture) - picture - 2);
        EXPECT_TRUE(fs::exists(project / path)) << path;
    }
}

}  // namespace
