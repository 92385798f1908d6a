// Which page a file is begun with: while its outage runs, what holds from now on.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"

namespace touch {

class FirstPage : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY documentChanged)

  public:
    using QObject::QObject;

    // The program was started with a page of the person's choice: that is shown first.
    static void keep_to_the_page_asked();

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);

  signals:
    void documentChanged();
    // A file was opened, or taken up again, whose outage runs by this computer's clock.
    void nowWanted();

  private:
    void look();

    ScenarioDocument* document_ = nullptr;
    bool begun_ = false;  // the first file is on the screen
};

}  // namespace touch
