#include "models/words/severity_mark.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <QPainter>
#include <QPolygonF>

namespace touch {

namespace {

QPolygonF plate(QPointF middle, double radius, int corners, double first) {
    QPolygonF polygon;
    for (int corner = 0; corner < corners; ++corner) {
        const double angle = first + 2.0 * std::numbers::pi * corner / corners;
        polygon << middle + radius * QPointF(std::cos(angle), std::sin(angle));
    }
    return polygon;
}

}  // namespace

SeverityMark::SeverityMark(QQuickItem* parent) : QQuickPaintedItem(parent) {
    connect(this, &SeverityMark::changed, this, [this] { update(); });
}

void SeverityMark::paint(QPainter* painter) {
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(Qt::NoPen);
    painter->setBrush(colour_);
    const double radius = std::min(width(), height()) / 2.0;
    const QPointF middle(width() / 2.0, height() / 2.0);
    QPointF written = middle;
    if (mark_ == u"stop") {
        painter->drawPolygon(plate(middle, radius, 8, std::numbers::pi / 8.0));
    } else if (mark_ == u"caution") {
        written += QPointF(0.0, radius * 0.3);
        painter->drawPolygon(
            plate(middle + QPointF(0.0, radius * 0.2), radius * 1.15, 3, -std::numbers::pi / 2.0));
    } else {
        painter->drawEllipse(middle, radius * 0.92, radius * 0.92);
    }
    QFont font = painter->font();
    font.setBold(true);
    font.setPixelSize(static_cast<int>(radius * (number_.size() > 1 ? 0.85 : 1.05)));
    painter->setFont(font);
    painter->setPen(ink_);
    const QString sign = !number_.isEmpty() ? number_ : mark_ == u"note" ? u"i"_qs : u"!"_qs;
    painter->drawText(
        QRectF(written.x() - radius, written.y() - radius, 2.0 * radius, 2.0 * radius),
        Qt::AlignCenter, sign);
}

}  // namespace touch
