#include "wiring/tables.hpp"

#include <algorithm>

#include "wiring/conductor.hpp"

namespace {

using namespace units;

TEST(tables, every_row_says_where_it_comes_from) {
    for (const auto& row : wiring::gauge_rows()) {
        EXPECT_FALSE(row.source.empty());
    }
    for (const auto& row : wiring::metric_rows()) {
        EXPECT_FALSE(row.source.empty());
    }
    for (const auto& row : wiring::fuse_families()) {
        EXPECT_FALSE(row.source.empty()) << row.name;
    }
    for (const auto& row : wiring::connector_rows()) {
        EXPECT_FALSE(row.source.empty()) << row.name;
    }
    for (const auto table : {wiring::AmpacityTable::boat, wiring::AmpacityTable::building,
                             wiring::AmpacityTable::cord}) {
        EXPECT_FALSE(wiring::ampacity_columns(table).source.empty());
    }
}

// What stands outside the brackets of a reference.
std::string own_words_of(std::string text) {
    for (auto open = text.find('['); open != text.npos; open = text.find('['))
        text.erase(open, text.find(']') - open + 1);
    return text;
}

void expect_a_saying_where_words_are(const words::Said& source) {
    const bool taken_as_it_is = source.saying == &words::saying<"{text}">;
    const std::string own = own_words_of(std::string(source));
    EXPECT_TRUE(!taken_as_it_is || std::ranges::none_of(own, [](char letter) {
        return letter >= 'a' && letter <= 'z';
    })) << own;
}

// So that each language can say it; a section such as 400.5(A)(1) is the same in all.
TEST(tables, a_source_with_words_is_a_saying) {
    for (const auto& row : wiring::gauge_rows())
        expect_a_saying_where_words_are(row.source);
    for (const auto& row : wiring::metric_rows())
        expect_a_saying_where_words_are(row.source);
    for (const auto& row : wiring::fuse_families())
        expect_a_saying_where_words_are(row.source);
    for (const auto& row : wiring::connector_rows())
        expect_a_saying_where_words_are(row.source);
    for (const auto table : {wiring::AmpacityTable::boat, wiring::AmpacityTable::building,
                             wiring::AmpacityTable::cord})
        expect_a_saying_where_words_are(wiring::ampacity_columns(table).source);
}

TEST(tables, rows_run_from_thin_to_thick) {
    for (std::size_t i = 1; i < wiring::gauge_rows().size(); ++i) {
        EXPECT_TRUE(
            wiring::thicker(wiring::gauge_rows()[i].size, wiring::gauge_rows()[i - 1].size));
        EXPECT_LT(wiring::gauge_rows()[i].stranded, wiring::gauge_rows()[i - 1].stranded);
    }
    for (std::size_t i = 1; i < wiring::metric_rows().size(); ++i) {
        EXPECT_GT(wiring::metric_rows()[i].size, wiring::metric_rows()[i - 1].size);
        EXPECT_LT(wiring::metric_rows()[i].plain, wiring::metric_rows()[i - 1].plain);
    }
}

TEST(tables, fuse_sizes_rise_and_curves_fall) {
    ASSERT_GE(wiring::fuse_families().size(), 8U);
    for (const auto& family : wiring::fuse_families()) {
        EXPECT_TRUE(std::ranges::is_sorted(family.sizes)) << family.name;
        for (std::size_t i = 1; i < family.opens.size(); ++i) {
            EXPECT_GT(family.opens[i].ratio, family.opens[i - 1].ratio) << family.name;
            if (family.opens[i].least && family.opens[i - 1].least) {
                EXPECT_LT(*family.opens[i].least, *family.opens[i - 1].least) << family.name;
            }
            if (family.opens[i].most && family.opens[i].least) {
                EXPECT_LE(*family.opens[i].least, *family.opens[i].most) << family.name;
            }
        }
    }
}

TEST(tables, names_are_found_whatever_their_capitals) {
    ASSERT_NE(wiring::find_fuse_family("Class T"), nullptr);
    EXPECT_EQ(wiring::find_fuse_family("MRBF"), wiring::find_fuse_family("terminal"));
    EXPECT_EQ(wiring::find_fuse_family("no such fuse"), nullptr);
    ASSERT_NE(wiring::find_connector("TWO-POLE 50"), nullptr);
    EXPECT_EQ(wiring::find_connector("two-pole 50")->takes, WireSize(AmericanGauge{6}));
}

TEST(tables, what_is_from_memory_says_so) {
    EXPECT_NE(in_english(wiring::words_for(wiring::Reliability::memory)).find("confirm"),
              std::string_view::npos);
    EXPECT_TRUE(wiring::words_for(wiring::Reliability::read).empty());
}

}  // namespace
