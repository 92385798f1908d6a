#include "command_line/read_request.hpp"

namespace command_line {

using scenario::ReadScenario;
using units::Result;

Result<scenario::Overrides> overrides_of(const std::vector<std::string>& set) {
    scenario::Overrides overrides;
    units::Errors errors;
    for (const auto& text : set) {
        if (auto override = scenario::read_override(text)) {
            overrides.push_back(std::move(*override));
        } else {
            errors.insert(errors.end(), override.error().begin(), override.error().end());
        }
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return overrides;
}

Result<ReadScenario> read_request(const Request& request, const Surroundings& around) {
    auto overrides = overrides_of(request.set);
    if (!overrides) {
        return units::fail(std::move(overrides.error()));
    }
    if (request.file == "-") {
        auto bytes = around.standard_input();
        if (!bytes) {
            return units::fail(std::move(bytes.error()));
        }
        return scenario::read_scenario(*bytes, "standard input", std::move(*overrides));
    }
    return scenario::read_scenario_file(request.file, std::move(*overrides));
}

}  // namespace command_line
