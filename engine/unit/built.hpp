// The one built unit that every question reckons with: packs behind their leads on one bus, the
// inverter behind the main path, and where each value comes from. method.md
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "battery/pack_model.hpp"
#include "inverter/model.hpp"
#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "unit/path.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
#include "wiring/network.hpp"

namespace unit {

// How warm packs are from a moment on.
struct TemperatureFrom {
    units::Duration from{};
    units::Temperature temperature;
};

//   packs   of the models, and the mean of `days` where there are any
//   days    in order, the first from 0; empty where the packs keep one temperature
struct Warmth {
    units::Temperature packs;
    std::vector<TemperatureFrom> days = {};
};

// At the file's battery temperature, or at 20 degC; the question tells the latter as an assumption.
[[nodiscard]] Warmth usual_warmth(const scenario::Scenario& scenario);

// The same kind at the temperature of a day.
struct ModelOfDay {
    units::Duration from{};
    std::shared_ptr<const battery::PackModel> model;
};

// One [[pack]] of the file. All values are of one pack.
//   index   in scenario.packs
//   model   its lead is that of `lead`
//   inner   rested voltage to terminals, as the model has it
//   current_limit_from, charge_limit_from   who says what its protection and its charging bear
//   taken   what the model had to take for silent keys
struct Packs {
    std::size_t index = 0;
    std::string name;
    std::string where;  // "pack[0]"
    int count = 1;
    std::shared_ptr<const battery::PackModel> model;
    std::vector<ModelOfDay> days;
    Path lead;
    Known<units::Resistance> inner;
    Origin current_limit_from = Origin::chemistry;
    Origin charge_limit_from = Origin::chemistry;
    scenario::Assumptions taken;

    // From its rested voltage to the bus.
    [[nodiscard]] units::Resistance path() const { return model->inner + lead.resistance.value; }
    // At rest, as the file says it begins.
    [[nodiscard]] units::Voltage rested() const;
    // The same at no more than this charge.
    [[nodiscard]] units::Voltage rested_at_most(units::StateOfCharge charge) const;
    [[nodiscard]] units::Voltage rested_full() const;
};

// A circuit from the bus to 12 V loads.
//   feeds   all that its current flows to, over the circuits that begin at its end too
struct Branch {
    std::size_t circuit = 0;  // in scenario.circuits
    std::string name;
    std::vector<std::string> feeds;
    units::Resistance resistance{};  // of this circuit alone
    std::optional<Guard> fuse = {};  // likewise
};

// How warm it is around the parts.
//   inside   taken for all derating
//   shut     reached inside a shut case at full power; absent where its surface is not known
//   shed     what a shut case sheds within 20 K
struct Surroundings {
    units::Temperature inside{};
    std::optional<units::Temperature> shut;
    std::optional<units::Power> shed;
    scenario::Assumptions assumptions;
};

//   packs        in the order of the file; a count may be 0
//   inverter     absent without one, and where its keys cannot be used: see inverter_refused
//   main         bus to inverter; nothing in it without an inverter
//   conductors   warmth that all wires are reckoned at
//   findings     where key and circuit say different things
struct Unit {
    std::vector<Packs> packs;
    std::optional<inverter::Model> inverter;
    units::Errors inverter_refused;
    Path main;
    std::vector<Branch> branches;
    units::Temperature conductors{};
    Surroundings surroundings;
    scenario::Assumptions of_inverter;
    scenario::Findings findings;

    [[nodiscard]] int count() const;
    // Of the first pack that is there; 12.8 V without any.
    [[nodiscard]] units::Voltage nominal() const;
};

//   fails    with every reason why a pack cannot be, each at its key; no pack at all is no error
[[nodiscard]] units::Result<Unit> built(const scenario::Scenario& scenario, const Warmth& warmth);

// What was taken for the packs this chooses, each thing once for all packs it holds for, and the
// warmth of the wires where a circuit describes a way.
//   chosen   absent: all with a count above 0
[[nodiscard]] scenario::Assumptions assumptions_of(const Unit& unit,
                                                   const std::vector<std::size_t>& chosen = {});

// Each thing that was taken, once for all packs it holds for.
//   of_each   for each pack asked about
[[nodiscard]] scenario::Assumptions told_once(const std::vector<scenario::Assumptions>& of_each);

// Why two packs cannot share a bus: other chemistry, other number of cells. Each at its key.
[[nodiscard]] units::Errors strangers_on(const Unit& unit);

// All packs, each behind its path, and the inverter behind the main one. Packs are half full, or
// as empty as the file says.
[[nodiscard]] wiring::Feed feed_of(const Unit& unit, units::Power drawn, units::Current branches);

// Drawn by the inverter at its terminals for so much at its outlets.
[[nodiscard]] units::Power direct_power(const inverter::Model& inverter, units::Power real);

}  // namespace unit
