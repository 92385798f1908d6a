#include "models/days/swatch.hpp"

#include <array>

#include <QBrush>
#include <QPainter>
#include <QPen>

namespace touch {

Swatch::Swatch(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &Swatch::changed, this, [this] { update(); });
}

Qt::BrushStyle pattern_of(int place) {
    constexpr std::array patterns{Qt::SolidPattern, Qt::BDiagPattern, Qt::Dense5Pattern,
                                  Qt::HorPattern, Qt::CrossPattern};
    return patterns[static_cast<std::size_t>(place) % patterns.size()];
}

namespace {

void block(QPainter& painter, const QRectF& where, const QBrush& brush,
           const QPen& pen = Qt::NoPen) {
    painter.setPen(pen);
    painter.setBrush(brush);
    painter.drawRoundedRect(where, 2.5, 2.5);
}

}  // namespace

void Swatch::paint(QPainter* painter) {
    painter->setRenderHint(QPainter::Antialiasing);
    paint_wax(*painter);
    paint_area(*painter);
    paint_line(*painter);
}

void Swatch::paint_wax(QPainter& painter) const {
    const QRectF column(width() * 0.2, 0.5, width() * 0.6, height() - 1.0);
    const QPen edge(scratch_, 1.0);
    if (kind_ == u"wax") block(painter, column, wax_, edge);
    if (kind_ == u"sunWax") block(painter, column, sun_wax_, edge);
    if (kind_ == u"doubt") {
        block(painter, column, wax_, edge);
        block(painter, column, QBrush(scratch_, Qt::BDiagPattern));
    }
    if (kind_ == u"missing") block(painter, column, Qt::NoBrush, QPen(ghost_, 1.5, Qt::DashLine));
}

void Swatch::paint_area(QPainter& painter) const {
    const QRectF whole(0.5, 0.5, width() - 1.0, height() - 1.0);
    if (kind_ == u"night") {
        block(painter, whole, night_, QPen(ghost_, 1.0));
        block(painter, QRectF(0.5, height() - 5.0, width() - 1.0, 4.5), night_mark_);
    }
    if (kind_ == u"band") {
        block(painter, whole, stored_range_, QPen(stored_, 1.0));
        block(painter, whole.adjusted(1.0, height() * 0.25, -1.0, -height() * 0.25), stored_half_);
    }
    if (kind_ == u"stack")
        block(painter, whole, QBrush(stack_, pattern_of(place_)), QPen(stack_, 1.5));
    if (kind_ == u"sun") block(painter, whole, day_ground_, QPen(ghost_, 1.0));
}

void Swatch::paint_line(QPainter& painter) const {
    const auto line = [&](double y, const QPen& pen) {
        painter.setPen(pen);
        painter.drawLine(QPointF(1.0, y), QPointF(width() - 1.0, y));
    };
    if (kind_ == u"band") line(height() / 2.0, QPen(stored_, 3.0));
    if (kind_ == u"sun") line(height() / 2.0, QPen(sun_, 2.5));
    if (kind_ == u"empty") line(height() / 2.0, QPen(stop_, 2.0, Qt::DashLine));
    if (kind_ != u"end") return;
    const double middle = width() / 2.0;
    line(4.0, QPen(end_, 6.0, Qt::SolidLine, Qt::FlatCap));
    painter.setPen(QPen(end_, 2.0));
    painter.drawLine(QPointF(middle, 4.0), QPointF(middle, height()));
}

}  // namespace touch
