#include "models/answer_runner.hpp"

#include <utility>

#include <QVariantMap>

#include "models/words/saved_words.hpp"

namespace touch {

namespace {

constexpr int between_looks = 100;  // ms

AnswerView by_name(const QString& question, const QString& text, const Asks& asks,
                   const QString& file, Watch* watch) {
    return ask_question(question, text, asks, file, watch);
}

}  // namespace

AnswerRunner::Asking& AnswerRunner::common_asking() {
    static Asking asking = by_name;
    return asking;
}

AnswerRunner::AnswerRunner(QObject* parent)
    : QObject(parent),
      asking_(common_asking()),
      view_(std::make_shared<const AnswerView>()),
      run_([this](std::shared_ptr<const AnswerView> view) { show(std::move(view)); },
           [this] {
               if (run_.running())
                   looks_.start(between_looks);
               else
                   looks_.stop();
               emit runningChanged();
           },
           [this](const QString& what) {
               AnswerView view = no_answer(
                   {{.where = "", .found = fault_in_words(what).toStdString(), .remedy = ""}});
               view.sentence = fault_in_words({});
               show(std::make_shared<const AnswerView>(std::move(view)));
               if (document_) document_->tell_fault(what, false);
           }) {
    connect(&looks_, &QTimer::timeout, this, &AnswerRunner::look_at_progress);
}

void AnswerRunner::set_asker(Asker asker) {
    if (!asker) {
        common_asking() = by_name;
        return;
    }
    common_asking() = [asker = std::move(asker)](const QString& question, const QString& text,
                                                 const Asks& asks, const QString& file, Watch*) {
        return asker(question, text, asks, file);
    };
}

bool AnswerRunner::knows(const QString& question) {
    return is_question(question);
}

void AnswerRunner::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &AnswerRunner::follow);
    emit askedChanged();
    ask();
}

void AnswerRunner::set_question(const QString& question) {
    set(question_, question);
}

void AnswerRunner::set_trial(const QString& text) {
    if (trial_ == text) return;
    trial_ = text;
    emit askedChanged();
    if (!document_ || this->text() == asked_text_) return;
    ask();
}

// The document has another text, or says its own again.
void AnswerRunner::follow() {
    const bool was_tried = !trial_.isEmpty() && document_->text() == asked_text_;
    if (!was_tried) ask();
}

QString AnswerRunner::text() const {
    return trial_.isEmpty() ? document_->text() : trial_;
}

void AnswerRunner::stop() {
    run_.forget();
    if (watch_) watch_->stop = true;
}

QVariantList AnswerRunner::tables() const {
    QVariantList tables;
    for (const TableText& table : view_->tables) {
        QVariantList rows;
        for (const QStringList& cells : table.rows) {
            QStringList spoken;
            for (qsizetype cell = 0; cell < cells.size(); ++cell)
                spoken << QStringLiteral("%1 %2").arg(table.headings[cell], cells[cell]);
            rows << QVariantMap{{"cells", cells}, {"spoken", spoken.join(QStringLiteral(", "))}};
        }
        tables << QVariantMap{{"name", table.name},
                              {"title", table.title},
                              {"headings", table.headings},
                              {"rows", rows}};
    }
    return tables;
}

void AnswerRunner::ask() {
    if (!document_ || document_->text().isEmpty()) return;
    if (question_.isEmpty()) {
        stop();
        return;
    }
    request(first_members_ > 0);
}

// A newer question ends an older one where that looks up from its work.
void AnswerRunner::request(bool coarse) {
    if (watch_ && run_.running()) watch_->stop = true;
    watch_ = std::make_shared<Watch>();
    Asks asks = asks_;
    if (coarse) asks.members = first_members_;
    asked_text_ = text();
    run_.request([asking = asking_, question = question_, text = asked_text_, asks,
                  file = document_->path(), watch = watch_, coarse] {
        auto view = asking(question, text, asks, file, watch.get());
        view.coarse = coarse;
        return view;
    });
}

void AnswerRunner::look_at_progress() {
    const double done = watch_ ? watch_->done.load() : 0.0;
    if (done == progress_) return;
    progress_ = done;
    emit progressed();
}

void AnswerRunner::show(std::shared_ptr<const AnswerView> view) {
    if (view->stopped) return;
    const bool better_follows = view->coarse && !run_.has_newer() && !watch_->stop;
    view_ = std::move(view);
    findings_.show(view_->findings);
    cautions_.show(view_->cautions);
    assumptions_.show(view_->assumptions);
    figures_.show(view_->figures);
    working_.show(view_->working);
    if (better_follows) request(false);
    emit shown();
}

}  // namespace touch
