// What the card in the lid says: one page to be read at night without the program. Only words and
// their order; a painter gives them places. Content is terse on purpose: what does not fit is
// named on the card and left to the report.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "questions/card.hpp"
#include "scenario/scenario.hpp"
#include "sizing/ration.hpp"
#include "units/result.hpp"
#include "units/time.hpp"

namespace answers {

// A row has as many cells as there are headings.
//   answers   index of the column to be set in the largest type; nothing for none
struct CardTable {
    std::vector<std::string> headings;
    std::vector<std::vector<std::string>> rows;
    std::optional<std::size_t> answers = {};
};

//   name    "ration", "voltmeter", "fuses", "plug_in", "cold", "storage", "cautions"
//   lines   sentences above the table
//   after   sentences below it
//   ticks   each to stand beside an empty box
//   brief   a shorter form of each line, where a page has no room for the long one
//   cut     how many rows, ticks or lines a painter had to leave out
//   of_what what they are: "circuits"
struct CardPart {
    std::string name;
    std::string heading;
    std::vector<std::string> lines;
    CardTable table;
    std::vector<std::string> after;
    std::vector<std::string> ticks;
    std::vector<std::string> brief = {};
    int cut = 0;
    std::string of_what;
};

//   answer   how long it lasts with everything on, in the largest type
//   basis    from what: charge, day, temperature, sky; and the range
//   made     version and date
struct LidCard {
    std::string title;
    std::string made;
    std::string answer;
    std::vector<std::string> basis;
    std::vector<CardPart> parts;  // in the order to be read
    std::string closing;
};

// A reading of the voltmeter at rest, and what `candlemark gauge` says of it.
struct CardReading {
    std::string reads;
    Answer answer;
};

// The answers that a card is made of; each may have failed, with the reason on the card.
//   joins      one for each kind of pack that can be plugged onto the others
//   readings   from full to empty; none where voltages tell nothing
//   no_reading why there are none
struct CardAnswers {
    units::Result<Answer> outage;
    units::Result<sizing::Ration> ration;
    units::Result<Answer> wiring;
    units::Result<Answer> storage;
    std::vector<units::Result<Answer>> joins = {};
    std::vector<CardReading> readings = {};
    std::string no_reading = {};
};

// The same from what was found.
[[nodiscard]] CardAnswers card_answers(const questions::CardFound& found);

//   made   "Candlemark 0.1.0, 25 November 2026"
[[nodiscard]] LidCard lid_card(const scenario::Scenario& scenario, const CardAnswers& answers,
                               std::string made);

// Makes a part shorter by one step: a line in its brief form, or a row or tick less, which the part
// then says. False where it has no more to give; plug-in and cold rule always stay whole, and of
// each caution its first clause.
[[nodiscard]] bool cut_one(CardPart& part);

// "and 3 more circuits: see the report"; empty where nothing was cut.
[[nodiscard]] std::string left_out(const CardPart& part);

}  // namespace answers
