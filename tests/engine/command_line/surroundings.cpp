#include "command_line/surroundings.hpp"

#include <csignal>
#include <cstdlib>
#include <ctime>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <optional>
#include <unistd.h>

#include "typed.hpp"

namespace {

using command_line::surroundings_of_this_process;
using command_line::write_all;
using command_line::Written;
using testing::HasSubstr;

// A variable of the environment for as long as this lives.
class Setting {
  public:
    Setting(const char* name, const char* value) : name_(name) {
        if (const char* before = std::getenv(name)) before_ = before;
        setenv(name, value, 1);
    }
    Setting(const Setting&) = delete;
    Setting& operator=(const Setting&) = delete;
    ~Setting() { before_ ? setenv(name_, before_->c_str(), 1) : unsetenv(name_); }

  private:
    const char* name_;
    std::optional<std::string> before_;
};

// Another file in the place of a descriptor for as long as this lives.
class InPlaceOf {
  public:
    InPlaceOf(int descriptor, const std::string& file, int flags)
        : descriptor_(descriptor), kept_(dup(descriptor)) {
        const int opened = open(file.c_str(), flags, 0600);
        dup2(opened, descriptor);
        close(opened);
    }
    InPlaceOf(const InPlaceOf&) = delete;
    InPlaceOf& operator=(const InPlaceOf&) = delete;
    ~InPlaceOf() {
        dup2(kept_, descriptor_);
        close(kept_);
    }

  private:
    int descriptor_;
    int kept_;
};

// LC_ALL before LC_CTYPE before LANG; what is empty does not count. [POSIX] 8.2
TEST(surroundings, the_first_locale_that_is_set_tells_its_characters) {
    const Setting language("LANG", "C.UTF-8");
    const Setting characters("LC_CTYPE", "");
    {
        const Setting all("LC_ALL", "");
        EXPECT_TRUE(surroundings_of_this_process().utf8);
        const Setting latin("LC_CTYPE", "de_DE.ISO-8859-1");
        EXPECT_FALSE(surroundings_of_this_process().utf8);
    }
    const Setting all("LC_ALL", "C");
    EXPECT_FALSE(surroundings_of_this_process().utf8);
}

TEST(surroundings, a_file_has_no_colour_and_the_columns_that_are_asked_for) {
    const auto file = typed::file_with("", "surroundings_out");
    const InPlaceOf output(STDOUT_FILENO, file, O_WRONLY);
    const Setting columns("COLUMNS", "60");
    EXPECT_EQ(surroundings_of_this_process().columns, 60);
    EXPECT_FALSE(surroundings_of_this_process().colour);
    for (const char* odd : {"", "-5", "many", "100000"}) {
        const Setting wrong("COLUMNS", odd);
        EXPECT_EQ(surroundings_of_this_process().columns, 80) << odd;
    }
}

// A zone of the Greenwich time with summer time all the year: the clock shows an hour less.
TEST(surroundings, the_clock_is_that_of_standard_time) {
    const Setting zone("TZ", "AAA0BBB-1,0/0,J365/25");
    tzset();
    const auto clock = surroundings_of_this_process().clock;
    ASSERT_TRUE(clock);
    const std::time_t now = std::time(nullptr);
    std::tm greenwich{};
    gmtime_r(&now, &greenwich);
    const auto date = std::chrono::year(greenwich.tm_year + 1900) /
                      static_cast<unsigned>(greenwich.tm_mon + 1) /
                      static_cast<unsigned>(greenwich.tm_mday);
    const auto expected = units::local_time(
        date, double(greenwich.tm_hour) * units::hour + double(greenwich.tm_min) * units::minute);
    EXPECT_NEAR((expected - *clock) / units::minute, 0.0, 1.5);
}

TEST(surroundings, standard_input_is_read_to_its_end_and_no_further_than_16_megabytes) {
    {
        const InPlaceOf input(STDIN_FILENO, typed::file_with("a", "surroundings_in"), O_RDONLY);
        EXPECT_EQ(surroundings_of_this_process().standard_input().value(), "a");
    }
    const auto large = typed::file_with("", "surroundings_large");
    std::filesystem::resize_file(large, (16U << 20U) + 1);
    const InPlaceOf input(STDIN_FILENO, large, O_RDONLY);
    const auto refused = surroundings_of_this_process().standard_input();
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().found, HasSubstr("larger than 16 MB"));
    std::filesystem::remove(large);
}

TEST(surroundings, a_text_is_written_whole_or_its_reader_is_gone) {
    int ends[2];
    ASSERT_EQ(pipe(ends), 0);
    EXPECT_EQ(write_all(ends[1], "an answer"), Written::whole);
    std::string read_back(9, ' ');
    EXPECT_EQ(read(ends[0], read_back.data(), 9), 9);
    EXPECT_EQ(read_back, "an answer");
    close(ends[0]);
    std::signal(SIGPIPE, SIG_IGN);
    EXPECT_EQ(write_all(ends[1], "another"), Written::reader_gone);
    close(ends[1]);
    EXPECT_EQ(write_all(-1, "nowhere"), Written::failed);
    EXPECT_EQ(write_all(-1, ""), Written::whole);
}

TEST(surroundings, what_lies_behind_the_last_whole_line_is_cut_from_the_file_that_is_written_to) {
    const auto lines = typed::file_with("whole\nhal", "surroundings_lines");
    const auto other = typed::file_with("whole\nhal", "surroundings_other");
    {
        const InPlaceOf output(STDOUT_FILENO, lines, O_WRONLY | O_APPEND);
        command_line::cut_standard_output(other, 6);
        command_line::cut_standard_output("no such file", 6);
        EXPECT_EQ(typed::contents(lines), "whole\nhal");
        command_line::cut_standard_output(lines, 100);
        EXPECT_EQ(typed::contents(lines), "whole\nhal");
        command_line::cut_standard_output(lines, 6);
    }
    EXPECT_EQ(typed::contents(lines), "whole\n");
    EXPECT_EQ(typed::contents(other), "whole\nhal");
}

}  // namespace
