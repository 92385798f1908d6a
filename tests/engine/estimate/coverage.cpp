// Simulated outages: a truth is drawn from what the plan does not know, its packs are read as real
// displays and meters read, and the band that is told as four times in five holds the true end so
// often.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "chance/draw.hpp"
#include "chance/unknowns.hpp"
#include "estimate/lives.hpp"
#include "estimate/outlook.hpp"
#include "scenario/read.hpp"
#include "sizing/members_of.hpp"
#include "units/clock.hpp"

namespace {

using namespace units;

constexpr std::string_view plan = R"(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "5 d"
battery_temperature = "20 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
voltage = "12.8 V"
charge = "100 %"
count = 4
[inverter]
continuous = "1000 W"
idle = "10 W"
[[load]]
name = "freezer"
label = "440 kWh/yr"
evidence = "label"
[[load]]
name = "blower"
power = "40 W"
evidence = "guess"
)";

struct Simulated {
    int inside = 0;
    int all = 0;
    double width = 0.0;  // h, mean
};

// So many charges are read at 6, 14 and 26 h, rounded to a hundredth.
Simulated simulated(int outages, int readings) {
    const auto read = scenario::read_scenario(plan, "plan.toml");
    const auto ready =
        std::make_shared<const outage::Ready>(std::move(*outage::make_ready(read->scenario)));
    const auto truths = sizing::members_of(read->scenario, "", ready, 20261129, outages);
    const auto lives =
        *estimate::Lives::of(read->scenario, "", ready,
                             estimate::story_of(read->scenario, read->scenario.outage.starts));
    const std::vector<Duration> at{6.0 * hour, 14.0 * hour, 26.0 * hour};
    Simulated made;
    for (int number = 0; number < outages; ++number) {
        const auto values = truths.values(number);
        const auto states = lives.states(values, at);
        const auto end = lives.ends({std::vector<double>(values.begin(), values.end())}).front();
        auto scenario = read->scenario;
        for (int j = 0; j < readings; ++j) {
            // A display of its own error, normally spread.
            const auto column = chance::drawn({.seed = 7, .number = std::uint32_t(number / 64)},
                                              fmt::format("display/{}", j));
            const double off = 0.03 * chance::score_of(column[std::size_t(number % 64)]);
            const double shown = std::clamp(states[std::size_t(j)].charge.value() + off, 0.0, 1.0);
            scenario.log.push_back({.at = scenario.outage.starts + at[std::size_t(j)],
                                    .shows = StateOfCharge(std::round(100.0 * shown) / 100.0)});
        }
        const Duration now = readings > 0 ? at[std::size_t(readings - 1)] : Duration{};
        if (end.lasts <= now) continue;
        const auto found = estimate::outlook_of(
            scenario, "", ready, {.now = scenario.outage.starts + now, .seed = 1, .steps = false});
        EXPECT_TRUE(found.has_value());
        const Duration left = end.lasts - now;
        ++made.all;
        made.inside += left >= found->figures.nine_in_ten && left <= found->figures.one_in_ten;
        made.width += found->width / hour;
    }
    made.width /= std::max(1, made.all);
    testing::Test::RecordProperty(
        fmt::format("readings_{}", readings),
        fmt::format("{} of {} inside, {:.1f} h wide", made.inside, made.all, made.width));
    fmt::print("{} readings: {} of {} inside, {:.1f} h wide\n", readings, made.inside, made.all,
               made.width);
    return made;
}

TEST(coverage, the_band_holds_the_truth_four_times_in_five_and_readings_narrow_it) {
    constexpr int outages = 64;
    double before = 1e9;
    for (const int readings : {0, 3}) {
        const auto made = simulated(outages, readings);
        const double share = double(made.inside) / made.all;
        EXPECT_GE(share, 0.65) << readings;  // three standard deviations of 64 draws
        EXPECT_LE(share, 0.97) << readings;
        EXPECT_LT(made.width, before);
        before = made.width;
    }
}

}  // namespace
