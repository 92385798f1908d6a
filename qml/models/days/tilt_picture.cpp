#include "models/days/tilt_picture.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <QPainter>

namespace touch {

namespace {

constexpr double degree = std::numbers::pi / 180.0;
constexpr double edge = 16.0;  // px around the picture
constexpr double disc = 13.0;  // px, the sun

}  // namespace

TiltPicture::TiltPicture(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setAntialiasing(true);
    connect(this, &TiltPicture::changed, this, [this] { update(); });
}

// The sun is on the right, so the panel leans back to the left from its foot.
QPointF TiltPicture::foot() const {
    return {width() * 0.42, height() - edge};
}

double TiltPicture::length() const {
    return std::min(width() * 0.36, height() - 2.0 * edge);
}

double TiltPicture::tiltTowards(double x, double y) const {
    const QPointF from = foot();
    return std::clamp(std::atan2(from.y() - y, from.x() - x) / degree, 0.0, 90.0);
}

void TiltPicture::paint(QPainter* painter) {
    painter->setRenderHint(QPainter::Antialiasing);
    const QPointF at = foot();
    painter->setPen(QPen(ground_, 2.0));
    painter->drawLine(QPointF(edge, at.y()), QPointF(width() - edge, at.y()));

    const QPointF top =
        at + length() * QPointF(-std::cos(tilt_ * degree), -std::sin(tilt_ * degree));
    // The prop behind it.
    if (tilt_ > 4.0) {
        painter->setPen(QPen(ground_, 3.0));
        painter->drawLine(at + 0.85 * (top - at), QPointF(top.x() - 0.06 * width(), at.y()));
    }
    painter->setPen(QPen(panel_, 9.0, Qt::SolidLine, Qt::RoundCap));
    painter->drawLine(at, top);
    painter->setBrush(panel_);
    painter->setPen(QPen(ground_, 2.0));
    painter->drawEllipse(top, 11.0, 11.0);  // to take hold of

    if (!std::isfinite(noon_) || noon_ < 0.0) return;
    const QPointF middle = at + 0.5 * (top - at);
    const QPointF up(std::cos(noon_ * degree), -std::sin(noon_ * degree));
    const double across = up.x() > 0.01 ? (width() - edge - disc - middle.x()) / up.x() : 1e9;
    const double above = up.y() < -0.01 ? (middle.y() - edge - disc) / -up.y() : 1e9;
    const QPointF sun = middle + std::min(across, above) * up;
    painter->setPen(QPen(ray_, 1.5, Qt::DashLine));
    painter->drawLine(middle, sun);
    painter->setPen(Qt::NoPen);
    painter->setBrush(sun_);
    painter->drawEllipse(sun, disc, disc);
}

}  // namespace touch
