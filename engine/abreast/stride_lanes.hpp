// The stride at one width of the processor: battery/step/quiet.hpp for every lane. Included once a
// width, each in a source file compiled for it.
#pragma once

#include "abreast/stride.hpp"
#include "battery/step/decays.hpp"
#include "battery/step/quiet.hpp"

namespace abreast::lanes_detail {

namespace step = battery::step;

// As many lanes as Real holds, from this one on.
template <class Real>
struct Abreast {
    typedef Real Seen __attribute__((may_alias));  // doubles seen as one Real

    std::size_t lane;

    [[gnu::always_inline]] Real number(const double* lanes_at) const {
        return *reinterpret_cast<const Seen*>(lanes_at + lane);
    }
    template <template <class> class Unit>
    [[gnu::always_inline]] Unit<Real> in(const double* lanes_at) const {
        return {number(lanes_at)};
    }
    [[gnu::always_inline]] void put(double* lanes_at, const Real& value) const {
        *reinterpret_cast<Seen*>(lanes_at + lane) = value;
    }
};

// What a stride takes of the packs and of what is asked of them: a double where all lanes have it
// in common, as many lanes as a Real holds where each has its own.
template <class Own>
struct Asked {
    step::Constants<Own> pack;
    step::Watts<Own> taken;
    step::Watts<Own> charger;
    step::PerAmpere<Own> fills;
    step::Amperes<Own> floor;
    step::Volts<Own> absorption;
    step::Volts<Own> empty;
    step::Coulombs<Own> removed_above;
    step::Coulombs<Own> filled_to;
    step::Resists<Own> resists;
    Own as_rested_to;
    Own everywhere;  // the efficiency of charging, where it is one
};

// Likewise of the time: what is left of a head difference after it, and its mean.
template <class Own>
struct Common {
    step::Seconds<double> time;
    step::Volts<double> drift_tolerance;
    Own left;
    Own once;
};

// The same operations in the same order as a pack alone, so the same bits.
template <step::Kind kind, class Real, class Own>
[[gnu::always_inline]] inline void stride_from(std::size_t lane, const LaneWells& from,
                                               LaneWells& to, State& state, const Thresholds& near,
                                               const Asked<Own>& asked, const Common<Own>& all) {
    using namespace step;
    const Abreast<Real> at{lane};
    const Standing<Real> here{at.template in<Coulombs>(from.removed.data()),
                              at.template in<Coulombs>(from.head.data()),
                              at.number(from.available.data()), Real{}};
    const OnPiece<Real> piece{at.template in<Volts>(state.at_zero.data()),
                              at.template in<Volts>(state.slope.data())};
    const auto resistance = at.template in<Ohms>(state.resistance.data());
    const auto sun = at.template in<Watts>(state.sun.data());
    const Watts<Real> power = (asked.taken - (sun + asked.charger)) / at.number(state.count.data());
    const auto charges = power < nothing_of(power);
    const Mean<Real> mean = mean_of<kind, Real>(piece, here, asked.pack, all.once, asked.fills);
    Real arriving = step::all<Real>(1.0);
    if constexpr (kind.may_charge) {
        if constexpr (kind.one_efficiency)
            arriving = select(charges, asked.everywhere, arriving);
        else
            arriving = select(charges, at.number(state.coulombic.data()), arriving);
    }
    const Ohms<Real> of_step = resistance_of_step(resistance, arriving, mean.per_ampere);
    Current<Real> current;
    Added<Real> added{};
    Volts<Real> lag{};
    if constexpr (kind.may_charge && kind.resists) {
        const auto& resists = asked.resists;
        added = added_at<Real>(here.removed, resists);
        current = current_either_way(power, of_step,
                                     taking_of(mean.at_rest, of_step, added, resists.knee),
                                     resists.knee, asked.floor, asked.absorption);
        lag = lag_at<Real>(current.amount, arriving * current.amount, added, resists.per_rated,
                           resists.knee, all.time);
        current.amount =
            lagging(current, select(charges, lag, nothing_of(lag)), asked.floor, asked.absorption)
                .amount;
    } else {
        current = current_at<kind>(power, mean.at_rest, of_step, asked.floor, asked.absorption);
    }
    const Amperes<Real> into = arriving * current.amount;
    const Standing<Real> there =
        stand_after<kind>(here, into, asked.pack, all.time, all.left, all.once);

    const Volts<Real> before = voltage_on(piece.at_zero, piece.slope, here.available);
    const Volts<Real> after = voltage_on(piece.at_zero, piece.slope, there.available);
    const Glance<Real> glance{at.template in<Volts>(near.near_voltage.data()),
                              at.template in<PerAmpere>(near.near_per_watt.data()),
                              at.template in<Volts>(near.limit_voltage.data()),
                              at.template in<PerAmpere>(near.limit_per_watt.data())};
    const Real far =
        select(power > nothing_of(power),
               far_from_falling(glance, power, lower(before, after), resistance, asked.empty), 1.0);
    auto usable = both(holds<Real>(), there.removed < asked.removed_above);
    usable = both(usable, here.removed < asked.removed_above);
    auto filling = both(holds<Real>(), there.removed > asked.filled_to);
    filling = either(filling, here.removed <= asked.filled_to);
    Real passes = select(into > nothing_of(into), usable, filling);
    passes = both(passes, current.squared >= nothing_of(current.squared));
    if constexpr (kind.may_charge && kind.resists) {
        const auto drift = charging_drift(added.up_to_knee,
                                          added_at<Real>(there.removed, asked.resists).up_to_knee,
                                          -current.amount);
        auto steady = both(holds<Real>(), drift <= all.drift_tolerance);
        steady = both(steady, 2.0 * lag <= all.drift_tolerance);
        passes = both(passes, select(charges, steady, 1.0) > 0.5);
    } else if constexpr (kind.may_charge) {
        // where charging has a curve of its own, it is left to the pack alone
        auto as_rested = both(holds<Real>(), here.available <= asked.as_rested_to);
        passes = both(passes, select(charges, as_rested, 1.0) > 0.5);
    }
    if constexpr (kind.may_charge && !kind.one_efficiency) {
        auto same = both(holds<Real>(),
                         here.removed <= at.template in<Coulombs>(state.most_removed.data()));
        same = both(same, there.removed > at.template in<Coulombs>(state.least_removed.data()));
        same = select(charges, same, 1.0);
        passes = both(passes, same > 0.5);
    }
    const Ends<Real> ends{at.number(state.available_low.data()),
                          at.number(state.available_high.data()), at.number(state.bound_low.data()),
                          at.number(state.bound_high.data())};
    passes = stays<kind>(passes, here, there, into, asked.pack, ends, magnitude(after - before),
                         mean.at_rest, at.template in<Volts>(state.tolerance.data()), current.root);
    passes = both(passes, far > 0.5);
    Real stays_as_it_is{};
    // A full pack of one well that is offered charge stays as it is.
    if constexpr (kind.may_charge && !kind.two_wells) {
        stays_as_it_is = both(step::all<Real>(1.0), charges);
        stays_as_it_is = both(stays_as_it_is, here.available >= brim);
        stays_as_it_is = both(stays_as_it_is, there.available > ends.available_high + hair);
    }
    at.put(to.removed.data(), select(passes > 0.5, there.removed, here.removed).value);
    at.put(to.head.data(), select(passes > 0.5, there.head, here.head).value);
    at.put(to.available.data(), select(passes > 0.5, there.available, here.available));
    const Real alone = select(stays_as_it_is > 0.5, 0.0, step::all<Real>(1.0));
    at.put(state.alone.data(), select(passes > 0.5, 0.0, alone));
}

template <step::Kind kind, class Real>
void stride_of(const LaneWells& from, LaneWells& to, State& state, const Thresholds& near,
               const Prepared& pack, const Segment& segment, std::size_t count) {
    const Asked<double> asked{
        .pack = {{pack.per_total}, pack.bound, pack.width, pack.head_gain, {pack.rate}},
        .taken = {segment.taken},
        .charger = {segment.charger},
        .fills = {segment.fill_per_ampere},
        .floor = {pack.charge_floor},
        .absorption = {pack.absorption},
        .empty = {pack.empty_voltage},
        .removed_above = {pack.removed_above},
        .filled_to = {pack.filled_to},
        .resists = {{pack.charging_empty},
                    pack.charging_rise,
                    {pack.per_rated},
                    {pack.charging_knee},
                    pack.charging_beyond,
                    {pack.inner}},
        .as_rested_to = pack.as_rested_to,
        .everywhere = pack.coulombic[0]};
    const Common<double> all{.time = {segment.time},
                             .drift_tolerance = {pack.drift_tolerance},
                             .left = segment.decayed.left,
                             .once = segment.decayed.once};
    for (std::size_t lane = 0; lane < count; lane += step::lanes_of<Real>)
        stride_from<kind, Real>(lane, from, to, state, near, asked, all);
}

// Likewise, each lane with packs and a demand of its own.
template <step::Kind kind, class Real>
void own_stride_of(const LaneWells& from, LaneWells& to, State& state, const Thresholds& near,
                   const OwnPacks& packs, const OwnStretch& stretch, std::size_t count) {
    using namespace step;
    for (std::size_t lane = 0; lane < count; lane += lanes_of<Real>) {
        const Abreast<Real> at{lane};
        const auto number = [&](const Lane<double>& lanes_at) __attribute__((always_inline)) {
            return at.number(lanes_at.data());
        };
        Decays<Real> decayed = step::alike<Real>(stretch.decayed);
        if constexpr (kind.two_wells)
            if (!stretch.alike) decayed = decays<Real>(number(packs.rate) * stretch.time);
        const Common<Real> all{.time = {stretch.time},
                               .drift_tolerance = {packs.drift_tolerance},
                               .left = decayed.left,
                               .once = decayed.once};
        const PerCoulomb<Real> per_total{number(packs.per_total)};
        const Asked<Real> asked{
            .pack = {per_total,
                     number(packs.bound),
                     number(packs.width),
                     number(packs.head_gain),
                     {number(packs.rate)}},
            .taken = {number(packs.taken)},
            .charger = {number(packs.charger)},
            .fills = fill_per_ampere(all.time, number(packs.bound_gain), decayed.twice, per_total),
            .floor = {number(packs.floor)},
            .absorption = {number(packs.absorption)},
            .empty = {number(packs.empty)},
            .removed_above = {number(packs.removed_above)},
            .filled_to = {number(packs.filled_to)},
            .resists = {{number(packs.charging_empty)},
                        number(packs.charging_rise),
                        {number(packs.per_rated)},
                        {number(packs.charging_knee)},
                        number(packs.charging_beyond),
                        {number(packs.inner)}},
            .as_rested_to = number(packs.as_rested_to),
            .everywhere = number(packs.everywhere)};
        stride_from<kind, Real>(lane, from, to, state, near, asked, all);
    }
}

using Stride = void(const LaneWells&, LaneWells&, State&, const Thresholds&, const Prepared&,
                    const Segment&, std::size_t);

using OwnStride = void(const LaneWells&, LaneWells&, State&, const Thresholds&, const OwnPacks&,
                       const OwnStretch&, std::size_t);

// The function for what a whole stride has in common: no lane may charge (then nothing limits a
// current), packs of one well have no head difference, and where the efficiency of charging is one
// number no lane can leave it, and where charging meets the inner resistance alone it is left out.
template <class Chosen>
auto* of_kind(const Build& build, bool may_charge, Chosen chosen) {
    using step::Kind;
    const auto of = [&]<Kind one_well, Kind two_wells>() {
        return build.two_wells ? chosen.template operator()<two_wells>()
                               : chosen.template operator()<one_well>();
    };
    if (!may_charge)
        return of
            .template operator()<Kind{false, false, true, false}, Kind{false, true, true, false}>();
    if (!build.one_efficiency)
        return of
            .template operator()<Kind{true, false, false, true}, Kind{true, true, false, true}>();
    if (build.resists)
        return of
            .template operator()<Kind{true, false, true, true}, Kind{true, true, true, true}>();
    return of.template operator()<Kind{true, false, true, false}, Kind{true, true, true, false}>();
}

template <class Real>
Stride* stride_for(const Build& build, bool may_charge) {
    return of_kind(build, may_charge, []<step::Kind kind>() { return &stride_of<kind, Real>; });
}
template <class Real>
OwnStride* own_stride_for(const Build& build, bool may_charge) {
    return of_kind(build, may_charge, []<step::Kind kind>() { return &own_stride_of<kind, Real>; });
}

extern template Stride* stride_for<step::Two>(const Build&, bool);
extern template Stride* stride_for<step::Four>(const Build&, bool);
extern template Stride* stride_for<step::Eight>(const Build&, bool);
extern template OwnStride* own_stride_for<step::Two>(const Build&, bool);
extern template OwnStride* own_stride_for<step::Four>(const Build&, bool);
extern template OwnStride* own_stride_for<step::Eight>(const Build&, bool);

}  // namespace abreast::lanes_detail
