#include "answers/checked.hpp"

#include <gtest/gtest.h>

namespace {

using namespace answers;
using scenario::Severity;

// 2028 is a leap year: divisible by 4, no century.
TEST(checked, dates_follow_the_calendar_whatever_the_hour) {
    const auto evening = *units::read_local_time("2028-02-29T23:59");
    EXPECT_EQ(date_in_words(evening), "29 February 2028");
    EXPECT_EQ(date_in_iso(evening), "2028-02-29");
    EXPECT_EQ(date_in_words(evening + 1.0 * units::minute), "1 March 2028");
}

TEST(checked, volts_have_two_decimals_also_below_one) {
    EXPECT_EQ(in_volts(0.284 * units::volt), "0.28 V");
    EXPECT_EQ(in_volts(13.0 * units::volt), "13.00 V");
}

TEST(checked, findings_become_sentences_worst_first) {
    const auto pinned = as_sentences({{Severity::note, "packs", "they are warm", "", ""},
                                      {Severity::stop, "packs", "they freeze", "warm them", ""}});
    ASSERT_EQ(pinned.size(), 2U);
    EXPECT_EQ(pinned[0].finding.text, "They freeze.");
    EXPECT_EQ(pinned[0].finding.mend, "Warm them.");
    EXPECT_EQ(pinned[1].finding.text, "They are warm.");
    EXPECT_EQ(pinned[1].finding.mend, "");
}

}  // namespace
