#include "models/days/range_bars.hpp"

#include <algorithm>
#include <utility>

#include "models/answer_columns.hpp"
#include "models/words/shown_amount.hpp"

namespace touch {

void RangeBars::set_runner(AnswerRunner* runner) {
    if (runner_ == runner) return;
    if (runner_) runner_->disconnect(this);
    runner_ = runner;
    if (runner_) connect(runner_, &AnswerRunner::shown, this, &RangeBars::read);
    emit askedChanged();
    read();
}

void RangeBars::set(QString& member, const QString& name) {
    if (member == name) return;
    member = name;
    emit askedChanged();
    read();
}

void RangeBars::set_limit(double limit) {
    if (limit_ == limit) return;
    limit_ = limit;
    emit askedChanged();
    read();
}

void RangeBars::read() {
    Drawn drawn = drawn_from(runner_ ? runner_->view()->answer.get() : nullptr);
    to_shares(drawn);
    show(std::move(drawn.bars));
    emit barsChanged();
    // Told only when they change: what is shown of them may depend on them.
    if (drawn.groups == groups_) return;
    groups_ = drawn.groups;
    emit groupsChanged();
}

RangeBars::Drawn RangeBars::drawn_from(const answers::Answer* answer) const {
    const answers::Series* series = series_of(answer, series_);
    const answers::Column* names = column_of(series, names_);
    const answers::Column* likely = column_of(series, likely_);
    const answers::Column* group = group_.isEmpty() ? nullptr : column_of(series, group_);
    if (!names || !likely) return {};
    Drawn drawn{.bars = {}, .groups = {}, .unit = likely->unit};
    for (std::size_t row = 0; row < length_of(*names); ++row) {
        const QString of = group ? words_in(*group, row) : QString();
        if (group && !drawn.groups.contains(of)) drawn.groups << of;
        if (group && !only_.isEmpty() && of != only_) continue;
        const double middle = number_in(likely, row, 0.0);
        RangeBar bar{.label = words_in(*names, row),
                     .text = {},
                     .low = number_in(column_of(series, low_), row, middle),
                     .likely = middle,
                     .high = number_in(column_of(series, high_), row, middle)};
        bar.text = range_in_words(bar, drawn.unit);
        drawn.bars.append(bar);
    }
    return drawn;
}

QString RangeBars::range_in_words(const RangeBar& bar, const std::string& unit) {
    const QString likely = shown_amount(bar.likely, unit);
    if (bar.low < bar.likely)
        return tr("%1 (%2 to %3)")
            .arg(likely, shown_amount(bar.low, unit), shown_amount(bar.high, unit));
    if (bar.likely < bar.high) return tr("%1 (to %2)").arg(likely, shown_amount(bar.high, unit));
    return likely;
}

void RangeBars::to_shares(Drawn& drawn) {
    double most = 0.0;
    for (const RangeBar& bar : drawn.bars)
        most = std::max(most, bar.high);
    if (limit_ > 0.0) most = std::clamp(most, 1.1 * limit_, most_limits * limit_);
    const bool of_a_whole = drawn.unit == "%" && most <= 100.0;
    const double top = limit_ > 0.0 ? most : of_a_whole ? 100.0 : scale_above(most).top;
    top_ = drawn.bars.isEmpty() ? QString() : shown_amount(top, drawn.unit);
    limit_at_ = limit_ > 0.0 ? limit_ / top : -1.0;
    for (RangeBar& bar : drawn.bars) {
        bar.low = std::min(1.0, bar.low / top);
        bar.likely = std::min(1.0, bar.likely / top);
        bar.high = std::min(1.0, bar.high / top);
    }
}

// Rows stay where there are as many: a list that is reset loses its place.
void RangeBars::show(QList<RangeBar> bars) {
    const bool same_rows = bars.size() == bars_.size();
    if (!same_rows) beginResetModel();
    bars_ = std::move(bars);
    if (!same_rows) {
        endResetModel();
    } else if (count() > 0) {
        emit dataChanged(index(0), index(count() - 1));
    }
}

QString RangeBars::spoken() const {
    QStringList words;
    for (const RangeBar& bar : bars_)
        words << QStringLiteral("%1 %2").arg(bar.label, bar.text);
    return words.join(QStringLiteral("; "));
}

int RangeBars::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant RangeBars::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const RangeBar& bar = bars_[index.row()];
    switch (role) {
        case Qt::DisplayRole:
        case LabelRole:
            return bar.label;
        case TextRole:
            return bar.text;
        case LowRole:
            return bar.low;
        case LikelyRole:
            return bar.likely;
        case HighRole:
            return bar.high;
        default:
            return {};
    }
}

QHash<int, QByteArray> RangeBars::roleNames() const {
    return {{LabelRole, "label"},
            {TextRole, "text"},
            {LowRole, "low"},
            {LikelyRole, "likely"},
            {HighRole, "high"}};
}

}  // namespace touch
