// A question of the scenario on the screen, asked off the screen's thread again after every
// change; the newest wins. The same questions as on the command line.
#pragma once

#include <functional>
#include <memory>

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "models/answer_view.hpp"
#include "models/findings_model.hpp"
#include "models/latest_run.hpp"
#include "models/rows_model.hpp"
#include "models/scenario_document.hpp"
#include "models/watch.hpp"

namespace touch {

class AnswerRunner : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY askedChanged)
    Q_PROPERTY(QString question READ question WRITE set_question NOTIFY askedChanged)
    // What the question leaves open, by name (asked_of), such as {pack: "spare"}.
    Q_PROPERTY(QVariantMap asks READ asks WRITE set_asks NOTIFY askedChanged)
    // Asked first, for a picture at once, where it is not empty: the same question with what makes
    // it short.
    Q_PROPERTY(QVariantMap firstAsks READ first_asks WRITE set_first_asks NOTIFY askedChanged)
    Q_PROPERTY(bool coarse READ coarse NOTIFY shown)
    // Share of the work that is done, 0 to 1, where the question tells it.
    Q_PROPERTY(double progress READ progress NOTIFY progressed)
    Q_PROPERTY(bool running READ running NOTIFY runningChanged)
    Q_PROPERTY(bool answered READ answered NOTIFY shown)
    Q_PROPERTY(QString sentence READ sentence NOTIFY shown)
    Q_PROPERTY(QString rest READ rest NOTIFY shown)
    Q_PROPERTY(QString closing READ closing NOTIFY shown)
    Q_PROPERTY(touch::FindingsModel* findings READ findings CONSTANT)
    Q_PROPERTY(touch::FindingsModel* cautions READ cautions CONSTANT)
    Q_PROPERTY(touch::FindingsModel* assumptions READ assumptions CONSTANT)
    Q_PROPERTY(touch::RowsModel* figures READ figures CONSTANT)
    Q_PROPERTY(touch::RowsModel* working READ working CONSTANT)
    // List of {name, title, headings, rows}; each row {cells, spoken}.
    Q_PROPERTY(QVariantList tables READ tables NOTIFY shown)

  public:
    // Called off the screen's thread. Files that the scenario names lie beside `file`.
    using Asker = std::function<AnswerView(const QString& question, const QString& text,
                                           const QVariantMap& asks, const QString& file)>;

    explicit AnswerRunner(QObject* parent = nullptr);

    // That of runners made from now on: a test's own, or the engine's again when empty.
    static void set_asker(Asker asker);

    // Whether there is such a question.
    Q_INVOKABLE static bool knows(const QString& question);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString question() const { return question_; }
    void set_question(const QString& question);
    [[nodiscard]] QVariantMap asks() const { return asks_; }
    void set_asks(const QVariantMap& asks);

    [[nodiscard]] QVariantMap first_asks() const { return first_asks_; }
    void set_first_asks(const QVariantMap& asks);

    // What is running is not wanted; what is shown stays.
    Q_INVOKABLE void stop();

    [[nodiscard]] bool coarse() const { return view_->coarse; }
    [[nodiscard]] double progress() const { return progress_; }
    [[nodiscard]] bool running() const { return run_.running(); }
    [[nodiscard]] bool answered() const { return view_->answered; }
    [[nodiscard]] QString sentence() const { return view_->sentence; }
    [[nodiscard]] QString rest() const { return view_->rest; }
    [[nodiscard]] QString closing() const { return view_->closing; }
    [[nodiscard]] FindingsModel* findings() { return &findings_; }
    [[nodiscard]] FindingsModel* cautions() { return &cautions_; }
    [[nodiscard]] FindingsModel* assumptions() { return &assumptions_; }
    [[nodiscard]] RowsModel* figures() { return &figures_; }
    [[nodiscard]] RowsModel* working() { return &working_; }
    [[nodiscard]] QVariantList tables() const;
    // Never null.
    [[nodiscard]] const std::shared_ptr<const AnswerView>& view() const { return view_; }

  signals:
    void askedChanged();
    void runningChanged();
    void shown();
    void progressed();

  private:
    using Asking =
        std::function<AnswerView(const QString& question, const QString& text,
                                 const QVariantMap& asks, const QString& file, Watch* watch)>;
    static Asking& common_asking();
    void ask();
    void request(bool coarse);
    void look_at_progress();
    void show(std::shared_ptr<const AnswerView> view);

    Asking asking_;
    ScenarioDocument* document_ = nullptr;
    QString question_;
    QVariantMap asks_;
    QVariantMap first_asks_;
    std::shared_ptr<Watch> watch_;
    QTimer looks_;
    double progress_ = 0.0;
    FindingsModel findings_;
    FindingsModel cautions_;
    FindingsModel assumptions_;
    RowsModel figures_;
    RowsModel working_;
    std::shared_ptr<const AnswerView> view_;
    LatestRun<AnswerView> run_;
};

}  // namespace touch
