// What the readers of all forms of a weather file share: cells within bounds, the station's line,
// the row of an hour.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "solar/weather/weather_file.hpp"
#include "units/result.hpp"
#include "words/said.hpp"

namespace solar {

using Cells = std::vector<std::string_view>;

// Columns counted from 0; absent where the file has none.
struct Columns {
    std::size_t global, direct, diffuse;
    std::optional<std::size_t> air, ground, snow;
    std::size_t needed;  // cells a row must have
};

// A file on its way to a year, with what is wrong with it. What a cell holds is never shown: the
// file may be another than the person thinks, and what is in it is nobody's business. The line and
// the column say where to look.
struct WeatherReader {
    const std::string& file;
    WeatherYear year;
    Columns columns{};
    units::Errors errors;
    int line = 0;            // the one being read; 1 is the first
    std::vector<int> lines;  // on which each hour stands

    // After twenty errors no more are kept.
    //   place  in the file, such as a column and its heading
    void refuse(words::Said place, words::Said fault, words::Said remedy);
    [[nodiscard]] bool is_full() const;
    // A number within bounds from a cell; an error and absence otherwise.
    //   name        of what the cell should hold
    //   low, high   whole numbers
    std::optional<double> within(const Cells& cells, std::size_t column, const words::Said& name,
                                 double low, double high);
};

// Names the year's station by a cell, fit to be shown.
void name_station(WeatherReader& reader, std::string_view cell);

// Clock and place of the station from these columns.
//   fails  where a number is out of bounds, or the clock is more than 3 h from the sun at that
//          longitude
void read_coordinates(WeatherReader& reader, const Cells& cells, std::size_t offset,
                      std::size_t latitude, std::size_t longitude, std::size_t elevation);

// The hour that ends at `hour` (1 to 24) of a day, from its row.
void add_hour(WeatherReader& reader, const Cells& cells, double month, double date, double hour);

// Whether nothing stands on a line.
[[nodiscard]] bool is_blank(std::string_view line);

}  // namespace solar
