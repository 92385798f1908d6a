#include "models/answer_runner.hpp"

#include <utility>

#include "models/ask_question.hpp"
#include <QVariantMap>

namespace touch {

namespace {

AnswerRunner::Asker& common_asker() {
    static AnswerRunner::Asker asker = ask_question;
    return asker;
}

}  // namespace

AnswerRunner::AnswerRunner(QObject* parent)
    : QObject(parent),
      asker_(common_asker()),
      view_(std::make_shared<const AnswerView>()),
      run_([this](std::shared_ptr<const AnswerView> view) { show(std::move(view)); },
           [this] { emit runningChanged(); }) {}

void AnswerRunner::set_asker(Asker asker) {
    common_asker() = asker ? std::move(asker) : Asker(ask_question);
}

bool AnswerRunner::knows(const QString& question) {
    return is_question(question);
}

void AnswerRunner::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &AnswerRunner::ask);
    emit askedChanged();
    ask();
}

void AnswerRunner::set_question(const QString& question) {
    if (question_ == question) return;
    question_ = question;
    emit askedChanged();
    ask();
}

void AnswerRunner::set_options(const QStringList& options) {
    if (options_ == options) return;
    options_ = options;
    emit askedChanged();
    ask();
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
    if (!document_ || document_->text().isEmpty() || question_.isEmpty()) return;
    run_.request([asker = asker_, question = question_, text = document_->text(),
                  options = options_,
                  file = document_->path()] { return asker(question, text, options, file); });
}

void AnswerRunner::show(std::shared_ptr<const AnswerView> view) {
    view_ = std::move(view);
    findings_.show(view_->findings);
    cautions_.show(view_->cautions);
    assumptions_.show(view_->assumptions);
    figures_.show(view_->figures);
    working_.show(view_->working);
    emit shown();
}

}  // namespace touch
