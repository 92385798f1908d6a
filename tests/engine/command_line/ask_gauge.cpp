#include <fstream>
#include <sstream>

#include "answered.hpp"
#include "typed.hpp"

namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::IsEmpty;
using typed::candlemark;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

TEST(candlemark_gauge, a_reading_becomes_an_interval_with_its_reason) {
    const auto ended = candlemark({"gauge", demo, "--reads", "12.9 V"});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    EXPECT_THAT(ended.errors, IsEmpty());
    EXPECT_THAT(ended.output, HasSubstr("12.9 V at rest means "));
    EXPECT_THAT(ended.output, HasSubstr("The range is that wide"));
    EXPECT_THAT(ended.output, HasSubstr("How long it has rested is not given"));
}

TEST(candlemark_gauge, json_has_the_keys_that_may_be_relied_on) {
    const auto ended = candlemark({"gauge", demo, "--reads", "12.90 V", "--accuracy", "0.02 V",
                                   "--rested", "30 h", "--now", "21:30", "--as", "json"});
    EXPECT_EQ(ended.status, 0) << ended.errors;
    const auto document = json::parse(ended.output);
    typed::expect_whole(document, "gauge");
    const auto& answer = document["answer"];
    typed::expect_keys(answer, {"charge_low", "charge_likely", "charge_high", "readable", "lasts"});
    EXPECT_TRUE(answer["readable"].get<bool>());
    EXPECT_EQ(answer["charge_likely"]["unit"], "%");
    EXPECT_LT(answer["charge_low"]["value"], answer["charge_likely"]["value"]);
    EXPECT_LT(answer["charge_likely"]["value"], answer["charge_high"]["value"]);
    EXPECT_EQ(answer["lasts"]["unit"], "h");
    EXPECT_LE(answer["lasts_low"]["value"], answer["lasts"]["value"]);
    EXPECT_LE(answer["lasts"]["value"], answer["lasts_high"]["value"]);
}

TEST(candlemark_gauge, on_the_lithium_plateau_there_is_never_one_number) {
    const auto ended = candlemark({"gauge", demo, "--reads", "13.20 V", "--accuracy", "0.045 V",
                                   "--now", "21:30", "--as", "json"});
    const auto answer = json::parse(ended.output)["answer"];
    typed::expect_sound(answer);
    EXPECT_FALSE(answer["readable"].get<bool>());
    EXPECT_TRUE(answer["charge_likely"].is_null());
    EXPECT_TRUE(answer["lasts"].is_null());
    EXPECT_GE(
        answer["charge_high"]["value"].get<double>() - answer["charge_low"]["value"].get<double>(),
        24.0);
    EXPECT_THAT(answer["sentences"][0].get<std::string>(),
                testing::StartsWith("13.2 V may mean anything from "));
}

TEST(candlemark_gauge, a_load_hides_part_of_the_voltage) {
    const auto rested = [](const std::vector<std::string>& more) {
        std::vector<std::string> asked{"gauge", demo, "--reads", "12.90 V", "--as", "json"};
        asked.insert(asked.end(), more.begin(), more.end());
        const auto ended = candlemark(asked);
        EXPECT_EQ(ended.status, 0) << ended.errors;
        return json::parse(ended.output)["answer"]["rested"]["value"].get<double>();
    };
    EXPECT_NEAR(rested({}), 12.9, 1e-9);
    EXPECT_GT(rested({"--under", "600 W"}), 12.9);
    EXPECT_NEAR(rested({"--under", "20 A"}), rested({"--under", "258 W"}), 1e-9);
}

TEST(candlemark_gauge, a_reading_that_cannot_be_is_refused) {
    for (const char* reading : {"3 V", "99 V", "-12 V", "0 V"}) {
        const auto ended = candlemark({"gauge", demo, "--reads", reading});
        EXPECT_EQ(ended.status, 2) << reading;
        EXPECT_THAT(ended.output, IsEmpty()) << reading;
        EXPECT_THAT(ended.errors, HasSubstr("--reads")) << reading;
        EXPECT_THAT(ended.errors, HasSubstr("\"12.9 V\"")) << reading;
    }
}

TEST(candlemark_gauge, bad_input_is_told_in_words) {
    const auto told = [](std::vector<std::string> more) {
        std::vector<std::string> asked{"gauge", demo};
        asked.insert(asked.end(), more.begin(), more.end());
        const auto ended = candlemark(asked);
        EXPECT_EQ(ended.status, 2);
        EXPECT_THAT(ended.output, IsEmpty());
        return ended.errors;
    };
    EXPECT_THAT(told({}), HasSubstr("no reading is given"));
    EXPECT_THAT(told({"--reads"}), HasSubstr("--reads"));
    EXPECT_THAT(told({"--reads", "12.9 A"}), HasSubstr("which is current; give voltage"));
    EXPECT_THAT(told({"--reads", "high"}), HasSubstr("high"));
    EXPECT_THAT(told({"--reads", "12.9 V", "--pack", "nobody"}), HasSubstr("no pack named nobody"));
    EXPECT_THAT(told({"--reads", "12.9 V", "--under", "150 K"}), HasSubstr("which is temperature"));
    EXPECT_THAT(told({"--reads", "12.9 V", "--rested", "8 V"}), HasSubstr("--rested"));
    EXPECT_THAT(told({"--reads", "12.9 V", "--now", "2030-01-01T00:00"}),
                HasSubstr("not within the outage"));
}

TEST(candlemark_gauge, help_names_its_options) {
    const auto ended = candlemark({"gauge", "--help"});
    EXPECT_EQ(ended.status, 0);
    for (const char* option : {"--reads", "--under", "--rested", "--accuracy", "--pack", "--now"})
        EXPECT_THAT(ended.output, HasSubstr(option));
}

// With a log the reading is one more of it.
TEST(candlemark_gauge, a_log_in_the_file_is_not_thrown_away) {
    std::ostringstream text;
    text << std::ifstream(demo, std::ios::binary).rdbuf()
         << "\n[[log]]\nat = 2026-01-15T06:00:00\nshows = \"50 %\"\n";
    const auto file = typed::file_with(text.str(), "gauge_log.toml");
    const auto high = [](const std::string& path) {
        const auto ended = candlemark({"gauge", path, "--reads", "13.1 V", "--under", "150 W",
                                       "--now", "2026-01-15T06:30", "--as", "json"});
        EXPECT_EQ(ended.status, 0) << ended.errors;
        return json::parse(ended.output)["answer"]["lasts_high"]["value"].get<double>();
    };
    EXPECT_LT(high(file), high(demo));
}

}  // namespace
