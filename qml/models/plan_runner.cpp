#include "models/plan_runner.hpp"

#include <utility>

#include "models/days_view_of.hpp"
#include "models/plan_text.hpp"
#include "models/saved_words.hpp"

namespace touch {

namespace {

PlanRunner::Planner& common_planner() {
    static PlanRunner::Planner planner = plan_text;
    return planner;
}

PlanRunner::Weigher& common_weigher() {
    static PlanRunner::Weigher weigher = weighed_text;
    return weigher;
}

}  // namespace

PlanRunner::PlanRunner(QObject* parent)
    : QObject(parent),
      planner_(common_planner()),
      weigher_(common_weigher()),
      view_(std::make_shared<const DaysView>()),
      plans_([this](std::shared_ptr<const DaysView> view) { show(std::move(view)); },
             [this] { emit runningChanged(); },
             [this](const QString& what) {
                 show_nothing(what);
                 tell_fault(what);
             }),
      weighed_(
          [this](std::shared_ptr<const DaysView> view) {
              const bool of_this_text = !plans_.running() && !weighed_.has_newer();
              if (!of_this_text) return;
              chances_text_ = view->chances;
              put(std::move(view));
              if (document_ && view_->answered) document_->note_good(text_);
          },
          [this] { emit chancesChanged(); },
          [this](const QString& what) {
              chances_text_.clear();
              tell_fault(what);
          }) {}

void PlanRunner::tell_fault(const QString& what) {
    if (document_) document_->tell_fault(what, true);
}

// Rather than the figures of another text.
void PlanRunner::show_nothing(const QString& fault) {
    chances_text_.clear();
    emit chancesChanged();
    DaysView view =
        refusal({{.where = "", .found = fault_in_words(fault).toStdString(), .remedy = ""}});
    view.sentence = fault_in_words({});
    put(std::make_shared<const DaysView>(std::move(view)));
}

void PlanRunner::set_planner(Planner planner, Weigher weigher) {
    const bool own = static_cast<bool>(planner);
    common_weigher() = weigher ? std::move(weigher) : own ? Weigher() : Weigher(weighed_text);
    common_planner() = own ? std::move(planner) : Planner(plan_text);
}

void PlanRunner::request(const QString& text, const QString& file) {
    text_ = text;
    file_ = file;
    plans_.request([planner = planner_, text, file] { return planner(text, file); });
}

void PlanRunner::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) {
        connect(document_, &ScenarioDocument::textChanged, this,
                [this] { request(document_->text(), document_->path()); });
        if (!document_->text().isEmpty()) request(document_->text(), document_->path());
    }
    emit documentChanged();
}

void PlanRunner::show(std::shared_ptr<const DaysView> view) {
    put(std::move(view));
    if (plans_.has_newer()) return;
    if (!weigher_) {
        if (document_ && view_->answered) document_->note_good(text_);
        return;
    }
    weighed_.request(
        [weigher = weigher_, text = text_, file = file_] { return weigher(text, file); });
}

void PlanRunner::put(std::shared_ptr<const DaysView> view) {
    view_ = std::move(view);
    findings_.show(view_->findings);
    cautions_.show(view_->cautions);
    assumptions_.show(view_->assumptions);
    figures_.show(view_->figures);
    working_.show(view_->working);
    days_.show(view_);
    emit planned();
}

}  // namespace touch
