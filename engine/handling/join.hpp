// "May I plug this pack onto that unit now?" What flows when it is plugged in, and what forbids it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
#include "words/said.hpp"

namespace handling {

// What still flows when packs that were joined have settled; common practice, no source.
inline constexpr units::Current settled = 1.0 * units::ampere;

enum class Joins { pack_charges_unit, unit_charges_pack, level };

// One moment after plugging in.
struct AfterJoining {
    units::Duration at{};
    units::Current current{};  // out of the joining pack
    units::Voltage bus{};
};

//   pack               its name
//   onto               in words: "main", "main and 2 more of its kind"
//   pack_voltage, unit_voltage   at rest, before they meet
//   path               from the rested voltage of the pack to that of the unit
//   current            out of the joining pack at the first moment; negative into it
//   weakest            what bears least of that current, and how much: "the fuse of pack main";
//                      nothing where no limit is known
//   largest_difference between the two voltages that keeps every current within its limit; nothing
//                      where no limit is known, zero where a pack is too cold to be charged at all
//   known              a voltage or charge of every pack is given; where it is not, nothing is
//                      allowed, and what would flow cannot be told
//   settles_in         until less than `settled` flows; nothing when it does not within two days
//   moved              charge out of the joining pack until then, negative into it
struct Joining {
    std::string pack;
    words::Said onto;
    int in_parallel = 0;
    units::Voltage pack_voltage{};
    units::Voltage unit_voltage{};
    units::StateOfCharge pack_charge;
    units::StateOfCharge unit_charge;
    units::Resistance path{};
    bool resistance_assumed = false;
    units::Current current{};
    Joins direction = Joins::level;
    words::Said weakest;
    std::optional<units::Current> weakest_limit;
    std::optional<units::Voltage> largest_difference;
    std::optional<units::Duration> settles_in;
    units::Charge moved{};
    std::vector<AfterJoining> course;
    bool known = true;
    bool allowed = true;
    units::Temperature temperature{};
    scenario::Findings findings;
    scenario::Assumptions assumptions;
};

// What is to be joined.
//   pack      its name; absent: the last pack of the file
//   at_most   a current not to be exceeded, beside the limits of the file
struct JoinAsked {
    std::optional<std::string> pack = {};
    std::optional<units::Current> at_most = {};
};

//   fails    when there is nothing to join, or no pack of that name, or a pack that cannot be
//   source   battery/method.md (37) to (39)
[[nodiscard]] units::Result<Joining> join(const scenario::Scenario& scenario,
                                          const JoinAsked& asked = {});

}  // namespace handling
