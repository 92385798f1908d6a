// The kinds of packs of the scenario on the screen, a row each: how many, what they hold, how full
// and how old they are, and the lead they hang on.
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "scenario/pack.hpp"

namespace touch {

struct PackText {
    QString name;
    QString held;         // "3 of 100 Ah, 12.8 V, lithium iron phosphate"
    QString state;        // "80 % full, half its life, lead 4 mΩ"
    double charge = 1.0;  // 0 to 1
};

[[nodiscard]] PackText pack_text(const scenario::Pack& pack);

class PacksModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY askedChanged)
    Q_PROPERTY(int count READ count NOTIFY countChanged)

  public:
    enum Role { NameRole = Qt::UserRole + 1, HeldRole, StateRole, ChargeRole, SpokenRole };

    using QAbstractListModel::QAbstractListModel;

    // Adds another kind like the last one, to be changed; gives its number, or -1.
    Q_INVOKABLE int add();
    Q_INVOKABLE bool remove(int number);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] int count() const { return static_cast<int>(packs_.size()); }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void askedChanged();
    void countChanged();

  private:
    void read();

    ScenarioDocument* document_ = nullptr;
    QList<PackText> packs_;
};

}  // namespace touch
