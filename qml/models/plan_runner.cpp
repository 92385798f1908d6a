#include "models/plan_runner.hpp"

#include <utility>

#include "models/plan_text.hpp"

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
             [this] { emit runningChanged(); }),
      weathers_([this](const std::shared_ptr<const QString>& chances) { chances_text_ = *chances; },
                [this] { emit chancesChanged(); }) {}

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
    view_ = std::move(view);
    findings_.show(view_->findings);
    cautions_.show(view_->cautions);
    assumptions_.show(view_->assumptions);
    figures_.show(view_->figures);
    working_.show(view_->working);
    days_.show(view_);
    emit planned();
    if (plans_.has_newer()) return;
    weathers_.request(
        [weatherer = weatherer_, text = text_, file = file_] { return weatherer(text, file); });
}

}  // namespace touch
