#include "models/days/taper.hpp"

#include <algorithm>
#include <cmath>

#include <QFontMetricsF>
#include <QLinearGradient>
#include <QPainter>
#include <QPainterPath>
#include <QRadialGradient>

namespace touch {

namespace {

constexpr double flame_height = 44.0;
constexpr double flame_width = 19.0;
constexpr double foot_height = 16.0;
constexpr double widest_column = 76.0;
constexpr double closest_scratches = 3.0;  // below this distance hours are not told apart

QColor faded(QColor colour, double alpha) {
    colour.setAlphaF(static_cast<float>(alpha));
    return colour;
}

// Round like a column: darker at both edges, lit from the left.
QLinearGradient rounded(double left, double right, const QColor& colour) {
    QLinearGradient across(left, 0.0, right, 0.0);
    across.setColorAt(0.0, colour.darker(150));
    across.setColorAt(0.25, colour.lighter(106));
    across.setColorAt(0.45, colour);
    across.setColorAt(1.0, colour.darker(165));
    return across;
}

}  // namespace

// Where the candle stands in the item.
struct Taper::Column {
    double left = 0.0;
    double right = 0.0;
    double foot = 0.0;      // y of zero hours
    double per_hour = 0.0;  // height of an hour
    double level = 0.0;     // hours still standing, likely

    [[nodiscard]] double width() const { return right - left; }
    [[nodiscard]] double lip() const { return width() * 0.09; }  // half height of the rim's ellipse
    [[nodiscard]] double y(double hours) const { return foot - hours * per_hour; }
    [[nodiscard]] QPointF rim() const { return {(left + right) / 2.0, y(level)}; }
    [[nodiscard]] QPainterPath body() const {
        const QPointF middle = rim();
        QPainterPath path;
        path.moveTo(left, middle.y());
        path.lineTo(left, foot - lip());
        path.quadTo(middle.x(), foot + lip(), right, foot - lip());
        path.lineTo(right, middle.y());
        path.quadTo(middle.x(), middle.y() + 2.0 * lip(), left, middle.y());
        return path;
    }
};

Taper::Taper(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &Taper::changed, this, [this] { update(); });
}

void Taper::set_candle(const Candle& candle) {
    candle_ = candle;
    emit changed();
}

Taper::Column Taper::column() const {
    const double tallest = std::max({candle_.outage, candle_.latest, 1.0});
    const double wide = std::min(width() * 0.46, widest_column);
    const double foot = height() - foot_height;
    Column column;
    column.left = 6.0;
    column.right = column.left + wide;
    column.foot = foot;
    column.per_hour = std::max(0.0, foot - flame_height - 0.09 * wide - 4.0) / tallest;
    column.level = std::max(0.0, candle_.likely - burnt_);
    return column;
}

void Taper::paint(QPainter* painter) {
    if (candle_.outage <= 0.0) return;
    painter->setRenderHint(QPainter::Antialiasing);
    const Column standing = column();
    paint_outline(*painter, standing);
    paint_foot(*painter, standing);
    paint_wax(*painter, standing);
    paint_scratches(*painter, standing);
    paint_flame(*painter, standing);
    paint_marks(*painter, standing);
}

void Taper::paint_foot(QPainter& painter, const Column& column) const {
    const QRectF dish(column.left - 5.0, column.foot - column.lip() - 1.0, column.width() + 10.0,
                      foot_height);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ghost_);
    painter.drawRoundedRect(dish, 6.0, 6.0);
}

// The whole column that the outage asks for; what is burnt or missing shows as this outline.
void Taper::paint_outline(QPainter& painter, const Column& column) const {
    const double top = column.y(candle_.outage);
    QPen pen(ghost_, 1.5, Qt::DashLine);
    pen.setDashPattern({4.0, 3.0});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawLine(QPointF(column.left, column.foot), QPointF(column.left, top));
    painter.drawLine(QPointF(column.right, column.foot), QPointF(column.right, top));
    painter.drawEllipse(QPointF((column.left + column.right) / 2.0, top), column.width() / 2.0,
                        column.lip());
    // Burnt since the start: a breath of wax where it stood.
    if (burnt_ > 0.0 && candle_.likely > 0.0) {
        const QRectF burnt(QPointF(column.left, column.y(candle_.likely)),
                           QPointF(column.right, column.y(column.level)));
        painter.fillRect(burnt, faded(wax_, 0.12));
    }
}

void Taper::paint_wax(QPainter& painter, const Column& column) const {
    const double latest = std::max(0.0, candle_.latest - burnt_);
    if (latest > column.level) {  // wax that may be there
        const QRectF maybe(QPointF(column.left, column.y(latest)),
                           QPointF(column.right, column.y(column.level)));
        painter.fillRect(maybe, faded(wax_, 0.22));
    }
    if (column.level <= 0.0) return;
    paint_body(painter, column);
    paint_rim(painter, column);
}

