// A panel seen from the side on the ground, with the noon sun at its height: how it is propped up.
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace touch {

class TiltPicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double tilt MEMBER tilt_ NOTIFY changed)  // degrees from level
    Q_PROPERTY(double noon MEMBER noon_ NOTIFY changed)  // height of the noon sun, degrees
    Q_PROPERTY(QColor ground MEMBER ground_ NOTIFY changed)
    Q_PROPERTY(QColor panel MEMBER panel_ NOTIFY changed)
    Q_PROPERTY(QColor sun MEMBER sun_ NOTIFY changed)
    Q_PROPERTY(QColor ray MEMBER ray_ NOTIFY changed)

  public:
    explicit TiltPicture(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;
    // The tilt at which the panel would point to a place of the picture.
    Q_INVOKABLE double tiltTowards(double x, double y) const;

  signals:
    void changed();

  private:
    [[nodiscard]] QPointF foot() const;   // the lower edge of the panel
    [[nodiscard]] double length() const;  // of the panel

    double tilt_ = 0.0;
    double noon_ = 0.0;
    QColor ground_;
    QColor panel_;
    QColor sun_;
    QColor ray_;
};

}  // namespace touch
