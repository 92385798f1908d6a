#include "outage/weathers.hpp"

#include "scenario/file/read.hpp"

namespace {

using namespace units;

outage::Ready ready_for(const std::string& cause, int panels) {
    const std::string text = R"(format = 1
title = "Weathers"
[outage]
starts = 2026-03-05T18:00:00
lasts = "5 d"
cause = ")" + cause + R"("
battery_temperature = "15 degC"
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
count = 2
chemistry = "lifepo4"
capacity = "100 Ah"
[[panel]]
power = "100 W"
tilt = "45 deg"
placement = "fixed"
azimuth = "180 deg"
count = )" + std::to_string(panels) +
                             R"(
[[load]]
name = "load"
from = "12V"
power = "45 W"
)";
    const auto read = scenario::read_scenario(text, "weathers.toml", {});
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    auto ready = outage::make_ready(read->scenario);
    if (!ready) throw std::runtime_error(words::in_english(ready.error().front().found));
    return std::move(*ready);
}

double survivors(const std::vector<outage::Ending>& endings) {
    return static_cast<double>(std::count_if(endings.begin(), endings.end(),
                                             [](const auto& ending) { return ending.survives; })) /
           static_cast<double>(endings.size());
}

TEST(weathers, are_the_same_to_the_last_bit_for_any_number_of_threads) {
    const auto ready = ready_for("unknown", 3);
    const auto one = outage::endings_in_weathers(ready, 60, 7, 1);
    EXPECT_EQ(one, outage::endings_in_weathers(ready, 60, 7, 2));
    EXPECT_EQ(one, outage::endings_in_weathers(ready, 60, 7, 7));
    EXPECT_NE(one, outage::endings_in_weathers(ready, 60, 8, 1));
}

TEST(weathers, more_of_them_begin_with_the_same_ones) {
    const auto ready = ready_for("unknown", 3);
    const auto few = outage::endings_in_weathers(ready, 20, 7);
    const auto many = outage::endings_in_weathers(ready, 50, 7);
    EXPECT_TRUE(std::equal(few.begin(), few.end(), many.begin()));
}

TEST(weathers, scatter_between_the_ends_a_sky_can_have) {
    const auto endings = outage::endings_in_weathers(ready_for("unknown", 3), 200, 1);
    const auto [least, most] =
        std::minmax_element(endings.begin(), endings.end(),
                            [](const auto& a, const auto& b) { return a.lasts < b.lasts; });
    EXPECT_LT(least->lasts, most->lasts);
    const auto dark = outage::endings_in_weathers(ready_for("unknown", 0), 200, 1);
    ASSERT_EQ(dark.size(), 1U);
    EXPECT_GE(least->lasts, dark.front().lasts);
}

TEST(weathers, an_outage_that_begins_with_a_storm_is_survived_less_often) {
    const double after_storm =
        survivors(outage::endings_in_weathers(ready_for("storm", 3), 400, 1));
    const double after_clear =
        survivors(outage::endings_in_weathers(ready_for("clear", 3), 400, 1));
    EXPECT_LT(after_storm, after_clear);
    EXPECT_GT(after_clear, 0.0);
}

// The same weathers in both, so not even one may turn out worse.
TEST(weathers, more_panels_never_shorten_any_of_them) {
    const auto three = outage::endings_in_weathers(ready_for("unknown", 3), 200, 1);
    const auto four = outage::endings_in_weathers(ready_for("unknown", 4), 200, 1);
    for (std::size_t i = 0; i < three.size(); ++i)
        EXPECT_GE(four[i].lasts / second, three[i].lasts / second - 1.0) << i;
}

}  // namespace
