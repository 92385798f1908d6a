// A person's file is whole at every moment: as it was, or as it is to be.
#include "scenario/file/saving.hpp"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <sstream>
#include <sys/stat.h>
#include <unistd.h>

#include <gtest/gtest.h>

namespace {

using scenario::save_bytes;
using scenario::save_bytes_over;
using scenario::SaveEnd;
using testing::HasSubstr;

class Saving : public testing::Test {
  protected:
    void SetUp() override {
        std::string pattern = testing::TempDir() + "candlemark_XXXXXX";
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        folder = pattern;
    }
    void TearDown() override { std::filesystem::remove_all(folder); }

    [[nodiscard]] std::string file(const char* name) const { return (folder / name).string(); }
    [[nodiscard]] std::string held(const char* name) const {
        std::ostringstream text;
        text << std::ifstream(file(name), std::ios::binary).rdbuf();
        return text.str();
    }
    [[nodiscard]] long files() const {
        return std::distance(std::filesystem::directory_iterator(folder),
                             std::filesystem::directory_iterator());
    }

    std::filesystem::path folder;
};

TEST_F(Saving, a_file_is_made_and_replaced_and_nothing_else_is_left) {
    EXPECT_TRUE(save_bytes(file("plan.toml"), "one\n").saved());
    EXPECT_TRUE(save_bytes(file("plan.toml"), std::string("two\0\n", 5)).saved());
    EXPECT_EQ(held("plan.toml"), std::string("two\0\n", 5));
    EXPECT_EQ(files(), 1);
}

TEST_F(Saving, permissions_and_links_stay) {
    ASSERT_TRUE(save_bytes(file("plan.toml"), "one").saved());
    ASSERT_EQ(chmod(file("plan.toml").c_str(), 0640), 0);
    std::filesystem::create_symlink("plan.toml", file("link.toml"));
    EXPECT_TRUE(save_bytes(file("link.toml"), "two").saved());
    EXPECT_TRUE(std::filesystem::is_symlink(file("link.toml")));
    EXPECT_EQ(held("plan.toml"), "two");
    struct stat now = {};
    ASSERT_EQ(stat(file("plan.toml").c_str(), &now), 0);
    EXPECT_EQ(now.st_mode & 07777U, 0640U);
}

TEST_F(Saving, what_another_program_wrote_meanwhile_is_not_written_over) {
    std::ofstream(file("plan.toml")) << "theirs";
    EXPECT_EQ(save_bytes_over(file("plan.toml"), "as read", "mine").end, SaveEnd::changed_outside);
    EXPECT_EQ(held("plan.toml"), "theirs");
    EXPECT_TRUE(save_bytes_over(file("plan.toml"), "theirs", "mine").saved());
    EXPECT_TRUE(save_bytes_over(file("plan.toml"), "theirs", "mine").saved());  // it is so already
    EXPECT_EQ(held("plan.toml"), "mine");
    EXPECT_EQ(files(), 1);
}

TEST_F(Saving, what_stands_in_the_way_is_told) {
    EXPECT_EQ(save_bytes(file("none/plan.toml"), "x").end, SaveEnd::no_folder);
    EXPECT_EQ(save_bytes(folder.string(), "x").end, SaveEnd::not_a_plain_file);
    std::filesystem::create_symlink("b", file("a"));
    std::filesystem::create_symlink("a", file("b"));
    EXPECT_FALSE(save_bytes(file("a"), "x").saved());
    if (geteuid() != 0) {  // nothing is protected from the superuser
        std::ofstream(file("plan.toml")) << "kept";
        ASSERT_EQ(chmod(file("plan.toml").c_str(), 0400), 0);
        EXPECT_EQ(save_bytes(file("plan.toml"), "x").end, SaveEnd::write_protected);
        EXPECT_EQ(held("plan.toml"), "kept");
    }
}

TEST_F(Saving, a_refusal_names_the_file_and_says_that_it_is_as_it_was) {
    const auto saved = scenario::save_file(file("none/plan.toml"), "x");
    ASSERT_FALSE(saved);
    EXPECT_THAT(units::print(saved.error().front()), HasSubstr("its folder is not there"));
    const auto error = scenario::not_saved("plan.toml", {.end = SaveEnd::no_room, .error = 28});
    EXPECT_EQ(error.file, "plan.toml");
    EXPECT_THAT(error.found, HasSubstr("the disk or the quota is full"));
}

}  // namespace
