// The one datum that would settle a doubtful start.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "starting/start.hpp"

namespace starting {

// All that a judgement hangs on.
struct StartQuestion {
    std::vector<StartingMotor> motors{};
    Background background{};
    InverterSide inverter{};
    DirectSource source{};
};

[[nodiscard]] Judgement judge_start(const StartQuestion& question);

enum class Datum {
    locked_rotor_current,
    surge_rating,
    surge_duration,
    pack_pulse,
    pack_resistance,
    cutoff_voltage,
    cutoff_delay,
    start_power_factor,
    other_loads,
};

struct Settling {
    Datum datum{};
    words::Said find{};                // what to look for, in plain words
    bool either_way = false;           // whatever it turns out to be, the doubt is gone
    std::optional<StartVerdict> good;  // the verdict should it turn out well
    std::optional<StartVerdict> bad;
};

// The first datum, by how easily it is had, that removes the doubt whatever it turns out to be;
// where there is none, the one that may remove it; absent where none does.
//   takes    a question whose verdict is marginal
[[nodiscard]] std::optional<Settling> settle_with(const StartQuestion& question);

}  // namespace starting
