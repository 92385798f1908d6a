// candlemark-touch as a process: its options, what it says of files, its exit status.
#include <filesystem>
#include <fstream>
#include <regex>
#include <sys/stat.h>

#include <QProcess>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "words/language.hpp"

namespace {

namespace fs = std::filesystem;

struct Ended {
    int status = -1;
    std::string output;
    std::string errors;
};

// Two minutes are far more than any of these needs; one that waits for ever is a failure.
Ended touch(const QStringList& arguments) {
    QProcess program;
    program.start(QStringLiteral(CANDLEMARK_TOUCH), arguments);
    Ended ended;
    if (!program.waitForFinished(120'000)) {
        program.kill();
        program.waitForFinished();
        return ended;
    }
    if (program.exitStatus() == QProcess::NormalExit) ended.status = program.exitCode();
    ended.output = program.readAllStandardOutput().toStdString();
    ended.errors = program.readAllStandardError().toStdString();
    return ended;
}

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

TEST(touch_program, options_that_mean_nothing_are_refused_with_what_would_be_right) {
    struct Case {
        QStringList arguments;
        const char* found;
        const char* remedy;
    };
    for (const Case& one :
         {Case{{"--bogus"}, "bogus", "--help"},
          Case{{"--page", "nonsense"}, "--page: found \"nonsense\"", "packs, "},
          Case{{"--page", "starting"}, "--page: found \"starting\"", "start, wiring, days, loads"},
          Case{{"--page", ""}, "--page: found \"\"", "or file"},
          Case{{"--theme", "pink"},
               "--theme: found \"pink\"",
               "give dark, light, contrast or system"},
          Case{{"--language", "xx"}, "--language: found \"xx\"", "give one of en, de"},
          Case{{"--language", ""}, "--language: found \"\"", "give one of en, de"},
          Case{{"--units", "stone"}, "--units: found \"stone\"", "give metric or us"},
          Case{{"--clock", "13"}, "--clock: found \"13\"", "give 24 or 12"},
          Case{{"--size", "foo"}, "--size: found \"foo\"", "such as 1280x800"},
          Case{{"--size", "0x0"}, "--size: found \"0x0\"", "from 200 to 16384"},
          Case{{"--size", "99999x800"}, "--size", "16384"},
          Case{{"--size", "800x600x2"}, "--size", "WIDTHxHEIGHT"},
          Case{{"--text-size", "900"}, "--text-size: found \"900\"", "100 to 200"},
          Case{{"--text-size", "99"}, "--text-size", "100 to 200"},
          Case{{"--text-size", "large"}, "--text-size", "100 to 200"},
          Case{{"--weather-from", "no/such"}, "no folder \"no/such\"", "weather file lies"},
          Case{{"a.toml", "b.toml"}, "more names", "give one FILE"},
          Case{{"--page", "\x1b[1m"}, "\\x1b[1m", "days"}}) {
        const Ended ended = touch(one.arguments);
        const auto what = one.arguments.join(' ').toStdString();
        EXPECT_EQ(ended.status, 2) << what;
        EXPECT_TRUE(holds(ended.errors, one.found)) << what << ": " << ended.errors;
        EXPECT_TRUE(holds(ended.errors, one.remedy)) << what << ": " << ended.errors;
        EXPECT_EQ(ended.output, "") << what;
    }
}

TEST(touch_program, tells_every_mistake_at_once_and_helps_where_it_is_asked) {
    const Ended ended = touch({"--page", "x", "--theme", "y", "--size", "z", "--text-size", "w"});
    for (const char* option : {"--page", "--theme", "--size", "--text-size"})
        EXPECT_TRUE(holds(ended.errors, option)) << ended.errors;
    const Ended help = touch({"--help"});
    EXPECT_EQ(help.status, 0);
    EXPECT_TRUE(holds(help.output, "--weather-from"));
    EXPECT_EQ(touch({"--version"}).status, 0);
}

TEST(touch_program, knows_the_pages_that_there_are) {
    const std::string told = touch({"--page", "nonsense"}).errors;
    for (const char* page : {"now", "days", "loads", "packs", "builds", "sun", "start", "wiring",
                             "storage", "print", "file"})
        EXPECT_TRUE(std::regex_search(told, std::regex("\\b" + std::string(page) + "\\b"))) << page;
}

// Neither a picture nor a sheet of paper comes of a file that cannot be used; what is said is what
// the command says.
TEST(touch_program, pictures_and_prints_nothing_of_a_file_that_cannot_be_used) {
    const QTemporaryDir folder;
    const auto at = [&](const char* name) { return folder.filePath(name).toStdString(); };
    ASSERT_EQ(mkfifo(at("pipe.toml").c_str(), 0600), 0);
    fs::create_directory(at("folder.toml"));
    std::ofstream(at("large.toml")).close();
    fs::resize_file(at("large.toml"), 100'000'000);
    std::ofstream(at("empty.toml")).close();
    std::ofstream(at("picture.toml")) << "\x89PNG\r\n\x1a\n" << std::string(40, '\0');
    std::ofstream(at("broken.toml")) << "format = 1\n[outage]\nlasts = \"4 kg\"\n";
    for (const std::string& path :
         {at("missing.toml"), at("folder.toml"), at("pipe.toml"), at("large.toml"),
          at("empty.toml"), at("picture.toml"), at("broken.toml"), std::string("/dev/zero")}) {
        const auto read = scenario::read_scenario_file(path);
        ASSERT_FALSE(read) << path;
        const auto file = QString::fromStdString(path);
        for (const QStringList& arguments :
             {QStringList{"--picture", folder.filePath("out.png"), file},
              QStringList{"--print", file, folder.filePath("out.pdf")}}) {
            const Ended ended = touch(arguments);
            EXPECT_EQ(ended.status, 2) << path;
            for (const units::Error& error : read.error())
                EXPECT_TRUE(holds(ended.errors, units::print(error)))
                    << path << ": " << ended.errors;
        }
        EXPECT_FALSE(fs::exists(at("out.png"))) << path;
        EXPECT_FALSE(fs::exists(at("out.pdf"))) << path;
    }
}

// What stands in the way of a sheet is told in the language that was asked for.
TEST(touch_program, prints_and_tells_in_the_language_that_was_asked_for) {
    const QTemporaryDir folder;
    const auto path = folder.filePath("missing.toml");
    const auto read = scenario::read_scenario_file(path.toStdString());
    ASSERT_FALSE(read);
    const auto told = [&](const char* code) {
        return touch({"--print", "--language", code, path, folder.filePath("out.pdf")}).errors;
    };
    EXPECT_TRUE(holds(told("de"), units::print(read.error().front(), *words::language("de"))));
    EXPECT_TRUE(holds(told("en"), units::print(read.error().front())));
    EXPECT_NE(told("de"), told("en"));
}

TEST(touch_program, a_picture_that_cannot_be_written_is_told) {
    const Ended ended = touch({"--picture", "/no/such/folder/out.png"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_TRUE(holds(ended.errors, "/no/such/folder/out.png")) << ended.errors;
}

}  // namespace
