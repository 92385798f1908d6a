// What all checks of a build share: its packs, its inverter, and how warm it is inside.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "battery/pack_model.hpp"
#include "checks/wiring.hpp"
#include "inverter/model.hpp"
#include "scenario/scenario.hpp"

namespace checks {

// One kind of pack and its path to the bus.
struct PackKind {
    std::size_t index = 0;  // in scenario.packs
    int count = 0;
    battery::PackModel model;
    units::Voltage emf{};                     // rested, at its charge
    units::Voltage full{};                    // rested, full
    std::optional<units::Resistance> stated;  // its inside, as the file gives it
    const scenario::Circuit* lead = nullptr;
    units::Resistance path{};  // of its lead, from the circuit or the pack's own key
    std::optional<units::Current> fuse;
};

struct BuildUnit {
    std::vector<PackKind> packs;  // those with a count above 0
    int count = 0;
    std::optional<inverter::Model> inverter;
    units::Voltage nominal{};
    units::Voltage top{};
    units::Resistance main_path{};  // bus to inverter
    units::Temperature inside{};
    std::optional<units::Temperature> shut;
    std::optional<units::Power> shed;
};

[[nodiscard]] units::Result<BuildUnit> build_unit(const scenario::Scenario& scenario,
                                                  scenario::Assumptions& assumptions);

[[nodiscard]] Role role_of(const scenario::Scenario& scenario, const scenario::Circuit& circuit);

// The circuit of this role that feeds this name; null where there is none.
[[nodiscard]] const scenario::Circuit* circuit_feeding(const scenario::Scenario& scenario,
                                                       std::string_view name);

// Drawn by the inverter at its terminals for so much at its outlets.
[[nodiscard]] units::Power direct_power(const inverter::Model& inverter, units::Power real);

// All packs, each behind its path, and the inverter behind the main one.
[[nodiscard]] wiring::Feed feed_of(const BuildUnit& unit, units::Power drawn,
                                   units::Current branches);

// The most cables that lie in parallel anywhere in it; each has its own fuse.
[[nodiscard]] double runs_of(const scenario::Circuit& circuit);

// Lugs and bolts of a circuit, both conductors; 0.05 mohm for each of four lugs a wire.
[[nodiscard]] units::Resistance joints_of(const scenario::Circuit& circuit);
[[nodiscard]] units::Resistance resistance_of(const scenario::Circuit& circuit,
                                              units::Temperature inside);

// Conductors are reckoned at 75 degC, or as warm as the case where that is warmer.
[[nodiscard]] units::Temperature conductor_temperature(units::Temperature inside);

}  // namespace checks
