#include "answers/outage/bank_findings.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "answers/shown.hpp"

namespace answers {

namespace {

using outage::Event;
using outage::EventKind;
using outage::Plan;

constexpr std::size_t most_told = 6;

std::string name_of(const Plan& plan, std::size_t bank) {
    return bank < plan.bank_names.size() ? "pack " + plan.bank_names[bank] : "a pack";
}

// "pack old opens on 131 A after 5 min above 100 A"; empty for what is not about single packs.
std::string words_of(const Plan& plan, const Event& event) {
    const auto name = name_of(plan, event.pack);
    switch (event.kind) {
        case EventKind::one_back:
            return fmt::format("{} gives again", name);
        case EventKind::one_over_current:
        case EventKind::packs_over_current:
            return fmt::format("{} opens on {}{}", name, in_words(event.current),
                               after_words(event));
        case EventKind::one_fuse_opens:
        case EventKind::fuse_opens:
            return fmt::format("the fuse of {} opens on {}{}{}", name, in_words(abs(event.current)),
                               event.current < units::Current() ? " of charge" : "",
                               after_words(event));
        case EventKind::one_cut_off:
            return fmt::format("{} opens on low voltage", name);
        case EventKind::one_empty:
            return fmt::format("{} is empty", name);
        case EventKind::cannot_be_delivered:
            return "the others cannot carry it, and the bus is dead";
        default:
            return "";
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

std::string mend_of(const Event& first, bool on_current) {
    if (first.kind == EventKind::one_fuse_opens && first.current < units::Current())
        return "Charge with less at a time, so that no pack's share is more than its fuse bears; a "
               "larger fuse only where its wires and the pack allow it.";
    if (on_current)
        return "Make the leads alike, so that the packs share the draw; or drop a large load at "
               "this hour.";
    return "The packs differ in charge, age or leads: the weakest one ends first. Charge them "
           "alike, or add to it.";
}

}  // namespace

std::string after_words(const Event& event) {
    constexpr units::Duration at_once = 0.001 * units::second;
    if (event.after < at_once) {
        return "";
    }
    return fmt::format(" after {} above {}", in_words(event.after, 2), in_words(event.above));
}

std::vector<PinnedFinding> bank_findings(const scenario::Scenario& scenario, const Plan& plan) {
    const auto& events = plan.likely.events;
    const auto first = std::ranges::find_if(events, [&](const Event& event) {
        return is_about_one(event.kind) && is_news(events, event);
    });
    if (first == events.end()) {
        return {};
    }
    std::string text;
    std::size_t told = 0;
    bool dead = false;
    bool on_current = false;
    bool more = false;
    for (auto event = first; event != events.end() && !dead; ++event) {
        const auto words = words_of(plan, *event);
        if (words.empty()) {
            continue;
        }
        if (told == most_told) {
            more = true;
            break;
        }
        const bool later = event->at > first->at;
        text +=
            fmt::format("{}{}{}", text.empty() ? "" : "; then ", words,
                        later ? " at " + weekday_and_time(scenario.outage.starts + event->at) : "");
        dead = ends_the_supply(event->kind);
        on_current = on_current || event->kind == EventKind::one_over_current ||
                     event->kind == EventKind::one_fuse_opens;
        ++told;
    }
    text += dead   ? "; the bus is dead."
            : more ? "; and so on; the others go on."
                   : "; the others go on.";
    text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    return {{.finding = {.severity = dead || on_current ? scenario::Severity::stop
                                                        : scenario::Severity::caution,
                         .where = name_of(plan, first->pack),
                         .text = text,
                         .mend = mend_of(*first, on_current),
                         .source = "hour by hour over the outage; battery method.md (26)"},
             .at = first->at,
             .when = weekday_and_time(scenario.outage.starts + first->at)}};
}

}  // namespace answers
