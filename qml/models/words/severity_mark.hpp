// A shape for each severity, told apart without colour: an eight-sided plate for stop, a
// triangle for caution, a disc for note.
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace touch {

class SeverityMark : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString mark MEMBER mark_ NOTIFY changed)  // "stop", "caution" or "note"
    Q_PROPERTY(QString number MEMBER number_ NOTIFY changed)
    Q_PROPERTY(QColor colour MEMBER colour_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)

  public:
    explicit SeverityMark(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

  signals:
    void changed();

  private:
    QString mark_;
    QString number_;
    QColor colour_;
    QColor ink_;
};

}  // namespace touch
