// The outage plan of the scenario on the screen, made off the screen's thread; the newest wins.
// Once a plan of a few members of the chance stands, it is made again of all of them. What was
// planned before, and what the next touch is likely to ask for, is shown at once and then made
// again.
#pragma once

#include <functional>
#include <memory>

#include <QCache>
#include <QElapsedTimer>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "models/days/days_model.hpp"
#include "models/days/days_view.hpp"
#include "models/file/scenario_document.hpp"
#include "models/findings_model.hpp"
#include "models/latest_run.hpp"
#include "models/rows_model.hpp"

namespace touch {

class PlanRunner : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY documentChanged)
    // Planned instead of the document's text while it is not empty: what a finger is about to make
    // of it, of a few members alone.
    Q_PROPERTY(QString trial READ trial WRITE set_trial NOTIFY documentChanged)
    Q_PROPERTY(touch::DaysModel* days READ days CONSTANT)
    Q_PROPERTY(touch::FindingsModel* findings READ findings CONSTANT)
    Q_PROPERTY(touch::FindingsModel* cautions READ cautions CONSTANT)
    Q_PROPERTY(touch::FindingsModel* assumptions READ assumptions CONSTANT)
    Q_PROPERTY(touch::RowsModel* figures READ figures CONSTANT)
    Q_PROPERTY(touch::RowsModel* working READ working CONSTANT)
    Q_PROPERTY(QString closing READ closing NOTIFY planned)
    Q_PROPERTY(bool answered READ answered NOTIFY planned)
    Q_PROPERTY(bool running READ running NOTIFY runningChanged)
    // All the members are still being run.
    Q_PROPERTY(bool weighing READ weighing NOTIFY chancesChanged)
    Q_PROPERTY(QString sentence READ sentence NOTIFY planned)
    Q_PROPERTY(QString range READ range NOTIFY planned)
    Q_PROPERTY(touch::Candle candle READ candle NOTIFY planned)
    // How well the chance is known, in words; empty until all members were run.
    Q_PROPERTY(QString chances READ chances NOTIFY chancesChanged)

  public:
    // Text of a scenario file to what is shown of it. Called off the screen's thread. Files that
    // the scenario names lie beside `file`.
    using Planner = std::function<DaysView(const QString& text, const QString& file)>;
    // The same of every member, with DaysView::chances.
    using Weigher = std::function<DaysView(const QString& text, const QString& file)>;

    static constexpr int most_known = 16;       // plans that are kept
    static constexpr qint64 soon_enough = 300;  // ms of a plan, for others to be made ahead

    explicit PlanRunner(QObject* parent = nullptr);

    // Those of runners made from now on: a test's own, or the engine's again when empty.
    static void set_planner(Planner planner, Weigher weigher = {});

    void request(const QString& text, const QString& file = {});

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString trial() const { return trial_; }
    void set_trial(const QString& text);
    [[nodiscard]] DaysModel* days() { return &days_; }
    [[nodiscard]] FindingsModel* findings() { return &findings_; }
    [[nodiscard]] FindingsModel* cautions() { return &cautions_; }
    [[nodiscard]] FindingsModel* assumptions() { return &assumptions_; }
    [[nodiscard]] RowsModel* figures() { return &figures_; }
    [[nodiscard]] RowsModel* working() { return &working_; }
    [[nodiscard]] QString closing() const { return view_->closing; }
    [[nodiscard]] bool answered() const { return view_->answered; }
    [[nodiscard]] bool running() const { return plans_.running(); }
    [[nodiscard]] bool weighing() const { return weighed_.running(); }
    [[nodiscard]] QString sentence() const { return view_->sentence; }
    [[nodiscard]] QString range() const { return view_->range; }
    [[nodiscard]] Candle candle() const { return view_->candle; }
    // What the next touch may ask for is being planned.
    [[nodiscard]] bool looks_ahead() const { return next_.running() || !ahead_.isEmpty(); }
    [[nodiscard]] QString chances() const { return chances_text_; }
    [[nodiscard]] const QList<LoadUseText>& uses() const { return view_->uses; }

  signals:
    void documentChanged();
    void planned();
    void runningChanged();
    void chancesChanged();

  private:
    void show(std::shared_ptr<const DaysView> view);
    void put(std::shared_ptr<const DaysView> view);
    void show_nothing(const QString& fault);
    void tell_fault(const QString& what);
    void follow();
    void weigh();
    void note_good();
    void look_ahead();
    void plan_ahead();

    Planner planner_;
    Weigher weigher_;
    ScenarioDocument* document_ = nullptr;
    DaysModel days_;
    FindingsModel findings_;
    FindingsModel cautions_;
    FindingsModel assumptions_;
    RowsModel figures_;
    RowsModel working_;
    std::shared_ptr<const DaysView> view_;
    QString text_;  // the newest that was asked for
    QString file_;
    QString chances_text_;
    QString trial_;
    QCache<QString, std::shared_ptr<const DaysView>> known_;  // by text
    QStringList ahead_;      // texts that the next touch may ask for
    QString planned_ahead_;  // the one that is being planned
    QElapsedTimer since_;    // it was asked for
    qint64 first_took_ = 0;  // ms
    QString weighed_text_;   // the newest that was weighed
    LatestRun<DaysView> plans_;
    LatestRun<DaysView> weighed_;
    LatestRun<DaysView> next_;
};

}  // namespace touch
