#include "faces/pictures/drawing.hpp"

#include <fmt/format.h>

namespace faces {

namespace {

constexpr std::string_view style =
    "text{font:13px sans-serif;fill:#222}.strong{font-weight:bold}.back{fill:#fff}"
    ".out{fill:none;stroke:#222;stroke-width:1.6;stroke-dasharray:2 4}"
    ".night{fill:#dfe3ea}.axis{stroke:#555;stroke-width:1}.grid{stroke:#bbb;stroke-width:1}"
    ".band{fill:#c96a12;fill-opacity:.35}.sure{fill:#a34700}.likely{fill:none;stroke:#a34700;"
    "stroke-width:2.5}.limit{stroke:#222;stroke-dasharray:6 4}.sun{fill:#0b6e99}"
    ".loads{fill:none;stroke:#222;stroke-width:1.6}.pin{fill:#222}.ring{fill:none;stroke:#222;"
    "stroke-width:2}.sign{fill:#fff;font-size:11px;text-anchor:middle}.middle{text-anchor:middle}"
    ".end{text-anchor:end}.dotted{stroke-dasharray:2 4}.dashed{stroke-dasharray:8 4}"
    "@media(prefers-color-scheme:dark){text{fill:#eee}.back{fill:#000}.night{fill:#1c2430}"
    ".axis{stroke:#aaa}.grid{stroke:#444}.band{fill:#ffb14a}.sure{fill:#ffc878}"
    ".likely{stroke:#ffc878}.limit{stroke:#eee}.sun{fill:#4fb6de}.loads,.out{stroke:#eee}"
    ".pin{fill:#eee}.ring{stroke:#eee}.sign{fill:#000}}"
    "@media(max-width:600px){text{font-size:18px}.sign{font-size:13px}}"
    "@media print{text{fill:#000}.back{fill:#fff}.night{fill:#e4e4e4}.axis{stroke:#000}"
    ".grid{stroke:#ccc}.band{fill:#999}.sure{fill:#000}.likely{stroke:#000}.limit{stroke:#000}"
    ".sun{fill:#777}.loads,.out{stroke:#000}.pin{fill:#000}.ring{stroke:#000}.sign{fill:#fff}}";

}  // namespace

std::string in_svg(const Drawing& drawing) {
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {0} {1}\" role=\"img\" "
        "aria-label=\"{2}\">\n<style>{3}</style>\n<rect class=\"back\" width=\"{0}\" "
        "height=\"{1}\"/>\n{4}</svg>\n",
        drawing_width, drawing.height, in_xml(drawing.title), style, drawing.pieces);
}

std::string in_xml(std::string_view text) {
    std::string xml;
    for (const char letter : text) {
        switch (letter) {
            case '&':
                xml += "&amp;";
                break;
            case '<':
                xml += "&lt;";
                break;
            case '>':
                xml += "&gt;";
                break;
            case '"':
                xml += "&quot;";
                break;
            default:
                xml += static_cast<unsigned char>(letter) < 0x20 || letter == 0x7f ? '?' : letter;
        }
    }
    return xml;
}

std::string words_at(double x, double y, std::string_view place, std::string_view text) {
    return fmt::format("<text class=\"{}\" x=\"{:.1f}\" y=\"{:.1f}\">{}</text>\n", place, x, y,
                       in_xml(text));
}

std::string line_of(std::string_view kind, double x1, double y1, double x2, double y2) {
    return fmt::format(
        "<line class=\"{}\" x1=\"{:.1f}\" y1=\"{:.1f}\" x2=\"{:.1f}\" y2=\"{:.1f}\"/>\n", kind, x1,
        y1, x2, y2);
}

std::string box_of(std::string_view kind, double x, double y, double width, double height) {
    return fmt::format(
        "<rect class=\"{}\" x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\"/>\n", kind,
        x, y, width, height);
}

std::string path_of(std::string_view kind, std::string_view points) {
    return fmt::format("<polyline class=\"{}\" points=\"{}\"/>\n", kind, points);
}

std::string point_at(double x, double y) {
    return fmt::format("{:.1f},{:.1f} ", x, y);
}

}  // namespace faces
