// How sure a build is against what it weighs or costs: the builds that no other beats, as points to
// touch, at places that are shares of the plot.
#pragma once

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/answer_runner.hpp"

namespace touch {

class BuildsPlot : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::AnswerRunner* runner READ runner WRITE set_runner NOTIFY askedChanged)
    // "weight" or "price"; the first that is known where the wished one is not.
    Q_PROPERTY(QString measure READ measure WRITE set_measure NOTIFY read)
    // {key, name} of each that is known.
    Q_PROPERTY(QVariantList measures READ measures NOTIFY read)
    Q_PROPERTY(bool present READ present NOTIFY read)
    Q_PROPERTY(QString heading READ heading NOTIFY read)
    Q_PROPERTY(QString spoken READ spoken NOTIFY read)
    // {packs, panels, across, up, low, high, label, words, unbeaten, answers, ofFile} each, from
    // the left; across, up, low and high are shares of the plot from the left or from the bottom.
    Q_PROPERTY(QVariantList points READ points NOTIFY read)
    Q_PROPERTY(double goalAt READ goal_at NOTIFY read)
    Q_PROPERTY(QString goal READ goal NOTIFY read)
    // {at, text}
    Q_PROPERTY(QVariantList ticksAcross READ ticks_across NOTIFY read)
    Q_PROPERTY(QVariantList ticksUp READ ticks_up NOTIFY read)
    // Where the build of the answer stands among the points, or the first that meets the goal.
    Q_PROPERTY(int landing READ landing NOTIFY read)
    // Whether the build of the answer, and one of the file beside it, are among the points.
    Q_PROPERTY(bool answerShown READ answer_shown NOTIFY read)
    Q_PROPERTY(bool fileShown READ file_shown NOTIFY read)
    // What is missing for a plot by weight or price; empty where nothing is.
    Q_PROPERTY(QString missing READ missing NOTIFY read)

  public:
    using QObject::QObject;

    // The point that stands for that build, or below 0.
    Q_INVOKABLE int pointOf(int packs, int panels) const;
    // The point nearest to a place in pixels of a plot of that size, within `reach` of it; below 0
    // where none is.
    Q_INVOKABLE int nearest(double x, double y, double width, double height, double reach) const;

    // The middle of a button for each point: of all places at least so far apart those that lie
    // nearest to the points, in pixels of a row of that width; the plot begins and ends `edge` from
    // its ends.
    Q_INVOKABLE QVariantList middles(double width, double edge, double apart) const;

    [[nodiscard]] AnswerRunner* runner() const { return runner_; }
    void set_runner(AnswerRunner* runner);
    [[nodiscard]] QString measure() const { return measure_; }
    void set_measure(const QString& measure);
    [[nodiscard]] QVariantList measures() const { return measures_; }
    [[nodiscard]] bool present() const { return !points_.isEmpty(); }
    [[nodiscard]] QString heading() const { return heading_; }
    [[nodiscard]] QString spoken() const { return spoken_; }
    [[nodiscard]] QVariantList points() const { return points_; }
    [[nodiscard]] double goal_at() const { return goal_at_; }
    [[nodiscard]] QString goal() const { return goal_; }
    [[nodiscard]] QVariantList ticks_across() const { return ticks_across_; }
    [[nodiscard]] QVariantList ticks_up() const { return ticks_up_; }
    [[nodiscard]] int landing() const { return landing_; }
    [[nodiscard]] QString missing() const { return missing_; }
    [[nodiscard]] bool answer_shown() const { return answer_shown_; }
    [[nodiscard]] bool file_shown() const { return file_shown_; }

  signals:
    void askedChanged();
    void read();

  private:
    void read_answer();
    void read_view(const answers::BuildsChart& chart, const answers::BuildsView& view);
    void read_points(const answers::BuildsChart& chart, const answers::BuildsView& view);
    void read_scales(const answers::BuildsView& view);

    AnswerRunner* runner_ = nullptr;
    QString wished_ = QStringLiteral("weight");
    QString measure_;
    QString heading_;
    QString spoken_;
    QString goal_;
    QString missing_;
    double goal_at_ = 0.0;
    int landing_ = -1;
    bool answer_shown_ = false;
    bool file_shown_ = false;
    QVariantList measures_;
    QVariantList points_;
    QVariantList ticks_across_;
    QVariantList ticks_up_;
};

}  // namespace touch
