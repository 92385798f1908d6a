#include "scenario/file/file.hpp"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <sys/stat.h>
#include <unistd.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "scenario/file/read.hpp"

namespace {

using testing::HasSubstr;

class Folder : public testing::Test {
  protected:
    void SetUp() override {
        std::string pattern = testing::TempDir() + "candlemark_XXXXXX";
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        folder = pattern;
    }
    void TearDown() override { std::filesystem::remove_all(folder); }

    [[nodiscard]] std::string file(const char* name) const { return (folder / name).string(); }

    std::filesystem::path folder;
};

using File = Folder;

TEST_F(File, tells_what_stands_in_the_way) {
    const auto words = [](const std::string& path) {
        const auto read = scenario::read_scenario_file(path);
        return read ? std::string("read") : units::print(read.error().front());
    };
    EXPECT_THAT(words(file("missing.toml")), HasSubstr("no such file"));
    EXPECT_THAT(words(folder.string()), HasSubstr("folder"));
    std::ofstream(file("empty.toml")).close();
    EXPECT_THAT(words(file("empty.toml")), HasSubstr("empty"));
    std::ofstream(file("large.toml")) << std::string(10'000'000, '{');
    EXPECT_THAT(words(file("large.toml")), HasSubstr("bytes"));
    std::ofstream(file("good.toml")) << sample::ice_storm;
    EXPECT_EQ(words(file("good.toml")), "read");
    if (geteuid() != 0) {  // nothing is unreadable to the superuser
        ASSERT_EQ(chmod(file("good.toml").c_str(), 0), 0);
        EXPECT_THAT(words(file("good.toml")), HasSubstr("leave to read"));
    }
}

// Each by its own words, and behind a link as well; a pipe is not waited at.
TEST_F(File, what_is_no_plain_file_is_not_opened) {
    ASSERT_EQ(mkfifo(file("pipe").c_str(), 0600), 0);
    for (const auto& [path, words] :
         {std::pair{file("pipe"), "a pipe"}, std::pair{std::string("/dev/zero"), "a device"},
          std::pair{folder.string(), "a folder"}}) {
        const std::string link = file("link");
        std::filesystem::remove(link);
        std::filesystem::create_symlink(path, link);
        for (const std::string& name : {path, link}) {
            const auto read = scenario::bytes_of_file(name);
            ASSERT_FALSE(read) << name;
            EXPECT_THAT(read.error().front().found, HasSubstr(words));
        }
    }
}

TEST_F(File, a_large_file_is_refused_by_its_size_alone) {
    std::ofstream(file("large.toml")).close();
    std::filesystem::resize_file(file("large.toml"), 100'000'000'000);  // holds nothing on disk
    const auto read = scenario::bytes_of_file(file("large.toml"));
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error().front().found, HasSubstr("more than 4000000 bytes"));
}

TEST_F(File, an_error_shows_the_name_of_the_file_on_one_line) {
    const auto read = scenario::read_scenario_file(file("a\x1b[31m\n\u202Eb.toml"));
    ASSERT_FALSE(read);
    EXPECT_THAT(units::print(read.error().front()),
                HasSubstr("a\\x1b[31m\\x0a\\u{202e}b.toml: there is no such file"));
}

TEST(folder_of, is_what_lies_before_the_last_slash) {
    EXPECT_EQ(scenario::folder_of("plans/ice/storm.toml"), "plans/ice");
    EXPECT_EQ(scenario::folder_of("storm.toml"), ".");
    EXPECT_EQ(scenario::folder_of("/storm.toml"), "/");
}

}  // namespace
