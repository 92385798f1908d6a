// A number of the scenario that goes up and down by one: packs, panels, outage days.
#pragma once

#include <functional>

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace touch {

class CountStep : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with a document")
    Q_PROPERTY(QString label READ label NOTIFY changed)
    Q_PROPERTY(QString shown READ shown NOTIFY changed)
    Q_PROPERTY(QString detail READ detail NOTIFY changed)
    Q_PROPERTY(bool present READ present NOTIFY changed)
    Q_PROPERTY(double value READ value NOTIFY changed)  // what is shown, as a number
    Q_PROPERTY(int least READ least NOTIFY changed)
    Q_PROPERTY(int most READ most NOTIFY changed)
    Q_PROPERTY(bool canLess READ can_less NOTIFY changed)
    Q_PROPERTY(bool canMore READ can_more NOTIFY changed)

  public:
    struct State {
        QString label;
        QString detail;
        bool present = false;  // the file has such a number
        QString shown;
        double value = 0.0;
        int below = 0;  // what less() puts
        int above = 0;  // what more() puts
        int least = 0;
        int most = 0;
    };
    // Puts a new count into the text.
    using Put = std::function<void(int)>;

    explicit CountStep(Put put, QObject* parent = nullptr);

    void set_state(State state);

    Q_INVOKABLE void less();
    Q_INVOKABLE void more();

    [[nodiscard]] QString label() const { return state_.label; }
    [[nodiscard]] QString shown() const { return state_.shown; }
    [[nodiscard]] QString detail() const { return state_.detail; }
    [[nodiscard]] bool present() const { return state_.present; }
    [[nodiscard]] double value() const { return state_.value; }
    [[nodiscard]] int least() const { return state_.least; }
    [[nodiscard]] int most() const { return state_.most; }
    [[nodiscard]] bool can_less() const { return state_.present && state_.below >= state_.least; }
    [[nodiscard]] bool can_more() const { return state_.present && state_.above <= state_.most; }

  signals:
    void changed();

  private:
    Put put_;
    State state_;
};

}  // namespace touch
