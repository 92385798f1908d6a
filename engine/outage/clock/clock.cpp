#include "outage/clock/clock.hpp"

#include <algorithm>
#include <cassert>
#include <limits>
#include <stdexcept>
#include <utility>

#include "outage/clock/circuit_fuses.hpp"
#include "outage/clock/coming_back.hpp"
#include "outage/clock/current_source.hpp"
#include "outage/clock/endings.hpp"
#include "outage/clock/looks.hpp"
#include "outage/clock/packs.hpp"
#include "outage/clock/supply.hpp"
#include "outage/told/account.hpp"
#include "outage/told/telling.hpp"

namespace outage {

namespace {

using namespace units;

// A demand from one change of anything to the next.
//   next   when another demand begins
struct Stretch {
    Duration end{};
    const demand::DemandStep& demand;
    const SunChange& sun;
    Duration next{};
};

// How long a leg may be, and what its end then is.
struct Length {
    Duration leg{};
    bool whole = true;  // to the end of the stretch
    std::optional<Duration> rest_ends;
};

// What flows in a leg, and what the packs are asked for.
struct Asked {
    Flowing flowing;
    Duty duty{};
    [[nodiscard]] Power net() const { return flowing.net(); }
};

// Packs is LikePacks or UnlikePacks.
template <class Packs>
class Clock {
  public:
    Clock(const Unit& unit, Duration midnight, Keep keep, std::vector<SunOfDay>* days,
          const Parts* parts)
        : unit_(unit),
          keep_(keep),
          ways_of_(parts),
          packs_(unit),
          supply_(unit, parts),
          telling_(keep, midnight, days),
          intervals_(keep.intervals, packs_.stored()),
          main_fuse_(unit),
          branch_fuses_(parts) {
        telling_.course().ledger.stored_at_start = packs_.stored();
        if (packs_.beyond_usable())
            endings_.passes_usable();
        else if (packs_.starts_empty())
            telling_.fails(LimitedBy::charge);
    }
    Clock(const Clock&) = delete;  // its members refer to each other
    Clock& operator=(const Clock&) = delete;

    void run_through(const Stretch& stretch) {
        if (&stretch.demand != weighed_) weigh(stretch.demand);
        note_switching(stretch.demand);
        int without_progress = 0;
        while (telling_.now() < stretch.end) {
            const Duration before = telling_.now();
            one_leg(stretch);
            without_progress = telling_.now() > before ? 0 : without_progress + 1;
            if (without_progress > most_at_once())
                throw std::logic_error("the outage clock stands still");
        }
    }

    void begin_day(std::size_t day) { packs_.begin_day(day); }

    void reserve(std::size_t points) { telling_.course().trace.reserve(points); }

    [[nodiscard]] bool failed() const { return telling_.failed(); }

    // At this moment, at which a stretch begins.
    [[nodiscard]] Look look(const Stretch& stretch) {
        if (&stretch.demand != weighed_) weigh(stretch.demand);
        const Asked asked = this->asked(stretch.demand, stretch.sun);
        const auto& ledger = telling_.course().ledger;
        return {.charge = packs_.charge(),
                .voltage = packs_.shown(asked.duty, asked.net()).voltage,
                .rested = packs_.voltage_at_rest(asked.duty),
                .sun_taken = ledger.sun_used + ledger.sun_stored};
    }

    Course finish(Duration lasts) {
        endings_.finish();
        Course& course = telling_.course();
        course.ledger.stored_at_end = packs_.stored();
        course.strain = packs_.strain();
        course.pack_currents = packs_.currents();
        for (const PackCurrents& pack : course.pack_currents)
            course.highest_pack_current = std::max(course.highest_pack_current, pack.largest());
        course.survives = !telling_.failed();
        if (course.survives) course.lasts = lasts;
        close(course.ledger);
        course.intervals = intervals_.all(packs_);
        if (keep_.trace) {
            add_trace_point({last_, Duty::idle});
            course.trace.back().sun_taken = last_sun_taken_;
        }
        return std::move(course);
    }

  private:
    const Unit& unit_;
    Keep keep_;
    const Parts* ways_of_;  // nothing: the 12 V loads are one
    const demand::DemandStep* weighed_ = nullptr;
    Packs packs_;
    Supply supply_;
    Telling telling_;
    Switching<Packs> switching_{supply_, packs_, telling_};
    ComingBack<Packs> coming_back_{switching_};
    Endings<Packs> endings_{switching_};
    ByInterval<Packs> intervals_;
    MainPathFuse main_fuse_;
    BranchFuses branch_fuses_;
    Duration next_point_{};
    bool inverter_was_on_ = true;
    bool first_step_ = true;
    Flowing last_;
    Power last_sun_taken_{};

