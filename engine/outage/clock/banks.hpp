// The packs of the built unit as banks: alike ones under any number of names are one.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "battery/pack_model.hpp"
#include "outage/unit.hpp"
#include "scenario/finding.hpp"
#include "unit/built.hpp"
#include "unit/limits.hpp"
#include "units/result.hpp"

namespace outage {

// What the lead of one [[pack]] and the pack itself bear.
struct PackLead {
    std::string name;  // of the [[pack]]
    unit::Limits gives;
    unit::Limits takes;
};

// One kind of pack. `count` may be 0: a kind that could be added.
//   days   where the packs follow the room: in order, the first from 0; else empty
//   leads  of each [[pack]] of the kind with a count above 0: what plugs and switches bear does not
//          make a kind, for they open nothing
struct PackKind {
    std::shared_ptr<const battery::PackModel> model;
    std::vector<unit::ModelOfDay> days = {};
    int count = 0;
    std::optional<unit::Guard> fuse;
    std::string name;  // of the first [[pack]] of its kind
    std::vector<PackLead> leads = {};
};
using PackKinds = std::vector<PackKind>;

// In the order of the file, the first with a count above 0; the last is the kind that more packs
// are of. Adds to errors where a pack cannot be, or may not be on the bus of the first: another
// chemistry, another number of cells.
[[nodiscard]] PackKinds kinds_of(const unit::Unit& built, scenario::Assumptions& assumptions,
                                 units::Errors& errors);

[[nodiscard]] int count_of(const PackKinds& kinds);

// The banks of a unit: the kinds must outlive it.
//   main_path   from the bus to the inverter
[[nodiscard]] Unit unit_of(const PackKinds& kinds, units::Resistance main_path);

// The same kinds with so many packs together, at least one: more are of the last kind, fewer are
// taken from the last first.
[[nodiscard]] PackKinds with_count(PackKinds kinds, int packs);

// What flows between packs that differ when they are joined as they are.
[[nodiscard]] scenario::Findings joining_findings(const Unit& unit);

}  // namespace outage
