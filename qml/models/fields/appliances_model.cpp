#include "models/fields/appliances_model.hpp"

#include <algorithm>

#include "models/words/finding_text.hpp"
#include "models/words/shown_amount.hpp"

namespace touch {

namespace {

QString name_of(const motor::Appliance& appliance) {
    return told(motor::name_in_words(appliance));
}

bool is_called(const motor::Appliance& appliance, const QString& wanted) {
    const auto holds = [&wanted](const std::string& name) {
        return words_of(name).contains(wanted, Qt::CaseInsensitive);
    };
    return name_of(appliance).contains(wanted, Qt::CaseInsensitive) || holds(appliance.name) ||
           std::ranges::any_of(appliance.also, holds);
}

QString detail_of(const motor::Appliance& appliance) {
    QString detail = QObject::tr("%1 while on (%2 to %3)")
                         .arg(shown(appliance.run.likely()), shown(appliance.run.low()),
                              shown(appliance.run.high()));
    if (appliance.duty && appliance.duty->likely().value() < 1.0) {
        detail = QObject::tr("%1, on %2 of the time")
                     .arg(detail, told(units::amount(appliance.duty->likely(), 2)));
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
        case KeyRole:
            return words_of(appliance.name);
        case Qt::DisplayRole:
        case NameRole:
            return name_of(appliance);
        case DetailRole:
            return detail_of(appliance);
        case NoteRole:
            return told(appliance.note);
        case SpokenRole:
            return QStringLiteral("%1, %2").arg(name_of(appliance), detail_of(appliance));
        default:
            return {};
    }
}

QHash<int, QByteArray> AppliancesModel::roleNames() const {
    return {{KeyRole, "key"},
            {NameRole, "name"},
            {DetailRole, "detail"},
            {NoteRole, "note"},
            {SpokenRole, "spoken"}};
}

}  // namespace touch
