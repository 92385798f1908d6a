#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "answered.hpp"
#include "typed.hpp"

namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::IsEmpty;
using typed::candlemark;
using typed::contents;

namespace fs = std::filesystem;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

// A copy of the demo that may be written to, in a folder of its own.
class Copy {
  public:
    Copy() {
        std::string folder = (fs::temp_directory_path() / "candlemark-note-XXXXXX").string();
        EXPECT_NE(mkdtemp(folder.data()), nullptr);
        folder_ = folder;
        fs::copy_file(demo, path());
    }
    Copy(const Copy&) = delete;
    Copy& operator=(const Copy&) = delete;
    ~Copy() { fs::remove_all(folder_); }
    [[nodiscard]] std::string path() const { return folder_ + "/storm.toml"; }

  private:
    std::string folder_;
};

TEST(candlemark_note, says_back_what_it_understood_and_writes_it_behind_the_rest) {
    const Copy copy;
    const auto ended = candlemark(
        {"note", copy.path(), "21:30 main 12.9 V under 150 W", "--at", "2026-01-15T22:00"});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.output,
                HasSubstr("Thursday 15 Jan 21:30: main reads 12.9 V while 150 W is drawn."));
    const auto after = contents(copy.path());
    EXPECT_TRUE(after.starts_with(contents(demo)));
    EXPECT_THAT(after, HasSubstr("[[log]]\nat = 2026-01-15T21:30:00\npack = \"main\"\nreads = "
                                 "\"12.9 V\"\nunder = \"150 W\"\n"));
    EXPECT_EQ(candlemark({"outage", copy.path()}).status, candlemark({"outage", demo}).status);
}

TEST(candlemark_note, takes_several_lines_and_those_of_standard_input) {
    const Copy copy;
    const auto ended = candlemark(
        {"note", copy.path(), "main 12.9 V", "-", "--at", "2026-01-15T22:00", "--as", "json"},
        "main 62 %\n\n20:05 expansion left\n");
    EXPECT_EQ(ended.status, 0) << ended.errors;
    const auto answer = json::parse(ended.output)["answer"];
    EXPECT_EQ(answer["noted"].size(), 3U);
    EXPECT_EQ(answer["noted"][2]["at"], "2026-01-15T20:05:00");
}

TEST(candlemark_note, writes_nothing_where_one_line_is_not_understood) {
    const Copy copy;
    const auto ended =
        candlemark({"note", copy.path(), "main 12.9 V", "maybe 62 %", "--at", "2026-01-15T22:00"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.errors, HasSubstr("\"maybe\""));
    EXPECT_EQ(contents(copy.path()), contents(demo));
}

TEST(candlemark_note, refuses_what_contradicts_the_file) {
    const Copy copy;
    for (const char* line : {"main back", "2026-01-13 06:00 main 12.9 V",
                             "2026-02-13 06:00 main 12.9 V", "strike 21:30"}) {
        const auto ended = candlemark({"note", copy.path(), line, "--at", "2026-01-15T22:00"});
        EXPECT_EQ(ended.status, 2) << line;
        EXPECT_THAT(ended.errors, HasSubstr(";")) << line;
    }
    EXPECT_EQ(contents(copy.path()), contents(demo));
}

TEST(candlemark_note, a_struck_entry_stays_readable) {
    const Copy copy;
    const std::vector<std::string> at{"--at", "2026-01-15T22:00"};
    EXPECT_EQ(candlemark({"note", copy.path(), "21:30 main 12.9 V", at[0], at[1]}).status, 0);
    EXPECT_EQ(candlemark({"note", copy.path(), "strike 21:30 main", at[0], at[1]}).status, 0);
    const auto text = contents(copy.path());
    EXPECT_THAT(text, HasSubstr("reads = \"12.9 V\""));
    EXPECT_THAT(text, HasSubstr("strikes = 2026-01-15T21:30:00"));
}

TEST(candlemark_note, cautions_where_an_entry_calls_for_it) {
    const Copy copy;
    const auto fuse = candlemark(
        {"note", copy.path(), "expansion fuse blew", "--at", "2026-01-15T22:00", "--full"});
    EXPECT_EQ(fuse.status, 0) << fuse.errors;
    EXPECT_THAT(fuse.output, HasSubstr("before that fault is found"));
}

TEST(candlemark_note, needs_a_file_that_can_be_written_and_a_line) {
    EXPECT_EQ(candlemark({"note", demo}).status, 2);
    EXPECT_EQ(candlemark({"note", "-", "main 12.9 V"}, contents(demo)).status, 2);
    const Copy copy;
    EXPECT_EQ(candlemark({"note", copy.path(), "main 12.9 V", "--set", "pack.main.count=2", "--at",
                          "2026-01-15T22:00"})
                  .status,
              2);
    // The clock of whoever runs this is not within the outage of the demo.
    const auto now = candlemark({"note", copy.path(), "main 12.9 V"});
    EXPECT_EQ(now.status, 2);
    EXPECT_THAT(now.errors, HasSubstr("--at"));
}

TEST(candlemark_note, a_blank_line_is_no_entry) {
    const Copy copy;
    const auto ended = candlemark({"note", copy.path(), " ", "--at", "2026-01-15T18:30"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.errors, HasSubstr("no line to write down"));
    EXPECT_EQ(contents(copy.path()), contents(demo));
}

}  // namespace
