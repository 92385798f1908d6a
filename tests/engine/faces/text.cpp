#include "faces/text.hpp"

#include <algorithm>
#include <sstream>

#include "answers/outage/answer.hpp"
#include "support/made_plan.hpp"

namespace {

using namespace answers;
using namespace faces;
using testing::HasSubstr;
using testing::Not;

const std::vector<outage::MorePacks> more{
    {.packs = 2, .lasts = 60.0 * units::hour, .survives = false},
    {.packs = 3, .lasts = 96.0 * units::hour, .survives = true}};

std::string text(const Look& look) {
    return in_text(outage_answer(made::scenario(), made::plan(), more), look);
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        lines.push_back(line);
    }
    return lines;
}

TEST(text, an_outage_fits_one_screen) {
    EXPECT_LE(lines_of(text({})).size(), 36U);
}

TEST(text, no_line_is_wider_than_the_page) {
    for (const int width : {40, 60, 80, 132}) {
        for (const bool full : {false, true}) {
            for (const auto& line : lines_of(text({.width = width, .full = full}))) {
                EXPECT_LE(width_of(line), width) << line;
            }
        }
    }
}

TEST(text, a_page_narrower_than_forty_is_taken_as_forty) {
    EXPECT_EQ(text({.width = 20}), text({.width = 40}));
}

TEST(text, the_plain_answer_stands_on_top) {
    EXPECT_THAT(lines_of(text({}))[1], testing::StartsWith("Lasts until"));
}

TEST(text, ascii_is_nothing_but_ascii) {
    for (const char letter : text({.ascii = true, .full = true})) {
        ASSERT_LT(static_cast<unsigned char>(letter), 0x80);
    }
}

TEST(text, without_colour_there_is_no_escape_code_and_with_it_the_words_are_the_same) {
    const auto plain = text({});
    auto coloured = text({.colour = true});
    EXPECT_THAT(plain, Not(HasSubstr("\x1b")));
    for (auto start = coloured.find('\x1b'); start != std::string::npos;
         start = coloured.find('\x1b')) {
        coloured.erase(start, coloured.find('m', start) - start + 1);
    }
    EXPECT_EQ(coloured, plain);
}

TEST(text, one_screen_counts_what_it_leaves_out_and_full_prints_it) {
    EXPECT_THAT(text({}), HasSubstr("1 assumption"));
    EXPECT_THAT(text({}), HasSubstr("--full"));
    EXPECT_THAT(text({}), Not(HasSubstr("4 mohm")));
    const auto full = text({.full = true});
    EXPECT_THAT(full, HasSubstr("4 mohm"));
    EXPECT_THAT(full, HasSubstr("not a life-support device"));
    EXPECT_THAT(full, HasSubstr("metered 1.9 kWh over 31 h"));
    EXPECT_THAT(full, Not(HasSubstr("add --full")));
}

TEST(text, the_energy_of_chargers_has_a_row_where_there_is_any) {
    auto plan = made::plan();
    EXPECT_THAT(text({}), Not(HasSubstr("from chargers")));
    plan.likely.ledger.charger_offered = 900.0 * units::watt_hour;
    plan.likely.ledger.charger_taken = 700.0 * units::watt_hour;
    const auto answer = outage_answer(made::scenario(), plan, more);
    EXPECT_THAT(in_text(answer, {}), HasSubstr("from chargers"));
    EXPECT_THAT(in_text(answer, {}), HasSubstr("700 Wh"));
    EXPECT_THAT(in_text(answer, {}), HasSubstr("lost in adaptors"));
}

answers::Answer with_a_table(bool brief) {
    const auto words = [](const char* heading, std::vector<words::Said> cells) {
        return answers::Column{"", heading, "", std::move(cells)};
    };
    answers::Answer answer{.question = "packs"};
    answer.series = {{.name = "ladder",
                      .title = "Switched off in this order",
                      .columns = {words("load", {"modem and router", "phones"}),
                                  words("spares in one whole day", {"135 Wh", "60 Wh"}),
                                  words("to the end", {"once in 100", "twice in 100"})},
                      .brief = brief}};
    return answer;
}

TEST(text, a_table_that_likes_more_room_has_its_headings_over_several_lines) {
    const auto text = in_text(with_a_table(true), {.width = 40});
    EXPECT_THAT(text, HasSubstr("\nload              spares  to the end\n"
                                "                  in one\n"
                                "                  whole\n"
                                "                  day\n"
                                "modem and router  135 Wh  once in 100\n"
                                "phones            60 Wh   twice in 100\n"));
    EXPECT_THAT(in_text(with_a_table(true), {.width = 80}),
                HasSubstr("load              spares in one whole day  to the end\n"));
}

// 32 + 2 + 40 + 2 columns leave four for the last, which needs seven.
TEST(text, a_shortened_column_gives_up_what_the_last_needs) {
    auto answer = with_a_table(true);
    auto& columns = answer.series.front().columns;
    columns[0].points = std::vector<words::Said>{std::string(32, 'k'), "b"};
    columns[1].points = std::vector<words::Said>{std::string(60, 'v'), "w"};
    columns[2].points = std::vector<words::Said>{"line 12", "line 7"};
    const auto text = in_text(answer, {.width = 80});
    EXPECT_THAT(text, HasSubstr(std::string(32, 'k') + "  " + std::string(34, 'v') +
                                "...  line 12\n"));
    EXPECT_THAT(text, HasSubstr("b" + std::string(33, ' ') + "w" + std::string(38, ' ') +
                                "line 7\n"));
}

TEST(text, a_table_that_no_heading_makes_narrow_enough_is_told_in_words) {
    auto answer = with_a_table(true);
    answer.series.front().columns.front().points =
        std::vector<words::Said>{std::string(19, 'l'), std::string(19, 'p')};
    answer.series.front().columns[1].points =
        std::vector<words::Said>{std::string(19, 'a'), std::string(19, 'b')};
    const auto text = in_text(answer, {.width = 40});
    EXPECT_THAT(text, HasSubstr("lllllllllllllllllll: spares in one"));
    answer.series.front().brief = false;
    EXPECT_THAT(in_text(answer, {.width = 40, .full = true}), HasSubstr("wider than the page"));
}

TEST(text, severities_are_words) {
    auto plan = made::plan();
    plan.loads.resize(2, plan.loads.front());
    plan.loads[1].goes_without = {{.from = plan.likely.lasts,
                                   .to = made::scenario().outage.lasts,
                                   .why = outage::LimitedBy::charge}};
    const auto told = in_text(outage_answer(made::scenario(), plan, more), {});
    EXPECT_THAT(told, HasSubstr("STOP"));  // of the breathing aid
    EXPECT_THAT(told, HasSubstr("Caution"));
}

TEST(text, hazards_are_named_on_the_first_screen) {
    EXPECT_THAT(text({}), HasSubstr("Medical loads"));
    EXPECT_THAT(text({}), HasSubstr("Electric shock"));
}

TEST(text, it_ends_with_what_it_is_not) {
    EXPECT_EQ(lines_of(text({})).back(),
              "Arithmetic, not approval. Local codes and licensed practice decide.");
}

TEST(text, nothing_is_called_safe_and_nothing_complies) {
    const auto full = text({.full = true});
    EXPECT_EQ(full.find(" safe"), std::string::npos);
    EXPECT_EQ(full.find("complies"), std::string::npos);
}

}  // namespace
