// The candle, drawn: a column as tall as the outage, wax as high as its hours last, a notch for
// every hour, the hours that the sun carries in a second tone, what is missing or burnt in outline.
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include "models/days/days_view.hpp"

namespace touch {

class Taper : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::Candle candle READ candle WRITE set_candle NOTIFY changed)
    Q_PROPERTY(double burnt MEMBER burnt_ NOTIFY changed)            // hours since the start
    Q_PROPERTY(QString flameText MEMBER flame_text_ NOTIFY changed)  // beside the flame
    Q_PROPERTY(int textSize MEMBER text_size_ NOTIFY changed)
    Q_PROPERTY(QColor wax MEMBER wax_ NOTIFY changed)
    Q_PROPERTY(QColor sunWax MEMBER sun_wax_ NOTIFY changed)
    Q_PROPERTY(QColor scratch MEMBER scratch_ NOTIFY changed)
    Q_PROPERTY(QColor ghost MEMBER ghost_ NOTIFY changed)
    Q_PROPERTY(QColor flame MEMBER flame_ NOTIFY changed)
    Q_PROPERTY(QColor flameHeart MEMBER flame_heart_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)
    Q_PROPERTY(QColor quietInk MEMBER quiet_ink_ NOTIFY changed)

  public:
    explicit Taper(QQuickItem* parent = nullptr);

    [[nodiscard]] Candle candle() const { return candle_; }
    void set_candle(const Candle& candle);

    void paint(QPainter* painter) override;

  signals:
    void changed();

  private:
    struct Column;
    [[nodiscard]] Column column() const;
    void paint_foot(QPainter& painter, const Column& column) const;
    void paint_outline(QPainter& painter, const Column& column) const;
    void paint_wax(QPainter& painter, const Column& column) const;
    void paint_body(QPainter& painter, const Column& column) const;
    void paint_rim(QPainter& painter, const Column& column) const;
    void paint_scratches(QPainter& painter, const Column& column) const;
    void paint_flame(QPainter& painter, const Column& column) const;
    void paint_marks(QPainter& painter, const Column& column) const;

    Candle candle_;
    double burnt_ = 0.0;
    QString flame_text_;
    int text_size_ = 14;
    QColor wax_;
    QColor sun_wax_;
    QColor scratch_;
    QColor ghost_;
    QColor flame_;
    QColor flame_heart_;
    QColor ink_;
    QColor quiet_ink_;
};

}  // namespace touch
