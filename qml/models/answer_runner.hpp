// A question of the scenario on the screen, asked off the screen's thread again after every
// change; the newest wins. The same questions as on the command line.
#pragma once

#include <functional>
#include <memory>

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/answer_view.hpp"
#include "models/ask_question.hpp"
#include "models/file/scenario_document.hpp"
#include "models/file/watch.hpp"
#include "models/findings_model.hpp"
#include "models/latest_run.hpp"
#include "models/rows_model.hpp"

namespace touch {

class AnswerRunner : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        touch::ScenarioDocument* document READ document WRITE set_document NOTIFY askedChanged)
    Q_PROPERTY(QString question READ question WRITE set_question NOTIFY askedChanged)
    // Asked of this text instead of the document's while it is not empty: what a finger is about to
    // make of it. Once the document holds the very text that was asked, it is not asked again.
    Q_PROPERTY(QString trial READ trial WRITE set_trial NOTIFY askedChanged)
    // What the question leaves open, as in Asks.
    Q_PROPERTY(QString pack READ pack WRITE set_pack NOTIFY askedChanged)
    Q_PROPERTY(QString reads READ reads WRITE set_reads NOTIFY askedChanged)
    Q_PROPERTY(double restedHours READ rested_hours WRITE set_rested_hours NOTIFY askedChanged)
    Q_PROPERTY(QString otherFile READ other_file WRITE set_other_file NOTIFY askedChanged)
    Q_PROPERTY(int members READ members WRITE set_members NOTIFY askedChanged)
    // Of so many members it is asked first, for a picture at once; 0: at once of all.
    Q_PROPERTY(int firstMembers READ first_members WRITE set_first_members NOTIFY askedChanged)
    Q_PROPERTY(bool coarse READ coarse NOTIFY shown)
    // Share of the work that is done, 0 to 1, where the question tells it.
    Q_PROPERTY(double progress READ progress NOTIFY progressed)
    Q_PROPERTY(bool running READ running NOTIFY runningChanged)
    // It was stopped before its end, and nothing was asked since.
    Q_PROPERTY(bool stopped READ stopped NOTIFY runningChanged)
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
                                           const Asks& asks, const QString& file)>;

    explicit AnswerRunner(QObject* parent = nullptr);

    // That of runners made from now on: a test's own, or the engine's again when empty.
    static void set_asker(Asker asker);

    // Whether there is such a question.
    Q_INVOKABLE static bool knows(const QString& question);

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString question() const { return question_; }
    void set_question(const QString& question);
    [[nodiscard]] QString trial() const { return trial_; }
    void set_trial(const QString& text);
    [[nodiscard]] QString pack() const { return asks_.pack; }
    void set_pack(const QString& pack) { set(asks_.pack, pack); }
    [[nodiscard]] QString reads() const { return asks_.reads; }
    void set_reads(const QString& reads) { set(asks_.reads, reads); }
    [[nodiscard]] double rested_hours() const { return asks_.rested_hours; }
    void set_rested_hours(double hours) { set(asks_.rested_hours, hours); }
    [[nodiscard]] QString other_file() const { return asks_.other_file; }
    void set_other_file(const QString& file) { set(asks_.other_file, file); }
    [[nodiscard]] int members() const { return asks_.members; }
    void set_members(int members) { set(asks_.members, members); }
    [[nodiscard]] int first_members() const { return first_members_; }
    void set_first_members(int members) { set(first_members_, members); }

    // What is running is not wanted; what is shown stays.
    Q_INVOKABLE void stop();
    // The same question again, from its first answer on.
    Q_INVOKABLE void askAgain() { ask(); }

    [[nodiscard]] bool coarse() const { return view_->coarse; }
    [[nodiscard]] double progress() const { return progress_; }
    [[nodiscard]] bool running() const { return run_.running(); }
    [[nodiscard]] bool stopped() const { return watch_ && watch_->stop.load(); }
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
    using Asking = std::function<AnswerView(const QString& question, const QString& text,
                                            const Asks& asks, const QString& file, Watch* watch)>;
    static Asking& common_asking();
    template <class Value>
    void set(Value& member, const Value& value) {
        if (member == value) return;
        member = value;
        emit askedChanged();
        ask();
    }
    void ask();
    void follow();
    [[nodiscard]] QString text() const;
    void request(bool coarse);
    void look_at_progress();
    void show(std::shared_ptr<const AnswerView> view);

    Asking asking_;
    ScenarioDocument* document_ = nullptr;
    QString question_;
    QString trial_;
    QString asked_text_;
    Asks asks_;
    int first_members_ = 0;
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
