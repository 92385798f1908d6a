#include "outage/clock.hpp"

#include <cassert>
#include <stdexcept>

#include "outage/account.hpp"
#include "outage/overload.hpp"
#include "outage/packs.hpp"

namespace outage {

namespace {

using namespace units;

// Common practice, no source; method.md, "The clock".
constexpr Duration inverter_rest = 5.0 * minute;

enum class Supply {
    serving,
    waiting_for_charge,  // empty, cut off or at the usable limit
    tripped,             // over current; until less is asked for
    blown,               // a fuse
};

// Packs is LikePacks or UnlikePacks.
template <class Packs>
class Clock {
  public:
    Clock(const Unit& unit, Duration midnight, Keep keep, std::vector<SunOfDay>* days)
        : unit_(unit),
          midnight_(midnight),
          keep_(keep),
          days_(days),
          packs_(unit),
          intervals_(keep.intervals, packs_.stored()) {
        if (unit.main_fuse && unit.inverter) main_ = Overload(*unit.main_fuse);
        course_.limited_by = LimitedBy::none;
        course_.lowest_voltage = std::numeric_limits<Voltage>::infinity();
        course_.ledger.stored_at_start = packs_.stored();
        if (packs_.beyond_usable()) {
            note(EventKind::packs_at_usable_limit);
            wait_for_charge(LimitedBy::charge);
        }
    }

    void until(Duration end, const DemandStep& demand, const SunChange& sun) {
        if (&demand != weighed_) weigh(demand);
        note_switching(demand);
        int without_progress = 0;
        while (now_ < end) {
            const Duration before = now_;
            one_leg(end, demand, sun);
            without_progress = now_ > before ? 0 : without_progress + 1;
            if (without_progress > 64 + 2 * static_cast<int>(packs_.banks()))
                throw std::logic_error("the outage clock stands still");
        }
    }

    void begin_day(std::size_t day) { packs_.begin_day(day); }

    void reserve(std::size_t points) { course_.trace.reserve(points); }

    [[nodiscard]] bool failed() const { return failed_; }

    Course finish(Duration lasts) {
        auto& ledger = course_.ledger;
        ledger.stored_at_end = packs_.stored();
        course_.strain = packs_.strain();
        course_.survives = !failed_;
        if (course_.survives) course_.lasts = lasts;
        close(ledger);
        course_.intervals = intervals_.all(packs_);
        if (keep_.trace) {
            add_trace_point(last_, Duty::idle);
            course_.trace.back().sun_taken = last_sun_taken_;
        }
        return std::move(course_);
    }

  private:
    const Unit& unit_;
    const DemandStep* weighed_ = nullptr;
    Power at_inverter_{};
    bool beyond_inverter_ = false;
    Duration next_point_{};
    Duration midnight_;
    Keep keep_;
    std::vector<SunOfDay>* days_;

    Duration now_{};
    Packs packs_;
    ByInterval<Packs> intervals_;
    Supply supply_ = Supply::serving;
    bool inverter_rests_ = false;
    Duration rests_until_{};
    Overload main_;  // the fuse in front of the inverter
    Current in_main_{};
    bool main_blown_ = false;
    bool overloaded_ = false;
    bool inverter_was_on_ = true;
    bool first_step_ = true;
    Power tripped_at_{};
    bool failed_ = false;
    Flowing last_;
    Power last_sun_taken_{};
    Course course_;

    void note(EventKind kind, Power power = {}, Power at_most = {}, Current current = {},
              std::size_t pack = 0) {
        if (!keep_.trace) return;
        course_.events.push_back({.at = now_,
                                  .kind = kind,
                                  .power = power,
                                  .at_most = at_most,
                                  .current = current,
                                  .pack = pack});
    }
    void note_closed_again() {
        for (const std::size_t pack : packs_.closed_again())
            note(EventKind::one_back, {}, {}, {}, pack);
    }

    void note_switching(const DemandStep& demand) {
        if (!unit_.inverter) return;
        if (!first_step_ && demand.inverter_on != inverter_was_on_)
            note(demand.inverter_on ? EventKind::inverter_switched_on
                                    : EventKind::inverter_switched_off);
        // Switching it off and on by hand clears its cut-off.
        if (!demand.inverter_on) inverter_rests_ = false;
        inverter_was_on_ = demand.inverter_on;
        first_step_ = false;
    }

