#include "scenario/keys/reference.hpp"

#include <algorithm>
#include <gmock/gmock.h>
#include <set>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "scenario/file/open_end.hpp"
#include "scenario/keys/most.hpp"
#include "units/text.hpp"

namespace {

using scenario::reference;
using scenario::ToldKey;
using testing::HasSubstr;

const ToldKey& told(const std::string& key, const std::string& of = "") {
    const auto found = std::ranges::find_if(
        reference(), [&](const ToldKey& one) { return one.key == key && one.of == of; });
    EXPECT_NE(found, reference().end()) << key;
    return *found;
}

TEST(reference, tells_a_key_whole) {
    const auto& capacity = told("pack.capacity");
    EXPECT_THAT(capacity.means, HasSubstr("charge"));
    EXPECT_EQ(capacity.example, "\"100 Ah\"");
    EXPECT_EQ(capacity.limits, "from 0.5 Ah to 10000 Ah");
    EXPECT_TRUE(capacity.required);
    EXPECT_EQ(told("charger.hours").silent, "at all hours");
}

TEST(reference, goes_into_tables_lists_and_each_kind_of_link) {
    EXPECT_TRUE(told("pack.two_well.total").required);
    EXPECT_TRUE(told("pack.rates.over").required);
    EXPECT_EQ(told("circuit.links.fuse", "fuse").example, "\"7.5 A\"");
    EXPECT_EQ(told("circuit.links.opens.most", "fuse").example, "\"5 s\"");
    EXPECT_THAT(told("circuit.links.voltage", "switch").means, HasSubstr("voltage"));
}

TEST(reference, names_no_key_twice_and_says_what_each_takes) {
    std::set<std::string> seen;
    for (const ToldKey& one : reference()) {
        EXPECT_TRUE(seen.insert(one.of + ' ' + one.key).second) << one.key;
        EXPECT_FALSE(one.example.empty()) << one.key;
        EXPECT_LE(in_english(one.means).size(), 100U) << one.key;
        EXPECT_FALSE(in_english(one.means).ends_with('.')) << one.key;
    }
    EXPECT_GE(seen.size(), 230U);
}

TEST(reference, describes_a_key_for_the_screens_too) {
    const auto& chemistry = told("pack.chemistry");
    EXPECT_EQ(chemistry.on_screen.label, "Kind");
    EXPECT_EQ(chemistry.group, "Packs");
    ASSERT_EQ(chemistry.shape.choices.size(), 4U);
    EXPECT_EQ(chemistry.shape.choices.front().value, "lifepo4");
    EXPECT_EQ(chemistry.shape.choices.front().label, "lithium iron phosphate");
    EXPECT_EQ(told("load.metered.over").on_screen.units.front(), "h");
    EXPECT_EQ(told("load.metered.over").group, "Loads");
    EXPECT_EQ(told("title").group, "");
}

// What a screen offers, the file takes; each unit is one of the key's own kind, and each word of a
// choice that is shown has a label.
TEST(reference, offers_on_screens_what_the_file_takes) {
    for (const ToldKey& one : reference()) {
        if (one.on_screen.label.empty()) continue;
        for (const auto unit : one.on_screen.units) {
            const auto dimension = one.shape.dimension;
            const bool own = units::read_si(dimension, fmt::format("1 {}", unit)).has_value();
            const bool other =
                one.shape.or_of &&
                units::read_si(*one.shape.or_of, fmt::format("1 {}", unit)).has_value();
            EXPECT_TRUE(own || other) << one.key << ' ' << unit;
        }
        for (const auto& choice : one.shape.choices) {
            EXPECT_FALSE(choice.label.empty()) << one.key << ' ' << choice.value;
        }
        if (one.shape.kind == scenario::Shape::Kind::whole) {
            for (const auto& pick : one.on_screen.picks) {
                const int whole = std::stoi(std::string(pick.value));
                EXPECT_GE(whole, one.shape.least) << one.key;
                EXPECT_LE(whole, one.shape.most) << one.key;
            }
        }
    }
}

// What counts the same thing has the same limit wherever it is given.
TEST(reference, limits_of_the_same_thing_are_the_same) {
    using Same = std::vector<std::string>;
    for (const Same& same :
         {Same{"pack.count", "log.count"}, Same{"outage.room_temperature", "load.room"},
          Same{"load.days", "charger.days"}, Same{"load.days", "panel.covered_days"},
          Same{"pack.weight", "panel.weight"}, Same{"pack.weight", "circuit.weight"},
          Same{"pack.price", "panel.price"}, Same{"pack.price", "circuit.price"},
          Same{"load.power_factor", "load.nameplate.power_factor"},
          Same{"load.power_factor", "charger.power_factor"},
          Same{"storage.temperature", "outage.battery_temperature"},
          Same{"inverter.off", "load.hours"}, Same{"panel.out", "load.hours"},
          Same{"charger.hours", "load.hours"}}) {
        // Some may be none, others not: "from 0 to 64", "from 1 to 64".
        const auto most = [](const ToldKey& one) {
            const std::string limits(one.limits);
            const auto to = limits.find(" to ");
            return to == std::string::npos ? limits : limits.substr(to);
        };
        EXPECT_EQ(most(told(same.front())), most(told(same.back())))
            << same.front() << " and " << same.back();
    }
    EXPECT_EQ(told("pack.count").shape.most, scenario::most_packs);
    EXPECT_EQ(told("pack").shape.most_items, std::size_t(scenario::most_packs));
    EXPECT_EQ(told("panel.count").shape.most, scenario::most_panels);
    EXPECT_EQ(told("panel.in_series").shape.most, scenario::most_panels);
    EXPECT_EQ(double(told("load.days").shape.most) * units::day, scenario::longest_outage());
    EXPECT_THAT(told("outage.lasts").limits, HasSubstr(units::print(scenario::longest_outage())));
}

// The tables that have stood here from the beginning; newer ones join as their meanings are told.
TEST(reference, says_what_each_key_of_these_tables_means) {
    for (const ToldKey& one : reference()) {
        const auto table = one.key.substr(0, one.key.find('.'));
        const bool told_here = table == "place" || table == "goal" || table == "charger" ||
                               table == "case" || table == "panel" || table == "circuit" ||
                               table == "charge_controller" || table == "storage" || table == "log";
        if (told_here) {
            EXPECT_FALSE(one.means.empty()) << one.key;
        }
    }
}

}  // namespace
