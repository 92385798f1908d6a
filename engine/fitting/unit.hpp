// The built unit as the checks of a build look at it: the packs that are there, each with its lead.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "battery/pack_model.hpp"
#include "fitting/wiring.hpp"
#include "inverter/model.hpp"
#include "scenario/scenario.hpp"
#include "unit/built.hpp"
#include "unit/limits.hpp"

namespace fitting {

// One kind of pack and its path to the bus.
//   fuse     by the pack's own key
//   gives, takes   what one of them and its lead bear
//   flow     its inside with its path, by which it shares
struct PackKind {
    std::size_t index = 0;  // in scenario.packs
    int count = 0;
    battery::PackModel model;
    units::Voltage emf{};      // rested, at its charge
    units::Voltage full{};     // rested, full
    units::Resistance bare{};  // its inside as stated, or as usual when new: what feeds a short
    const scenario::Circuit* lead = nullptr;
    units::Resistance path{};  // of its lead, from the circuit or the pack's own key
    units::Resistance flow{};
    std::optional<units::Current> fuse;
    unit::Limits gives;
    unit::Limits takes;
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
    scenario::Findings differs;  // where key and circuit say different things
};

// Inside of a new pack of this make, where the file gives none.
[[nodiscard]] units::Resistance usual_inside(const scenario::Pack& pack);

[[nodiscard]] units::Result<BuildUnit> build_unit(const scenario::Scenario& scenario,
                                                  scenario::Assumptions& assumptions);

using unit::conductor_temperature;
using unit::direct_power;
using unit::joints_of;
using unit::kept_by;
using unit::role_of;
using unit::runs_of;

// All packs, each behind its path, and the inverter behind the main one.
[[nodiscard]] wiring::Feed feed_of(const BuildUnit& unit, units::Power drawn,
                                   units::Current branches);

// With its wires as warm as in every question, in a case this warm.
[[nodiscard]] units::Resistance resistance_of(const scenario::Circuit& circuit,
                                              units::Temperature inside);

}  // namespace fitting
