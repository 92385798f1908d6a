// The entries of the log, the newest first: what was read, done or seen, and what was struck since.
#pragma once

#include <optional>
#include <vector>

#include <QAbstractListModel>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "models/now/now_clock.hpp"
#include "scenario/log.hpp"

namespace touch {

class LogModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::ScenarioDocument* document READ document WRITE set_document NOTIFY changed)
    Q_PROPERTY(touch::NowClock* clock MEMBER clock_ NOTIFY changed)
    Q_PROPERTY(int count READ count NOTIFY changed)
    // Places in the file of entries that cannot be true together.
    Q_PROPERTY(QVariantList odd MEMBER odd_ WRITE set_odd NOTIFY changed)
    // Why the last strike was not made; empty when it was.
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)

  public:
    // number: of its pin; struck: it was taken back later; strikes: it takes another back
    enum Role {
        WordsRole = Qt::UserRole + 1,
        NumberRole,
        StruckRole,
        StrikesRole,
        OddRole,
        SpokenRole
    };

    using QAbstractListModel::QAbstractListModel;

    // Adds an entry that strikes the one of a row; it stays readable. False, with `trouble` told,
    // where it cannot be.
    Q_INVOKABLE bool strike(int row);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    void set_odd(const QVariantList& odd);
    [[nodiscard]] int count() const { return static_cast<int>(order_.size()); }
    [[nodiscard]] QString trouble() const { return trouble_; }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void changed();

  private:
    void take_text();
    [[nodiscard]] bool is_struck(std::size_t place) const;
    [[nodiscard]] QString spoken(std::size_t place) const;

    ScenarioDocument* document_ = nullptr;
    NowClock* clock_ = nullptr;
    std::vector<scenario::LogEntry> log_;
    std::vector<std::size_t> order_;
    QVariantList odd_;
    QString trouble_;
};

// What strikes an entry, and it alone where the file's keys can say so.
[[nodiscard]] scenario::LogEntry strike_of(const scenario::LogEntry& entry, units::LocalTime now);

}  // namespace touch
