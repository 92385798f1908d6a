#include <algorithm>
#include <cmath>
#include <vector>

#include "faces/paper.hpp"
#include "print/plots.hpp"

namespace printing {

namespace {

using answers::BoxKind;
using answers::DiagramBox;
using answers::WiringDiagram;

constexpr Type letters{.size = plot_letters};
constexpr Type bold_letters{.size = plot_letters, .bold = true};
constexpr double between_boxes = 12.0;  // points, for the lines and where they turn
constexpr double between_rows = 12.0;
constexpr double around_words = 3.0;   // within a box
constexpr double least_inside = 62.0;  // of a box, for its words
constexpr double most_inside = 104.0;
constexpr double bus_wide = 8.0;

using Line = std::pair<QString, Type>;

// A box with its words broken into lines that fit in it: none is left out.
struct Drawn {
    const DiagramBox* box;
    QList<Line> lines;
};

double widest_word(const QString& text, Type type) {
    double widest = 0.0;
    for (const QString& word : words_in(text))
        widest = std::max(widest, width_of(word, type));
    return widest;
}

double weight_of(const std::optional<scenario::Severity>& severity) {
    return severity == scenario::Severity::stop ? 2.6 : 1.0;
}

// The whole drawing in points: where its columns and rows begin.
class Drawing {
  public:
    Drawing(const WiringDiagram& diagram, const words::Language& language);

    [[nodiscard]] double column_wide() const { return inside_ + 2.0 * around_words + between_boxes; }
    [[nodiscard]] int columns() const { return static_cast<int>(std::ceil(diagram_.width)); }
    [[nodiscard]] int rows() const { return static_cast<int>(heights_.size()); }
    [[nodiscard]] double top_of(int row) const;
    [[nodiscard]] int column_of_bus() const;

    // What stands in these columns and rows, from its own corner.
    [[nodiscard]] Block piece(int column, int columns, int row, int rows) const;

  private:
    [[nodiscard]] QRectF frame_of(const DiagramBox& box) const;
    [[nodiscard]] double middle_of(double y) const;
    [[nodiscard]] QList<Line> lines_of(const DiagramBox& box, const words::Language& language) const;
    [[nodiscard]] std::vector<QLineF> path_of(const answers::DiagramLine& line) const;
    [[nodiscard]] const DiagramBox* named(const std::string& id) const;

