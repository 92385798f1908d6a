// The reports of the demo scenarios, word for word. Run with CANDLEMARK_PIN=1 in the environment to
// write them anew; then read the difference before it is committed, and explain it there.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "command_line/run.hpp"

namespace {

namespace fs = std::filesystem;

const fs::path scenarios = fs::path(CANDLEMARK_SOURCE_DIR) / "scenarios";
const fs::path pinned = fs::path(CANDLEMARK_SOURCE_DIR) / "tests" / "pinned" / "reports";

std::string contents(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::vector<fs::path> demo_scenarios() {
    std::vector<fs::path> found;
    for (const auto& entry : fs::directory_iterator(scenarios)) {
        if (entry.path().extension() == ".toml") {
            found.push_back(entry.path());
        }
    }
    std::ranges::sort(found);
    return found;
}

// The answer as it is pinned: plain ASCII of 80 columns, and the exit status.
std::string report(const std::string& question, const fs::path& scenario, bool full) {
    std::vector<std::string> arguments{question, scenario.string(), "--ascii"};
    if (full) {
        arguments.push_back("--full");
    }
    const auto outcome = command_line::run(arguments, {.standard_input = {}, .columns = 80});
    std::ostringstream text;
    text << outcome.output << outcome.errors << "exit status " << static_cast<int>(outcome.status)
         << "\n";
    return text.str();
}

void compare(const std::string& question, bool full, const std::string& ending) {
    const bool pin = std::getenv("CANDLEMARK_PIN") != nullptr;
    const auto found = demo_scenarios();
    ASSERT_GE(found.size(), 3U);
    for (const auto& scenario : found) {
        const auto path = pinned / (scenario.stem().string() + ending);
        const auto now = report(question, scenario, full);
        if (pin) {
            fs::create_directories(pinned);
            std::ofstream(path, std::ios::binary) << now;
        }
        EXPECT_EQ(now, contents(path)) << path;
    }
}

TEST(pinned, the_first_screen_of_each_demo_outage) {
    compare("outage", false, ".outage.txt");
}

TEST(pinned, everything_about_each_demo_outage) {
    compare("outage", true, ".outage.full.txt");
}

TEST(pinned, the_first_screen_of_each_demo_sun) {
    compare("sun", false, ".sun.txt");
}

TEST(pinned, how_many_packs_each_demo_takes) {
    compare("packs", false, ".packs.txt");
}

TEST(pinned, whether_the_motors_of_each_demo_start) {
    compare("start", false, ".start.txt");
}

}  // namespace