    // What the inverter makes of a demand, once for all legs of it.
    void weigh(const DemandStep& demand) {
        weighed_ = &demand;
        at_inverter_ = {};
        beyond_inverter_ = false;
        if (!unit_.inverter) return;
        const auto apparent = inverter::apparent(demand.ac, demand.ac_reactive);
        at_inverter_ = demand.asleep ? unit_.inverter->asleep
                                     : inverter::dc_power(*unit_.inverter, demand.ac, apparent);
        beyond_inverter_ = !inverter::carries(*unit_.inverter, demand.ac, apparent);
    }

    void note_overload(const DemandStep& demand) {
        const bool over = demand.inverter_on && beyond_inverter_;
        if (over && !overloaded_) {
            note(EventKind::inverter_overload, demand.ac);
            fails(LimitedBy::inverter_limit);
        }
        if (!over && overloaded_) note(EventKind::inverter_overload_over, demand.ac);
        overloaded_ = over;
    }

    [[nodiscard]] bool inverter_runs(const DemandStep& demand) const {
        return unit_.inverter && demand.inverter_on && !inverter_rests_ && !overloaded_ &&
               !main_blown_ && supply_ == Supply::serving;
    }

    [[nodiscard]] Taken taken(const DemandStep& demand) const {
        Taken taken;
        taken.wanted = (demand.inverter_on ? demand.ac : Power{}) + demand.direct_useful;
        if (supply_ != Supply::serving) return taken;
        taken.direct = demand.direct;
        taken.branches = demand.in_branches;
        taken.converter = demand.direct - demand.direct_useful - demand.in_branches;
        taken.served = demand.direct_useful;
        if (!inverter_runs(demand)) return taken;
        taken.ac = demand.ac;
        taken.at_inverter = at_inverter_;
        taken.idle = demand.asleep ? unit_.inverter->asleep : unit_.inverter->losses.idle;
        taken.served += demand.ac;
        return taken;
    }

    // What may have come back by itself at this moment.
    void try_to_come_back(const DemandStep& demand, const SunChange& sun) {
        packs_.demand_is(demanded(demand));
        note_closed_again();
        if (supply_ == Supply::tripped && demanded(demand) < tripped_at_) come_back();
        if (!inverter_rests_ || now_ < rests_until_ || supply_ != Supply::serving) return;
        const auto point = packs_.operating_point(
            Duty::serving_direct, taken(demand).at_bus() - (sun.offered + demand.charger));
        if (point.possible && point.voltage >= unit_.inverter->restart_voltage) inverter_on_again();
    }

    [[nodiscard]] Power demanded(const DemandStep& demand) const {
        const bool through_inverter = demand.inverter_on && !overloaded_;
        return (through_inverter ? at_inverter_ : Power{}) + demand.direct;
    }

    void come_back() {
        supply_ = Supply::serving;
        inverter_rests_ = false;
        packs_.come_back();
        note(EventKind::supply_back);
    }

    void inverter_on_again() {
        inverter_rests_ = false;
        note(EventKind::inverter_on_again);
    }

    [[nodiscard]] Duty duty(const DemandStep& demand) const {
        switch (supply_) {
            case Supply::waiting_for_charge:
                return Duty::waiting;
            case Supply::tripped:
            case Supply::blown:
                return Duty::idle;
            case Supply::serving:
                break;
        }
        if (inverter_runs(demand)) return Duty::serving_ac;
        return inverter_rests_ && now_ >= rests_until_ ? Duty::inverter_rested
                                                       : Duty::serving_direct;
    }

