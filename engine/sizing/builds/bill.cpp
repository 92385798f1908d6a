#include "sizing/builds/bill.hpp"

#include <algorithm>
#include <cassert>

namespace sizing {

namespace {

using namespace units;

// What is carried, one entry each; nothing where the weight of one is not known.
using Weights = std::optional<std::vector<Mass>>;

void add(Weights& weights, std::optional<Mass> weight, int count) {
    if (count < 1 || !weights) return;
    if (!weight)
        weights.reset();
    else
        weights->insert(weights->end(), std::size_t(count), *weight);
}

void add(std::optional<Price>& price, std::optional<Price> one, int count) {
    if (count < 1 || !price) return;
    price = one ? std::optional(*price + double(count) * *one) : std::nullopt;
}

// Heaviest first, each into the first walk that still has room: at most 11/9 of the fewest walks
// and two thirds of one more; [Dosa 2007]. Nothing when one thing alone is too heavy.
std::optional<int> walks(std::vector<Mass> weights, Mass at_most) {
    std::sort(weights.begin(), weights.end(), [](Mass a, Mass b) { return a > b; });
    std::vector<Mass> loads;
    for (const Mass& weight : weights) {
        if (weight > at_most) return std::nullopt;
        const auto room = std::find_if(loads.begin(), loads.end(),
                                       [&](Mass load) { return load + weight <= at_most; });
        if (room == loads.end())
            loads.push_back(weight);
        else
            *room += weight;
    }
    return static_cast<int>(loads.size());
}

// How many of each entry, as outage::with_panels counts them.
std::vector<int> panel_counts(const scenario::Scenario& scenario, int panels) {
    std::vector<int> counts;
    for (const auto& panel : scenario.panels) {
        counts.push_back(std::min(panel.count, panels));
        panels -= counts.back();
    }
    if (!counts.empty()) counts.front() += panels;
    return counts;
}

}  // namespace

const scenario::Pack& pack_entry(const scenario::Scenario& scenario, int number) {
    assert(!scenario.packs.empty() && number >= 1);
    int seen = 0;
    for (const auto& pack : scenario.packs) {
        seen += pack.count;
        if (number <= seen) return pack;
    }
    return scenario.packs.back();
}

Bill bill(const scenario::Scenario& scenario, int packs, int panels) {
    Weights weights{std::vector<Mass>{}};
    std::optional<Price> price{Price(0.0)};
    for (int number = 1; number <= packs; ++number) {
        const auto& pack = pack_entry(scenario, number);
        add(weights, pack.weight, 1);
        add(price, pack.price, 1);
    }
    const auto counts = panel_counts(scenario, panels);
    for (std::size_t entry = 0; entry < scenario.panels.size(); ++entry) {
        const int count = counts[entry];
        add(weights, scenario.panels[entry].weight, count);
        add(price, scenario.panels[entry].price, count);
    }
    Bill made{.price = price};
    if (!weights) return made;
    made.weight = Mass{};
    for (const Mass& weight : *weights)
        *made.weight += weight;
    if (scenario.goal && scenario.goal->carry_at_most)
        made.trips = walks(std::move(*weights), *scenario.goal->carry_at_most);
    return made;
}

bool something_is_too_heavy(const scenario::Scenario& scenario) {
    if (!scenario.goal || !scenario.goal->carry_at_most) return false;
    const Mass at_most = *scenario.goal->carry_at_most;
    const auto heavy = [&](const auto& part) { return part.weight && *part.weight > at_most; };
    return std::ranges::any_of(scenario.packs, heavy) ||
           std::ranges::any_of(scenario.panels, heavy);
}

}  // namespace sizing
