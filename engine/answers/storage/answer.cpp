#include "answers/storage/answer.hpp"

#include <algorithm>
#include <cmath>

#include "answers/checked.hpp"
#include "units/said.hpp"

namespace answers {

namespace {

using handling::Stored;
using words::Said;
using words::said;

words::Amount percent(units::StateOfCharge charge) {
    return units::amount_in(charge, "%", 0);
}

Said verdict(const Stored& stored) {
    const auto left = percent(stored.charge_now);
    const auto start = percent(stored.packs.front().keeping.start);
    return stored.ready
               ? said<"Ready on {date}: {left} left, of {start} when it was put away on {since}.">(
                     date_in_words(stored.on), left, start, date_in_words(stored.since))
               : said<
                     "Not ready on {date}: {left} left, of {start} when it was put away on "
                     "{since}.">(date_in_words(stored.on), left, start,
                                 date_in_words(stored.since));
}

Said what_to_do(const Stored& stored) {
    if (stored.maintained) return said<"A charger is left on it and keeps it full.">();
    if (!stored.top_up_by) return said<"It need not be topped up within ten years.">();
    const Said by = date_in_words(*stored.top_up_by);
    if (*stored.top_up_by < stored.on) return said<"It should have been topped up by {date}.">(by);
    return said<"Top it up by {date}.">(by);
}

Said with_the_switch(const Stored& stored) {
    if (stored.maintained || stored.switch_open || !(stored.drain > units::Current{})) return {};
    const auto left = percent(stored.charge_switch_open);
    if (!stored.top_up_by_switch_open)
        return said<"With the master switch open it would have {left} left.">(left);
    return said<
        "With the master switch open it would have {left} left; topping it up by {date} would be "
        "enough.">(left, date_in_words(*stored.top_up_by_switch_open));
}

Code date_code(units::LocalTime time) {
    return {.code = date_in_iso(time), .said = date_in_words(time), .is_time = true};
}

Series month_by_month(const Stored& stored) {
    std::vector<Code> dates;
    std::vector<double> charge;
    std::vector<double> open;
    const auto in_tenths = [](units::StateOfCharge left) {
        return std::round(1000.0 * left.value()) / 10.0;
    };
    for (const auto& month : stored.months) {
        dates.push_back(date_code(month.on));
        charge.push_back(in_tenths(month.charge));
        open.push_back(in_tenths(month.switch_open));
    }
    return {.name = "months",
            .title = said<"Month by month">(),
            .columns = {{"date", said<"date">(), "", dates},
                        {"charge", said<"{?charge}left">(), "%", charge},
                        {"switch_open", said<"with the switch open">(), "%", open}},
            .brief = true};
}

std::vector<WorkingRow> working(const Stored& stored) {
    const std::string method = "battery method.md (41)";
    const Said section = said<"Storage">();
    std::vector<WorkingRow> rows;
    for (const auto& pack : stored.packs) {
        rows.push_back({section, said<"pack {pack}, charge when put away">(pack.name),
                        shown(pack.keeping.start, 3), "", said<"the scenario file">()});
        rows.push_back({section, said<"pack {pack}, lost by itself in a month">(pack.name),
                        shown(pack.keeping.a_month, 3), method, said<"see the assumptions">()});
        rows.push_back({section,
                        said<"pack {pack}, its part of the drain">(pack.name),
                        shown(pack.keeping.drain),
                        method,
                        {}});
        rows.push_back(
            {section, said<"pack {pack}, left">(pack.name), shown(pack.now, 3), method, {}});
    }
    rows.push_back(
        {section, said<"taken by what is left on">(), shown(stored.drained), method, {}});
    rows.push_back({section,
                    said<"lost by the packs themselves">(),
                    shown(stored.self_discharged),
                    method,
                    {}});
    return rows;
}

Value date_value(units::LocalTime time) {
    return {date_code(time)};
}

Members values_of(const Stored& stored) {
    const Absent never{stored.maintained ? said<"a charger is left on it">()
                                         : said<"not within ten years">()};
    const auto lost = stored.drained + stored.self_discharged;
    const auto share = [&](units::Charge part) {
        return lost > units::Charge{} ? value_of(units::Share(part / lost), 2)
                                      : Value{Absent{said<"nothing was lost">()}};
    };
    const auto date = [&](const std::optional<units::LocalTime>& by) {
        return by ? date_value(*by) : Value{never};
    };
    return {{"charge_now", said<"left on {date}">(date_in_words(stored.on)),
             value_of(stored.charge_now, 3)},
            {"ready", said<"ready">(), {stored.ready}},
            {"top_up_by", said<"top up by">(), date(stored.top_up_by)},
            {"drain_share", said<"share of the loss, by what stays switched on">(),
             share(stored.drained)},
            {"self_discharge_share", said<"share of the loss, by the packs themselves">(),
             share(stored.self_discharged)},
            {"charge_switch_open", said<"left with the master switch open">(),
             value_of(stored.charge_switch_open, 3)},
            {"top_up_by_switch_open", said<"top up by, with the switch open">(),
             date(stored.top_up_by_switch_open)},
            {"on", said<"date">(), date_value(stored.on)},
            {"stored_since", said<"put away">(), date_value(stored.since)}};
}

}  // namespace

Answer storage_answer(const scenario::Scenario& scenario, const Stored& stored) {
    Answer answer = checked_answer("storage", scenario, stored.findings, stored.assumptions);
    answer.sentences = {verdict(stored), what_to_do(stored)};
    if (auto open = with_the_switch(stored); !open.empty())
        answer.sentences.push_back(std::move(open));
    answer.values = values_of(stored);
    answer.working = working(stored);
    answer.series = {month_by_month(stored)};
    return answer;
}

}  // namespace answers
