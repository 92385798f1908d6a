#include "outage/ready_sun.hpp"

#include "scenario/file/read.hpp"

namespace {

using namespace units;

std::string file(const std::string& packs, const std::string& more = "") {
    return R"(format = 1
title = "Sun"
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
    const auto read = scenario::read_scenario(text, "sun.toml", {});
    if (!read) return fail(read.error());
    return outage::make_ready(read->scenario);
}

constexpr auto likely = static_cast<std::size_t>(outage::End::likely);

TEST(ready_sun, no_panel_gives_no_sun) {
    const std::string sun = "[place]\nname = \"Missoula MT\"\n[[panel]]\npower = \"100 W\"\n";
    const auto none = ready_from(file(pack, sun + "count = 0\n"));
    const auto one = ready_from(file(pack, sun + "count = 1\n"));
    ASSERT_TRUE(none);
    ASSERT_TRUE(one);
    EXPECT_TRUE(none->sun[likely].empty());
    EXPECT_FALSE(one->sun[likely].empty());
}

TEST(ready_sun, the_dull_sky_offers_least_and_the_bright_one_most) {
    const auto ready = ready_from(
        file(pack, "[place]\nname = \"Missoula MT\"\n[[panel]]\npower = \"100 W\"\ncount = 2\n"));
    ASSERT_TRUE(ready);
    std::array<double, 3> offered{};
    for (std::size_t end = 0; end < 3; ++end)
        offered[end] =
            outage::run(*ready, static_cast<outage::End>(end)).ledger.sun_offered / joule;
    EXPECT_LT(offered[0], offered[1]);
    EXPECT_LT(offered[1], offered[2]);
}

}  // namespace
