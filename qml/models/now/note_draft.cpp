#include "models/now/note_draft.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include <QVariantMap>

#include "answers/clock_words.hpp"
#include "answers/note/answer.hpp"
#include "models/words/scenario_text.hpp"
#include "models/words/told.hpp"
#include "models/words/typed_amount.hpp"
#include "notes/understand.hpp"
#include "scenario/file/read.hpp"
#include "units/clock.hpp"

namespace touch {

namespace {

using units::minute;

constexpr qsizetype longest_typed = 8;  // signs; more is a slip of the finger
constexpr int expected_in = 12 * 60;    // min; a first guess to be stepped from
constexpr int whole_steps = 10;         // min

QVariantList as_list(const QList<NoteChoice>& choices) {
    QVariantList list;
    for (const NoteChoice& one : choices)
        list << QVariantMap{{"key", one.key}, {"name", one.name}, {"detail", one.detail}};
    return list;
}

// The longest of the usual times that the outage has lasted.
QString usual_time(units::Duration elapsed) {
    for (const int hours : {24, 12, 6})
        if (elapsed >= double(hours) * units::hour) return QStringLiteral("%1 h").arg(hours);
    return QStringLiteral("1 h");
}

}  // namespace

void NoteDraft::begin(const QString& kind) {
    parts_ = {};
    parts_.kind = kind;
    of_other_ = false;
    back_by_ = 0;
    scenario_ = {};
    if (document_) {
        if (auto read = scenario::read_scenario(document_->text().toStdString(), std::string()))
            scenario_ = std::move(read->scenario);
    }
    take_time();
    parts_.number.unit = units_of(parts_, false, language_wished().us_units).value(0);
    parts_.other.unit = units_of(parts_, true, false).value(0);
    if (kind == "meter") parts_.detail = usual_time(parts_.at - scenario_.outage.starts);
    const double ahead = expected_in + whole_steps;
    parts_.by = units::LocalTime(
        std::floor((parts_.at.since_1970() / minute + ahead) / whole_steps) * whole_steps * minute);
    look();
}

void NoteDraft::take_time() {
    if (clock_) clock_->look();
    const auto now = clock_ ? clock_->now() : std::nullopt;
    if (!now) return;
    parts_.at = *now - double(back_by_) * minute;
    if (parts_.at < scenario_.outage.starts) {
        back_by_ = std::max(0, int((*now - scenario_.outage.starts) / minute));
        parts_.at = *now - double(back_by_) * minute;
    }
}

void NoteDraft::pick(const QString& what) {
    parts_.what = what;
    if (parts_.kind == "happened") {
        const auto whose = details_of(scenario_, parts_);
        parts_.detail = whose.size() == 1 ? whose.front().key : QString();
        parts_.count = 1;
    }
    look();
}

void NoteDraft::pickDetail(const QString& detail) {
    // The sky is told or not; a second touch takes it back.
    parts_.detail = parts_.kind == "sun" && parts_.detail == detail ? QString() : detail;
    of_other_ = detail == "under" || detail == "other";
    parts_.count = std::clamp(parts_.count, 1, std::max(1, most()));
    look();
}

void NoteDraft::typeReading() {
    of_other_ = false;
    look();
}

void NoteDraft::press(const QString& sign) {
    QString& typed = number().typed;
    const QString plain = sign == "," ? QStringLiteral(".") : sign;
    if (plain == "-") {
        typed = typed.startsWith('-') ? typed.mid(1) : QLatin1Char('-') + typed;
    } else if (plain != "." || !typed.contains('.')) {
        if (typed.size() < longest_typed) typed += plain;
    }
    look();
}

void NoteDraft::back() {
    number().typed.chop(1);
    look();
}

void NoteDraft::choose(const QString& unit) {
    number().unit = unit;
    if (parts_.kind == "volts" && unit == "%") parts_.detail.clear();
    look();
}

void NoteDraft::setCount(int count) {
    parts_.count = std::clamp(count, 1, std::max(1, most()));
    look();
}

void NoteDraft::step(int minutes) {
    back_by_ = std::max(0, back_by_ - minutes);
    take_time();
    look();
}

void NoteDraft::toNow() {
    back_by_ = 0;
    take_time();
    look();
}

void NoteDraft::stepBy(int minutes) {
    const auto by = parts_.by + double(minutes) * minute;
    if (by > parts_.at) parts_.by = by;
    look();
}

bool NoteDraft::write() {
    if (back_by_ == 0) take_time();
    look();
    const auto entry = entry_of(scenario_, parts_);
    if (!document_ || !entry || !ready()) return false;
    trouble_ = document_->change(
        [&entry](const std::string& text) { return notes::with_entries(text, {*entry}); });
    if (trouble_.isEmpty()) {
        written_ = said_;
        emit wrote();
    }
    emit changed();
    return trouble_.isEmpty();
}

void NoteDraft::list() {
    if (auto choices = as_list(choices_of(scenario_, parts_.kind)); choices != choices_) {
        choices_ = std::move(choices);
        emit choicesChanged();
    }
    if (auto details = as_list(details_of(scenario_, parts_)); details != details_) {
        details_ = std::move(details);
        emit detailsChanged();
    }
}

// What the reader of the file says of the text with the entry is told before it is written.
void NoteDraft::look() {
    list();
    said_.clear();
    trouble_.clear();
    cautions_.clear();
    if (const auto entry = entry_of(scenario_, parts_); entry && document_) {
        said_ = told(notes::in_words(*entry));
        for (const auto& caution : answers::cautions_of_log(scenario_, {*entry}))
            cautions_ << told(caution.text);
        trouble_ = with_edit(document_->text(), [&entry](const std::string& text) {
                       return notes::with_entries(text, {*entry});
                   }).trouble;
    }
    emit changed();
}

bool NoteDraft::types_number() const {
    return !units_of(parts_, false, false).isEmpty();
}

QString NoteDraft::typed() const {
    if (number().typed.isEmpty()) return {};
    const bool volts = parts_.kind == "volts" && !of_other_ && number().unit == "V";
    QString shown = volts ? with_its_point(number().typed) : number().typed;
    QString unit = number().unit;
    return with_own_mark(shown) + QLatin1Char(' ') + unit.replace("deg", "°");
}

QStringList NoteDraft::units() const {
    return units_of(parts_, of_other_, language_wished().us_units);
}

int NoteDraft::most() const {
    const bool of_packs = parts_.kind == "happened" && !parts_.detail.startsWith("load:");
    return of_packs ? packs_named(scenario_, parts_.detail) : 0;
}

QString NoteDraft::at() const {
    return QString::fromStdString(answers::time_in_iso(parts_.at));
}

QString NoteDraft::at_words() const {
    return NowClock::wordsOf(at());
}

bool NoteDraft::can_earlier() const {
    return parts_.at > scenario_.outage.starts;
}

bool NoteDraft::asks_by() const {
    return parts_.kind == "happened" && parts_.what == "expected";
}

QString NoteDraft::by_words() const {
    return NowClock::wordsOf(QString::fromStdString(answers::time_in_iso(parts_.by)));
}

}  // namespace touch
