// What the Sun page turns: the place, the month, how the panels stand.
#pragma once

#include <QAbstractListModel>
#include <QList>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "solar/places/places.hpp"

namespace touch {

class SunControls : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::ScenarioDocument* document READ document WRITE set_document NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(bool ownPlace READ own_place NOTIFY changed)  // told in figures, not by a name
    Q_PROPERTY(int month READ month NOTIFY changed)  // 1 to 12; 0 while the file cannot be read
    Q_PROPERTY(QStringList months READ months NOTIFY changed)
    Q_PROPERTY(bool hasPanels READ has_panels NOTIFY changed)
    Q_PROPERTY(int tilt READ tilt NOTIFY changed)  // degrees from level; 0 when flat
    // While a finger turns the panels: the text as it would be, for answers that follow; else empty.
    Q_PROPERTY(QString trial READ trial NOTIFY trialChanged)
    Q_PROPERTY(QString tiltText READ tilt_text NOTIFY changed)
    Q_PROPERTY(bool canLess READ can_less NOTIFY changed)
    Q_PROPERTY(bool canMore READ can_more NOTIFY changed)
    // How high the sun stands at noon on the first day, degrees; below 0 when it does not rise, and
    // not a number where the place is unknown.
    Q_PROPERTY(double noon READ noon NOTIFY changed)
    Q_PROPERTY(QString noonText READ noon_text NOTIFY changed)

  public:
    static constexpr int step = 5;  // degrees

    using QObject::QObject;

    Q_INVOKABLE void setMonth(int month);
    // To the nearest step.
    Q_INVOKABLE void setTilt(double degrees);
    // As a finger turns: seen and tried, and not a change of the file until `settle`, which makes
    // one change of however many turns.
    Q_INVOKABLE void turn(double degrees);
    Q_INVOKABLE void settle();
    Q_INVOKABLE void less() { setTilt(tilt_ - step); }
    Q_INVOKABLE void more() { setTilt(tilt_ + step); }
    // A built-in place; what the file said of another place goes.
    Q_INVOKABLE void setPlace(const QString& name);

    // Tells the present place in figures, to be changed.
    Q_INVOKABLE void makePlaceOwn();

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString place() const { return place_; }
    [[nodiscard]] bool own_place() const { return own_place_; }
    [[nodiscard]] int month() const { return month_; }
    [[nodiscard]] QStringList months() const;
    [[nodiscard]] bool has_panels() const { return has_panels_; }
    [[nodiscard]] int tilt() const { return tilt_; }
    [[nodiscard]] QString trial() const { return trial_; }
    [[nodiscard]] QString tilt_text() const;
    [[nodiscard]] bool can_less() const { return tilt_ > 0; }
    [[nodiscard]] bool can_more() const { return tilt_ < 90; }
    [[nodiscard]] double noon() const { return noon_; }
    [[nodiscard]] QString noon_text() const;

  signals:
    void changed();
    void trialChanged();

  private:
    void read();
    void end_trial();
    [[nodiscard]] QString turned_to(int degrees) const;

    ScenarioDocument* document_ = nullptr;
    QString place_;
    bool own_place_ = false;
    bool has_panels_ = false;
    int month_ = 0;
    int tilt_ = 0;  // as it is shown
    QString trial_;
    QString tried_of_;  // the text that the trial began with
    int tried_from_ = 0;
    double noon_ = 0.0;
};

// The built-in places, narrowed by typing.
class PlacesModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString wanted READ wanted WRITE set_wanted NOTIFY wantedChanged)
    Q_PROPERTY(int count READ count NOTIFY wantedChanged)

  public:
    enum Role { NameRole = Qt::UserRole + 1, DetailRole, SpokenRole };

    explicit PlacesModel(QObject* parent = nullptr);

    [[nodiscard]] QString wanted() const { return wanted_; }
    void set_wanted(const QString& wanted);
    [[nodiscard]] int count() const { return static_cast<int>(shown_.size()); }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void wantedChanged();

  private:
    void pick();

    QString wanted_;
    QList<const solar::KnownPlace*> shown_;
};

}  // namespace touch
