// The clock's account: what one leg adds to the ledger, and the same by intervals of the outage.
#pragma once

#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "outage/clock/packs.hpp"
#include "outage/course.hpp"
#include "outage/unit.hpp"

namespace outage {

// What is taken at the bus, and what of it appliances get.
struct Taken {
    units::Power wanted{};
    units::Power served{};
    units::Power ac{};           // served through the inverter
    units::Power at_inverter{};  // at its terminals
    units::Power in_main{};      // lost on the way there
    units::Power idle{};
    units::Power direct{};
    units::Power converter{};  // lost in adaptors
    units::Power branches{};   // lost in the circuits of 12 V loads
    [[nodiscard]] units::Power at_bus() const { return at_inverter + in_main + direct; }
};

// What holds throughout a leg.
struct Flowing {
    Taken taken;
    SunChange sun;
    units::Power charger{};
    [[nodiscard]] units::Power offered() const { return sun.offered + charger; }
    [[nodiscard]] units::Power net() const { return taken.at_bus() - offered(); }
};

// What a leg, or a part of one, adds to the ledger: its flows, and nothing of what is stored.
[[nodiscard]] inline Ledger flows_of(const Leg& leg, const Flowing& flowing) {
    using namespace units;
    const Taken& taken = flowing.taken;
    const Duration time = leg.time;
    // Sun and chargers have equal parts in what is taken, each by what it offers.
    const Power all = flowing.offered();
    double of_sun = 1.0;
    if (flowing.charger > Power{}) of_sun = flowing.sun.offered / all;
    const Energy all_used = std::min(all, taken.at_bus()) * time;
    Ledger flows;
    flows.loads = taken.served * time;
    flows.inverter_loss = (taken.at_inverter - taken.ac) * time;
    flows.idle = taken.idle * time;
    flows.converter_loss = taken.converter * time;
    flows.wiring_loss = leg.in_paths + (taken.branches + taken.in_main) * time;
    flows.battery_loss =
        leg.energy.in_resistance - leg.in_paths + leg.energy.between_wells + leg.energy.in_charging;
    flows.charging_loss = leg.energy.in_charging;
    flows.charger_offered = flowing.charger * time;
    flows.charger_taken = (1.0 - of_sun) * (leg.energy.accepted + all_used);
    flows.charger_unused = (1.0 - of_sun) * leg.energy.unaccepted;
    flows.sun_offered = flowing.sun.offered * time;
    flows.sun_clipped = flowing.sun.clipped * time;
    flows.sun_used = of_sun * all_used;
    flows.sun_stored = of_sun * leg.energy.accepted;
    flows.sun_unused = of_sun * leg.energy.unaccepted;
    if (taken.wanted > taken.served) flows.unserved = (taken.wanted - taken.served) * time;
    return flows;
}

// Every entry of the ledger that is a flow.
inline constexpr std::array flows_in_ledger{
    &Ledger::loads,           &Ledger::inverter_loss, &Ledger::idle,
    &Ledger::converter_loss,  &Ledger::wiring_loss,   &Ledger::battery_loss,
    &Ledger::charging_loss,   &Ledger::sun_offered,   &Ledger::sun_used,
    &Ledger::sun_stored,      &Ledger::sun_unused,    &Ledger::sun_clipped,
    &Ledger::charger_offered, &Ledger::charger_taken, &Ledger::charger_unused,
    &Ledger::unserved};

// Adds every flow; what is stored at start and end stays.
inline void add(Ledger& sum, const Ledger& flows) {
    [&]<std::size_t... i>(std::index_sequence<i...>) {
        ((sum.*flows_in_ledger[i] += flows.*flows_in_ledger[i]), ...);
    }
    (std::make_index_sequence<flows_in_ledger.size()>());
}
// The flows of the first less those of the second, which are a part of them.
[[nodiscard]] Ledger without_part(Ledger whole, const Ledger& part);
// residual and relative_residual by the identity of method.md (3).
void close(Ledger& ledger);

// Appliances' wish: what they got and what they went without.
[[nodiscard]] inline units::Energy wanted(const Ledger& flows) {
    return flows.loads + flows.unserved;
}
[[nodiscard]] inline units::Energy sun_taken(const Ledger& flows) {
    return flows.sun_used + flows.sun_stored;
}
// In inverter, adaptors, wiring and packs. What is stored at the end is what was stored before, and
// sun_taken and charger_taken, less loads and this.
[[nodiscard]] inline units::Energy lost(const Ledger& flows) {
    return flows.inverter_loss + flows.converter_loss + flows.wiring_loss + flows.battery_loss;
}

// Neighbouring intervals as one, so that each but the last is `each` long.
//   takes   intervals without gaps whose length divides `each`
[[nodiscard]] std::vector<Interval> joined(const std::vector<Interval>& intervals,
                                           units::Duration each);

// Cuts the clock's legs at even times, without touching the run itself: a leg that reaches over an
// end is run again on a copy of the packs, up to that end, and the rest is the leg less that part.
// So the sums of the intervals are the ledger's entries, and what is stored at an end is the state
// of the packs at that moment. Packs is LikePacks or UnlikePacks.
template <class Packs>
class ByInterval {
  public:
    ByInterval(units::Duration every, units::Energy stored) : every_(every), stored_(stored) {}

    // Whether a leg of at most this length may reach over an end, so that the packs as they are
    // before it are needed.
    [[nodiscard]] bool may_cross(units::Duration now, units::Duration leg) const {
        return every_ > units::Duration{} && now + leg > end();
    }

    // Call after each leg.
    //   flows    of the whole leg
    //   before   the packs before it, where may_cross said so
    //   after    the packs after it
    void add_leg(units::Duration now, const Leg& leg, Duty duty, const Flowing& flowing,
                 const Ledger& flows, std::optional<Packs>& before, Packs& after) {
        if (!(every_ > units::Duration{})) return;
        Ledger rest = flows;
        units::Duration reached{};
        while (before && end() < now + leg.time) {
            const Leg part = before->advance(duty, flowing.net(), end() - now - reached);
            reached = end() - now;
            const Ledger of_part = flows_of(part, flowing);
            outage::add(open_, of_part);
            rest = without_part(rest, of_part);
            finish(end(), duty, flowing, *before);
        }
        outage::add(open_, rest);
        at_ = now + leg.time;
        if (at_ >= end()) finish(end(), duty, flowing, after);
        last_ = {duty, flowing};
    }

    // The intervals, the last of them perhaps shorter.
    [[nodiscard]] std::vector<Interval> all(Packs& packs) {
        if (every_ > units::Duration{} && at_ > from_)
            finish(at_, last_.duty, last_.flowing, packs);
        return std::move(intervals_);
    }

  private:
    units::Duration every_;
    units::Duration from_{};
    units::Duration at_{};
    units::Energy stored_;
    Ledger open_;
    struct {
        Duty duty{};
        Flowing flowing;
    } last_;
    std::vector<Interval> intervals_;

    [[nodiscard]] units::Duration end() const {
        return static_cast<double>(intervals_.size() + 1) * every_;
    }

    void finish(units::Duration to, Duty duty, const Flowing& flowing, Packs& packs) {
        open_.stored_at_start = stored_;
        open_.stored_at_end = stored_ = packs.stored();
        close(open_);
        intervals_.push_back({.from = from_,
                              .to = to,
                              .flows = std::exchange(open_, {}),
                              .charge = packs.charge(),
                              .voltage = packs.shown(duty, flowing.net()).voltage});
        from_ = to;
    }
};

}  // namespace outage
