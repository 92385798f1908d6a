#include "report/outage_sentences.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "report/clock_words.hpp"
#include "report/shown.hpp"

namespace report {

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
                           what_happens_then(course.limited_by).substr(5));
    }
    return fmt::format("Lasts until {}{}; {}.", end_in_words(outage.starts, course.lasts),
                       differs_much(plan) ? range(outage, plan) : "",
                       what_happens_then(course.limited_by));
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
    }
    return "none";
}

}  // namespace report
