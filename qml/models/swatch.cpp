#include "models/swatch.hpp"

#include <QBrush>
#include <QPainter>
#include <QPen>

namespace touch {

Swatch::Swatch(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &Swatch::changed, this, [this] { update(); });
}

void Swatch::paint(QPainter* painter) {
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF whole(0.5, 0.5, width() - 1.0, height() - 1.0);
    const QRectF column(width() * 0.2, 0.5, width() * 0.6, height() - 1.0);
    const auto block = [painter](const QRectF& where, const QBrush& brush,
                                 const QPen& pen = Qt::NoPen) {
        painter->setPen(pen);
        painter->setBrush(brush);
        painter->drawRoundedRect(where, 2.5, 2.5);
    };
    const auto line = [painter, this](double y, const QColor& colour, double thick) {
        painter->setPen(QPen(colour, thick));
        painter->drawLine(QPointF(0.0, y), QPointF(width(), y));
    };

    if (kind_ == u"wax") block(column, wax_);
    if (kind_ == u"sunWax") block(column, sun_wax_);
    if (kind_ == u"doubt") {
        block(column, wax_);
        block(column, QBrush(scratch_, Qt::BDiagPattern));
    }
    if (kind_ == u"missing") block(column, Qt::NoBrush, QPen(ghost_, 1.5, Qt::DashLine));
    if (kind_ == u"night") block(whole, night_, QPen(ghost_, 1.0));
    if (kind_ == u"band") {
        block(whole, stored_range_);
        line(height() / 2.0, stored_, 3.0);
    }
    if (kind_ == u"loads") line(height() / 2.0, loads_, 3.0);
    if (kind_ == u"sun") {
        block(QRectF(0.0, height() * 0.3, width(), height() * 0.7), sun_fill_);
        line(height() * 0.3, sun_, 2.0);
    }
}

}  // namespace touch
