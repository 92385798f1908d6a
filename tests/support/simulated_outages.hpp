// Outages that might be: a truth is drawn from what the plan does not know, and what a person would
// read of it is written down, as real meters show it.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "estimate/lives.hpp"
#include "estimate/outlook.hpp"
#include "outage/ready.hpp"
#include "scenario/scenario.hpp"
#include "sizing/members_of.hpp"
#include "units/quantities.hpp"

namespace simulated {

// What is read: at so many of a person's hours how full the packs are (lithium by its display, lead
// by a voltmeter under 5 A), and at the last of them so many plug-in meters, which were there from
// the start, on the loads that want most. With `sun` what the controller counted is written down
// beside each charge.
struct Readings {
    int charges = 0;
    int meters = 0;
    bool sun = false;
};

// What an estimate said of one outage, against how it was.
//   counts     it had not ended by the last reading
//   inside     between what nine in ten and what one in ten outlast
//   even       the same where a truth that lasts to the end stands anywhere in what lasts so long
//   width      four times in five, of what is left
//   effective  members of equal weight
//   named      surely or probably
//   wrongly    of these: it was not on the side that was named
//   against    a contradiction was told, though each reading was a true one
struct Said {
    bool counts = false;
    bool inside = false;
    bool even = false;
    units::Duration width{};
    double effective = 0.0;
    int named = 0;
    int wrongly = 0;
    bool against = false;
    std::string words;  // of what was named wrongly
};

inline constexpr std::uint64_t first_seed = 20261129;

class Outages {
  public:
    //   scenario   without a log
    //   count      of outages, from 0
    //   seed       of the truths and of the meters
    Outages(scenario::Scenario scenario, std::string folder, int count,
            std::uint64_t seed = first_seed);

    // Of one outage, with these readings.
    [[nodiscard]] Said said(int number, const Readings& readings) const;

    // The log that a person would write of it up to the last reading, and when that is.
    [[nodiscard]] scenario::Scenario with_log(int number, const Readings& readings,
                                              units::Duration& now) const;

  private:
    scenario::Scenario scenario_;
    std::string folder_;
    std::uint64_t seed_;
    std::shared_ptr<const outage::Ready> ready_;
    chance::Members truths_;
    estimate::Lives lives_;
    std::vector<std::size_t> metered_;  // loads, those that want most first

    [[nodiscard]] double score(int number, const std::string& name) const;
    [[nodiscard]] std::vector<units::Duration> hours_of(int number, int readings) const;
    [[nodiscard]] double of_the_plan(int number, std::size_t load, units::Duration until) const;
    [[nodiscard]] double toward(int number, const estimate::Departure& told,
                                units::Duration now) const;
};

}  // namespace simulated
