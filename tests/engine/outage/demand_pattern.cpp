// The steps of other draws, once from the pattern and once from the demand itself.
#include "outage/demand_pattern.hpp"

#include <filesystem>
#include <random>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

using namespace units;
using demand::Demand;
using outage::DemandPattern;
using outage::End;

outage::Ready ready_of(const std::string& text) {
    const auto read = scenario::read_scenario(text, "made.toml", {});
    if (!read)
        throw std::runtime_error(read.error().front().where + ": " + read.error().front().found);
    auto ready = outage::make_ready(read->scenario);
    if (!ready)
        throw std::runtime_error(ready.error().front().where + ": " + ready.error().front().found);
    return std::move(*ready);
}

constexpr const char* with_circuits = R"(
format = 1
title = "Made"
[outage]
starts = 2026-01-14T18:30:00
lasts = "3 d"
[place]
name = "Chicago IL"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[inverter]
continuous = "2000 W"
surge = "4000 W"
off = ["02:00-05:00"]
[[circuit]]
name = "lights"
feeds = ["lamps", "pump"]
links = [{wire = "14 AWG", length = "15 ft"}]
[[load]]
name = "freezer"
from = "ac"
power = "100 W"
runs = { on = "15 min", every = "45 min" }
count = 3
[[load]]
name = "blower"
from = "ac"
power = "100 W"
runs = { on = "10 min", every = "30 min" }
[[load]]
name = "lamps"
from = "12V"
power = "20 W"
hours = ["17:00-23:00", "05:00-07:00"]
lowest_voltage = "11.5 V"
[[load]]
name = "pump"
from = "12V"
power = "60 W"
runs = { on = "5 min", every = "20 min" }
[[load]]
name = "phones"
from = "usb"
power = "10 W"
hours = ["18:00-21:00"]
)";

// Draws by chance, now and then two alike, or none at all.
std::vector<Power> drawn(const Demand& demand, std::mt19937& random) {
    std::vector<Power> draws;
    for (const auto& load : demand.loads)
        draws.push_back(std::exp(std::normal_distribution(0.0, 0.4)(random)) * load.power.likely);
    if (random() % 4 == 0) draws.front() = draws.back();
    if (random() % 8 == 0) draws[random() % draws.size()] = Power{};
    return draws;
}

// How many of the draws the pattern answers, each of them as the demand does.
int answered(const outage::Ready& ready, const Demand& demand, int tries) {
    const DemandPattern pattern(ready, demand, End::likely);
    std::mt19937 random(7);
    int count = 0;
    for (int number = 0; number < tries; ++number) {
        const auto draws = drawn(demand, random);
        Demand other = demand;
        for (std::size_t i = 0; i < draws.size(); ++i)
            other.loads[i].power.likely = draws[i];
        const auto steps = pattern.with(draws);
        if (!steps) continue;
        ++count;
        EXPECT_EQ(*steps, outage::steps_of(ready, other, End::likely)) << number;
    }
    return count;
}

TEST(demand_pattern, gives_the_steps_of_the_shipped_scenarios) {
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(CANDLEMARK_SOURCE_DIR "/scenarios"))) {
        if (entry.path().extension() != ".toml") continue;
        SCOPED_TRACE(entry.path().string());
        const auto read = scenario::read_scenario_file(entry.path().string());
        ASSERT_TRUE(read);
        const auto ready = outage::make_ready(read->scenario);
        ASSERT_TRUE(ready);
        EXPECT_GE(answered(*ready, ready->demand, 40), 35);
    }
}

TEST(demand_pattern, gives_the_steps_of_loads_in_circuits) {
    const auto ready = ready_of(with_circuits);
    EXPECT_GE(answered(ready, ready.demand, 200), 150);
    Demand less = ready.demand;
    less.loads[0].strands.clear();
    less.loads[3].strands.clear();
    EXPECT_GE(answered(ready, less, 100), 75);
}

TEST(demand_pattern, leaves_an_inverter_in_search_mode_to_the_demand) {
    auto ready = ready_of(with_circuits);
    ready.demand.search_threshold = 50.0 * watt;
    EXPECT_EQ(answered(ready, ready.demand, 5), 0);
}

// 70 loads are summed in two blocks.
TEST(demand_pattern, sums_many_loads_as_the_demand_does) {
    std::string text = with_circuits;
    for (int number = 0; number < 70; ++number)
        text += fmt::format(
            "[[load]]\nname = \"more {0}\"\nfrom = \"{1}\"\npower = \"{2} W\"\n"
            "hours = [\"{3:02}:00-{4:02}:30\"]\n",
            number, number % 3 == 0 ? "12V" : "ac", 3 + number, number % 20, number % 20 + 2);
    const auto ready = ready_of(text);
    EXPECT_GE(answered(ready, ready.demand, 40), 30);
}

}  // namespace
