#include "chance/draw.hpp"

#include <algorithm>
#include <set>

namespace {

using chance::drawn;
using chance::hash_of;
using chance::lanes;

// The published test vectors, read in the tests of many public programs: [FNV].
TEST(draw, names_are_hashed_as_published) {
    EXPECT_EQ(hash_of(""), 0xcbf29ce484222325U);
    EXPECT_EQ(hash_of("a"), 0xaf63dc4c8601ec8cU);
    EXPECT_EQ(hash_of("foobar"), 0x85944171f73967e8U);
}

// A program in another language, with the generator written from [Salmon 2011], fig. 2, which meets
// that paper's three known answers, and fractions in the place of doubles.
TEST(draw, gives_the_numbers_of_an_independent_program) {
    EXPECT_EQ(drawn({.seed = 1, .number = 0}, "sun/scale")[0], 0x1.4f8f2184ed337p-1);
    EXPECT_EQ(drawn({.seed = 1, .number = 3}, "load/furnace blower/draw")[17],
              0x1.7187a0a7edf7bp-1);
    EXPECT_EQ(drawn({.seed = 20261125, .number = 15}, "sky/4")[63], 0x1.646710c7bec5fp-1);
    EXPECT_EQ(drawn({.seed = (1ULL << 63) + 5, .number = 4294967295U}, "pack/main/capacity")[31],
              0x1.53efc40f7a164p-3);
}

TEST(draw, each_64th_of_the_interval_is_met_once_in_a_block) {
    for (std::uint32_t block = 0; block < 100; ++block) {
        std::set<int> met;
        for (const double value : drawn({.seed = 7, .number = block}, "sky/1")) {
            EXPECT_GT(value, 0.0);
            EXPECT_LT(value, 1.0);
            met.insert(int(value * lanes));
        }
        EXPECT_EQ(met.size(), std::size_t(lanes));
    }
}

// Of independent numbers: a mean of 1/2, a correlation within 4 standard errors of none.
TEST(draw, names_blocks_and_seeds_do_not_follow_each_other) {
    constexpr std::uint32_t blocks = 200;
    const auto correlation = [&](auto first, auto second) {
        double sum = 0.0;
        for (std::uint32_t block = 0; block < blocks; ++block) {
            const auto one = first(block);
            const auto other = second(block);
            for (std::size_t lane = 0; lane < one.size(); ++lane)
                sum += (one[lane] - 0.5) * (other[lane] - 0.5);
        }
        return 12.0 * sum / (blocks * lanes);
    };
    const auto of = [](std::uint64_t seed, std::uint32_t shift, const char* name) {
        return [=](std::uint32_t block) {
            return drawn({.seed = seed, .number = block + shift}, name);
        };
    };
    const double four_errors = 4.0 / std::sqrt(double(blocks) * lanes);
    EXPECT_LT(std::abs(correlation(of(1, 0, "sky/1"), of(1, 0, "sky/2"))), four_errors);
    EXPECT_LT(std::abs(correlation(of(1, 0, "sky/1"), of(1, 1, "sky/1"))), four_errors);
    EXPECT_LT(std::abs(correlation(of(1, 0, "sky/1"), of(2, 0, "sky/1"))), four_errors);
    EXPECT_NEAR(correlation(of(1, 0, "sky/1"), of(1, 0, "sky/1")), 1.0, 1e-3);
}

}  // namespace
