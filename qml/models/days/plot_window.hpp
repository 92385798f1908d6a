// The part of a plot that is in sight, as shares of its width: drawn nearer by buttons and by two
// fingers, and moved along.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace touch {

class PlotWindow : public QObject {
    Q_OBJECT
    QML_ELEMENT
    // How long the whole plot is; it may be drawn so near that `least_hours` are in sight.
    Q_PROPERTY(double hours READ hours WRITE set_hours NOTIFY moved)
    Q_PROPERTY(double from READ from NOTIFY moved)
    Q_PROPERTY(double to READ to NOTIFY moved)
    Q_PROPERTY(double stretch READ stretch NOTIFY moved)  // how many times nearer, 1 at least
    Q_PROPERTY(bool canNearer READ can_nearer NOTIFY moved)
    Q_PROPERTY(bool canFarther READ can_farther NOTIFY moved)

  public:
    static constexpr double least_hours = 6.0;

    using QObject::QObject;

    // Twice as near, or half, around a share of the whole plot.
    Q_INVOKABLE void nearer(double around);
    Q_INVOKABLE void farther(double around);
    Q_INVOKABLE void toWhole();
    // Two fingers: what lay under the middle of them when they began stays under it.
    //   takes  middle: share of what is in sight, now; scale: 1 as they began
    Q_INVOKABLE void beginPinch(double middle);
    Q_INVOKABLE void pinch(double middle, double scale);
    // Moves what is in sight by a share of itself, to the right where above 0.
    Q_INVOKABLE void pan(double inSight) { take(stretch(), from_ + inSight * length(), 0.0); }
    // Moves as little as it takes to have a share of the whole plot in sight.
    Q_INVOKABLE void show(double share);
    // Share of the whole plot at a share of what is in sight.
    Q_INVOKABLE double shareAt(double inSight) const { return from_ + inSight * length(); }

    [[nodiscard]] double hours() const { return hours_; }
    void set_hours(double hours);
    [[nodiscard]] double nearest() const {
        return hours_ > least_hours ? hours_ / least_hours : 1.0;
    }
    [[nodiscard]] double from() const { return from_; }
    [[nodiscard]] double to() const { return to_; }
    [[nodiscard]] double stretch() const { return 1.0 / length(); }
    [[nodiscard]] bool can_nearer() const { return stretch() < nearest() * 0.999; }
    [[nodiscard]] bool can_farther() const { return stretch() > 1.001; }

  signals:
    void moved();

  private:
    [[nodiscard]] double length() const { return to_ - from_; }
    // So that a share of the plot lies at a share of what is in sight.
    void take(double stretch, double share, double in_sight);

    double hours_ = 96.0;
    double from_ = 0.0;
    double to_ = 1.0;
    double pinched_stretch_ = 1.0;
    double pinched_share_ = 0.5;
};

}  // namespace touch
