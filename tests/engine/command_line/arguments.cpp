#include "command_line/arguments.hpp"

#include "command_line/questions.hpp"

namespace {

using namespace command_line;
using testing::ElementsAre;
using testing::HasSubstr;

Request request(const std::vector<std::string>& arguments) {
    const auto asked = read_arguments(arguments);
    const auto* found = std::get_if<Request>(&asked);
    EXPECT_NE(found, nullptr) << (found ? "" : std::get<Notice>(asked).text);
    return found == nullptr ? Request{} : *found;
}

Notice notice(const std::vector<std::string>& arguments) {
    const auto asked = read_arguments(arguments);
    const auto* found = std::get_if<Notice>(&asked);
    EXPECT_NE(found, nullptr);
    return found == nullptr ? Notice{} : *found;
}

TEST(arguments, a_question_and_a_file_are_enough) {
    const auto asked = request({"outage", "storm.toml"});
    EXPECT_STREQ(asked.question->name, "outage");
    EXPECT_EQ(asked.file, "storm.toml");
    EXPECT_EQ(asked.face, Face::text);
    EXPECT_FALSE(asked.full);
    EXPECT_EQ(request({"read", "-"}).file, "-");
    EXPECT_STREQ(request({"read", "-"}).question->name, "read");
}

TEST(arguments, options_stand_before_or_behind_the_file) {
    const auto asked = request({"outage", "--as", "json", "storm.toml", "--full", "--seed", "7"});
    EXPECT_EQ(asked.face, Face::json);
    EXPECT_EQ(asked.file, "storm.toml");
    EXPECT_TRUE(asked.full);
    EXPECT_EQ(asked.seed, 7U);
}

TEST(arguments, values_are_set_as_often_as_given_and_kept_as_written) {
    const auto asked = request(
        {"outage", "--set", "pack.main.count=4", "--set", "outage.lasts=\"3 d\"", "storm.toml"});
    EXPECT_THAT(asked.set, ElementsAre("pack.main.count=4", "outage.lasts=\"3 d\""));
    EXPECT_EQ(asked.file, "storm.toml");
}

TEST(arguments, what_is_not_known_is_an_error) {
    for (const std::vector<std::string>& wrong :
         std::vector<std::vector<std::string>>{{},
                                               {"outage"},
                                               {"compare", "a.toml", "b.toml", "c.toml"},
                                               {"outage", "a.toml", "--colour"},
                                               {"outage", "a.toml", "--as", "yaml"},
                                               {"outage", "a.toml", "--seed", "many"},
                                               {"forecast", "a.toml"}}) {
        EXPECT_TRUE(notice(wrong).is_error);
    }
}

TEST(arguments, help_and_version_are_answers) {
    for (const std::vector<std::string>& ask :
         std::vector<std::vector<std::string>>{{"--help"}, {"outage", "--help"}, {"--version"}}) {
        EXPECT_FALSE(notice(ask).is_error);
    }
    EXPECT_THAT(notice({"--help"}).text, HasSubstr("Example"));
    EXPECT_THAT(notice({"outage", "--help"}).text, HasSubstr("--set"));
}

TEST(arguments, an_unknown_question_names_the_nearest) {
    EXPECT_THAT(notice({"outrage", "storm.toml"}).text, HasSubstr("Did you mean outage?"));
    EXPECT_TRUE(notice({"outrage", "storm.toml"}).is_error);
}

}  // namespace
