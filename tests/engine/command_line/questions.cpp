#include "command_line/questions.hpp"

#include <algorithm>
#include <set>
#include <sstream>

#include "typed.hpp"

#include "command_line/arguments.hpp"

namespace {

using command_line::Question;
using command_line::questions;
using command_line::Request;

// A line as a shell parts it, up to where its output goes.
std::vector<std::string> words_of(const std::string& line) {
    std::vector<std::string> words;
    bool quoted = false;
    bool begun = false;
    for (const char c : line) {
        if (c == '>') break;
        if (c == '"') quoted = !quoted;
        if (c == '"') continue;
        if (c == ' ' && !quoted) {
            begun = false;
            continue;
        }
        if (!begun) words.emplace_back();
        begun = true;
        words.back() += c;
    }
    return words;
}

TEST(questions, have_names_of_their_own_and_are_asked_in_plain_words) {
    std::set<std::string> names;
    for (const Question& question : questions()) {
        EXPECT_TRUE(names.insert(question.name).second) << question.name;
        EXPECT_THAT(in_english(question.asks).back(), testing::AnyOf('?', '.')) << question.name;
        // One that is asked, or one that writes into the file.
        EXPECT_NE(question.asked == nullptr, question.write == nullptr) << question.name;
    }
    EXPECT_STREQ(questions().front().name, "outage");
}

TEST(questions, each_example_can_be_typed_as_it_is_printed) {
    for (const Question& question : questions()) {
        std::istringstream lines(question.examples);
        for (std::string line; std::getline(lines, line);) {
            auto words = words_of(line);
            ASSERT_GE(words.size(), 3U) << line;
            EXPECT_EQ(words.front(), "candlemark") << line;
            words.erase(words.begin());
            const auto asked = command_line::read_arguments(words);
            const auto* request = std::get_if<Request>(&asked);
            ASSERT_NE(request, nullptr) << line << std::get<command_line::Notice>(asked).text;
            EXPECT_STREQ(request->question->name, question.name) << line;
        }
    }
}

TEST(questions, are_worked_out_as_the_request_says) {
    const auto how = command_line::how_of(Request{.seed = 7, .threads = 3});
    EXPECT_EQ(how.seed, 7U);
    EXPECT_EQ(how.threads, 3U);
    EXPECT_FALSE(how.progress);
}

}  // namespace
