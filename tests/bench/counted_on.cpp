// How many of 10,000 outages end before the time that is counted on nine times in ten, their truths
// drawn of the plan's own spreads by another seed: counted_on [OUTAGES [SEED]]. Each shipped scenario
// with its own length and three times that, since some of them outlast their own. chance/method.md
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <memory>
#include <string>

#include <fmt/format.h>

#include "scenario/file/file.hpp"
#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;

void row(const std::string& name, const scenario::Scenario& scenario, const std::string& folder,
         int outages, std::uint64_t seed) {
    auto made = outage::make_ready(scenario, folder);
    if (!made) return;
    const auto ready = std::make_shared<const outage::Ready>(std::move(*made));
    const auto ends_of = [&](const chance::Members& members) {
        return members.ends(chance::as_it_is(members.world()));
    };
    const auto truths = ends_of(sizing::members_of(scenario, folder, ready, seed, outages));
    for (const int wanted : {0, 1024}) {
        const auto members = sizing::members_of(
            scenario, folder, ready, 1, wanted > 0 ? std::optional<int>(wanted) : std::nullopt);
        const auto told = members.figures(ends_of(members), Probability(0.9));
        int before = 0;
        for (const auto& end : truths)
            before += !end.survives && end.lasts < told.nine_in_ten;
        fmt::print("{:<24} {:5.1f} h  {:5} members  counted on {:6.1f} h  before {:5.2f} %\n", name,
                   scenario.outage.lasts / hour, members.count(), told.nine_in_ten / hour,
                   100.0 * before / double(truths.size()));
    }
}

}  // namespace

int main(int argc, char** argv) {
    const int outages = argc > 1 ? std::atoi(argv[1]) : 10000;
    const std::uint64_t seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 20261201;
    const std::filesystem::path folder = CANDLEMARK_SCENARIOS;
    for (const char* name : {"ice_storm", "summer_storm", "breathing_at_night",
                             "precautionary_shutoff", "saw_and_pump"}) {
        const auto file = (folder / (std::string(name) + ".toml")).string();
        auto read = scenario::read_scenario_file(file);
        if (!read) return 1;
        row(name, read->scenario, scenario::folder_of(file), outages, seed);
        read->scenario.outage.lasts *= 3.0;
        row(name, read->scenario, scenario::folder_of(file), outages, seed);
    }
}
