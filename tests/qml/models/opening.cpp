// What happens when a file is opened that is not there, is no file, or is no text; and where the
// weather files may lie that a scenario names.
#include <filesystem>
#include <fstream>
#include <sys/stat.h>

#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "models/fields/weather_choices.hpp"
#include "models/file/scenario_document.hpp"
#include "models/words/plan_text.hpp"
#include "scenario/file/read.hpp"
#include "support/weather_text.hpp"

namespace {

namespace fs = std::filesystem;
using touch::ScenarioDocument;

class Opening : public testing::Test {
  protected:
    [[nodiscard]] std::string at(const char* name) const {
        return folder_.filePath(name).toStdString();
    }
    static QUrl url(const std::string& path) {
        return QUrl::fromLocalFile(QString::fromStdString(path));
    }

    QTemporaryDir folder_;
};

TEST_F(Opening, what_cannot_be_opened_says_what_the_command_says_and_shows_nothing_else) {
    ASSERT_EQ(mkfifo(at("pipe.toml").c_str(), 0600), 0);
    fs::create_directory(at("folder.toml"));
    std::ofstream(at("large.toml")).close();
    fs::resize_file(at("large.toml"), 100'000'000);
    std::ofstream(at("empty.toml")).close();
    std::ofstream(at("picture.toml")) << "\x89PNG\r\n\x1a\n" << std::string(40, '\0');
    std::ofstream(at("latin.toml")) << "format = 1\ntitle = \"caf\xE9\"\n";
    for (const std::string& path :
         {at("missing.toml"), at("folder.toml"), at("pipe.toml"), at("large.toml"),
          at("empty.toml"), at("picture.toml"), at("latin.toml"), std::string("/dev/zero")}) {
        ScenarioDocument document;
        EXPECT_FALSE(document.open(url(path))) << path;
        EXPECT_TRUE(document.text().isEmpty()) << path;
        EXPECT_FALSE(document.example());
        const auto read = scenario::read_scenario_file(path);
        ASSERT_FALSE(read) << path;
        const auto words = QString::fromStdString(units::print(read.error().front()));
        EXPECT_TRUE(document.trouble().contains(words))
            << document.trouble().toStdString() << "\nwants " << words.toStdString();
    }
}

TEST_F(Opening, what_is_open_stays_when_another_cannot_be_opened) {
    ScenarioDocument document;
    document.openExample();
    const QString before = document.text();
    EXPECT_FALSE(document.open(url(at("missing.toml"))));
    EXPECT_EQ(document.text(), before);
    EXPECT_TRUE(document.example());
    EXPECT_FALSE(document.open(QUrl("http://127.0.0.1/storm.toml")));
    EXPECT_TRUE(document.trouble().contains("only a file of this computer"));
}

TEST_F(Opening, a_name_that_would_turn_the_writing_is_shown_letter_by_letter) {
    const std::string path = at("a\x1b[1m\xE2\x80\xAE.toml");
    fs::copy_file(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml", path);
    ScenarioDocument document;
    ASSERT_TRUE(document.open(url(path))) << document.trouble().toStdString();
    EXPECT_EQ(document.file_name(), "a\\x1b[1m\\u{202e}.toml");
}

std::string on_the_hours_of(const std::string& name) {
    return "format = 1\n[outage]\nstarts = 2026-01-14T18:00:00\nlasts = \"1 d\"\n[place]\n"
           "weather_file = \"" +
           name +
           "\"\n[[pack]]\nname = \"main\"\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\n"
           "[[panel]]\npower = \"100 W\"\n[[load]]\nname = \"lamp\"\nfrom = \"12V\"\n"
           "power = \"20 W\"\n";
}

bool is_planned(const ScenarioDocument& document) {
    return touch::plan_text(document.text(), document.path()).answered;
}

TEST_F(Opening, a_weather_file_from_elsewhere_holds_once_it_was_chosen_for_that_scenario) {
    for (const char* below : {"plans", "other", "weather", "kept"})
        fs::create_directory(at(below));
    std::ofstream(at("weather/station.epw")) << test_support::epw_text(test_support::plain_hour);
    for (const char* plan : {"plans/storm.toml", "other/storm.toml"})
        std::ofstream(at(plan)) << on_the_hours_of("../weather/station.epw");
    touch::WeatherChoices::keepIn(QString::fromStdString(at("kept")));
    ScenarioDocument document;
    ASSERT_TRUE(document.open(url(at("plans/storm.toml"))));
    EXPECT_FALSE(is_planned(document));

    touch::WeatherChoices choices;
    choices.set_document(&document);
    EXPECT_EQ(choices.file(), "../weather/station.epw");
    EXPECT_FALSE(choices.choose(url(at("plans/storm.toml"))));  // no weather file
    EXPECT_TRUE(choices.trouble().contains("not that of a weather file"));
    EXPECT_FALSE(is_planned(document));

    const QString before = document.text();
    ASSERT_TRUE(choices.choose(url(at("weather/station.epw")))) << choices.trouble().toStdString();
    EXPECT_EQ(document.text(), before);  // it is the one that is named
    EXPECT_TRUE(is_planned(document));

    std::ifstream kept(at("kept/weather_files.json"));
    const std::string text{std::istreambuf_iterator<char>(kept), {}};
    EXPECT_NE(text.find("plans/storm.toml"), std::string::npos) << text;
    EXPECT_EQ(text.find("other/storm.toml"), std::string::npos) << text;
}

TEST_F(Opening, another_weather_file_that_is_chosen_is_named_in_the_scenario) {
    fs::create_directory(at("plans"));
    std::ofstream(at("plans/mine.epw")) << test_support::epw_text(test_support::plain_hour);
    std::ofstream(at("plans/storm.toml")) << on_the_hours_of("/etc/passwd");
    ScenarioDocument document;
    ASSERT_TRUE(document.open(url(at("plans/storm.toml"))));
    touch::WeatherChoices choices;
    choices.set_document(&document);
    ASSERT_TRUE(choices.choose(url(at("plans/mine.epw")))) << choices.trouble().toStdString();
    EXPECT_EQ(choices.file(), "mine.epw");
    EXPECT_TRUE(is_planned(document));
}

}  // namespace
