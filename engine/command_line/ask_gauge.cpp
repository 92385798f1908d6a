#include "command_line/ask_gauge.hpp"

#include <cmath>

#include <CLI/CLI.hpp>

#include "answers/gauge/answer.hpp"
#include "command_line/in_its_room.hpp"
#include "command_line/option_value.hpp"
#include "estimate/outlook.hpp"
#include "handling/gauge.hpp"
#include "outage/ready.hpp"
#include "scenario/file.hpp"
#include "sizing/builds.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/members_of.hpp"

namespace command_line {

namespace {

using units::LocalTime;
using units::Voltage;

// Half a unit of the last digit that was typed: "12.9 V" is worth 0.05 V either way.
Voltage half_last_digit(const std::string& text) {
    const auto point = text.find_first_of(".,");
    int decimals = 0;
    if (point != std::string::npos) {
        for (auto i = point + 1;
             i < text.size() && std::isdigit(static_cast<unsigned char>(text[i])); ++i) {
            ++decimals;
        }
    }
    const bool millivolts = text.find("mV") != std::string::npos;
    return 0.5 * std::pow(10.0, -decimals) * (millivolts ? 1e-3 : 1.0) * units::volt;
}

// Of the reading; common practice, no source: cheap panel meters are given as half a percent.
constexpr double usual_accuracy = 0.005;

// "21:30" is the first such time of the outage; otherwise a whole date and time.
std::optional<LocalTime> moment(const std::optional<std::string>& text,
                                const scenario::Outage& outage, units::Errors& errors) {
    if (!text) {
        return std::nullopt;
    }
    if (const auto time = units::read_time_of_day(*text)) {
        auto now = units::midnight_before(outage.starts) + *time;
        return now < outage.starts ? now + units::day : now;
    }
    return option_value<LocalTime>(text, "--now", errors);
}

handling::Reading reading_of(const Request& request, units::Errors& errors) {
    handling::Reading reading{.pack = request.pack};
    if (!request.reads) {
        errors.push_back({.where = "--reads",
                          .found = "no reading is given",
                          .remedy = "say what the voltmeter shows, such as --reads \"12.9 V\""});
        return reading;
    }
    const auto reads = option_value<Voltage>(request.reads, "--reads", errors);
    if (!reads) {
        return reading;
    }
    reading.reads = *reads;
    const auto own = option_value<Voltage>(request.accuracy, "--accuracy", errors);
    reading.error = half_last_digit(*request.reads) + own.value_or(usual_accuracy * *reads);
    reading.rested_for = option_value<units::Duration>(request.rested, "--rested", errors);
    if (request.under) {
        if (const auto current = units::read<units::Current>(*request.under)) {
            reading.power = *current * *reads;
        } else {
            reading.power = option_value<units::Power>(request.under, "--under", errors);
        }
    }
    return reading;
}

units::Error not_within(LocalTime now, const scenario::Outage& outage) {
    return {.where = "--now",
            .found = units::print(now) + " is not within the outage",
            .remedy = "give a time between " + units::print(outage.starts) + " and " +
                      units::print(outage.starts + outage.lasts)};
}

// The reading as an entry of the log, with the digits that were typed.
scenario::LogEntry entry_of(const handling::Reading& reading, const std::string& typed,
                            LocalTime now) {
    const double digit = 2.0 * double(half_last_digit(typed) / units::volt);
    return {.at = now,
            .pack = reading.pack,
            .reads = scenario::VoltageShown{.volts = reading.reads,
                                            .decimals = static_cast<int>(
                                                std::max(0.0, -std::round(std::log10(digit))))},
            .under = reading.power ? std::optional(scenario::DrawnMeanwhile{.power = reading.power,
                                                                            .current = {}})
                                   : std::nullopt,
            .rested = reading.power
                          ? std::nullopt
                          : std::optional(reading.rested_for.value_or(8.0 * units::hour))};
}

// With a log the reading is one more of it, and nothing that was written down is thrown away.
units::Result<answers::FromNow> estimate_from(scenario::Scenario scenario,
                                              const scenario::LogEntry& entry, LocalTime now,
                                              const std::string& folder, std::uint64_t seed) {
    const auto end = scenario.outage.starts + scenario.outage.lasts;
    if (now < scenario.outage.starts || !(now < end))
        return units::fail(not_within(now, scenario.outage));
    scenario.log.push_back(entry);
    auto ready = outage::make_ready(scenario, folder);
    if (!ready) return units::fail(std::move(ready.error()));
    const auto outlook = estimate::outlook_of(
        scenario, folder, std::make_shared<const outage::Ready>(std::move(*ready)),
        {.now = now, .seed = seed, .steps = false});
    if (!outlook) return units::fail(outlook.error());
    const auto& figures = outlook->figures;
    const auto left = end - now;
    return answers::FromNow{.now = now,
                            .left = left,
                            .lasts_low = figures.count_on,
                            .lasts = figures.half,
                            .lasts_high = figures.one_in_ten,
                            .survives_low = figures.meets_the_goal(),
                            .survives = figures.half >= left,
                            .survives_high = figures.one_in_ten >= left};
}

units::Result<answers::FromNow> plan_from(const scenario::Scenario& scenario,
                                          const handling::Reading& reading,
                                          const handling::ChargeRead& read, LocalTime now,
                                          const std::string& folder, std::uint64_t seed) {
    constexpr int members_run = 64;  // at each of three charges
    auto later = scenario;
    const auto end = scenario.outage.starts + scenario.outage.lasts;
    if (now < scenario.outage.starts || !(now < end)) {
        return units::fail({.where = "--now",
                            .found = units::print(now) + " is not within the outage",
                            .remedy = "give a time between " +
                                      units::print(scenario.outage.starts) + " and " +
                                      units::print(end)});
    }
    later.outage.starts = now;
    later.outage.lasts = end - now;
    later.outage.out_for = now - scenario.outage.starts;
    answers::FromNow from{.now = now, .left = end - now};
    const auto goal = sizing::goal_of(scenario);
    // What the chance makes of a start at this charge.
    const auto figures_at = [&](units::StateOfCharge charge) -> units::Result<chance::Figures> {
        const auto told = handling::at_charge(later, reading, charge);
        auto ready = outage::make_ready(told, folder);
        if (!ready) {
            return units::fail(std::move(ready.error()));
        }
        const auto members = sizing::members_of(
            told, folder, std::make_shared<const outage::Ready>(std::move(*ready)), seed,
            members_run);
        sizing::MemberRuns runs(members);
        return members.figures(runs.ends(), goal);
    };
    const auto low = figures_at(read.low);
    const auto likely = figures_at(read.likely);
    const auto high = figures_at(read.high);
    for (const auto* figures : {&low, &likely, &high}) {
        if (!*figures) {
            return units::fail(figures->error());
        }
    }
    from.lasts_low = low->count_on;
    from.survives_low = low->count_on >= later.outage.lasts;
    from.lasts = likely->half;
    from.survives = likely->half >= later.outage.lasts;
    from.lasts_high = high->one_in_ten;
    from.survives_high = high->one_in_ten >= later.outage.lasts;
    return from;
}

}  // namespace

void add_gauge_options(CLI::App& command, Request& request) {
    command.add_option("--reads", request.reads, "What the voltmeter shows")
        ->type_name("\"12.9 V\"");
    command
        .add_option("--under", request.under,
                    "What is drawn from the packs while it is read (nothing)")
        ->type_name("\"150 W\"|\"12 A\"");
    command.add_option("--rested", request.rested, "Since it was last charged or used")
        ->type_name("\"8 h\"");
    command
        .add_option("--accuracy", request.accuracy,
                    "How far the meter may be off (0.5 % of the reading),\n"
                    "beside half its last digit")
        ->type_name("\"0.05 V\"");
    command.add_option("--pack", request.pack, "The pack that was read (all, joined)")
        ->type_name("NAME");
    command
        .add_option("--now", request.now,
                    "When it was read: plans the rest of the outage from there")
        ->type_name("21:30|2026-01-15T21:30");
}

units::Result<answers::Answer> ask_gauge(const scenario::ReadScenario& read,
                                         const Request& request) {
    units::Errors errors;
    const auto reading = reading_of(request, errors);
    const auto now = moment(request.now, read.scenario.outage, errors);
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    const auto room = InItsRoom::at_the_mean_from(now.value_or(read.scenario.outage.starts), read);
    const auto charge = handling::gauge(room.scenario(), reading);
    if (!charge) {
        return units::fail(charge.error());
    }
    std::optional<answers::FromNow> from_now;
    if (now) {
        const auto folder = scenario::folder_of(read.file_name);
        auto planned =
            read.scenario.log.empty()
                ? plan_from(room.scenario(), reading, *charge, *now, folder, request.seed)
                : estimate_from(read.scenario, entry_of(reading, *request.reads, *now), *now,
                                folder, request.seed);
        if (!planned) {
            return units::fail(planned.error());
        }
        from_now = *planned;
    }
    return room.told_in(answers::gauge_answer(room.scenario(), reading, *charge, from_now));
}

}  // namespace command_line
