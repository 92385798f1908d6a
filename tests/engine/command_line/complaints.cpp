#include "command_line/complaints.hpp"

#include "command_line/arguments.hpp"

namespace {

using namespace command_line;
using testing::HasSubstr;

// The text of what is refused, in the language that is asked for; the locale's, English, for none.
std::string refused(std::vector<std::string> arguments, const std::string& code) {
    if (!code.empty()) arguments.insert(arguments.end(), {"--language", code});
    const auto asked = read_arguments(arguments);
    const auto* found = std::get_if<Notice>(&asked);
    return found == nullptr ? "it was taken" : found->text;
}

TEST(complaints, what_is_wrong_is_told_in_the_readers_language) {
    const std::vector<std::string> outage{"outage", "a.toml"};
    const auto with = [&](std::vector<std::string> more) {
        more.insert(more.begin(), outage.begin(), outage.end());
        return more;
    };
    EXPECT_THAT(refused(with({"--as", "yaml"}), "en"),
                HasSubstr("--as: found \"yaml\"; give one of text, json, jsonl, csv, html, svg\n"));
    EXPECT_THAT(refused(with({"--as", "yaml"}), "de"), HasSubstr("--as: gefunden „yaml“"));
    EXPECT_THAT(refused(with({"--members", "1.5"}), "en"),
                HasSubstr("found \"1.5\"; give a whole number from 0 to 100000"));
    EXPECT_THAT(refused(with({"--members", "100001"}), "de"), HasSubstr("0 bis 100000"));
    EXPECT_THAT(refused(with({"--seed", "many"}), "de"), HasSubstr("18446744073709551615"));
    EXPECT_THAT(refused(with({"--colour"}), "de"), HasSubstr("nicht verstanden: --colour"));
    EXPECT_THAT(refused({"outage"}, "de"), HasSubstr("FILE fehlt"));
    EXPECT_THAT(refused({"compare", "a.toml"}, "de"), HasSubstr("OTHER fehlt"));
    EXPECT_THAT(refused({"forecast", "a.toml"}, "de"), HasSubstr("„forecast“ ist keine Frage"));
    EXPECT_THAT(refused({"outrage", "a.toml"}, "de"), HasSubstr("Meinten Sie outage?"));
    EXPECT_THAT(refused(with({"--as", "json", "--as", "csv"}), "de"),
                HasSubstr("--as steht mehr als einmal da"));
    EXPECT_THAT(refused(with({"--as"}), ""), HasSubstr("--as needs a value"));
    EXPECT_THAT(refused(with({"--language", "xx"}), ""),
                HasSubstr("--language: found \"xx\"; give one of en, de"));
}

}  // namespace
