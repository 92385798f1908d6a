#include "models/fields/new_load.hpp"

#include <vector>

#include "scenario/file/document.hpp"
#include "scenario/file/print.hpp"
#include "scenario/file/save.hpp"

namespace touch {

scenario::Load load_like(const motor::Appliance& appliance) {
    scenario::Load load{.name = appliance.name,
                        .from = appliance.from,
                        .draw = scenario::StatedPower{.power = appliance.run.likely()}};
    const bool cycles = appliance.duty && appliance.every && appliance.duty->likely().value() < 1.0;
    if (cycles) {
        load.runs =
            scenario::DutyCycle{.on = appliance.duty->likely().value() * appliance.every->likely(),
                                .every = appliance.every->likely()};
    }
    load.priority = appliance.medical ? 1 : 3;
    load.evidence = scenario::Evidence::guess;
    load.power_factor = appliance.power_factor;
    if (appliance.medical) load.medical = true;
    load.like = appliance.name;
    load.motor = appliance.motor;
    return load;
}

units::Result<std::string> with_load(const std::string& text, const scenario::Load& load) {
    scenario::Scenario alone;
    alone.loads = {load};
    const std::string printed = scenario::print(alone);
    const auto document = scenario::read_document(printed, std::string());
    if (!document) return units::fail(document.error());
    const scenario::Node* loads = document->find("load");
    std::vector<scenario::KeyValue> values;
    for (const scenario::Entry& entry : loads->items.front().entries) {
        values.emplace_back(entry.key,
                            printed.substr(entry.value.begin, entry.value.end - entry.value.begin));
    }
    return scenario::with_table(text, "load", values);
}

}  // namespace touch
