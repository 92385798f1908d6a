#include "answers/gauge/answer.hpp"

#include <fmt/format.h>

#include "answers/checked.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using handling::ChargeRead;
using handling::Reading;

std::string percent(units::StateOfCharge charge) {
    return fmt::format("{:.0f} %", 100.0 * charge.value());
}

std::string first_sentence(const Reading& reading, const ChargeRead& read) {
    const auto from_to =
        fmt::format("between {} and {} full", percent(read.low), percent(read.high));
    const auto reads = fmt::format("{}{}", in_words(reading.reads, 4),
                                   reading.power ? " under that load" : " at rest");
    constexpr double tells_something = 1.0 / 3.0;
    if (read.plateau && read.high.value() - read.low.value() <= tells_something) {
        return fmt::format("{} tells no one charge, on the plateau: {} {}.", reads, read.what,
                           from_to);
    }
    if (read.plateau) {
        return fmt::format("{} cannot tell how full {}: anywhere {}.", reads,
                           read.what == "all packs" ? "the packs are" : read.what + " is", from_to);
    }
    if (!read.readable) {
        return fmt::format("{} says little: {} {}.", reads, read.what, from_to);
    }
    return fmt::format("{} means {} {}, most likely about {}.", reads, read.what, from_to,
                       percent(read.likely));
}

std::string why_so_wide(const ChargeRead& read) {
    return fmt::format(
        "{} either way, at {} for each hundredth of the charge, is what makes it so "
        "wide.",
        in_volts(read.error), in_words(read.per_hundredth, 2));
}

std::string until(const questions::FromNow& from, units::Duration lasts, bool survives) {
    return survives ? "to the end of the outage" : "until " + end_in_words(from.now, lasts);
}

std::string what_it_means(const ChargeRead& read, const questions::FromNow& from) {
    const auto low = until(from, from.lasts_low, from.survives_low);
    const auto high = until(from, from.lasts_high, from.survives_high);
    if (low == high) {
        return fmt::format("From {} on it lasts {}, whichever end is true.",
                           weekday_and_time(from.now), low);
    }
    if (read.readable) {
        return fmt::format("From {} on it lasts {}; at worst {}, at best {}.",
                           weekday_and_time(from.now), until(from, from.lasts, from.survives), low,
                           high);
    }
    return fmt::format("From {} on it lasts at least {} and at most {}: plan with the first.",
                       weekday_and_time(from.now), low, high);
}

void add_lasting(Answer& answer, const ChargeRead& read,
                 const std::optional<questions::FromNow>& from) {
    if (!from) {
        const Absent reason{
            "ask with --now, such as --now 21:30, and the rest of the outage is "
            "planned from there"};
        answer.values.push_back({"lasts", "lasts from now", {reason}});
        return;
    }
    const Absent unknown{"the reading does not tell one; see lasts_low and lasts_high"};
    answer.values.push_back(
        {"lasts", "lasts from now", read.readable ? value_of(from->lasts) : Value{unknown}});
    answer.values.push_back({"lasts_low", "at the low end", value_of(from->lasts_low)});
    answer.values.push_back({"lasts_high", "at the high end", value_of(from->lasts_high)});
    answer.values.push_back(
        {"survives_low", "to the end, even at the low end", {from->survives_low}});
    answer.values.push_back(
        {"survives_high", "to the end, at the high end", {from->survives_high}});
    answer.values.push_back({"now", "from", {time_in_iso(from->now)}});
}

}  // namespace

Answer gauge_answer(const scenario::Scenario& scenario, const Reading& reading,
                    const ChargeRead& read, const std::optional<questions::FromNow>& from_now) {
    Answer answer = checked_answer("gauge", scenario, read.findings, read.assumptions);
    answer.sentences = {first_sentence(reading, read), why_so_wide(read)};
    if (from_now) {
        answer.sentences.push_back(what_it_means(read, *from_now));
    }
    const Absent plateau{"the voltage hardly changes there: only the interval is told"};
    answer.values = {
        {"readable", "the reading tells the charge", {read.readable}},
        {"charge_low", "at least", value_of(read.low, 2)},
        {"charge_likely", "most likely", read.readable ? value_of(read.likely, 2) : Value{plateau}},
        {"charge_high", "at most", value_of(read.high, 2)},
        {"reads", "read", value_of(reading.reads, 4)},
        {"reading_error", "either way", value_of(read.error, 2)},
        {"rested", "voltage without the load", value_of(read.rested, 4)},
        {"per_hundredth", "for each hundredth of charge", value_of(read.per_hundredth)}};
    add_lasting(answer, read, from_now);
    const std::string method = "battery method.md (40)";
    answer.working = {
        {"Reading", "at the terminals", shown(reading.reads, 4), "", "the reading"},
        {"Reading", "current drawn", shown(read.current), method, "--under"},
        {"Reading", "resistance of packs and leads", shown(read.resistance), method, ""},
        {"Reading", "voltage without the load", shown(read.rested, 4), method, ""},
        {"Reading", "may be off by", shown(read.error, 2), method,
         "half the last digit, the meter, the load"},
        {"Reading", "voltage of one hundredth", shown(read.per_hundredth), method, ""},
        {"Reading", "charge at the low end", shown(read.low, 2), method, ""},
        {"Reading", "charge at the high end", shown(read.high, 2), method, ""}};
    return answer;
}

}  // namespace answers
