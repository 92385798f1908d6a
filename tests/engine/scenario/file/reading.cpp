#include "scenario/file/reading.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/told.hpp"

namespace {

using testing::HasSubstr;
using told::errors_of;
using told::with;

TEST(reading, misspelt_words_are_told_beside_other_errors) {
    const units::Errors all = errors_of(with("power = \"60\"\npriorty = 2"));
    ASSERT_EQ(all.size(), 2U);
    EXPECT_THAT(all[1].where, HasSubstr("priorty"));
    EXPECT_THAT(all[1].remedy, HasSubstr("did you mean priority?"));
}

TEST(reading, the_nearest_word_is_a_slip_of_the_pen_away) {
    const std::vector<std::string_view> known{"capacity", "charge", "chemistry", "count"};
    EXPECT_EQ(scenario::nearest_word("capcity", known), "capacity");  // one letter left out
    EXPECT_EQ(scenario::nearest_word("chareg", known), "charge");     // two changed places
    EXPECT_EQ(scenario::nearest_word("CHEMISTRY", known), "chemistry");
    EXPECT_EQ(scenario::nearest_word("window", known), "");
    EXPECT_EQ(scenario::nearest_word("cap", known), "capacity");  // cut short
    // "name" is two letters from "wave", which is where "waveform" begins.
    EXPECT_EQ(scenario::nearest_word("wave", {"name", "waveform"}), "waveform");
    EXPECT_EQ(scenario::nearest_word("nam", {"name", "nameplate"}), "name");
}

TEST(reading, what_is_refused_has_its_path_owner_and_line) {
    const auto document = scenario::read_document("a = 1\n[[pack]]\nname = \"main\"\n", "");
    ASSERT_TRUE(document);
    const scenario::Node& packs = *document->find("pack");
    const scenario::Spot root{.node = &*document, .path = ""};
    scenario::Spot pack = root.at(packs, "pack").at(packs.items[0], 0);
    pack.owner = "pack \"main\"";
    scenario::Reading reading("plan.toml", {"capacity"});
    reading.refuse(pack.at(*packs.items[0].find("name"), "name"), "found no light", "give some");
    reading.demand(pack, "voltage", "\"12 V\"");
    reading.demand(pack, "capacity", "\"100 Ah\"");  // stood on a line that was lost
    ASSERT_EQ(reading.errors().size(), 2U);
    EXPECT_EQ(reading.errors()[0].where, "pack[0].name");
    EXPECT_EQ(reading.errors()[0].line, 3);
    EXPECT_EQ(reading.errors()[0].found, "in pack \"main\", found no light");
    EXPECT_EQ(reading.errors()[1].where, "pack[0].voltage");
    EXPECT_EQ(reading.errors()[1].remedy, "add a line such as voltage = \"12 V\"");
}

}  // namespace
