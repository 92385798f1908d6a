#include "models/days/plot_window.hpp"

#include <algorithm>

namespace touch {

void PlotWindow::take(double stretch, double share, double in_sight) {
    const double length = 1.0 / std::clamp(stretch, 1.0, nearest());
    from_ = std::clamp(share - in_sight * length, 0.0, 1.0 - length);
    to_ = from_ + length;
    emit moved();
}

void PlotWindow::set_hours(double hours) {
    if (hours == hours_) return;
    hours_ = hours;
    take(stretch(), from_, 0.0);
}

void PlotWindow::nearer(double around) {
    show(around);
    take(2.0 * stretch(), around, (around - from_) / length());
}

void PlotWindow::farther(double around) {
    show(around);
    take(0.5 * stretch(), around, (around - from_) / length());
}

void PlotWindow::toWhole() {
    take(1.0, 0.0, 0.0);
}

void PlotWindow::beginPinch(double middle) {
    pinched_stretch_ = stretch();
    pinched_share_ = shareAt(middle);
}

void PlotWindow::pinch(double middle, double scale) {
    take(pinched_stretch_ * scale, pinched_share_, middle);
}

void PlotWindow::show(double share) {
    if (share >= from_ && share <= to_) return;
    take(stretch(), share, share < from_ ? 0.0 : 1.0);
}

}  // namespace touch
