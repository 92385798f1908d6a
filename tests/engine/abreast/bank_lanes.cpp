#include "abreast/bank_lanes.hpp"

#include "by_hand.hpp"

namespace {

using namespace units;
namespace detail = abreast::lanes_detail;

TEST(bank_lanes, stretches_are_cut_at_every_switching_light_and_day) {
    outage::Unit unit{.bank = by_hand::pack_of(100.0 * ampere_hour, 0.01 * ohm)};
    unit.days.resize(2);
    unit.days[1].from = 90.0 * minute;
    const std::vector demand{by_hand::draws(30.0 * watt), by_hand::draws(50.0 * watt, 1.0 * hour)};
    const std::vector<outage::SunChange> sun{{}, {.from = 1.0 * hour}, {.from = 2.0 * hour}};
    const auto made = detail::stretches({.unit = &unit, .demand = demand, .sun = sun}, 3.0 * hour);
    struct Wanted {
        double begins, ends;
        std::size_t step, light, day;
    };
    const std::vector<Wanted> wanted{{0.0, 3600.0, 0, 0, 0},
                                     {3600.0, 5400.0, 1, 1, 0},
                                     {5400.0, 7200.0, 1, 1, 1},
                                     {7200.0, 10800.0, 1, 2, 1}};
    ASSERT_EQ(made.size(), wanted.size());
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        EXPECT_EQ(made[i].begins, wanted[i].begins) << i;
        EXPECT_EQ(made[i].ends, wanted[i].ends) << i;
        EXPECT_EQ(made[i].time, wanted[i].ends - wanted[i].begins) << i;
        EXPECT_EQ(made[i].step, wanted[i].step) << i;
        EXPECT_EQ(made[i].light, wanted[i].light) << i;
        EXPECT_EQ(made[i].day, wanted[i].day) << i;
    }
}

// Two alike but for their name share evenly: half the power each, as one pack alone lasts at it.
TEST(bank_lanes, packs_alike_share_evenly) {
    const auto bank = by_hand::pack_of(45.0 * ampere_hour, 0.040 / 3.0 * ohm);
    const outage::Unit unit{.bank = bank, .others = {bank}};
    const std::vector demand{by_hand::draws(60.0 * watt)};
    const std::vector<abreast::Outage> outages{{.unit = &unit, .demand = demand}};
    std::vector<abreast::OwnEnding> ended(1);
    abreast::run_own(outages, 60.0 * hour, 6.0 * hour, ended);
    EXPECT_NEAR(ended[0].lasts / second,
                by_hand::lasts_at(45.0 * ampere_hour, 0.040 / 3.0 * ohm, 30.0 * watt) / second,
                1.0);
    EXPECT_EQ(ended[0].limited_by, outage::LimitedBy::usable);
}

}  // namespace
