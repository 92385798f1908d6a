// What stands on sheets of paper and in no other face. Who paints them is no part of the command;
// they are said here so that its list of sayings, and so each catalogue, has them.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "words/said.hpp"

namespace faces::paper {

using words::Said;

// ---- The card.

inline Said when_to_top_up() {
    return words::said<"When to top up: see the report.">();
}

// ---- The report.

inline Said rows_left_out(std::size_t rows) {
    return words::said_of<"One more row: --as csv has it.", "{n} more rows: --as csv has them.">(
        rows);
}
inline Said contents() {
    return words::said<"Contents">();
}
// What the line of contents and the tables behind a report call the answer to a question.
inline Said name_of(std::string_view question) {
    if (question == "outage") return words::said<"How long it lasts">();
    if (question == "packs") return words::said<"How many packs">();
    if (question == "sun") return words::said<"What the sun gives">();
    if (question == "join") return words::said<"Plugging packs together">();
    if (question == "storage") return words::said<"After storage">();
    if (question == "start") return words::said<"What starts">();
    if (question == "wiring") return words::said<"Fuses and wires">();
    return Said(std::string(question));
}
inline Said further() {
    return words::said<"Tables and plots">();
}
inline Said assumptions() {
    return words::said<"What was assumed">();
}
inline Said working() {
    return words::said<"Working">();
}
inline Said section_of_working() {
    return words::said<"{?working}part">();
}
inline Said quantity() {
    return words::said<"quantity">();
}
inline Said formula() {
    return words::said<"formula">();
}
inline Said value_from() {
    return words::said<"{?source}from">();
}
inline Said assumed() {
    return words::said<"{?assumed}taken">();
}
inline Said source() {
    return words::said<"source">();
}
inline Said fault(Said what) {
    return words::said<"A fault of this program: {what}">(std::move(what));
}
inline Said wiring() {
    return words::said<"Wiring">();
}
inline Said wiring_of(Said unit) {
    return words::said<"{unit}, wiring">(std::move(unit));
}
inline Said too_long_for_the_card() {
    return words::said<"the names in this file are too long for one page">();
}
inline Said shorten_names() {
    return words::said<"shorten the names of loads and circuits, or print the report">();
}

// ---- Plots: below them stands what their greys and lines mean.

inline Said what_bars_mean() {
    return words::said<"Black at least, grey likely, open at best. Bold is what the file has.">();
}
inline Said what_shares_mean() {
    return words::said<
        "Share of each limit that is used: black at least, grey likely, open at most; the line is "
        "the limit. Bold is the nearest one.">();
}
inline Said what_days_mean() {
    return words::said<
        "Stored in the packs: black line likely, grey band eight times in ten, pale grey night.">();
}
inline Said what_flows_mean() {
    return words::said<"Below it, hour by hour: the line is what the loads want, grey what the sun offers.">();
}
inline Said what_builds_mean(Said weighs) {
    return words::said<
        "Chance of lasting against what {weighs}. Each diamond is a build that no other beats, "
        "from "
        "left to right: the upright line is where its chance lies 19 times in 20.">(
        std::move(weighs));
}
inline Said how_it_comes_up(Said load) {
    return words::said<"How {load} comes up, most likely">(std::move(load));
}
inline Said how_sure_by_weight() {
    return words::said<"How sure a build is, against its weight">();
}
inline Said how_sure_by_price() {
    return words::said<"How sure a build is, against its price">();
}
inline Said the_build() {
    return words::said<"The build">();
}
inline Said goes_on_at_the_right() {
    return words::said<"Goes on to the right: the last column stands again at the beginning of the next part.">();
}
inline Said goal(words::Amount chance) {
    return words::said<"goal {chance}">(chance);
}
inline Said at_most(words::Amount most) {
    return words::said<"{figure} at most">(most);
}
// One build of the list below its plot.
inline Said build(Said figure, Said packs_and_panels, Said chance, bool answers, bool of_file) {
    if (answers && of_file)
        return words::said<"{figure}: {build}, {chance} (large: the answer; as the file has it)">(
            std::move(figure), std::move(packs_and_panels), std::move(chance));
    if (answers)
        return words::said<"{figure}: {build}, {chance} (large: the answer)">(
            std::move(figure), std::move(packs_and_panels), std::move(chance));
    if (of_file)
        return words::said<"{figure}: {build}, {chance} (as the file has it)">(
            std::move(figure), std::move(packs_and_panels), std::move(chance));
    return words::said<"{figure}: {build}, {chance}">(
        std::move(figure), std::move(packs_and_panels), std::move(chance));
}
inline Said builds_left_out(int builds) {
    return words::said_of<"One more stands in the table of builds.",
                          "{n} more stand in the table of builds.">(builds);
}

// ---- Headings of the numbers behind a plot.

inline Said what() {
    return words::said<"what">();
}
inline Said low() {
    return words::said<"low">();
}
inline Said likely() {
    return words::said<"likely">();
}
inline Said high() {
    return words::said<"high">();
}

}  // namespace faces::paper
