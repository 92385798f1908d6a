#include "models/days/days_model.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include <QAreaSeries>
#include <QVariantMap>
#include <QXYSeries>

#include "models/days/spread.hpp"
#include "models/days/swatch.hpp"
#include "models/days/time_axis.hpp"

namespace touch {

namespace {

void replace_points(QObject* series, const QList<QPointF>& points) {
    if (auto* drawn = qobject_cast<QXYSeries*>(series)) drawn->replace(points);
}

QString listed(QStringList words) {
    words.removeAll(QString());
    return words.join(QStringLiteral(" · "));
}

// The graver the greater.
int weight_of(const QString& mark) {
    return mark == u"stop" ? 2 : mark == u"caution" ? 1 : 0;
}

QVariantMap row_of(const FindingText& finding) {
    return {{"mark", finding.mark},         {"word", finding.word},    {"where", finding.where},
            {"text", finding.text},         {"mend", finding.mend},    {"pin", finding.pin},
            {"spoken", spoken_of(finding)}, {"source", finding.source}};
}

QVariantList ticks_of(const QList<Tick>& ticks) {
    QVariantList list;
    for (const Tick& tick : ticks) {
        list << QVariantMap{{"at", tick.at}, {"text", tick.text}};
    }
    return list;
}

}  // namespace

DaysModel::DaysModel(QObject* parent)
    : QAbstractListModel(parent), view_(std::make_shared<const DaysView>()) {}

void DaysModel::show(std::shared_ptr<const DaysView> view) {
    beginResetModel();
    view_ = std::move(view);
    row_ = std::clamp(row_, 0, std::max(0, count() - 1));
    ++edition_;
    endResetModel();
    emit shown();
    emit rowChanged();
}

void DaysModel::fillStored(QObject* lower, QObject* upper, QObject* likely) const {
    replace_points(lower, view_->stored_low);
    replace_points(upper, view_->stored_high);
    replace_points(likely, view_->stored);
}

void DaysModel::fillHalf(QObject* lower, QObject* upper) const {
    replace_points(lower, view_->stored_lower);
    replace_points(upper, view_->stored_upper);
}

void DaysModel::fillSun(QObject* sun) const {
    replace_points(sun, view_->sun);
}

void DaysModel::fillStack(int place, QObject* lower, QObject* upper, QObject* area) const {
    const Stack stack = view_->stacks.value(place);
    replace_points(lower, stack.lower);
    replace_points(upper, stack.upper);
    if (auto* drawn = qobject_cast<QAreaSeries*>(area))
        drawn->setBrush(QBrush(drawn->color(), pattern_of(place)));
}

QVariantMap DaysModel::axisIn(double from, double to, double width, double letter) const {
    const double hours = view_->hours;
    const TimeAxis axis = time_axis(view_->starts, from * hours, to * hours, width, letter);
    QVariantList ticks;
    for (const TimeTick& tick : axis.ticks) {
        const int row = row_at(tick.at / hours);
        ticks << QVariantMap{{"at", tick.at / hours},
                             {"text", tick.text},
                             {"spoken", spoken_row(view_->moments.value(row))},
                             {"row", row}};
    }
    QVariantList spans;
    for (const TimeSpan& span : axis.spans)
        spans << QVariantMap{{"from", span.from / hours},
                             {"to", span.to / hours},
                             {"name", span.name},
                             {"reach", span.reach}};
    return {{"ticks", ticks}, {"spans", spans}};
}

QVariantList DaysModel::pinsIn(double from, double to, double width, double size) const {
    QList<int> order;
    for (int number = 0; number < pins(); ++number)
        if (view_->pins[number].at >= from && view_->pins[number].at <= to) order << number;
    if (order.isEmpty() || !(to > from) || width < size) return {};
    std::ranges::stable_sort(order, {}, [this](int number) { return view_->pins[number].at; });
    QList<double> places;
    for (const int number : std::as_const(order))
        places << (view_->pins[number].at - from) / (to - from) * width;
    const auto groups = grouped(places, static_cast<int>(width / size));
    QList<double> wished;
    for (const QList<int>& group : groups)
        wished << (places[group.front()] + places[group.back()]) / 2.0;
    const QList<double> middles = spread(wished, width, size);
    QVariantList pins;
    for (qsizetype which = 0; which < groups.size(); ++which) {
        QList<int> members;
        QList<double> theirs;
        for (const int place : groups[which]) {
            members << order[place];
            theirs << places[place];
        }
        pins << pin_group(members, theirs, middles[which]);
    }
    return pins;
}

QVariantMap DaysModel::pin_group(const QList<int>& group, const QList<double>& places,
                                 double middle) const {
    QVariantList of;
    QVariantList hours;
    QStringList texts;
    QString mark = view_->pins[group.front()].mark;
    for (qsizetype number = 0; number < group.size(); ++number) {
        const Pin& pin = view_->pins[group[number]];
        of << group[number];
        hours << places[number];
        texts << pin.text;
        if (weight_of(pin.mark) > weight_of(mark)) mark = pin.mark;
    }
    const int number = view_->pins[group.front()].number;
    const QString one = number > 0 ? QString::number(number) : QString();
    return {{"x", middle},
            {"places", hours},
            {"mark", mark},
            {"number", group.size() == 1 ? one : QStringLiteral("×%1").arg(group.size())},
            {"text", texts.join(QLatin1Char('\n'))},
            {"of", of}};
}

QVariantList DaysModel::findingsOf(const QVariantList& pins) const {
    QVariantList rows;
    for (const QVariant& number : pins)
        if (number.toInt() >= 0 && number.toInt() < view_->pins.size())
            rows << row_of(view_->pins[number.toInt()].finding);
    return rows;
}

int DaysModel::row_at(double share) const {
    const auto& moments = view_->moments;
    if (moments.isEmpty()) return 0;
    const auto nearest = std::ranges::min_element(
        moments, {}, [share](const Moment& moment) { return std::abs(moment.at - share); });
    return static_cast<int>(nearest - moments.begin());
}

void DaysModel::lookAt(double share) {
    set_row(row_at(share));
}

void DaysModel::earlier() {
    set_row(row_ - 1);
}

void DaysModel::later() {
    set_row(row_ + 1);
}

void DaysModel::toStart() {
    set_row(0);
}

void DaysModel::toEnd() {
    set_row(count() - 1);
}

int DaysModel::count() const {
    return static_cast<int>(view_->moments.size());
}

QVariantList DaysModel::nights() const {
    QVariantList list;
    for (const Span& night : view_->nights) {
        list << QVariantMap{{"from", night.from}, {"to", night.to}};
    }
    return list;
}

QList<int> DaysModel::stacks() const {
    QList<int> priorities;
    for (const Stack& stack : view_->stacks)
        priorities << stack.priority;
    return priorities;
}

QVariantList DaysModel::told() const {
    QVariantList figures;
    for (const AnswerFigure& figure : view_->told)
        figures << QVariantMap{
            {"label", figure.label}, {"value", figure.value}, {"detail", figure.detail}};
    return figures;
}

QVariantList DaysModel::energy_ticks() const {
    return ticks_of(view_->energy_ticks);
}

QVariantList DaysModel::power_ticks() const {
    return ticks_of(view_->power_ticks);
}

void DaysModel::set_row(int row) {
    if (row < 0 || row >= count() || row == row_) return;
    row_ = row;
    emit rowChanged();
}

const Moment& DaysModel::moment() const {
    static const Moment none;
    return view_->moments.isEmpty() ? none : view_->moments[row_];
}

QString DaysModel::spoken_row(const Moment& row) const {
    return listed({row.time, row.stored, row.range, row.loads, row.sun, row.sky});
}

QStringList DaysModel::moment_lines() const {
    const Moment& now = moment();
    QStringList lines{now.stored, now.range, now.loads, listed({now.sun, now.sky})};
    lines.removeAll(QString());
    return lines;
}

QString DaysModel::moment_text() const {
    const Moment& now = moment();
    return listed({now.stored, now.loads, now.sun, now.sky});
}

int DaysModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant DaysModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Moment& row = view_->moments[index.row()];
    switch (role) {
        case Qt::DisplayRole:
        case TimeRole:
            return row.time;
        case StoredRole:
            return row.stored;
        case DetailRole:
            return listed({row.range, row.loads, row.sun, row.sky});
        case SpokenRole:
            return spoken_row(row);
        case LeftRole:
            return row.left;
        default:
            return {};
    }
}

QHash<int, QByteArray> DaysModel::roleNames() const {
    return {{TimeRole, "time"},
            {StoredRole, "stored"},
            {DetailRole, "detail"},
            {SpokenRole, "spoken"},
            {LeftRole, "left"}};
}

}  // namespace touch
