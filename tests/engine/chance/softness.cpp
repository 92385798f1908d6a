// How soft an AGM pack is: drawn by each member where nothing tells it, and by nobody else.
#include <algorithm>

#include <gtest/gtest.h>

#include "chance/members.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

chance::Members members_of(const std::string& of_pack = "", const std::string& more = "") {
    const std::string text = R"(format = 1
title = "Two AGM packs"
[outage]
starts = 2026-03-05T18:00:00
lasts = "12 h"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "agm"
capacity = "100 Ah"
count = 2
)" + of_pack + R"(
[inverter]
continuous = "1500 W"
[[load]]
name = "pump"
from = "ac"
power = "420 W"
evidence = "metered"
)" + more;
    const auto read = scenario::read_scenario(text, "agm.toml", {});
    if (!read) throw std::runtime_error(read.error().front().where + read.error().front().found);
    auto ready = std::make_shared<const outage::Ready>(outage::make_ready(read->scenario).value());
    return {chance::World::of(read->scenario, {}, std::move(ready)).value(), 1, 2};
}

std::size_t place_of(const chance::Members& members, const std::string& name) {
    const auto& names = members.world().names();
    return std::size_t(std::ranges::find(names, name) - names.begin());
}
battery::Kinetics wells_at(const chance::Members& members, double value) {
    std::vector<double> values(members.world().names().size(), 0.5);
    values[place_of(members, "pack/main/softness")] = value;
    return members.world().lived(values).kinds.front().model->kinetics;
}

TEST(drawn_softness, goes_from_the_soft_end_to_the_hard_one_as_its_value_grows) {
    const auto members = members_of();
    EXPECT_NEAR(wells_at(members, 0.5).available.value(), 0.465, 1e-12);
    EXPECT_NEAR(wells_at(members, 0.5).rate * hour, 0.87, 1e-12);
    EXPECT_NEAR(wells_at(members, 0.95).available.value(), 0.380, 1e-12);
    EXPECT_NEAR(wells_at(members, 0.95).rate * hour, 0.817, 1e-12);
    EXPECT_NEAR(wells_at(members, 0.05).available.value(), 0.683, 1e-12);
    EXPECT_NEAR(wells_at(members, 0.05).rate * hour, 0.404, 1e-12);
}

// A label that tells more than one row, or another load: every other value stays as it is.
TEST(drawn_softness, leaves_every_other_value_as_it_was_to_the_last_bit) {
    const auto drawn = members_of();
    const auto told = members_of("rates = [{ charge = \"80 Ah\", over = \"5 h\" }]");
    const auto with_a_lamp = members_of("", R"([[load]]
name = "lamp"
from = "12V"
power = "5 W"
evidence = "metered"
)");
    EXPECT_EQ(place_of(told, "pack/main/softness"), told.world().names().size());
    ASSERT_EQ(drawn.world().names().size(), told.world().names().size() + 1);
    for (const auto* other : {&told, &with_a_lamp})
        for (const std::string& name : drawn.world().names()) {
            const std::size_t there = place_of(*other, name);
            if (other == &told && name == "pack/main/softness") continue;
            ASSERT_LT(there, other->world().names().size()) << name;
            for (int number = 0; number < drawn.count(); number += 7)
                ASSERT_EQ(drawn.values(number)[place_of(drawn, name)], other->values(number)[there])
                    << name;
        }
}

TEST(drawn_softness, a_harder_pack_never_lasts_longer) {
    const auto members = members_of();
    const auto& world = members.world();
    const std::size_t place = place_of(members, "pack/main/softness");
    Duration shortest_gain = 100.0 * hour;
    for (int number = 0; number < members.count(); number += 3) {
        const auto of = members.values(number);
        std::vector<double> values(of.begin(), of.end());
        Duration before = 100.0 * hour;
        Duration softest{};
        for (const double value : {0.02, 0.2, 0.4, 0.6, 0.8, 0.98}) {
            values[place] = value;
            const auto course = world.run(world.lived(values), world.packs(), {},
                                          {.trace = false, .after_failure = false});
            EXPECT_LE(course.lasts / second, before / second + 1e-6) << number << " at " << value;
            before = course.lasts;
            if (value < 0.1) softest = course.lasts;
        }
        shortest_gain = std::min(shortest_gain, softest - before);
    }
    EXPECT_GT(shortest_gain, 10.0 * minute);
}

TEST(drawn_softness, side_by_side_members_end_as_by_the_clock) {
    const auto members = members_of();
    const auto asked = chance::as_it_is(members.world());
    const auto ends = members.ends(asked);
    for (int number = 0; number < members.count(); ++number)
        ASSERT_EQ(ends[std::size_t(number)], members.end_of(number, asked)) << number;
}

}  // namespace
