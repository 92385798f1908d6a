#include "print/sheet_svg.hpp"

#include <fmt/format.h>

#include "faces/pictures/wiring_svg.hpp"

namespace printing {

namespace {

std::string line_of(const Stroke& stroke) {
    return fmt::format(
        "<line x1=\"{:.2f}\" y1=\"{:.2f}\" x2=\"{:.2f}\" y2=\"{:.2f}\" stroke=\"#000\" "
        "stroke-width=\"{:.2f}\"/>\n",
        stroke.line.x1(), stroke.line.y1(), stroke.line.x2(), stroke.line.y2(), stroke.width);
}

std::string polygon_of(const Shape& shape) {
    std::string points;
    for (const QPointF& point : shape.outline)
        points += fmt::format("{:.2f},{:.2f} ", point.x(), point.y());
    const int grey = qRound(shape.grey * 255.0);
    return fmt::format("<polygon points=\"{0}\" fill=\"#{1:02x}{1:02x}{1:02x}\"/>\n", points, grey);
}

std::string rectangle_of(const QRectF& box) {
    return fmt::format(
        "<rect x=\"{:.2f}\" y=\"{:.2f}\" width=\"{:.2f}\" height=\"{:.2f}\" fill=\"none\" "
        "stroke=\"#000\" stroke-width=\"1.2\"/>\n",
        box.x(), box.y(), box.width(), box.height());
}

std::string text_of(const Words& words) {
    return fmt::format(
        "<text x=\"{:.2f}\" y=\"{:.2f}\" font-size=\"{:g}\"{} textLength=\"{:.2f}\">{}</text>\n",
        words.box.x(), words.box.y() + ascent_of(words.type), words.type.size,
        words.type.bold ? " font-weight=\"bold\"" : "", words.box.width(),
        faces::in_xml(words.text.toStdString()));
}

}  // namespace

QByteArray in_svg(const Sheet& sheet, const QString& title) {
    std::string svg = fmt::format(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0:.2f}pt\" height=\"{1:.2f}pt\" "
        "viewBox=\"0 0 {0:.2f} {1:.2f}\" font-family=\"DejaVu Sans, sans-serif\">\n"
        "<title>{2}</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n",
        sheet.size.width(), sheet.size.height(), faces::in_xml(title.toStdString()));
    for (const Shape& shape : sheet.shapes)
        svg += polygon_of(shape);
    for (const Stroke& stroke : sheet.strokes)
        svg += line_of(stroke);
    for (const QRectF& box : sheet.boxes)
        svg += rectangle_of(box);
    for (const Words& words : sheet.words)
        svg += text_of(words);
    return QByteArray::fromStdString(svg + "</svg>\n");
}

}  // namespace printing
