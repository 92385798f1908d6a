// What all drawings share: their frame, style and pieces. Dark where the reader's surroundings are,
// black on white on paper; nothing is told by colour alone.
#pragma once

#include <string>
#include <string_view>

namespace faces {

// In the drawing's own unit; every drawing is so wide.
inline constexpr double drawing_width = 720.0;

// A picture that is not framed yet, so that several can stand under each other.
//   title    read aloud in its place
struct Drawing {
    std::string title;
    std::string pieces;
    double height = 0.0;
};

// A drawing by itself, in the units of a page.
[[nodiscard]] std::string in_svg(const Drawing& drawing);

// Text with the characters that XML keeps for itself written as entities; control characters, which
// it does not have, as "?".
[[nodiscard]] std::string in_xml(std::string_view text);

//   place   "begin", "middle" or "end": which end of the words stands at x; further kinds behind it
[[nodiscard]] std::string words_at(double x, double y, std::string_view place,
                                   std::string_view text);
[[nodiscard]] std::string line_of(std::string_view kind, double x1, double y1, double x2,
                                  double y2);
[[nodiscard]] std::string box_of(std::string_view kind, double x, double y, double width,
                                 double height);
//   points   of point_at, one behind the other
[[nodiscard]] std::string path_of(std::string_view kind, std::string_view points);
// "12.0,34.5 "
[[nodiscard]] std::string point_at(double x, double y);

}  // namespace faces
