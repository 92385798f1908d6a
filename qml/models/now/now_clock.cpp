#include "models/now/now_clock.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include <QGuiApplication>

#include "answers/clock_words.hpp"
#include "command_line/surroundings.hpp"
#include "models/words/scenario_text.hpp"
#include "models/words/shown_amount.hpp"
#include "scenario/file/document.hpp"
#include "scenario/file/open_end.hpp"
#include "scenario/file/read.hpp"
#include "units/clock.hpp"
#include "units/said.hpp"
#include "units/text.hpp"

namespace touch {

namespace {

using units::Duration;
using units::LocalTime;
using units::minute;

const QString ahead_key = QStringLiteral("clock.ahead_by");
constexpr int looks_apart = 10'000;             // ms
constexpr Duration asked_again = 5.0 * minute;  // as the hours left are no sharper than that

std::optional<LocalTime> time_of_computer() {
    return command_line::surroundings_of_this_process().clock;
}

NowClock::Source& source() {
    static NowClock::Source shared = time_of_computer;
    return shared;
}

LocalTime to_the_minute(LocalTime time) {
    return LocalTime(std::floor(time.since_1970() / minute + 1e-9) * minute);
}

QString iso(LocalTime time) {
    return QString::fromStdString(answers::time_in_iso(time));
}

QString with_date(LocalTime time) {
    return told(
        words::said<"{time}">(units::moment(time, words::Moment::Form::weekday_date_clock)));
}

// Entries are written to the minute, and clocks differ by some.
bool has_entry_after(const scenario::Scenario& scenario, LocalTime now) {
    const auto standing = scenario::standing(scenario.log);
    return !standing.empty() && scenario.log[standing.back()].at > now + 15.0 * minute;
}

}  // namespace

Duration clock_ahead_in(const QString& text) {
    const auto document = scenario::read_document(text.toStdString(), "");
    if (!document) return {};
    const scenario::Node* clock = document->find("clock");
    const scenario::Node* ahead = clock ? clock->find("ahead_by") : nullptr;
    if (!ahead) return {};
    return units::read<Duration>(ahead->text).value_or(Duration{});
}

NowClock::NowClock(QObject* parent) : QObject(parent) {
    connect(&ticks_, &QTimer::timeout, this, &NowClock::look);
    ticks_.start(looks_apart);
    // A computer that slept wakes up with the page as it was.
    if (auto* application = qobject_cast<QGuiApplication*>(QCoreApplication::instance()))
        connect(application, &QGuiApplication::applicationStateChanged, this, &NowClock::look);
    look();
}

void NowClock::set_source(Source of_test) {
    source() = of_test ? std::move(of_test) : Source(time_of_computer);
}

void NowClock::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &NowClock::take_text);
    take_text();
}

void NowClock::take_text() {
    scenario_.reset();
    ahead_ = {};
    if (document_ && !document_->text().isEmpty()) {
        ahead_ = clock_ahead_in(document_->text());
        can_set_right_ =
            with_value(document_->text(), ahead_key, QStringLiteral("1 min")).trouble.isEmpty();
        if (auto read = scenario::read_scenario(document_->text().toStdString(), std::string()))
            scenario_ = std::move(read->scenario);
    }
    asked_at_.reset();  // what was just written down is of this minute
    look();
}

void NowClock::look() {
    const auto computer = source()();
    const auto now = computer ? std::optional(to_the_minute(*computer - ahead_)) : std::nullopt;
    const bool same = now == now_ && asked_at_;
    now_ = now;
    judge();
    if (same) return;
    emit moved();
    const bool back = now_ && asked_at_ && *now_ < *asked_at_;
    if (asked_at_ && now_ && !back && *now_ < *asked_at_ + asked_again) return;
    asked_at_ = now_;
    const QString asked = within() ? iso(*now_) : QString();
    if (asked == asked_) return;
    asked_ = asked;
    emit askedChanged();
}

void NowClock::judge() {
    outside_.clear();
    doubt_.clear();
    over_ = false;
    if (!now_) {
        outside_ = tr("This computer does not tell the time.");
        return;
    }
    if (!scenario_) return;
    const LocalTime starts = scenario_->outage.starts;
    const LocalTime ends = starts + scenario::looked_at(scenario_->outage);
    over_ = !(*now_ < ends);
    if (*now_ < starts)
        outside_ = tr("By this computer's clock it is %1; the outage of this file begins %2.")
                       .arg(with_date(*now_), with_date(starts));
    else if (over_)
        outside_ = tr("By this computer's clock it is %1; the outage of this file was over %2.")
                       .arg(with_date(*now_), with_date(ends));
    else if (has_entry_after(*scenario_, *now_))
        doubt_ = tr("By this computer's clock it is %1, and an entry of the log is later than "
                    "that. Entries later than now do not count yet.")
                     .arg(with_date(*now_));
}

bool NowClock::setRight(const QString& at) {
    const auto right = units::read_local_time(at.toStdString());
    const auto computer = source()();
    if (!document_ || !right || !computer) return false;
    const double minutes = std::round((to_the_minute(*computer) - *right) / minute);
    return document_->put(ahead_key, QStringLiteral("%1 min").arg(qlonglong(minutes)));
}

bool NowClock::beginNow() {
    return document_ && now_ && document_->put(QStringLiteral("outage.starts"), iso(*now_));
}

bool NowClock::lastLonger() {
    if (!document_ || !now_ || !scenario_) return false;
    const double days = std::ceil((*now_ - scenario_->outage.starts) / units::day + 1.0);
    return document_->put(QStringLiteral("outage.lasts"),
                          QStringLiteral("%1 d").arg(qlonglong(days)));
}

QString NowClock::stepped(const QString& at, int minutes) {
    const auto time = units::read_local_time(at.toStdString());
    return time ? iso(*time + double(minutes) * minute) : at;
}

QString NowClock::wordsOf(const QString& at) {
    const auto time = units::read_local_time(at.toStdString());
    return time ? with_date(*time) : QString();
}

QString NowClock::at() const {
    return now_ ? iso(*now_) : QString();
}

QString NowClock::guess() const {
    if (within() || !scenario_) return at();
    const auto standing = scenario::standing(scenario_->log);
    return iso(standing.empty() ? scenario_->outage.starts : scenario_->log[standing.back()].at);
}

QString NowClock::words() const {
    return now_ ? with_date(*now_) : QString();
}

QString NowClock::off() const {
    if (ahead_ == Duration{}) return {};
    const QString by = shown(std::max(ahead_, -ahead_));
    return ahead_ > Duration{} ? tr("This computer's clock is taken to be %1 ahead.").arg(by)
                               : tr("This computer's clock is taken to be %1 behind.").arg(by);
}

}  // namespace touch
