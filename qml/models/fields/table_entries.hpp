// The entries of a table there may be several of (panels, chargers, circuits and the parts of one
// circuit) by their names, and how one is added or taken out.
#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"

namespace touch {

class TableEntries : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY askedChanged)
    Q_PROPERTY(QString table READ table WRITE set_table NOTIFY askedChanged)  // "circuit[2].links"
    Q_PROPERTY(QStringList names READ names NOTIFY namesChanged)
    Q_PROPERTY(int count READ count NOTIFY namesChanged)
    // Why the last one was not added or taken out; empty when it was.
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)

  public:
    using QObject::QObject;

    // Adds one to be changed; gives its number, or -1.
    //   takes  kind: of a part of a circuit: "fuse", "switch", "wire", "connector" or "outlet"
    Q_INVOKABLE int add(const QString& kind = {});
    Q_INVOKABLE bool remove(int number);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString table() const { return table_; }
    void set_table(const QString& table);
    [[nodiscard]] QStringList names() const { return names_; }
    [[nodiscard]] int count() const { return static_cast<int>(names_.size()); }
    [[nodiscard]] QString trouble() const { return trouble_; }

  signals:
    void askedChanged();
    void namesChanged();
    void troubleChanged();

  private:
    void read();
    bool change(const ScenarioDocument::Edit& edit);

    ScenarioDocument* document_ = nullptr;
    QString table_;
    QStringList names_;
    QString trouble_;
};

// The text with a part put behind the last one of a circuit's list, or without one of its parts.
//   fails  where the list is not written in square brackets
[[nodiscard]] units::Result<std::string> with_item(const std::string& text, const QString& list,
                                                   const QString& item);
[[nodiscard]] units::Result<std::string> without_item(const std::string& text, const QString& list,
                                                      int number);

}  // namespace touch
