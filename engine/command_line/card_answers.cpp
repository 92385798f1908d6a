#include "command_line/card_answers.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "command_line/ask_gauge.hpp"
#include "command_line/ask_join.hpp"
#include "command_line/ask_outage.hpp"
#include "command_line/ask_storage.hpp"
#include "command_line/ask_wiring.hpp"
#include "command_line/version.hpp"
#include "handling/gauge.hpp"
#include "outage/ready.hpp"
#include "scenario/file.hpp"
#include "scenario/set_aside.hpp"
#include "sizing/builds.hpp"
#include "sizing/members_of.hpp"
#include "sizing/ration.hpp"
#include "units/clock.hpp"

namespace command_line {

namespace {

using scenario::ReadScenario;

// One reading that a voltmeter of one decimal can show, and the charge it leaves possible.
struct Step {
    int tenths = 0;  // of a volt
    double low = 0.0;
    double high = 0.0;
};

std::string in_volts(int tenths) {
    return fmt::format("{}.{} V", tenths / 10, tenths % 10);
}

// Every tenth of a volt the packs can show at rest, from full to empty.
std::vector<Step> scale_of(const ReadScenario& read, units::Errors& errors) {
    const units::Voltage usual = 12.8 * units::volt;
    const units::Voltage voltage =
        read.scenario.packs.empty() ? usual : read.scenario.packs.front().voltage.value_or(usual);
    const double nominal = voltage / units::volt;
    std::vector<Step> scale;
    for (int tenths = static_cast<int>(std::ceil(12.5 * nominal));
         tenths >= static_cast<int>(7.5 * nominal); --tenths) {
        const units::Voltage reads = 0.1 * tenths * units::volt;
        const auto told = handling::gauge(
            read.scenario, {.reads = reads, .error = 0.05 * units::volt + 0.005 * reads});
        if (told) {
            scale.push_back({tenths, told->low.value(), told->high.value()});
        } else {
            errors = told.error();
        }
    }
    return scale;
}

// Without those that all say full, or all say empty, but the one nearest to the rest of each.
std::vector<Step> between_the_ends(std::vector<Step> scale) {
    const auto full = [](const Step& step) { return step.low >= 0.99; };
    const auto empty = [](const Step& step) { return step.high <= 0.01; };
    while (scale.size() > 1 && full(scale[1])) {
        scale.erase(scale.begin());
    }
    while (scale.size() > 1 && empty(scale[scale.size() - 2])) {
        scale.pop_back();
    }
    return scale;
}

// Those that tell the most apart: each next one allows clearly less than the one before.
std::vector<Step> worth_telling(const std::vector<Step>& scale, double apart) {
    std::vector<Step> told;
    for (const Step& step : scale) {
        if (told.empty() || step.low + step.high <= told.back().low + told.back().high - apart) {
            told.push_back(step);
        }
    }
    return told;
}

void add_readings(answers::CardAnswers& answers, const ReadScenario& read) {
    units::Errors errors;
    const auto scale = between_the_ends(scale_of(read, errors));
    if (scale.empty()) {
        answers.no_reading = errors.empty()
                                 ? "There are no packs to read."
                                 : "The voltage tells nothing here: " + errors.front().found + ".";
        return;
    }
    std::vector<Step> told;
    for (double apart = 0.1; told.empty() || told.size() > readings_on_a_card; apart += 0.05) {
        told = worth_telling(scale, apart);
    }
    for (const Step& step : told) {
        Request request;
        request.reads = in_volts(step.tenths);
        request.now = units::print(read.scenario.outage.starts);
        if (auto answer = ask_gauge(read, request)) {
            const bool or_more = &step == &told.front() && step.low >= 0.99;
            answers.readings.push_back(
                {(or_more ? "≥ " : "") + *request.reads, std::move(*answer)});
        }
    }
    if (answers.readings.empty()) {
        answers.no_reading = "The voltage tells nothing here.";
    }
}

void add_joins(answers::CardAnswers& answers, const ReadScenario& read) {
    const auto& packs = read.scenario.packs;
    for (std::size_t kind = 0; kind < packs.size(); ++kind) {
        const bool alone_in_the_case = kind == 0 && (packs.size() > 1 || packs[kind].count < 2);
        if (!alone_in_the_case) {
            Request request;
            request.pack = packs[kind].name;
            answers.joins.push_back(ask_join(read, request));
        }
    }
}

units::Result<sizing::Ration> ration_of(const ReadScenario& read, std::uint64_t seed) {
    const auto folder = scenario::folder_of(read.file_name);
    auto ready = outage::make_ready(read.scenario, folder);
    if (!ready) return units::fail(std::move(ready.error()));
    const auto members = sizing::members_of(
        read.scenario, folder, std::make_shared<const outage::Ready>(std::move(*ready)), seed);
    return sizing::ration(members, sizing::goal_of(read.scenario));
}

}  // namespace

answers::CardAnswers card_answers(const ReadScenario& written, std::uint64_t seed) {
    ReadScenario read = written;
    scenario::set_aside(read.scenario);
    Request request;
    request.seed = seed;
    answers::CardAnswers answers{.outage = ask_outage(read, request),
                                 .ration = ration_of(read, seed),
                                 .wiring = ask_wiring(read, request),
                                 .storage = ask_storage(read, request)};
    add_readings(answers, read);
    add_joins(answers, read);
    return answers;
}

std::string name_and_version() {
    return fmt::format("Candlemark {}", version);
}

}  // namespace command_line
