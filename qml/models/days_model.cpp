#include "models/days_model.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include <QVariantMap>
#include <QXYSeries>

namespace touch {

namespace {

void replace_points(QObject* series, const QList<QPointF>& points) {
    if (auto* drawn = qobject_cast<QXYSeries*>(series)) drawn->replace(points);
}

QString listed(QStringList words) {
    words.removeAll(QString());
    return words.join(QStringLiteral(" · "));
}

QVariantList ticks_of(const QList<Tick>& ticks) {
    QVariantList list;
    for (const Tick& tick : ticks) {
        list << QVariantMap{{"at", tick.at}, {"text", tick.text}};
    }
    return list;
}

}  // namespace

DaysModel::DaysModel(QObject* parent)
    : QAbstractListModel(parent), view_(std::make_shared<const DaysView>()) {}

void DaysModel::show(std::shared_ptr<const DaysView> view) {
    beginResetModel();
    view_ = std::move(view);
    row_ = std::clamp(row_, 0, std::max(0, count() - 1));
    endResetModel();
    emit shown();
    emit rowChanged();
}

void DaysModel::fillStored(QObject* lower, QObject* upper, QObject* likely) const {
    replace_points(lower, view_->stored_low);
    replace_points(upper, view_->stored_high);
    replace_points(likely, view_->stored);
}

void DaysModel::fillPowers(QObject* loads, QObject* sun) const {
    replace_points(loads, view_->loads);
    replace_points(sun, view_->sun);
}

void DaysModel::lookAt(double share) {
    const auto& moments = view_->moments;
    if (moments.isEmpty()) return;
    const auto nearest =
        std::min_element(moments.begin(), moments.end(), [share](const Moment& a, const Moment& b) {
            return std::abs(a.at - share) < std::abs(b.at - share);
        });
    set_row(static_cast<int>(nearest - moments.begin()));
}

void DaysModel::earlier() {
    set_row(row_ - 1);
}

void DaysModel::later() {
    set_row(row_ + 1);
}

void DaysModel::toStart() {
    set_row(0);
}

int DaysModel::count() const {
    return static_cast<int>(view_->moments.size());
}

QVariantList DaysModel::nights() const {
    QVariantList list;
    for (const Span& night : view_->nights) {
        list << QVariantMap{{"from", night.from}, {"to", night.to}};
    }
    return list;
}

QVariantList DaysModel::days() const {
    QVariantList list;
    for (const DaySpan& day : view_->days) {
        list << QVariantMap{{"from", day.span.from},
                            {"to", day.span.to},
                            {"name", day.name},
                            {"shortName", day.short_name}};
    }
    return list;
}

QVariantList DaysModel::energy_ticks() const {
    return ticks_of(view_->energy_ticks);
}

QVariantList DaysModel::power_ticks() const {
    return ticks_of(view_->power_ticks);
}

QVariantList DaysModel::pins() const {
    QVariantList list;
    for (const Pin& pin : view_->pins) {
        list << QVariantMap{
            {"at", pin.at}, {"mark", pin.mark}, {"text", pin.text}, {"number", pin.number}};
    }
    return list;
}

void DaysModel::set_row(int row) {
    if (row < 0 || row >= count() || row == row_) return;
    row_ = row;
    emit rowChanged();
}

const Moment& DaysModel::moment() const {
    static const Moment none;
    return view_->moments.isEmpty() ? none : view_->moments[row_];
}

QString DaysModel::moment_text() const {
    const Moment& now = moment();
    return listed({now.stored, now.loads, now.sun, now.sky});
}

int DaysModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant DaysModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Moment& row = view_->moments[index.row()];
    switch (role) {
        case Qt::DisplayRole:
        case TimeRole:
            return row.time;
        case StoredRole:
            return row.stored;
        case DetailRole:
            return listed({row.range, row.loads, row.sun, row.sky});
        case SpokenRole:
            return listed({row.time, row.stored, row.range, row.loads, row.sun, row.sky});
        case LeftRole:
            return row.left;
        default:
            return {};
    }
}

QHash<int, QByteArray> DaysModel::roleNames() const {
    return {{TimeRole, "time"},
            {StoredRole, "stored"},
            {DetailRole, "detail"},
            {SpokenRole, "spoken"},
            {LeftRole, "left"}};
}

}  // namespace touch
