#include "models/plan_runner.hpp"

#include <utility>

#include "models/days/days_view_of.hpp"
#include "models/words/plan_text.hpp"
#include "models/words/saved_words.hpp"
#include "models/words/scenario_text.hpp"

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
      known_(most_known),
      plans_([this](std::shared_ptr<const DaysView> view) { show(std::move(view)); },
             [this] { emit runningChanged(); },
             [this](const QString& what) {
                 show_nothing(what);
                 tell_fault(what);
             }),
      weighed_(
          [this](std::shared_ptr<const DaysView> view) {
              const bool of_this_text =
                  !plans_.running() && !weighed_.has_newer() && weighed_text_ == text_;
              if (!of_this_text) return;
              chances_text_ = view->chances;
              known_.insert(text_, new std::shared_ptr<const DaysView>(view));
              put(std::move(view));
              note_good();
              look_ahead();
          },
          [this] { emit chancesChanged(); },
          [this](const QString& what) {
              chances_text_.clear();
              tell_fault(what);
          }),
      next_(
          [this](std::shared_ptr<const DaysView> view) {
              known_.insert(planned_ahead_, new std::shared_ptr<const DaysView>(std::move(view)));
              plan_ahead();
          },
          [] {}, [this](const QString&) { ahead_.clear(); }) {}

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
    const bool same = text == text_ && file == file_;
    if (same && plans_.running() && !plans_.has_newer()) return;
    if (file != file_) known_.clear();
    text_ = text;
    file_ = file;
    ahead_.clear();
    since_.start();
    if (const auto* known = known_.object(text); known && !plans_.running()) {
        chances_text_.clear();
        put(*known);
        weigh();
        return;
    }
    plans_.request([planner = planner_, text, file] { return planner(text, file); });
}

void PlanRunner::set_document(ScenarioDocument* document) {
    if (document_ == document) return;
    if (document_) document_->disconnect(this);
    document_ = document;
    if (document_) {
        connect(document_, &ScenarioDocument::textChanged, this, &PlanRunner::follow);
        if (!document_->text().isEmpty()) follow();
    }
    emit documentChanged();
}

void PlanRunner::set_trial(const QString& text) {
    if (trial_ == text) return;
    trial_ = text;
    emit documentChanged();
    const QString wanted = trial_.isEmpty() && document_ ? document_->text() : trial_;
    if (!wanted.isEmpty()) request(wanted, document_ ? document_->path() : file_);
}

// A text that is told again is told in other words.
void PlanRunner::follow() {
    if (!trial_.isEmpty()) return;  // its end asks for the document's
    if (document_->text() == text_) {
        known_.clear();
        text_.clear();
    }
    request(document_->text(), document_->path());
}

void PlanRunner::show(std::shared_ptr<const DaysView> view) {
    const bool newest = !plans_.has_newer();
    if (newest) known_.insert(text_, new std::shared_ptr<const DaysView>(view));
    put(std::move(view));
    if (!newest) return;
    first_took_ = since_.elapsed();
    if (weigher_)
        weigh();
    else
        note_good();
}

void PlanRunner::weigh() {
    if (!weigher_ || !trial_.isEmpty()) return;
    weighed_text_ = text_;
    weighed_.request(
        [weigher = weigher_, text = text_, file = file_] { return weigher(text, file); });
}

void PlanRunner::note_good() {
    if (document_ && view_->answered && document_->text() == text_) document_->note_good(text_);
}

// One pack and one panel more or less: where a plan is soon made, it is there before the touch.
void PlanRunner::look_ahead() {
    if (!view_->answered || first_took_ > soon_enough) return;
    const Counts counts = counts_in(text_);
    ahead_.clear();
    const auto add = [this](const QString& key, const std::optional<Turn>& turn) {
        if (!turn) return;
        for (const int count : {turn->above, turn->below}) {
            const TextOrTrouble text = with_value(text_, key, QString::number(count));
            if (text.trouble.isEmpty() && text.text != text_ && !known_.contains(text.text))
                ahead_ << text.text;
        }
    };
    add(counts.pack_key, counts.packs);
    add(QStringLiteral("panel[0].count"), counts.panels);
    plan_ahead();
}

void PlanRunner::plan_ahead() {
    if (ahead_.isEmpty() || plans_.running() || weighed_.running()) return;
    planned_ahead_ = ahead_.takeFirst();
    next_.request(
        [planner = planner_, text = planned_ahead_, file = file_] { return planner(text, file); });
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