    // As far as conditions hold, at most to the end.
    void one_leg(Duration end, const DemandStep& demand, const SunChange& sun) {
        note_overload(demand);
        try_to_come_back(demand, sun);
        const Flowing flowing{taken(demand), sun, demand.charger};
        const Power net = flowing.net();
        Duration leg = end - now_;
        const bool rest_ends_first = inverter_rests_ && now_ < rests_until_ && rests_until_ < end;
        if (rest_ends_first) leg = rests_until_ - now_;
        const Duty now_duty = duty(demand);
        const Duration looked = main_fuse_stands(flowing.taken, net, now_duty);
        if (looked <= at_once) {
            main_fuse_opens(net);
            return;
        }
        const bool looks_first = looked < leg;
        leg = std::min(leg, looked);
        const bool kept = keep_.trace && now_ >= next_point_;
        if (kept) add_trace_point(flowing, now_duty);
        std::optional<Packs> before;
        if (intervals_.may_cross(now_, leg)) before.emplace(packs_);
        const Leg step = packs_.advance(now_duty, net, leg);
        const Ledger flows = flows_of(step, flowing);
        account(step, flows);
        intervals_.add_leg(now_, step, now_duty, flowing, flows, before, packs_);
        const Energy of_sun = flows.sun_used + flows.sun_stored;
        if (kept && step.time > Duration{}) {
            course_.trace.back().sun_taken = of_sun / step.time;
            next_point_ = now_ + keep_.every;
        } else if (kept) {
            course_.trace.pop_back();  // nothing lasted: the next leg begins at the same instant
        }
        if (main_.running()) main_.pass(in_main_, step.time);
        if (step.ending == battery::Ending::completed) {
            now_ = looks_first ? now_ + leg : rest_ends_first ? rests_until_ : end;
        } else {
            now_ = std::min(end, now_ + step.time);
            handle(step, demand, net);
        }
        last_ = flowing;
        last_sun_taken_ = step.time > Duration{} ? of_sun / step.time : Power{};
    }

    // Until the fuse in front of the inverter opens, or is to be looked at again. method.md (13)
    [[nodiscard]] Duration main_fuse_stands(const Taken& taken, Power net, Duty now_duty) {
        constexpr Duration forever = std::numeric_limits<double>::infinity() * second;
        in_main_ = {};
        const auto bears = main_.watched(0);
        if (!bears) return forever;
        if (!(taken.at_inverter > Power{})) {
            if (main_.running()) main_.settle({});
            return forever;
        }
        if (!main_.running() && taken.at_inverter <= *bears * unit_.inverter->cutoff_voltage)
            return forever;
        in_main_ = taken.at_inverter / packs_.operating_point(now_duty, net).voltage;
        main_.settle(in_main_);
        main_.rise_to(in_main_);
        const auto standing = main_.standing(in_main_);
        return standing.still <= at_once ? Duration{} : until_looked_at(standing);
    }

    void main_fuse_opens(Power net) {
        note(EventKind::main_fuse_opens, net, {}, in_main_);
        main_blown_ = true;
        fails(LimitedBy::fuse);
    }

    // The supply fails now, wholly or in part; only the first time counts. method.md (2)
    void fails(LimitedBy cause) {
        if (failed_) return;
        failed_ = true;
        course_.lasts = now_;
        course_.limited_by = cause;
    }

    void account(const Leg& step, const Ledger& flows) {
        add(course_.ledger, flows);
        if (step.time > Duration{}) {
            course_.lowest_voltage = std::min(course_.lowest_voltage, step.voltage);
            course_.highest_pack_current = std::max(course_.highest_pack_current, step.largest);
        }
        if (flows.unserved > Energy{}) course_.without += step.time;
        if (days_ != nullptr && flows.sun_offered + flows.sun_clipped > Energy{}) {
            auto& day = day_of(now_ + 0.5 * step.time);
            day.offered += flows.sun_offered;
            day.taken += flows.sun_used + flows.sun_stored;
            day.unused += flows.sun_unused;
            day.clipped += flows.sun_clipped;
        }
    }

    SunOfDay& day_of(Duration when) {
        const double days = std::floor((when - midnight_) / units::day) + 1.0;
        const auto index = static_cast<std::size_t>(std::max(0.0, days));
        if (days_->size() <= index) days_->resize(index + 1);
        return (*days_)[index];
    }

    void handle(const Leg& step, const DemandStep& demand, Power net) {
        using battery::Ending;
        switch (step.ending) {
            case Ending::completed:
                break;
            case Ending::pack_restored:
                note_closed_again();
                break;
            case Ending::cut_off:
                note(EventKind::inverter_off_low_voltage, net);
                rest_inverter();
                break;
            case Ending::cannot_be_delivered:
                note(EventKind::cannot_be_delivered, net, step.at_most);
                if (inverter_runs(demand)) {
                    rest_inverter();
                } else {
                    wait_for_charge(LimitedBy::low_voltage);
                }
                break;
            case Ending::available_well_empty:
                if (one_opens(step, demand, EventKind::one_empty)) break;
                note(EventKind::packs_empty);
                wait_for_charge(LimitedBy::charge);
                break;
            case Ending::usable_limit:
                note(EventKind::packs_at_usable_limit);
                wait_for_charge(LimitedBy::charge);
                break;
            case Ending::pack_cut_off:
                if (one_opens(step, demand, EventKind::one_cut_off)) break;
                note(EventKind::packs_cut_off);
                wait_for_charge(LimitedBy::low_voltage);
                break;
            case Ending::current_limit:
                over_current(step, demand, net);
                break;
            case Ending::voltage_restored:
                inverter_on_again();
                break;
            case Ending::charge_restored:
                come_back();
                break;
            case Ending::full:
                note(EventKind::packs_full);
                break;
        }
    }

