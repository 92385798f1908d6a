#include "abreast/lanes.hpp"

#include "by_hand.hpp"

#include "outage/clock/serving.hpp"

namespace {

using namespace units;

// One to four of the pack, 60 W throughout.
abreast::LaneWorld world_of(const outage::Bank& bank, Duration lasts) {
    const outage::Unit unit{.bank = bank};
    const std::vector demand{by_hand::draws(60.0 * watt),
                             by_hand::draws(60.0 * watt, 30.0 * minute)};
    abreast::LaneWorld world{.at_start = bank.at_start};
    auto& packs = world.days.emplace_back();
    for (int count = 1; count <= 4; ++count) {
        auto of_count = bank;
        of_count.count = count;
        const auto ready = outage::serving(of_count, false, 10.5 * volt, {});
        packs.push_back({.count = count, .with_inverter = ready, .direct = ready});
    }
    world.segments = abreast::segments(unit, demand, {}, lasts, packs.front().direct);
    return world;
}

TEST(lanes, so_many_packs_last_as_worked_out) {
    const auto bank = by_hand::pack_of(30.0 * ampere_hour, 0.020 * ohm);
    const auto world = world_of(bank, 20.0 * hour);
    const std::vector<abreast::LaneJob> jobs{
        {.packs = 3}, {.packs = 1}, {.packs = 4}, {.packs = 2}};
    std::vector<abreast::LaneEnding> endings(jobs.size());
    for (const auto width : abreast::widths_here()) {
        abreast::LaneCost cost;
        abreast::run_lanes(world, jobs, endings, &cost, width);
        for (std::size_t i = 0; i < jobs.size(); ++i) {
            const double packs = jobs[i].packs;
            const Duration wanted =
                by_hand::lasts_at(packs * 30.0 * ampere_hour, 0.020 / packs * ohm, 60.0 * watt);
            EXPECT_EQ(endings[i].survives, wanted > 20.0 * hour) << packs;
            EXPECT_NEAR(endings[i].lasts / second, std::min(wanted, 20.0 * hour) / second, 1.0)
                << packs;
            EXPECT_FALSE(endings[i].undecided);
        }
    }
}

TEST(lanes, empty_packs_do_not_begin) {
    auto world = world_of(by_hand::pack_of(30.0 * ampere_hour, 0.020 * ohm), 20.0 * hour);
    world.already_empty = true;
    const std::vector<abreast::LaneJob> jobs{{.packs = 4}};
    std::vector<abreast::LaneEnding> endings{{.lasts = 1.0 * hour, .survives = true}};
    abreast::run_lanes(world, jobs, endings);
    EXPECT_FALSE(endings[0].survives);
    EXPECT_EQ(endings[0].lasts, Duration{});
}

}  // namespace
