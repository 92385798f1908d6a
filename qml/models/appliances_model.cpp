#include "models/appliances_model.hpp"

#include <algorithm>

#include "models/finding_text.hpp"
#include "units/text.hpp"

namespace touch {

namespace {

bool is_called(const motor::Appliance& appliance, const QString& wanted) {
    const auto holds = [&wanted](const std::string& name) {
        return words_of(name).contains(wanted, Qt::CaseInsensitive);
    };
    return holds(appliance.name) || std::ranges::any_of(appliance.also, holds);
}

QString detail_of(const motor::Appliance& appliance) {
    const auto watts = [](units::Power power) { return words_of(units::show(power)); };
    QString detail = QObject::tr("%1 while on (%2 to %3)")
                         .arg(watts(appliance.run.likely()), watts(appliance.run.low()),
                              watts(appliance.run.high()));
    if (appliance.duty && appliance.duty->likely().value() < 1.0) {
        detail = QObject::tr("%1, on %2 of the time")
                     .arg(detail, words_of(units::show(appliance.duty->likely(), 2)));
    }
    return detail;
}

}  // namespace

AppliancesModel::AppliancesModel(QObject* parent) : QAbstractListModel(parent) {
    pick();
}

void AppliancesModel::set_wanted(const QString& wanted) {
    if (wanted_ == wanted) return;
    wanted_ = wanted;
    pick();
}

void AppliancesModel::set_motors_only(bool only) {
    if (motors_only_ == only) return;
    motors_only_ = only;
    pick();
}

void AppliancesModel::pick() {
    beginResetModel();
    shown_.clear();
    for (const motor::Appliance& appliance : motor::appliances()) {
        if (motors_only_ && !appliance.motor) continue;
        if (is_called(appliance, wanted_.trimmed())) shown_.append(&appliance);
    }
    endResetModel();
    emit wantedChanged();
}

int AppliancesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant AppliancesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const motor::Appliance& appliance = *shown_[index.row()];
    switch (role) {
        case Qt::DisplayRole:
        case NameRole:
            return words_of(appliance.name);
        case DetailRole:
            return detail_of(appliance);
        case NoteRole:
            return words_of(appliance.note);
        case SpokenRole:
            return QStringLiteral("%1, %2").arg(words_of(appliance.name), detail_of(appliance));
        default:
            return {};
    }
}

QHash<int, QByteArray> AppliancesModel::roleNames() const {
    return {{NameRole, "name"}, {DetailRole, "detail"}, {NoteRole, "note"}, {SpokenRole, "spoken"}};
}

}  // namespace touch
