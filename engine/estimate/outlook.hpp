// Until when from now: what the members say after all that was read, what switching off buys, what
// to read next, and what departs from the plan. method.md (16) to (20)
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "chance/figures.hpp"
#include "estimate/ahead/stored_fan.hpp"
#include "estimate/posterior.hpp"
#include "outage/course.hpp"
#include "outage/ready.hpp"
#include "scenario/scenario.hpp"
#include "units/result.hpp"

namespace estimate {

// A step of switching off from now on, with all steps before it.
//   alone    by this one alone the time that may be counted on grows by
//   figures  from now, with this and those before it
struct OffStep {
    std::size_t load = 0;
    units::Duration alone{};
    chance::Figures figures = {};
};

enum class NextRead { meter, charge, sun };

// How wide the time that it lasts would be, four times in five, after another reading.
//   load    of a meter
struct Narrowing {
    NextRead what{};
    std::size_t load = 0;
    units::Duration width_after{};
};

enum class Sure { perhaps, probably, surely };

// Something that is not as planned.
//   what      as a person would name it: "refrigerator", "the charge of main"
//   low, likely, high   of the plan's value, as four times in five
//   because   places in the log
//   or_else   others that would explain the same readings; then it is never more than perhaps
struct Departure {
    words::Said what;
    double low = 1.0;
    double likely = 1.0;
    double high = 1.0;
    Sure sure = Sure::perhaps;
    std::vector<std::size_t> because;
    std::vector<words::Said> or_else;
};

//   from_now      times after `now`
//   was           the same without the last reading; nothing where there was none
//   limited_by    what ends most of those that end early
//   charge_low … high   of all packs joined, now: as four times in five
//   width         of the time that it lasts, four times in five
//   out_already   share of the members that have failed by now
struct Outlook {
    units::Duration now{};
    units::Duration left{};  // of the outage
    chance::Figures figures;
    std::optional<chance::Figures> was;
    outage::LimitedBy limited_by = outage::LimitedBy::none;
    units::StateOfCharge charge_low{};
    units::StateOfCharge charge_likely{};
    units::StateOfCharge charge_high{};
    units::Duration width{};
    units::Probability out_already{};
    std::optional<units::Probability> to_expected;  // it lasts until the supply is expected back
    std::vector<OffStep> next_off;
    std::vector<Narrowing> read_next;  // what narrows most first
    std::vector<Departure> departures;
    std::optional<Contradiction> contradiction;
    bool fits = true;        // no reading speaks against the plan
    bool more_left = false;  // the packs have more than the plan expected: something may be off
    int readings = 0;
    Story story;
    std::optional<StoredFan> fan = {};  // where it was wanted
};

struct Wanted {
    units::LocalTime now;
    std::uint64_t seed = 1;
    unsigned threads = 0;
    bool steps = true;  // what switching off buys, what to read next, what it was before
    bool fan = false;   // what is stored, over the whole outage
};

//   fails   where the outage cannot be planned
[[nodiscard]] units::Result<Outlook> outlook_of(const scenario::Scenario& scenario,
                                                const std::string& folder,
                                                std::shared_ptr<const outage::Ready> ready,
                                                const Wanted& wanted);

// Of weighted members.
[[nodiscard]] chance::Figures weighted_figures(std::vector<chance::Outcome> outcomes,
                                               units::Probability goal);

}  // namespace estimate
