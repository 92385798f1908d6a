// A small sample of how a series, a wax or a shade is drawn, for legends.
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace touch {

class Swatch : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    // "wax", "sunWax", "doubt", "missing", "band", "loads", "sun" or "night"
    Q_PROPERTY(QString kind MEMBER kind_ NOTIFY changed)
    Q_PROPERTY(QColor wax MEMBER wax_ NOTIFY changed)
    Q_PROPERTY(QColor sunWax MEMBER sun_wax_ NOTIFY changed)
    Q_PROPERTY(QColor scratch MEMBER scratch_ NOTIFY changed)
    Q_PROPERTY(QColor ghost MEMBER ghost_ NOTIFY changed)
    Q_PROPERTY(QColor stored MEMBER stored_ NOTIFY changed)
    Q_PROPERTY(QColor storedRange MEMBER stored_range_ NOTIFY changed)
    Q_PROPERTY(QColor loads MEMBER loads_ NOTIFY changed)
    Q_PROPERTY(QColor sun MEMBER sun_ NOTIFY changed)
    Q_PROPERTY(QColor sunFill MEMBER sun_fill_ NOTIFY changed)
    Q_PROPERTY(QColor night MEMBER night_ NOTIFY changed)

  public:
    explicit Swatch(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

  signals:
    void changed();

  private:
    QString kind_;
    QColor wax_;
    QColor sun_wax_;
    QColor scratch_;
    QColor ghost_;
    QColor stored_;
    QColor stored_range_;
    QColor loads_;
    QColor sun_;
    QColor sun_fill_;
    QColor night_;
};

}  // namespace touch
