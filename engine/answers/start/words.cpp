#include "answers/start/words.hpp"

#include <fmt/format.h>

#include "answers/clock_words.hpp"
#include "answers/shown.hpp"

namespace answers {

using starting::Constraint;
using starting::Judgement;
using starting::StartVerdict;

namespace {

std::string percent_of_limit(const units::Range<starting::Utilised>& used) {
    const double low = 100.0 * used.low().value();
    const double high = 100.0 * used.high().value();
    if (high > 999.0) return fmt::format("{:.0f} % of the limit and more", low);
    return low + 0.5 >= high ? fmt::format("{:.0f} % of the limit", high)
                             : fmt::format("{:.0f} to {:.0f} % of the limit", low, high);
}

std::string for_time(units::Duration time) {
    return in_words(time, 2);
}

// The smallest that the packs' own protections surely let through for the time of the start.
std::string pack_limit(const Judgement& judged, const starting::StartPlan& plan) {
    std::optional<units::Current> smallest;
    for (const auto& branch : plan.source.branches) {
        const auto allowed = starting::allowed_for(branch.limits, judged.draw.time.high).low;
        if (allowed && (!smallest || *allowed < *smallest)) smallest = allowed;
    }
    return smallest ? in_words(*smallest) : std::string("nothing more");
}

}  // namespace

std::string_view plain(StartVerdict verdict) {
    switch (verdict) {
        case StartVerdict::starts:
            return "starts";
        case StartVerdict::marginal:
            return "may or may not start";
        case StartVerdict::will_not_start:
            return "will not start";
    }
    return "";
}

template <class Written>
std::string between(const units::Range<Written>& range) {
    const std::string from = in_words(range.low());
    const std::string to = in_words(range.high());
    return from == to ? to : from + " to " + to;
}
template std::string between(const units::Range<units::ApparentPower>&);
template std::string between(const units::Range<units::Power>&);
template std::string between(const units::Range<units::Voltage>&);
template std::string between(const units::Range<units::Current>&);
template std::string between(const units::Range<units::Duration>&);

std::string reason_of(const Judgement& judged, const starting::StartPlan& plan) {
    const auto& draw = judged.draw;
    const auto* use = judged.of(judged.binding);
    const std::string used = use == nullptr ? std::string() : percent_of_limit(use->used);
    switch (judged.binding) {
        case Constraint::voltage_class:
            return "it is not made for the voltage of this unit";
        case Constraint::surge_power:
            return fmt::format("it asks {} of the inverter, whose surge is {} ({})",
                               between(spanning(draw.apparent)), between(spanning(draw.surge)),
                               used);
        case Constraint::surge_duration:
            if (draw.surge_time_in_doubt)
                return fmt::format(
                    "it asks up to {} of the inverter, and nobody told how long it "
                    "holds that",
                    in_words(draw.apparent.high));
            return fmt::format(
                "the start takes {}, and the inverter may hold {} for less than "
                "that",
                between(spanning(draw.time)), in_words(draw.apparent.high));
        case Constraint::torque:
            if (draw.waveform_in_doubt && use != nullptr && use->used.high().value() < 0.83)
                return "motors with a capacitor or a compressor suffer from a quasi-square wave";
            return fmt::format(
                "what it turns takes {:.0f} to {:.0f} % of its torque",
                use == nullptr ? 0.0 : 100.0 * use->used.low().value(),
                use == nullptr ? 0.0 : std::min(999.0, 100.0 * use->used.high().value()));
        case Constraint::after_start:
            return fmt::format("once it runs, more is on than the inverter carries for long ({})",
                               used);
        case Constraint::low_voltage:
            return fmt::format(
                "the voltage at the inverter {}, and it switches off at {}",
                judged.collapses
                    ? fmt::format("stays at {} at best, or collapses", in_words(judged.voltage.low))
                    : "falls to " + between(spanning(judged.voltage)),
                plan.inverter ? between(spanning(plan.inverter->cutoff)) : "its cut-off");
        case Constraint::collapse:
            return fmt::format("{} is asked of the packs, which is {}",
                               between(spanning(draw.direct_power)),
                               use != nullptr && use->used.low().value() > 1.0
                                   ? "more than they can give at any voltage"
                                   : percent_of_limit(use->used) + " they can give at any voltage");
        case Constraint::pack_current:
            return fmt::format("one pack would carry {}, and its protection lets {} through for {}",
                               between(spanning(judged.pack_current)), pack_limit(judged, plan),
                               for_time(draw.time.high));
        case Constraint::fuse:
            return fmt::format("a fuse of the packs or the inverter may melt in {} ({})",
                               for_time(draw.time.high), used);
        case Constraint::connector:
            return fmt::format("a connector or switch of the inverter would carry {} ({})",
                               between(spanning(judged.current)), used);
    }
    return "";
}

std::string packs_in_words(const starting::PacksNeeded& packs, int now) {
    const auto more_packs = [&](int count) {
        const int more = count - now;
        return fmt::format("{} more {} ({} in all)", number_in_words(more),
                           more == 1 ? "pack" : "packs", count);
    };
    if (packs.surely && *packs.surely <= now) return "";
    if (packs.surely)
        return fmt::format("{} {} it start", more_packs(*packs.surely),
                           *packs.surely - now == 1 ? "makes" : "make");
    const std::string because = std::string(starting::in_words(packs.because));
    if (packs.at_best == StartVerdict::will_not_start)
        return fmt::format("no number of packs helps, because of the {}", because);
    if (packs.perhaps && *packs.perhaps > now)
        return fmt::format(
            "with {} it may start; no number of packs makes it sure, because of the "
            "{}",
            more_packs(*packs.perhaps), because);
    return fmt::format("no number of packs makes it sure, because of the {}", because);
}

std::string mend_of(const starting::LoadStart& start, int packs_now) {
    std::string mend = packs_in_words(start.packs, packs_now);
    const auto add = [&](const std::string& more) { mend += (mend.empty() ? "" : "; ") + more; };
    if (start.settling)
        add(start.settling->find +
            (start.settling->either_way ? ": that settles it" : ": that may settle it"));
    for (const auto& what_if : start.what_ifs)
        if (what_if.verdict < start.judged.verdict && what_if.change != "with one pack more")
            add(fmt::format("{} it {}", what_if.change, plain(what_if.verdict)));
    return mend;
}

}  // namespace answers