// From the foot up to the rim, the sunny hours in their tone.
void Taper::paint_body(QPainter& painter, const Column& column) const {
    const double earliest = std::clamp(candle_.earliest - burnt_, 0.0, column.level);
    const QPainterPath body = column.body();
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(rounded(column.left, column.right, wax_));
    painter.drawPath(body);
    painter.setClipPath(body);
    for (const Candle::Hours& sunny : candle_.sunny) {
        const double from = candle_.likely - sunny.from;
        const double to = std::max(0.0, candle_.likely - sunny.to);
        if (from <= 0.0) continue;
        painter.setBrush(rounded(column.left, column.right, sun_wax_));
        painter.setPen(QPen(scratch_, 1.0));  // the two waxes are nearly as light as each other
        painter.drawRect(
            QRectF(QPointF(column.left, column.y(from)), QPointF(column.right, column.y(to))));
        painter.setPen(Qt::NoPen);
    }
    if (column.level > earliest) {  // wax that may not be there: hatched
        painter.setBrush(QBrush(scratch_, Qt::BDiagPattern));
        painter.drawRect(QRectF(QPointF(column.left, column.y(column.level)),
                                QPointF(column.right, column.y(earliest))));
    }
    painter.restore();
    painter.setPen(QPen(scratch_, 1.2));  // pale wax on a pale page is seen by its edge
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(body);
}

// The molten rim, and one run of wax down the lit side.
void Taper::paint_rim(QPainter& painter, const Column& column) const {
    const QPointF middle = column.rim();
    painter.setPen(Qt::NoPen);
    const double run = std::min(26.0, (column.foot - middle.y()) * 0.6);
    painter.setBrush(wax_.lighter(118));
    painter.drawRoundedRect(QRectF(column.left - 1.5, middle.y(), 9.0, run), 4.5, 4.5);
    painter.setBrush(wax_.lighter(122));
    painter.drawEllipse(middle, column.width() / 2.0 + 1.0, column.lip());
    painter.setBrush(faded(flame_heart_, 0.8));
    painter.drawEllipse(middle, column.width() * 0.3, column.lip() * 0.55);
}

void Taper::paint_scratches(QPainter& painter, const Column& column) const {
    const int step = column.per_hour >= closest_scratches ? 1 : 6;
    if (column.per_hour * step < closest_scratches) return;
    const double rim = column.y(column.level) + column.lip();
    for (int hour = step; hour < static_cast<int>(std::ceil(candle_.outage)); hour += step) {
        const bool day = hour % 24 == 0;
        const bool quarter = hour % 6 == 0;
        const double y = column.y(hour);
        const bool in_wax = y > rim;
        const double reach = day ? 1.0 : quarter ? 0.42 : 0.2;
        painter.setPen(QPen(in_wax ? scratch_ : ghost_, day ? 2.0 : 1.0));
        const double sag = day ? column.lip() * 0.8 : 0.0;
        QPainterPath line(QPointF(column.left + 1.0, y));
        line.quadTo(column.left + column.width() * reach / 2.0, y + sag,
                    column.left + column.width() * reach - 1.0, y);
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(line);
    }
}

void Taper::paint_flame(QPainter& painter, const Column& column) const {
    if (column.level <= 0.0) return;
    const double x = (column.left + column.right) / 2.0;
    const double y = column.y(column.level) - 3.0;
    painter.setPen(QPen(scratch_, 2.5, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(x, y + 3.0), QPointF(x, y - 7.0));

    QRadialGradient glow(QPointF(x, y - 20.0), 40.0);
    glow.setColorAt(0.0, faded(flame_, 0.38));
    glow.setColorAt(1.0, faded(flame_, 0.0));
    painter.setPen(Qt::NoPen);
    painter.setBrush(glow);
    painter.drawEllipse(QPointF(x, y - 20.0), 40.0, 40.0);

    const auto tongue = [x](double foot, double tall, double wide) {
        QPainterPath path(QPointF(x, foot - tall));
        path.cubicTo(x + wide * 0.25, foot - tall * 0.62, x + wide * 0.72, foot - tall * 0.42,
                     x + wide * 0.5, foot - tall * 0.16);
        path.cubicTo(x + wide * 0.38, foot, x - wide * 0.38, foot, x - wide * 0.5,
                     foot - tall * 0.16);
        path.cubicTo(x - wide * 0.66, foot - tall * 0.42, x - wide * 0.12, foot - tall * 0.6, x,
                     foot - tall);
        return path;
    };
    painter.setBrush(flame_);
    painter.drawPath(tongue(y - 2.0, flame_height - 8.0, flame_width));
    painter.setBrush(flame_heart_);
    painter.drawPath(tongue(y - 3.0, (flame_height - 8.0) * 0.58, flame_width * 0.56));
}

// Hours at the right of the column; the flame's own text has the right of way.
void Taper::paint_marks(QPainter& painter, const Column& column) const {
    QFont font = painter.font();
    font.setPixelSize(text_size_);
    font.setBold(true);
    painter.setFont(font);
    const double line = QFontMetricsF(font).height();
    const double x = column.right + 12.0;
    const auto write = [&](double y, const QString& text, const QColor& colour) {
        painter.setPen(colour);
        painter.drawText(QRectF(x, y - line / 2.0, width() - x, line),
                         Qt::AlignLeft | Qt::AlignVCenter, text);
    };

    const double flame_y = std::max(line / 2.0, column.y(column.level) - flame_height * 0.4);
    write(flame_y, flame_text_, ink_);
    font.setBold(false);
    painter.setFont(font);
    double free_below = column.foot + line;  // marks are written from the foot upwards
    for (const Candle::Mark& mark : candle_.marks) {
        const double y = std::max(line / 2.0, column.y(mark.hours));
        const bool covered = std::abs(y - flame_y) < line * 1.15;
        if (covered || free_below - y < line * 1.3) continue;
        painter.setPen(QPen(ghost_, 1.5));
        painter.drawLine(QPointF(column.right + 2.0, y), QPointF(column.right + 8.0, y));
        write(y, mark.text, quiet_ink_);
        free_below = y;
    }
}

}  // namespace touch
