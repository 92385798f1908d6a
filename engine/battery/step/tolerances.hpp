// Every tolerance of a pack's step, in one place, each with the case that asked for it, or that it
// was chosen without one.
#pragma once

#include "units/quantities.hpp"

namespace battery::step {

// ---- of the length of a substep

// Largest change of the voltage within one substep. Against an integration at 1e-10 cut-offs are
// then within 0.2 s, at half of it within 0.05 s: tests/properties/battery_against_integrator.
inline constexpr units::Voltage voltage_change = 0.010 * units::volt;

// Where the voltage is steep, a fifth of a per cent of the fill may pass before it counts: so
// little charge lies there that what a step gets wrong of its current does not show. Chosen.
inline constexpr double fill_change = 0.002;

// Part of it that may pass in spite of all else. 2,778 W out of two packs of LiFePO4 took 1,796
// substeps in 570 s. Charging by as much, alike packs, lumped or apart, ended 6e-5 of their charge
// from each other; by half of it they do not.
inline constexpr double passes_discharging = 0.5;
inline constexpr double passes_charging = 0.25;

// Part of voltage_change by which packs on one bus may part within a substep. Chosen.
inline constexpr double apart = 0.3;

// V. Largest change of the charging resistance within one substep, times the current. By it the
// furthest of 64 outages of two weeks of AGM ended 18, 7.5, 2.0, 0.7, 0.4 s from a dense
// integration at 200, 100, 50, 25, 12.5 mV, at nearly the same cost: tests/bench/peers.
inline constexpr double charging_change = 0.025;

// s. Not split further for the tolerance or a turn. Chosen.
inline constexpr double shortest = 1e-3;

// s. A power that cannot be had for so short a time is an ending: over a longer substep (13) has no
// root already where over a shorter one it has.
inline constexpr double no_longer = 1e-6;

// ---- of the instant at which a substep ends

// s. A pack alone, so that asking again after a threshold ends at once:
// tests/properties/battery_advance.
inline constexpr double found_within = 1e-10;
// s. A bank, whose currents are solved anew for each instant tried. Chosen.
inline constexpr double found_within_in_bank = 1e-7;

// V. So far beneath its empty level a well may be found that has just come to it; one that lies
// deeper was locked by the cold and gives nothing. Chosen.
inline constexpr double beneath_empty = 1e-5;
// s. A well that is refilled faster than it is drawn from, but for a shorter time, is as good as
// empty. Chosen.
inline constexpr double least_refilling = 1.0;

// ---- of a fill

// By this a piece goes on beyond its end. 2.571 W out of 109 Ah of AGM for 16,413 s turned round at
// the knot at 30 %, where rounding (3e-16) led back and forth over it without end.
inline constexpr double hair = 1e-12;
// Likewise in a bank, whose secant lands so close at once; 1e-14 of the energy, method.md (34).
inline constexpr double hair_in_bank = 1e-7;

// From here an available well counts as full: what ends there by found_within stops short by
// rounding. Chosen.
inline constexpr double brim = 1.0 - 1e-13;
// Likewise in a bank. Chosen.
inline constexpr double brim_in_bank = 1.0 - 1e-12;
// Up to here no pack of a bank is filled within a quiet substep. Chosen; what is filled in spite of
// it ends the quiet.
inline constexpr double nearly_full = 0.9;

// ---- of the bus

// ohm. A pack without resistance still has a finite conductance.
inline constexpr double least_resistance = 1e-7;
// V. Who is so near the bus goes on giving or taking as it did: packs at one voltage do both by
// rounding.
inline constexpr double level = 1e-12;
// V. Where two stretches of the bus meet, by rounding.
inline constexpr double meeting = 1e-12;
// A. Packs at rest side by side carry no more than this by rounding; no threshold is met by it.
inline constexpr double no_current = 1e-9;

// ---- of a glance

// V. A restart while charging counts as met by so much less.
inline constexpr double restored = 1e-9;
// Of the current about its mean, within one substep.
inline constexpr double swing = 1.05;

}  // namespace battery::step
