#include "models/days/builds_plot.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include <QVariantMap>

#include "models/days/spread.hpp"
#include "models/words/shown_amount.hpp"

namespace touch {

namespace {

using answers::BuildPoint;
using answers::BuildsChart;
using answers::BuildsView;

QString name_of(const BuildsView& view) {
    return view.name == "price" ? QObject::tr("Price") : QObject::tr("Weight");
}

constexpr int digits_of_figures = 4;

QString figure_of(const BuildsView& view, double figure) {
    return shown_amount(figure, view.unit, digits_of_figures);
}

QString chance_of(const BuildPoint& point) {
    const auto whole = [](double percent) { return QString::number(percent, 'f', 0); };
    return QObject::tr("%1 % (%2 to %3)")
        .arg(whole(std::floor(point.chance + 1e-9)), whole(std::floor(point.low + 1e-9)),
             whole(std::ceil(point.high - 1e-9)));
}

QString told_build(const BuildPoint& point) {
    QStringList words{QObject::tr("Packs: %1, panels: %2").arg(point.packs).arg(point.panels)};
    if (point.weight) words << shown_amount(*point.weight, "kg", digits_of_figures);
    if (point.price)
        words << QObject::tr("%1 in all")
                     .arg(told(
                         words::Amount{.dimension = words::Dimension::price, .si = *point.price}));
    words << QObject::tr("chance of lasting %1").arg(chance_of(point));
    QString said = words.join(QStringLiteral(", ")) + QLatin1Char('.');
    if (point.answers) said += QLatin1Char(' ') + QObject::tr("This is the build of the answer.");
    if (point.of_file) said += QLatin1Char(' ') + QObject::tr("This is what the file has.");
    return said;
}

// Builds of which the figure is not known.
qsizetype not_drawn(const BuildsChart& chart, const BuildsView& view) {
    return std::ranges::count_if(chart.points, [&](const BuildPoint& point) {
        return !(view.name == "price" ? point.price : point.weight).has_value();
    });
}

// Where a place of the scale stands between its ends.
double share(const BuildsView& view, double figure) {
    return (figure - view.from) / (view.to - view.from);
}

}  // namespace

void BuildsPlot::set_runner(AnswerRunner* runner) {
    if (runner_ == runner) return;
    if (runner_) runner_->disconnect(this);
    runner_ = runner;
    if (runner_) connect(runner_, &AnswerRunner::shown, this, &BuildsPlot::read_answer);
    emit askedChanged();
    read_answer();
}

void BuildsPlot::set_measure(const QString& measure) {
    if (wished_ == measure) return;
    wished_ = measure;
    read_answer();
}

int BuildsPlot::pointOf(int packs, int panels) const {
    for (qsizetype number = 0; number < points_.size(); ++number) {
        const QVariantMap point = points_[number].toMap();
        if (point[QStringLiteral("packs")].toInt() == packs &&
            point[QStringLiteral("panels")].toInt() == panels)
            return static_cast<int>(number);
    }
    return -1;
}

int BuildsPlot::nearest(double x, double y, double width, double height, double reach) const {
    int found = -1;
    double least = reach;
    for (qsizetype number = 0; number < points_.size(); ++number) {
        const QVariantMap point = points_[number].toMap();
        const double away = std::hypot(point[QStringLiteral("across")].toDouble() * width - x,
                                       (1.0 - point[QStringLiteral("up")].toDouble()) * height - y);
        if (away > least) continue;
        least = away;
        found = static_cast<int>(number);
    }
    return found;
}

QVariantList BuildsPlot::middles(double width, double edge, double apart) const {
    QList<double> wished;
    for (const QVariant& point : points_)
        wished << edge + point.toMap()[QStringLiteral("across")].toDouble() * (width - 2.0 * edge);
    QVariantList places;
    for (const double middle : spread(wished, width, apart))
        places << middle;
    return places;
}

void BuildsPlot::read_answer() {
    measures_.clear();
    points_.clear();
    ticks_across_.clear();
    ticks_up_.clear();
    measure_.clear();
    missing_.clear();
    landing_ = -1;
    answer_shown_ = false;
    file_shown_ = false;
    const answers::Answer* answer = runner_ ? runner_->view()->answer.get() : nullptr;
    if (answer && answer->builds) {
        const auto& views = answer->builds->views;
        const BuildsView* shown = nullptr;
        for (const BuildsView& view : views) {
            const QString key = QString::fromStdString(view.name);
            measures_ << QVariantMap{{"key", key}, {"name", name_of(view)}};
            if (!shown || key == wished_) shown = &view;
        }
        if (shown) read_view(*answer->builds, *shown);
        const auto undrawn = shown ? not_drawn(*answer->builds, *shown) : 0;
        if (undrawn > 0)
            missing_ = (shown->name == "price"
                            ? tr("Builds that are not drawn, since some price is not known: %1. "
                                 "Give every pack and panel a price.")
                            : tr("Builds that are not drawn, since some weight is not known: %1. "
                                 "Give every pack and panel a weight."))
                           .arg(undrawn);
        else if (views.size() < 2)
            missing_ = views.empty()
                           ? tr("Give every pack and panel a weight or a price, and the builds "
                                "that no other beats are drawn here.")
                       : views.front().name == "weight"
                           ? tr("Give every pack and panel a price to see them against it as well.")
                           : tr("Give every pack and panel a weight to see them against it as "
                                "well.");
    }
    emit read();
}

void BuildsPlot::read_view(const BuildsChart& chart, const BuildsView& view) {
    measure_ = QString::fromStdString(view.name);
    heading_ = view.name == "price" ? tr("Chance of lasting against what packs and panels cost")
                                    : tr("Chance of lasting against what packs and panels weigh");
    read_points(chart, view);
    read_scales(view);
    goal_at_ = chart.goal / 100.0;
    goal_ = tr("Goal %1 %").arg(QString::number(chart.goal, 'f', 0));
    spoken_ = tr("%1. %2; builds: %3, each a button below the plot.")
                  .arg(heading_, goal_)
                  .arg(points_.size());
}

// The one to begin with is the answer's, else the first that meets the goal.
void BuildsPlot::read_points(const BuildsChart& chart, const BuildsView& view) {
    int first_that_meets = -1;
    for (const auto& place : view.places) {
        const BuildPoint& point = chart.points[place.point];
        const int number = static_cast<int>(points_.size());
        if (point.answers) landing_ = number;
        answer_shown_ = answer_shown_ || point.answers;
        file_shown_ = file_shown_ || (point.of_file && !point.answers);
        if (first_that_meets < 0 && point.chance >= chart.goal) first_that_meets = number;
        points_ << QVariantMap{
            {"packs", point.packs},
            {"panels", point.panels},
            {"across", share(view, place.at)},
            {"up", point.chance / 100.0},
            {"low", point.low / 100.0},
            {"high", point.high / 100.0},
            {"label", QStringLiteral("%1×%2").arg(point.packs).arg(point.panels)},
            {"words", told_build(point)},
            {"unbeaten", place.unbeaten},
            {"answers", point.answers},
            {"ofFile", point.of_file}};
    }
    if (landing_ < 0) landing_ = first_that_meets;
}

void BuildsPlot::read_scales(const BuildsView& view) {
    const int steps = static_cast<int>(std::lround((view.to - view.from) / view.step));
    for (int step = 0; step <= steps; ++step) {
        const double figure = view.from + step * view.step;
        ticks_across_ << QVariantMap{{"at", share(view, figure)},
                                     {"text", figure_of(view, figure)}};
    }
    for (int percent = 0; percent <= 100; percent += 25)
        ticks_up_ << QVariantMap{{"at", percent / 100.0},
                                 {"text", QStringLiteral("%1 %").arg(percent)}};
}

}  // namespace touch
