#include "answers/answer.hpp"

#include <limits>

namespace {

using namespace answers;
using scenario::Severity;

PinnedFinding finding(Severity severity, std::string text, std::optional<units::Duration> at = {}) {
    return {.finding = {.severity = severity,
                        .where = {},
                        .text = std::move(text),
                        .mend = {},
                        .source = {}},
            .at = at};
}

TEST(answer, a_number_that_is_not_finite_becomes_a_reason) {
    const Value value = quantity_or_reason(
        {.value = std::numeric_limits<double>::quiet_NaN(), .unit = "h", .shown = "nan h"},
        "no loads");
    ASSERT_TRUE(std::holds_alternative<Absent>(value.held));
    EXPECT_EQ(std::get<Absent>(value.held).reason, "no loads");
    EXPECT_TRUE(std::holds_alternative<Quantity>(
        quantity_or_reason({.value = 1.0, .unit = "h", .shown = "1 h"}, "no loads").held));
}

TEST(answer, a_path_reaches_into_members) {
    const Members members{
        {.key = "survives", .label = "", .value = {true}},
        {.key = "energy",
         .label = "",
         .value = {
             Members{{.key = "loads", .label = "", .value = {Quantity{1.0, "W.h", "1 Wh"}}}}}}};
    ASSERT_NE(value_at(members, "energy.loads"), nullptr);
    EXPECT_EQ(std::get<Quantity>(value_at(members, "energy.loads")->held).unit, "W.h");
    EXPECT_EQ(value_at(members, "energy.sun"), nullptr);
    EXPECT_EQ(value_at(members, "survives.loads"), nullptr);
    EXPECT_EQ(value_at(members, "lasts"), nullptr);
}

TEST(answer, findings_are_sorted_worst_first_then_by_time) {
    std::vector<PinnedFinding> findings{finding(Severity::note, "a note", 1.0 * units::hour),
                                        finding(Severity::stop, "late stop", 9.0 * units::hour),
                                        finding(Severity::caution, "a caution"),
                                        finding(Severity::stop, "early stop", 2.0 * units::hour),
                                        finding(Severity::stop, "stop at no time")};
    sort_by_weight(findings);
    std::vector<std::string> order;
    for (const auto& pinned : findings) {
        order.emplace_back(pinned.finding.text);
    }
    EXPECT_THAT(order, testing::ElementsAre("stop at no time", "early stop", "late stop",
                                            "a caution", "a note"));
}

TEST(answer, only_a_stop_stands_in_the_way) {
    Answer answer;
    answer.findings = {finding(Severity::caution, "close")};
    EXPECT_FALSE(holds_a_stop(answer));
    answer.findings.push_back(finding(Severity::stop, "no"));
    EXPECT_TRUE(holds_a_stop(answer));
}

}  // namespace
