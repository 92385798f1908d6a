// Where keys as a person types them point.
#include "scenario/keys/place_of_key.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using testing::ElementsAre;
using testing::HasSubstr;

constexpr std::string_view text = R"(title = "two packs"
[outage]
lasts = "4 d"
[[pack]]
name = "main"
count = 1
[[pack]]
name = "expansion v1.2"
count = 3
[[load]]
name = "lamp"
runs = {on = "5 min", every = "1 h"}
)";

const scenario::Node& document() {
    static const scenario::Node made = scenario::read_document(text, "plan.toml").value();
    return made;
}

// The path and what stands there, or why there is none.
std::string at(std::string_view key) {
    const auto place = scenario::place_of_key(document(), key);
    if (!place) return units::print(place.error().front());
    return place->path + (place->value == nullptr ? " absent" : " " + place->value->text);
}

TEST(place_of_key, entries_are_named_by_name_or_number) {
    EXPECT_EQ(at("outage.lasts"), "outage.lasts 4 d");
    EXPECT_EQ(at("pack.main.count"), "pack[0].count 1");
    EXPECT_EQ(at("pack[1].count"), "pack[1].count 3");
    EXPECT_EQ(at("pack.expansion v1.2.count"), "pack[1].count 3");
    EXPECT_EQ(at("pack.\"expansion v1.2\".count"), "pack[1].count 3");
}

TEST(place_of_key, the_only_entry_needs_no_name) {
    EXPECT_EQ(at("load.runs.on"), "load[0].runs.on 5 min");
    EXPECT_EQ(at("load.lamp.runs.every"), "load[0].runs.every 1 h");
}

TEST(place_of_key, what_is_absent_is_where_it_would_be) {
    EXPECT_EQ(at("outage.cause"), "outage.cause absent");
    EXPECT_EQ(at("inverter.idle"), "inverter.idle absent");
    const auto place = scenario::place_of_key(document(), "load.lamp.motor.kind").value();
    EXPECT_THAT(place.absent, ElementsAre("motor", "kind"));
    EXPECT_EQ(place.passed.back().left_by, "motor");
}

TEST(place_of_key, what_leads_nowhere_is_refused_in_words) {
    EXPECT_THAT(at("pack.third.count"), HasSubstr("there are main, expansion v1.2"));
    EXPECT_THAT(at("pack[2].count"), HasSubstr("no such entry"));
    EXPECT_THAT(at("outage.lasts.days"), HasSubstr("'outage.lasts' is a single value"));
    EXPECT_THAT(at(""), HasSubstr("not written like a key"));
    EXPECT_THAT(at("inverter[0].idle"), HasSubstr("'inverter' is not there"));
}

}  // namespace
