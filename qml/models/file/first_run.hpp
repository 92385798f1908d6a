// Five short questions about what a person has, each of which may be left out; the answers make a
// scenario of their own, again after each one.
#pragma once

#include <QObject>
#include <QSet>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"

namespace touch {

class FirstRun : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::ScenarioDocument* document MEMBER document_ NOTIFY asked)
    Q_PROPERTY(QString language READ language WRITE set_language NOTIFY asked)
    Q_PROPERTY(int number READ number NOTIFY asked)  // of the question, from 0
    Q_PROPERTY(int questions READ questions CONSTANT)
    Q_PROPERTY(QString words READ words NOTIFY asked)
    Q_PROPERTY(QString more READ more NOTIFY asked)     // in small below it
    Q_PROPERTY(bool several READ several NOTIFY asked)  // more than one may be picked
    Q_PROPERTY(bool counts READ counts NOTIFY asked)    // how many of it is asked as well
    Q_PROPERTY(int count READ count NOTIFY asked)
    Q_PROPERTY(int least READ least NOTIFY asked)
    Q_PROPERTY(int most READ most CONSTANT)
    Q_PROPERTY(QString place READ place NOTIFY asked)
    Q_PROPERTY(bool asksPlace READ asks_place NOTIFY asked)
    // {key, name, detail, picture, chosen} each.
    Q_PROPERTY(QVariantList options READ options NOTIFY asked)
    Q_PROPERTY(bool answered READ answered NOTIFY asked)  // one question at least

  public:
    explicit FirstRun(QObject* parent = nullptr);

    Q_INVOKABLE void begin();
    Q_INVOKABLE void forth();
    Q_INVOKABLE void back();
    // Picks one of the options, or lets it go where several may be picked.
    Q_INVOKABLE void choose(const QString& key);
    Q_INVOKABLE void setCount(int count);
    Q_INVOKABLE void setPlace(const QString& name);

    [[nodiscard]] QString language() const { return language_; }
    void set_language(const QString& language);
    [[nodiscard]] int number() const { return number_; }
    [[nodiscard]] static int questions() { return 5; }
    [[nodiscard]] QString words() const;
    [[nodiscard]] QString more() const;
    [[nodiscard]] bool several() const { return number_ == 0; }
    [[nodiscard]] bool counts() const { return number_ == 1 || number_ == 2; }
    [[nodiscard]] int count() const { return number_ == 1 ? packs_ : panels_; }
    [[nodiscard]] int least() const { return number_ == 1 ? 1 : 0; }
    [[nodiscard]] static int most() { return 12; }
    [[nodiscard]] QString place() const { return place_; }
    [[nodiscard]] bool asks_place() const { return number_ == 4; }
    [[nodiscard]] QVariantList options() const;
    [[nodiscard]] bool answered() const { return answered_; }

    // The scenario that the answers make; figures that nobody was asked for are marked in it.
    [[nodiscard]] QString text() const;

  signals:
    void asked();

  private:
    // Puts the text into the document; the first one begins a new plan.
    void answer();

    ScenarioDocument* document_ = nullptr;
    QString language_;
    int number_ = 0;
    bool answered_ = false;
    QSet<QString> things_;
    QString battery_;
    QString panel_;
    QString length_;
    QString place_;
    int packs_ = 1;
    int panels_ = 0;
};

}  // namespace touch
