// The stride of banks at one width of the processor. Included once a width, each in a source file
// compiled for it. The rules are those of battery::Calm, step/quiet_bank.hpp, so the same bits.
#pragma once

#include <array>
#include <limits>

#include "abreast/bank_stride.hpp"
#include "abreast/stride_lanes.hpp"
#include "battery/step/quiet_bank.hpp"

namespace abreast::lanes_detail {

// As many banks as a Real holds, one kind of pack after another, as step/quiet_bank.hpp takes them.
//   all_rules   of packs with two wells or that meet more than their resistance in charge
//   fixed       the number of kinds, or 0 where it is given
template <bool all_rules, int fixed, class Real>
class KindsAbreast {
  public:
    using Each = Real;
    using EachMask = step::MaskOf<Real>;
    using Whole = Real;
    using WholeMask = EachMask;
    using Of = KindLanes;
    // As a bank sums its packs.
    struct Sum {
        std::array<Real, most_kinds> of{};
        std::size_t kinds = 0;
        [[gnu::always_inline]] void add(const Real& x) { of[kinds++] = x; }
        [[gnu::always_inline]] Real total() const {
            if constexpr (fixed == 2) return (of[0] + of[1]) + Real{};
            return (of[0] + of[1]) + (of[2] + of[3]);
        }
    };
    struct Pack {
        Abreast<Real> at{0};
        KindLanes* kind = nullptr;
        step::Decays<Real> over_time;
        step::Facing<Real, EachMask> face;
        step::InStep<Real, EachMask> in_step;
        [[gnu::always_inline]] Real operator[](Lane<double> KindLanes::*figure) const {
            return at.number((kind->*figure).data());
        }
        [[gnu::always_inline]] const step::Decays<Real>& decayed() const { return over_time; }
        [[gnu::always_inline]] EachMask stands_above() const {
            return (*this)[&KindLanes::stands_above] > Real{};
        }
        [[gnu::always_inline]] static step::Volts<Real> absent() { return {Real{}}; }
    };

    [[gnu::always_inline]] KindsAbreast(std::size_t lane, BankLanes& lanes,
                                        const BankStretch& stretch, const Real& time)
        : lanes_(lanes), at_{lane}, kinds_(fixed > 0 ? std::size_t(fixed) : lanes.kinds) {
        for (std::size_t k = 0; k < kinds_; ++k) {
            Pack& pack = packs_[k];
            pack.at = at_;
            pack.kind = &lanes.of[k];
            pack.over_time = stretch.alike[k] && !stretch.own_time
                                 ? step::alike<Real>(stretch.decayed[k])
                                 : step::decays<Real>(pack[&KindLanes::rate] * time);
            pack.face.way = {pack[&KindLanes::taking] > Real{}, pack[&KindLanes::held] > Real{}};
        }
    }
    template <class Do>
    [[gnu::always_inline]] void for_each(const Do& with) {
        for (std::size_t k = 0; k < kinds_; ++k)
            with(packs_[k]);
    }
    [[gnu::always_inline]] static Real each(const Real& x) { return x; }
    [[gnu::always_inline]] static Real each(double x) { return step::all<Real>(x); }
    [[gnu::always_inline]] static EachMask any(const EachMask& mask) { return mask; }
    template <class X>
    [[gnu::always_inline]] static X largest(const X& x) {
        return x;
    }
    template <class X>
    [[gnu::always_inline]] static X where(const EachMask& mask, const X& x, const X& otherwise) {
        return step::select(mask, x, otherwise);
    }
    [[gnu::always_inline]] step::Volts<Real> absorption() const {
        return {at_.number(lanes_.absorption.data())};
    }
    [[gnu::always_inline]] static step::Ohms<Real> shared() {
        return {Real{}};
    }  // they meet at the bus
    [[gnu::always_inline]] double fill_tolerance() const { return lanes_.fill_tolerance; }
    [[gnu::always_inline]] double drift_tolerance() const { return lanes_.drift_tolerance; }
    [[gnu::always_inline]] static constexpr bool still() { return false; }
    [[gnu::always_inline]] static constexpr bool resists() { return all_rules; }
    [[gnu::always_inline]] static constexpr bool two_wells() { return all_rules; }
    [[gnu::always_inline]] static constexpr bool many_efficiencies() { return true; }
    [[gnu::always_inline]] static constexpr bool bends() { return true; }

