// Rows of comma-separated text, read in place.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace solar {

// Takes the first line off the text; the line comes without LF or CRLF.
[[nodiscard]] std::string_view take_line(std::string_view& text);

// The cells of a line into `cells` (cleared first). A cell in double quotes may hold commas and
// comes without its quotes; doubled quotes inside stay doubled. Spaces around a cell are taken off.
void split_cells(std::string_view line, std::vector<std::string_view>& cells);

// A whole cell as a finite number; absent when it is empty or anything else.
[[nodiscard]] std::optional<double> number(std::string_view cell);

}  // namespace solar
