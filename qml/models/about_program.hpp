// What this program is, under which licence, and what it is made with.
#pragma once

#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace touch {

class AboutProgram : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString version READ version CONSTANT)
    // {name, licence, use} each.
    Q_PROPERTY(QVariantList parts READ parts CONSTANT)
    // The licence, a paragraph each.
    Q_PROPERTY(QStringList licence READ licence CONSTANT)

  public:
    using QObject::QObject;

    [[nodiscard]] static QString version();
    [[nodiscard]] static QVariantList parts();
    [[nodiscard]] static QStringList licence();
};

}  // namespace touch
