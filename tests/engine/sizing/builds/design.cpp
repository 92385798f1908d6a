#include "sizing/builds/design.hpp"

#include <gtest/gtest.h>

#include "outage/clock/clock.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

// 40 W from a 12 V plug, two packs alike, and one that is smaller.
sizing::Design design_of(const std::string& more, int most_packs = 4, int most_panels = 3,
                         const std::string& lasts = "5 d") {
    const auto read = scenario::read_scenario(
        "format = 1\ntitle = \"Design\"\n[outage]\n"
        "starts = 2026-03-05T18:00:00\nlasts = \"" +
            lasts + R"("
battery_temperature = "20 degC"
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
resistance = "10 mohm"
usable = "90 %"
charge = "100 %"
count = 2
[[load]]
name = "lamp"
from = "12V"
power = "40 W"
)" + more,
        "design.toml", {});
    if (!read) throw std::runtime_error(read.error().front().where + read.error().front().found);
    return sizing::make_design(read->scenario, {}, most_packs, most_panels).value();
}

const std::string small =
    "[[pack]]\nname = \"small\"\nchemistry = \"lifepo4\"\n"
    "capacity = \"40 Ah\"\ncount = 1\n";
const std::string panels = "[[panel]]\npower = \"100 W\"\ncount = 2\n";

TEST(design, knows_what_the_file_has_and_which_numbers_of_packs_are_alike) {
    const auto without = design_of("");
    EXPECT_EQ(without.packs, 2);
    EXPECT_EQ(without.panels, 0);
    EXPECT_EQ(without.most_panels, 0);  // none is described
    EXPECT_TRUE(without.all_alike());
    const auto with = design_of(small + panels);
    EXPECT_EQ(with.packs, 3);
    EXPECT_EQ(with.panels, 2);
    EXPECT_EQ(with.most_panels, 3);
    EXPECT_TRUE(with.alike(2));
    EXPECT_FALSE(with.alike(3));
    EXPECT_EQ(with.units.size(), 4U);
}

// Without panels nothing but midnight and the loads cuts the time.
TEST(design, light_cuts_the_outage_where_there_are_panels) {
    const auto design = design_of(panels);
    EXPECT_GT(design.lit.segments.all.size(), design.dark.segments.all.size());
    EXPECT_EQ(design.dark.segments.all.size(), 1U);
    EXPECT_EQ(design.needs.front().taken, 40.0);
}

// Ninety of a hundred ampere-hours from one to four packs, without sun. A cell's rested voltage on
// its plateau is 3.25 to 3.35 V, so that a pack gives 1,170 to 1,210 Wh: 29.2 to 30.2 h for each.
TEST(design, a_pack_more_lasts_so_much_longer) {
    const auto design = design_of(panels);
    std::vector<abreast::LaneJob> jobs;
    for (int packs = 1; packs <= 4; ++packs)
        jobs.push_back({.packs = packs});
    std::vector<abreast::LaneEnding> endings(jobs.size());
    sizing::run_outages(design, jobs, endings);
    for (std::size_t i = 0; i < 4; ++i) {
        if (i == 3) {
            EXPECT_EQ(endings[i].survives, endings[i].lasts == 5.0 * day);
            continue;
        }
        EXPECT_FALSE(endings[i].survives);
        EXPECT_GT(endings[i].lasts, double(i + 1) * 29.2 * hour);
        EXPECT_LT(endings[i].lasts, double(i + 1) * 30.2 * hour);
    }
}

// Packs that differ go by another way, in the same call: each as the clock has it.
TEST(design, alike_and_unlike_packs_are_run_together) {
    const auto design = design_of(small);
    std::vector<abreast::LaneJob> jobs;
    for (const int packs : {3, 1, 4, 2})
        jobs.push_back({.packs = packs});
    std::vector<abreast::LaneEnding> endings(jobs.size());
    abreast::LaneCost cost;
    sizing::run_outages(design, jobs, endings, &cost);
    const auto likely = std::size_t(outage::End::likely);
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        const auto course =
            outage::run(design.units[std::size_t(jobs[i].packs - 1)], design.ready->steps[likely],
                        {}, design.ready->outage.lasts, design.ready->midnight,
                        {.trace = false, .after_failure = false});
        EXPECT_EQ(endings[i].lasts, course.lasts) << jobs[i].packs;
        EXPECT_EQ(endings[i].survives, course.survives) << jobs[i].packs;
    }
}

}  // namespace
