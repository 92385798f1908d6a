// Every key a scenario may have, with what the file says or what holds where it is silent; each can
// be changed in words.
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "models/latest_run.hpp"

namespace touch {

struct KeyText {
    QString key;
    QString value;
    QString origin;  // where it stands, or what holds where the file is silent
    bool given = false;
    QString label = {};  // as the pages call it; empty where none shows it by itself
    QString group = {};  // the part of the unit it belongs to
};

class KeysModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY askedChanged)
    Q_PROPERTY(QString wanted READ wanted WRITE set_wanted NOTIFY
                   askedChanged)  // part of a key, its label or group
    Q_PROPERTY(bool givenOnly READ given_only WRITE set_given_only NOTIFY askedChanged)
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    // Why the last value was refused; empty when it was taken.
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    // What holds instead of the key that was taken out last; empty after any other change.
    Q_PROPERTY(QString told READ told NOTIFY troubleChanged)

  public:
    // title: the key with its label; heading: its group, where it is the first of that shown.
    enum Role {
        KeyRole = Qt::UserRole + 1,
        ValueRole,
        OriginRole,
        GivenRole,
        SpokenRole,
        TitleRole,
        HeadingRole
    };

    explicit KeysModel(QObject* parent = nullptr);

    // As it stands after the =; quotes may be left out. Empty takes the key out.
    Q_INVOKABLE bool put(const QString& key, const QString& value);
    // The file is silent on it from then on; what holds instead is told, and a moment later what
    // the questions take for it.
    Q_INVOKABLE bool takeOut(const QString& key);
    // Whether the file says it itself.
    Q_INVOKABLE bool isGiven(const QString& key) const;

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString wanted() const { return wanted_; }
    void set_wanted(const QString& wanted);
    [[nodiscard]] bool given_only() const { return given_only_; }
    void set_given_only(bool given_only);
    [[nodiscard]] int count() const { return static_cast<int>(shown_.size()); }
    [[nodiscard]] QString trouble() const { return trouble_; }
    [[nodiscard]] QString told() const { return told_; }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void askedChanged();
    void countChanged();
    void troubleChanged();

  private:
    void read();
    void pick();
    [[nodiscard]] QString instead_of(const QString& key) const;
    void ask_what_holds(const QString& key, const QString& before);
    void tell(const QString& trouble, const QString& told);

    ScenarioDocument* document_ = nullptr;
    QString wanted_;
    bool given_only_ = true;
    QList<KeyText> all_;
    QList<KeyText> shown_;
    QString trouble_;
    QString told_;
    QString told_of_;  // the text that held when it was told
    QString taken_;    // the key it is told of
    QString holds_;    // what the questions take instead
    struct Held {
        QString key;
        QString words;
    };
    LatestRun<Held> asking_;
};

}  // namespace touch
