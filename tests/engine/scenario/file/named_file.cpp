#include "scenario/file/named_file.hpp"

#include <filesystem>
#include <fstream>
#include <unistd.h>

#include <gtest/gtest.h>

namespace {

namespace fs = std::filesystem;
using scenario::AlsoAllowed;
using scenario::path_of_named_file;

class NamedFile : public testing::Test {
  protected:
    void SetUp() override {
        std::string pattern = testing::TempDir() + "candlemark_XXXXXX";
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        folder = pattern;
        fs::create_directories(folder / "plan" / "below");
        fs::create_directories(folder / "plans");
        fs::create_directories(folder / "weather");
        for (const char* file : {"plan/a", "plan/below/b", "plans/c", "weather/d"})
            std::ofstream(folder / file) << "x";
        fs::create_symlink("../weather/d", folder / "plan" / "out");
        fs::create_symlink("below/b", folder / "plan" / "in");
        fs::create_directory_symlink(folder / "plan", folder / "linked");
    }
    void TearDown() override { fs::remove_all(folder); }

    // "" where it was found; else why not.
    [[nodiscard]] std::string found(const std::string& name, const char* in = "plan") const {
        const auto path = path_of_named_file(name, (folder / in).string(), "place.weather_file");
        if (!path) return std::string(path.error().front().found);
        return fs::exists(*path) ? "" : "not there: " + *path;
    }
    static bool is_outside(const std::string& words) {
        return words.find("outside") != std::string::npos;
    }

    fs::path folder;
};

TEST_F(NamedFile, lies_beside_the_scenario_or_below) {
    for (const char* name : {"a", "below/b", "./a", "below/../a", "in"}) {
        EXPECT_EQ(found(name), "") << name;
        EXPECT_EQ(found(name, "linked"), "") << name;
    }
    EXPECT_EQ(found((folder / "plan" / "a").string()), "");
    EXPECT_EQ(found((folder / "linked" / "a").string(), "linked"), "");
    EXPECT_EQ(found((folder / "plan" / "a").string(), "linked"), "");
    EXPECT_EQ(found("missing"), "there is no file \"missing\"");
    EXPECT_EQ(found("a/b"), "there is no file \"a/b\"");
}

// "plans" begins like "plan" and is another folder.
TEST_F(NamedFile, is_refused_outside_whether_it_is_there_or_not) {
    for (const std::string& name :
         {std::string("../weather/d"), std::string("../weather/missing"), std::string("../plans/c"),
          std::string("below/../../weather/d"), std::string("out"), std::string("/etc/passwd"),
          (folder / "plans" / "c").string(), std::string("../plan/../weather/d"), std::string(".."),
          std::string("/"), std::string("/proc/self/fd/0")}) {
        EXPECT_TRUE(is_outside(found(name))) << name << ": " << found(name);
        EXPECT_TRUE(is_outside(found(name, "linked"))) << name;
    }
}

TEST_F(NamedFile, lies_elsewhere_only_as_long_as_the_person_allows_it) {
    {
        const AlsoAllowed weather({(folder / "weather").string()});
        EXPECT_EQ(found("../weather/d"), "");
        EXPECT_EQ(found("out"), "");
        EXPECT_EQ(found("d"), "");  // looked for there as well
        EXPECT_TRUE(is_outside(found("../plans/c")));
        const AlsoAllowed again({(folder / "weather").string() + "/"});
        EXPECT_EQ(found("../weather/d"), "");
    }
    EXPECT_TRUE(is_outside(found("../weather/d")));
    const AlsoAllowed file({(folder / "weather" / "d").string()});
    EXPECT_EQ(found("../weather/d"), "");
    EXPECT_TRUE(is_outside(found("../weather/e")));
}

TEST_F(NamedFile, a_name_is_shown_letter_by_letter) {
    EXPECT_EQ(found("a\x1b[1m"), "there is no file \"a\\x1b[1m\"");
    EXPECT_NE(found(std::string(100'000, 'a')), "");
    EXPECT_NE(found(std::string("a\0b", 3)), "");
}

}  // namespace
