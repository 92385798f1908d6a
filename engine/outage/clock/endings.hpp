// What the ending of a leg means for the supply: who goes without, what opens, and what that tells.
// Packs is LikePacks or UnlikePacks. method.md (2), (15)
#pragma once

#include <optional>

#include "outage/clock/switching.hpp"

namespace outage {

// A leg that has ended before its time.
struct Ended {
    const Leg& leg;
    const demand::DemandStep& demand;
    units::Power net{};  // that the packs gave
};

template <class Packs>
class Endings {
  public:
    explicit Endings(Switching<Packs>& switching)
        : switching_(switching),
          supply_(switching.supply),
          packs_(switching.packs),
          telling_(switching.telling) {}

    void handle(const Ended& ended) {
        using battery::Ending;
        switch (ended.leg.ending) {
            case Ending::cut_off:
                goes_out(ended, LimitedBy::low_voltage);
                break;
            case Ending::cannot_be_delivered:
                cannot_be_delivered(ended);
                break;
            case Ending::available_well_empty:
                if (!one_opens(ended, EventKind::one_empty)) goes_out(ended, LimitedBy::charge);
                break;
            case Ending::pack_cut_off:
                packs_cut_off(ended);
                break;
            case Ending::current_limit:
                over_current(ended);
                break;
            case Ending::usable_limit:
                passes_usable();
                break;
            default:
                comes_back(ended.leg.ending);
        }
    }

    // The share that a person allows: the promise ends, and nothing is switched off.
    void passes_usable() {
        telling_.note(EventKind::packs_at_usable_limit);
        auto& crosses = telling_.course().crosses_usable_at;
        if (!crosses) crosses = telling_.now();
        packs_.pass_usable();
        telling_.fails(LimitedBy::usable);
    }

    // The inverter cannot carry what it is asked for, or can again.
    void look_at_overload(const demand::DemandStep& demand) {
        const bool over = !supply_.draw().carried;
        if (over && !supply_.overloaded) {
            telling_.note(EventKind::inverter_overload, {.power = demand.ac});
            told_of_overload_ = telling_.from(the_inverter, LimitedBy::inverter_limit);
            telling_.fails(LimitedBy::inverter_limit);
        }
        if (!over && supply_.overloaded) {
            telling_.note(EventKind::inverter_overload_over, {.power = demand.ac});
            end(told_of_overload_);
        }
        supply_.overloaded = over;
    }

    // The run is over.
    void finish() {
        for (Part& part : supply_.parts())
            if (part.out) telling_.until(part.told);
        end(told_of_all_);
        end(told_of_overload_);
    }

  private:
    Switching<Packs>& switching_;
    Supply& supply_;
    Packs& packs_;
    Telling& telling_;
    std::optional<std::size_t> told_of_all_;
    std::optional<std::size_t> told_of_overload_;
    bool told_empty_ = false;

    void end(std::optional<std::size_t>& told) {
        if (told) telling_.until(*told);
        told.reset();
    }

    void comes_back(battery::Ending ending) {
        using battery::Ending;
        if (ending == Ending::pack_restored) {
            switching_.note_closed_again(telling_.now());
            supply_.ask_all();
        } else if (ending == Ending::voltage_restored) {
            if (supply_.inverter_is_out()) switching_.comes_on(supply_.inverter(), false);
        } else if (ending == Ending::charge_restored) {
            charge_is_back();
        } else if (ending == Ending::full) {
            telling_.note(EventKind::packs_full);
        }
    }

