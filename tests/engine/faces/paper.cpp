#include "faces/paper.hpp"

#include "faces/pictures/builds_drawing.hpp"
#include "words/catalogue.hpp"

namespace {

using namespace faces;

const words::Catalogue& german() {
    return *words::catalogue_of("de");
}

TEST(paper, what_is_left_out_is_counted) {
    EXPECT_EQ(in_english(paper::rows_left_out(1)), "One more row: --as csv has it.");
    EXPECT_EQ(in_english(paper::rows_left_out(7)), "7 more rows: --as csv has them.");
    EXPECT_EQ(in_english(paper::builds_left_out(3)), "3 more stand in the table of builds.");
}

TEST(paper, a_build_of_the_list_says_what_it_is) {
    const auto line = [](bool answers, bool of_file) {
        const answers::BuildPoint point{.packs = 2, .panels = 1};
        return in_english(paper::build(weight_or_price(40.5, "kg"), packs_and_panels(point),
                                       "75 times in 100", answers, of_file));
    };
    EXPECT_EQ(line(false, false), "40.5 kg: 2 packs, 1 panel, 75 times in 100");
    EXPECT_EQ(line(true, false), "40.5 kg: 2 packs, 1 panel, 75 times in 100 (large: the answer)");
    EXPECT_EQ(line(false, true), "40.5 kg: 2 packs, 1 panel, 75 times in 100 (as the file has it)");
    EXPECT_EQ(line(true, true),
              "40.5 kg: 2 packs, 1 panel, 75 times in 100 (large: the answer; as the file has it)");
}

// 152 kg are 335.1 lb [NIST SP 811].
TEST(paper, a_price_has_no_unit_and_a_weight_has_that_of_the_reader) {
    EXPECT_EQ(in_english(weight_or_price(3600.0, "1")), "3600");
    EXPECT_EQ(words::in({.us_units = true}, weight_or_price(152.0, "kg")), "152 kg (335 lb)");
    EXPECT_EQ(words::in(*words::language("de"), weight_or_price(40.5, "kg")), "40,5 kg");
}

TEST(paper, all_of_it_is_said_in_german) {
    for (const words::Said& said : {paper::rows_left_out(2),
                                    paper::working(),
                                    paper::section_of_working(),
                                    paper::quantity(),
                                    paper::formula(),
                                    paper::value_from(),
                                    paper::assumed(),
                                    paper::source(),
                                    paper::fault("x"),
                                    paper::wiring(),
                                    paper::wiring_of("x"),
                                    paper::too_long_for_the_card(),
                                    paper::shorten_names(),
                                    paper::what_bars_mean(),
                                    paper::what_shares_mean(),
                                    paper::what_days_mean(),
                                    paper::what_builds_mean("x"),
                                    paper::how_it_comes_up("x"),
                                    paper::how_sure_by_weight(),
                                    paper::how_sure_by_price(),
                                    paper::the_build(),
                                    paper::builds_left_out(2),
                                    paper::what(),
                                    paper::low(),
                                    paper::likely(),
                                    paper::high()})
        EXPECT_FALSE(german().text_of(*said.saying, 1).empty()) << said.saying->english;
}

}  // namespace
