// What the program says of its file format and its answers, word for word: the list of the keys,
// the manual page, the schemas. Run with CANDLEMARK_PIN=1 in the environment to write them anew; a
// key that goes, or comes to mean something else, is seen here.
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "command_line/run.hpp"

namespace {

namespace fs = std::filesystem;

void compare(const std::string& face, const std::string& name) {
    const auto path = fs::path(CANDLEMARK_SOURCE_DIR) / "tests" / "pinned" / "keys" / name;
    const auto outcome =
        command_line::run({"keys", "--as", face}, {.standard_input = {}, .columns = 80});
    EXPECT_EQ(outcome.status, command_line::Status::answered);
    if (std::getenv("CANDLEMARK_PIN") != nullptr) {
        fs::create_directories(path.parent_path());
        std::ofstream(path, std::ios::binary) << outcome.output;
    }
    std::ostringstream pinned;
    pinned << std::ifstream(path, std::ios::binary).rdbuf();
    EXPECT_EQ(outcome.output, pinned.str()) << path;
}

TEST(pinned, the_list_of_the_keys) {
    compare("text", "keys.txt");
}

TEST(pinned, the_manual_of_the_file_format) {
    compare("manual", "candlemark-scenario.5");
}

TEST(pinned, the_schema_of_the_file_format) {
    compare("schema", "scenario.schema.json");
}

TEST(pinned, the_schema_of_the_answers) {
    compare("answer-schema", "answer.schema.json");
}

}  // namespace
