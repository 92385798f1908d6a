#include "command_line/help_page.hpp"

#include <algorithm>
#include <sstream>

#include "typed.hpp"

#include "command_line/questions.hpp"
#include "faces/page.hpp"

namespace {

using command_line::Status;
using testing::HasSubstr;
using typed::outcome;

std::vector<std::vector<std::string>> all_pages() {
    std::vector<std::vector<std::string>> pages{
        {"--help"}, {"places", "--help"}, {"keys", "--help"}};
    for (const auto& question : command_line::questions())
        pages.push_back({question.name, "--help"});
    return pages;
}

std::string words_of(const std::string& text) {
    std::istringstream stream(text);
    std::string words;
    for (std::string word; stream >> word;)
        words += word + " ";
    return words;
}

TEST(help_page, keeps_to_the_window_with_the_same_words) {
    for (const auto& asked : all_pages()) {
        const auto wide = words_of(outcome(asked, "", 100).output);
        for (const int width : {40, 52, 60, 72, 80, 100}) {
            const auto page = outcome(asked, "", width).output;
            EXPECT_EQ(words_of(page), wide) << asked.front() << width;
            std::istringstream lines(page);
            for (std::string line; std::getline(lines, line);)
                EXPECT_LE(faces::width_of(line), width) << line;
        }
    }
    EXPECT_EQ(outcome({"--help"}, "", 10).output, outcome({"--help"}, "", 40).output);
}

TEST(help_page, has_what_an_option_means_beside_it_or_below_on_a_narrow_page) {
    EXPECT_THAT(
        outcome({"join", "--help"}, "", 80).output,
        HasSubstr("\n  --pack NAME               The pack that is plugged in (the last one of the\n"
                  "                            file); all others are on the unit already\n"));
    EXPECT_THAT(outcome({"join", "--help"}, "", 40).output,
                HasSubstr("\n  --pack NAME\n      The pack that is plugged in (the\n"));
}

// The shells complete by the first word of these lines, however narrow the window.
TEST(help_page, has_each_question_at_the_beginning_of_a_line) {
    const auto page = outcome({"--help"}, "", 40).output;
    const auto list = page.substr(page.find("Subcommands:\n"));
    for (const auto& question : command_line::questions())
        EXPECT_THAT(list, HasSubstr("\n  " + std::string(question.name) + " ")) << page;
}

TEST(help_page, is_asked_for_by_word_too) {
    const auto whole = outcome({"help"});
    EXPECT_EQ(whole.status, Status::answered);
    EXPECT_THAT(whole.output, HasSubstr("keys"));
    EXPECT_EQ(outcome({"help", "sun"}).output, outcome({"sun", "--help"}).output);
    EXPECT_EQ(outcome({"-V"}).output, outcome({"--version"}).output);
    EXPECT_EQ(outcome({"help", "no such question"}).output, whole.output);
}

}  // namespace
