#include "outage/ready.hpp"

#include "scenario/file/read.hpp"

namespace {

using namespace units;

std::string file(const std::string& packs, const std::string& more = "") {
    return R"(format = 1
title = "Ready"
[outage]
starts = 2026-06-19T07:00:00
lasts = "2 d"
battery_temperature = "20 degC"
)" + packs +
           R"(
[[load]]
name = "lamp"
from = "12V"
power = "20 W"
)" + more;
}

const std::string pack = R"([[pack]]
name = "main"
chemistry = "agm"
capacity = "100 Ah"
)";

Result<outage::Ready> ready_from(const std::string& text) {
    const auto read = scenario::read_scenario(text, "ready.toml", {});
    if (!read) return fail(read.error());
    return outage::make_ready(read->scenario);
}

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);

TEST(ready, like_packs_under_two_names_are_one_bank) {
    const auto ready = ready_from(file(pack + "[[pack]]\nname = \"more\"\ncount = 3\n"));
    ASSERT_TRUE(ready);
    EXPECT_EQ(ready->units[likely].bank.count, 4);
}

TEST(ready, packs_that_differ_are_banks_on_one_bus) {
    const auto ready =
        ready_from(file(pack + "[[pack]]\nname = \"old\"\ncount = 2\ncapacity = \"80 Ah\"\n"));
    ASSERT_TRUE(ready);
    ASSERT_EQ(ready->units[likely].others.size(), 1U);
    EXPECT_EQ(ready->units[likely].others[0].count, 2);
    EXPECT_EQ(ready->units[likely].others[0].name, "old");
    // more packs are of the last kind, fewer are taken from it first
    EXPECT_EQ(outage::with_packs(*ready, outage::End::likely, 5).others[0].count, 4);
    EXPECT_TRUE(outage::with_packs(*ready, outage::End::likely, 1).others.empty());
}

// The mean of n scores of an autoregression of 0.29 spreads by sqrt(1.817 / n) for large n, so the
// dull day of a month is near the middle; of one day it is the tenth of days itself.
TEST(ready, a_long_run_of_dull_days_is_less_dull_than_a_single_one) {
    EXPECT_NEAR(outage::dull_quantile(1.0).value(), 0.10, 1e-9);
    const double month = 1.2816 * std::sqrt(1.817 / 30.0);
    EXPECT_NEAR(outage::dull_quantile(30.0).value(), 0.5 * std::erfc(month / std::sqrt(2.0)), 0.01);
    EXPECT_GT(outage::dull_quantile(4.0).value(), outage::dull_quantile(2.0).value());
}

}  // namespace
