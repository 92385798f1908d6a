// A number with its unit as it is being typed with a finger: digits, decimal point or comma, a
// fraction, the unit picked beside it.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "units/dimension.hpp"

namespace touch {

class NumberEntry : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString label READ label NOTIFY changed)
    Q_PROPERTY(QString typed READ typed NOTIFY changed)
    Q_PROPERTY(QString unit READ unit NOTIFY changed)
    Q_PROPERTY(QStringList units READ units NOTIFY changed)
    Q_PROPERTY(QString example READ example NOTIFY changed)
    // How it reads: "1.9 kWh"; empty while it does not.
    Q_PROPERTY(QString readsAs READ reads_as NOTIFY changed)
    // Why it does not read, in words; empty while nothing is typed.
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
    Q_PROPERTY(bool usable READ usable NOTIFY changed)
    Q_PROPERTY(QString key READ key NOTIFY changed)
    Q_PROPERTY(bool optional READ optional NOTIFY changed)

  public:
    using QObject::QObject;

    // As FieldsModel::asked gives it.
    Q_INVOKABLE void begin(const QVariantMap& asked);
    // A voltage that stands in no file.
    Q_INVOKABLE void beginVoltage(const QString& label, const QString& value);
    // One key of the pad: a digit, ".", ",", "/", "-" or ":".
    Q_INVOKABLE void press(const QString& sign);
    Q_INVOKABLE void back();
    Q_INVOKABLE void clear();
    Q_INVOKABLE void choose(const QString& unit);
    // A whole text such as "1,9 kWh", from elsewhere; its unit is taken when it has one.
    Q_INVOKABLE void paste(const QString& text);
    Q_INVOKABLE void pasteFromClipboard();
    // What goes into the file, whatever mark was typed: "1.9 kWh".
    Q_INVOKABLE QString value() const;

    [[nodiscard]] QString label() const { return label_; }
    [[nodiscard]] QString typed() const { return typed_; }
    [[nodiscard]] QString unit() const { return unit_; }
    [[nodiscard]] QStringList units() const { return units_; }
    [[nodiscard]] QString example() const { return example_; }
    [[nodiscard]] QString reads_as() const { return reads_as_; }
    [[nodiscard]] QString trouble() const { return trouble_; }
    [[nodiscard]] bool usable() const { return !reads_as_.isEmpty(); }
    [[nodiscard]] QString key() const { return key_; }
    [[nodiscard]] bool optional() const { return optional_; }

  signals:
    void changed();

  private:
    void take(const QString& text);
    void read();

    QString key_;
    QString label_;
    QString typed_;
    QString unit_;
    QString example_;
    QString reads_as_;
    QString trouble_;
    QStringList units_;
    units::Dimension dimension_ = units::Dimension::power;
    bool optional_ = false;
    bool fresh_ = true;  // the first digit takes the place of what stood there
};

}  // namespace touch