  private:
    BankLanes& lanes_;
    Abreast<Real> at_;
    std::size_t kinds_;
    std::array<Pack, most_kinds> packs_;
};

// Where the rested voltages of a bank lie at either end of a step.
template <class Real>
struct Range {
    step::Volts<Real> lowest;
    step::Volts<Real> highest;
};

// Whether a pack is empty at either end.
template <class Real, class Pack>
[[gnu::always_inline]] inline auto is_empty(const Pack& pack, Range<Real>& range) {
    using namespace step;
    const Volts<Real> at_zero{pack[&KindLanes::at_zero]};
    const Volts<Real> slope{pack[&KindLanes::slope]};
    const Volts<Real> before = voltage_on(at_zero, slope, pack[&KindLanes::available]);
    const Volts<Real> after = voltage_on(at_zero, slope, pack.in_step.to.available);
    range.lowest = smaller(range.lowest, smaller(before, after));
    range.highest = larger(range.highest, larger(before, after));
    return smaller(before, after) <= Volts<Real>{pack[&KindLanes::empty]};
}

// Whether a cut-off, a limit or the largest power is near. method.md (4)
template <class Real>
[[gnu::always_inline]] inline auto near_a_level(const Abreast<Real>& at, const BankLanes& lanes,
                                                bool through_inverter,
                                                const step::Watts<Real>& power,
                                                const Range<Real>& range) {
    using namespace step;
    const SquareVolts<Real> drop =
        larger(power, Watts<Real>{}) * at.template in<Ohms>(lanes.ohms.data());
    const auto cut_off = at.template in<Volts>(through_inverter ? lanes.cut_off_with_inverter.data()
                                                                : lanes.cut_off_direct.data());
    const Volts<Real> limit = range.highest - at.template in<Volts>(lanes.limit_drop.data());
    const auto above = [&](const Volts<Real>& voltage) {
        return ~(voltage > Volts<Real>{}) |
               ((range.lowest > voltage) & ((range.lowest - voltage) * voltage > drop));
    };
    return ~above(cut_off) | ~above(limit) | ~(range.lowest * range.lowest > 4.0 * drop);
}

// What became of a step.
//   unsolved   the bus was not found
template <class Real>
struct Outcome {
    step::MaskOf<Real> goes;
    step::MaskOf<Real> unsolved;
    step::MaskOf<Real> too_long;
    step::MaskOf<Real> disturbed;
};

// The lanes where the step stands; the others stay as they are and are marked.
template <class Real, class Bank>
[[gnu::always_inline]] inline void put(const Abreast<Real>& at, BankLanes& lanes, Bank& bank,
                                       const Outcome<Real>& outcome, const Real& moved,
                                       const Real& removed) {
    const Real one = step::all<Real>(1.0);
    const Real none{};
    const auto stays = ~outcome.goes | outcome.unsolved | outcome.too_long | outcome.disturbed;
    const auto move = [&](Lane<double> & figure, const Real& to) __attribute__((always_inline)) {
        at.put(figure.data(), stays ? at.number(figure.data()) : to);
    };
    const Real met = outcome.disturbed ? one : none;
    const Real became = outcome.unsolved ? one : (outcome.too_long ? one + one : met);
    at.put(lanes.alone.data(), outcome.goes ? became : at.number(lanes.alone.data()));
    at.put(lanes.moved.data(), moved);
    move(lanes.removed, removed);
    bank.for_each([&](auto& pack) __attribute__((always_inline)) {
        const auto& to = pack.in_step.to;
        const Real taking = pack.face.way.taking ? one : none;
        const Real held = pack.face.way.held ? one : none;
        at.put(pack.kind->tried_taking.data(), taking);
        at.put(pack.kind->tried_held.data(), held);
        move(pack.kind->removed, to.removed.value);
        move(pack.kind->head, to.head.value);
        move(pack.kind->available, to.available);
        move(pack.kind->below, to.bound);
        move(pack.kind->taking, taking);
        move(pack.kind->held, held);
    });
}

template <bool all_rules, int fixed, class Real>
[[gnu::always_inline]] inline void bank_stride_from(std::size_t lane, BankLanes& lanes,
                                                    const BankStretch& stretch) {
    using namespace step;
    using Bank = KindsAbreast<all_rules, fixed, Real>;
    constexpr Kind kind{.two_wells = all_rules};
    constexpr double never = std::numeric_limits<double>::infinity();
    const Abreast<Real> at{lane};
    const Real all_go = step::all<Real>(1.0);
    const auto goes = (stretch.own_time ? at.number(lanes.goes.data()) : all_go) > Real{};
    if (!any_of(goes)) return;
    const Seconds<Real> time{stretch.own_time ? at.number(lanes.time.data())
                                              : step::all<Real>(stretch.time)};
    const Watts<Real> power{at.number(lanes.taken.data()) -
                            (at.number(lanes.sun.data()) + at.number(lanes.charger.data()))};
    Bank bank(lane, lanes, stretch, time.value);
    predict<kind>(bank, time);
    const auto offered = power < Watts<Real>{};
    const Watts<Real> asked =
        select(offered & ~(at.number(lanes.any_takes.data()) > Real{}), Watts<Real>{}, power);
    const auto settled = settle_mean(bank, asked, any_of(offered), time);

    typename Bank::Sum out;
    Range<Real> range{{step::all<Real>(never)}, {step::all<Real>(-never)}};
    const auto followed = follow<kind>(
        bank, settled.bus, power, time,
        lanes.tolerance, [&](const auto& pack) __attribute__((always_inline)) {
            out.add(pack[&KindLanes::count] * pack.in_step.to.removed.value);
            return is_empty(pack, range);
        });
    const auto too_long = followed.moved > Volts<Real>{step::all<Real>(lanes.tolerance)};
    auto disturbed = followed.disturbed;
    disturbed |= near_a_level(at, lanes, stretch.through_inverter, power, range);
    const Real removed = at.number(lanes.removed.data());
    const Real removed_then = out.total();
    const Real usable = at.number(lanes.removed_above.data());
    const Real full = at.number(lanes.filled_to.data());
    disturbed |= (power > Watts<Real>{}) & ((removed >= usable) | (removed_then >= usable));
    disturbed |= (removed > full) & (removed_then <= full);
    put(at, lanes, bank, Outcome<Real>{goes, settled.disturbed, too_long, disturbed},
        followed.moved.value, removed_then);
}

template <bool all_rules, int fixed, class Real>
void bank_stride_of(BankLanes& lanes, const BankStretch& stretch, std::size_t count) {
    for (std::size_t lane = 0; lane < count; lane += step::lanes_of<Real>)
        bank_stride_from<all_rules, fixed, Real>(lane, lanes, stretch);
}

using BankStride = void(BankLanes&, const BankStretch&, std::size_t);

template <class Real>
BankStride* bank_stride_for(std::size_t kinds, bool all_rules) {
    if (kinds == 2)
        return all_rules ? bank_stride_of<true, 2, Real> : bank_stride_of<false, 2, Real>;
    return all_rules ? bank_stride_of<true, 0, Real> : bank_stride_of<false, 0, Real>;
}

extern template BankStride* bank_stride_for<step::Two>(std::size_t, bool);
extern template BankStride* bank_stride_for<step::Four>(std::size_t, bool);
extern template BankStride* bank_stride_for<step::Eight>(std::size_t, bool);

}  // namespace abreast::lanes_detail
