#include "scenario/file/set_aside.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace scenario {

bool has_set_aside(const Scenario& scenario) {
    return std::ranges::any_of(scenario.loads, [](const Load& load) {
        return load.count < 1 || load.from == Outlet::generator;
    });
}

void set_aside(Scenario& scenario) {
    std::vector<Load> fed;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        Load& load = scenario.loads[i];
        if (load.count < 1) continue;
        load.written_as = load.written_as.value_or(i);
        auto& to = load.from == Outlet::generator ? scenario.on_generator : fed;
        to.push_back(std::move(load));
    }
    scenario.loads = std::move(fed);
}

std::string key_of(const Load& load, std::size_t index) {
    return fmt::format("load[{}]", load.written_as.value_or(index));
}

}  // namespace scenario
