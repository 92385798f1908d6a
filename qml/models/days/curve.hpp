// One column of a table of an answer drawn against another: its points, its ticks, its words.
#pragma once

#include <QList>
#include <QObject>
#include <QPointF>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/answer_runner.hpp"

namespace touch {

class Curve : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::AnswerRunner* runner READ runner WRITE set_runner NOTIFY changed)
    Q_PROPERTY(QString series READ series WRITE set_series NOTIFY changed)
    Q_PROPERTY(QString across READ across WRITE set_across NOTIFY changed)  // column
    Q_PROPERTY(QString up READ up WRITE set_up NOTIFY changed)              // column
    Q_PROPERTY(bool present READ present NOTIFY drawn)
    Q_PROPERTY(QString heading READ heading NOTIFY drawn)
    Q_PROPERTY(double width READ width NOTIFY drawn)
    Q_PROPERTY(double top READ top NOTIFY drawn)
    // {at, text}; at is a share of the frame from the left or from the bottom.
    Q_PROPERTY(QVariantList ticksAcross READ ticks_across NOTIFY drawn)
    Q_PROPERTY(QVariantList ticksUp READ ticks_up NOTIFY drawn)
    Q_PROPERTY(QString spoken READ spoken NOTIFY drawn)

  public:
    using QObject::QObject;

    // Hands the points to a series of a chart in one go.
    Q_INVOKABLE void fill(QObject* line) const;

    [[nodiscard]] AnswerRunner* runner() const { return runner_; }
    void set_runner(AnswerRunner* runner);
    [[nodiscard]] QString series() const { return series_; }
    void set_series(const QString& name) { set(series_, name); }
    [[nodiscard]] QString across() const { return across_; }
    void set_across(const QString& name) { set(across_, name); }
    [[nodiscard]] QString up() const { return up_; }
    void set_up(const QString& name) { set(up_, name); }

    [[nodiscard]] bool present() const { return points_.size() > 1; }
    [[nodiscard]] QString heading() const { return heading_; }
    [[nodiscard]] double width() const { return width_; }
    [[nodiscard]] double top() const { return top_; }
    [[nodiscard]] QVariantList ticks_across() const { return ticks_across_; }
    [[nodiscard]] QVariantList ticks_up() const { return ticks_up_; }
    [[nodiscard]] QString spoken() const { return spoken_; }
    [[nodiscard]] const QList<QPointF>& points() const { return points_; }

  signals:
    void changed();
    void drawn();

  private:
    void set(QString& member, const QString& name);
    void read();

    AnswerRunner* runner_ = nullptr;
    QString series_;
    QString across_;
    QString up_;
    QString heading_;
    QString spoken_;
    double width_ = 1.0;
    double top_ = 1.0;
    QVariantList ticks_across_;
    QVariantList ticks_up_;
    QList<QPointF> points_;
};

}  // namespace touch
