// The outage days as the plot and its table need them: one row an hour, the points of the
// series, and the moment a person is looking at.
#pragma once

#include <memory>

#include <QAbstractListModel>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/days_view.hpp"

namespace touch {

class DaysModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with a plan")
    Q_PROPERTY(int count READ count NOTIFY shown)
    Q_PROPERTY(double hours READ hours NOTIFY shown)
    Q_PROPERTY(double energyTop READ energy_top NOTIFY shown)
    Q_PROPERTY(double powerTop READ power_top NOTIFY shown)
    // Lists of {from, to}, {from, to, name, shortName}, {at, text} and {at, mark, text, number};
    // all places are shares of the plot.
    Q_PROPERTY(QVariantList nights READ nights NOTIFY shown)
    Q_PROPERTY(QVariantList days READ days NOTIFY shown)
    Q_PROPERTY(QVariantList energyTicks READ energy_ticks NOTIFY shown)
    Q_PROPERTY(QVariantList powerTicks READ power_ticks NOTIFY shown)
    Q_PROPERTY(QVariantList pins READ pins NOTIFY shown)
    Q_PROPERTY(QString spoken READ spoken NOTIFY shown)
    // The moment looked at: a row of this model.
    Q_PROPERTY(int row READ row WRITE set_row NOTIFY rowChanged)
    Q_PROPERTY(bool hasEarlier READ has_earlier NOTIFY rowChanged)
    Q_PROPERTY(bool hasLater READ has_later NOTIFY rowChanged)
    Q_PROPERTY(double momentAt READ moment_at NOTIFY rowChanged)
    Q_PROPERTY(double momentBurnt READ moment_burnt NOTIFY rowChanged)
    Q_PROPERTY(QString momentTime READ moment_time NOTIFY rowChanged)
    Q_PROPERTY(QString momentText READ moment_text NOTIFY rowChanged)
    Q_PROPERTY(QStringList momentWorking READ moment_working NOTIFY rowChanged)
    Q_PROPERTY(QString momentLeft READ moment_left NOTIFY rowChanged)

  public:
    // detail: range, loads, sun and sky in a line; spoken: the whole row.
    enum Role { TimeRole = Qt::UserRole + 1, StoredRole, DetailRole, SpokenRole, LeftRole };

    explicit DaysModel(QObject* parent = nullptr);

    void show(std::shared_ptr<const DaysView> view);

    // Hands the points of this plan to the series of a chart, each in one go.
    Q_INVOKABLE void fillStored(QObject* lower, QObject* upper, QObject* likely) const;
    Q_INVOKABLE void fillPowers(QObject* loads, QObject* sun) const;
    // Looks at the hour nearest to a share of the plot's width.
    Q_INVOKABLE void lookAt(double share);
    Q_INVOKABLE void earlier();
    Q_INVOKABLE void later();
    Q_INVOKABLE void toStart();

    [[nodiscard]] int count() const;
    [[nodiscard]] double hours() const { return view_->hours; }
    [[nodiscard]] double energy_top() const { return view_->energy_top; }
    [[nodiscard]] double power_top() const { return view_->power_top; }
    [[nodiscard]] QVariantList nights() const;
    [[nodiscard]] QVariantList days() const;
    [[nodiscard]] QVariantList energy_ticks() const;
    [[nodiscard]] QVariantList power_ticks() const;
    [[nodiscard]] QVariantList pins() const;
    [[nodiscard]] QString spoken() const { return view_->spoken; }
    [[nodiscard]] int row() const { return row_; }
    void set_row(int row);
    [[nodiscard]] bool has_earlier() const { return row_ > 0; }
    [[nodiscard]] bool has_later() const { return row_ + 1 < count(); }
    [[nodiscard]] double moment_at() const { return moment().at; }
    [[nodiscard]] double moment_burnt() const { return moment().burnt; }
    [[nodiscard]] QString moment_time() const { return moment().time; }
    [[nodiscard]] QString moment_text() const;
    [[nodiscard]] QStringList moment_working() const { return moment().working; }
    [[nodiscard]] QString moment_left() const { return moment().left; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void shown();
    void rowChanged();

  private:
    [[nodiscard]] const Moment& moment() const;

    std::shared_ptr<const DaysView> view_;
    int row_ = 0;
};

}  // namespace touch
