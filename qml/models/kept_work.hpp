// The work on the screen, kept so that a power cut, a kill or a restart loses nothing older than a
// moment: the text with its way back and forth, and the last ten versions of a file saved over.
#pragma once

#include "models/scenario_document.hpp"
#include <QObject>
#include <QString>
#include <QTimer>
#include <QUrl>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace touch {

class KeptWork : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::ScenarioDocument* document READ document WRITE set_document NOTIFY changed)
    // Where it is kept; empty keeps nothing.
    Q_PROPERTY(QString folder READ folder WRITE set_folder NOTIFY changed)

  public:
    static constexpr int at_most_after = 1000;  // ms from a change to its being kept
    static constexpr int versions = 10;

    explicit KeptWork(QObject* parent = nullptr);
    ~KeptWork() override;

    // The place for this person's work on this machine.
    Q_INVOKABLE static QString usualFolder();

    // Takes up the work that was kept: all of it when no file is asked for, else only work on that
    // file that was not saved. False when there is none; the document is then as it was.
    Q_INVOKABLE bool resume(const QUrl& file);

    // The versions that were saved over, the newest first: {path, shown} each.
    Q_INVOKABLE QVariantList versionsKept() const;

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString folder() const { return folder_; }
    void set_folder(const QString& folder);

    // Writes at once; false when it cannot be written.
    bool keep();

  signals:
    void changed();

  private:
    [[nodiscard]] QString work_path() const;
    void keep_version(const QString& path);

    ScenarioDocument* document_ = nullptr;
    QString folder_;
    QTimer timer_;
};

}  // namespace touch
