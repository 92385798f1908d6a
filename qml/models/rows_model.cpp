#include "models/rows_model.hpp"

#include <utility>

namespace touch {

void RowsModel::show(QList<RowText> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
    emit countChanged();
}

int RowsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant RowsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const RowText& row = rows_[index.row()];
    switch (role) {
        case SectionRole:
            return row.section;
        case Qt::DisplayRole:
        case LabelRole:
            return row.label;
        case ValueRole:
            return row.value;
        case DetailRole:
            return row.detail;
        case FirstRole:
            return !row.section.isEmpty() &&
                   (index.row() == 0 || rows_[index.row() - 1].section != row.section);
        case SpokenRole: {
            QStringList words{row.section, row.label, row.value, row.detail};
            words.removeAll(QString());
            return words.join(QStringLiteral(", "));
        }
        default:
            return {};
    }
}

QHash<int, QByteArray> RowsModel::roleNames() const {
    return {{SectionRole, "section"}, {LabelRole, "label"}, {ValueRole, "value"},
            {DetailRole, "detail"},   {FirstRole, "first"}, {SpokenRole, "spoken"}};
}

}  // namespace touch
