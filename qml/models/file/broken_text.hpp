// A text that cannot be read as a scenario: its lines, each error beside the line it is on, and the
// way to mend it there.
#pragma once

#include <QAbstractListModel>
#include <QString>
#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "units/result.hpp"

namespace touch {

class BrokenText : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::ScenarioDocument* document READ document WRITE set_document NOTIFY shown)
    // All lines rather than those around the errors.
    Q_PROPERTY(bool whole READ whole WRITE set_whole NOTIFY shown)
    Q_PROPERTY(int errors READ errors NOTIFY shown)
    Q_PROPERTY(int count READ count NOTIFY shown)

  public:
    enum Role { KindRole = Qt::UserRole, LineRole, TextRole, FoundRole, RemedyRole, NumberRole };
    static constexpr int around = 2;         // lines shown before and after one with an error
    static constexpr int most_errors = 200;  // shown; the rest follows once these are mended

    explicit BrokenText(QObject* parent = nullptr) : QAbstractListModel(parent) {}

    // What is to be typed to mend an error: {key (empty where the line itself is changed), line
    // (0: a new one), title, words}.
    //   takes   error: the number of the row
    Q_INVOKABLE QVariantMap mending(int error) const;
    // The same of a line, whatever is wrong with it.
    Q_INVOKABLE QVariantMap ofLine(int line) const;
    // Puts what was typed into its place. Gives why it does not go there; empty when it was put.
    Q_INVOKABLE QString mend(const QVariantMap& asked, const QString& words);
    // The row of the first error after a row; -1 when there is none.
    Q_INVOKABLE int nextError(int row) const;

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] bool whole() const { return whole_; }
    void set_whole(bool whole);
    [[nodiscard]] int errors() const { return static_cast<int>(errors_.size()); }
    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void shown();

  private:
    // A line of the text, an error beside it, or lines that are left out.
    struct Row {
        enum class Kind { line, error, gap } kind = Kind::line;
        int line = 0;    // from 1; 0: of no line
        int number = 0;  // of the error
    };

    void look();
    void put_rows();

    ScenarioDocument* document_ = nullptr;
    bool whole_ = false;
    QStringList lines_;
    units::Errors errors_;
    QList<Row> rows_;
};

}  // namespace touch
