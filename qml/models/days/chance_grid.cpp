#include "models/days/chance_grid.hpp"

#include <algorithm>

#include <QVariantMap>

#include "models/answer_columns.hpp"
#include "models/words/finding_text.hpp"

namespace touch {

namespace {

constexpr double steps_above[] = {10.0, 50.0, 80.0, 95.0};  // %: where another colour begins

int step_of(double percent) {
    return static_cast<int>(
        std::ranges::count_if(steps_above, [percent](double above) { return percent >= above; }));
}

QString hours_in(const answers::Column* column, std::size_t row) {
    return column ? words_in(*column, row) : QString();
}

}  // namespace

void ChanceGrid::set_runner(AnswerRunner* runner) {
    if (runner_ == runner) return;
    if (runner_) runner_->disconnect(this);
    runner_ = runner;
    if (runner_) connect(runner_, &AnswerRunner::shown, this, &ChanceGrid::read_answer);
    emit askedChanged();
    read_answer();
}

void ChanceGrid::read_answer() {
    panels_.clear();
    packs_.clear();
    lasts_.clear();
    cells_.clear();
    const answers::Answer* answer = runner_ ? runner_->view()->answer.get() : nullptr;
    const answers::Series* chances = series_of(answer, QStringLiteral("grid"));
    const answers::Series* lasts = series_of(answer, QStringLiteral("lasts"));
    const answers::Column* packs = column_of(chances, QStringLiteral("packs"));
    if (packs) {
        for (const answers::Column& column : chances->columns) {
            if (&column != packs) panels_ << words_of(column.heading);
        }
        for (std::size_t row = 0; row < length_of(*packs); ++row) {
            packs_ << words_in(*packs, row);
            for (const answers::Column& column : chances->columns) {
                if (&column == packs) continue;
                cells_ << QVariantMap{{"text", words_in(column, row)},
                                      {"step", step_of(number_in(&column, row, 0.0))}};
                lasts_ << hours_in(column_of(lasts, words_of(column.name)), row);
            }
        }
    }
    emit read();
}

QString ChanceGrid::about(int row, int column) const {
    const qsizetype across = panels_.size();
    const qsizetype at = row * across + column;
    if (row < 0 || column < 0 || column >= across || at >= cells_.size()) return {};
    const QString chance = cells_[at].toMap().value(QStringLiteral("text")).toString();
    const QString words = tr("Packs: %1, panels: %2. It lasts to the end %3 times in 100.")
                              .arg(packs_[row], panels_[column], chance);
    const QString half_lasts = half(row, column);
    return half_lasts.isEmpty() ? words : words + QLatin1Char(' ') + half_lasts;
}

QString ChanceGrid::half(int row, int column) const {
    const qsizetype at = row * panels_.size() + column;
    if (row < 0 || column < 0 || column >= panels_.size() || at >= lasts_.size()) return {};
    return lasts_[at].isEmpty() ? QString()
                                : tr("Half of the time it lasts %1 or longer.").arg(lasts_[at]);
}

}  // namespace touch
