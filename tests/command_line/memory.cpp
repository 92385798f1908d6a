// What the program does where memory ends: words and exit status 3, never a signal.
#include "process.hpp"

namespace {

using process::candlemark;
using testing::HasSubstr;

const std::string demo = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml";

// Below some 12 MB of address space the loader and the libraries do not come up themselves.
constexpr long least = 20'000'000;
constexpr long step = 4'000'000;

TEST(candlemark_memory, ends_in_words) {
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
    GTEST_SKIP() << "a sanitizer's own memory is larger than any of these limits";
#endif
    int short_of_memory = 0;
    for (long limit = least; limit <= 60'000'000; limit += step) {
        for (const auto& asked :
             {std::vector<std::string>{"packs", demo, "--weathers", "3000", "--threads", "4"},
              std::vector<std::string>{"packs", demo, "--weathers", "3000", "--threads", "1"},
              std::vector<std::string>{"outage", demo}}) {
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
    EXPECT_GE(short_of_memory, 3);
}

}  // namespace
