#include "outage/clock.hpp"

#include <algorithm>
#include <cassert>
#include <limits>
#include <stdexcept>
#include <utility>

#include "outage/account.hpp"
#include "outage/current_source.hpp"
#include "outage/inverter_draw.hpp"
#include "outage/overload.hpp"
#include "outage/packs.hpp"

namespace outage {

namespace {

using namespace units;

// All common practice, no source; method.md (15).
constexpr Duration inverter_rest = 5.0 * minute;
constexpr Voltage by_hand_above_cut_off = 0.2 * volt;
constexpr Voltage load_on_above_lowest = 0.3 * volt;
constexpr Duration load_rest = 1.0 * minute;      // before it comes on by itself; ours
constexpr Duration worth_a_note = 10.0 * minute;  // ours
// A fuse that a falling voltage may bring beyond what it bears. (13)
constexpr Duration looked_at_again = 1.0 * minute;

constexpr std::size_t most_rests_told = 8;
constexpr Duration forever = std::numeric_limits<double>::infinity() * second;

enum class Supply {
    serving,
    opened_low,  // the packs' own protection, on low voltage; until they are charged
    blown,       // a fuse
};

// The inverter with all that it feeds, or a 12 V load: a part of the supply that goes out and comes
// on by itself.
struct Part {
    std::size_t id = everything;
    std::size_t direct = 0;  // place in Parts::direct
    bool out = false;
    bool dead = false;  // behind a fuse that has opened
    LimitedBy why{};
    Duration since{};      // it has been out
    bool asked = false;    // it is to be tried when it may be
    bool tried = false;    // it is in again, and nothing has flown yet
    std::size_t told = 0;  // its entry of Course::out
    Power draws{};         // at this moment, were it in; without what circuits lose
    Power useful{};
    Voltage lowest{};  // at the bus
};

// The fuse of a circuit of 12 V loads.
//   lowest   of the voltages that its loads bear
struct BranchFuse {
    Overload stands;
    Voltage lowest{};
    Current carries{};  // at this moment, where it is looked at
};

// Packs is LikePacks or UnlikePacks.
template <class Packs>
class Clock {
  public:
    Clock(const Unit& unit, Duration midnight, Keep keep, std::vector<SunOfDay>* days,
          const Parts* parts)
        : unit_(unit),
          midnight_(midnight),
          keep_(keep),
          days_(days),
          ways_of_(parts),
          packs_(unit),
          intervals_(keep.intervals, packs_.stored()) {
        if (unit.main_fuse && unit.inverter) main_ = Overload(*unit.main_fuse);
        make_parts();
        make_branch_fuses();
        course_.limited_by = LimitedBy::none;
        course_.lowest_voltage = std::numeric_limits<Voltage>::infinity();
        course_.ledger.stored_at_start = packs_.stored();
        if (packs_.beyond_usable())
            passes_usable();
        else if (packs_.starts_empty())
            fails(LimitedBy::charge);
    }

    //   next   when another demand begins
    void until(Duration end, const demand::DemandStep& demand, const SunChange& sun,
               Duration next) {
        next_demand_ = next;
        if (&demand != weighed_) weigh(demand);
        note_switching(demand);
        int without_progress = 0;
        while (now_ < end) {
            const Duration before = now_;
            one_leg(end, demand, sun);
            without_progress = now_ > before ? 0 : without_progress + 1;
            if (without_progress > most_at_once())
                throw std::logic_error("the outage clock stands still");
        }
    }

    void begin_day(std::size_t day) { packs_.begin_day(day); }

    void reserve(std::size_t points) { course_.trace.reserve(points); }

    [[nodiscard]] bool failed() const { return failed_; }

