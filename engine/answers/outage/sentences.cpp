#include "answers/outage/sentences.hpp"

#include <algorithm>
#include <cmath>

#include "answers/clock_words.hpp"
#include "answers/shown.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using outage::Course;
using outage::LimitedBy;
using outage::MorePacks;
using outage::Plan;
using units::Duration;
using words::Said;
using words::said;
using words::said_of;

// Wider than this to either side, a time is told as a range. [practice: interface rules]
constexpr double worth_a_range = 0.10;

// "The packs are empty" is said only where nothing could be met.
bool only_some_is_out(const Course& course) {
    if (course.limited_by != LimitedBy::charge || course.events.empty()) return false;
    return std::ranges::none_of(course.events, [&](const outage::Event& event) {
        return event.kind == outage::EventKind::packs_empty &&
               event.at - course.lasts < units::minute;
    });
}

Said what_happens_then(const Course& course) {
    if (only_some_is_out(course)) return said<"the packs cannot carry all of it any more">();
    if (course.limited_by != LimitedBy::none) return code_of(course.limited_by).said;
    return said<"something goes without">();
}

bool differs_much(const Plan& plan) {
    const double likely = plan.likely.lasts / units::hour;
    const double early = plan.earliest.lasts / units::hour;
    const double late = plan.latest.lasts / units::hour;
    return plan.uncertain &&
           (likely - early > worth_a_range * likely || late - likely > worth_a_range * likely);
}

Said charge_left(const Course& course) {
    if (course.trace.empty()) return in_words(units::Share(0.0));
    return in_words(units::Share(std::round(100.0 * course.trace.back().charge.value()) / 100.0));
}

Said lasting(const scenario::Outage& outage, const Course& course) {
    return said<"Lasts the whole outage; {charge} is left when the power returns on {when}.">(
        charge_left(course), weekday_and_time(outage.starts + outage.lasts));
}

Said ending(const scenario::Outage& outage, const Plan& plan) {
    const Course& course = plan.likely;
    const Said then = what_happens_then(course);
    if (course.lasts < units::minute)
        return said<"Does not carry these loads from the start: {what}.">(then);
    const Said likely = end_in_words(outage.starts, course.lasts);
    const Said early = end_in_words(outage.starts, plan.earliest.lasts);
    const Said late = end_in_words(outage.starts, plan.latest.lasts);
    if (!differs_much(plan) || (!plan.latest.survives && early == late))
        return said<"Lasts until {when}; then {what}.">(likely, then);
    if (plan.latest.survives)
        return said<
            "Lasts until {when} (at the earliest {early}, at best the whole outage); then "
            "{what}.">(likely, early, then);
    return said<"Lasts until {when} (between {early} and {late}); then {what}.">(likely, early,
                                                                                 late, then);
}

units::Duration missing(const outage::LoadUse& load) {
    return load.on_time - load.fed;
}

Said from_when(const scenario::Outage& outage, Duration when) {
    using Form = words::Moment::Form;
    const auto at = outage.starts + when;
    const bool same_day = at - units::midnight_before(outage.starts) < units::day;
    return said<"{when}">(units::moment(at, same_day ? Form::clock : Form::weekday_and_clock));
}

// Those that go without, by when that begins; none where they are too many to be named.
std::vector<const outage::LoadUse*> few_that_go_without(const Plan& plan) {
    constexpr std::size_t most_named = 3;
    std::vector<const outage::LoadUse*> gone;
    for (const auto& load : plan.loads)
        if (!load.goes_without.empty()) gone.push_back(&load);
    if (gone.size() > most_named) return {};
    std::ranges::stable_sort(gone, {}, [](const auto* load) { return load->goes_without[0].from; });
    return gone;
}

// "without supply: heater from 19:06 (8 min missing). Everything else lasts; 19 % is left."
Said who_goes_without(const scenario::Outage& outage, const Plan& plan) {
    const auto gone = few_that_go_without(plan);
    if (gone.empty()) return {};
    std::vector<Said> each;
    for (const auto* load : gone)
        each.push_back(said<"{load} from {when} ({time} missing)">(
            load->name, from_when(outage, load->goes_without[0].from),
            length_in_words(missing(*load))));
    const Said loads = words::joined(std::move(each), words::List::Joint::comma);
    if (gone.size() == plan.loads.size()) return said<"without supply: {loads}.">(loads);
    return said<"without supply: {loads}. Everything else lasts; {charge} is left.">(
        loads, charge_left(plan.likely));
}

