// Any bytes whatever through the reader of weather files: an answer or errors, never a fault.
//
// A whole year has 8,760 rows, and no chance makes them. An input whose first line is "+epw",
// "+tmy3" or "+nsrdb" is therefore put into such a year: each further line "row column text" puts the text into
// one cell. Reading a year takes a hundred times as long as reading a few rows, which is enough for
// all that is wrong with cells; so most inputs are files of a few rows.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

#include <fmt/format.h>

#include "fuzz/changes.hpp"
#include "fuzz/target.hpp"
#include "solar/weather/weather_summary.hpp"
#include "support/weather_text.hpp"

namespace fuzz {

namespace {

constexpr std::size_t rows_of_a_year = 8760;

const std::vector<std::string>& epw() {
    static const auto rows = parts_of(test_support::epw_text(test_support::plain_hour), '\n');
    return rows;
}

const std::vector<std::string>& tmy3() {
    static const auto rows = parts_of(test_support::tmy3_text(test_support::plain_hour), '\n');
    return rows;
}

const std::vector<std::string>& nsrdb() {
    static const auto rows = parts_of(test_support::nsrdb_text(test_support::plain_hour), '\n');
    return rows;
}

std::string with_cell(const std::string& row, std::size_t column, const std::string& text) {
    auto cells = parts_of(row, ',');
    cells[column % cells.size()] = text;
    return joined(cells, ',');
}

std::string in_a_year(std::string_view input) {
    auto rows = input.starts_with("+epw") ? epw() : input.starts_with("+nsrdb") ? nsrdb() : tmy3();
    const auto edits = parts_of(input, '\n');
    for (std::size_t i = 1; i < edits.size(); ++i) {
        char* rest = nullptr;
        const auto row = std::strtoull(edits[i].c_str(), &rest, 10);
        const auto column = std::strtoull(rest, &rest, 10);
        if (*rest == ' ') ++rest;
        auto& edited = rows[row % rows.size()];
        edited = with_cell(edited, column, rest);
    }
    return joined(rows, '\n');
}

constexpr std::array<std::string_view, 30> cells{
    "0",          "1",        "-1",      "99.9",  "9999",  "99999", "-9999",      "1e9",
    "-273.2",     "61",       "1367",    "2000",  "0.5",   "nan",   "inf",        "",
    " ",          "\"",       "\"a,b\"", "24:00", "00:00", "25:00", "02/29/1972", "02/30/1971",
    "13/01/1971", "1/1/1971", "12",      "31",    "x",     "0x10"};

std::string some_cell(Random& random) {
    std::string cell(one_of(cells, random));
    return random() % 4 == 0 ? with_figure_changed(cell, random) : cell;
}

std::string few_rows(Random& random) {
    struct Form {
        const std::vector<std::string>& year;
        std::size_t heads;
    };
    const std::array forms{Form{epw(), 8}, Form{tmy3(), 2}, Form{nsrdb(), 3}};
    const auto& [year, heads] = forms[random() % forms.size()];
    std::vector<std::string> rows(year.begin(), year.begin() + std::ptrdiff_t(heads));
    const std::size_t from = heads + below(rows_of_a_year - 24, random);
    const std::size_t count = 1 + below(24, random);
    rows.insert(rows.end(), year.begin() + std::ptrdiff_t(from),
                year.begin() + std::ptrdiff_t(from + count));
    return joined(rows, '\n');
}

std::string changed_rows(std::string_view input, std::string_view other, Random& random) {
    auto rows = parts_of(input, '\n');
    const auto others = parts_of(other, '\n');
    const std::size_t at = below(rows.size(), random);
    const auto place = rows.begin() + std::ptrdiff_t(at);
    switch (random() % 10) {
        case 0:
            if (rows.size() > 1) rows.erase(place);
            break;
        case 1:
            rows.insert(place, std::string(*place));
            break;
        case 2:
            *place = one_of(others, random);
            break;
        case 3:
            *place += random() % 2 == 0 ? "," : "\r";
            break;
        case 4:
        case 5:
            *place = with_figure_changed(*place, random);
            break;
        default:
            *place = with_cell(*place, random(), some_cell(random));
    }
    return joined(rows, '\n');
}

}  // namespace

Came run(std::string_view input) {
    const bool whole = input.starts_with("+");
    const auto year = solar::read_weather(whole ? in_a_year(input) : std::string(input), "fuzz");
    count(year ? "read" : "refused");
    if (!year) {
        must(!year.error().empty(), "refused without a word");
        std::string words;
        for (const auto& error : year.error())
            words += error.where + std::string(error.remedy);
        return {.mark = mark_of(words)};
    }
    const solar::WeatherSummary sums = solar::summary(*year);
    must(std::isfinite(sums.global.value()) && std::isfinite(sums.direct.value()) &&
             std::isfinite(sums.diffuse.value()) && std::isfinite(sums.closure) &&
             std::isfinite(sums.worst_day.value()),
         "a sum of the year is not finite");
    for (const auto& month : sums.monthly)
        must(std::isfinite(month.value()) && month.value() >= 0.0, "a month's light is no amount");
    if (const auto months = solar::monthly_temperature(*year))
        for (const auto& month : *months)
            must(std::isfinite(month.above_absolute_zero().value()), "a month has no warmth");
    const auto site = solar::site_of(*year);
    (void)site;
    return {.mark = mark_of(
                fmt::format("{} {} {}", sums.hours, sums.missing > 0, sums.half_an_hour_off))};
}

std::string mutated(std::string_view input, std::string_view other, Random& random) {
    if (random() % 40 == 0) {
        constexpr std::array<std::string_view, 3> forms{"+epw", "+tmy3", "+nsrdb"};
        std::string whole(one_of(forms, random));
        for (auto edits = 1 + random() % 6; edits > 0; --edits)
            whole += fmt::format("\n{} {} {}", below(rows_of_a_year + 8, random), random() % 36,
                                 some_cell(random));
        return whole;
    }
    if (input.starts_with("+") || random() % 12 == 0) return few_rows(random);
    std::string changed = changed_rows(input, other, random);
    for (auto more = random() % 3; more > 0; --more)
        changed = changed_rows(changed, other, random);
    return random() % 12 == 0 ? with_bytes_changed(std::move(changed), random) : changed;
}

std::vector<std::string> made_seeds() {
    Random random(1);
    return {"+epw", "+tmy3", "+nsrdb", few_rows(random), few_rows(random), few_rows(random)};
}

}  // namespace fuzz