    Course finish(Duration lasts) {
        for (Part& part : parts_)
            if (part.out) tell_until(part.told);
        if (told_of_all_) tell_until(*told_of_all_);
        if (told_of_overload_) tell_until(*told_of_overload_);
        auto& ledger = course_.ledger;
        ledger.stored_at_end = packs_.stored();
        course_.strain = packs_.strain();
        course_.pack_currents = packs_.currents();
        for (const PackCurrents& pack : course_.pack_currents)
            course_.highest_pack_current = std::max(course_.highest_pack_current, pack.largest());
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
    const demand::DemandStep* weighed_ = nullptr;
    InverterDraw draw_;
    Duration next_point_{};
    Duration midnight_;
    Keep keep_;
    std::vector<SunOfDay>* days_;
    const Parts* ways_of_;  // nothing: the 12 V loads are one
    Duration next_demand_{};

    Duration now_{};
    Packs packs_;
    ByInterval<Packs> intervals_;
    Supply supply_ = Supply::serving;
    std::vector<Part> parts_;  // the inverter first, where there is one
    std::size_t out_ = 0;      // so many of them
    std::optional<std::size_t> told_of_all_;
    std::optional<std::size_t> told_of_overload_;
    bool told_empty_ = false;
    bool any_tried_ = false;
    Overload main_;  // the fuse in front of the inverter
    Current in_main_{};
    bool main_blown_ = false;
    // Of the circuits of 12 V loads, in the order of Parts::ways; empty where none may open.
    std::vector<BranchFuse> branch_fuses_;
    bool overloaded_ = false;
    bool inverter_was_on_ = true;
    bool first_step_ = true;
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
    void note_closed_again() { note_closed_again(now_); }
    void note_closed_again(Duration when) {
        for (const std::size_t pack : packs_.closed_again()) {
            std::swap(now_, when);
            note(EventKind::one_back, {}, {}, {}, pack);
            std::swap(now_, when);
        }
    }

    void note_part(EventKind kind, const Part& part, Power power = {}) {
        if (!keep_.trace) return;
        note(kind, power);
        if (part.id != the_inverter && part.id != everything) course_.events.back().load = part.id;
    }

    // A stretch without supply begins, and ends.
    std::size_t tell_from(std::size_t part, LimitedBy why) {
        if (keep_.trace) course_.out.push_back({part, now_, now_, why});
        return course_.out.size() - 1;
    }
    void tell_until(std::size_t told) {
        if (keep_.trace) course_.out[told].to = now_;
    }

    void make_parts() {
        if (unit_.inverter) parts_.push_back({.id = the_inverter});
        if (ways_of_ == nullptr) {
            parts_.push_back({});
            return;
        }
        for (std::size_t i = 0; i < ways_of_->direct.size(); ++i)
            parts_.push_back({.id = ways_of_->direct[i].load, .direct = i});
    }
    void make_branch_fuses() {
        if (ways_of_ == nullptr || !ways_of_->may_open) return;
        branch_fuses_.resize(ways_of_->fuses.size());
        for (std::size_t way = 0; way < branch_fuses_.size(); ++way) {
            BranchFuse& fuse = branch_fuses_[way];
            fuse.lowest = std::numeric_limits<Voltage>::infinity();
            for (const DirectPart& direct : ways_of_->direct)
                if (std::ranges::find(direct.ways, way) != direct.ways.end())
                    fuse.lowest = std::min(fuse.lowest, direct.lowest);
            if (ways_of_->fuses[way]) fuse.stands = Overload(*ways_of_->fuses[way]);
        }
    }
    [[nodiscard]] Part* the_inverters() { return unit_.inverter ? &parts_.front() : nullptr; }
    [[nodiscard]] bool inverter_is_out() const { return unit_.inverter && parts_.front().out; }
    [[nodiscard]] static bool is_inverter(const Part& part) { return part.id == the_inverter; }
    [[nodiscard]] int most_at_once() const {
        return 64 + 4 * static_cast<int>(packs_.banks() + 1) * static_cast<int>(parts_.size() + 1);
    }

    void note_switching(const demand::DemandStep& demand) {
        if (!unit_.inverter) return;
        if (!first_step_ && demand.inverter_on != inverter_was_on_)
            note(demand.inverter_on ? EventKind::inverter_switched_on
                                    : EventKind::inverter_switched_off);
        // Switching it off and on by hand clears its cut-off.
        if (!demand.inverter_on && inverter_is_out() && !main_blown_) put_in(parts_.front());
        inverter_was_on_ = demand.inverter_on;
        first_step_ = false;
    }

    // What the inverter makes of a demand, once for all legs of it; and whoever is out asks again.
    void weigh(const demand::DemandStep& demand) {
        weighed_ = &demand;
        draw_ = drawn_by_inverter(unit_, demand);
        packs_.lowest_is(demand.lowest, draw_.needs);
        if (out_ == 0) return;
        look_at_parts(demand);
        packs_.ask_again();
        for (Part& part : parts_)
            part.asked = part.out;
    }

    // What each part draws now, and the voltage that it bears.
    void look_at_parts(const demand::DemandStep& demand) {
        std::vector<Power> flows;
        if (ways_of_ != nullptr) flows = on_ways(*ways_of_, now_, [](std::size_t) { return true; });
        for (Part& part : parts_) {
            if (is_inverter(part)) {
                part.draws = draw_.at_terminals;
                part.useful = demand.inverter_on ? demand.ac : Power{};
                part.lowest = draw_.needs;
            } else if (ways_of_ == nullptr) {
                part.draws = demand.direct;
                part.useful = demand.direct_useful;
                part.lowest = demand.lowest;
            } else {
                const auto& direct = ways_of_->direct[part.direct];
                const auto& draw = draw_at(direct, now_);
                part.draws = draw.at_bus;
                part.useful = draw.useful;
                part.lowest = lowest_at_bus(*ways_of_, direct, flows);
            }
        }
        set_lowest();
    }

    // The packs end a leg at the highest voltage that a 12 V load in it needs.
    void set_lowest() {
        Voltage lowest{};
        for (const Part& part : parts_)
            if (!is_inverter(part) && !part.out && part.draws > Power{})
                lowest = std::max(lowest, part.lowest);
        packs_.lowest_is(lowest, draw_.needs);
    }

    void note_overload(const demand::DemandStep& demand) {
        const bool over = !draw_.carried;
        if (over && !overloaded_) {
            note(EventKind::inverter_overload, demand.ac);
            told_of_overload_ = tell_from(the_inverter, LimitedBy::inverter_limit);
            fails(LimitedBy::inverter_limit);
        }
        if (!over && overloaded_) {
            note(EventKind::inverter_overload_over, demand.ac);
            tell_until(*told_of_overload_);
            told_of_overload_.reset();
        }
        overloaded_ = over;
    }

    [[nodiscard]] bool inverter_runs(const demand::DemandStep& demand) const {
        return unit_.inverter && demand.inverter_on && !inverter_is_out() && !overloaded_ &&
               !main_blown_ && supply_ == Supply::serving;
    }
    [[nodiscard]] bool draws(const Part& part, const demand::DemandStep& demand) const {
        if (is_inverter(part)) return inverter_runs(demand);
        return !part.out && part.draws > Power{};
    }

    [[nodiscard]] Taken taken(const demand::DemandStep& demand) const {
        Taken taken;
        taken.wanted = (demand.inverter_on ? demand.ac : Power{}) + demand.direct_useful;
        if (supply_ != Supply::serving) return taken;
        if (out_ == (inverter_is_out() ? 1U : 0U)) {
            taken.direct = demand.direct;
            taken.branches = demand.in_branches;
            taken.converter = demand.direct - demand.direct_useful - demand.in_branches;
            taken.served = demand.direct_useful;
        } else {
            take_direct(taken);
            if (demand.inverter_on) taken.wanted += demand.ac;
        }
        if (!inverter_runs(demand)) return taken;
        taken.ac = demand.ac;
        taken.at_inverter = draw_.at_terminals;
        taken.in_main = draw_.in_main;
        taken.idle = demand.asleep ? unit_.inverter->asleep : unit_.inverter->losses.idle;
        taken.served += demand.ac;
        return taken;
    }

    // Of the 12 V loads those that are in; what is wanted is summed alike, so that both are equal
    // to the last bit when nobody who is out wants anything.
    void take_direct(Taken& taken) const {
        Power at_bus{};
        taken.wanted = Power{};
        for (const Part& part : parts_) {
            if (is_inverter(part)) continue;
            taken.wanted += part.useful;
            if (part.out) continue;
            at_bus += part.draws;
            taken.served += part.useful;
        }
        if (ways_of_ != nullptr) {
            const std::size_t first = unit_.inverter ? 1 : 0;
            const auto flows =
                on_ways(*ways_of_, now_, [&](std::size_t i) { return !parts_[first + i].out; });
            for (std::size_t way = 0; way < flows.size(); ++way)
                taken.branches += at_end_of(ways_of_->ways[way], ways_of_->bus, flows[way]).lost;
        }
        taken.direct = at_bus + taken.branches;
        taken.converter = at_bus - taken.served;
    }

    // ---- Out and in again. method.md (15)

    // Of what draws now, the part that a falling voltage puts out first: the one that needs most of
    // it; of equal ones the heaviest, after which the voltage rises most.
    [[nodiscard]] Part* first_to_go(const demand::DemandStep& demand) {
        constexpr Voltage as_good_as_equal = 1e-3 * volt;
        Part* first = nullptr;
        for (Part& part : parts_) {
            if (!draws(part, demand)) continue;
            if (first == nullptr || part.lowest > first->lowest + as_good_as_equal ||
                (part.lowest > first->lowest - as_good_as_equal && part.draws > first->draws))
                first = &part;
        }
        return first;
    }
    // After a protection opened on its current.
    [[nodiscard]] Part* heaviest(const demand::DemandStep& demand) {
        Part* most = nullptr;
        for (Part& part : parts_)
            if (draws(part, demand) && (most == nullptr || part.draws > most->draws)) most = &part;
        return most;
    }

    void put_out(Part& part, LimitedBy why) {
        part.out = true;
        ++out_;
        if (!std::exchange(part.tried, false)) {
            part.why = why;
            part.since = now_;
            part.told = tell_from(part.id, why);
        }
        part.asked = false;
        fails(why);
        packs_.wait_for_charge();
        set_lowest();
    }
    void put_in(Part& part) {
        part.out = false;
        part.asked = false;
        --out_;
        if (keep_.trace && part.told < course_.out.size()) tell_until(part.told);
        set_lowest();
    }

    // Lighter ones that went out at this instant were pulled down by this one.
    void lighter_ask_again(const Part& heavy) {
        for (Part& part : parts_)
            if (part.out && part.draws < heavy.draws) part.asked = true;
    }

    // Something is asked for that cannot be met: it goes without, everything else is asked at once.
    //   why     unless nothing is left at all
    //   gives   false where nobody draws: packs that differ may end by what flows between them
    bool goes_out(const demand::DemandStep& demand, LimitedBy why, Power net) {
        look_at_parts(demand);
        Part* part = why == LimitedBy::pack_limit ? heaviest(demand) : first_to_go(demand);
        if (part == nullptr) return false;
        const bool empty = why != LimitedBy::pack_limit && packs_.nothing_left();
        do {
            const bool of_charge = empty && !is_inverter(*part);
            const LimitedBy because = of_charge ? LimitedBy::charge : why;
            if (!part->tried && why != LimitedBy::pack_limit) tell_off(*part, because, net, empty);
            put_out(*part, because);
            lighter_ask_again(*part);
            packs_.ask_again();
            part = first_to_go(demand);
        } while (part != nullptr && !packs_.any_gives() && why != LimitedBy::pack_limit);
        if (empty && !told_empty_ && first_to_go(demand) == nullptr) {
            note(EventKind::packs_empty);
            told_empty_ = true;
        }
        return true;
    }
    void tell_off(const Part& part, LimitedBy why, Power net, bool empty) {
        if (!is_inverter(part)) {
            if (!empty) note_part(EventKind::load_off, part, part.draws);
        } else if (why == LimitedBy::low_voltage) {
            note(EventKind::inverter_off_low_voltage, net);
        } else if (!empty) {
            note(EventKind::inverter_off_empty, net);
        }
    }

    // With this part in: what is taken then, and what of it the packs give.
    [[nodiscard]] Power net_with(Part& part, const demand::DemandStep& demand,
                                 const SunChange& sun) {
        part.out = false;
        --out_;
        const Power net = Flowing{taken(demand), sun, demand.charger}.net();
        part.out = true;
        ++out_;
        return net;
    }
    [[nodiscard]] Duty duty_with(const Part& part, const demand::DemandStep& demand) const {
        return is_inverter(part) || inverter_runs(demand) ? Duty::serving_ac : Duty::serving_direct;
    }

    // The voltage at the bus above which this part may come on, all that is in staying so.
    [[nodiscard]] Voltage needed(const Part& part) const {
        Voltage needed = part.lowest;
        if (!is_inverter(part) && part.why == LimitedBy::low_voltage)
            needed += load_on_above_lowest;
        for (const Part& other : parts_)
            if (!other.out && other.draws > Power{}) needed = std::max(needed, other.lowest);
        return needed;
    }

    // Whether it comes on at its own level, without anybody: the inverter with its loads still off.
    [[nodiscard]] bool comes_by_itself(const Part& part) const {
        if (!part.out || !(part.draws > Power{})) return false;
        if (is_inverter(part))
            return unit_.inverter->restart == scenario::Restart::by_itself && !overloaded_ &&
                   !main_blown_ && now_ >= part.since + inverter_rest;
        return part.why == LimitedBy::low_voltage && !part.dead && now_ >= part.since + load_rest;
    }
    //   forgiven   of the level, for rounding
    [[nodiscard]] bool at_its_level(Packs& packs, Part& part, const demand::DemandStep& demand,
                                    const SunChange& sun, Voltage forgiven) {
        if (is_inverter(part)) {
            const Power net = Flowing{taken(demand), sun, demand.charger}.net();
            const auto point = packs.shown(Duty::serving_direct, net);
            return point.possible && point.voltage >= unit_.inverter->restart_voltage - forgiven;
        }
        return packs.gives(duty_with(part, demand), net_with(part, demand, sun),
                           needed(part) - forgiven, false);
    }

    // Whether somebody who tries it finds that it runs.
    [[nodiscard]] bool runs_when_asked(Part& part, const demand::DemandStep& demand,
                                       const SunChange& sun) {
        if (part.dead) return false;
        if (is_inverter(part)) {
            if (overloaded_ || main_blown_ || now_ < part.since + inverter_rest) return false;
            const Power without = Flowing{taken(demand), sun, demand.charger}.net();
            const auto point = packs_.shown(Duty::serving_direct, without);
            if (!point.possible ||
                point.voltage <= unit_.inverter->cutoff_voltage + by_hand_above_cut_off)
                return false;
        }
        return packs_.gives(duty_with(part, demand), net_with(part, demand, sun), needed(part),
                            part.why == LimitedBy::pack_limit);
    }

    // What comes back at this moment, the lightest first.
    void try_to_come_back(const demand::DemandStep& demand, const SunChange& sun) {
        if (supply_ != Supply::serving) return;
        packs_.demand_is(taken(demand).at_bus());
        note_closed_again();
        if (out_ == 0) return;
        look_at_parts(demand);
        std::vector<Part*> asking;
        for (Part& part : parts_)
            if (part.out && part.draws > Power{}) asking.push_back(&part);
        std::ranges::stable_sort(asking, {}, [](const Part* part) { return part->draws; });
        for (Part* part : asking) {
            if (comes_by_itself(*part) && at_its_level(packs_, *part, demand, sun, 1e-6 * volt))
                comes_on(*part, false);
            else if (by_hand(*part) && part->asked && !rests(*part) &&
                     !(part->asked = false, !runs_when_asked(*part, demand, sun)))
                comes_on(*part, true);
        }
    }
    [[nodiscard]] bool by_hand(const Part& part) const {
        return !is_inverter(part) || unit_.inverter->restart == scenario::Restart::by_hand;
    }
    [[nodiscard]] bool rests(const Part& part) const {
        return is_inverter(part) && now_ < part.since + inverter_rest;
    }
    void comes_on(Part& part, bool tried) {
        put_in(part);
        part.tried = tried;
        any_tried_ = any_tried_ || tried;
        if (!tried) tell_on(part);
    }
    void tell_on(const Part& part) {
        note_part(is_inverter(part) ? EventKind::inverter_on_again : EventKind::load_on_again,
                  part);
    }
    // Time has passed: what was tried runs.
    void what_was_tried_runs(Duration since) {
        any_tried_ = false;
        for (Part& part : parts_) {
            if (!std::exchange(part.tried, false)) continue;
            std::swap(now_, since);
            tell_on(part);
            std::swap(now_, since);
        }
    }

    [[nodiscard]] Duty duty(const demand::DemandStep& demand) const {
        if (supply_ == Supply::opened_low) return Duty::waiting;
        if (supply_ == Supply::blown) return Duty::idle;
        if (inverter_runs(demand)) return Duty::serving_ac;
        return unit_.inverter && demand.inverter_on && comes_by_itself(parts_.front())
                   ? Duty::inverter_rested
                   : Duty::serving_direct;
    }

    // Until a part that somebody waits for, or that waits for its own level, may come on.
    [[nodiscard]] Duration rest_ends() const {
        Duration first = forever;
        if (out_ == 0 || supply_ != Supply::serving) return first;
        for (const Part& part : parts_) {
            if (!part.out || !(part.draws > Power{})) continue;
            const bool waits = is_inverter(part) ? part.asked || !by_hand(part)
                                                 : part.why == LimitedBy::low_voltage;
            const Duration ends = part.since + (is_inverter(part) ? inverter_rest : load_rest);
            if (waits && ends > now_) first = std::min(first, ends);
        }
        return first;
    }

    // Within a leg, until a part comes on at its own level; the packs are tried on copies.
    [[nodiscard]] Duration until_one_comes(const demand::DemandStep& demand, const SunChange& sun,
                                           Duty now_duty, Power net, Duration leg) {
        constexpr int pieces = 8;
        constexpr int halvings = 14;
        if (out_ == 0 || supply_ != Supply::serving || !packs_.may_rise(net)) return leg;
        const bool waits =
            std::ranges::any_of(parts_, [&](const Part& part) { return comes_by_itself(part); });
        if (!waits) return leg;
        const auto one_may = [&](Packs& packs) {
            return std::ranges::any_of(parts_, [&](Part& part) {
                return comes_by_itself(part) && at_its_level(packs, part, demand, sun, Voltage{});
            });
        };
        Packs ahead = packs_;
        for (int piece = 0; piece < pieces; ++piece) {
            const Packs before = ahead;
            const Duration length = leg / static_cast<double>(pieces);
            const bool whole =
                ahead.advance(now_duty, net, length).ending == battery::Ending::completed;
            if (!whole) return leg;
            if (!one_may(ahead)) continue;
            Duration low{};
            Duration high = length;
            for (int i = 0; i < halvings; ++i) {
                const Duration middle = 0.5 * (low + high);
                Packs there = before;
                (void)there.advance(now_duty, net, middle);
                (one_may(there) ? high : low) = middle;
            }
            return std::min<Duration>(leg, static_cast<double>(piece) * length + high);
        }
        return leg;
    }

    // A load that would run again after a rest, though nobody asks: from when, and how long.
    void note_rest(Part& part, const demand::DemandStep& demand, const SunChange& sun) {
        constexpr int pieces = 48;
        const Duration horizon = next_demand_ - now_;
        if (!keep_.trace || course_.after_rest.size() >= most_rests_told) return;
        if (horizon < worth_a_note || comes_by_itself(part) || !by_hand(part)) return;
        const bool told = std::ranges::any_of(
            course_.after_rest, [&](const AfterRest& rest) { return rest.part == part.id; });
        if (told) return;
        const Power with = net_with(part, demand, sun);
        const Power others = Flowing{taken(demand), sun, demand.charger}.net();
        const Duty on = duty_with(part, demand);
        const Voltage level = needed(part);
        AfterRest rest{.part = part.id, .out = now_};
        if (!packs_.gives_rested(on, with, level)) {
            course_.after_rest.push_back(rest);
            return;
        }
        const Duration step = std::max<Duration>(minute, horizon / static_cast<double>(pieces));
        Packs resting = packs_;
        for (Duration after = step; after + worth_a_note <= horizon; after += step) {
            if (resting.advance(duty(demand), others, step).ending != battery::Ending::completed)
                return;
            resting.ask_again();
            if (!resting.gives(on, with, level, false)) continue;
            Packs trial = resting;
            const Leg runs = trial.advance(on, with, horizon - after);
            if (runs.time < worth_a_note) continue;
            rest.from = now_ + after;
            rest.lasts = runs.time;
            course_.after_rest.push_back(rest);
            return;
        }
    }
    void note_rests(const demand::DemandStep& demand, const SunChange& sun) {
        if (out_ == 0 || supply_ != Supply::serving || packs_.nothing_left()) return;
        for (Part& part : parts_)
            if (part.out && part.since == now_ && part.draws > Power{} && !part.asked &&
                part.why != LimitedBy::pack_limit && part.why != LimitedBy::fuse)
                note_rest(part, demand, sun);
    }

    // What a controller that passes on a current gives at this moment. method.md (16)
    void pass_current(SunChange& sun, const demand::DemandStep& demand) const {
        if (!(sun.passes > Current{})) return;
        sun.offered = power_passed_now(packs_, duty(demand), sun.passes,
                                       taken(demand).at_bus() - demand.charger, sun.offered);
    }

    // As far as conditions hold, at most to the end.
    void one_leg(Duration end, const demand::DemandStep& demand, SunChange sun) {
        note_overload(demand);
        pass_current(sun, demand);
        const auto before_they_try = std::pair(duty(demand), taken(demand).at_bus());
        try_to_come_back(demand, sun);
        if (before_they_try != std::pair(duty(demand), taken(demand).at_bus()))
            pass_current(sun, demand);
        Flowing flowing{taken(demand), sun, demand.charger};
        Power net = flowing.net();
        const Duty now_duty = duty(demand);
        Duration leg = end - now_;
        const Duration whole = leg;
        const Duration rested = rest_ends();
        const bool rest_ends_first = rested < end;
        if (rest_ends_first) leg = rested - now_;
        const Duration looked = main_fuse_stands(flowing.taken, net, now_duty);
        if (looked <= at_once) {
            main_fuse_opens(net);
            return;
        }
        leg = std::min(leg, looked);
        if (!branch_fuses_.empty()) {
            const auto [stand, way] = branch_fuses_stand(net, now_duty);
            if (stand <= at_once) {
                branch_fuse_opens(way);
                return;
            }
            leg = std::min(leg, stand);
        }
        if (out_ > 0) leg = until_one_comes(demand, sun, now_duty, net, leg);
        if (sun.passes > Current{}) {
            flowing.sun.offered =
                power_passed_over(packs_, now_duty, sun.passes,
                                  flowing.taken.at_bus() - flowing.charger, sun.offered, leg);
            net = flowing.net();
        }
        const bool kept = keep_.trace && now_ >= next_point_;
        if (kept) add_trace_point(flowing, now_duty);
        std::optional<Packs> before;
        if (intervals_.may_cross(now_, leg)) before.emplace(packs_);
        const Leg step = packs_.advance(now_duty, net, leg);
        const Ledger flows = flows_of(step, flowing);
        account(step, flows);
        if (flowing.taken.at_inverter > Power{} && step.time > Duration{})
            course_.highest_main_current =
                std::max(course_.highest_main_current,
                         current_in_main(unit_, flowing.taken.at_inverter, step.voltage));
        intervals_.add_leg(now_, step, now_duty, flowing, flows, before, packs_);
        const Energy of_sun = flows.sun_used + flows.sun_stored;
        if (kept && step.time > Duration{}) {
            course_.trace.back().sun_taken = of_sun / step.time;
            next_point_ = now_ + keep_.every;
        } else if (kept) {
            course_.trace.pop_back();  // nothing lasted: the next leg begins at the same instant
        }
        if (main_.running())
            main_.pass(
                std::max(in_main_, current_in_main(unit_, flowing.taken.at_inverter, step.voltage)),
                step.time);
        for (BranchFuse& fuse : branch_fuses_)
            if (fuse.stands.running()) fuse.stands.pass(fuse.carries, step.time);
        const Duration began = now_;
        if (step.ending == battery::Ending::completed)
            now_ = leg == whole                              ? end
                   : rest_ends_first && now_ + leg >= rested ? rested
                                                             : now_ + leg;
        else
            now_ = std::min(end, now_ + step.time);
        if (now_ > began) {
            if (any_tried_) what_was_tried_runs(began);
            note_closed_again(began);
        }
        if (step.ending != battery::Ending::completed) {
            handle(step, demand, net);
            if (failed_ && keep_.after_failure) note_rests(demand, sun);
        }
        last_ = flowing;
        last_sun_taken_ = step.time > Duration{} ? of_sun / step.time : Power{};
    }

    // Until the fuse in front of the inverter opens, or is to be looked at again. method.md (13)
    [[nodiscard]] Duration main_fuse_stands(const Taken& taken, Power net, Duty now_duty) {
        in_main_ = {};
        const auto bears = main_.watched(0);
        if (!bears) return forever;
        if (!(taken.at_inverter > Power{})) {
            if (main_.running()) main_.settle({});
            return forever;
        }
        const bool may = taken.at_inverter > *bears * unit_.inverter->cutoff_voltage;
        if (!may && !main_.running()) return forever;
        in_main_ = current_in_main(unit_, taken.at_inverter,
                                   packs_.operating_point(now_duty, net).voltage);
        main_.settle(in_main_);
        main_.rise_to(in_main_);
        const auto standing = main_.standing(in_main_);
        if (standing.still <= at_once) return {};
        return may ? std::min(until_looked_at(standing), looked_at_again)
                   : until_looked_at(standing);
    }

    // The first of the branches' fuses to open or to be looked at again, and which it is.
    [[nodiscard]] std::pair<Duration, std::size_t> branch_fuses_stand(Power net, Duty now_duty) {
        std::pair<Duration, std::size_t> first{forever, 0};
        const std::size_t before = unit_.inverter ? 1 : 0;
        const auto is_in = [&](std::size_t i) {
            return supply_ == Supply::serving && !parts_[before + i].out;
        };
        const auto flows = on_ways(*ways_of_, now_, is_in);
        std::vector<Current> currents;
        for (std::size_t way = 0; way < branch_fuses_.size(); ++way) {
            BranchFuse& fuse = branch_fuses_[way];
            const auto bears = fuse.stands.watched(0);
            if (!bears) continue;
            const bool may = flows[way] > *bears * fuse.lowest;
            if (!may && !fuse.stands.running()) continue;
            if (currents.empty())
                currents = currents_on_ways(*ways_of_, now_,
                                            packs_.operating_point(now_duty, net).voltage, is_in);
            fuse.carries = currents[way];
            fuse.stands.settle(fuse.carries);
            fuse.stands.rise_to(fuse.carries);
            const auto standing = fuse.stands.standing(fuse.carries);
            Duration looked = standing.still <= at_once ? Duration{} : until_looked_at(standing);
            if (may) looked = std::min(looked, looked_at_again);
            if (looked < first.first) first = {looked, way};
        }
        return first;
    }

    void branch_fuse_opens(std::size_t way) {
        note(EventKind::branch_fuse_opens, {}, {}, branch_fuses_[way].carries);
        if (keep_.trace) course_.events.back().branch = way;
        branch_fuses_[way].stands = Overload();
        for (Part& part : parts_) {
            if (is_inverter(part)) continue;
            const auto& ways = ways_of_->direct[part.direct].ways;
            if (part.dead || std::ranges::find(ways, way) == ways.end()) continue;
            part.dead = true;
            if (part.out && keep_.trace) tell_until(part.told);
            if (part.out) {
                part.why = LimitedBy::fuse;
                part.told = tell_from(part.id, LimitedBy::fuse);
            } else {
                put_out(part, LimitedBy::fuse);
            }
        }
        fails(LimitedBy::fuse);
        for (Part& part : parts_)
            part.asked = part.out && !part.dead;  // less is drawn than a moment ago
    }

    void main_fuse_opens(Power net) {
        note(EventKind::main_fuse_opens, net, {}, in_main_);
        main_blown_ = true;
        if (!inverter_is_out()) put_out(parts_.front(), LimitedBy::fuse);
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
        if (step.time > Duration{})
            course_.lowest_voltage = std::min(course_.lowest_voltage, step.voltage);
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

    void handle(const Leg& step, const demand::DemandStep& demand, Power net) {
        using battery::Ending;
        switch (step.ending) {
            case Ending::completed:
                break;
            case Ending::pack_restored:
                note_closed_again();
                ask_all();
                break;
            case Ending::cut_off:
                goes_out(demand, LimitedBy::low_voltage, net);
                break;
            case Ending::cannot_be_delivered:
                cannot_be_delivered(step, demand, net);
                break;
            case Ending::available_well_empty:
                if (one_opens(step, demand, EventKind::one_empty)) break;
                goes_out(demand, LimitedBy::charge, net);
                break;
            case Ending::usable_limit:
                passes_usable();
                break;
            case Ending::pack_cut_off:
                if (one_opens(step, demand, EventKind::one_cut_off)) break;
                note(EventKind::packs_cut_off);
                opens_for_all(Supply::opened_low, LimitedBy::low_voltage);
                packs_.wait_for_charge();
                break;
            case Ending::current_limit:
                over_current(step, demand, net);
                break;
            case Ending::voltage_restored:
                if (inverter_is_out()) comes_on(parts_.front(), false);
                break;
            case Ending::charge_restored:
                charge_is_back();
                break;
            case Ending::full:
                note(EventKind::packs_full);
                break;
        }
    }

    // The share that a person allows: the promise ends, and nothing is switched off.
    void passes_usable() {
        note(EventKind::packs_at_usable_limit);
        if (!course_.crosses_usable_at) course_.crosses_usable_at = now_;
        packs_.pass_usable();
        fails(LimitedBy::usable);
    }

    void cannot_be_delivered(const Leg& step, const demand::DemandStep& demand, Power net) {
        if (packs_.nothing_left() || packs_.all_ended()) {  // empty, and no voltage collapses
            goes_out(demand, LimitedBy::charge, net);
            return;
        }
        look_at_parts(demand);
        const Part* part = first_to_go(demand);
        if (part == nullptr || !part->tried)
            note(EventKind::cannot_be_delivered, net, step.at_most);
        const std::size_t told = course_.events.size();
        goes_out(demand, LimitedBy::low_voltage, net);
        // that the inverter went off is in what was told
        if (part != nullptr && is_inverter(*part) && told < course_.events.size() &&
            course_.events[told].kind == EventKind::inverter_off_low_voltage)
            course_.events.erase(course_.events.begin() + static_cast<std::ptrdiff_t>(told));
    }

    void opens_for_all(Supply supply, LimitedBy why) {
        supply_ = supply;
        fails(why);
        told_of_all_ = tell_from(everything, why);
    }

    void ask_all() {
        for (Part& part : parts_)
            part.asked = part.out;
    }

    // So much is charged again that it is worth a try, or below the usable limit.
    void charge_is_back() {
        if (!packs_.restored().charge) return;
        told_empty_ = false;
        if (supply_ == Supply::opened_low) {
            supply_ = Supply::serving;
            packs_.come_back();
            note_closed_again();
            if (told_of_all_) tell_until(*told_of_all_);
            told_of_all_.reset();
            note(EventKind::supply_back);
        }
        ask_all();
        if (out_ > 0) packs_.wait_for_charge();
    }

    // One pack opens and others go on giving.
    bool one_opens(const Leg& step, const demand::DemandStep& demand, EventKind kind) {
        if (packs_.open(step, taken(demand).at_bus()) == Opened::all) return false;
        if (!packs_.opened_again()) note_opening(kind, {}, step);
        return true;
    }

    void note_opening(EventKind kind, Power net, const Leg& step) {
        note(kind, net, {}, step.at_pack, step.pack);
        if (!keep_.trace) return;
        course_.events.back().after = step.opens.since;
        course_.events.back().above = step.opens.above;
    }

    // A fuse is through for good; a protection closes when the load that was too much is gone.
    void over_current(const Leg& step, const demand::DemandStep& demand, Power net) {
        const bool fuse = step.opens.fuse;
        if (one_opens(step, demand, fuse ? EventKind::one_fuse_opens : EventKind::one_over_current))
            return;
        note_opening(fuse ? EventKind::fuse_opens : EventKind::packs_over_current, net, step);
        if (fuse) {
            opens_for_all(Supply::blown, LimitedBy::fuse);
            return;
        }
        if (goes_out(demand, LimitedBy::pack_limit, net)) packs_.close_after_current();
    }

    void add_trace_point(const Flowing& flowing, Duty duty) {
        const auto point = packs_.shown(duty, flowing.net());
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
Course run_with(const Unit& unit, std::span<const demand::DemandStep> demand,
                std::span<const SunChange> sun, Duration lasts, Duration midnight, Keep keep,
                std::vector<SunOfDay>* days, const Parts* parts) {
    assert(!demand.empty());
    static const SunChange none{};
    Clock<Packs> clock(unit, midnight, keep, days, parts);
    if (keep.trace && !(keep.every > Duration{})) clock.reserve(demand.size() + sun.size() + 16);
    std::size_t step = 0;
    std::size_t light = 0;
    std::size_t today = 0;
    for (Duration now{}; now < lasts;) {
        Duration next = lasts;
        if (today + 1 < unit.days.size()) next = std::min(next, unit.days[today + 1].from);
        if (step + 1 < demand.size()) next = std::min(next, demand[step + 1].from);
        if (light + 1 < sun.size()) next = std::min(next, sun[light + 1].from);
        clock.until(next, demand[step], sun.empty() ? none : sun[light],
                    step + 1 < demand.size() ? demand[step + 1].from : lasts);
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

Course run(const Unit& unit, std::span<const demand::DemandStep> demand,
           std::span<const SunChange> sun, Duration lasts, Duration midnight, Keep keep,
           std::vector<SunOfDay>* days, const Parts* parts) {
    return unit.others.empty()
               ? run_with<LikePacks>(unit, demand, sun, lasts, midnight, keep, days, parts)
               : run_with<UnlikePacks>(unit, demand, sun, lasts, midnight, keep, days, parts);
}

}  // namespace outage