    // Something is asked for that cannot be met: it goes without, everything else is asked at once.
    //   why     unless nothing is left at all
    //   gives   false where nobody draws: packs that differ may end by what flows between them
    bool goes_out(const Ended& ended, LimitedBy why) {
        switching_.look_at(ended.demand);
        const bool by_limit = why == LimitedBy::pack_limit;
        Part* part = by_limit ? supply_.heaviest(ended.demand) : supply_.first_to_go(ended.demand);
        if (part == nullptr) return false;
        const bool empty = !by_limit && packs_.nothing_left();
        do {
            const bool of_charge = empty && !part->is_inverter();
            const LimitedBy because = of_charge ? LimitedBy::charge : why;
            if (!part->tried && !by_limit) switching_.tell_off(*part, because, ended.net, empty);
            switching_.put_out(*part, because);
            supply_.lighter_ask_again(*part);
            packs_.ask_again();
            part = supply_.first_to_go(ended.demand);
        } while (part != nullptr && !packs_.any_gives() && !by_limit);
        if (empty && !told_empty_ && supply_.first_to_go(ended.demand) == nullptr) {
            telling_.note(EventKind::packs_empty);
            told_empty_ = true;
        }
        return true;
    }

    void cannot_be_delivered(const Ended& ended) {
        if (packs_.nothing_left() || packs_.all_ended()) {  // empty, and no voltage collapses
            goes_out(ended, LimitedBy::charge);
            return;
        }
        switching_.look_at(ended.demand);
        const Part* part = supply_.first_to_go(ended.demand);
        if (part == nullptr || !part->tried)
            telling_.note(EventKind::cannot_be_delivered,
                          {.power = ended.net, .at_most = ended.leg.at_most});
        auto& events = telling_.course().events;
        const std::size_t told = events.size();
        goes_out(ended, LimitedBy::low_voltage);
        // that the inverter went off is in what was told
        if (part != nullptr && part->is_inverter() && told < events.size() &&
            events[told].kind == EventKind::inverter_off_low_voltage)
            events.erase(events.begin() + static_cast<std::ptrdiff_t>(told));
    }

    // One pack opens and others go on giving.
    bool one_opens(const Ended& ended, EventKind kind) {
        const units::Power demanded = supply_.taken(ended.demand, telling_.now()).at_bus();
        if (packs_.open(ended.leg, demanded) == Opened::all) return false;
        if (!packs_.opened_again()) note_opening(kind, {}, ended.leg);
        return true;
    }
    void note_opening(EventKind kind, units::Power net, const Leg& leg) {
        Event* event =
            telling_.note(kind, {.power = net, .current = leg.at_pack, .pack = leg.pack});
        if (event == nullptr) return;
        event->after = leg.opens.since;
        event->above = leg.opens.above;
    }

    void packs_cut_off(const Ended& ended) {
        if (one_opens(ended, EventKind::one_cut_off)) return;
        telling_.note(EventKind::packs_cut_off);
        opens_for_all(Supply::State::opened_low, LimitedBy::low_voltage);
        packs_.wait_for_charge();
    }

    // A fuse is through for good; a protection closes when the load that was too much is gone.
    void over_current(const Ended& ended) {
        const bool fuse = ended.leg.opens.fuse;
        if (one_opens(ended, fuse ? EventKind::one_fuse_opens : EventKind::one_over_current))
            return;
        note_opening(fuse ? EventKind::fuse_opens : EventKind::packs_over_current, ended.net,
                     ended.leg);
        if (fuse)
            opens_for_all(Supply::State::blown, LimitedBy::fuse);
        else if (goes_out(ended, LimitedBy::pack_limit))
            packs_.close_after_current();
    }

    void opens_for_all(Supply::State state, LimitedBy why) {
        supply_.state = state;
        telling_.fails(why);
        told_of_all_ = telling_.from(everything, why);
    }

    // So much is charged again that it is worth a try, or below the usable limit.
    void charge_is_back() {
        if (!packs_.restored().charge) return;
        told_empty_ = false;
        if (supply_.state == Supply::State::opened_low) {
            supply_.state = Supply::State::serving;
            packs_.come_back();
            switching_.note_closed_again(telling_.now());
            end(told_of_all_);
            telling_.note(EventKind::supply_back);
        }
        supply_.ask_all();
        if (supply_.out() > 0) packs_.wait_for_charge();
    }
};

}  // namespace outage
