// The answer for somebody who has not got this program: one page for a browser, or one picture.
#pragma once

#include <QObject>
#include <QString>
#include <QUrl>
#include <QVariant>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "models/latest_run.hpp"

namespace touch {

// A page, or why there is none.
struct SharedPage {
    QByteArray html;
    QString trouble;
};

class Sharing : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY documentChanged)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    // What the last saving did, in plain words; empty before the first.
    Q_PROPERTY(QString told READ told NOTIFY toldChanged)
    Q_PROPERTY(bool failed READ failed NOTIFY toldChanged)

  public:
    explicit Sharing(QObject* parent = nullptr);

    // Beside the scenario and named after it.
    //   takes   kind: "html" or "png"
    Q_INVOKABLE QUrl suggested(const QString& kind) const;
    // Works the outage out and writes it; `told` says how that went.
    Q_INVOKABLE void savePage(const QUrl& file);
    // True when it was written.
    //   takes   image: a QImage, as a window is grabbed
    Q_INVOKABLE bool savePicture(const QVariant& image, const QUrl& file);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] bool busy() const { return making_.running(); }
    [[nodiscard]] QString told() const { return told_; }
    [[nodiscard]] bool failed() const { return failed_; }

  signals:
    void documentChanged();
    void busyChanged();
    void toldChanged();

  private:
    bool tell(const QString& words, bool failed);
    bool write(const QByteArray& bytes, const QString& path);

    ScenarioDocument* document_ = nullptr;
    QString path_;  // where the page that is being made goes
    QString told_;
    bool failed_ = false;
    LatestRun<SharedPage> making_;
};

}  // namespace touch
