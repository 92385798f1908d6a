#include "models/now/now_runner.hpp"

#include <utility>

#include "models/words/saved_words.hpp"

namespace touch {

namespace {

NowRunner::Asker& common_asker() {
    static NowRunner::Asker asker = now_view;
    return asker;
}

NowView fault_view(const QString& what) {
    NowView view{.answer = no_answer(
                     {{.where = "", .found = fault_in_words(what).toStdString(), .remedy = ""}}),
                 .days = std::make_shared<const DaysView>()};
    view.leading << fault_in_words({});
    return view;
}

}  // namespace

NowRunner::NowRunner(QObject* parent)
    : QObject(parent),
      asker_(common_asker()),
      view_(std::make_shared<const NowView>()),
      run_([this](std::shared_ptr<const NowView> view) { show(std::move(view)); },
           [this] { emit runningChanged(); },
           [this](const QString& what) {
               show(std::make_shared<const NowView>(fault_view(what)));
               if (document_) document_->tell_fault(what, false);
           }) {}

void NowRunner::set_asker(Asker asker) {
    common_asker() = asker ? std::move(asker) : Asker(now_view);
}

void NowRunner::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) connect(document_, &ScenarioDocument::textChanged, this, &NowRunner::ask);
    emit askedChanged();
    ask();
}

void NowRunner::set_at(const QString& at) {
    if (at_ == at) return;
    at_ = at;
    emit askedChanged();
    ask();
}

QVariantList NowRunner::odd() const {
    QVariantList places;
    for (const int place : view_->odd)
        places << place;
    return places;
}

void NowRunner::ask() {
    if (!document_ || document_->text().isEmpty() || at_.isEmpty()) return;
    run_.request([asker = asker_, text = document_->text(), file = document_->path(), at = at_] {
        return asker(text, file, at);
    });
}

void NowRunner::show(std::shared_ptr<const NowView> view) {
    const bool at_now = days_.row() == row_of_now_;
    view_ = std::move(view);
    findings_.show(view_->answer.findings);
    cautions_.show(view_->answer.cautions);
    assumptions_.show(view_->answer.assumptions);
    figures_.show(view_->answer.figures);
    working_.show(view_->answer.working);
    if (view_->days) days_.show(view_->days);
    if (at_now) {
        days_.lookAt(view_->now);
        row_of_now_ = days_.row();
    }
    emit shown();
}

}  // namespace touch
