// "What does this voltage reading mean?" in finished words and numbers.
#pragma once

#include <optional>

#include "answers/answer.hpp"
#include "handling/gauge.hpp"
#include "scenario/scenario.hpp"
#include "units/time.hpp"

namespace answers {

// How long the rest of the outage is lasted from now: at the low end of the reading what may be
// counted on, at its middle what half of the members last, at its high end what one in ten does.
struct FromNow {
    units::LocalTime now;
    units::Duration left{};  // of the outage
    units::Duration lasts_low{};
    units::Duration lasts{};
    units::Duration lasts_high{};
    bool survives_low = false;
    bool survives = false;
    bool survives_high = false;
};

[[nodiscard]] Answer gauge_answer(const scenario::Scenario& scenario,
                                  const handling::Reading& reading,
                                  const handling::ChargeRead& read,
                                  const std::optional<FromNow>& from_now);

}  // namespace answers
