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

PlanRunner::Weatherer& common_weatherer() {
    static PlanRunner::Weatherer weatherer = chances_text;
    return weatherer;
}

}  // namespace

PlanRunner::PlanRunner(QObject* parent)
    : QObject(parent),
      planner_(common_planner()),
      weatherer_(common_weatherer()),
      view_(std::make_shared<const DaysView>()),
      plans_([this](std::shared_ptr<const DaysView> view) { show(std::move(view)); },
             [this] { emit runningChanged(); },
             [this](const QString& what) {
                 show_nothing(what);
                 tell_fault(what);
             }),
      weathers_(
          [this](const std::shared_ptr<const QString>& chances) {
              chances_text_ = *chances;
              const bool of_this_text = !plans_.running() && !weathers_.has_newer();
              if (document_ && view_->answered && of_this_text) document_->note_good(text_);
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

void PlanRunner::set_planner(Planner planner, Weatherer weatherer) {
    const bool own = static_cast<bool>(planner);
    common_planner() = own ? std::move(planner) : Planner(plan_text);
    common_weatherer() = weatherer ? std::move(weatherer)
                         : own ? Weatherer([](const QString&, const QString&) { return QString(); })
                               : Weatherer(chances_text);
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
    weathers_.request(
        [weatherer = weatherer_, text = text_, file = file_] { return weatherer(text, file); });
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
