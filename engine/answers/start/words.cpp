#include "answers/start/words.hpp"

#include <cmath>
#include <vector>

#include "units/said.hpp"

namespace answers {

using starting::Constraint;
using starting::Judgement;
using starting::StartVerdict;
using units::amount;
using words::Said;
using words::said;
using words::said_of;

namespace {

// Above this share of a limit, ten times and more, figures tell nothing.
constexpr double most_told = 9.99;

// Both ends with one unit.
template <class Written>
words::Between from_to(const units::Ends<Written>& ends) {
    const auto range = units::spanning(ends);
    return units::between(range.low(), range.high());
}

// As a share of the limit, in brackets behind what is asked.
Said of_the_limit(const starting::Utilisation* use) {
    if (use == nullptr) return said<"more than the limit">();
    if (use->used.high().value() > most_told)
        return said<"{share} of the limit and more">(in_percent(use->used.low()));
    return said<"{share} of the limit">(in_percent(use->used));
}

Said with_limit(Said clause, const starting::Utilisation* use) {
    return said<"{clause} ({share})">(std::move(clause), of_the_limit(use));
}

// The smallest that the packs' own protections surely let through for the time of the start.
std::optional<units::Current> pack_limit(const Judgement& judged,
                                         const starting::DirectSource& source) {
    std::optional<units::Current> smallest;
    for (const auto& branch : source.branches) {
        const auto allowed = starting::allowed_for(branch.limits, judged.draw.time.high).low;
        if (allowed && (!smallest || *allowed < *smallest)) smallest = allowed;
    }
    return smallest;
}

Said too_long_a_start(const starting::StartDraw& draw) {
    if (draw.surge_time_in_doubt)
        return said<
            "it asks up to {power} of the inverter, and nothing tells how long the inverter holds "
            "that">(draw.apparent.high);
    return said<"the start takes {time}, and the inverter may hold {power} for less than that">(
        from_to(draw.time), draw.apparent.high);
}

Said too_little_torque(const starting::StartDraw& draw, const starting::Utilisation* use) {
    const bool enough =
        use == nullptr || use->used.high() < starting::comfortable(Constraint::torque);
    if (use == nullptr || (draw.waveform_in_doubt && enough))
        return said<"motors with a capacitor or a compressor suffer from a quasi-square wave">();
    return said<"what it turns takes {share} of its torque">(in_percent(use->used));
}

Said too_low_a_voltage(const Judgement& judged,
                       const std::optional<starting::InverterSide>& inverter) {
    if (!inverter)
        return judged.collapses ? said<"the voltage stays at {voltage} at best, or collapses">(
                                      judged.voltage.low)
                                : said<"the voltage falls to {voltage}">(from_to(judged.voltage));
    if (judged.collapses)
        return said<
            "the voltage at the inverter stays at {voltage} at best, or collapses, and it switches "
            "off at {cutoff}">(judged.voltage.low, from_to(inverter->cutoff));
    return said<"the voltage at the inverter falls to {voltage}, and it switches off at {cutoff}">(
        from_to(judged.voltage), from_to(inverter->cutoff));
}

Said too_much_of_the_packs(const starting::StartDraw& draw, const starting::Utilisation* use) {
    if (use == nullptr || use->used.low().value() > 1.0)
        return said<
            "{power} is asked of the packs, which is more than they can give at any voltage">(
            from_to(draw.direct_power));
    return said<
        "{power} is asked of the packs, which is {share} of what they can give at any voltage">(
        from_to(draw.direct_power), in_percent(use->used));
}

Said too_much_of_one_pack(const Judgement& judged, const starting::DirectSource& source) {
    const auto limit = pack_limit(judged, source);
    const auto time = amount(judged.draw.time.high, 2);
    if (!limit)
        return said<
            "one pack would carry {current} for {time}, more than its protection lets through">(
            from_to(judged.pack_current), time);
    return said<
        "one pack would carry {current}, and its protection lets {limit} through for {time}">(
        from_to(judged.pack_current), *limit, time);
}

// What stands in the way of any number of packs.
Said limit_of(Constraint constraint) {
    switch (constraint) {
        case Constraint::voltage_class:
            return said<"the voltage of the motor">();
        case Constraint::surge_power:
        case Constraint::surge_duration:
        case Constraint::after_start:
            return said<"the inverter">();
        case Constraint::torque:
            return said<"the torque of the motor">();
        case Constraint::low_voltage:
            return said<"the voltage at the inverter">();
        case Constraint::collapse:
            return said<"the power of the packs">();
        case Constraint::pack_current:
            return said<"the current of a pack">();
        case Constraint::fuse:
            return said<"a fuse">();
        case Constraint::connector:
            return said<"a connector or switch">();
    }
    return {};
}

}  // namespace

Said plain(StartVerdict verdict) {
    switch (verdict) {
        case StartVerdict::starts:
            return said<"{?motor}starts">();
        case StartVerdict::marginal:
            return said<"may or may not start">();
        case StartVerdict::will_not_start:
            return said<"will not start">();
    }
    return {};
}

Said in_percent(starting::Utilised used) {
    if (used.value() > most_told) return said<"> 999 %">();
    return said<"{n} %">(words::with_decimals(100.0 * used.value(), 0));
}

Said in_percent(const units::Range<starting::Utilised>& used) {
    const double low = std::round(100.0 * used.low().value());
    const double high = std::round(100.0 * used.high().value());
    if (low == high || used.low().value() > most_told) return in_percent(used.high());
    if (used.high().value() > most_told)
        return said<"{n} to > 999 %">(words::with_decimals(low, 0));
    return said<"{low} to {high} %">(words::with_decimals(low, 0), words::with_decimals(high, 0));
}

Said reason_of(const Judgement& judged, const std::optional<starting::InverterSide>& inverter,
               const starting::DirectSource& source) {
    const auto& draw = judged.draw;
    const auto* use = judged.of(judged.binding);
    switch (judged.binding) {
        case Constraint::voltage_class:
            return said<"it is not made for the voltage of this unit">();
        case Constraint::surge_power:
            return with_limit(said<"it asks {power} of the inverter, whose surge is {surge}">(
                                  from_to(draw.apparent), from_to(draw.surge)),
                              use);
        case Constraint::surge_duration:
            return too_long_a_start(draw);
        case Constraint::torque:
            return too_little_torque(draw, use);
        case Constraint::after_start:
            return with_limit(said<"once it runs, more is on than the inverter carries for long">(),
                              use);
        case Constraint::low_voltage:
            return too_low_a_voltage(judged, inverter);
        case Constraint::collapse:
            return too_much_of_the_packs(draw, use);
        case Constraint::pack_current:
            return too_much_of_one_pack(judged, source);
        case Constraint::fuse:
            return with_limit(said<"a fuse of the packs or the inverter may melt in {time}">(
                                  amount(draw.time.high, 2)),
                              use);
        case Constraint::connector:
            return with_limit(said<"a connector or switch of the inverter would carry {current}">(
                                  from_to(judged.current)),
                              use);
    }
    return {};
}

Said packs_in_words(const starting::PacksNeeded& packs, int now) {
    if (packs.surely && *packs.surely <= now) return {};
    if (packs.surely)
        return said_of<"{more} more pack ({all} in all) makes it start",
                       "{more} more packs ({all} in all) make it start">(
            words::in_words(*packs.surely - now), *packs.surely);
    const Said limit = limit_of(packs.because);
    if (packs.at_best == StartVerdict::will_not_start)
        return said<"more packs do not help: {limit} is the limit">(limit);
    if (packs.perhaps && *packs.perhaps > now)
        return said_of<
            "with {more} more pack ({all} in all) it may start; no number of packs "
            "makes it sure: {limit} is the limit",
            "with {more} more packs ({all} in all) it may start; no number of packs "
            "makes it sure: {limit} is the limit">(words::in_words(*packs.perhaps - now),
                                                   *packs.perhaps, limit);
    return said<"more packs do not make it sure: {limit} is the limit">(limit);
}

Said mend_of(const starting::LoadStart& start, int packs_now) {
    std::vector<Said> mends{words::as_sentence(packs_in_words(start.packs, packs_now))};
    if (start.settling)
        mends.push_back(start.settling->either_way
                            ? said<"{^find}: that settles it.">(start.settling->find)
                            : said<"{^find}: that may settle it.">(start.settling->find));
    for (const auto& what_if : start.what_ifs) {
        if (what_if.verdict >= start.judged.verdict ||
            what_if.change.saying == &words::saying<"with one pack more">)
            continue;
        mends.push_back(what_if.verdict == StartVerdict::starts
                            ? said<"{^change} it starts.">(what_if.change)
                            : said<"{^change} it may or may not start.">(what_if.change));
    }
    return words::together(std::move(mends));
}

}  // namespace answers
