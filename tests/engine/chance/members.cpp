#include "chance/members.hpp"

#include <algorithm>

#include "scenario/file/read.hpp"

namespace {

using namespace units;
using chance::Members;
using chance::World;

struct Asked {
    int packs = 2;
    int panels = 2;
    std::string lasts = "3 d";
    std::string loads = R"(
[[load]]
name = "freezer"
from = "ac"
power = "90 W"
runs = { on = "15 min", every = "45 min" }
evidence = "label"
motor = { kind = "compressor_rsir" }
[[load]]
name = "lamps"
from = "12V"
power = "12 W"
hours = ["06:30-08:00", "16:30-22:30"]
evidence = "metered"
[[load]]
name = "router"
from = "ac"
power = "14 W"
evidence = "guess"
)";
    std::string more = "";
};

scenario::Scenario scenario_of(const Asked& asked) {
    const std::string text =
        "format = 1\ntitle = \"Members\"\n[outage]\nstarts = 2026-03-05T18:00:00\nlasts = \"" +
        asked.lasts + R"("
cause = "storm"
battery_temperature = "12 degC"
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
rated_over = "5 h"
count = )" +
        std::to_string(asked.packs) +
        R"(
[inverter]
continuous = "2000 W"
surge = "4000 W"
[[panel]]
power = "100 W"
tilt = "45 deg"
placement = "fixed"
azimuth = "180 deg"
count = )" +
        std::to_string(asked.panels) + "\n" + asked.loads + asked.more;
    const auto read = scenario::read_scenario(text, "members.toml", {});
    if (!read)
        throw std::runtime_error(read.error().front().where + ": " + read.error().front().found);
    return read->scenario;
}

World world_of(const scenario::Scenario& scenario) {
    auto ready = outage::make_ready(scenario);
    if (!ready) throw std::runtime_error(words::in_english(ready.error().front().found));
    auto world = World::of(scenario, {}, std::make_shared<const outage::Ready>(std::move(*ready)));
    if (!world) throw std::runtime_error(words::in_english(world.error().front().found));
    return std::move(*world);
}

std::vector<chance::MemberEnd> ends_with(const Members& members, int packs, unsigned threads = 0) {
    auto asked = chance::as_it_is(members.world());
    asked.packs = packs;
    return members.ends(asked, threads);
}

Members members_of(const Asked& asked, int blocks = 1, std::uint64_t seed = 1) {
    return Members(world_of(scenario_of(asked)), seed, blocks);
}

// Value by the name of its unknown.
std::map<std::string, double> named(const Members& members, int number) {
    std::map<std::string, double> values;
    const auto& names = members.world().names();
    for (std::size_t i = 0; i < names.size(); ++i)
        values[names[i]] = members.values(number)[i];
    return values;
}

TEST(members, are_the_same_to_the_last_bit_for_any_number_of_threads) {
    const auto members = members_of({});
    const auto one = ends_with(members, 2, 1);
    EXPECT_EQ(one, ends_with(members, 2, 2));
    EXPECT_EQ(one, ends_with(members, 2, 5));
    EXPECT_NE(one, ends_with(members_of({}, 1, 2), 2));
}

TEST(members, more_of_them_begin_with_the_same_ones) {
    const auto few = ends_with(members_of({}, 1), 2);
    const auto many = ends_with(members_of({}, 2), 2);
    EXPECT_TRUE(std::equal(few.begin(), few.end(), many.begin()));
}

// An edit leaves every other unknown to the last bit.
TEST(members, an_edit_leaves_the_others_alone) {
    const Asked whole;
    Asked turned = whole;
    const auto at = whole.loads.find("[[load]]\nname = \"lamps\"");
    turned.loads = whole.loads.substr(at) + whole.loads.substr(0, at);
    Asked fewer = whole;
    fewer.loads = whole.loads.substr(0, at);
    Asked bigger = whole;
    bigger.packs = 5;
    bigger.panels = 7;
    Asked other_name = whole;
    other_name.loads.replace(other_name.loads.find("lamps"), 5, "torch");
    Asked longer = whole;
    longer.lasts = "6 d";
    const auto before = members_of(whole, 2);
    for (const Asked& edited : {turned, fewer, bigger, other_name, longer}) {
        const auto after = members_of(edited, 2);
        std::size_t common = 0;
        for (const int number : {0, 1, 63, 64, 127}) {
            const auto now = named(after, number);
            for (const auto& [name, value] : named(before, number))
                if (const auto found = now.find(name); found != now.end()) {
                    EXPECT_EQ(found->second, value) << name;
                    ++common;
                }
        }
        EXPECT_GT(common, 5U * 12U);
    }
    // The file's order does not matter for the ends either.
    const auto ends = ends_with(before, 2);
    const auto ends_turned = ends_with(members_of(turned, 2), 2);
    for (std::size_t i = 0; i < ends.size(); ++i)
        EXPECT_EQ(ends[i].lasts, ends_turned[i].lasts);
}

