#include "questions/card.hpp"

#include <cmath>
#include <memory>

#include "outage/ready.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/set_aside.hpp"
#include "sizing/builds/builds.hpp"
#include "sizing/members_of.hpp"

namespace questions {

namespace {

using scenario::ReadScenario;

// One reading that a voltmeter of one decimal can show, and the charge it leaves possible.
struct Step {
    int tenths = 0;  // of a volt
    double low = 0.0;
    double high = 0.0;
};

units::Voltage in_tenths(int tenths) {
    return tenths / 10.0 * units::volt;
}

// Half the last digit, and 0.5 % of the reading; common practice, no source.
units::Voltage error_of(units::Voltage reads) {
    return 0.05 * units::volt + 0.005 * reads;
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
        const units::Voltage reads = in_tenths(tenths);
        const auto told =
            handling::gauge(read.scenario, {.reads = reads, .error = error_of(reads)});
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

void add_readings(CardFound& card, const ReadScenario& read, const How& how) {
    const auto scale = between_the_ends(scale_of(read, card.unreadable));
    if (scale.empty()) return;
    std::vector<Step> told;
    for (double apart = 0.1; told.empty() || told.size() > readings_on_a_card; apart += 0.05)
        told = worth_telling(scale, apart);
    for (const Step& step : told) {
        const units::Voltage reads = in_tenths(step.tenths);
        auto found = find(read,
                          GaugeAsked{.reads = {.volts = reads, .decimals = 1},
                                     .now = read.scenario.outage.starts},
                          how);
        if (found)
            card.readings.push_back(
                {reads, &step == &told.front() && step.low >= 0.99, std::move(*found)});
        else
            card.unreadable = found.error();
    }
}

void add_joins(CardFound& card, const ReadScenario& read, const How& how) {
    const auto& packs = read.scenario.packs;
    for (std::size_t kind = 0; kind < packs.size(); ++kind) {
        const bool alone_in_the_case = kind == 0 && (packs.size() > 1 || packs[kind].count < 2);
        if (!alone_in_the_case)
            card.joins.push_back(find(read, JoinAsked{.pack = packs[kind].name}, how));
    }
}

units::Result<sizing::Ration> ration_of(const ReadScenario& read, const How& how) {
    const auto folder = scenario::folder_of(read.file_name);
    auto ready = outage::make_ready(read.scenario, folder);
    if (!ready) return units::fail(std::move(ready.error()));
    const auto members = sizing::members_of(
        read.scenario, folder, std::make_shared<const outage::Ready>(std::move(*ready)), how.seed);
    return sizing::ration(members, sizing::goal_of(read.scenario));
}

}  // namespace

CardFound find_for_card(const ReadScenario& written, const How& how) {
    ReadScenario read = written;
    scenario::set_aside(read.scenario);
    CardFound card{.outage = find(read, OutageAsked{}, how),
                   .ration = ration_of(read, how),
                   .wiring = find(read, WiringAsked{}, how),
                   .storage = find(read, StorageAsked{}, how)};
    add_readings(card, read, how);
    add_joins(card, read, how);
    return card;
}

}  // namespace questions