    [[nodiscard]] int most_at_once() {
        return 64 + 4 * static_cast<int>(packs_.banks() + 1) *
                        static_cast<int>(supply_.parts().size() + 1);
    }

    void note_switching(const demand::DemandStep& demand) {
        if (!unit_.inverter) return;
        if (!first_step_ && demand.inverter_on != inverter_was_on_)
            telling_.note(demand.inverter_on ? EventKind::inverter_switched_on
                                             : EventKind::inverter_switched_off);
        // Switching it off and on by hand clears its cut-off.
        if (!demand.inverter_on && supply_.inverter_is_out() && !supply_.main_blown)
            switching_.put_in(supply_.inverter());
        inverter_was_on_ = demand.inverter_on;
        first_step_ = false;
    }

    // What the inverter makes of a demand, once for all legs of it; and whoever is out asks again.
    void weigh(const demand::DemandStep& demand) {
        weighed_ = &demand;
        supply_.weigh(demand);
        packs_.lowest_is(demand.lowest, supply_.draw().needs);
        if (supply_.out() == 0) return;
        switching_.look_at(demand);
        packs_.ask_again();
        supply_.ask_all();
    }

    [[nodiscard]] Taken taken(const demand::DemandStep& demand) const {
        return supply_.taken(demand, telling_.now());
    }
    [[nodiscard]] Duty duty(const demand::DemandStep& demand) const {
        return supply_.duty(demand, telling_.now());
    }

    // What a controller that passes on a current gives at this moment. method.md (16)
    void pass_current(SunChange& sun, const demand::DemandStep& demand) const {
        if (!(sun.passes > Current{})) return;
        sun.offered = power_passed_now(packs_, duty(demand), sun.passes,
                                       taken(demand).at_bus() - demand.charger, sun.offered);
    }

    // Who is in at this moment, and so what flows.
    [[nodiscard]] Asked asked(const demand::DemandStep& demand, SunChange sun) {
        endings_.look_at_overload(demand);
        pass_current(sun, demand);
        const auto before_they_try = std::pair(duty(demand), taken(demand).at_bus());
        coming_back_.try_all({demand, sun});
        if (before_they_try != std::pair(duty(demand), taken(demand).at_bus()))
            pass_current(sun, demand);
        return {{taken(demand), sun, demand.charger}, duty(demand)};
    }

    // As far as conditions hold; nothing where a fuse opens at once.
    [[nodiscard]] std::optional<Length> length_of(const Asked& asked, const Stretch& stretch) {
        Length length{.leg = stretch.end - telling_.now()};
        const Duration whole = length.leg;
        const Duration rested = supply_.rest_ends(telling_.now());
        if (rested < stretch.end) {
            length.rest_ends = rested;
            length.leg = rested - telling_.now();
        }
        const auto stands = fuses_stand(asked);
        if (!stands) return {};
        length.leg = std::min(length.leg, *stands);
        if (supply_.out() > 0)
            length.leg = coming_back_.until_one_comes({stretch.demand, asked.flowing.sun},
                                                      asked.duty, asked.net(), length.leg);
        length.whole = length.leg == whole;
        return length;
    }

    // As far as conditions hold, at most to the end.
    void one_leg(const Stretch& stretch) {
        Asked asked = this->asked(stretch.demand, stretch.sun);
        const auto length = length_of(asked, stretch);
        if (!length) return;
        const SunChange sun = asked.flowing.sun;
        if (sun.passes > Current{})
            asked.flowing.sun.offered = power_passed_over(
                packs_, asked.duty, sun.passes,
                asked.flowing.taken.at_bus() - asked.flowing.charger, sun.offered, length->leg);
        const Leg leg = take_leg(asked, length->leg);
        const Duration began = telling_.now();
        telling_.go_to(end_of(leg, *length, stretch.end));
        if (telling_.now() > began) {
            switching_.what_was_tried_runs(began);
            switching_.note_closed_again(began);
        }
        if (leg.ending != battery::Ending::completed) {
            endings_.handle({leg, stretch.demand, asked.net()});
            if (telling_.failed() && keep_.after_failure)
                coming_back_.note_rests({stretch.demand, sun}, stretch.next);
        }
        last_ = asked.flowing;
    }

