// The way of a question: what is asked of a scenario, and what is found. No words, no language.
#pragma once

#include <variant>

#include "questions/asked.hpp"
#include "questions/compare.hpp"
#include "questions/gauge.hpp"
#include "questions/join.hpp"
#include "questions/learnt.hpp"
#include "questions/now.hpp"
#include "questions/outage.hpp"
#include "questions/packs.hpp"
#include "questions/read.hpp"
#include "questions/start.hpp"
#include "questions/storage.hpp"
#include "questions/sun.hpp"
#include "questions/wiring.hpp"

namespace questions {

using Found =
    std::variant<ReadFound, OutageFound, PacksFound, SunFound, StartFound, WiringFound,
                 CompareFound, JoinFound, GaugeFound, StorageFound, NowFound, LearntFound>;

// Loads that something else feeds are set aside, but for the question of reading.
//   fails   as the `find` of the question
[[nodiscard]] units::Result<Found> find(const scenario::ReadScenario& read, const Asked& asked,
                                        const How& how);

}  // namespace questions
