// The fields of one table of the scenario on the screen: shown, put, refused in words.
#pragma once

#include <QAbstractListModel>
#include <QHash>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "models/fields/fields.hpp"
#include "models/file/scenario_document.hpp"

namespace touch {

class FieldsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY askedChanged)
    Q_PROPERTY(QString table READ table WRITE set_table NOTIFY askedChanged)  // "load", "pack" …
    Q_PROPERTY(int number READ number WRITE set_number NOTIFY askedChanged)   // which of several
    // Keys to show, without their table, such as "count"; empty shows all.
    Q_PROPERTY(QStringList only READ only WRITE set_only NOTIFY askedChanged)
    Q_PROPERTY(int count READ count NOTIFY fieldsChanged)

  public:
    // kind: "number", "choice", "count", "words", "hours", "moment" or "several"; options: {value,
    // label, detail, asks, chosen}; spans: texts; shown: the value, or what holds where the file is
    // silent; given: whether the file says it; least, most: of a count;
    // error: why what was put last was refused.
    enum Role {
        KeyRole = Qt::UserRole + 1,
        KindRole,
        LabelRole,
        ShownRole,
        GivenRole,
        OptionalRole,
        OptionsRole,
        SpansRole,
        CanLessRole,
        CanMoreRole,
        LeastRole,
        MostRole,
        ErrorRole
    };

    explicit FieldsModel(QObject* parent = nullptr);

    // False, with the field's error told, when it was refused.
    Q_INVOKABLE bool put(const QString& key, const QString& value);
    Q_INVOKABLE void step(const QString& key, int by);
    Q_INVOKABLE void addHours(const QString& key, const QString& span);
    Q_INVOKABLE void removeHours(const QString& key, int number);
    Q_INVOKABLE void moveHours(const QString& key, int number, bool its_end, int minutes);
    Q_INVOKABLE void moveMoment(const QString& key, int months, int days, int minutes);
    // Takes one of several in or out.
    Q_INVOKABLE void turn(const QString& key, const QString& value);
    // {key, label, value, example, units, dimension} for a number entry; also of hidden fields.
    Q_INVOKABLE QVariantMap asked(const QString& key) const;

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString table() const { return table_; }
    void set_table(const QString& table);
    [[nodiscard]] int number() const { return number_; }
    void set_number(int number);
    [[nodiscard]] QStringList only() const { return only_; }
    void set_only(const QStringList& only);
    [[nodiscard]] int count() const { return static_cast<int>(shown_.size()); }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void askedChanged();
    void fieldsChanged();

  private:
    void read();
    void asked_anew();
    [[nodiscard]] const Field* field(const QString& key) const;

    ScenarioDocument* document_ = nullptr;
    QString table_;
    int number_ = 0;
    QStringList only_;
    QList<Field> all_;
    QList<Field> shown_;
    QHash<QString, QString> errors_;
};

}  // namespace touch
