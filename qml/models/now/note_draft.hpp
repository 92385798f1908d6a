// One entry of the log on its way: what is picked and typed with a finger, what it would say, and
// why it cannot be written where it cannot.
#pragma once

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "models/now/note_parts.hpp"
#include "models/now/now_clock.hpp"

namespace touch {

class NoteDraft : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::ScenarioDocument* document MEMBER document_)
    Q_PROPERTY(touch::NowClock* clock MEMBER clock_)
    Q_PROPERTY(QString kind READ kind NOTIFY changed)
    // Lists of {key, name, detail}; told of only where they change, so that a button that is
    // touched is not made anew under the finger.
    Q_PROPERTY(QVariantList choices READ choices NOTIFY choicesChanged)
    Q_PROPERTY(QVariantList details READ details NOTIFY detailsChanged)
    Q_PROPERTY(QString what READ what NOTIFY changed)
    Q_PROPERTY(QString detail READ detail NOTIFY changed)
    Q_PROPERTY(bool typesNumber READ types_number NOTIFY changed)
    Q_PROPERTY(bool signedNumber READ signed_number NOTIFY changed)  // it may be below nought
    Q_PROPERTY(bool ofOther READ of_other NOTIFY changed)  // the pad types the second number
    Q_PROPERTY(QString typed READ typed NOTIFY changed)    // with its unit, as it reads
    Q_PROPERTY(QString unit READ unit NOTIFY changed)
    Q_PROPERTY(QStringList units READ units NOTIFY changed)
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(int most READ most NOTIFY changed)  // packs of that name; below 2 nothing to count
    Q_PROPERTY(QString at READ at NOTIFY changed)
    Q_PROPERTY(QString atWords READ at_words NOTIFY changed)
    Q_PROPERTY(bool canEarlier READ can_earlier NOTIFY changed)
    Q_PROPERTY(bool canLater READ can_later NOTIFY changed)
    Q_PROPERTY(bool asksBy READ asks_by NOTIFY changed)  // when the supply is expected
    Q_PROPERTY(QString byWords READ by_words NOTIFY changed)
    Q_PROPERTY(QString said READ said NOTIFY changed)        // empty while a part is missing
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)  // why it cannot be written
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
    Q_PROPERTY(QString beware READ beware NOTIFY changed)  // the same, a line each
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(QString written READ written NOTIFY wrote)  // what was written last

  public:
    using QObject::QObject;

    // A new entry of this moment, of one of note_kinds.
    Q_INVOKABLE void begin(const QString& kind);
    Q_INVOKABLE void pick(const QString& what);
    Q_INVOKABLE void pickDetail(const QString& detail);
    // The pad types the reading itself again.
    Q_INVOKABLE void typeReading();
    // One key of the pad: a digit, ".", "," or "-", which turns the sign.
    Q_INVOKABLE void press(const QString& sign);
    Q_INVOKABLE void back();
    Q_INVOKABLE void choose(const QString& unit);
    Q_INVOKABLE void setCount(int count);
    // Moves the time of the entry, never past now; and that at which the supply is expected.
    Q_INVOKABLE void step(int minutes);
    Q_INVOKABLE void toNow();
    Q_INVOKABLE void stepBy(int minutes);
    // Puts the entry behind the text of the file; one step back takes it out again.
    Q_INVOKABLE bool write();

    [[nodiscard]] QString kind() const { return parts_.kind; }
    [[nodiscard]] QVariantList choices() const { return choices_; }
    [[nodiscard]] QVariantList details() const { return details_; }
    [[nodiscard]] QString what() const { return parts_.what; }
    [[nodiscard]] QString detail() const { return parts_.detail; }
    [[nodiscard]] bool types_number() const;
    [[nodiscard]] bool signed_number() const { return parts_.kind == "thermometer"; }
    [[nodiscard]] bool of_other() const { return of_other_; }
    [[nodiscard]] QString typed() const;
    [[nodiscard]] QString unit() const { return number().unit; }
    [[nodiscard]] QStringList units() const;
    [[nodiscard]] int count() const { return parts_.count; }
    [[nodiscard]] int most() const;
    [[nodiscard]] QString at() const;
    [[nodiscard]] QString at_words() const;
    [[nodiscard]] bool can_earlier() const;
    [[nodiscard]] bool can_later() const { return back_by_ > 0; }
    [[nodiscard]] bool asks_by() const;
    [[nodiscard]] QString by_words() const;
    [[nodiscard]] QString said() const { return said_; }
    [[nodiscard]] QString trouble() const { return trouble_; }
    [[nodiscard]] QStringList cautions() const { return cautions_; }
    [[nodiscard]] QString beware() const { return cautions_.join(QLatin1Char('\n')); }
    [[nodiscard]] bool ready() const { return !said_.isEmpty() && trouble_.isEmpty(); }
    [[nodiscard]] QString written() const { return written_; }

  signals:
    void changed();
    void choicesChanged();
    void detailsChanged();
    void wrote();

  private:
    [[nodiscard]] TypedNumber& number() { return of_other_ ? parts_.other : parts_.number; }
    [[nodiscard]] const TypedNumber& number() const {
        return of_other_ ? parts_.other : parts_.number;
    }
    void take_time();
    void list();
    void look();

    ScenarioDocument* document_ = nullptr;
    NowClock* clock_ = nullptr;
    scenario::Scenario scenario_;
    NoteParts parts_;
    QVariantList choices_;
    QVariantList details_;
    int back_by_ = 0;  // minutes before now
    bool of_other_ = false;
    QString said_;
    QString trouble_;
    QStringList cautions_;
    QString written_;
};

}  // namespace touch
