#include "answers/outage/sentences.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "answers/clock_words.hpp"
#include "answers/shown.hpp"

namespace answers {

namespace {

using outage::Course;
using outage::LimitedBy;
using outage::MorePacks;
using outage::Plan;
using units::Duration;

// Wider than this to either side, a time is told as a range. [practice: interface rules]
constexpr double worth_a_range = 0.10;

std::string_view what_happens_then(LimitedBy limit) {
    switch (limit) {
        case LimitedBy::charge:
            return "then the packs are empty";
        case LimitedBy::usable:
            return "then the packs are as far down as you allow";
        case LimitedBy::low_voltage:
            return "then the inverter switches off on low voltage";
        case LimitedBy::pack_limit:
            return "then a pack's own protection opens";
        case LimitedBy::fuse:
            return "then a fuse opens";
        case LimitedBy::inverter_limit:
            return "then the loads ask for more than the inverter gives";
        case LimitedBy::none:
            break;
    }
    return "then something goes without";
}

// "The packs are empty" is said only where nothing could be met.
std::string_view what_happens_then(const Course& course) {
    if (course.limited_by != LimitedBy::charge) return what_happens_then(course.limited_by);
    const bool empty = std::ranges::any_of(course.events, [&](const outage::Event& event) {
        return event.kind == outage::EventKind::packs_empty &&
               event.at - course.lasts < units::minute;
    });
    return empty || course.events.empty() ? what_happens_then(LimitedBy::charge)
                                          : "then the packs cannot carry all of it any more";
}

bool differs_much(const Plan& plan) {
    const double likely = plan.likely.lasts / units::hour;
    const double early = plan.earliest.lasts / units::hour;
    const double late = plan.latest.lasts / units::hour;
    return plan.uncertain &&
           (likely - early > worth_a_range * likely || late - likely > worth_a_range * likely);
}

std::string range(const scenario::Outage& outage, const Plan& plan) {
    const std::string early = end_in_words(outage.starts, plan.earliest.lasts);
    if (plan.latest.survives) {
        return fmt::format(" (at the earliest {}, at best the whole outage)", early);
    }
    const std::string late = end_in_words(outage.starts, plan.latest.lasts);
    return early == late ? "" : fmt::format(" (between {} and {})", early, late);
}

std::string charge_left(const Course& course) {
    return course.trace.empty()
               ? "0 %"
               : in_words(
                     units::Share(std::round(100.0 * course.trace.back().charge.value()) / 100.0));
}

std::string lasting(const scenario::Outage& outage, const Course& course) {
    return fmt::format("Lasts the whole outage; {} is left when the power returns on {}.",
                       charge_left(course), weekday_and_time(outage.starts + outage.lasts));
}

std::string ending(const scenario::Outage& outage, const Plan& plan) {
    const Course& course = plan.likely;
    if (course.lasts < units::minute) {
        return fmt::format("Does not carry these loads from the start: {}.",
                           what_happens_then(course).substr(5));
    }
    return fmt::format("Lasts until {}{}; {}.", end_in_words(outage.starts, course.lasts),
                       differs_much(plan) ? range(outage, plan) : "", what_happens_then(course));
}

units::Duration missing(const outage::LoadUse& load) {
    return load.on_time - load.fed;
}

std::string from_when(const scenario::Outage& outage, Duration when) {
    const auto at = outage.starts + when;
    const auto words = weekday_and_time(at);
    const bool same_day = at - units::midnight_before(outage.starts) < units::day;
    return same_day ? words.substr(words.rfind(' ') + 1) : words;
}

// "Without supply: heater from 19:06 (8 min missing). Everything else lasts; 19 % is left."
std::string who_goes_without(const scenario::Outage& outage, const Plan& plan) {
    constexpr std::size_t most_named = 3;
    std::vector<const outage::LoadUse*> gone;
    for (const auto& load : plan.loads)
        if (!load.goes_without.empty()) gone.push_back(&load);
    if (gone.empty() || gone.size() > most_named) return "";
    std::ranges::stable_sort(gone, {}, [](const auto* load) { return load->goes_without[0].from; });
    std::vector<std::string> told;
    for (const auto* load : gone)
        told.push_back(fmt::format("{} from {} ({} missing)", load->name,
                                   from_when(outage, load->goes_without[0].from),
                                   length_in_words(missing(*load))));
    std::string text = fmt::format("Without supply: {}.", fmt::join(told, ", "));
    if (gone.size() < plan.loads.size())
        text += fmt::format(" Everything else lasts; {} is left.", charge_left(plan.likely));
    return text;
}

// After the promise has ended: what the packs could still carry.
std::string beyond_usable(const scenario::Outage& outage, const Plan& plan) {
    const bool all_fed =
        std::ranges::all_of(plan.loads, [](const auto& load) { return load.goes_without.empty(); });
    if (all_fed)
        return fmt::format(
            "Nothing is switched off by that: the packs could carry everything to "
            "the end; {} is left then.",
            charge_left(plan.likely));
    Duration first = outage.lasts;
    for (const auto& load : plan.loads)
        if (!load.goes_without.empty()) first = std::min(first, load.goes_without[0].from);
    return fmt::format(
        "Nothing is switched off by that: the packs could carry everything until "
        "{}.",
        end_in_words(outage.starts, first));
}

std::string packs_that_carry(int more) {
    return fmt::format("On likely figures {} more {}", number_in_words(more),
                       more == 1 ? "pack carries" : "packs carry");
}

std::string with_more_packs(const scenario::Outage& outage, const Plan& plan,
                            const std::vector<MorePacks>& more) {
    const auto enough = std::ranges::find_if(more, &MorePacks::survives);
    if (enough != more.end()) {
        return fmt::format("{} you through to the end, {}.",
                           packs_that_carry(enough->packs - plan.packs),
                           weekday_and_time(outage.starts + outage.lasts));
    }
    const MorePacks& most = more.back();
    const int added = most.packs - plan.packs;
    if (most.lasts - plan.likely.lasts < units::minute) {
        return "More packs alone do not make it last longer.";
    }
    return fmt::format("{} you to {}, which is still short of {}.", packs_that_carry(added),
                       end_in_words(outage.starts, most.lasts),
                       weekday_and_time(outage.starts + outage.lasts));
}

std::string at_the_hungry_end(const scenario::Outage& outage, const Course& earliest) {
    return fmt::format("If every doubtful figure turns out badly it lasts until {}.",
                       end_in_words(outage.starts, earliest.lasts));
}

}  // namespace

std::vector<std::string> course_sentences(const scenario::Scenario& scenario, const Plan& plan) {
    std::vector<std::string> sentences;
    if (plan.likely.survives) return sentences;
    if (plan.likely.limited_by == LimitedBy::usable)
        sentences.push_back(beyond_usable(scenario.outage, plan));
    if (auto who = who_goes_without(scenario.outage, plan); !who.empty())
        sentences.push_back(std::move(who));
    for (auto& sentence : sentences) {
        sentence.front() = static_cast<char>(std::tolower(sentence.front()));
        sentence = "On likely figures " + sentence;
    }
    return sentences;
}

std::vector<std::string> outage_sentences(const scenario::Scenario& scenario, const Plan& plan,
                                          const std::vector<MorePacks>& more) {
    const auto& outage = scenario.outage;
    std::vector<std::string> sentences;
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
    if (plan.likely.limited_by == LimitedBy::usable)
        sentences.push_back(beyond_usable(outage, plan));
    if (auto who = who_goes_without(outage, plan); !who.empty())
        sentences.push_back(std::move(who));
    return sentences;
}

std::string_view word_for(LimitedBy limit) {
    switch (limit) {
        case LimitedBy::none:
            return "none";
        case LimitedBy::charge:
            return "charge";
        case LimitedBy::low_voltage:
            return "low_voltage";
        case LimitedBy::pack_limit:
            return "pack_limit";
        case LimitedBy::fuse:
            return "fuse";
        case LimitedBy::inverter_limit:
            return "inverter_limit";
        case LimitedBy::usable:
            return "usable";
    }
    return "none";
}

}  // namespace answers
