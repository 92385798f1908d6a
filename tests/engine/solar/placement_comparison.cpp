#include "solar/placement_comparison.hpp"

namespace {

using namespace units;
using namespace solar;

TEST(placement_comparison, in_a_clear_winter_turning_beats_tilting_beats_flat) {
    Site site;
    site.at.latitude = 40.0 * degree;
    site.clearness.fill(Clearness(0.60));
    const PanelGroup group{.model = {}, .aims = {}, .out = {}, .shade = {}, .covered_days = {}};
    const LocalTime december = local_time(std::chrono::year(2025) / 12 / 10, {});
    const auto compared = compare_placements(site, group, {}, december);
    ASSERT_EQ(compared.size(), 4u);
    // 2.4 times the flat yield on a clear day at 40 N, [computed] in method.md, section 7; less in
    // the mean of all skies, more behind glass, which dims low light on a flat panel
    EXPECT_GT(compared[1].day.mean / compared[0].day.mean, 1.8);
    EXPECT_LT(compared[1].day.mean / compared[0].day.mean, 2.8);
    EXPECT_GT(compared[2].day.high, compared[1].day.high);
    EXPECT_GT(compared[3].day.high, compared[2].day.high);
    EXPECT_LT(compared[3].day.low / compared[0].day.low, 2.0);  // little is gained on a dull day
}

}  // namespace
