#include "answers/gauge/answer.hpp"

#include <cmath>

#include "answers/checked.hpp"
#include "answers/clock_words.hpp"

namespace answers {

namespace {

using handling::ChargeRead;
using handling::Reading;
using words::Said;
using words::said;

units::StateOfCharge to_the_hundredth(units::StateOfCharge charge) {
    return units::StateOfCharge(std::round(100.0 * charge.value()) / 100.0);
}

// What was read, and of what where it was not of all packs.
Said voltage_read(const Reading& reading) {
    const auto voltage = units::amount(reading.reads, 4);
    return reading.pack ? said<"{voltage} of pack {pack}">(voltage, *reading.pack)
                        : said<"{voltage}">(voltage);
}

Said first_sentence(const Reading& reading, const ChargeRead& read) {
    const auto low = to_the_hundredth(read.low);
    const auto high = to_the_hundredth(read.high);
    const auto range = units::between(low, high);
    const Said reads = reading.power  ? said<"{voltage} under this load">(voltage_read(reading))
                       : read.plateau ? voltage_read(reading)
                                      : said<"{voltage} at rest">(voltage_read(reading));
    constexpr double tells_something = 1.0 / 3.0;
    if (read.plateau && read.high.value() - read.low.value() <= tells_something)
        return said<"{reads} means {range} full, no closer: lithium voltage is nearly flat there.">(
            reads, range);
    if (read.plateau)
        return said<
            "{reads} may mean anything from {range} full: lithium voltage is nearly flat "
            "there.">(reads, range);
    if (!read.readable) return said<"{reads} says little: {range} full.">(reads, range);
    if (low == high) return said<"{reads} means {charge} full.">(reads, low);
    return said<"{reads} means {range} full, most likely about {likely}.">(
        reads, range, to_the_hundredth(read.likely));
}

Said why_so_wide(const ChargeRead& read) {
    return said<
        "The range is that wide because the reading may be off by {error} either way, and one "
        "hundredth of the charge is only {step}.">(in_volts(read.error),
                                                   units::amount(read.per_hundredth, 2));
}

Said until(const questions::FromNow& from, units::Duration lasts, bool survives) {
    return survives ? said<"to the end of the outage">()
                    : said<"until {when}">(end_in_words(from.now, lasts));
}

Said what_it_means(const ChargeRead& read, const questions::FromNow& from) {
    const Said now = weekday_and_time(from.now);
    const Said low = until(from, from.lasts_low, from.survives_low);
    const Said high = until(from, from.lasts_high, from.survives_high);
    if (low == high)
        return said<"From {now} on it lasts {until}, at either end of the reading.">(now, low);
    if (read.readable)
        return said<"From {now} on it lasts {until}; at worst {low}, at best {high}.">(
            now, until(from, from.lasts, from.survives), low, high);
    return said<"From {now} on it lasts at least {low} and at most {high}: plan with the first.">(
        now, low, high);
}

void add_lasting(Answer& answer, const ChargeRead& read,
                 const std::optional<questions::FromNow>& from) {
    const Said lasts = said<"lasts from now">();
    if (!from) {
        const Absent reason{
            said<"ask with --now, such as --now 21:30, and the rest of the outage is planned from "
                 "there">()};
        answer.values.push_back({"lasts", lasts, {reason}});
        return;
    }
    const Absent unknown{said<"the reading gives no single time, only the least and the most">()};
    answer.values.push_back(
        {"lasts", lasts, read.readable ? value_of(from->lasts) : Value{unknown}});
    answer.values.push_back({"lasts_low", said<"at the low end">(), value_of(from->lasts_low)});
    answer.values.push_back({"lasts_high", said<"at the high end">(), value_of(from->lasts_high)});
    answer.values.push_back(
        {"survives_low", said<"to the end, even at the low end">(), {from->survives_low}});
    answer.values.push_back(
        {"survives_high", said<"to the end, at the high end">(), {from->survives_high}});
    answer.values.push_back({"now", said<"{?day}from">(), time_value(from->now)});
}

Members values_of(const Reading& reading, const ChargeRead& read) {
    const Absent plateau{said<"the voltage hardly changes there: only the range is told">()};
    return {{"readable", said<"the reading tells the charge">(), {read.readable}},
            {"charge_low", said<"at least">(), value_of(read.low, 2)},
            {"charge_likely", said<"most likely">(),
             read.readable ? value_of(read.likely, 2) : Value{plateau}},
            {"charge_high", said<"at most">(), value_of(read.high, 2)},
            {"reads", said<"{?voltage}read">(), value_of(reading.reads, 4)},
            {"reading_error", said<"may be off either way by">(), value_of(read.error, 2)},
            {"rested", said<"voltage without the load">(), value_of(read.rested, 4)},
            {"per_hundredth", said<"one hundredth of the charge changes it by">(),
             value_of(read.per_hundredth)}};
}

std::vector<WorkingRow> working(const Reading& reading, const ChargeRead& read) {
    const std::string method = "battery method.md (40)";
    const Said section = said<"Reading">();
    return {
        {section, said<"at the terminals">(), shown(reading.reads, 4), "", said<"the reading">()},
        {section, said<"current drawn">(), shown(read.current), method, "--under"},
        {section, said<"resistance of packs and leads">(), shown(read.resistance), method, {}},
        {section, said<"voltage without the load">(), shown(read.rested, 4), method, {}},
        {section, said<"may be off by">(), shown(read.error, 2), method,
         said<"half the last digit, the meter, the load">()},
        {section, said<"voltage of one hundredth">(), shown(read.per_hundredth), method, {}},
        {section, said<"charge at the low end">(), shown(read.low, 2), method, {}},
        {section, said<"charge at the high end">(), shown(read.high, 2), method, {}}};
}

}  // namespace

Answer gauge_answer(const scenario::Scenario& scenario, const Reading& reading,
                    const ChargeRead& read, const std::optional<questions::FromNow>& from_now) {
    Answer answer = checked_answer("gauge", scenario, read.findings, read.assumptions);
    answer.sentences = {first_sentence(reading, read), why_so_wide(read)};
    if (from_now) {
        answer.sentences.push_back(what_it_means(read, *from_now));
    }
    answer.values = values_of(reading, read);
    add_lasting(answer, read, from_now);
    answer.working = working(reading, read);
    return answer;
}

}  // namespace answers
