// The hand-written kernel that the shipped one is measured against: method in stride.cpp.
#pragma once

#include <array>
#include <cstddef>

namespace raw {

struct Lanes {
    alignas(64) std::array<double, 64> removed{};
    alignas(64) std::array<double, 64> available{};
    alignas(64) std::array<double, 64> alone{};
};

struct Given {
    alignas(64) std::array<double, 64> at_zero{}, slope{}, tolerance{}, low{}, high{}, count{},
        resistance{}, sun{}, near_voltage{}, near_per_watt{}, limit_voltage{}, limit_per_watt{};
    double time = 0.0, taken = 0.0, per_total = 0.0, fill_per_ampere = 0.0, coulombic = 1.0,
           charge_floor = 0.0, absorption = 0.0, empty_voltage = 0.0, removed_above = 0.0;
};

void two(const Lanes& from, Lanes& to, const Given& given);
void four(const Lanes& from, Lanes& to, const Given& given);
void eight(const Lanes& from, Lanes& to, const Given& given);

}  // namespace raw
