#include "outage/clock/banks.hpp"

#include "outage/ready.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

std::string file(const std::string& packs, const std::string& more = "") {
    return R"(format = 1
title = "Banks"
[outage]
starts = 2026-06-19T07:00:00
lasts = "2 d"
battery_temperature = "20 degC"
)" + packs +
           R"(
[[load]]
name = "lamp"
from = "12V"
power = "20 W"
)" + more;
}

const std::string pack = R"([[pack]]
name = "main"
chemistry = "agm"
capacity = "100 Ah"
)";

Result<outage::Ready> ready_from(const std::string& text) {
    const auto read = scenario::read_scenario(text, "banks.toml", {});
    if (!read) return fail(read.error());
    return outage::make_ready(read->scenario);
}

TEST(banks, another_chemistry_on_the_bus_is_refused_by_its_key) {
    const auto ready = ready_from(
        file(pack + "[[pack]]\nname = \"other\"\ncapacity = \"80 Ah\"\nchemistry = \"flooded\"\n"));
    ASSERT_FALSE(ready);
    EXPECT_EQ(ready.error().front().where, "pack[1].chemistry");
}

TEST(banks, another_number_of_cells_on_the_bus_is_refused_by_its_key) {
    const auto ready = ready_from(
        file(pack + "[[pack]]\nname = \"other\"\ncapacity = \"80 Ah\"\nvoltage = \"25.6 V\"\n"));
    ASSERT_FALSE(ready);
    EXPECT_EQ(ready.error().front().where, "pack[1].voltage");
}

TEST(banks, a_bank_of_no_pack_is_refused) {
    const auto ready = ready_from(file(pack + "count = 0\n"));
    ASSERT_FALSE(ready);
    EXPECT_EQ(ready.error().front().where, "pack.count");
}

// Three of the first kind and two of the last: 3 + 2 = 5; to 7 two more of the last, to 4 and 2 taken
// from the last first, and one is the least.
TEST(banks, more_are_of_the_last_kind_and_fewer_are_taken_from_it_first) {
    const outage::PackKinds kinds{{.count = 3, .name = "first"}, {.count = 2, .name = "last"}};
    const auto counts = [&](int packs) {
        const auto made = outage::with_count(kinds, packs);
        return std::pair(made[0].count, made[1].count);
    };
    EXPECT_EQ(outage::count_of(kinds), 5);
    EXPECT_EQ(counts(7), std::pair(3, 4));
    EXPECT_EQ(counts(4), std::pair(3, 1));
    EXPECT_EQ(counts(2), std::pair(2, 0));
    EXPECT_EQ(counts(0), std::pair(1, 0));
}

}  // namespace