    void rest_inverter() {
        inverter_rests_ = true;
        rests_until_ = now_ + inverter_rest;
        fails(LimitedBy::low_voltage);
    }

    void wait_for_charge(LimitedBy cause) {
        supply_ = Supply::waiting_for_charge;
        fails(cause);
        packs_.wait_for_charge();
    }

    // One pack opens and others go on giving.
    bool one_opens(const Leg& step, const DemandStep& demand, EventKind kind) {
        if (packs_.open(step, demanded(demand)) == Opened::all) return false;
        note_opening(kind, {}, step);
        return true;
    }

    void note_opening(EventKind kind, Power net, const Leg& step) {
        note(kind, net, {}, step.at_pack, step.pack);
        if (!keep_.trace) return;
        course_.events.back().after = step.opens.since;
        course_.events.back().above = step.opens.above;
    }

    void over_current(const Leg& step, const DemandStep& demand, Power net) {
        const bool fuse = step.opens.fuse;
        if (one_opens(step, demand, fuse ? EventKind::one_fuse_opens : EventKind::one_over_current))
            return;
        note_opening(fuse ? EventKind::fuse_opens : EventKind::packs_over_current, net, step);
        supply_ = fuse ? Supply::blown : Supply::tripped;
        fails(fuse ? LimitedBy::fuse : LimitedBy::pack_limit);
        tripped_at_ = demanded(demand);
    }

    void add_trace_point(const Flowing& flowing, Duty duty) {
        const auto point = packs_.operating_point(duty, flowing.net());
        course_.trace.push_back({.at = now_,
                                 .stored = packs_.stored(),
                                 .charge = packs_.charge(),
                                 .voltage = point.voltage,
                                 .rested = packs_.voltage_at_rest(duty),
                                 .current = point.current,
                                 .wanted = flowing.taken.wanted,
                                 .served = flowing.taken.served,
                                 .sun_offered = flowing.sun.offered});
    }
};

template <class Packs>
Course run_with(const Unit& unit, std::span<const DemandStep> demand,
                std::span<const SunChange> sun, Duration lasts, Duration midnight, Keep keep,
                std::vector<SunOfDay>* days) {
    assert(!demand.empty());
    static const SunChange none{};
    Clock<Packs> clock(unit, midnight, keep, days);
    if (keep.trace && !(keep.every > Duration{})) clock.reserve(demand.size() + sun.size() + 16);
    std::size_t step = 0;
    std::size_t light = 0;
    std::size_t today = 0;
    for (Duration now{}; now < lasts;) {
        Duration next = lasts;
        if (today + 1 < unit.days.size()) next = std::min(next, unit.days[today + 1].from);
        if (step + 1 < demand.size()) next = std::min(next, demand[step + 1].from);
        if (light + 1 < sun.size()) next = std::min(next, sun[light + 1].from);
        clock.until(next, demand[step], sun.empty() ? none : sun[light]);
        now = next;
        if (clock.failed() && !keep.after_failure) break;
        while (step + 1 < demand.size() && demand[step + 1].from <= now)
            ++step;
        while (light + 1 < sun.size() && sun[light + 1].from <= now)
            ++light;
        while (today + 1 < unit.days.size() && unit.days[today + 1].from <= now)
            clock.begin_day(++today);
    }
    return clock.finish(lasts);
}

}  // namespace

Course run(const Unit& unit, std::span<const DemandStep> demand, std::span<const SunChange> sun,
           Duration lasts, Duration midnight, Keep keep, std::vector<SunOfDay>* days) {
    return unit.others.empty()
               ? run_with<LikePacks>(unit, demand, sun, lasts, midnight, keep, days)
               : run_with<UnlikePacks>(unit, demand, sun, lasts, midnight, keep, days);
}

}  // namespace outage
