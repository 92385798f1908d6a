// Parts of the supply going out and coming in: what that means for the packs, and what is told of
// it. Packs is LikePacks or UnlikePacks. method.md (15)
#pragma once

#include <utility>

#include "outage/clock/supply.hpp"
#include "outage/told/telling.hpp"

namespace outage {

template <class Packs>
struct Switching {
    Supply& supply;
    Packs& packs;
    Telling& telling;
    bool any_tried = false;  // some part is in to see whether it runs

    // The packs end a leg at the highest voltage that a 12 V load in it needs.
    void set_lowest() { packs.lowest_is(supply.lowest(), supply.draw().needs); }
    void look_at(const demand::DemandStep& demand) {
        supply.look_at(demand, telling.now());
        set_lowest();
    }

    void put_out(Part& part, LimitedBy why) {
        supply.set_out(part, true);
        if (!std::exchange(part.tried, false)) {
            part.why = why;
            part.since = telling.now();
            part.told = telling.from(part.id, why);
        }
        part.asked = false;
        telling.fails(why);
        packs.wait_for_charge();
        set_lowest();
    }
    void put_in(Part& part) {
        supply.set_out(part, false);
        part.asked = false;
        telling.until(part.told);
        set_lowest();
    }
    void comes_on(Part& part, bool tried) {
        put_in(part);
        part.tried = tried;
        any_tried = any_tried || tried;
        if (!tried) tell_on(part, telling.now());
    }

    void tell_off(const Part& part, LimitedBy why, units::Power net, bool empty) {
        if (!part.is_inverter()) {
            if (!empty) note_part(EventKind::load_off, part, telling.now(), part.draws);
        } else if (why == LimitedBy::low_voltage) {
            telling.note(EventKind::inverter_off_low_voltage, {.power = net});
        } else if (!empty) {
            telling.note(EventKind::inverter_off_empty, {.power = net});
        }
    }
    void tell_on(const Part& part, units::Duration when) {
        note_part(part.is_inverter() ? EventKind::inverter_on_again : EventKind::load_on_again,
                  part, when);
    }
    // Time has passed since then: what was tried runs.
    void what_was_tried_runs(units::Duration since) {
        if (!std::exchange(any_tried, false)) return;
        for (Part& part : supply.parts())
            if (std::exchange(part.tried, false)) tell_on(part, since);
    }
    void note_closed_again(units::Duration when) {
        for (const std::size_t pack : packs.closed_again())
            telling.note_at(when, EventKind::one_back, {.pack = pack});
    }

  private:
    void note_part(EventKind kind, const Part& part, units::Duration when,
                   units::Power power = {}) {
        Event* event = telling.note_at(when, kind, {.power = power});
        if (event != nullptr && !part.is_inverter() && part.id != everything) event->load = part.id;
    }
};

}  // namespace outage
