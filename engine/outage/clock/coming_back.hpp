// What is out and comes on again: at its own level, by somebody who tries it, or, as a note, after
// a rest that nobody plans. Packs is LikePacks or UnlikePacks. method.md (15)
#pragma once

#include <algorithm>
#include <vector>

#include "outage/clock/switching.hpp"

namespace outage {

// What holds while parts ask.
struct Conditions {
    const demand::DemandStep& demand;
    const SunChange& sun;
};

template <class Packs>
class ComingBack {
  public:
    explicit ComingBack(Switching<Packs>& switching)
        : switching_(switching),
          supply_(switching.supply),
          packs_(switching.packs),
          telling_(switching.telling) {}

    // What comes back at this moment, the lightest first.
    void try_all(const Conditions& now) {
        if (!supply_.serves()) return;
        packs_.demand_is(supply_.taken(now.demand, telling_.now()).at_bus());
        switching_.note_closed_again(telling_.now());
        if (supply_.out() == 0) return;
        switching_.look_at(now.demand);
        std::vector<Part*> asking;
        for (Part& part : supply_.parts())
            if (part.wants()) asking.push_back(&part);
        std::ranges::stable_sort(asking, {}, [](const Part* part) { return part->draws; });
        for (Part* part : asking) {
            if (supply_.comes_by_itself(*part, telling_.now()) &&
                at_its_level(packs_, *part, now, 1e-6 * units::volt))
                switching_.comes_on(*part, false);
            else if (supply_.by_hand(*part) && part->asked &&
                     !supply_.rests(*part, telling_.now()) &&
                     !(part->asked = false, !runs_when_asked(*part, now)))
                switching_.comes_on(*part, true);
        }
    }

    // Within a leg, until a part comes on at its own level; the packs are tried on copies.
    [[nodiscard]] units::Duration until_one_comes(const Conditions& now, Duty duty,
                                                  units::Power net, units::Duration leg) {
        if (supply_.out() == 0 || !supply_.serves() || !packs_.may_rise(net)) return leg;
        const bool waits = std::ranges::any_of(supply_.parts(), [&](const Part& part) {
            return supply_.comes_by_itself(part, telling_.now());
        });
        if (!waits) return leg;
        constexpr int pieces = 8;
        const units::Duration length = leg / static_cast<double>(pieces);
        Packs ahead = packs_;
        for (int piece = 0; piece < pieces; ++piece) {
            const Packs before = ahead;
            if (ahead.advance(duty, net, length).ending != battery::Ending::completed) return leg;
            if (!one_may(ahead, now)) continue;
            const units::Duration found = first_that_may(before, now, duty, net, length);
            return std::min<units::Duration>(leg, static_cast<double>(piece) * length + found);
        }
        return leg;
    }

    // Loads that went out a moment ago and would run again after a rest, though nobody asks.
    //   next   when another demand begins
    void note_rests(const Conditions& now, units::Duration next) {
        if (supply_.out() == 0 || !supply_.serves() || packs_.nothing_left()) return;
        for (Part& part : supply_.parts())
            if (part.wants() && part.since == telling_.now() && !part.asked &&
                part.why != LimitedBy::pack_limit && part.why != LimitedBy::fuse)
                note_rest(part, now, next - telling_.now());
    }

  private:
    static constexpr units::Duration worth_a_note = 10.0 * units::minute;  // ours
    static constexpr std::size_t most_rests_told = 8;

    Switching<Packs>& switching_;
    Supply& supply_;
    Packs& packs_;
    Telling& telling_;

    // As things are: what the packs give.
    [[nodiscard]] units::Power net(const Conditions& now) const {
        return Flowing{supply_.taken(now.demand, telling_.now()), now.sun, now.demand.charger}
            .net();
    }
    // Likewise with this part in.
    [[nodiscard]] units::Power net_with(Part& part, const Conditions& now) {
        supply_.set_out(part, false);
        const units::Power with = net(now);
        supply_.set_out(part, true);
        return with;
    }
    [[nodiscard]] Duty duty_with(const Part& part, const demand::DemandStep& demand) const {
        return part.is_inverter() || supply_.inverter_runs(demand) ? Duty::serving_ac
                                                                   : Duty::serving_direct;
    }

