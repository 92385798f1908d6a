#include "answers/sun/sentences.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"
#include "answers/shown.hpp"
#include "answers/sun/words.hpp"

namespace answers {

namespace {

using scenario::Scenario;
using solar::PlacementKind;

std::string with_capital(std::string words) {
    if (!words.empty()) {
        words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    }
    return words;
}

std::string panels_in_words(int panels) {
    return fmt::format("{} {}", number_in_words(panels), panels == 1 ? "panel" : "panels");
}

solar::DayRange per_day(const solar::DayRange& whole, double days) {
    return {.low = whole.low / days,
            .likely = whole.likely / days,
            .high = whole.high / days,
            .mean = whole.mean / days};
}

std::string of_many(const questions::SunResults& results) {
    if (results.unit)
        return results.setup.hours ? "taken and kept, from start dates in the weather file"
                                   : "taken and kept by loads and packs";
    return results.setup.hours
               ? fmt::format("{} start dates in the weather file", results.recharge.weathers)
               : fmt::format("{} chance weathers", results.recharge.weathers);
}

std::string what_comes_back(const Scenario& scenario, const questions::SunResults& results) {
    const int panels = questions::panels_in(scenario);
    const auto& whole = results.recharge.whole;
    if (whole.high < 1.0 * units::watt_hour) {
        return fmt::format("{} at {} {} nothing back in these {}.",
                           with_capital(panels_in_words(panels)), results.setup.site.name,
                           panels == 1 ? "gives" : "give", length_in_words(scenario.outage.lasts));
    }
    return fmt::format(
        "{} at {} {} back {} over the {}: nine times in ten at least {}, one time "
        "in ten {} or more ({}).",
        with_capital(panels_in_words(panels)), results.setup.site.name,
        panels == 1 ? "gives" : "give", in_words(whole.likely, 2),
        length_in_words(scenario.outage.lasts), in_words(whole.low, 2), in_words(whole.high, 2),
        of_many(results));
}

std::string mean_day(const Scenario& scenario, const questions::SunResults& results) {
    const auto day = per_day(results.recharge.whole, outage_days(scenario));
    return fmt::format("That is {} for each day of the outage, {} to {}.", in_words(day.likely, 2),
                       in_words(day.low, 2), in_words(day.high, 2));
}

// What does not come back, each share that is worth a word.
std::string what_is_not_kept(const questions::SunAndUnit& unit) {
    const auto& mean = unit.sun.mean;
    const units::Energy all = mean.offered() + mean.clipped;
    constexpr double worth_a_word = 0.05;
    std::vector<std::string> shares;
    for (const auto& [share, why] :
         {std::pair{mean.full, "come while the packs are full or take no more"},
          std::pair{mean.too_cold, "come while the packs are too cold to be charged"},
          std::pair{mean.clipped, "are turned away by the charge controller"},
          std::pair{mean.lost, "are lost in charging"}})
        if (share > worth_a_word * all)
            shares.push_back(fmt::format("{} {}", in_words(share, 2), why));
    if (shares.empty()) return "";
    return fmt::format("Of {} on average {}.", in_words(all, 2), fmt::join(shares, ", "));
}

std::string standing(const Scenario& scenario, const questions::SunResults& results) {
    const bool one = questions::panels_in(scenario) == 1;
    const std::string_view they_give = one ? "it gives" : "they give";
    const std::string_view they = one ? "it" : "they";
    const auto* now = row_of(results, PlacementKind::as_described);
    const auto* best = row_of(results, PlacementKind::best_fixed);
    if (now == nullptr || best == nullptr) {
        return "";
    }
    const auto now_times = times_flat(results, *now);
    const auto best_times = times_flat(results, *best);
    if (!now_times || !best_times) {
        return "";
    }
    constexpr double near_enough = 0.95;
    std::string words;
    const bool flat = now->aims.size() == 1 && now->aims.front().tilt < 0.5 * units::degree;
    if (!flat) {
        const std::string how = now->aims.size() > 1 ? with_capital(stands(now->aims))
                                                     : "Standing at " + stands(now->aims);
        words = fmt::format("{} {} on average {:.1f} times what {} would flat on the ground", how,
                            they_give, *now_times, they);
    }
    if (now->day.mean >= near_enough * best->day.mean) {
        return words.empty() ? "Flat on the ground is as good as any tilt on such days."
                             : words + "; no fixed tilt gives much more.";
    }
    const std::string better = fmt::format("ropping them up at {} gives {:.1f} times flat",
                                           stands(best->aims), *best_times);
    return words.empty() ? "P" + better + "." : words + "; p" + better + ".";
}

std::string panels_that_help(const Scenario& scenario, const questions::SunAndUnit& unit) {
    const auto& dark = unit.counts.front().figures;
    if (dark.of > units::Probability(0.99)) {
        return fmt::format(
            "The packs alone last to the end {}: what the sun gives back is to spare.",
            times_in_100(dark.of));
    }
    const auto enough = sizing::enough_panels(unit.counts);
    const int now = questions::panels_in(scenario);
    const int most = unit.counts.back().panels;
    if (!enough) {
        return fmt::format(
            fmt::runtime(sizing::each_helps(unit.counts, now)
                             ? "Each further panel up to {} still helps."
                             : "More panels still help, up to {}, though not each of them."),
            number_in_words(most));
    }
    if (enough->panels == 0) {
        return fmt::format("Panels add little here: {}.", why_in_words(enough->why));
    }
    return fmt::format("Beyond {} of these panels{} one more adds little: {}.",
                       number_in_words(enough->panels),
                       enough->panels == now  ? ", as you have,"
                       : enough->panels < now ? ", fewer than you have,"
                                              : "",
                       why_in_words(enough->why));
}

std::string how_long(const Scenario& scenario, const questions::SunResults& results) {
    const auto& figures = results.unit->figures;
    const auto& outage = scenario.outage;
    const std::string_view with = questions::panels_in(scenario) == 1 ? "With it" : "With them";
    if (counted_on_to_the_end(outage, figures)) {
        return fmt::format("{} the unit lasts to the end, {}.", with, chance_in_words(figures));
    }
    if (figures.count_on >= outage.lasts) {
        return fmt::format("{} the unit lasts {}.", with,
                           lasting_so_often(outage, chance_in_words(figures)));
    }
    const std::string likely =
        figures.half >= outage.lasts
            ? ""
            : fmt::format(", most likely until {}", end_in_words(outage.starts, figures.half));
    const std::string end =
        outage.open_ended
            ? "longer than the outage " + chance_in_words(figures) + ", " + if_half_are_over(outage)
            : "to the end, " + chance_in_words(figures);
    return fmt::format("{} count on it until {} ({}){}; {}.", with,
                       counted_on_in_words(outage.starts, figures.count_on),
                       goal_in_words(figures.goal), likely, end);
}

}  // namespace

std::vector<std::string> sun_sentences(const Scenario& scenario,
                                       const questions::SunResults& results) {
    if (results.setup.groups.empty()) {
        return {"There are no panels in this file, so nothing comes back from the sun."};
    }
    std::vector<std::string> sentences{what_comes_back(scenario, results)};
    const auto not_kept = results.unit ? what_is_not_kept(*results.unit) : std::string();
    if (results.recharge.whole.high < 1.0 * units::watt_hour) {
        if (!not_kept.empty()) {
            sentences.push_back(not_kept);
        }
        return sentences;
    }
    if (outage_days(scenario) > 1.5) {
        sentences.push_back(mean_day(scenario, results));
    }
    if (!not_kept.empty()) {
        sentences.push_back(not_kept);
    }
    if (const auto words = standing(scenario, results); !words.empty()) {
        sentences.push_back(words);
    }
    if (results.unit) {
        sentences.push_back(how_long(scenario, results));
    }
    if (results.unit && !results.unit->counts.empty()) {
        sentences.push_back(panels_that_help(scenario, *results.unit));
    }
    return sentences;
}

}  // namespace answers
