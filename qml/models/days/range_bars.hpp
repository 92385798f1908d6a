// Bars with a range: low, likely and high of several things on one scale, from a table of an
// answer.
#pragma once

#include <string>

#include <QAbstractListModel>
#include <QList>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "models/answer_runner.hpp"

namespace touch {

struct RangeBar {
    QString label;
    QString text;  // "1.2 kWh (400 Wh to 2.1 kWh)"
    double low = 0.0;
    double likely = 0.0;
    double high = 0.0;
};

class RangeBars : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::AnswerRunner* runner READ runner WRITE set_runner NOTIFY askedChanged)
    Q_PROPERTY(QString series READ series WRITE set_series NOTIFY askedChanged)
    // Columns of that series.
    Q_PROPERTY(QString names READ names WRITE set_names NOTIFY askedChanged)
    Q_PROPERTY(QString low READ low WRITE set_low NOTIFY askedChanged)
    Q_PROPERTY(QString likely READ likely WRITE set_likely NOTIFY askedChanged)
    Q_PROPERTY(QString high READ high WRITE set_high NOTIFY askedChanged)
    // Only rows whose column `group` holds `only`; all rows while either is empty.
    Q_PROPERTY(QString group READ group WRITE set_group NOTIFY askedChanged)
    Q_PROPERTY(QString only READ only WRITE set_only NOTIFY askedChanged)
    // A value to hold the bars against, drawn within their length; below 0 none.
    Q_PROPERTY(double limit READ limit WRITE set_limit NOTIFY askedChanged)
    Q_PROPERTY(
        double limitAt READ limit_at NOTIFY barsChanged)  // share of the length; below 0 none
    Q_PROPERTY(QStringList groups READ groups NOTIFY groupsChanged)  // what `only` may be
    Q_PROPERTY(int count READ count NOTIFY barsChanged)
    Q_PROPERTY(QString top READ top NOTIFY barsChanged)        // what the whole length stands for
    Q_PROPERTY(QString spoken READ spoken NOTIFY barsChanged)  // all bars in words

  public:
    // Longer bars than for this many times the limit are cut off; their figures are not.
    static constexpr double most_limits = 2.5;

    // low, likely and high as shares 0 to 1 of the whole length.
    enum Role { LabelRole = Qt::UserRole + 1, TextRole, LowRole, LikelyRole, HighRole };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] AnswerRunner* runner() const { return runner_; }
    void set_runner(AnswerRunner* runner);
    [[nodiscard]] QString series() const { return series_; }
    void set_series(const QString& name) { set(series_, name); }
    [[nodiscard]] QString names() const { return names_; }
    void set_names(const QString& name) { set(names_, name); }
    [[nodiscard]] QString low() const { return low_; }
    void set_low(const QString& name) { set(low_, name); }
    [[nodiscard]] QString likely() const { return likely_; }
    void set_likely(const QString& name) { set(likely_, name); }
    [[nodiscard]] QString high() const { return high_; }
    void set_high(const QString& name) { set(high_, name); }

    [[nodiscard]] QString group() const { return group_; }
    void set_group(const QString& name) { set(group_, name); }
    [[nodiscard]] QString only() const { return only_; }
    void set_only(const QString& name) { set(only_, name); }
    [[nodiscard]] double limit() const { return limit_; }
    void set_limit(double limit);
    [[nodiscard]] double limit_at() const { return limit_at_; }
    [[nodiscard]] QStringList groups() const { return groups_; }

    [[nodiscard]] int count() const { return static_cast<int>(bars_.size()); }
    [[nodiscard]] QString top() const { return top_; }
    [[nodiscard]] QString spoken() const;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void askedChanged();
    void barsChanged();
    void groupsChanged();

  private:
    // Bars in the table's own unit.
    struct Drawn {
        QList<RangeBar> bars;
        QStringList groups;
        std::string unit;
    };

    void set(QString& member, const QString& name);
    void read();
    [[nodiscard]] Drawn drawn_from(const answers::Answer* answer) const;
    [[nodiscard]] static QString range_in_words(const RangeBar& bar, const std::string& unit);
    void to_shares(Drawn& drawn);
    void show(QList<RangeBar> bars);

    AnswerRunner* runner_ = nullptr;
    QString series_;
    QString names_;
    QString low_;
    QString likely_;
    QString high_;
    QString group_;
    QString only_;
    double limit_ = -1.0;
    double limit_at_ = -1.0;
    QStringList groups_;
    QString top_;
    QList<RangeBar> bars_;
};

}  // namespace touch
