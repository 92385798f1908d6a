// What time it is for the log: the computer's clock in local standard time, put right by what the
// file says that it is ahead; looked at again and again, so that hours in which the computer was
// off count.
#pragma once

#include <functional>
#include <optional>

#include <QObject>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "scenario/scenario.hpp"
#include "units/time.hpp"

namespace touch {

// The "ahead_by" of "[clock]" in a text of a scenario; nought where it is silent.
[[nodiscard]] units::Duration clock_ahead_in(const QString& text);

class NowClock : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::ScenarioDocument* document READ document WRITE set_document NOTIFY moved)
    Q_PROPERTY(QString at READ at NOTIFY moved)        // "2026-01-15T21:30:00"; empty: not known
    Q_PROPERTY(QString words READ words NOTIFY moved)  // "Thursday 21:30"
    // The moment that the page asks about: `at`, but moved on every few minutes alone.
    Q_PROPERTY(QString asked READ asked NOTIFY askedChanged)
    // The outage of the file lasts at this moment.
    Q_PROPERTY(bool within READ within NOTIFY moved)
    // Why it does not, in words; empty where it does.
    Q_PROPERTY(QString outside READ outside NOTIFY moved)
    Q_PROPERTY(bool over READ over NOTIFY moved)  // the outage of the file has ended by then
    // The file can say how far the clock is off.
    Q_PROPERTY(bool canSetRight READ can_set_right NOTIFY moved)
    // Where to begin when the clock is put right: now, or else what the file says last.
    Q_PROPERTY(QString guess READ guess NOTIFY moved)
    // What makes the clock doubtful though the outage lasts; empty else.
    Q_PROPERTY(QString doubt READ doubt NOTIFY moved)
    // How far the file says that the clock is off, in words; empty where it is right.
    Q_PROPERTY(QString off READ off NOTIFY moved)

  public:
    using Source = std::function<std::optional<units::LocalTime>()>;

    explicit NowClock(QObject* parent = nullptr);

    // That of all clocks from now on: a test's own, or the computer's again when empty.
    static void set_source(Source source);

    // Looks at the clock at once.
    Q_INVOKABLE void look();
    // The time it is, as somebody else's watch has it: what the clock is ahead goes into the file.
    Q_INVOKABLE bool setRight(const QString& at);
    // The outage of the file begins now, or lasts a day longer than the file says.
    Q_INVOKABLE bool beginNow();
    Q_INVOKABLE bool lastLonger();
    // A time moved by minutes; "Thursday 15 Jan 21:30" of a time.
    Q_INVOKABLE static QString stepped(const QString& at, int minutes);
    Q_INVOKABLE static QString wordsOf(const QString& at);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] std::optional<units::LocalTime> now() const { return now_; }
    [[nodiscard]] QString at() const;
    [[nodiscard]] QString words() const;
    [[nodiscard]] QString asked() const { return asked_; }
    [[nodiscard]] bool within() const { return now_ && scenario_ && outside_.isEmpty(); }
    [[nodiscard]] QString outside() const { return outside_; }
    [[nodiscard]] bool over() const { return over_; }
    [[nodiscard]] bool can_set_right() const { return can_set_right_; }
    [[nodiscard]] QString guess() const;
    [[nodiscard]] QString doubt() const { return doubt_; }
    [[nodiscard]] QString off() const;

  signals:
    void moved();
    void askedChanged();

  private:
    void take_text();
    void judge();

    ScenarioDocument* document_ = nullptr;
    QTimer ticks_;
    std::optional<scenario::Scenario> scenario_;
    units::Duration ahead_{};
    std::optional<units::LocalTime> now_;
    std::optional<units::LocalTime> asked_at_;
    QString asked_;
    QString outside_;
    QString doubt_;
    bool over_ = false;
    bool can_set_right_ = false;
};

}  // namespace touch
