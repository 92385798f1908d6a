// The outage from now on, worked out off the screen's thread again after every entry and every few
// minutes; the newest wins.
#pragma once

#include <functional>
#include <memory>

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/days/days_model.hpp"
#include "models/file/scenario_document.hpp"
#include "models/findings_model.hpp"
#include "models/latest_run.hpp"
#include "models/now/now_view.hpp"
#include "models/rows_model.hpp"

namespace touch {

class NowRunner : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY askedChanged)
    // The moment that is asked about, "2026-01-15T21:30:00"; nothing is asked while it is empty.
    Q_PROPERTY(QString at READ at WRITE set_at NOTIFY askedChanged)
    Q_PROPERTY(bool running READ running NOTIFY runningChanged)
    Q_PROPERTY(bool answered READ answered NOTIFY shown)
    Q_PROPERTY(bool actFirst READ act_first NOTIFY shown)
    Q_PROPERTY(QStringList leading READ leading NOTIFY shown)
    Q_PROPERTY(QStringList further READ further NOTIFY shown)
    Q_PROPERTY(QVariantList odd READ odd NOTIFY shown)
    Q_PROPERTY(touch::DaysModel* days READ days CONSTANT)
    Q_PROPERTY(touch::FindingsModel* findings READ findings CONSTANT)
    Q_PROPERTY(touch::FindingsModel* cautions READ cautions CONSTANT)
    Q_PROPERTY(touch::FindingsModel* assumptions READ assumptions CONSTANT)
    Q_PROPERTY(touch::RowsModel* figures READ figures CONSTANT)
    Q_PROPERTY(touch::RowsModel* working READ working CONSTANT)
    Q_PROPERTY(QString closing READ closing NOTIFY shown)

  public:
    // Called off the screen's thread.
    using Asker =
        std::function<NowView(const QString& text, const QString& file, const QString& at)>;

    explicit NowRunner(QObject* parent = nullptr);

    // That of runners made from now on: a test's own, or the engine's again when empty.
    static void set_asker(Asker asker);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString at() const { return at_; }
    void set_at(const QString& at);

    [[nodiscard]] bool running() const { return run_.running(); }
    [[nodiscard]] bool answered() const { return view_->answer.answered; }
    [[nodiscard]] bool act_first() const { return view_->act_first; }
    [[nodiscard]] QStringList leading() const { return view_->leading; }
    [[nodiscard]] QStringList further() const { return view_->further; }
    [[nodiscard]] QVariantList odd() const;
    [[nodiscard]] DaysModel* days() { return &days_; }
    [[nodiscard]] FindingsModel* findings() { return &findings_; }
    [[nodiscard]] FindingsModel* cautions() { return &cautions_; }
    [[nodiscard]] FindingsModel* assumptions() { return &assumptions_; }
    [[nodiscard]] RowsModel* figures() { return &figures_; }
    [[nodiscard]] RowsModel* working() { return &working_; }
    [[nodiscard]] QString closing() const { return view_->answer.closing; }

  signals:
    void askedChanged();
    void runningChanged();
    void shown();

  private:
    void ask();
    void show(std::shared_ptr<const NowView> view);

    Asker asker_;
    ScenarioDocument* document_ = nullptr;
    QString at_;
    DaysModel days_;
    FindingsModel findings_;
    FindingsModel cautions_;
    FindingsModel assumptions_;
    RowsModel figures_;
    RowsModel working_;
    int row_of_now_ = 0;  // of the days; who has not left it stays with now as time goes by
    std::shared_ptr<const NowView> view_;
    LatestRun<NowView> run_;
};

}  // namespace touch
