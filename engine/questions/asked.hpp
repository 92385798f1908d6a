// What can be asked of a scenario: one small struct a question, and nothing in it that has yet to be
// read.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <variant>

#include "scenario/file/read.hpp"
#include "scenario/log.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"

namespace questions {

// How it is worked out; of any question.
//   seed      of the chance
//   threads   0 takes as many as the machine has; the answer is the same for any number
//   progress  told the share done, where the question tells it; false stops the work
struct How {
    std::uint64_t seed = 1;
    unsigned threads = 0;
    std::function<bool(double)> progress = {};
};

struct ReadAsked {};

//   members        of the chance, at least; absent: as many as is usual; 0: no chance is told
//   after_storage  starts with the charge that storage leaves in the packs
//   more_packs     whether it is told what more packs would do, which takes longest
struct OutageAsked {
    std::optional<int> members = {};
    bool after_storage = false;
    bool more_packs = true;
};

// Looks at builds of up to so many packs and panels; absent: as many as is usual, or fewer where
// nobody knows how long the outage lasts and that takes too long.
struct PacksAsked {
    std::optional<int> members = {};
    std::optional<int> most_packs = {};
    std::optional<int> most_panels = {};
};

inline constexpr int usual_sun_weathers = 2000;

//   weathers     drawn where no unit can be planned
//   most_panels  absent: four more than there are, at least six
//   with_counts  false leaves out the counts of panels, which take longest
struct SunAsked {
    int weathers = usual_sun_weathers;
    std::optional<int> members = {};
    std::optional<int> most_panels = {};
    bool with_counts = true;
};

struct StartAsked {};

struct WiringAsked {};

//   with   the new build
struct CompareAsked {
    scenario::ReadScenario with;
};

//   pack      that is plugged in; absent: the last one
//   at_most   not to be exceeded, beside the limits of the file
struct JoinAsked {
    std::optional<std::string> pack = {};
    std::optional<units::Current> at_most = {};
};

// What a voltmeter shows.
//   accuracy   how far the meter may be off either way, beside half its last digit; absent: 0.5 %
//   under      drawn from the packs meanwhile; absent: nothing
//   rested     since it was last charged or used
//   pack       that was read; absent: all, joined
//   now        when it was read: the rest of the outage is planned from there
struct GaugeAsked {
    scenario::VoltageShown reads;
    std::optional<units::Voltage> accuracy = {};
    std::optional<scenario::DrawnMeanwhile> under = {};
    std::optional<units::Duration> rested = {};
    std::optional<std::string> pack = {};
    std::optional<units::LocalTime> now = {};
};

//   on   the day that is looked at; absent: that on which the outage starts
struct StorageAsked {
    std::optional<units::LocalTime> on = {};
};

//   at    within the outage; entries after it do not count yet
//   fan   whether what is stored over the whole outage is told, for a picture of it
struct NowAsked {
    units::LocalTime at;
    bool fan = false;
};

struct LearntAsked {};

using Asked =
    std::variant<ReadAsked, OutageAsked, PacksAsked, SunAsked, StartAsked, WiringAsked,
                 CompareAsked, JoinAsked, GaugeAsked, StorageAsked, NowAsked, LearntAsked>;

}  // namespace questions
