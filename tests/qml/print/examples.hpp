// Every scenario that is shipped.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace printing_tests {

inline std::vector<std::filesystem::path> examples() {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(
             std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios"))
        if (entry.path().extension() == ".toml") paths.push_back(entry.path());
    return paths;
}

}  // namespace printing_tests
