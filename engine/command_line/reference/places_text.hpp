// The built-in places in words: all of them, by name, or those that lie nearest.
#pragma once

#include <string>

#include "units/result.hpp"

namespace command_line {

//   asked  empty: every place, country by country. Two numbers, "40.0, -105.3": latitude north and
//          longitude east in degrees; the five nearest with their distance. Otherwise a name or
//          the beginning of some
//   fails  at "places": no place begins so, or the numbers lie off the globe
[[nodiscard]] units::Result<std::string> places_text(const std::string& asked, int columns = 80);

}  // namespace command_line
