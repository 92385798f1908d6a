// The loads of the scenario on the screen, a row each: what it draws and when, how sure that is,
// and what it takes a day.
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "models/plan_runner.hpp"
#include "scenario/load.hpp"

namespace touch {

struct LoadText {
    QString name;
    QString draw;      // "120 W, 10 min of every 30 min, 07:00-23:00"
    QString evidence;  // "metered", "from a label", "a guess"
};

[[nodiscard]] LoadText load_text(const scenario::Load& load);

class LoadsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY askedChanged)
    Q_PROPERTY(touch::PlanRunner* plan READ plan WRITE set_plan NOTIFY askedChanged)
    Q_PROPERTY(int count READ count NOTIFY countChanged)

  public:
    // perDay: in words, empty until it is known; share: 0 to 1 of what the thirstiest takes.
    enum Role {
        NameRole = Qt::UserRole + 1,
        DrawRole,
        EvidenceRole,
        PerDayRole,
        ShareRole,
        SpokenRole
    };

    using QAbstractListModel::QAbstractListModel;

    // Takes a load out of the scenario; false when it could not.
    Q_INVOKABLE bool remove(int number);
    // Adds one like a row of the library; gives its number, or -1.
    Q_INVOKABLE int addLike(const QString& appliance);
    // Adds one that is not in the library, a guess to be changed at once.
    Q_INVOKABLE int addOwn();

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] PlanRunner* plan() const { return plan_; }
    void set_plan(PlanRunner* plan);
    [[nodiscard]] int count() const { return static_cast<int>(loads_.size()); }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void askedChanged();
    void countChanged();

  private:
    void read();
    void refresh();
    [[nodiscard]] const LoadUseText* use_of(int row) const;
    [[nodiscard]] QString unused_name(const QString& wanted) const;
    int add(scenario::Load load);

    ScenarioDocument* document_ = nullptr;
    PlanRunner* plan_ = nullptr;
    QList<LoadText> loads_;
};

}  // namespace touch
