#include "command_line/ask/ask_outage.hpp"

#include "typed.hpp"

#include "command_line/arguments.hpp"

namespace {

using command_line::Status;
using testing::HasSubstr;
using testing::Not;
using typed::asked;

questions::OutageAsked asked_by(const std::vector<std::string>& options) {
    std::vector<std::string> words{"outage", "storm.toml"};
    words.insert(words.end(), options.begin(), options.end());
    const auto request = std::get<command_line::Request>(command_line::read_arguments(words));
    return std::get<questions::OutageAsked>(
        command_line::outage_question().asked({}, request).value());
}

TEST(ask_outage, takes_members_by_either_name_and_storage) {
    EXPECT_FALSE(asked_by({}).members);
    EXPECT_FALSE(asked_by({}).after_storage);
    EXPECT_EQ(asked_by({"--members", "0"}).members, 0);
    EXPECT_EQ(asked_by({"--weathers", "128", "--after-storage"}).members, 128);
    EXPECT_TRUE(asked_by({"--weathers", "128", "--after-storage"}).after_storage);
}

// 9 W for a day are 216 Wh of some 1310 Wh: 84 % is left.
TEST(ask_outage, without_members_tells_the_likely_course_and_no_chance) {
    const auto text = typed::with_a_lamp();
    const auto likely = asked({"outage", "--members", "0"}, text);
    EXPECT_EQ(likely.status, Status::answered) << likely.errors;
    EXPECT_THAT(likely.output, HasSubstr("Lasts the whole outage; 84 % is left"));
    EXPECT_THAT(likely.output, Not(HasSubstr("times in")));
    EXPECT_THAT(asked({"outage"}, text).output, HasSubstr("times in"));
}

TEST(ask_outage, refuses_numbers_that_are_none_and_storage_that_is_not_described) {
    const auto text = typed::with_a_lamp();
    for (const char* number : {"-1", "100001", "1.5", "many"}) {
        const auto refused = asked({"outage", "--members", number}, text);
        EXPECT_EQ(refused.status, Status::unusable) << number;
        EXPECT_THAT(refused.errors, HasSubstr("--members")) << number;
    }
    const auto storage = asked({"outage", "--after-storage"}, text);
    EXPECT_EQ(storage.status, Status::unusable);
    EXPECT_THAT(storage.errors, HasSubstr("[storage]"));
}

}  // namespace
