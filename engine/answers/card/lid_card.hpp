// What the card in the lid says: one page to be read at night without the program. Only words and
// their order; a painter gives them places. Content is terse on purpose: what does not fit is
// named on the card and left to the report.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "questions/card.hpp"
#include "scenario/scenario.hpp"
#include "words/language.hpp"
#include "words/said.hpp"

namespace answers {

// A row has as many cells as there are headings.
//   answers   index of the column to be set in the largest type; nothing for none
struct CardTable {
    std::vector<words::Said> headings;
    std::vector<std::vector<words::Said>> rows;
    std::optional<std::size_t> answers = {};
};

//   name    "ration", "voltmeter", "fuses", "plug_in", "cold", "storage", "cautions"
//   lines   sentences above the table
//   after   sentences below it
//   ticks   each to stand beside an empty box
//   brief   a shorter form of each line, where a page has no room for the long one
//   cut     how many rows or ticks a painter had to leave out
struct CardPart {
    std::string name;
    words::Said heading;
    std::vector<words::Said> lines;
    CardTable table;
    std::vector<words::Said> after;
    std::vector<words::Said> ticks;
    std::vector<words::Said> brief = {};
    int cut = 0;
};

//   answer   how long it lasts with everything on, in the largest type
//   basis    from what: charge, day, temperature, sky; and the range
//   made     version and date
struct LidCard {
    words::Said title;
    std::string made;
    words::Said answer;
    std::vector<words::Said> basis;
    std::vector<CardPart> parts;  // in the order to be read
    words::Said closing;
};

//   made   "Candlemark 0.1.0, 25 November 2026"
//   found  each may have failed, with the reason on the card
[[nodiscard]] LidCard lid_card(const scenario::Scenario& scenario,
                               const questions::CardFound& found, std::string made);

// Makes a part shorter by one step: a line in its brief form, or a row or tick less, which the part
// then says. False where it has no more to give; plug-in and cold rule always stay whole, and each
// caution stays in its short form.
//   language   of the reader, in whose words one line is longer than another
[[nodiscard]] bool cut_one(CardPart& part, const words::Language& language = words::english());

// "and 3 more circuits: see the report"; empty where nothing was cut.
[[nodiscard]] words::Said left_out(const CardPart& part);

}  // namespace answers
