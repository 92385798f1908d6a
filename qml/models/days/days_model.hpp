// The outage days as the plot and its table need them: one row an hour, the points of the
// series, and the moment a person is looking at.
#pragma once

#include <memory>

#include <QAbstractListModel>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "models/days/days_view.hpp"

namespace touch {

class DaysModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with a plan")
    Q_PROPERTY(int count READ count NOTIFY shown)
    Q_PROPERTY(double hours READ hours NOTIFY shown)
    Q_PROPERTY(double energyTop READ energy_top NOTIFY shown)
    Q_PROPERTY(double powerTop READ power_top NOTIFY shown)
    // Another plan has another one: what was asked of the last is asked again.
    Q_PROPERTY(int edition READ edition NOTIFY shown)
    // Lists of {from, to} and {at, text}; all places are shares of the plot.
    Q_PROPERTY(QVariantList nights READ nights NOTIFY shown)
    Q_PROPERTY(QVariantList energyTicks READ energy_ticks NOTIFY shown)
    Q_PROPERTY(QVariantList powerTicks READ power_ticks NOTIFY shown)
    Q_PROPERTY(int pins READ pins NOTIFY shown)
    // From when one member in ten has ended until nine in ten have, and the likely end, as shares
    // of the plot; above 1 after the outage's end.
    Q_PROPERTY(double endsFrom READ ends_from NOTIFY shown)
    Q_PROPERTY(double endsTo READ ends_to NOTIFY shown)
    Q_PROPERTY(double likelyEnd READ likely_end NOTIFY shown)
    Q_PROPERTY(double emptyAt READ empty_at NOTIFY shown)  // share of the height
    Q_PROPERTY(bool hasFan READ has_fan NOTIFY shown)      // the members' store is known
    // Of the loads, the first the lowest: their priorities, 0 where none are told apart.
    Q_PROPERTY(QList<int> stacks READ stacks NOTIFY shown)
    // {label, value, detail}: the answer in figures.
    Q_PROPERTY(QVariantList told READ told NOTIFY shown)
    Q_PROPERTY(QString spoken READ spoken NOTIFY shown)
    // The moment looked at: a row of this model.
    Q_PROPERTY(int row READ row WRITE set_row NOTIFY rowChanged)
    Q_PROPERTY(bool hasEarlier READ has_earlier NOTIFY rowChanged)
    Q_PROPERTY(bool hasLater READ has_later NOTIFY rowChanged)
    Q_PROPERTY(double momentAt READ moment_at NOTIFY rowChanged)
    Q_PROPERTY(double momentLevel READ moment_level NOTIFY rowChanged)  // share of the height
    Q_PROPERTY(double momentBurnt READ moment_burnt NOTIFY rowChanged)
    Q_PROPERTY(QString momentTime READ moment_time NOTIFY rowChanged)
    Q_PROPERTY(QString momentText READ moment_text NOTIFY rowChanged)
    // The same with its range, a line each.
    Q_PROPERTY(QStringList momentLines READ moment_lines NOTIFY rowChanged)
    Q_PROPERTY(QStringList momentWorking READ moment_working NOTIFY rowChanged)
    Q_PROPERTY(QString momentLeft READ moment_left NOTIFY rowChanged)

  public:
    // detail: range, loads, sun and sky in a line; spoken: the whole row.
    enum Role { TimeRole = Qt::UserRole + 1, StoredRole, DetailRole, SpokenRole, LeftRole };

    explicit DaysModel(QObject* parent = nullptr);

    void show(std::shared_ptr<const DaysView> view);

    // Hands the points of this plan to the series of a chart, each in one go.
    Q_INVOKABLE void fillStored(QObject* lower, QObject* upper, QObject* likely) const;
    Q_INVOKABLE void fillHalf(QObject* lower, QObject* upper) const;
    Q_INVOKABLE void fillSun(QObject* sun) const;
    // The loads of one priority, by its place in `stacks`; `area` is painted with its pattern.
    Q_INVOKABLE void fillStack(int place, QObject* lower, QObject* upper, QObject* area) const;
    // Of the part of the plot between two shares of its width, drawn `width` wide in letters that
    // are `letter` wide: {ticks: [{at, text, spoken, row}], spans: [{from, to, name}]}.
    Q_INVOKABLE QVariantMap axisIn(double from, double to, double width, double letter) const;
    // The pins of that part, each `size` wide, beside each other; too many become groups:
    // [{x, places, mark, number, text, of}], where `places` are the x of their hours and `of` is
    // for findingsOf.
    Q_INVOKABLE QVariantList pinsIn(double from, double to, double width, double size) const;
    // As rows of a list of findings: [{mark, word, where, text, mend, pin, spoken, source}].
    Q_INVOKABLE QVariantList findingsOf(const QVariantList& pins) const;
    // Looks at the hour nearest to a share of the plot's width.
    Q_INVOKABLE void lookAt(double share);
    Q_INVOKABLE void earlier();
    Q_INVOKABLE void later();
    Q_INVOKABLE void toStart();
    Q_INVOKABLE void toEnd();

    [[nodiscard]] int count() const;
    [[nodiscard]] double hours() const { return view_->hours; }
    [[nodiscard]] double energy_top() const { return view_->energy_top; }
    [[nodiscard]] double power_top() const { return view_->power_top; }
    [[nodiscard]] QVariantList nights() const;
    [[nodiscard]] int edition() const { return edition_; }
    [[nodiscard]] QVariantList energy_ticks() const;
    [[nodiscard]] QVariantList power_ticks() const;
    [[nodiscard]] int pins() const { return static_cast<int>(view_->pins.size()); }
    [[nodiscard]] double ends_from() const { return view_->ends.from; }
    [[nodiscard]] double ends_to() const { return view_->ends.to; }
    [[nodiscard]] double likely_end() const { return view_->likely_end; }
    [[nodiscard]] double empty_at() const { return view_->empty_at; }
    [[nodiscard]] bool has_fan() const { return !view_->stored_lower.isEmpty(); }
    [[nodiscard]] QList<int> stacks() const;
    [[nodiscard]] QVariantList told() const;
    [[nodiscard]] QString spoken() const { return view_->spoken; }
    [[nodiscard]] int row() const { return row_; }
    void set_row(int row);
    [[nodiscard]] bool has_earlier() const { return row_ > 0; }
    [[nodiscard]] bool has_later() const { return row_ + 1 < count(); }
    [[nodiscard]] double moment_at() const { return moment().at; }
    [[nodiscard]] double moment_level() const { return moment().level; }
    [[nodiscard]] double moment_burnt() const { return moment().burnt; }
    [[nodiscard]] QString moment_time() const { return moment().time; }
    [[nodiscard]] QString moment_text() const;
    [[nodiscard]] QStringList moment_lines() const;
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
    [[nodiscard]] int row_at(double share) const;
    [[nodiscard]] QString spoken_row(const Moment& row) const;
    [[nodiscard]] QVariantMap pin_group(const QList<int>& group, const QList<double>& places,
                                        double middle) const;

    std::shared_ptr<const DaysView> view_;
    int row_ = 0;
    int edition_ = 0;
};

}  // namespace touch
