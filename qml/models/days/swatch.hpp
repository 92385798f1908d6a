// A small sample of how a series, a wax or a shade is drawn, for legends.
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace touch {

// How the loads of one priority are painted, by its place among them: solid, then patterns that are
// told apart without colour.
[[nodiscard]] Qt::BrushStyle pattern_of(int place);

class Swatch : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    // "wax", "sunWax", "doubt", "missing", "band", "end", "empty", "stack", "sun" or "night"
    Q_PROPERTY(QString kind MEMBER kind_ NOTIFY changed)
    Q_PROPERTY(QColor wax MEMBER wax_ NOTIFY changed)
    Q_PROPERTY(QColor sunWax MEMBER sun_wax_ NOTIFY changed)
    Q_PROPERTY(QColor scratch MEMBER scratch_ NOTIFY changed)
    Q_PROPERTY(QColor ghost MEMBER ghost_ NOTIFY changed)
    Q_PROPERTY(QColor stored MEMBER stored_ NOTIFY changed)
    Q_PROPERTY(QColor storedRange MEMBER stored_range_ NOTIFY changed)
    Q_PROPERTY(int place MEMBER place_ NOTIFY changed)  // of a stack, from below
    Q_PROPERTY(QColor stack MEMBER stack_ NOTIFY changed)
    Q_PROPERTY(QColor end MEMBER end_ NOTIFY changed)
    Q_PROPERTY(QColor stop MEMBER stop_ NOTIFY changed)
    Q_PROPERTY(QColor storedHalf MEMBER stored_half_ NOTIFY changed)
    Q_PROPERTY(QColor dayGround MEMBER day_ground_ NOTIFY changed)
    Q_PROPERTY(QColor nightMark MEMBER night_mark_ NOTIFY changed)
    Q_PROPERTY(QColor sun MEMBER sun_ NOTIFY changed)
    Q_PROPERTY(QColor night MEMBER night_ NOTIFY changed)

  public:
    explicit Swatch(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

  signals:
    void changed();

  private:
    void paint_wax(QPainter& painter) const;
    void paint_line(QPainter& painter) const;
    void paint_area(QPainter& painter) const;

    QString kind_;
    QColor wax_;
    QColor sun_wax_;
    QColor scratch_;
    QColor ghost_;
    QColor stored_;
    QColor stored_range_;
    int place_ = 0;
    QColor stack_;
    QColor end_;
    QColor stop_;
    QColor stored_half_;
    QColor day_ground_;
    QColor night_mark_;
    QColor sun_;
    QColor night_;
};

}  // namespace touch
