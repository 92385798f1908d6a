#include "answers/now/days.hpp"

#include "support/three_packs.hpp"

namespace {

using namespace units;
using namespace three_packs;
using estimate::Outlook;

Outlook pictured(const scenario::Scenario& scenario, const char* now, unsigned threads = 0) {
    const auto made = estimate::outlook_of(
        scenario, "", ready_of(scenario),
        {.now = *units::read_local_time(now), .threads = threads, .steps = false, .fan = true});
    EXPECT_TRUE(made.has_value());
    return made ? *made : Outlook{};
}

TEST(now_days, the_hours_balance_and_the_ends_are_after_the_start) {
    const auto scenario = with(shows("2026-01-15T11:00:00", 55));
    const auto found = pictured(scenario, next_noon);
    const auto chart = answers::now_days(scenario, found);
    ASSERT_EQ(chart.hours.size(), 60U);
    for (const auto& of : chart.hours) {
        EXPECT_NEAR(of.stored,
                    of.stored_before + of.sun_taken + of.charger_taken - of.served - of.lost,
                    0.5 + 1e-3 * of.stored_before);
        EXPECT_LE(of.nine_in_ten, of.one_in_ten);
    }
    EXPECT_NEAR(chart.burns.half, 18.0 + found.figures.half / hour, 1e-9);
    EXPECT_EQ(chart.at.size(), chart.likely.size());
}

TEST(now_days, without_a_fan_there_are_the_ends_alone) {
    const auto scenario = with("");
    const auto chart = answers::now_days(scenario, outlook("", next_noon));
    EXPECT_TRUE(chart.at.empty());
    EXPECT_TRUE(chart.hours.empty());
    EXPECT_GT(chart.burns.half, 18.0);
}

}  // namespace
