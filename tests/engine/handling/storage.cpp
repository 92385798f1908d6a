#include "handling/storage.hpp"

#include <algorithm>
#include <cmath>

namespace {

using namespace units;
using scenario::Chemistry;

scenario::Scenario stored(Chemistry chemistry, double months, double degrees = 20.0) {
    scenario::Scenario made;
    made.packs = {{.name = "main", .chemistry = chemistry, .capacity = 100.0 * ampere_hour}};
    scenario::Storage storage;
    storage.temperature = celsius(degrees);
    storage.drain = Current{};
    made.storage = storage;
    made.outage.starts = storage.since + months * handling::month;
    return made;
}

bool says(const handling::Stored& told, std::string_view words) {
    return std::ranges::any_of(told.findings, [&](const scenario::Finding& finding) {
        return in_english(finding.text).find(words) != std::string::npos;
    });
}

TEST(storage, warmth_doubles_the_loss_for_each_ten_kelvin) {
    const auto cool = handling::storage(stored(Chemistry::agm, 1.0, 20.0));
    const auto warm = handling::storage(stored(Chemistry::agm, 1.0, 30.0));
    EXPECT_NEAR(1.0 - warm->charge_now.value(), 2.0 * (1.0 - cool->charge_now.value()), 1e-9);
}

TEST(storage, a_charger_left_on_keeps_it_full) {
    auto made = stored(Chemistry::agm, 12.0);
    made.storage->maintained = true;
    const auto told = handling::storage(made);
    EXPECT_EQ(told->charge_now, StateOfCharge(1.0));
    EXPECT_FALSE(told->top_up_by);
}

TEST(storage, lead_below_four_fifths_sulphates) {
    EXPECT_TRUE(says(*handling::storage(stored(Chemistry::flooded, 5.0)), "sulphate"));
    EXPECT_FALSE(says(*handling::storage(stored(Chemistry::flooded, 3.0)), "sulphate"));
}

TEST(storage, a_discharged_lead_battery_in_frost_may_freeze) {
    auto made = stored(Chemistry::flooded, 5.0, -5.0);
    made.packs[0].charge = StateOfCharge(0.5);
    EXPECT_TRUE(says(*handling::storage(made), "near freezing"));
    // half full it freezes at about -20 degC, by the makers' gravity and the army's table
    made.storage->temperature = celsius(-25.0);
    EXPECT_TRUE(says(*handling::storage(made), "the acid freezes below"));
    made.packs[0].chemistry = Chemistry::lifepo4;
    EXPECT_FALSE(says(*handling::storage(made), "acid"));
}

TEST(storage, what_is_left_is_told_with_the_day_as_people_say_it) {
    auto made = stored(Chemistry::flooded, 5.0);
    made.storage->since = *read_local_time("2026-01-01");
    const auto told = handling::storage(made, *read_local_time("2026-06-01T23:59:50"));
    EXPECT_TRUE(says(*told, "is left on 1 June 2026; below 80 % lead plates begin to sulphate"));
}

TEST(storage, time_until_is_the_inverse_of_charge_after) {
    for (const double drain : {0.0, 0.005, 0.1})
        for (const double a_month : {0.0, 0.02, 0.3}) {
            const handling::Keeping keeping{.start = StateOfCharge(0.9),
                                            .a_month = Share(a_month),
                                            .drain = drain * ampere,
                                            .capacity = 80.0 * ampere_hour};
            const auto until = handling::time_until(keeping, StateOfCharge(0.4));
            if (!until) {
                EXPECT_EQ(drain + a_month, 0.0);
                continue;
            }
            EXPECT_NEAR(handling::charge_after(keeping, *until).value(), 0.4, 1e-9);
        }
}

TEST(storage, the_charge_never_falls_below_nothing) {
    const handling::Keeping keeping{.start = StateOfCharge(0.2),
                                    .a_month = Share(0.05),
                                    .drain = 1.0 * ampere,
                                    .capacity = 50.0 * ampere_hour};
    EXPECT_EQ(handling::charge_after(keeping, 24.0 * handling::month), StateOfCharge(0.0));
}

TEST(storage, what_was_lost_is_the_drain_and_the_packs_themselves) {
    auto made = stored(Chemistry::lifepo4, 3.0);
    made.storage->drain = 0.01 * ampere;
    const auto told = handling::storage(made);
    const double lost = (1.0 - told->charge_now.value()) * 100.0;
    EXPECT_NEAR((told->drained + told->self_discharged) / ampere_hour, lost, 1e-9);
}

TEST(storage, an_outage_after_storage_begins_with_what_is_left) {
    const auto made = stored(Chemistry::agm, 6.0);
    const auto told = handling::storage(made);
    EXPECT_NEAR(handling::after_storage(made, *told).packs[0].charge->value(),
                told->charge_now.value(), 1e-12);
}

TEST(storage, a_date_before_it_was_put_away_is_told) {
    const auto made = stored(Chemistry::agm, 6.0);
    EXPECT_FALSE(handling::storage(made, made.storage->since - day));
    EXPECT_FALSE(handling::storage(scenario::Scenario{}));
}

}  // namespace