// After the promise has ended: what the packs could still carry.
Said beyond_usable(const scenario::Outage& outage, const Plan& plan) {
    const bool all_fed =
        std::ranges::all_of(plan.loads, [](const auto& load) { return load.goes_without.empty(); });
    if (all_fed)
        return said<
            "nothing is switched off by that: the packs could carry everything to the "
            "end; {charge} is left then.">(charge_left(plan.likely));
    Duration first = outage.lasts;
    for (const auto& load : plan.loads)
        if (!load.goes_without.empty()) first = std::min(first, load.goes_without[0].from);
    return said<"nothing is switched off by that: the packs could carry everything until {when}.">(
        end_in_words(outage.starts, first));
}

Said with_more_packs(const scenario::Outage& outage, const Plan& plan,
                     const std::vector<MorePacks>& more) {
    const auto enough = std::ranges::find_if(more, &MorePacks::survives);
    const Said end = weekday_and_time(outage.starts + outage.lasts);
    if (enough != more.end())
        return said_of<"On likely figures {n} more pack carries you through to the end, {end}.",
                       "On likely figures {n} more packs carry you through to the end, {end}.">(
            words::in_words(enough->packs - plan.packs), end);
    const MorePacks& most = more.back();
    if (most.lasts - plan.likely.lasts < units::minute)
        return said<"More packs alone do not make it last longer.">();
    return said_of<
        "On likely figures {n} more pack carries you to {when}, which is still short of {end}.",
        "On likely figures {n} more packs carry you to {when}, which is still short of {end}.">(
        words::in_words(most.packs - plan.packs), end_in_words(outage.starts, most.lasts), end);
}

Said at_the_hungry_end(const scenario::Outage& outage, const Course& earliest) {
    return said<"If every doubtful figure turns out badly it lasts until {when}.">(
        end_in_words(outage.starts, earliest.lasts));
}

// What becomes of the loads, as clauses that go on beyond their first full stop.
std::vector<Said> of_the_loads(const scenario::Outage& outage, const Plan& plan) {
    std::vector<Said> clauses;
    if (plan.likely.limited_by == LimitedBy::usable) clauses.push_back(beyond_usable(outage, plan));
    if (auto who = who_goes_without(outage, plan); !who.empty()) clauses.push_back(std::move(who));
    return clauses;
}

}  // namespace

std::vector<Said> course_sentences(const scenario::Scenario& scenario, const Plan& plan) {
    std::vector<Said> sentences;
    if (plan.likely.survives) return sentences;
    for (auto& clause : of_the_loads(scenario.outage, plan))
        sentences.push_back(said<"On likely figures {what}">(std::move(clause)));
    return sentences;
}

std::vector<Said> outage_sentences(const scenario::Scenario& scenario, const Plan& plan,
                                   const std::vector<MorePacks>& more) {
    const auto& outage = scenario.outage;
    std::vector<Said> sentences;
    if (plan.likely.survives) {
        sentences.push_back(lasting(outage, plan.likely));
        if (plan.uncertain && !plan.earliest.survives) {
            sentences.push_back(at_the_hungry_end(outage, plan.earliest));
        }
        return sentences;
    }
    sentences.push_back(ending(outage, plan));
    if (!more.empty()) {
        sentences.push_back(with_more_packs(outage, plan, more));
    }
    for (auto& clause : of_the_loads(outage, plan))
        sentences.push_back(said<"{^what}">(std::move(clause)));
    return sentences;
}

Code code_of(LimitedBy limit) {
    switch (limit) {
        case LimitedBy::none:
            break;
        case LimitedBy::charge:
            return {"charge", said<"the packs are empty">()};
        case LimitedBy::low_voltage:
            return {"low_voltage", said<"the inverter switches off on low voltage">()};
        case LimitedBy::pack_limit:
            return {"pack_limit", said<"a pack's own protection opens">()};
        case LimitedBy::fuse:
            return {"fuse", said<"a fuse opens">()};
        case LimitedBy::inverter_limit:
            return {"inverter_limit", said<"the loads ask for more than the inverter gives">()};
        case LimitedBy::usable:
            return {"usable", said<"the packs are as far down as you allow">()};
    }
    return {"none", said<"nothing">()};
}

}  // namespace answers
