// What the program does where memory ends: words and exit status 3, never a signal.
#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <map>
#include <set>

#include "process.hpp"

namespace {

using process::candlemark;
using testing::HasSubstr;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

// Below some 12 MB of address space the loader and the libraries do not come up themselves.
constexpr long least = 20'000'000;
constexpr long step = 8'000'000;
// Its packs are alike, so that many weathers take little time and some memory.
const std::string alike = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/summer_storm.toml";

std::string text_of(const std::string& path) {
    std::ifstream file(path);
    return {std::istreambuf_iterator<char>(file), {}};
}

// Takes more memory to read than the least limit.
std::string with_many_remarks() {
    std::string text = text_of(alike);
    while (text.size() < 3'800'000)
        text += "# a long remark that nobody reads to its end\n";
    return process::file_with(text, "remarks.toml");
}

TEST(candlemark_memory, ends_in_words) {
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
    GTEST_SKIP() << "a sanitizer's own memory is larger than any of these limits";
#endif
    const std::string remarks = with_many_remarks();
    int short_of_memory = 0;
    for (long limit = least; limit <= 60'000'000; limit += step) {
        for (const auto& asked :
             {std::vector<std::string>{"packs", alike, "--weathers", "64", "--threads", "4"},
              std::vector<std::string>{"packs", alike, "--weathers", "64", "--threads", "1"},
              std::vector<std::string>{"outage", demo},
              std::vector<std::string>{"read", remarks}}) {
            const auto ended = candlemark(asked, "", {}, {.address_space = limit});
            EXPECT_LT(ended.status, 128) << "signal " << ended.status - 128 << " at " << limit;
            if (ended.status == 3) {
                ++short_of_memory;
                EXPECT_THAT(ended.errors, HasSubstr("not enough memory"));
                EXPECT_EQ(ended.output, "");
            } else {
                EXPECT_THAT(ended.status, testing::AnyOf(0, 1)) << ended.errors;
            }
        }
    }
    EXPECT_GE(short_of_memory, 1);
}

// A thread has a stack and memory of its own; who asked for four of them loses no answer by it.
TEST(candlemark_memory, several_threads_answer_wherever_one_does) {
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
    GTEST_SKIP() << "a sanitizer's own memory is larger than any of these limits";
#endif
    const std::string text = text_of(alike);
    for (const long limit : {20'000'000, 24'000'000, 32'000'000, 40'000'000})
        for (const auto& [name, input] :
             {std::pair{alike, std::string()}, std::pair{std::string("-"), text}}) {
            const auto on = [&](const char* threads) {
                return candlemark({"packs", name, "--weathers", "64", "--threads", threads}, input,
                                  {}, {.address_space = limit});
            };
            const auto one = on("1");
            const auto four = on("4");
            EXPECT_EQ(four.status, one.status) << limit << four.errors;
            EXPECT_EQ(four.output, one.output) << limit;
        }
}

// The first ones, and some twenty more spread over all there are.
std::set<long> some_of(long count) {
    std::set<long> chosen;
    for (long number = 0; number < std::min(count, 5L); ++number)
        chosen.insert(number);
    for (long number = 5; number < count; number = number * 2 + 1)
        chosen.insert(number);
    for (long number = 1; number < 12; ++number)
        chosen.insert(count * number / 12);
    return chosen;
}

class any_allocation_fails : public testing::TestWithParam<std::vector<std::string>> {};

TEST_P(any_allocation_fails, and_the_program_ends_in_words_or_answers) {
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
    GTEST_SKIP() << "a sanitizer has allocations of its own";
#endif
    std::map<std::string, std::string> environment{{"LD_PRELOAD", CANDLEMARK_FAILING_ALLOCATION},
                                                   {"CANDLEMARK_COUNT", "1"}};
    const auto counted = candlemark(GetParam(), "", environment);
    const long count = std::atol(counted.errors.c_str());
    ASSERT_GT(count, 100) << counted.errors;
    environment.erase("CANDLEMARK_COUNT");
    const auto whole = candlemark(GetParam(), "", environment);
    for (const long number : some_of(count))
        for (const char* and_on : {"0", "1"}) {
            environment["CANDLEMARK_FAILING"] = std::to_string(number);
            environment["CANDLEMARK_FAILING_ON"] = and_on;
            const auto ended = candlemark(GetParam(), "", environment);
            if (ended.status == 3) {
                EXPECT_THAT(ended.errors, HasSubstr("not enough memory")) << number;
                EXPECT_EQ(ended.output, "") << number;
            } else {
                EXPECT_EQ(ended.status, whole.status) << number;
                EXPECT_EQ(ended.output, whole.output) << number;
            }
        }
}

INSTANTIATE_TEST_SUITE_P(
    candlemark_memory, any_allocation_fails,
    testing::Values(std::vector<std::string>{"read", demo},
                    std::vector<std::string>{"outage", demo, "--weathers", "4"},
                    std::vector<std::string>{"packs", demo, "--weathers", "130", "--threads", "2",
                                             "--most-packs", "3", "--most-panels", "2"},
                    std::vector<std::string>{"start", demo, "--as", "json"},
                    std::vector<std::string>{"wiring", demo, "--as", "html"}),
    [](const auto& tested) { return tested.param.front(); });

}  // namespace
