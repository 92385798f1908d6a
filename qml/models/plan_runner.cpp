#include "models/plan_runner.hpp"

#include <utility>

#include "models/plan_text.hpp"
#include <QtConcurrent>

namespace touch {

namespace {

PlanRunner::Planner& common_planner() {
    static PlanRunner::Planner planner = plan_text;
    return planner;
}

}  // namespace

PlanRunner::PlanRunner(QObject* parent)
    : QObject(parent), planner_(common_planner()), view_(std::make_shared<const DaysView>()) {
    connect(&watcher_, &QFutureWatcherBase::finished, this, &PlanRunner::finished);
}

PlanRunner::~PlanRunner() {
    watcher_.disconnect(this);
    watcher_.cancel();
    watcher_.waitForFinished();
}

void PlanRunner::set_planner(Planner planner) {
    common_planner() = planner ? std::move(planner) : Planner(plan_text);
}

void PlanRunner::request(const QString& text) {
    if (running_) {
        pending_ = text;
        return;
    }
    start(text);
}

void PlanRunner::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) {
        connect(document_, &ScenarioDocument::textChanged, this,
                [this] { request(document_->text()); });
        if (!document_->text().isEmpty()) request(document_->text());
    }
    emit documentChanged();
}

void PlanRunner::start(const QString& text) {
    running_ = true;
    watcher_.setFuture(QtConcurrent::run([planner = planner_, text] {
        return Answer(std::make_shared<const DaysView>(planner(text)));
    }));
    emit runningChanged();
}

void PlanRunner::finished() {
    view_ = watcher_.result();
    running_ = false;
    findings_.show(view_->findings);
    cautions_.show(view_->cautions);
    assumptions_.show(view_->assumptions);
    days_.show(view_);
    emit planned();
    if (pending_) {
        start(*std::exchange(pending_, std::nullopt));
    } else {
        emit runningChanged();
    }
}

}  // namespace touch
