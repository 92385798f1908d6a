// The pages of the program, in the order of the rail: by when they are wanted. A page is one line of
// the table in the source file; it is there once its file is part of the program.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace touch {

// Of the pages that are there, in the order of the rail.
[[nodiscard]] QStringList page_keys();

class PageList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    // In which the names are said.
    Q_PROPERTY(QString language READ language WRITE set_language NOTIFY told)
    // {key, name, group, first (of its group), file, digit (empty beyond the tenth)} each.
    Q_PROPERTY(QVariantList pages READ pages NOTIFY told)

  public:
    using QObject::QObject;

    [[nodiscard]] QString language() const { return language_; }
    void set_language(const QString& language);
    [[nodiscard]] QVariantList pages() const;

  signals:
    void told();

  private:
    QString language_;
};

}  // namespace touch
