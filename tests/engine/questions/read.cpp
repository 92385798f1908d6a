#include "questions/read.hpp"

#include <filesystem>
#include <fstream>
#include <unistd.h>

#include "file_of.hpp"

#include "support/weather_text.hpp"

namespace {

using questions::ReadAsked;
using testing::HasSubstr;
using units::hour;
using units::watt;

// Four hours of 15 W each evening of two days.
TEST(read_question, tells_what_each_load_takes_as_the_plan_resolves_it) {
    const auto read =
        file_of::text(file_of::outage("2 d") + file_of::a_pack +
                      file_of::load("lamp", "15 W", "from = \"12V\"\nhours = [\"18:00-22:00\"]\n"));
    const auto found = questions::find(read, ReadAsked{}, {});
    ASSERT_TRUE(found);
    ASSERT_EQ(found->loads.size(), 1U);
    EXPECT_NEAR(found->loads.front().wanted / (watt * hour), 120.0, 1e-6);
    EXPECT_NEAR(found->loads.front().on_time / hour, 8.0, 1e-9);
    EXPECT_FALSE(found->weather);
}

TEST(read_question, a_file_that_cannot_be_planned_is_shown_still) {
    const auto found =
        questions::find(file_of::text(file_of::outage("1 d") + file_of::a_pack + file_of::a_kettle),
                        ReadAsked{}, {});
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->loads.empty());
    EXPECT_EQ(found->read.scenario.loads.size(), 1U);
}

TEST(read_question, a_weather_file_is_read_beside_the_scenario_and_missed_with_its_name) {
    const auto folder =
        std::filesystem::temp_directory_path() / ("candlemark_read_" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "year.csv") << test_support::tmy3_text(test_support::plain_hour);
    const auto asked = [&](const std::string& weather) {
        auto read = file_of::text(file_of::outage("1 d") + "[place]\nweather_file = \"" + weather +
                                  "\"\n" + file_of::a_pack);
        read.file_name = (folder / "asked.toml").string();
        return questions::find(read, ReadAsked{}, {});
    };
    const auto found = asked("year.csv");
    ASSERT_TRUE(found);
    ASSERT_TRUE(found->weather);
    EXPECT_EQ(found->weather->year.hours.size(), 8760U);
    const auto missed = asked("another.csv");
    ASSERT_FALSE(missed);
    EXPECT_THAT(missed.error().front().found, HasSubstr("another.csv"));
    std::filesystem::remove_all(folder);
}

}  // namespace
