// Weather files that lie outside a scenario's folder, and that the person allowed: by choosing one
// on the screen, which holds for that scenario from then on.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "scenario/file/read.hpp"

namespace touch {

// The text as it is on the screen, read as a scenario that may have what was chosen for it.
//   file  beside which lie the files that it names; may be empty
// From any thread.
[[nodiscard]] units::Result<scenario::ReadScenario> read_shown(const QString& text,
                                                               const QString& file,
                                                               scenario::Overrides overrides = {});

class WeatherChoices : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::ScenarioDocument* document READ document WRITE set_document NOTIFY changed)
    // As the scenario names it; empty where it names none.
    Q_PROPERTY(QString file READ file NOTIFY changed)
    // Why the file that was chosen cannot be used; empty when all is well.
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)

  public:
    using QObject::QObject;

    // Remembers what is chosen there, and takes up what was chosen before.
    Q_INVOKABLE static void keepIn(const QString& folder);

    // Allows the file for the document and names it in the scenario, unless it is the one that is
    // named already. False, with `trouble` told and all as it was, when it is no weather file.
    Q_INVOKABLE bool choose(const QUrl& file);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString file() const { return file_; }
    [[nodiscard]] QString trouble() const { return trouble_; }

  signals:
    void changed();

  private:
    void read();
    bool tell(const QString& trouble);

    ScenarioDocument* document_ = nullptr;
    QString file_;
    QString trouble_;
};

}  // namespace touch
