#include "sizing/skies.hpp"

#include <algorithm>
#include <numeric>

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

using namespace units;

std::shared_ptr<const outage::Ready> ready_of(const std::string& panels) {
    const auto read = scenario::read_scenario(R"(format = 1
title = "Skies"
[outage]
starts = 2026-06-05T06:00:00
lasts = "2 d"
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[[load]]
name = "lamp"
from = "12V"
power = "10 W"
)" + panels,
                                              "skies.toml", {});
    if (!read) throw std::runtime_error(read.error().front().where + read.error().front().found);
    return std::make_shared<const outage::Ready>(outage::make_ready(read->scenario).value());
}

std::vector<double> offered(const sizing::Skies& skies, int panels) {
    std::vector<double> watts;
    skies.offered(skies.weather(1, 3), panels, watts);
    return watts;
}

const std::string controller =
    "[charge_controller]\nkind = \"mppt\"\nefficiency = \"100 %\"\n"
    "input_limit = \"150 W\"\n";
const std::string south =
    "[[panel]]\npower = \"100 W\"\nplacement = \"fixed\"\ntilt = \"30 deg\"\nazimuth = \"180 "
    "deg\"\n";

// A lossless controller passes on as many times what one panel gives, up to its 150 W.
TEST(skies, alike_panels_give_so_many_times_one_up_to_the_limit_of_the_controller) {
    const sizing::Skies skies(ready_of(south + "count = 2\n" + controller), 4);
    const auto one = offered(skies, 1);
    ASSERT_EQ(one.size(), skies.from().size());
    const double most = *std::ranges::max_element(one);
    EXPECT_GT(4.0 * most, 150.0);
    EXPECT_LT(most, 100.0);
    for (const int panels : {2, 3, 4}) {
        const auto all = offered(skies, panels);
        for (std::size_t i = 0; i < one.size(); ++i)
            EXPECT_NEAR(all[i], std::min(150.0, panels * one[i]), 1e-9) << panels << " " << i;
    }
    EXPECT_TRUE(offered(skies, 0).empty());
}

// Those that stand differently each give their own: the first faces south, the second lies flat.
TEST(skies, panels_that_stand_differently_are_summed_one_by_one) {
    const sizing::Skies skies(
        ready_of(south + "[[panel]]\npower = \"100 W\"\nplacement = \"fixed\"\ntilt = \"0 deg\"\n"),
        3);
    const auto sum = [&](int panels) {
        const auto all = offered(skies, panels);
        return std::accumulate(all.begin(), all.end(), 0.0);
    };
    const double south_alone = sum(1);
    const double with_flat = sum(2) - south_alone;
    EXPECT_GT(with_flat, 0.0);
    EXPECT_NE(with_flat, south_alone);
    EXPECT_NEAR(sum(3) - sum(2), south_alone, 0.001 * south_alone);  // more are like the first
}

// From the start of the outage on, at most a quarter of an hour each while the sun is up.
TEST(skies, steps_begin_with_the_outage) {
    const sizing::Skies skies(ready_of(south), 1);
    ASSERT_FALSE(skies.from().empty());
    EXPECT_EQ(skies.from().front(), Duration{});
    EXPECT_TRUE(std::ranges::is_sorted(skies.from()));
    EXPECT_LT(skies.from().back(), 2.0 * day);
    EXPECT_EQ(skies.from()[4] - skies.from()[3], 15.0 * minute);  // about seven in the morning
    EXPECT_TRUE(sizing::Skies().from().empty());
}

}  // namespace
