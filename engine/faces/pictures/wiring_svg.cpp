#include "faces/pictures/wiring_svg.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "faces/page.hpp"

namespace faces {

namespace {

using scenario::Severity;
using words::said;

constexpr double cell_width = 172.0;
constexpr double cell_height = 96.0;
constexpr double box_width = 142.0;
constexpr double box_height = 62.0;
constexpr double top = 40.0;  // for the title

double middle_x(double cells) {
    return cells * cell_width;
}
double middle_y(double cells) {
    return top + cells * cell_height;
}

// Okabe-Ito: told apart by people who see fewer colours.
std::string_view colour_of(const std::optional<Severity>& severity) {
    if (!severity || *severity == Severity::note) {
        return "#000000";
    }
    return *severity == Severity::stop ? "#a33c00" : "#0072b2";
}

std::string sign_of(Severity severity, const words::Language& language) {
    return words::in(language, severity == Severity::stop      ? said<"STOP">()
                               : severity == Severity::caution ? said<"Caution">()
                                                               : said<"Note">());
}

const answers::DiagramBox* box_of(const answers::WiringDiagram& diagram, const std::string& id) {
    const auto found = std::ranges::find(diagram.boxes, id, &answers::DiagramBox::id);
    return found == diagram.boxes.end() ? nullptr : &*found;
}

std::string text_at(double x, double y, int size, std::string_view words, std::string_view more) {
    return fmt::format("<text x=\"{:.1f}\" y=\"{:.1f}\" font-size=\"{}\"{}>{}</text>\n", x, y, size,
                       more, in_xml(words));
}

// A line from the right side of one box to the left side of the other, with one corner; at the bus
// it meets its side at the other's height.
std::string line_of(const answers::WiringDiagram& diagram, const answers::DiagramLine& line,
                    const words::Language& language) {
    const answers::DiagramBox* from = box_of(diagram, line.from);
    const answers::DiagramBox* to = box_of(diagram, line.to);
    if (from == nullptr || to == nullptr) {
        return {};
    }
    const double half_from = from->kind == answers::BoxKind::bus ? 10.0 : 0.5 * box_width;
    const double half_to = to->kind == answers::BoxKind::bus ? 10.0 : 0.5 * box_width;
    const double x1 = middle_x(from->x) + half_from;
    const double x2 = middle_x(to->x) - half_to;
    const double y1 = middle_y(from->kind == answers::BoxKind::bus ? to->y : from->y);
    const double y2 = middle_y(to->kind == answers::BoxKind::bus ? from->y : to->y);
    const double bend = x2 - 8.0;
    std::string svg = fmt::format(
        "<path d=\"M{:.1f} {:.1f} H{:.1f} V{:.1f} H{:.1f}\" fill=\"none\" stroke=\"{}\" "
        "stroke-width=\"2\"/>\n",
        x1, y1, bend, y2, x2, colour_of(line.severity));
    if (!line.text.empty()) {
        svg += text_at(x1 + 2.0, y2 - 36.0, 11, shortened(words::in(language, line.text), 24),
                       " font-style=\"italic\"");
    }
    return svg;
}

std::string shape_of(const answers::DiagramBox& box) {
    const bool bus = box.kind == answers::BoxKind::bus;
    const double width = bus ? 20.0 : box_width;
    const double height = bus ? box.height * cell_height - 20.0 : box_height;
    const double round =
        box.kind == answers::BoxKind::load || box.kind == answers::BoxKind::outlet     ? 30.0
        : box.kind == answers::BoxKind::pack || box.kind == answers::BoxKind::inverter ? 0.0
                                                                                       : 6.0;
    const bool stop = box.severity == Severity::stop;
    return fmt::format(
        "<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\" rx=\"{:.0f}\" "
        "fill=\"{}\" stroke=\"{}\" stroke-width=\"{}\"{}/>\n",
        middle_x(box.x) - 0.5 * width, middle_y(box.y) - 0.5 * height, width, height, round,
        bus ? "#000000" : "#ffffff", colour_of(box.severity), stop ? 4 : 2,
        box.severity == Severity::caution ? " stroke-dasharray=\"7 3\"" : "");
}

std::string box_in_svg(const answers::DiagramBox& box, const words::Language& language) {
    const double x = middle_x(box.x);
    const double y = middle_y(box.y);
    std::string svg = "<g>\n";
    const std::string title = words::in(language, box.title);
    const std::string detail = words::in(language, box.detail);
    const std::string told = box.finding.empty()
                                 ? ""
                                 : fmt::format(". {}: {}", sign_of(*box.severity, language),
                                               words::in(language, box.finding));
    svg += fmt::format("<title>{}{}</title>\n", in_xml(title), in_xml(told));
    svg += shape_of(box);
    if (box.kind == answers::BoxKind::bus) {
        svg += text_at(x, y - 0.5 * box.height * cell_height - 0.0, 12, title + " " + detail,
                       " text-anchor=\"middle\"");
        return svg + "</g>\n";
    }
    const bool signs = box.severity && *box.severity != Severity::note;
    const double up = signs ? 10.0 : 4.0;
    svg += text_at(x, y - up, 13, shortened(title, 20),
                   " text-anchor=\"middle\" font-weight=\"bold\"");
    svg += text_at(x, y - up + 17.0, 12, shortened(detail, 22), " text-anchor=\"middle\"");
    if (signs) {
        svg += text_at(x, y + 24.0, 12, sign_of(*box.severity, language),
                       fmt::format(" text-anchor=\"middle\" font-weight=\"bold\" fill=\"{}\"",
                                   colour_of(box.severity)));
    }
    return svg + "</g>\n";
}

}  // namespace

std::string in_svg(const answers::WiringDiagram& diagram, const std::string& title,
                   const words::Language& language) {
    const double width = diagram.width * cell_width + 20.0;
    const double height = middle_y(diagram.height) + 20.0;
    std::string svg = fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"{0:.0f}\" "
        "height=\"{1:.0f}\" viewBox=\"0 0 {0:.0f} {1:.0f}\" font-family=\"sans-serif\">\n"
        "<title>{2}</title>\n<desc>{3}</desc>\n"
        "<rect width=\"{0:.0f}\" height=\"{1:.0f}\" fill=\"#ffffff\"/>\n",
        width, height, in_xml(title), in_xml(words::in(language, diagram.description)));
    svg += text_at(12.0, 22.0, 16, title, " font-weight=\"bold\"");
    for (const answers::DiagramLine& line : diagram.lines) {
        svg += line_of(diagram, line, language);
    }
    for (const answers::DiagramBox& box : diagram.boxes) {
        svg += box_in_svg(box, language);
    }
    return svg + "</svg>\n";
}

}  // namespace faces
