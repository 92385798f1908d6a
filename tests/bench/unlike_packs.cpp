// What an outage costs whose packs all differ, over one of as many alike packs: both in one run.
#include <algorithm>
#include <cstdio>
#include <ctime>
#include <stdexcept>
#include <string>

#include <fmt/format.h>

#include "outage/ready.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

outage::Ready ready_with(int packs, bool alike, double days) {
    std::string text;
    {
        const auto read = scenario::read_scenario_file(std::string(CANDLEMARK_SCENARIO), {});
        if (!read) throw std::runtime_error(std::string(read.error().front().found));
        text = read->text;
    }
    auto read = scenario::read_scenario(text, "bench", {});
    auto scenario = read->scenario;
    scenario.outage.lasts = days * day;
    auto first = scenario.packs.front();
    scenario.packs.clear();
    for (int i = 0; i < packs; ++i) {
        auto pack = first;
        pack.name = fmt::format("pack {}", i);
        pack.count = 1;
        if (!alike) {  // 70 to 130 Ah, 85 to 100 % full, leads of 2 to 6 mohm
            pack.capacity = (70.0 + 4.0 * i) * ampere_hour;
            pack.charge = StateOfCharge(0.85 + 0.01 * i);
            pack.lead_resistance = (0.002 + 0.00025 * ((5 * i) % 16)) * ohm;
        }
        scenario.packs.push_back(pack);
    }
    const auto ready = outage::make_ready(scenario);
    if (!ready) throw std::runtime_error(std::string(ready.error().front().found));
    return *ready;
}

double seconds_of(const outage::Ready& ready, bool trace) {
    // of this program alone: what else the machine does takes turns with it
    const auto now = [] { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; };
    double best = 1e9;
    for (int attempt = 0; attempt < 5; ++attempt) {
        const double start = now();
        double sum = 0.0;
        constexpr int runs = 8;
        for (int i = 0; i < runs; ++i)
            sum += outage::run(ready, outage::End::likely, {.trace = trace}).lasts / hour;
        if (sum > 0.0) best = std::min(best, (now() - start) / runs);
    }
    return best;
}

}  // namespace

int main() {
    for (const double days : {4.0, 30.0}) {
        const auto like = ready_with(16, true, days);
        for (const int packs : {2, 4, 8, 16}) {
            const auto unlike = ready_with(packs, false, days);
            for (const bool trace : {false, true}) {
                const double one = seconds_of(like, trace);
                const double other = seconds_of(unlike, trace);
                std::printf(
                    "%2.0f days, %2d unlike packs over 16 alike%s: %.2f times (%.0f us over "
                    "%.0f us)\n",
                    days, packs, trace ? ", with the trace" : "", other / one, 1e6 * other,
                    1e6 * one);
            }
        }
    }
}
