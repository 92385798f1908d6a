// The hourly text that the National Solar Radiation Data Base gives for one place and one year.
//   format  [NSRDB]: a line of labels, a line of what they say of the place, a line of headings,
//           then a row an hour: Year, Month, Day, Hour (0 to 23), Minute, and what was asked for
#pragma once

#include <string_view>

#include "solar/weather/weather_reader.hpp"

namespace solar {

// Reads the station and the hours; labels and columns are found by their names, in any order.
//   first_line  the labels, without the line's end
//   text        what follows
//   time        Minute is 30 where the middle of each hour is stamped, 0 where its beginning is:
//               either way the row is the hour that begins at Hour
//   fails       at a label or heading that is missing, at units other than w/m2 and c, at a clock
//               that is not the place's own, and at rows less than an hour apart
void read_data_base_year(WeatherReader& reader, std::string_view first_line, std::string_view text);

}  // namespace solar