    [[nodiscard]] Duration end_of(const Leg& leg, const Length& length, Duration end) const {
        const Duration now = telling_.now();
        if (leg.ending != battery::Ending::completed) return std::min(end, now + leg.time);
        if (length.whole) return end;
        const bool rested = length.rest_ends && now + length.leg >= *length.rest_ends;
        return rested ? *length.rest_ends : now + length.leg;
    }

    // The packs give and take for so long, and all that keeps an account hears of it.
    [[nodiscard]] Leg take_leg(const Asked& asked, Duration time) {
        const Flowing& flowing = asked.flowing;
        const bool kept = keep_.trace && telling_.now() >= next_point_;
        if (kept) add_trace_point(asked);
        std::optional<Packs> before;
        if (intervals_.may_cross(telling_.now(), time)) before.emplace(packs_);
        const Leg leg = packs_.advance(asked.duty, asked.net(), time);
        const Ledger flows = flows_of(leg, flowing);
        telling_.account(leg, flows);
        note_main_current(flowing, leg);
        intervals_.add_leg(telling_.now(), leg, asked.duty, flowing, flows, before, packs_);
        const Energy of_sun = flows.sun_used + flows.sun_stored;
        last_sun_taken_ = leg.time > Duration{} ? of_sun / leg.time : Power{};
        if (kept) keep_trace_point(leg);
        main_fuse_.pass(flowing.taken, leg.voltage, leg.time);
        branch_fuses_.pass(leg.time);
        return leg;
    }
    void note_main_current(const Flowing& flowing, const Leg& leg) {
        const Power at_inverter = flowing.taken.at_inverter;
        if (!(at_inverter > Power{} && leg.time > Duration{})) return;
        auto& highest = telling_.course().highest_main_current;
        highest = std::max(highest, current_in_main(unit_, at_inverter, leg.voltage));
    }

    // ---- fuses of circuits

    // For how long they stand what flows; nothing where one opens, which then it has.
    [[nodiscard]] std::optional<Duration> fuses_stand(const Asked& asked) {
        const auto voltage = [&] {
            return packs_.operating_point(asked.duty, asked.net()).voltage;
        };
        const Duration main = main_fuse_.stands(asked.flowing.taken, voltage);
        if (main <= at_once) {
            main_fuse_opens(asked.net());
            return {};
        }
        if (!branch_fuses_.any()) return main;
        const auto& parts = supply_.parts();
        const auto is_in = [&](std::size_t i) {
            return supply_.serves() && !parts[supply_.first_direct() + i].out;
        };
        const auto [branch, way] = branch_fuses_.stand(telling_.now(), voltage, is_in);
        if (branch <= at_once) {
            branch_fuse_opens(way);
            return {};
        }
        return std::min(main, branch);
    }

    void main_fuse_opens(Power net) {
        telling_.note(EventKind::main_fuse_opens, {.power = net, .current = main_fuse_.carries()});
        supply_.main_blown = true;
        if (!supply_.inverter_is_out()) switching_.put_out(supply_.inverter(), LimitedBy::fuse);
    }

    void branch_fuse_opens(std::size_t way) {
        Event* event =
            telling_.note(EventKind::branch_fuse_opens, {.current = branch_fuses_.carries(way)});
        if (event != nullptr) event->branch = way;
        branch_fuses_.open(way);
        for (Part& part : supply_.parts()) {
            if (part.is_inverter() || part.dead) continue;
            const auto& ways = ways_of_->direct[part.direct].ways;
            if (std::ranges::find(ways, way) != ways.end()) goes_dead(part);
        }
        telling_.fails(LimitedBy::fuse);
        for (Part& part : supply_.parts())
            part.asked = part.out && !part.dead;  // less is drawn than a moment ago
    }
    void goes_dead(Part& part) {
        part.dead = true;
        if (!part.out) {
            switching_.put_out(part, LimitedBy::fuse);
            return;
        }
        telling_.until(part.told);
        part.why = LimitedBy::fuse;
        part.told = telling_.from(part.id, LimitedBy::fuse);
    }

    // ---- the trace

