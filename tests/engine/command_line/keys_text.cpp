#include "command_line/reference/keys_text.hpp"

#include <gmock/gmock.h>
#include <sstream>

#include <gtest/gtest.h>

#include "command_line/run.hpp"
#include "faces/page.hpp"
#include "units/quote.hpp"

namespace {

using command_line::keys_text;
using command_line::run;
using command_line::Status;
using testing::HasSubstr;

TEST(keys_text, tells_what_a_key_means_takes_and_what_holds_without_it) {
    EXPECT_EQ(*keys_text("rated_over", 80),
              "pack.rated_over\n"
              "  means    time of the even discharge over which the capacity holds\n"
              "  called   Capacity rated over (Packs)\n"
              "  takes    from 3 min to 10 d\n"
              "  unit     h, d, min, s, ms, us, wk, yr\n"
              "  write    rated_over = \"20 h\"\n"
              "  absent   assumed; the answers give the figure they take\n");
    EXPECT_EQ(*keys_text("pack.rated_over", 80), *keys_text("rated_over", 80));
}

TEST(keys_text, tells_what_a_pack_takes_from_the_first) {
    EXPECT_THAT(*keys_text("pack.capacity", 80),
                HasSubstr("absent   as in the first, of which it is required"));
    EXPECT_THAT(*keys_text("pack", 80),
                HasSubstr("what the cells are made of (required of the first)"));
    EXPECT_THAT(*keys_text("outage.starts", 80), HasSubstr("absent   refused: it is required"));
}

TEST(keys_text, names_each_unit_once_and_that_of_another_kind) {
    EXPECT_THAT(*keys_text("charger.generator_rating", 80), HasSubstr("unit     VA, kVA, MVA, W"));
    EXPECT_THAT(*keys_text("absorption_per_kelvin", 80),
                HasSubstr("unit     V, mV, kV, each before /K"));
    EXPECT_EQ(keys_text("pack.count", 80)->find("unit"), std::string::npos);
}

TEST(keys_text, of_several_tables_where_one_word_is_in_many) {
    const auto text = *keys_text("resistance", 80);
    EXPECT_THAT(text, HasSubstr("pack.resistance\n"));
    EXPECT_THAT(text, HasSubstr("circuit.links.resistance, beside fuse\n"));
    EXPECT_THAT(text, HasSubstr("circuit.links.resistance, beside connector\n"));
}

TEST(keys_text, of_a_table_is_the_table_and_a_line_for_each_of_its_keys) {
    const auto text = *keys_text("charger", 80);
    EXPECT_THAT(text, HasSubstr("write    [[charger]]"));
    EXPECT_THAT(text, HasSubstr("charger.kind: what it runs on (required)"));
}

TEST(keys_text, names_the_nearest_where_none_is_named_so) {
    EXPECT_EQ(keys_text("capasity", 80).error().front().remedy, "did you mean capacity?");
    EXPECT_EQ(keys_text("pack.chemisty", 80).error().front().remedy,
              "did you mean pack.chemistry?");
}

TEST(keys_text, keeps_to_the_width_it_is_given) {
    for (const int width : {40, 60, 80, 100}) {
        std::istringstream lines(*keys_text("", width));
        for (std::string line; std::getline(lines, line);)
            EXPECT_LE(line.size(), width) << line;
    }
}

TEST(keys, are_written_for_man_and_for_programs_as_a_whole) {
    EXPECT_THAT(run({"keys", "--as", "manual"}, {}).output,
                HasSubstr(".TH CANDLEMARK\\-SCENARIO 5"));
    EXPECT_THAT(run({"keys", "--as", "schema"}, {}).output, HasSubstr("draft-07"));
    EXPECT_THAT(run({"keys", "--as", "answer-schema"}, {}).output, HasSubstr("made_by"));
    const auto one = run({"keys", "pack", "--as", "schema"}, {});
    EXPECT_EQ(one.status, Status::unusable);
    EXPECT_THAT(one.errors, HasSubstr("leave the name out"));
    EXPECT_EQ(run({"keys", "--as", "yaml"}, {}).status, Status::unusable);
    EXPECT_EQ(run({"keys", "packk"}, {}).status, Status::unusable);
}

}  // namespace
