#include "answers/outage/bank_findings.hpp"

#include <algorithm>

#include "answers/clock_words.hpp"
#include "answers/shown.hpp"

namespace answers {

namespace {

using outage::Event;
using outage::EventKind;
using outage::Plan;
using words::Said;
using words::said;

constexpr std::size_t most_told = 6;

Said name_of(const Plan& plan, std::size_t bank) {
    if (bank >= plan.bank_names.size()) return said<"a pack">();
    return said<"pack {pack}">(plan.bank_names[bank]);
}

// "pack old opens on 131 A after 5 min above 100 A"; empty for what is not about single packs.
Said words_of(const Plan& plan, const Event& event) {
    const Said name = name_of(plan, event.pack);
    switch (event.kind) {
        case EventKind::one_back:
            return said<"{pack} gives again">(name);
        case EventKind::one_over_current:
        case EventKind::packs_over_current:
            return said<"{pack} opens on {current}">(name, current_that_opens(event));
        case EventKind::one_fuse_opens:
        case EventKind::fuse_opens:
            return said<"the fuse of {pack} opens on {current}">(name, current_that_opens(event));
        case EventKind::one_cut_off:
            return said<"{pack} opens on low voltage">(name);
        case EventKind::one_empty:
            return said<"{pack} is empty">(name);
        case EventKind::cannot_be_delivered:
            return said<"the others cannot carry it, and the bus is dead">();
        default:
            return {};
    }
}

bool all_end(EventKind kind) {
    return kind == EventKind::packs_empty || kind == EventKind::packs_cut_off ||
           kind == EventKind::packs_at_usable_limit;
}

// Packs on leads a little unlike do not end in the same minute: that is no news where all of them
// end soon after. Half an hour is ours.
bool is_news(const std::vector<Event>& events, const Event& event) {
    constexpr units::Duration soon = 30.0 * units::minute;
    if (event.kind != EventKind::one_empty && event.kind != EventKind::one_cut_off) return true;
    return std::ranges::none_of(events, [&](const Event& other) {
        return all_end(other.kind) && other.at >= event.at && other.at - event.at <= soon;
    });
}

bool is_about_one(EventKind kind) {
    return kind == EventKind::one_over_current || kind == EventKind::one_fuse_opens ||
           kind == EventKind::one_cut_off || kind == EventKind::one_empty;
}

bool ends_the_supply(EventKind kind) {
    return kind == EventKind::packs_over_current || kind == EventKind::fuse_opens;
}

Said mend_of(const Event& first, bool on_current) {
    if (first.kind == EventKind::one_fuse_opens && first.current < units::Current())
        return said<
            "Charge with less at a time, so that no pack's share is more than its fuse "
            "bears; a larger fuse only where its wires and the pack allow it.">();
    if (on_current)
        return said<
            "Make the leads alike, so that the packs share the draw; or drop a large load "
            "at this hour.">();
    return said<
        "The packs differ in charge, age or leads: the weakest one ends first. Charge "
        "them alike, or add to it.">();
}

// What one pack after another does.
//   dead         the supply ends by it
//   on_current   one opens on what it carries
struct Story {
    Said text;
    bool dead = false;
    bool on_current = false;
};

using Events = std::vector<Event>::const_iterator;

// "pack old is empty; then pack new opens on 131 A at Friday 17:58"
Said one_after_another(std::vector<Said> steps, std::vector<units::Duration> at,
                       units::LocalTime starts) {
    std::vector<Said> clauses;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const bool later = at[i] > at.front();
        Said step =
            later ? said<"{what} at {when}">(std::move(steps[i]), weekday_and_time(starts + at[i]))
                  : std::move(steps[i]);
        clauses.push_back(i == 0 ? std::move(step) : said<"then {what}">(std::move(step)));
    }
    return words::joined(std::move(clauses), words::List::Joint::semicolon);
}

Story story_from(Events first, Events end, const Plan& plan, units::LocalTime starts) {
    Story story;
    std::vector<Said> steps;
    std::vector<units::Duration> at;
    bool more = false;
    for (auto event = first; event != end && !story.dead; ++event) {
        auto words = words_of(plan, *event);
        if (words.empty()) {
            continue;
        }
        if (steps.size() == most_told) {
            more = true;
            break;
        }
        steps.push_back(std::move(words));
        at.push_back(event->at);
        story.dead = ends_the_supply(event->kind);
        story.on_current = story.on_current || event->kind == EventKind::one_over_current ||
                           event->kind == EventKind::one_fuse_opens;
    }
    const Said course = one_after_another(std::move(steps), std::move(at), starts);
    story.text = story.dead ? said<"{^course}; the bus is dead.">(course)
                 : more     ? said<"{^course}; and so on; the others go on.">(course)
                            : said<"{^course}; the others go on.">(course);
    return story;
}

}  // namespace

bool opens_late(const Event& event) {
    constexpr units::Duration at_once = 0.001 * units::second;
    return event.after >= at_once;
}

Said current_that_opens(const Event& event) {
    const Said current = in_words(abs(event.current));
    const bool charge = event.current < units::Current();
    if (!opens_late(event)) return charge ? said<"{current} of charge">(current) : current;
    const Said time = in_words(event.after, 2);
    const Said above = in_words(event.above);
    return charge ? said<"{current} of charge after {time} above {rating}">(current, time, above)
                  : said<"{current} after {time} above {rating}">(current, time, above);
}

std::vector<PinnedFinding> bank_findings(const scenario::Scenario& scenario, const Plan& plan) {
    const auto& events = plan.likely.events;
    const auto first = std::ranges::find_if(events, [&](const Event& event) {
        return is_about_one(event.kind) && is_news(events, event);
    });
    if (first == events.end()) {
        return {};
    }
    const auto story = story_from(first, events.end(), plan, scenario.outage.starts);
    return {{.finding = {.severity = story.dead || story.on_current ? scenario::Severity::stop
                                                                    : scenario::Severity::caution,
                         .where = name_of(plan, first->pack),
                         .text = story.text,
                         .mend = mend_of(*first, story.on_current),
                         .source = said<"hour by hour over the outage; {method}">(
                             "battery method.md (26)")},
             .at = first->at,
             .when = weekday_and_time(scenario.outage.starts + first->at)}};
}

}  // namespace answers
