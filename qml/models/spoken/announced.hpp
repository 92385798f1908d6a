// Words that a screen reader reads out when they have become others, wherever the keyboard is: they
// are told as a notice that appears. Told once, when they stand still.
#pragma once

#include <QObject>
#include <QPointer>
#include <QQuickItem>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace touch {

class Announced : public QObject {
    Q_OBJECT
    QML_ELEMENT
    // That has the words as its accessible name, and the role of a notification.
    Q_PROPERTY(QQuickItem* item MEMBER item_ NOTIFY changed)
    Q_PROPERTY(QString text MEMBER text_ NOTIFY changed)
    // Others are not about to come in their place.
    Q_PROPERTY(bool settled MEMBER settled_ NOTIFY changed)

  public:
    explicit Announced(QObject* parent = nullptr);

  signals:
    void changed();

  private:
    void announce();

    QPointer<QQuickItem> item_;
    QString text_;
    QString told_;
    bool settled_ = true;
    QTimer standing_still_;
};

}  // namespace touch
