// No file of a person's is written around the one way that keeps it whole.
#include <filesystem>
#include <fstream>
#include <regex>
#include <string>

#include <gtest/gtest.h>

namespace {

namespace fs = std::filesystem;

// Everything that is a person's is written by scenario::save_bytes: whole or not at all. The ways
// around it are known by their names.
TEST(architecture, a_file_is_written_in_one_place_alone) {
    static const std::regex writes(
        R"(QSaveFile|QTemporaryFile|WriteOnly|ReadWrite|QIODevice::Append|ofstream|\bfopen\b|QFile::copy)");
    static const std::regex into_memory(R"(buffer\.open\(QIODevice::WriteOnly\))");
    int seen = 0;
    for (const char* const folder : {"engine", "qml"}) {
        const fs::path root = fs::path(CANDLEMARK_SOURCE_DIR) / folder;
        for (const auto& entry : fs::recursive_directory_iterator(root)) {
            const auto ending = entry.path().extension();
            if (ending != ".cpp" && ending != ".hpp" && ending != ".qml") continue;
            std::ifstream file(entry.path());
            for (std::string line; std::getline(file, line);) {
                ++seen;
                EXPECT_TRUE(!std::regex_search(line, writes) ||
                            std::regex_search(line, into_memory))
                    << entry.path() << ": " << line;
            }
        }
    }
    EXPECT_GT(seen, 10000);
}

}  // namespace
