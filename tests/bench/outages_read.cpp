// How often what is told of the end holds, and what is named wrongly, over simulated outages of the
// shipped scenarios: outages_read [OUTAGES EACH [SCENARIO [SEED]]]. Of any file, the log that a person would
// write of one of its outages: outages_read --log FILE NUMBER CHARGES METERS. What is said after the
// last entry of such a file, how many members count and what it costs: outages_read --now FILE.
#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "outage/in_threads.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/read.hpp"
#include "support/simulated_outages.hpp"

namespace {

constexpr simulated::Readings sets[] = {{0, 0}, {1, 0}, {3, 0}, {3, 2}};

double median(std::vector<double> of) {
    if (of.empty()) return 0.0;
    std::ranges::sort(of);
    return of[of.size() / 2];
}

void row(const std::string& name, const simulated::Outages& outages, int count,
         const simulated::Readings& readings) {
    std::vector<simulated::Said> all(static_cast<std::size_t>(count));
    outage::for_each_number(
        count, 0, [&](int number) { all[std::size_t(number)] = outages.said(number, readings); });
    int counted = 0;
    int inside = 0;
    int even = 0;
    int named = 0;
    int wrongly = 0;
    int against = 0;
    std::vector<double> widths;
    std::vector<double> effective;
    std::string words;
    for (const auto& one : all) {
        if (!one.counts) continue;
        ++counted;
        inside += one.inside;
        even += one.even;
        named += one.named > 0;
        wrongly += one.wrongly > 0;
        against += one.against;
        widths.push_back(one.width / units::hour);
        effective.push_back(one.effective);
        words += one.words;
    }
    std::ranges::sort(effective);
    const double tenth = effective.empty() ? 0.0 : effective[effective.size() / 10];
    fmt::print(
        "{:<24} {} charges {} meters: {:4} inside {:5.1f} % even {:5.1f} %  width {:6.2f} h  "
        "members {:5.0f} (tenth {:4.0f})  named {:3} wrongly {:2} against {:2} {}\n",
        name, readings.charges, readings.meters, counted, 100.0 * inside / std::max(1, counted),
        100.0 * even / std::max(1, counted), median(widths), median(effective), tenth, named,
        wrongly, against, words);
    std::fflush(stdout);
}

int write_log(char** given) {
    const auto read = scenario::read_scenario_file(given[0]);
    if (!read) return 1;
    const int number = std::atoi(given[1]);
    const simulated::Outages outages(read->scenario, scenario::folder_of(given[0]), number + 1);
    units::Duration now{};
    const auto made = outages.with_log(
        number, {.charges = std::atoi(given[2]), .meters = std::atoi(given[3]), .sun = true}, now);
    for (const auto& entry : made.log)
        fmt::print("{}\n", scenario::print(entry));
    return 0;
}

int say(const char* file) {
    const auto read = scenario::read_scenario_file(file);
    if (!read || read->scenario.log.empty()) return 1;
    const auto& scenario = read->scenario;
    const auto folder = scenario::folder_of(file);
    const auto last = scenario.log[scenario::standing(scenario.log).back()].at;
    const std::clock_t before = std::clock();
    auto ready = outage::make_ready(scenario, folder);
    if (!ready) return 1;
    const auto found = estimate::outlook_of(
        scenario, folder, std::make_shared<const outage::Ready>(std::move(*ready)), {.now = last});
    if (!found) return 1;
    fmt::print(
        "{:.0f} of {} members count, {:.2f} h wide, {:.2f} h from now, contradiction {}, "
        "{:.2f} s of processor time\n",
        found->figures.effective, found->figures.members, found->width / units::hour,
        found->figures.half / units::hour, found->contradiction.has_value(),
        double(std::clock() - before) / CLOCKS_PER_SEC);
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc == 6 && std::string(argv[1]) == "--log") return write_log(argv + 2);
    if (argc == 3 && std::string(argv[1]) == "--now") return say(argv[2]);
    const int count = argc > 1 ? std::atoi(argv[1]) : 200;
    const std::string only = argc > 2 ? argv[2] : "";
    const std::uint64_t seed =
        argc > 3 ? std::strtoull(argv[3], nullptr, 10) : simulated::first_seed;
    const std::filesystem::path folder = CANDLEMARK_SCENARIOS;
    for (const char* name : {"ice_storm", "summer_storm", "breathing_at_night",
                             "precautionary_shutoff", "saw_and_pump"}) {
        if (!only.empty() && only != name) continue;
        const auto file = (folder / (std::string(name) + ".toml")).string();
        const auto read = scenario::read_scenario_file(file);
        if (!read) return 1;
        const simulated::Outages outages(read->scenario, scenario::folder_of(file), count, seed);
        for (const auto& readings : sets)
            row(name, outages, count, readings);
    }
}
