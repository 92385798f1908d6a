// Rows of a name, a value and what stands behind it, section by section.
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "models/answer_view.hpp"

namespace touch {

class RowsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with an answer")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

  public:
    // first: whether a row is the first of its section; spoken: the whole row.
    enum Role {
        SectionRole = Qt::UserRole + 1,
        LabelRole,
        ValueRole,
        DetailRole,
        FirstRole,
        SpokenRole
    };

    using QAbstractListModel::QAbstractListModel;

    void show(QList<RowText> rows);
    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void countChanged();

  private:
    QList<RowText> rows_;
};

}  // namespace touch
