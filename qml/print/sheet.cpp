#include "print/sheet.hpp"

#include <QPen>

namespace printing {

void move(Sheet& sheet, double right, double down) {
    for (Words& words : sheet.words)
        words.box.translate(right, down);
    for (Stroke& stroke : sheet.strokes)
        stroke.line.translate(right, down);
    for (QRectF& box : sheet.boxes)
        box.translate(right, down);
    for (Shape& shape : sheet.shapes)
        shape.outline.translate(right, down);
}

void add(Sheet& sheet, const Sheet& other) {
    sheet.words += other.words;
    sheet.strokes += other.strokes;
    sheet.boxes += other.boxes;
    sheet.shapes += other.shapes;
}

void paint(QPainter& painter, const Sheet& sheet) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    for (const Shape& shape : sheet.shapes) {
        painter.setBrush(QColor::fromHsvF(0.0F, 0.0F, static_cast<float>(shape.grey)));
        painter.drawPolygon(shape.outline);
    }
    for (const Stroke& stroke : sheet.strokes) {
        painter.setPen(QPen(Qt::black, stroke.width, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(stroke.line);
    }
    painter.setPen(QPen(Qt::black, 1.2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.setBrush(Qt::NoBrush);
    for (const QRectF& box : sheet.boxes)
        painter.drawRect(box);
    painter.scale(1.0 / grain, 1.0 / grain);
    painter.setPen(Qt::black);
    for (const Words& words : sheet.words) {
        painter.setFont(font_of(words.type));
        const QPointF start(words.box.left(), words.box.top() + ascent_of(words.type));
        painter.drawText(start * grain, words.text);
    }
    painter.restore();
}

}  // namespace printing
