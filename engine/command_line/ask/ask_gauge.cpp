#include "command_line/ask/ask_gauge.hpp"

#include <CLI/CLI.hpp>

#include "command_line/reference/option_value.hpp"
#include "units/clock.hpp"

namespace command_line {

namespace {

using units::LocalTime;
using units::Voltage;
using words::said;

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

scenario::VoltageShown reads_of(const Request& request, units::Errors& errors) {
    if (!request.reads) {
        errors.push_back(
            {.where = "--reads",
             .found = said<"no reading is given">(),
             .remedy = said<"say what the voltmeter shows, such as --reads \"12.9 V\"">()});
        return {};
    }
    const auto reads = option_value<Voltage>(request.reads, "--reads", errors);
    if (!reads) return {};
    return {.volts = *reads, .decimals = scenario::decimals_of(*request.reads)};
}

// "150 W" or "12 A".
std::optional<scenario::DrawnMeanwhile> under_of(const Request& request, units::Errors& errors) {
    if (!request.under) return std::nullopt;
    if (const auto current = units::read<units::Current>(*request.under))
        return scenario::DrawnMeanwhile{.power = {}, .current = *current};
    const auto power = option_value<units::Power>(request.under, "--under", errors);
    return power ? std::optional(scenario::DrawnMeanwhile{.power = *power, .current = {}})
                 : std::nullopt;
}

void add_options(CLI::App& command, Request& request) {
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
                    "How far the meter may be off (0.5 % of the reading), "
                    "beside half its last digit")
        ->type_name("\"0.05 V\"");
    command.add_option("--pack", request.pack, "The pack that was read (all, joined)")
        ->type_name("NAME");
    command
        .add_option("--now", request.now,
                    "When it was read: plans the rest of the outage from there")
        ->type_name("21:30|2026-01-15T21:30");
}

units::Result<questions::Asked> asked_of(const scenario::ReadScenario& read,
                                         const Request& request) {
    units::Errors errors;
    questions::GaugeAsked asked{
        .reads = reads_of(request, errors),
        .accuracy = option_value<Voltage>(request.accuracy, "--accuracy", errors),
        .under = under_of(request, errors),
        .rested = option_value<units::Duration>(request.rested, "--rested", errors),
        .pack = request.pack,
        .now = moment(request.now, read.scenario.outage, errors)};
    if (!errors.empty()) return units::fail(std::move(errors));
    return asked;
}

}  // namespace

Question gauge_question() {
    return {.name = "gauge",
            .asks = words::said<"What does this voltage reading mean?">(),
            .examples =
                "  candlemark gauge storm.toml --reads \"12.9 V\" --rested \"8 h\"\n"
                "  candlemark gauge storm.toml --reads \"12.4 V\" --under \"150 W\" --now 21:30",
            .add_options = add_options,
            .asked = asked_of};
}

}  // namespace command_line
