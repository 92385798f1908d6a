// The findings of a plan, the gravest first: each with its mark, its word and its text.
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "models/days/days_view.hpp"

namespace touch {

class FindingsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with a plan")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
    Q_PROPERTY(QString words READ words NOTIFY countChanged)  // of all, each once

  public:
    enum Role {
        MarkRole = Qt::UserRole + 1,
        WordRole,
        WhereRole,
        TextRole,
        MendRole,
        SourceRole,
        PinRole,
        SpokenRole
    };

    using QAbstractListModel::QAbstractListModel;

    void show(QList<FindingText> findings);
    [[nodiscard]] int count() const { return static_cast<int>(findings_.size()); }
    [[nodiscard]] QString words() const;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void countChanged();

  private:
    QList<FindingText> findings_;
};

}  // namespace touch
