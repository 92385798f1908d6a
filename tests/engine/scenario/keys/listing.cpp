#include "scenario/keys/listing.hpp"

#include <algorithm>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"

namespace {

using scenario::ListedKey;

std::vector<ListedKey> listing_of(std::string_view text,
                                  const scenario::Overrides& overrides = {}) {
    const auto read = scenario::read_scenario(text, "plan.toml", overrides);
    EXPECT_TRUE(read.has_value());
    return read ? scenario::listing(*read) : std::vector<ListedKey>{};
}

ListedKey at(const std::vector<ListedKey>& listed, std::string_view key) {
    const auto found = std::ranges::find(listed, key, &ListedKey::key);
    EXPECT_NE(found, listed.end()) << key;
    return found == listed.end() ? ListedKey{} : *found;
}

TEST(listing, tells_what_the_file_gives_and_on_which_line) {
    const auto listed = listing_of(sample::ice_storm);
    const ListedKey capacity = at(listed, "pack.main.capacity");
    EXPECT_EQ(capacity.value, "\"100 Ah\"");
    EXPECT_TRUE(capacity.given);
    EXPECT_EQ(capacity.origin, "given");
    EXPECT_EQ(capacity.line, 17);
    EXPECT_EQ(capacity.limits, "from 0.5 Ah to 10000 Ah");
    EXPECT_EQ(capacity.described, "pack.capacity");
    EXPECT_EQ(at(listed, "outage.starts").value, "2026-01-14T18:00:00");
    EXPECT_EQ(at(listed, "load.refrigerator.metered.over").value, "\"31 h\"");
    EXPECT_EQ(at(listed, "load.refrigerator.metered.over").described, "load.metered.over");
    EXPECT_EQ(at(listed, "panel[0].power").value, "\"100 W\"");
    EXPECT_EQ(at(listed, "format").value, "1");
}

TEST(listing, tells_what_holds_where_the_file_is_silent) {
    const auto listed = listing_of(sample::ice_storm);
    const ListedKey resistance = at(listed, "pack.main.resistance");
    EXPECT_FALSE(resistance.given);
    EXPECT_EQ(resistance.line, 0);
    EXPECT_EQ(resistance.origin, "silent: assumed; the answers give the figure they take");
    EXPECT_EQ(at(listed, "pack.expansion.capacity").origin, "silent: as in the first pack");
    EXPECT_EQ(at(listed, "pack.expansion.capacity").value, "\"100 Ah\"");
    EXPECT_EQ(at(listed, "load.refrigerator.count").value, "1");
    EXPECT_EQ(at(listed, "load.cabin lights.days").origin, "silent: every day");
}

TEST(listing, names_the_override_that_speaks) {
    const auto listed = listing_of(
        sample::ice_storm, {{"pack.expansion.count", "4"}, {"outage.room_temperature", "18 degC"}});
    const ListedKey count = at(listed, "pack.expansion.count");
    EXPECT_EQ(count.value, "4");
    EXPECT_TRUE(count.given);
    EXPECT_EQ(count.origin, "given by --set pack.expansion.count=4");
    EXPECT_EQ(count.line, 0);
    EXPECT_EQ(count.limits, "a whole number from 0 to 64");
    EXPECT_EQ(count.described, "pack.count");
    EXPECT_EQ(at(listed, "outage.room_temperature").origin,
              "given by --set outage.room_temperature=18 degC");
    EXPECT_EQ(at(listed, "pack.main.capacity").line, 17);
}

TEST(listing, every_key_it_names_can_be_set) {
    for (const ListedKey& key : listing_of(sample::every_key)) {
        if (key.given && key.key.find('.') != std::string::npos) {
            const auto again =
                scenario::read_scenario(sample::every_key, "plan.toml", {{key.key, key.value}});
            EXPECT_TRUE(again.has_value())
                << key.key << " = " << key.value
                << testing::PrintToString(again ? units::Errors{} : again.error());
        }
    }
}

}  // namespace
