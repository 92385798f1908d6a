// What is written in the place of a table, and keys that no table has.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"
#include "scenario/file/tables.hpp"

namespace {

using testing::HasSubstr;
using testing::SizeIs;
using told::hint;
using told::read;
using told::with;

TEST(table, what_belongs_together_is_written_as_the_table_it_is) {
    EXPECT_EQ(hint(with("metered = \"1.9 kWh / 31 h\"")),
              "write {energy = \"1.9 kWh\", over = \"31 h\"}");
    EXPECT_EQ(hint(with("metered = {energy = \"1.9 kWh\", over = \"31 h\"}")), "it was taken");
    EXPECT_EQ(hint(with("metered = \"1 kWh/d\"")), "write {energy = \"1 kWh\", over = \"1 d\"}");
    EXPECT_EQ(hint(with("metered = {energy = \"1 kWh\", over = \"1 d\"}")), "it was taken");
    EXPECT_EQ(hint(with("nameplate = \"120 V, 1.5 A\"")),
              "write {voltage = \"120 V\", current = \"1.5 A\"}");
    EXPECT_EQ(hint(with("nameplate = {voltage = \"120 V\", current = \"1.5 A\"}")), "it was taken");
    EXPECT_EQ(hint(with("power = \"60 W\"\nruns = \"15 min / 45 min\"")),
              "write {on = \"15 min\", every = \"45 min\"}");
    EXPECT_THAT(hint(with("power = \"60 W\"\nruns = \"often\"")), HasSubstr("such as {on"));
}

TEST(table, an_unknown_key_is_warned_of_and_the_nearest_known_one_offered) {
    const auto plan = read(sample::smallest(
        "[inverter]\ncontinuous = \"2400 W\"\nideling = \"18 W\"\ncolour = \"red\"\n"));
    ASSERT_THAT(plan.warnings, SizeIs(2));
    EXPECT_EQ(plan.warnings[0].where, "inverter.ideling");
    EXPECT_EQ(plan.warnings[0].line, 11);
    EXPECT_EQ(plan.warnings[1].where, "inverter.colour");
    const auto typo =
        read(sample::smallest("[inverter]\ncontinuous = \"2400 W\"\nsurgelasts = \"1 s\"\n"));
    EXPECT_EQ(typo.warnings.at(0).remedy, "did you mean surge_lasts?");
}

TEST(table, an_unknown_table_is_warned_of) {
    const auto plan = read(sample::smallest("[inverer]\ncontinuous = \"2400 W\"\n"));
    ASSERT_THAT(plan.warnings, SizeIs(1));
    EXPECT_EQ(plan.warnings[0].remedy, "did you mean inverter?");
}

}  // namespace
