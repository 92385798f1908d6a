// Plans off the screen's thread. A run that has begun is let finish; of the requests that come
// meanwhile only the newest is kept, so the screen is fed while a finger keeps tapping.
#pragma once

#include <functional>
#include <memory>
#include <optional>

#include "models/days_model.hpp"
#include "models/days_view.hpp"
#include "models/findings_model.hpp"
#include "models/scenario_document.hpp"
#include <QFutureWatcher>
#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace touch {

class PlanRunner : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY documentChanged)
    Q_PROPERTY(touch::DaysModel* days READ days CONSTANT)
    Q_PROPERTY(touch::FindingsModel* findings READ findings CONSTANT)
    Q_PROPERTY(touch::FindingsModel* cautions READ cautions CONSTANT)
    Q_PROPERTY(touch::FindingsModel* assumptions READ assumptions CONSTANT)
    Q_PROPERTY(QString closing READ closing NOTIFY planned)
    Q_PROPERTY(bool answered READ answered NOTIFY planned)
    Q_PROPERTY(bool running READ running NOTIFY runningChanged)
    Q_PROPERTY(QString sentence READ sentence NOTIFY planned)
    Q_PROPERTY(QString range READ range NOTIFY planned)
    Q_PROPERTY(touch::Candle candle READ candle NOTIFY planned)

  public:
    // Text of a scenario file to what is shown of it. Called off the screen's thread.
    using Planner = std::function<DaysView(const QString& text)>;

    explicit PlanRunner(QObject* parent = nullptr);
    ~PlanRunner() override;

    // The planner of runners made from now on: a test's own, or the engine's again when empty.
    static void set_planner(Planner planner);

    void request(const QString& text);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] DaysModel* days() { return &days_; }
    [[nodiscard]] FindingsModel* findings() { return &findings_; }
    [[nodiscard]] FindingsModel* cautions() { return &cautions_; }
    [[nodiscard]] FindingsModel* assumptions() { return &assumptions_; }
    [[nodiscard]] QString closing() const { return view_->closing; }
    [[nodiscard]] bool answered() const { return view_->answered; }
    [[nodiscard]] bool running() const { return running_; }
    [[nodiscard]] QString sentence() const { return view_->sentence; }
    [[nodiscard]] QString range() const { return view_->range; }
    [[nodiscard]] Candle candle() const { return view_->candle; }

  signals:
    void documentChanged();
    void planned();
    void runningChanged();

  private:
    using Answer = std::shared_ptr<const DaysView>;

    void start(const QString& text);
    void finished();

    Planner planner_;
    ScenarioDocument* document_ = nullptr;
    DaysModel days_;
    FindingsModel findings_;
    FindingsModel cautions_;
    FindingsModel assumptions_;
    Answer view_;
    QFutureWatcher<Answer> watcher_;
    std::optional<QString> pending_;
    bool running_ = false;
};

}  // namespace touch