// The hungry end of each unknown alone never makes it last longer.
TEST(members, a_greater_value_never_lasts_longer) {
    const World world = world_of(scenario_of({.packs = 3, .lasts = "4 d"}));
    const auto lasts = [&](const std::vector<double>& values) {
        const auto lived = world.lived(values);
        return world.run(lived, 3, lived.sun, {.trace = false, .after_failure = false}).lasts;
    };
    const Members members(world, 3, 1);
    for (const int number : {0, 9, 40}) {
        const std::vector<double> base(members.values(number).begin(),
                                       members.values(number).end());
        for (std::size_t i = 0; i < base.size(); ++i) {
            Duration before = 1e9 * second;
            for (const double value : {0.02, 0.3, 0.5, 0.8, 0.98}) {
                auto values = base;
                values[i] = value;
                const Duration now = lasts(values);
                EXPECT_LE(now, before + 1e-3 * second) << world.names()[i] << " at " << value;
                before = now;
            }
        }
    }
}

TEST(members, a_pack_or_a_panel_more_or_a_load_less_never_ends_sooner) {
    const auto base = ends_with(members_of({}), 2);
    const auto not_sooner = [&](const std::vector<chance::MemberEnd>& ends) {
        for (std::size_t i = 0; i < base.size(); ++i)
            EXPECT_GE(ends[i].lasts, base[i].lasts - 1e-3 * second) << i;
    };
    not_sooner(ends_with(members_of({}), 3));
    not_sooner(ends_with(members_of({.panels = 3}), 2));
    Asked fewer;
    fewer.loads = fewer.loads.substr(0, fewer.loads.find("[[load]]\nname = \"router\""));
    not_sooner(ends_with(members_of(fewer), 2));
}

// With every value in its middle and full packs the member is the likely course, but for the sky.
TEST(members, the_middle_of_everything_is_the_likely_course) {
    for (const std::string more :
         {"", "[[pack]]\nname = \"second\"\nlead_resistance = \"9 mohm\"\n"}) {
        const World world = world_of(scenario_of({.packs = 1, .panels = 0, .more = more}));
        std::vector<double> middle(world.names().size(), 0.5);
        for (std::size_t i = 0; i < middle.size(); ++i)
            if (world.names()[i].ends_with("/start")) middle[i] = 1e-12;
        const auto& ready = world.ready();
        const auto lived = world.lived(middle);
        const auto of_member = world.run(lived, world.packs(), lived.sun, {});
        const auto likely = outage::run(ready, outage::End::likely);
        EXPECT_NEAR(of_member.lasts / hour, likely.lasts / hour, 1e-6);
        EXPECT_LT(likely.lasts, ready.outage.lasts);
    }
}

// One LiFePO4 of 100 Ah at 25 degC, 20 W at 12 V from a label, nothing else. The ratios of the
// times come from the spreads alone: sqrt(.1741^2 + .05^2 + .0058^2 + .03^2 x .36) = .1818 of the
// logarithm with an age told; a sample of 1,200,000 by another program gives .7915 and 1.2619, and
// .9884 for the middle over that of the likely figures.
TEST(members, one_steady_load_from_a_label_spreads_as_worked_by_hand) {
    struct Row {
        const char* evidence;
        double tenth, ninth;
    };
    for (const auto& [evidence, tenth, ninth] :
         {Row{"label", 0.792, 1.262}, Row{"guess", 0.663, 1.508}}) {
        const std::string text = R"(format = 1
title = "One load"
[outage]
starts = 2026-03-05T00:00:00
lasts = "20 d"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
rated_over = "5 h"
resistance = "4 mohm"
age = "fresh"
[[load]]
name = "steady"
from = "12V"
power = "20 W"
evidence = ")" + std::string(evidence) +
                                 "\"\n";
        const auto read = scenario::read_scenario(text, "one.toml", {});
        ASSERT_TRUE(read) << read.error().front().found;
        const Members members(world_of(read->scenario), 1, 64);
        const auto figures = members.figures(ends_with(members, 1), Probability(0.9));
        EXPECT_NEAR(figures.nine_in_ten / figures.half, tenth, 0.01 * tenth);
        EXPECT_NEAR(figures.one_in_ten / figures.half, ninth, 0.01 * ninth);
        const auto likely = outage::run(members.world().ready(), outage::End::likely);
        EXPECT_NEAR(figures.half / likely.lasts, 0.988, 0.01);
    }
}

}  // namespace