    void add_trace_point(const Asked& asked) {
        const auto point = packs_.shown(asked.duty, asked.net());
        telling_.course().trace.push_back({.at = telling_.now(),
                                           .stored = packs_.stored(),
                                           .charge = packs_.charge(),
                                           .voltage = point.voltage,
                                           .rested = packs_.voltage_at_rest(asked.duty),
                                           .current = point.current,
                                           .wanted = asked.flowing.taken.wanted,
                                           .served = asked.flowing.taken.served,
                                           .sun_offered = asked.flowing.sun.offered});
    }
    // Where nothing lasted the next leg begins at the same instant.
    void keep_trace_point(const Leg& leg) {
        auto& trace = telling_.course().trace;
        if (!(leg.time > Duration{})) {
            trace.pop_back();
            return;
        }
        trace.back().sun_taken = last_sun_taken_;
        next_point_ = telling_.now() + keep_.every;
    }
};

// Where a run stands among what changes on its way.
struct At {
    std::size_t step = 0;
    std::size_t light = 0;
    std::size_t day = 0;
};

// What one outage is made of.
struct Run {
    std::span<const demand::DemandStep> demand;
    std::span<const SunChange> sun;
    std::span<const DayOfUnit> days;
    Duration lasts{};
};

// The stretch that begins now, and no later than at a moment ends.
Stretch stretch_from(const Run& run, const At& at, Duration until) {
    static const SunChange none{};
    Duration next = until;
    if (at.day + 1 < run.days.size()) next = std::min(next, run.days[at.day + 1].from);
    if (at.step + 1 < run.demand.size()) next = std::min(next, run.demand[at.step + 1].from);
    if (at.light + 1 < run.sun.size()) next = std::min(next, run.sun[at.light + 1].from);
    return {next, run.demand[at.step], run.sun.empty() ? none : run.sun[at.light],
            at.step + 1 < run.demand.size() ? run.demand[at.step + 1].from : run.lasts};
}

template <class Packs>
void go_to(Clock<Packs>& clock, const Run& run, At& at, Duration now) {
    while (at.step + 1 < run.demand.size() && run.demand[at.step + 1].from <= now)
        ++at.step;
    while (at.light + 1 < run.sun.size() && run.sun[at.light + 1].from <= now)
        ++at.light;
    while (at.day + 1 < run.days.size() && run.days[at.day + 1].from <= now)
        clock.begin_day(++at.day);
}

template <class Packs>
Course run_with(const Unit& unit, const Run& run, Duration midnight, Keep keep,
                std::vector<SunOfDay>* days, const Parts* parts) {
    assert(!run.demand.empty());
    Clock<Packs> clock(unit, midnight, keep, days, parts);
    if (keep.trace && !(keep.every > Duration{}))
        clock.reserve(run.demand.size() + run.sun.size() + 16);
    At at;
    for (Duration now{}; now < run.lasts;) {
        const Stretch stretch = stretch_from(run, at, run.lasts);
        clock.run_through(stretch);
        now = stretch.end;
        if (clock.failed() && !keep.after_failure) break;
        go_to(clock, run, at, now);
    }
    return clock.finish(run.lasts);
}

template <class Packs>
std::vector<Look> look_with(const Unit& unit, const Run& run, Duration midnight,
                            std::span<const Duration> moments) {
    Clock<Packs> clock(unit, midnight, {.trace = false}, nullptr, nullptr);
    std::vector<Look> looks;
    looks.reserve(moments.size());
    At at;
    for (Duration now{}; looks.size() < moments.size();) {
        while (looks.size() < moments.size() && moments[looks.size()] <= now)
            looks.push_back(clock.look(stretch_from(run, at, run.lasts)));
        if (looks.size() == moments.size()) break;
        const Stretch stretch = stretch_from(run, at, moments[looks.size()]);
        clock.run_through(stretch);
        now = stretch.end;
        go_to(clock, run, at, now);
    }
    return looks;
}

}  // namespace

Course run(const Unit& unit, std::span<const demand::DemandStep> demand,
           std::span<const SunChange> sun, Duration lasts, Duration midnight, Keep keep,
           std::vector<SunOfDay>* days, const Parts* parts) {
    const Run run{.demand = demand, .sun = sun, .days = unit.days, .lasts = lasts};
    return unit.others.empty() ? run_with<LikePacks>(unit, run, midnight, keep, days, parts)
                               : run_with<UnlikePacks>(unit, run, midnight, keep, days, parts);
}

std::vector<Look> look(const Unit& unit, std::span<const demand::DemandStep> demand,
                       std::span<const SunChange> sun, Duration midnight,
                       std::span<const Duration> at) {
    const Run run{.demand = demand,
                  .sun = sun,
                  .days = unit.days,
                  .lasts = at.empty() ? Duration{} : at.back()};
    return unit.others.empty() ? look_with<LikePacks>(unit, run, midnight, at)
                               : look_with<UnlikePacks>(unit, run, midnight, at);
}

}  // namespace outage
