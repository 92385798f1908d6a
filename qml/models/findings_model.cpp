#include "models/findings_model.hpp"

#include <utility>

namespace touch {

void FindingsModel::show(QList<FindingText> findings) {
    beginResetModel();
    findings_ = std::move(findings);
    endResetModel();
    emit countChanged();
}

QString FindingsModel::words() const {
    QStringList words;
    for (const FindingText& finding : findings_)
        words << finding.word;
    words.removeDuplicates();
    return words.join(QStringLiteral(", "));
}

int FindingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const FindingText& finding = findings_[index.row()];
    switch (role) {
        case MarkRole:
            return finding.mark;
        case WordRole:
            return finding.word;
        case WhereRole:
            return finding.where;
        case Qt::DisplayRole:
        case TextRole:
            return finding.text;
        case MendRole:
            return finding.mend;
        case SourceRole:
            return finding.source;
        case PinRole:
            return finding.pin;
        case SpokenRole:
            return spoken_of(finding);
        default:
            return {};
    }
}

QHash<int, QByteArray> FindingsModel::roleNames() const {
    return {{MarkRole, "mark"}, {WordRole, "word"},    {WhereRole, "where"},
            {TextRole, "text"}, {MendRole, "mend"},    {SourceRole, "source"},
            {PinRole, "pin"},   {SpokenRole, "spoken"}};
}

}  // namespace touch
