#include "answers/outage/chance.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using namespace units;
using chance::Figures;
using outage::LimitedBy;
using questions::OutageChance;

std::string what_ends_it(LimitedBy limit) {
    switch (limit) {
        case LimitedBy::charge:
            return "the packs are empty";
        case LimitedBy::usable:
            return "the packs are as far down as you allow";
        case LimitedBy::low_voltage:
            return "the inverter switches off on low voltage";
        case LimitedBy::pack_limit:
            return "a pack's own protection opens";
        case LimitedBy::fuse:
            return "a fuse opens";
        case LimitedBy::inverter_limit:
            return "the loads ask for more than the inverter gives";
        case LimitedBy::none:
            break;
    }
    return "";
}

std::string what_stops_at_once(LimitedBy limit) {
    switch (limit) {
        case LimitedBy::charge:
            return "the packs are empty at once";
        case LimitedBy::usable:
            return "the packs are as far down as you allow";
        case LimitedBy::pack_limit:
            return "a pack's own protection opens at once";
        case LimitedBy::fuse:
            return "a fuse opens at once";
        case LimitedBy::low_voltage:
        case LimitedBy::inverter_limit:
            return "the inverter stops at once";
        case LimitedBy::none:
            break;
    }
    return "the supply fails at once";
}

std::string capital(std::string words) {
    words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    return words;
}

// "To the end, Sunday 18:00, 35 times in 100."
std::string to_the_end(const scenario::Outage& outage, const Figures& figures) {
    return capital(lasting_so_often(outage, chance_in_words(figures))) + ".";
}

// Where the two times are nearly one, one is told.
bool nearly_one_time(const Figures& figures) {
    constexpr double nearly = 0.10;
    return figures.half - figures.count_on < nearly * figures.half;
}

std::string headline_of_times(const scenario::Outage& outage, const Figures& figures) {
    const std::string sure = counted_on_in_words(outage.starts, figures.count_on);
    const std::string often = goal_in_words(figures.goal);
    const std::string end = to_the_end(outage, figures);
    if (figures.of >= Probability(0.5))
        return fmt::format("Count on it until {} ({}). {}", sure, often, end);
    if (nearly_one_time(figures))
        return fmt::format("Lasts until about {} ({}). {}", sure, often, end);
    return fmt::format("Count on it until {} ({}), most likely until {}. {}", sure, often,
                       end_in_words(outage.starts, figures.half), end);
}

// Of an outage of which nobody knows how long it lasts; how long the unit does is another matter.
std::string times_of_the_unit(const scenario::Outage& outage, const Figures& figures) {
    const std::string often = goal_in_words(figures.goal);
    if (figures.count_on >= outage.lasts)
        return fmt::format("Count on it for the {} that are looked at ({}).",
                           length_in_words(outage.lasts), often);
    const std::string sure = counted_on_in_words(outage.starts, figures.count_on);
    if (figures.half >= outage.lasts || nearly_one_time(figures))
        return fmt::format("Count on it until {} ({}).", sure, often);
    return fmt::format("Count on it until {} ({}), most likely until {}.", sure, often,
                       end_in_words(outage.starts, figures.half));
}

std::string may_not_carry(const Figures& figures, const std::string& stops) {
    return fmt::format("May not carry these loads at all: in {} of 100 cases {}.",
                       std::max(1, whole_hundredths(figures.at_once)), stops);
}

std::string most_likely_until(const scenario::Outage& outage, const Figures& figures) {
    return fmt::format("Most likely it lasts until {}.", end_in_words(outage.starts, figures.half));
}

// Where it does not mostly stop at once.
std::string open_ended_headline(const scenario::Outage& outage, const Figures& figures,
                                const std::string& stops) {
    const std::string longer =
        fmt::format("Lasts {}.", lasting_so_often(outage, chance_in_words(figures)));
    if (figures.count_on >= minute)
        return fmt::format("{} {}", longer, times_of_the_unit(outage, figures));
    const std::string may_not = may_not_carry(figures, stops);
    return figures.half >= outage.lasts
               ? fmt::format("{} {}", may_not, longer)
               : fmt::format("{} {} {}", may_not, longer, most_likely_until(outage, figures));
}

std::string headline(const scenario::Outage& outage, const OutageChance& told) {
    const Figures& figures = told.figures;
    const std::string stops = what_stops_at_once(told.limits_at_once);
    if (figures.at_once > Probability(0.99))
        return fmt::format("Does not carry these loads: {}.", stops);
    if (figures.at_once >= Probability(0.5))
        return fmt::format("Does not carry these loads: {} in {} of 100 cases.", stops,
                           whole_hundredths(figures.at_once));
    if (outage.open_ended) return open_ended_headline(outage, figures, stops);
    if (figures.meets_the_goal())
        return fmt::format("Lasts {}.", lasting_so_often(outage, chance_in_words(figures)));
    if (figures.count_on >= minute) return headline_of_times(outage, figures);
    const std::string may_not = may_not_carry(figures, stops);
    if (figures.of >= Probability(0.5))
        return fmt::format("{} {}", may_not, to_the_end(outage, figures));
    return fmt::format("{} {} {}", may_not, most_likely_until(outage, figures),
                       to_the_end(outage, figures));
}

std::string more_packs_in_words(const OutageChance& told) {
    const auto& more = *told.more;
    const int added = more.more > 0 ? more.more : more.tried;
    const std::string packs =
        fmt::format("{} more {} ({} in all)", capital(number_in_words(added)),
                    added == 1 ? "pack" : "packs", number_in_words(told.packs + added));
    const std::string chance = chance_in_words(more.of, more.interval, told.figures.goal);
    if (more.more > 0) return fmt::format("{}: {}.", packs, chance);
    if (more.of <= told.figures.of) return "More packs alone do not make it last longer.";
    return fmt::format("{}: {}, which is still short of {}.", packs, chance,
                       goal_in_words(told.figures.goal));
}

}  // namespace

std::vector<std::string> chance_sentences(const scenario::Outage& outage,
                                          const OutageChance& told) {
    std::vector<std::string> sentences{headline(outage, told)};
    if (told.more) sentences.push_back(more_packs_in_words(told));
    const bool early =
        told.figures.at_once < Probability(0.5) && told.figures.of < Probability(1.0);
    if (const std::string ends = what_ends_it(told.limits); early && !ends.empty())
        sentences.push_back(fmt::format("Where it ends early, {}.", ends));
    if (told.meet >= Probability(0.01) && told.figures.at_once < Probability(0.5))
        sentences.push_back(fmt::format(
            "In {} of 100 cases loads that cycle come on together and ask for more than the unit "
            "gives, in half of these by {}.",
            std::min(99, whole_hundredths(told.meet)), end_in_words(outage.starts, told.meet_by)));
    if (told.one_year)
        sentences.push_back(
            fmt::format("The weather file is one year: between {:.0f} and {:.0f} times in 100.",
                        std::floor(100.0 * told.figures.low.value()),
                        std::ceil(100.0 * told.figures.high.value())));
    return sentences;
}

}  // namespace answers
