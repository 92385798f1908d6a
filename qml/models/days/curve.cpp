#include "models/days/curve.hpp"

#include <algorithm>

#include <QVariantMap>
#include <QXYSeries>

#include "models/answer_columns.hpp"
#include "models/days/days_view_of.hpp"
#include "models/words/shown_amount.hpp"

namespace touch {

namespace {

QVariantList ticks(const Scale& scale, double most, std::string_view unit) {
    QVariantList list;
    for (int number = 0; number * scale.step <= most * 1.0001; ++number) {
        const double value = number * scale.step;
        list << QVariantMap{{"at", value / most}, {"text", shown_amount(value, unit)}};
    }
    return list;
}

}  // namespace

void Curve::fill(QObject* line) const {
    if (auto* drawn = qobject_cast<QXYSeries*>(line)) drawn->replace(points_);
}

void Curve::set_runner(AnswerRunner* runner) {
    if (runner_ == runner) return;
    if (runner_) runner_->disconnect(this);
    runner_ = runner;
    if (runner_) connect(runner_, &AnswerRunner::shown, this, &Curve::read);
    emit changed();
    read();
}

void Curve::set(QString& member, const QString& name) {
    if (member == name) return;
    member = name;
    emit changed();
    read();
}

void Curve::read() {
    points_.clear();
    const answers::Answer* answer = runner_ ? runner_->view()->answer.get() : nullptr;
    const answers::Series* series = series_of(answer, series_);
    const answers::Column* x = column_of(series, across_);
    const answers::Column* y = column_of(series, up_);
    if (x && y) {
        double most = 0.0;
        for (std::size_t row = 0; row < std::min(length_of(*x), length_of(*y)); ++row) {
            points_.append({number_in(x, row, 0.0), number_in(y, row, 0.0)});
            most = std::max(most, points_.back().y());
        }
        points_ = thinned(points_, most_points);
        heading_ = words_of(y->heading);
        width_ = points_.isEmpty() ? 1.0 : std::max(1e-9, points_.back().x());
        const Scale up = scale_above(most);
        top_ = up.top;
        ticks_up_ = ticks(up, top_, y->unit);
        ticks_across_ = ticks(scale_above(width_), width_, x->unit);
        spoken_ = points_.isEmpty() ? QString()
                                    : tr("%1 from %2 to %3, at most %4")
                                          .arg(heading_, shown_amount(points_.front().y(), y->unit),
                                               shown_amount(points_.back().y(), y->unit),
                                               shown_amount(most, y->unit));
    }
    emit drawn();
}

}  // namespace touch
