// Everything that the card in the lid tells.
#pragma once

#include <optional>
#include <vector>

#include "questions/gauge.hpp"
#include "questions/join.hpp"
#include "questions/outage.hpp"
#include "questions/storage.hpp"
#include "questions/wiring.hpp"
#include "scenario/file/read.hpp"
#include "sizing/ration.hpp"
#include "units/result.hpp"

namespace questions {

inline constexpr std::size_t readings_on_a_card = 7;

// What a voltmeter of one decimal shows at rest, and what it means as the outage starts.
//   or_more   any higher reading means the same: the packs are full
struct CardReading {
    units::Voltage reads{};
    bool or_more = false;
    GaugeFound found;
};

// Each may have failed.
//   joins         one for each kind of pack that can be plugged onto the others
//   readings      from full to empty
//   unreadable    why there are none; empty where there are no packs to read
struct CardFound {
    units::Result<OutageFound> outage;
    units::Result<sizing::Ration> ration;
    units::Result<WiringFound> wiring;
    units::Result<StorageFound> storage;
    std::vector<units::Result<JoinFound>> joins = {};
    std::vector<CardReading> readings = {};
    units::Errors unreadable = {};
};

[[nodiscard]] CardFound find_for_card(const scenario::ReadScenario& read, const How& how);

}  // namespace questions
