#include "answers/outage/chance.hpp"

#include <algorithm>
#include <cmath>

#include "answers/chance_words.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using namespace units;
using chance::Figures;
using outage::LimitedBy;
using questions::OutageChance;
using words::Said;
using words::said;
using words::said_of;

Said what_ends_it(LimitedBy limit) {
    switch (limit) {
        case LimitedBy::charge:
            return said<"the packs are empty">();
        case LimitedBy::usable:
            return said<"the packs are as far down as you allow">();
        case LimitedBy::low_voltage:
            return said<"the inverter switches off on low voltage">();
        case LimitedBy::pack_limit:
            return said<"a pack's own protection opens">();
        case LimitedBy::fuse:
            return said<"a fuse opens">();
        case LimitedBy::inverter_limit:
            return said<"the loads ask for more than the inverter gives">();
        case LimitedBy::none:
            break;
    }
    return {};
}

Said what_stops_at_once(LimitedBy limit) {
    switch (limit) {
        case LimitedBy::charge:
            return said<"the packs are empty at once">();
        case LimitedBy::usable:
            return said<"the packs are as far down as you allow">();
        case LimitedBy::pack_limit:
            return said<"a pack's own protection opens at once">();
        case LimitedBy::fuse:
            return said<"a fuse opens at once">();
        case LimitedBy::low_voltage:
        case LimitedBy::inverter_limit:
            return said<"the inverter stops at once">();
        case LimitedBy::none:
            break;
    }
    return said<"the supply fails at once">();
}

// "To the end, Sunday 18:00, 35 times in 100."
Said to_the_end(const scenario::Outage& outage, const Figures& figures) {
    return words::as_sentence(lasting_so_often(outage, chance_in_words(figures)));
}

Said lasts_so_often(const scenario::Outage& outage, const Figures& figures) {
    return said<"Lasts {how_long}.">(lasting_so_often(outage, chance_in_words(figures)));
}

// Where the two times are nearly one, one is told.
bool nearly_one_time(const Figures& figures) {
    constexpr double nearly = 0.10;
    return figures.half - figures.count_on < nearly * figures.half;
}

Said headline_of_times(const scenario::Outage& outage, const Figures& figures) {
    const Said sure = counted_on_in_words(outage.starts, figures.count_on);
    const Said often = goal_in_words(figures.goal);
    const Said end = to_the_end(outage, figures);
    if (figures.of >= Probability(0.5))
        return words::together({said<"Count on it until {when} ({often}).">(sure, often), end});
    if (nearly_one_time(figures))
        return words::together({said<"Lasts until about {when} ({often}).">(sure, often), end});
    return words::together({said<"Count on it until {when} ({often}), most likely until {likely}.">(
                                sure, often, end_in_words(outage.starts, figures.half)),
                            end});
}

// Of an outage of which nobody knows how long it lasts; how long the unit does is another matter.
Said times_of_the_unit(const scenario::Outage& outage, const Figures& figures) {
    const Said often = goal_in_words(figures.goal);
    if (figures.count_on >= outage.lasts)
        return said<"Count on it for the {time} that are looked at ({often}).">(
            length_in_words(outage.lasts), often);
    const Said sure = counted_on_in_words(outage.starts, figures.count_on);
    if (figures.half >= outage.lasts || nearly_one_time(figures))
        return said<"Count on it until {when} ({often}).">(sure, often);
    return said<"Count on it until {when} ({often}), most likely until {likely}.">(
        sure, often, end_in_words(outage.starts, figures.half));
}

Said may_not_carry(const Figures& figures, const Said& stops) {
    return said<"May not carry these loads at all: in {n} of 100 cases {what}.">(
        std::max(1, whole_hundredths(figures.at_once)), stops);
}

Said most_likely_until(const scenario::Outage& outage, const Figures& figures) {
    return said<"Most likely it lasts until {when}.">(end_in_words(outage.starts, figures.half));
}

// Where it does not mostly stop at once.
Said open_ended_headline(const scenario::Outage& outage, const Figures& figures,
                         const Said& stops) {
    const Said longer = lasts_so_often(outage, figures);
    if (figures.count_on >= minute)
        return words::together({longer, times_of_the_unit(outage, figures)});
    const Said may_not = may_not_carry(figures, stops);
    if (figures.half >= outage.lasts) return words::together({may_not, longer});
    return words::together({may_not, longer, most_likely_until(outage, figures)});
}

Said headline(const scenario::Outage& outage, const OutageChance& found) {
    const Figures& figures = found.figures;
    const Said stops = what_stops_at_once(found.limits_at_once);
    if (figures.at_once > Probability(0.99))
        return said<"Does not carry these loads: {what}.">(stops);
    if (figures.at_once >= Probability(0.5))
        return said<"Does not carry these loads: {what} in {n} of 100 cases.">(
            stops, whole_hundredths(figures.at_once));
    if (outage.open_ended) return open_ended_headline(outage, figures, stops);
    if (figures.meets_the_goal()) return lasts_so_often(outage, figures);
    if (figures.count_on >= minute) return headline_of_times(outage, figures);
    const Said may_not = may_not_carry(figures, stops);
    const Said end = to_the_end(outage, figures);
    if (figures.of >= Probability(0.5)) return words::together({may_not, end});
    return words::together({may_not, most_likely_until(outage, figures), end});
}

Said more_packs_in_words(const OutageChance& found) {
    const auto& more = *found.more;
    const int added = more.more > 0 ? more.more : more.tried;
    const Said packs = said_of<"{^n} more pack ({all} in all)", "{^n} more packs ({all} in all)">(
        words::in_words(added), words::in_words(found.packs + added));
    const Said chance = chance_in_words(more.of, more.interval, found.figures.goal);
    if (more.more > 0) return said<"{packs}: {chance}.">(packs, chance);
    if (more.of <= found.figures.of) return said<"More packs alone do not make it last longer.">();
    return said<"{packs}: {chance}, which is still short of {goal}.">(
        packs, chance, goal_in_words(found.figures.goal));
}

}  // namespace

std::vector<Said> chance_sentences(const scenario::Outage& outage, const OutageChance& found) {
    std::vector<Said> sentences{headline(outage, found)};
    if (found.more) sentences.push_back(more_packs_in_words(found));
    const bool early =
        found.figures.at_once < Probability(0.5) && found.figures.of < Probability(1.0);
    if (const Said ends = what_ends_it(found.limits); early && !ends.empty())
        sentences.push_back(said<"Where it ends early, the reason is: {what}.">(ends));
    if (found.meet >= Probability(0.01) && found.figures.at_once < Probability(0.5))
        sentences.push_back(
            said<"In {n} of 100 cases loads that cycle come on together and ask for more than the "
                 "unit gives, in half of these by {when}.">(
                std::min(99, whole_hundredths(found.meet)),
                end_in_words(outage.starts, found.meet_by)));
    if (found.one_year)
        sentences.push_back(
            said<"The weather file is one year: between {low} and {high} times in 100.">(
                words::with_decimals(std::floor(100.0 * found.figures.low.value()), 0),
                words::with_decimals(std::ceil(100.0 * found.figures.high.value()), 0)));
    return sentences;
}

}  // namespace answers
