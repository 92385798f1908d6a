// Keys of [[log]].
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/log_sample.hpp"
#include "scenario/file/print.hpp"
#include "units/text.hpp"

namespace {

using log_sample::every_kind;
using log_sample::read_log;
using scenario::Happened;
using testing::HasSubstr;

TEST(log_keys, every_kind_of_entry_is_read) {
    using namespace units;
    const auto log = read_log(every_kind);
    ASSERT_EQ(log.size(), 11U);
    EXPECT_EQ(units::print(log[0].at), "2026-01-15T21:30:00");
    EXPECT_EQ(log[0].reads->volts, 12.9 * volt);
    EXPECT_EQ(log[0].reads->decimals, 2);
    EXPECT_EQ(*log[0].under->power, 150.0 * watt);
    EXPECT_EQ(*log[1].rested, 8.0 * hour);
    EXPECT_EQ(*log[2].shows, StateOfCharge(0.62));
    EXPECT_DOUBLE_EQ(log[3].metered->energy / watt_hour, 1150.0);
    EXPECT_EQ(*log[4].sun->taken, 420.0 * watt_hour);
    EXPECT_EQ(log[4].sky, scenario::SeenSky::grey);
    EXPECT_EQ(*log[5].temperature, celsius(-11.0));
    EXPECT_EQ(log[6].happened, Happened::switched_off);
    EXPECT_EQ(log[7].count, 1);
    EXPECT_EQ(log[9].by, log[0].at + 38.5 * hour);
    EXPECT_EQ(log[10].strikes, log[2].at);
}

TEST(log_keys, what_is_printed_reads_back_to_the_same_entries) {
    const auto log = read_log(every_kind);
    std::string printed;
    for (const auto& entry : log)
        printed += scenario::print(entry);
    const auto again = read_log(printed);
    ASSERT_EQ(again.size(), log.size());
    for (std::size_t i = 0; i < log.size(); ++i)
        EXPECT_EQ(scenario::print(again[i]), scenario::print(log[i]));
    EXPECT_THAT(printed, HasSubstr("reads = \"12.90 V\""));
}

}  // namespace