    //   forgiven   of the level, for rounding
    [[nodiscard]] bool at_its_level(Packs& packs, Part& part, const Conditions& now,
                                    units::Voltage forgiven) {
        if (part.is_inverter()) {
            const auto point = packs.shown(Duty::serving_direct, net(now));
            return point.possible && point.voltage >= supply_.comes_on_at() - forgiven;
        }
        return packs.gives(duty_with(part, now.demand), net_with(part, now),
                           supply_.needed(part) - forgiven, false);
    }
    [[nodiscard]] bool one_may(Packs& packs, const Conditions& now) {
        return std::ranges::any_of(supply_.parts(), [&](Part& part) {
            return supply_.comes_by_itself(part, telling_.now()) &&
                   at_its_level(packs, part, now, units::Voltage{});
        });
    }
    [[nodiscard]] units::Duration first_that_may(const Packs& before, const Conditions& now,
                                                 Duty duty, units::Power net,
                                                 units::Duration length) {
        constexpr int halvings = 14;
        units::Duration low{};
        units::Duration high = length;
        for (int i = 0; i < halvings; ++i) {
            const units::Duration middle = 0.5 * (low + high);
            Packs there = before;
            (void)there.advance(duty, net, middle);
            (one_may(there, now) ? high : low) = middle;
        }
        return high;
    }

    // Whether somebody who tries it finds that it runs.
    [[nodiscard]] bool runs_when_asked(Part& part, const Conditions& now) {
        if (part.dead) return false;
        if (part.is_inverter()) {
            if (supply_.overloaded || supply_.main_blown || supply_.rests(part, telling_.now()))
                return false;
            const auto point = packs_.shown(Duty::serving_direct, net(now));
            if (!point.possible || point.voltage <= supply_.by_hand_above()) return false;
        }
        return packs_.gives(duty_with(part, now.demand), net_with(part, now), supply_.needed(part),
                            part.why == LimitedBy::pack_limit);
    }

    // From when it would run, and how long.
    void note_rest(Part& part, const Conditions& now, units::Duration horizon) {
        auto& told = telling_.course().after_rest;
        if (!telling_.keeps() || told.size() >= most_rests_told) return;
        if (horizon < worth_a_note || supply_.comes_by_itself(part, telling_.now()) ||
            !supply_.by_hand(part))
            return;
        if (std::ranges::any_of(told, [&](const AfterRest& rest) { return rest.part == part.id; }))
            return;
        AfterRest rest{.part = part.id, .out = telling_.now()};
        const bool may = packs_.gives_rested(duty_with(part, now.demand), net_with(part, now),
                                             supply_.needed(part));
        if (!may || runs_after(rest, part, now, horizon)) told.push_back(rest);
    }
    [[nodiscard]] bool runs_after(AfterRest& rest, Part& part, const Conditions& now,
                                  units::Duration horizon) {
        constexpr int pieces = 48;
        const units::Power with = net_with(part, now);
        const units::Power others = net(now);
        const Duty on = duty_with(part, now.demand);
        const units::Duration step =
            std::max<units::Duration>(units::minute, horizon / static_cast<double>(pieces));
        Packs resting = packs_;
        for (units::Duration after = step; after + worth_a_note <= horizon; after += step) {
            if (resting.advance(supply_.duty(now.demand, telling_.now()), others, step).ending !=
                battery::Ending::completed)
                return false;
            resting.ask_again();
            if (!resting.gives(on, with, supply_.needed(part), false)) continue;
            Packs trial = resting;
            const Leg runs = trial.advance(on, with, horizon - after);
            if (runs.time < worth_a_note) continue;
            rest.from = telling_.now() + after;
            rest.lasts = runs.time;
            return true;
        }
        return false;
    }
};

}  // namespace outage
