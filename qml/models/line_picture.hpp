// A thing in the house, drawn in lines of one width: told by its shape, not by colour.
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace touch {

class LinePicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name MEMBER name_ NOTIFY changed)  // one of names(); else nothing is drawn
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)

  public:
    explicit LinePicture(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

    [[nodiscard]] static QStringList names();

  signals:
    void changed();

  private:
    QString name_;
    QColor ink_;
};

}  // namespace touch