    const WiringDiagram& diagram_;
    double inside_ = least_inside;  // of each box
    std::vector<double> heights_;   // of each row
    QList<Drawn> drawn_;
};

int row_of(const DiagramBox& box) {
    return static_cast<int>(std::floor(box.y));
}

int column_of(const DiagramBox& box) {
    return static_cast<int>(std::floor(box.x));
}

Drawing::Drawing(const WiringDiagram& diagram, const words::Language& language)
    : diagram_(diagram),
      heights_(static_cast<std::size_t>(std::max(1.0, std::ceil(diagram.height))), 0.0) {
    for (const auto& box : diagram.boxes)
        inside_ = std::max({inside_, widest_word(in_qt(language, box.title), bold_letters),
                            widest_word(in_qt(language, box.detail), letters)});
    inside_ = std::min(inside_, most_inside);
    for (const auto& box : diagram.boxes) {
        if (box.kind == BoxKind::bus) continue;
        drawn_.append({&box, lines_of(box, language)});
        const auto lines = static_cast<double>(drawn_.constLast().lines.size());
        double& height = heights_[static_cast<std::size_t>(row_of(box))];
        height = std::max(height, lines * line_height_of(letters) + 2.0 * around_words);
    }
    for (double& height : heights_)
        height = std::max(height, line_height_of(letters)) + between_rows;
}

QList<Line> Drawing::lines_of(const DiagramBox& box, const words::Language& language) const {
    QList<Line> lines;
    const auto add = [&](const QString& text, Type type) {
        for (const QString& each : broken(text, type, inside_))
            lines.append({each, type});
    };
    add(in_qt(language, box.title), bold_letters);
    add(in_qt(language, box.detail), letters);
    if (box.severity == scenario::Severity::stop)
        add(in_qt(language, words::said<"STOP">()), bold_letters);
    if (box.severity == scenario::Severity::caution)
        add(in_qt(language, words::said<"Caution">()), bold_letters);
    return lines;
}

double Drawing::top_of(int row) const {
    double top = 0.0;
    for (int above = 0; above < row && above < rows(); ++above)
        top += heights_[static_cast<std::size_t>(above)];
    return top;
}

// y of the layout counts rows; the middle of a row is its half.
double Drawing::middle_of(double y) const {
    const int row = std::clamp(static_cast<int>(std::floor(y)), 0, rows() - 1);
    return top_of(row) + (y - row) * heights_[static_cast<std::size_t>(row)];
}

int Drawing::column_of_bus() const {
    const auto bus = std::ranges::find(diagram_.boxes, BoxKind::bus, &DiagramBox::kind);
    return bus == diagram_.boxes.end() ? 0 : column_of(*bus);
}

QRectF Drawing::frame_of(const DiagramBox& box) const {
    const double middle = box.x * column_wide();
    if (box.kind == BoxKind::bus) {
        const double top = middle_of(box.y - 0.5 * box.height) + 4.0;
        const double low = top_of(static_cast<int>(std::lround(box.y + 0.5 * box.height))) - 4.0;
        return {middle - bus_wide / 2.0, top, bus_wide, low - top};
    }
    const double wide = column_wide() - between_boxes;
    const double tall = heights_[static_cast<std::size_t>(row_of(box))] - between_rows;
    return {middle - wide / 2.0, middle_of(box.y) - tall / 2.0, wide, tall};
}

const DiagramBox* Drawing::named(const std::string& id) const {
    const auto found = std::ranges::find(diagram_.boxes, id, &DiagramBox::id);
    return found == diagram_.boxes.end() ? nullptr : &*found;
}

// Level from the one, down or up just before the other, level into it.
std::vector<QLineF> Drawing::path_of(const answers::DiagramLine& line) const {
    const DiagramBox* from = named(line.from);
    const DiagramBox* to = named(line.to);
    if (!from || !to) return {};
    const QRectF one = frame_of(*from);
    const QRectF other = frame_of(*to);
    const double y1 = middle_of(from->kind == BoxKind::bus ? to->y : from->y);
    const double y2 = middle_of(to->kind == BoxKind::bus ? from->y : to->y);
    const double bend = other.left() - between_boxes / 2.0;
    return {{one.right(), y1, bend, y1}, {bend, y1, bend, y2}, {bend, y2, other.left(), y2}};
}

// The part of a level or upright line within a rectangle; of no length where there is none.
QLineF within(const QLineF& line, const QRectF& room) {
    const auto kept = [&](QPointF point) {
        return QPointF(std::clamp(point.x(), room.left(), room.right()),
                       std::clamp(point.y(), room.top(), room.bottom()));
    };
    const bool level = line.p1().y() == line.p2().y();
    const bool beside = level ? line.p1().y() < room.top() || line.p1().y() > room.bottom()
                              : line.p1().x() < room.left() || line.p1().x() > room.right();
    return beside ? QLineF(kept(line.p1()), kept(line.p1())) : QLineF(kept(line.p1()), kept(line.p2()));
}

void add_frame(Block& block, const QRectF& frame, double weight) {
    block.sheet.strokes.append({{frame.topLeft(), frame.topRight()}, weight});
    block.sheet.strokes.append({{frame.topRight(), frame.bottomRight()}, weight});
    block.sheet.strokes.append({{frame.bottomRight(), frame.bottomLeft()}, weight});
    block.sheet.strokes.append({{frame.bottomLeft(), frame.topLeft()}, weight});
}

void add_box(Block& block, const Drawn& drawn, const QRectF& frame) {
    block.sheet.shapes.append({QPolygonF(frame), 1.0});
    add_frame(block, frame, weight_of(drawn.box->severity));
    const double line = line_height_of(letters);
    double y = frame.top() + (frame.height() - line * static_cast<double>(drawn.lines.size())) / 2.0;
    for (const auto& [text, type] : drawn.lines) {
        put(block, text, type, frame.left() + (frame.width() - width_of(text, type)) / 2.0,
            frame.width(), y);
        y += line;
    }
}

Block Drawing::piece(int column, int columns, int row, int rows) const {
    const QRectF room(QPointF(column * column_wide(), top_of(row)),
                      QPointF((column + columns) * column_wide(), top_of(row + rows)));
    Block block;
    for (const auto& line : diagram_.lines)
        for (const QLineF& part : path_of(line))
            if (const QLineF seen = within(part, room); seen.length() > 0.0)
                block.sheet.strokes.append({seen, weight_of(line.severity)});
    for (const auto& box : diagram_.boxes)
        if (const QRectF frame = frame_of(box);
            box.kind == BoxKind::bus && room.contains(QPointF(frame.center().x(), room.top())))
            block.sheet.shapes.append({QPolygonF(frame & room), 0.0});
    for (const Drawn& drawn : drawn_)
        if (const QRectF frame = frame_of(*drawn.box); room.contains(frame))
            add_box(block, drawn, frame);
    move(block.sheet, -room.left(), -room.top());
    block.height = room.height();
    return block;
}

struct Part {
    int first = 0;
    int count = 0;
};

// All columns, so many at most at once. The last of a part begins the next again; parts meet at the
// bus where that takes no more of them.
std::vector<Part> parts_of(int columns, int at_once, int bus) {
    if (columns <= at_once) return {{0, columns}};
    if (bus > 0 && bus + 1 <= at_once && columns - bus <= at_once)
        return {{0, bus + 1}, {bus, columns - bus}};
    std::vector<Part> parts;
    for (int first = 0; first + 1 < columns; first += at_once - 1)
        parts.push_back({first, std::min(at_once, columns - first)});
    return parts;
}

std::vector<Part> rows_of(const Drawing& drawing, double height) {
    std::vector<Part> parts{{0, 0}};
    for (int row = 0; row < drawing.rows(); ++row) {
        Part& last = parts.back();
        if (last.count > 0 && drawing.top_of(row + 1) - drawing.top_of(last.first) > height)
            parts.push_back({row, 1});
        else
            ++last.count;
    }
    return parts;
}

}  // namespace

Block wiring_plot(const WiringDiagram& diagram, const words::Language& language) {
    const Drawing drawing(diagram, language);
    return drawing.piece(0, drawing.columns(), 0, drawing.rows());
}

QList<Block> wiring_plots(const WiringDiagram& diagram, QSizeF room,
                          const words::Language& language) {
    const Drawing drawing(diagram, language);
    const QString goes_on = in_qt(language, faces::paper::goes_on_at_the_right());
    const double for_words = line_height_of(letters) + 4.0;
    const int at_once = std::max(2, static_cast<int>(room.width() / drawing.column_wide()));
    const auto across = parts_of(drawing.columns(), at_once, drawing.column_of_bus());
    QList<Block> pieces;
    for (const Part& rows : rows_of(drawing, room.height() - for_words))
        for (const Part& columns : across) {
            Block piece = drawing.piece(columns.first, columns.count, rows.first, rows.count);
            if (piece.sheet.words.isEmpty()) continue;
            if (columns.first + columns.count < drawing.columns()) {
                piece.height += 4.0;
                add_lines(piece, goes_on, letters, room.width());
            }
            pieces.append(piece);
        }
    return pieces;
}

}  // namespace printing
