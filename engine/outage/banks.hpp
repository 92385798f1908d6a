// The packs of a scenario as banks: alike ones under any number of names are one.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "battery/pack_model.hpp"
#include "outage/unit.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "units/result.hpp"

namespace outage {

// The same kind at the temperature of a day.
struct KindOfDay {
    units::Duration from{};
    std::shared_ptr<const battery::PackModel> model;
};

// One kind of pack. `count` may be 0: a kind that could be added.
//   days   where the packs follow the room: in order, the first from 0; else empty
struct PackKind {
    std::shared_ptr<const battery::PackModel> model;
    std::vector<KindOfDay> days = {};
    int count = 0;
    std::optional<units::Current> fuse;
    wiring::Envelope fuse_opens = {};
    std::string name;  // of the first [[pack]] of its kind
};
using PackKinds = std::vector<PackKind>;

// How warm packs are from a moment on.
struct TemperatureFrom {
    units::Duration from{};
    units::Temperature temperature;
};

// In the order of the file, the first with a count above 0; the last is the kind that more packs
// are of. Adds to errors where a pack cannot be, or may not be on the bus of the first: another
// chemistry, another number of cells.
//   temperature  of the models, and the mean of `days` where there are any
[[nodiscard]] PackKinds kinds_of(const scenario::Scenario& scenario, units::Temperature temperature,
                                 const std::vector<TemperatureFrom>& days,
                                 scenario::Assumptions& assumptions, units::Errors& errors);

[[nodiscard]] int count_of(const PackKinds& kinds);

// The banks of a unit: the kinds must outlive it.
//   shared   carries the current of all packs
[[nodiscard]] Unit unit_of(const PackKinds& kinds, units::Resistance shared);

// The same kinds with so many packs together, at least one: more are of the last kind, fewer are
// taken from the last first.
[[nodiscard]] PackKinds with_count(PackKinds kinds, int packs);

// What flows between packs that differ when they are joined as they are.
[[nodiscard]] scenario::Findings joining_findings(const Unit& unit);

}  // namespace outage
