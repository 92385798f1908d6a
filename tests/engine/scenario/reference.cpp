#include "scenario/reference.hpp"

#include <algorithm>
#include <gmock/gmock.h>
#include <set>

#include <gtest/gtest.h>

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
        EXPECT_LE(one.means.size(), 100U) << one.key;
        EXPECT_FALSE(one.means.ends_with('.')) << one.key;
    }
    EXPECT_GE(seen.size(), 230U);
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
