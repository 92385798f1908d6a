// One datum from the file to the plot: the capacity of a pack. Each station is asked for it in its
// own words; a station that drops or changes it fails here and names itself.
#include "answers/outage/answer.hpp"
#include "answers/outage/series.hpp"
#include "faces/json.hpp"
#include "outage/ready.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

std::string file_with(const std::string& capacity) {
    return R"(format = 1
title = "Walk"
[outage]
starts = 2026-01-14T18:00:00
lasts = "6 d"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = ")" +
           capacity + R"("
usable = "100 %"
[[load]]
name = "lamp"
from = "12V"
power = "20 W"
)";
}

struct Stations {
    scenario::Scenario read;
    outage::Ready ready;
    outage::Plan plan;
    answers::DaysChart chart;
};

Stations stations_of(const std::string& capacity) {
    const auto read = scenario::read_scenario(file_with(capacity), "walk.toml", {});
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    auto ready = outage::make_ready(read->scenario);
    if (!ready) throw std::runtime_error(words::in_english(ready.error().front().found));
    auto plan = outage::plan_outage(*ready);
    auto chart = answers::days_chart(read->scenario, plan);
    return {read->scenario, std::move(*ready), std::move(plan), std::move(chart)};
}

TEST(walk, a_capacity_travels_from_the_file_to_the_plot) {
    const auto small = stations_of("80 Ah");
    const auto large = stations_of("160 Ah");

    // the file's value
    EXPECT_DOUBLE_EQ(small.read.packs.front().capacity / ampere_hour, 80.0);
    // the pack model and the bank
    const auto likely = static_cast<std::size_t>(outage::End::likely);
    EXPECT_DOUBLE_EQ(small.ready.kinds.front().model->capacity / ampere_hour, 80.0);
    EXPECT_DOUBLE_EQ(small.ready.units[likely].bank.rated / ampere_hour, 80.0);
    // the course: the energy of a pack is its charge times the mean of its voltage table, some
    // 13.1 V by the table of the cell ([Sunil 2025]: 4 x 3.27 V at half charge)
    const double per_charge = small.plan.likely.trace.front().stored / watt_hour / 80.0;
    EXPECT_NEAR(per_charge, 13.1, 0.15);
    // the plot
    EXPECT_NEAR(small.chart.likely.front(), 80.0 * per_charge, 1e-6);
    EXPECT_NEAR(small.chart.top, 80.0 * per_charge, 1e-6);
    // and twice the capacity is twice as much at every station
    EXPECT_DOUBLE_EQ(large.ready.units[likely].bank.rated / ampere_hour, 160.0);
    EXPECT_NEAR(large.chart.likely.front(), 2.0 * small.chart.likely.front(), 1e-6);
    EXPECT_GT(large.plan.likely.lasts, 1.9 * small.plan.likely.lasts);
}

}  // namespace
