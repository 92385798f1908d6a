// One room makes the built unit; every question takes it from there.
#include <filesystem>
#include <fstream>
#include <regex>

namespace {

namespace fs = std::filesystem;

TEST(architecture, a_pack_model_is_made_in_the_unit_alone) {
    static const std::regex made(R"(\bpack_model\()");
    const fs::path root(CANDLEMARK_SOURCE_DIR);
    int in_the_unit = 0;
    for (const char* folder : {"engine", "qml"}) {
        for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
            const auto kind = entry.path().extension();
            if (kind != ".hpp" && kind != ".cpp") continue;
            const auto place = fs::relative(entry.path(), root).generic_string();
            if (place.starts_with("engine/battery/pack_model.")) continue;
            std::ifstream file(entry.path());
            for (std::string line; std::getline(file, line);) {
                if (!std::regex_search(line, made)) continue;
                if (place.starts_with("engine/unit/"))
                    ++in_the_unit;
                else
                    ADD_FAILURE() << place << ": " << line
                                  << "\ntake the packs of unit::built (engine/unit/built.hpp)";
            }
        }
    }
    EXPECT_EQ(in_the_unit, 1);
}

}  // namespace
