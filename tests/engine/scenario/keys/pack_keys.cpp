// Keys of [[pack]]: what a pack takes from the first, and what people write.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using testing::HasSubstr;
using told::error_at;
using told::errors_of;
using told::hint;
using told::read;
using told::with;

TEST(pack_keys, another_pack_with_only_a_name_is_like_the_first) {
    const auto packs = read(sample::ice_storm).scenario.packs;
    EXPECT_EQ(packs[1].name, "expansion");
    EXPECT_EQ(packs[1].count, 3);
    EXPECT_EQ(packs[1].capacity, packs[0].capacity);
    EXPECT_EQ(packs[1].rated_over, packs[0].rated_over);
    EXPECT_EQ(packs[1].charge, packs[0].charge);
}

TEST(pack_keys, a_pack_of_another_size_takes_only_what_belongs_to_the_chemistry) {
    const auto packs =
        read(std::string(sample::every_key) + "[[pack]]\nname = \"small\"\ncapacity = \"35 Ah\"\n")
            .scenario.packs;
    EXPECT_EQ(packs.back().chemistry, scenario::Chemistry::agm);
    EXPECT_EQ(packs.back().usable, packs[0].usable);
    EXPECT_FALSE(packs.back().two_well);
    EXPECT_FALSE(packs.back().current_limit);
    EXPECT_FALSE(packs.back().weight);
    EXPECT_FALSE(packs.back().tested_capacity);
}

TEST(pack_keys, a_pack_of_another_chemistry_must_describe_itself) {
    const auto errors = errors_of(std::string(sample::ice_storm) +
                                  "[[pack]]\nname = \"old\"\nchemistry = \"flooded\"\n");
    EXPECT_THAT(error_at(errors, "pack[2].capacity").found, HasSubstr("in pack \"old\""));
}

TEST(pack_keys, rows_of_a_label_go_with_lead_alone) {
    const auto pack = [](const std::string& keys) { return hint(with("power = \"60 W\"", keys)); };
    const std::string rows = "rates = [{charge = \"77 Ah\", over = \"3 h\"}]\n";
    EXPECT_EQ(pack("chemistry = \"agm\"\n" + rows), "it was taken");
    EXPECT_EQ(pack("chemistry = \"flooded\"\nreserve = \"160 min\"\n"), "it was taken");
    EXPECT_THAT(pack("chemistry = \"lifepo4\"\n" + rows), HasSubstr("take them out"));
    EXPECT_THAT(pack("chemistry = \"agm\"\ntwo_well = {c = \"0.3\", k = \"0.6 1/h\", total = "
                     "\"120 Ah\"}\n" +
                     rows),
                HasSubstr("keep the rows"));
    EXPECT_THAT(pack("chemistry = \"lifepo4\"\nabsorption_per_kelvin = \"30 mV/K\"\n"),
                HasSubstr("lead-acid"));
}

TEST(pack_keys, words_for_chemistries) {
    const auto pack = [](const char* word) {
        return hint(with("power = \"60 W\"", std::string("chemistry = \"") + word + "\"\n"));
    };
    EXPECT_THAT(pack("lithium"), HasSubstr("write lifepo4"));
    EXPECT_THAT(pack("LFP"), HasSubstr("write lifepo4"));
    EXPECT_THAT(pack("lead acid"), HasSubstr("flooded"));
    EXPECT_THAT(pack("lead-acid"), HasSubstr("agm"));
    EXPECT_THAT(pack("SLA"), HasSubstr("agm"));
    for (const char* const as_on_the_label : {"AGM", "LiFePO4", "Gel", "FLOODED"})
        EXPECT_EQ(pack(as_on_the_label), "it was taken") << as_on_the_label;
}

// The hint, followed to the letter.
TEST(pack_keys, one_pulse_needs_no_brackets) {
    const auto pulse = [](const std::string& value) {
        return hint(with("power = \"60 W\"", "chemistry = \"agm\"\npulse = " + value + "\n"));
    };
    EXPECT_THAT(pulse("\"200 A\""), HasSubstr("{current = \"200 A\", for = \"5 s\"}"));
    EXPECT_EQ(pulse("{current = \"200 A\", for = \"5 s\"}"), "it was taken");
}

}  // namespace
