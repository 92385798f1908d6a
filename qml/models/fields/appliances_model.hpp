// The library of appliances and tools to pick from, narrowed by typing a part of a name.
#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "motor/appliances/appliances.hpp"

namespace touch {

class AppliancesModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString wanted READ wanted WRITE set_wanted NOTIFY wantedChanged)
    Q_PROPERTY(int count READ count NOTIFY wantedChanged)
    Q_PROPERTY(bool motorsOnly READ motors_only WRITE set_motors_only NOTIFY wantedChanged)

  public:
    // key: its name in the list, whatever the language.
    enum Role { KeyRole = Qt::UserRole + 1, NameRole, DetailRole, NoteRole, SpokenRole };

    explicit AppliancesModel(QObject* parent = nullptr);

    [[nodiscard]] QString wanted() const { return wanted_; }
    void set_wanted(const QString& wanted);
    [[nodiscard]] bool motors_only() const { return motors_only_; }
    void set_motors_only(bool only);
    [[nodiscard]] int count() const { return static_cast<int>(shown_.size()); }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void wantedChanged();

  private:
    void pick();

    QString wanted_;
    bool motors_only_ = false;
    QList<const motor::Appliance*> shown_;
};

}  // namespace touch
