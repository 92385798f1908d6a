#include "answers/storage/answer.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "answers/checked.hpp"

namespace answers {

namespace {

using handling::Stored;

std::string percent(units::StateOfCharge charge) {
    return fmt::format("{:.0f} %", 100.0 * charge.value());
}

std::string verdict(const Stored& stored) {
    return fmt::format("{} on {}: {} left, of {} when it was put away on {}.",
                       stored.ready ? "Ready" : "Not ready", date_in_words(stored.on),
                       percent(stored.charge_now), percent(stored.packs.front().keeping.start),
                       date_in_words(stored.since));
}

std::string what_to_do(const Stored& stored) {
    if (stored.maintained) {
        return "A charger is left on it, and keeps it full.";
    }
    if (!stored.top_up_by) {
        return "It needs no topping up within ten years.";
    }
    if (*stored.top_up_by < stored.on) {
        return fmt::format("It should have been topped up by {}.",
                           date_in_words(*stored.top_up_by));
    }
    return fmt::format("Top it up by {}.", date_in_words(*stored.top_up_by));
}

std::string with_the_switch(const Stored& stored) {
    if (stored.maintained || stored.switch_open || !(stored.drain > units::Current{})) {
        return "";
    }
    std::string words = fmt::format("With the master switch open it would have {} left",
                                    percent(stored.charge_switch_open));
    if (stored.top_up_by_switch_open) {
        words += fmt::format(", and want topping up by {}",
                             date_in_words(*stored.top_up_by_switch_open));
    }
    return words + ".";
}

Series month_by_month(const Stored& stored) {
    std::vector<std::string> dates;
    std::vector<double> charge;
    std::vector<double> open;
    const double months =
        std::clamp<double>((stored.on - stored.since) / handling::month, 1.0, 120.0);
    for (int i = 0; i <= static_cast<int>(std::ceil(months)) + 3; ++i) {
        const units::Duration time = static_cast<double>(i) * handling::month;
        double sum = 0.0;
        double sum_open = 0.0;
        double whole = 0.0;
        for (const auto& pack : stored.packs) {
            auto switched_off = pack.keeping;
            switched_off.drain = {};
            const double size = pack.count * (pack.keeping.capacity / units::ampere_hour);
            whole += size;
            sum += size * handling::charge_after(pack.keeping, time).value();
            sum_open += size * handling::charge_after(switched_off, time).value();
        }
        dates.push_back(date_in_iso(stored.since + time));
        charge.push_back(std::round(stored.maintained ? 1000.0 : 1000.0 * sum / whole) / 10.0);
        open.push_back(std::round(stored.maintained ? 1000.0 : 1000.0 * sum_open / whole) / 10.0);
    }
    return {.name = "months",
            .title = "Month by month",
            .columns = {{"date", "date", "", dates},
                        {"charge", "left", "%", charge},
                        {"switch_open", "with the switch open", "%", open}},
            .brief = true};
}

std::vector<WorkingRow> working(const Stored& stored) {
    const std::string method = "battery method.md (41)";
    std::vector<WorkingRow> rows;
    for (const auto& pack : stored.packs) {
        const auto name = "pack " + pack.name;
        rows.push_back({"Storage", name + ", charge when put away", shown(pack.keeping.start, 3),
                        "", "the scenario file"});
        rows.push_back({"Storage", name + ", lost by itself in a month",
                        shown(pack.keeping.a_month, 3), method, "see the assumptions"});
        rows.push_back(
            {"Storage", name + ", its part of the drain", shown(pack.keeping.drain), method, ""});
        rows.push_back({"Storage", name + ", left", shown(pack.now, 3), method, ""});
    }
    rows.push_back({"Storage", "taken by what is left on", shown(stored.drained), method, ""});
    rows.push_back(
        {"Storage", "lost by the packs themselves", shown(stored.self_discharged), method, ""});
    return rows;
}

}  // namespace

Answer storage_answer(const scenario::Scenario& scenario, const Stored& stored) {
    Answer answer = checked_answer("storage", scenario, stored.findings, stored.assumptions);
    for (const auto& sentence : {verdict(stored), what_to_do(stored), with_the_switch(stored)}) {
        if (!sentence.empty()) {
            answer.sentences.push_back(sentence);
        }
    }
    const Absent never{stored.maintained ? "a charger is left on it" : "not within ten years"};
    const auto lost = stored.drained + stored.self_discharged;
    const auto share = [&](units::Charge part) {
        return lost > units::Charge{} ? value_of(units::Share(part / lost), 2)
                                      : Value{Absent{"nothing was lost"}};
    };
    answer.values = {
        {"charge_now", fmt::format("left on {}", date_in_iso(stored.on)),
         value_of(stored.charge_now, 3)},
        {"ready", "ready", {stored.ready}},
        {"top_up_by", "top up by",
         stored.top_up_by ? Value{date_in_iso(*stored.top_up_by)} : Value{never}},
        {"drain_share", "of the loss, what is left on", share(stored.drained)},
        {"self_discharge_share", "of the loss, the packs by themselves",
         share(stored.self_discharged)},
        {"charge_switch_open", "left with the master switch open",
         value_of(stored.charge_switch_open, 3)},
        {"top_up_by_switch_open", "top up by, with the switch open",
         stored.top_up_by_switch_open ? Value{date_in_iso(*stored.top_up_by_switch_open)}
                                      : Value{never}},
        {"on", "date", {date_in_iso(stored.on)}},
        {"stored_since", "put away", {date_in_iso(stored.since)}}};
    answer.working = working(stored);
    answer.series = {month_by_month(stored)};
    return answer;
}

}  // namespace answers
