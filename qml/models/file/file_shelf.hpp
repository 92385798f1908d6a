// What a person may begin from: the worked scenarios that come with the program, and the files that
// were open before, each with the answer it had.
#pragma once

#include <QObject>
#include <QString>
#include <QUrl>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "models/plan_runner.hpp"

namespace touch {

class FileShelf : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY documentChanged)
    Q_PROPERTY(touch::PlanRunner* plan READ plan WRITE set_plan NOTIFY documentChanged)
    // Where the list is kept; empty keeps none.
    Q_PROPERTY(QString folder READ folder WRITE set_folder NOTIFY changed)
    Q_PROPERTY(QString language READ language WRITE set_language NOTIFY told)
    // {key, name, detail} each.
    Q_PROPERTY(QVariantList templates READ templates_told NOTIFY told)
    // The last opened first: {url, name, answer, detail, there} each.
    Q_PROPERTY(QVariantList recent READ recent NOTIFY changed)

  public:
    static constexpr int most_recent = 12;

    using QObject::QObject;

    // Takes a file from the list; the file itself stays.
    Q_INVOKABLE void forget(const QUrl& file);
    // Looks again whether the files are still there.
    Q_INVOKABLE void look() { emit changed(); }

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] PlanRunner* plan() const { return plan_; }
    void set_plan(PlanRunner* plan);
    [[nodiscard]] QString folder() const { return folder_; }
    void set_folder(const QString& folder);
    [[nodiscard]] QString language() const { return language_; }
    void set_language(const QString& language);
    [[nodiscard]] QVariantList templates_told() const;
    [[nodiscard]] QVariantList recent() const;

  signals:
    void documentChanged();
    void changed();
    void told();

  private:
    struct Recent {
        QString path;
        QString title;
        QString answer;  // as it was said when the file was last open
    };

    void note_file();
    void note_answer();
    void take_up();
    void keep();

    ScenarioDocument* document_ = nullptr;
    PlanRunner* plan_ = nullptr;
    QString folder_;
    QString language_;
    QList<Recent> recent_;
};

}  // namespace touch
