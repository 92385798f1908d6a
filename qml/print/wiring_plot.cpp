#include <algorithm>

#include "print/plots.hpp"

namespace printing {

namespace {

using answers::BoxKind;
using answers::DiagramBox;
using answers::WiringDiagram;

constexpr double most_cell = 120.0;  // points

// Sizes in points of one cell of the layout.
struct Cells {
    double wide = 0.0;
    double tall = 0.0;
    Type letters;

    [[nodiscard]] QRectF of(const DiagramBox& box) const {
        const bool bus = box.kind == BoxKind::bus;
        const double width = bus ? 8.0 : 0.86 * wide;
        const double height = bus ? box.height * tall - 8.0 : 0.8 * tall;
        return {box.x * wide - width / 2.0, box.y * tall - height / 2.0, width, height};
    }
};

const DiagramBox* named(const WiringDiagram& diagram, const std::string& id) {
    const auto found = std::ranges::find(diagram.boxes, id, &DiagramBox::id);
    return found == diagram.boxes.end() ? nullptr : &*found;
}

double weight_of(const std::optional<scenario::Severity>& severity) {
    return severity == scenario::Severity::stop ? 2.6 : 1.0;
}

void add_line(Block& block, const WiringDiagram& diagram, const answers::DiagramLine& line,
              const Cells& cells) {
    const DiagramBox* from = named(diagram, line.from);
    const DiagramBox* to = named(diagram, line.to);
    if (!from || !to) return;
    const QRectF one = cells.of(*from);
    const QRectF other = cells.of(*to);
    const double y1 = (from->kind == BoxKind::bus ? to->y : from->y) * cells.tall;
    const double y2 = (to->kind == BoxKind::bus ? from->y : to->y) * cells.tall;
    const double bend = other.left() - 3.0;
    const double weight = weight_of(line.severity);
    block.sheet.strokes.append({{one.right(), y1, bend, y1}, weight});
    block.sheet.strokes.append({{bend, y1, bend, y2}, weight});
    block.sheet.strokes.append({{bend, y2, other.left(), y2}, weight});
}

void add_frame(Block& block, const QRectF& frame, double weight) {
    block.sheet.strokes.append({{frame.topLeft(), frame.topRight()}, weight});
    block.sheet.strokes.append({{frame.topRight(), frame.bottomRight()}, weight});
    block.sheet.strokes.append({{frame.bottomRight(), frame.bottomLeft()}, weight});
    block.sheet.strokes.append({{frame.bottomLeft(), frame.topLeft()}, weight});
}

void add_box(Block& block, const DiagramBox& box, const Cells& cells) {
    const QRectF frame = cells.of(box);
    if (box.kind == BoxKind::bus) {
        block.sheet.shapes.append({QPolygonF(frame), 0.0});
        return;
    }
    block.sheet.shapes.append({QPolygonF(frame), 1.0});
    add_frame(block, frame, weight_of(box.severity));
    const Type bold{.size = cells.letters.size, .bold = true};
    const double inside = frame.width() - 4.0;
    const double line = line_height_of(cells.letters);
    QList<std::pair<QString, Type>> lines;
    for (const QString& each : broken(in_qt(box.title), bold, inside))
        lines.append({each, bold});
    for (const QString& each : broken(in_qt(box.detail), cells.letters, inside))
        lines.append({each, cells.letters});
    const auto most = std::max<qsizetype>(1, static_cast<qsizetype>((frame.height() - 1.0) / line));
    const bool signs = box.severity && *box.severity != scenario::Severity::note;
    while (lines.size() > most - (signs ? 1 : 0) && lines.size() > 1)
        lines.removeLast();
    if (signs)
        lines.append({box.severity == scenario::Severity::stop ? QStringLiteral("STOP")
                                                               : QStringLiteral("Caution"),
                      bold});
    double y = frame.top() + (frame.height() - line * static_cast<double>(lines.size())) / 2.0;
    for (const auto& [text, type] : lines) {
        put(block, text, type, frame.left() + (frame.width() - width_of(text, type)) / 2.0, inside,
            y);
        y += line;
    }
}

}  // namespace

Block wiring_plot(const WiringDiagram& diagram, double width) {
    Block block;
    Cells cells;
    cells.wide = std::min(width / std::max(diagram.width, 1.0), most_cell);
    cells.letters.size = std::clamp(cells.wide / 11.0, 3.0, plot_letters);
    cells.tall = 6.4 * line_height_of(cells.letters);
    for (const auto& line : diagram.lines)
        add_line(block, diagram, line, cells);
    for (const auto& box : diagram.boxes)
        add_box(block, box, cells);
    block.height = diagram.height * cells.tall;
    return block;
}

}  // namespace printing
