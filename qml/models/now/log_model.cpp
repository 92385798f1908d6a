#include "models/now/log_model.hpp"

#include <algorithm>
#include <numeric>

#include "models/words/told.hpp"
#include "notes/understand.hpp"
#include "scenario/file/read.hpp"

namespace touch {

using scenario::LogEntry;

LogEntry strike_of(const LogEntry& entry, units::LocalTime now) {
    LogEntry made{.at = now};
    made.strikes = entry.at;
    made.pack = entry.pack;
    made.load = entry.load;
    made.keeps = entry.keeps;
    if (entry.sun) made.sun = scenario::SunCounted{};
    return made;
}

void LogModel::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &LogModel::take_text);
    take_text();
}

void LogModel::set_odd(const QVariantList& odd) {
    if (odd_ == odd) return;
    odd_ = odd;
    if (count() > 0) emit dataChanged(index(0), index(count() - 1), {OddRole, SpokenRole});
    emit changed();
}

// While the text cannot be read, the entries of before stay in sight.
void LogModel::take_text() {
    if (!document_) return;
    auto read = scenario::read_scenario(document_->text().toStdString(), std::string());
    if (!read) return;
    beginResetModel();
    log_ = std::move(read->scenario.log);
    order_.resize(log_.size());
    std::iota(order_.begin(), order_.end(), std::size_t(0));
    std::ranges::stable_sort(
        order_, [this](std::size_t a, std::size_t b) { return log_[b].at < log_[a].at; });
    trouble_.clear();
    endResetModel();
    emit changed();
}

bool LogModel::strike(int row) {
    if (!document_ || row < 0 || row >= count()) return false;
    const LogEntry& entry = log_[order_[std::size_t(row)]];
    // A clock that is behind must not put the strike before what it strikes.
    units::LocalTime now = entry.at;
    if (clock_ && clock_->within() && *clock_->now() > now) now = *clock_->now();
    const LogEntry made = strike_of(entry, now);
    trouble_ = document_->change(
        [&made](const std::string& text) { return notes::with_entries(text, {made}); });
    if (trouble_.isEmpty()) return true;
    emit changed();
    return false;
}

bool LogModel::is_struck(std::size_t place) const {
    return std::ranges::any_of(
        log_, [&](const LogEntry& by) { return scenario::is_struck_by(log_[place], by); });
}

QString LogModel::spoken(std::size_t place) const {
    const QString words = told(notes::in_words(log_[place]));
    if (is_struck(place)) return tr("Struck: %1").arg(words);
    return odd_.contains(int(place)) ? tr("Cannot be true together with the others: %1").arg(words)
                                     : words;
}

int LogModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant LogModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const std::size_t place = order_[std::size_t(index.row())];
    switch (role) {
        case Qt::DisplayRole:
        case WordsRole:
            return told(notes::in_words(log_[place]));
        case NumberRole:
            return int(place) + 1;
        case StruckRole:
            return is_struck(place);
        case StrikesRole:
            return log_[place].strikes.has_value();
        case OddRole:
            return odd_.contains(int(place));
        case SpokenRole:
            return spoken(place);
        default:
            return {};
    }
}

QHash<int, QByteArray> LogModel::roleNames() const {
    return {{WordsRole, "words"},     {NumberRole, "number"}, {StruckRole, "struck"},
            {StrikesRole, "strikes"}, {OddRole, "odd"},       {SpokenRole, "spoken"}};
}

}  // namespace touch
