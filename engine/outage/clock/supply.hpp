// The supply as parts that go out and come on by themselves: the inverter with all that it feeds,
// and each 12 V load. Who is in, what then flows, and what each would need. method.md (15)
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "demand/demand.hpp"
#include "outage/clock/inverter_draw.hpp"
#include "outage/clock/packs.hpp"
#include "outage/parts.hpp"
#include "outage/told/account.hpp"
#include "outage/unit.hpp"

namespace outage {

//   told    its entry of Course::out
//   direct  its place in Parts::direct
//   draws   at this moment, were it in; without what circuits lose
//   lowest  at the bus
struct Part {
    std::size_t id = everything;
    std::size_t direct = 0;
    bool out = false;
    bool dead = false;  // behind a fuse that has opened
    LimitedBy why{};
    units::Duration since{};  // it has been out
    bool asked = false;       // it is to be tried when it may be
    bool tried = false;       // it is in again, and nothing has flown yet
    std::size_t told = 0;
    units::Power draws{};
    units::Power useful{};
    units::Voltage lowest{};

    [[nodiscard]] bool is_inverter() const { return id == the_inverter; }
    [[nodiscard]] bool wants() const { return out && draws > units::Power{}; }
};

class Supply {
  public:
    enum class State {
        serving,
        opened_low,  // the packs' own protection, on low voltage; until they are charged
        blown,       // a fuse
    };

    //   parts   nothing: the 12 V loads are one
    Supply(const Unit& unit, const Parts* parts);

    State state = State::serving;
    bool overloaded = false;
    bool main_blown = false;

    [[nodiscard]] bool serves() const { return state == State::serving; }
    [[nodiscard]] std::vector<Part>& parts() { return parts_; }
    // Of the parts that are 12 V loads the first.
    [[nodiscard]] std::size_t first_direct() const { return unit_.inverter ? 1 : 0; }
    [[nodiscard]] Part& inverter() { return parts_.front(); }
    [[nodiscard]] bool inverter_is_out() const { return unit_.inverter && parts_.front().out; }
    [[nodiscard]] std::size_t out() const { return out_; }  // so many of the parts
    [[nodiscard]] const InverterDraw& draw() const { return draw_; }

    // What the inverter makes of a demand, once for all legs of it.
    void weigh(const demand::DemandStep& demand) { draw_ = drawn_by_inverter(unit_, demand); }
    // What each part draws now, and the voltage that it bears.
    void look_at(const demand::DemandStep& demand, units::Duration now);
    // That the packs end a leg at: the highest that a 12 V load in it needs.
    [[nodiscard]] units::Voltage lowest() const;

    void set_out(Part& part, bool out) {
        part.out = out;
        out ? ++out_ : --out_;
    }
    void ask_all();
    // Lighter ones that went out at this instant were pulled down by this one.
    void lighter_ask_again(const Part& heavy);

    [[nodiscard]] bool inverter_runs(const demand::DemandStep& demand) const {
        return unit_.inverter && demand.inverter_on && !inverter_is_out() && !overloaded &&
               !main_blown && serves();
    }
    [[nodiscard]] bool draws(const Part& part, const demand::DemandStep& demand) const {
        if (part.is_inverter()) return inverter_runs(demand);
        return !part.out && part.draws > units::Power{};
    }
    [[nodiscard]] Duty duty(const demand::DemandStep& demand, units::Duration now) const;
    [[nodiscard]] Taken taken(const demand::DemandStep& demand, units::Duration now) const;

    // Of what draws now, the part that a falling voltage puts out first: the one that needs most of
    // it; of equal ones the heaviest, after which the voltage rises most.
    [[nodiscard]] Part* first_to_go(const demand::DemandStep& demand);
    // After a protection opened on its current.
    [[nodiscard]] Part* heaviest(const demand::DemandStep& demand);

    // The voltage at the bus above which this part may come on, all that is in staying so.
    [[nodiscard]] units::Voltage needed(const Part& part) const;
    // Whether it comes on at its own level, without anybody: the inverter with its loads still off.
    [[nodiscard]] bool comes_by_itself(const Part& part, units::Duration now) const;
    [[nodiscard]] bool by_hand(const Part& part) const {
        return !part.is_inverter() || unit_.inverter->restart == scenario::Restart::by_hand;
    }
    [[nodiscard]] bool rests(const Part& part, units::Duration now) const;
    // Until a part that somebody waits for, or that waits for its own level, may come on.
    [[nodiscard]] units::Duration rest_ends(units::Duration now) const;
    // The voltage, without what it draws, above which somebody may switch the inverter on again.
    [[nodiscard]] units::Voltage by_hand_above() const;
    // Likewise, at which it comes on by itself.
    [[nodiscard]] units::Voltage comes_on_at() const { return unit_.inverter->restart_voltage; }

  private:
    const Unit& unit_;
    const Parts* ways_of_;
    InverterDraw draw_;
    std::vector<Part> parts_;  // the inverter first, where there is one
    std::size_t out_ = 0;

    void take_direct(Taken& taken, units::Duration now) const;
};

inline Taken Supply::taken(const demand::DemandStep& demand, units::Duration now) const {
    using namespace units;
    Taken taken;
    taken.wanted = (demand.inverter_on ? demand.ac : Power{}) + demand.direct_useful;
    if (!serves()) return taken;
    if (out_ == (inverter_is_out() ? 1U : 0U)) {
        taken.direct = demand.direct;
        taken.branches = demand.in_branches;
        taken.converter = demand.direct - demand.direct_useful - demand.in_branches;
        taken.served = demand.direct_useful;
    } else {
        take_direct(taken, now);
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

inline Duty Supply::duty(const demand::DemandStep& demand, units::Duration now) const {
    if (state == State::opened_low) return Duty::waiting;
    if (state == State::blown) return Duty::idle;
    if (inverter_runs(demand)) return Duty::serving_ac;
    return unit_.inverter && demand.inverter_on && comes_by_itself(parts_.front(), now)
               ? Duty::inverter_rested
               : Duty::serving_direct;
}

}  // namespace outage
