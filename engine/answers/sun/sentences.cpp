#include "answers/sun/sentences.hpp"

#include <algorithm>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "answers/shown.hpp"
#include "answers/sun/words.hpp"

namespace answers {

namespace {

using scenario::Scenario;
using solar::PlacementKind;
using words::Said;
using words::said;
using words::said_of;

solar::DayRange per_day(const solar::DayRange& whole, double days) {
    return {.low = whole.low / days,
            .likely = whole.likely / days,
            .high = whole.high / days,
            .mean = whole.mean / days};
}

// What the range was taken over.
Said of_many(const questions::SunResults& results) {
    if (results.unit)
        return results.setup.hours ? said<"taken and kept, from start dates in the weather file">()
                                   : said<"taken and kept by loads and packs">();
    if (results.setup.hours)
        return said_of<"{n} start date in the weather file", "{n} start dates in the weather file">(
            results.recharge.weathers);
    return said_of<"{n} weather drawn by chance", "{n} weathers drawn by chance">(
        results.recharge.weathers);
}

bool gives_nothing(const questions::SunResults& results) {
    return results.recharge.whole.high < 1.0 * units::watt_hour;
}

Said what_comes_back(const Scenario& scenario, const questions::SunResults& results) {
    const auto panels = words::in_words(questions::panels_in(scenario));
    const auto& whole = results.recharge.whole;
    const Said lasts = length_in_words(scenario.outage.lasts);
    if (gives_nothing(results))
        return said_of<"{^n} panel at {place} gives nothing back in these {time}.",
                       "{^n} panels at {place} give nothing back in these {time}.">(
            panels, results.setup.site.name, lasts);
    return said_of<
        "{^n} panel at {place} gives back {likely} over the {time}: nine times in ten at least "
        "{low}, one time in ten {high} or more ({of}).",
        "{^n} panels at {place} give back {likely} over the {time}: nine times in ten at least "
        "{low}, one time in ten {high} or more ({of}).">(
        panels, results.setup.site.name, in_words(whole.likely, 2), lasts, in_words(whole.low, 2),
        in_words(whole.high, 2), of_many(results));
}

Said mean_day(const Scenario& scenario, const questions::SunResults& results) {
    const auto day = per_day(results.recharge.whole, outage_days(scenario));
    return said<"That is {likely} for each day of the outage, {low} to {high}.">(
        in_words(day.likely, 2), in_words(day.low, 2), in_words(day.high, 2));
}

// What does not come back, each share that is worth a word.
Said what_is_not_kept(const questions::SunAndUnit& unit) {
    const auto& mean = unit.sun.mean;
    const units::Energy all = mean.offered() + mean.clipped;
    constexpr double worth_a_word = 0.05;
    std::vector<Said> shares;
    const auto add = [&](units::Energy share, auto clause) {
        if (share > worth_a_word * all) shares.push_back(clause(in_words(share, 2)));
    };
    add(mean.full, [](const Said& energy) {
        return said<"{energy} comes while the packs are full or take no more">(energy);
    });
    add(mean.too_cold, [](const Said& energy) {
        return said<"{energy} comes while the packs are too cold to be charged">(energy);
    });
    add(mean.clipped, [](const Said& energy) {
        return said<"{energy} is turned away by the charge controller">(energy);
    });
    add(mean.lost, [](const Said& energy) { return said<"{energy} is lost in charging">(energy); });
    if (shares.empty()) return {};
    return said<"Of {all} on average this is not kept: {shares}.">(
        in_words(all, 2), words::joined(std::move(shares), words::List::Joint::semicolon));
}

bool lies_flat(const solar::PlacementYield& yield) {
    return yield.aims.size() == 1 && yield.aims.front().tilt < 0.5 * units::degree;
}

Said as_they_are(const solar::PlacementYield& now, double times) {
    const auto so_many = words::with_decimals(times, 1);
    if (now.aims.size() > 1)
        return said<"Panels {turned} give on average {times} times as much as flat on the ground.">(
            stands(now.aims), so_many);
    return said<"Panels at {tilt} give on average {times} times as much as flat on the ground.">(
        stands(now.aims), so_many);
}

Said no_better(bool flat) {
    if (flat) return said<"Flat on the ground is as good as any tilt on such days.">();
    return said<"No fixed tilt gives much more.">();
}

Said better(const solar::PlacementYield& best, double times) {
    if (lies_flat(best)) return said<"Flat on the ground they would give more.">();
    return said<"Propped up at {tilt} they would give {times} times as much as flat.">(
        stands(best.aims), words::with_decimals(times, 1));
}

Said standing(const questions::SunResults& results) {
    const auto* now = row_of(results, PlacementKind::as_described);
    const auto* best = row_of(results, PlacementKind::best_fixed);
    if (now == nullptr || best == nullptr) return {};
    const auto now_times = times_flat(results, *now);
    const auto best_times = times_flat(results, *best);
    if (!now_times || !best_times) return {};
    constexpr double near_enough = 0.95;
    const bool flat = lies_flat(*now);
    const bool good = now->day.mean >= near_enough * best->day.mean;
    return words::together({flat ? Said() : as_they_are(*now, *now_times),
                            good ? no_better(flat) : better(*best, *best_times)});
}

Said beyond(int enough, int now, const Said& why) {
    const auto n = words::in_words(enough);
    if (enough == now)
        return said_of<"Beyond the one panel you have another adds little: {why}.",
                       "Beyond the {n} panels you have another adds little: {why}.">(n, why);
    if (enough < now)
        return said_of<"Beyond one of these panels another adds little, and you have more: {why}.",
                       "Beyond {n} of these panels another adds little, and you have more: {why}.">(
            n, why);
    return said_of<"Beyond one of these panels another adds little: {why}.",
                   "Beyond {n} of these panels another adds little: {why}.">(n, why);
}

Said panels_that_help(const Scenario& scenario, const questions::SunAndUnit& unit) {
    const auto& dark = unit.counts.front().figures;
    if (dark.of > units::Probability(0.99))
        return said<
            "The packs alone last to the end {often}: what the sun gives back is to spare.">(
            times_in_100(dark.of));
    const auto& enough = unit.enough;
    if (!enough) {
        const auto most = words::in_words(unit.counts.back().panels);
        if (unit.each_helps) return said<"Each further panel up to {n} still helps.">(most);
        return said<"More panels still help, up to {n}, though not each of them.">(most);
    }
    const Said why = why_in_words(enough->why);
    if (enough->panels == 0) return said<"Panels add little here: {why}.">(why);
    return beyond(enough->panels, questions::panels_in(scenario), why);
}

Said how_long(const Scenario& scenario, const questions::SunResults& results) {
    const auto& figures = results.unit->figures;
    const auto& outage = scenario.outage;
    const Said often = chance_in_words(figures);
    if (counted_on_to_the_end(outage, figures))
        return said<"With the sun the unit lasts to the end, {often}.">(often);
    if (figures.count_on >= outage.lasts)
        return said<"With the sun the unit lasts {so_long}.">(lasting_so_often(outage, often));
    const Said when = counted_on_in_words(outage.starts, figures.count_on);
    const Said goal = goal_in_words(figures.goal);
    const Said counted =
        figures.half >= outage.lasts
            ? said<"With the sun count on it until {when} ({often}).">(when, goal)
            : said<
                  "With the sun count on it until {when} ({often}); most likely it lasts until "
                  "{likely}.">(when, goal, end_in_words(outage.starts, figures.half));
    return words::together({counted, said<"It lasts {so_long}.">(lasting_so_often(outage, often))});
}

}  // namespace

std::vector<Said> sun_sentences(const Scenario& scenario, const questions::SunResults& results) {
    if (results.setup.groups.empty())
        return {said<"There are no panels in this file, so nothing comes back from the sun.">()};
    std::vector<Said> sentences{what_comes_back(scenario, results)};
    const bool nothing = gives_nothing(results);
    if (!nothing && outage_days(scenario) > 1.5) sentences.push_back(mean_day(scenario, results));
    if (results.unit) sentences.push_back(what_is_not_kept(*results.unit));
    if (!nothing) {
        sentences.push_back(standing(results));
        if (results.unit) sentences.push_back(how_long(scenario, results));
        if (results.unit && !results.unit->counts.empty())
            sentences.push_back(panels_that_help(scenario, *results.unit));
    }
    std::erase_if(sentences, [](const Said& sentence) { return sentence.empty(); });
    return sentences;
}

}  // namespace answers
