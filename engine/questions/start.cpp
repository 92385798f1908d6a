#include "questions/start.hpp"

namespace questions {

units::Result<StartFound> find(const scenario::ReadScenario& read, const StartAsked&, const How&) {
    auto cold = at_the_coldest(read);
    auto starts = planned_starts(cold.scenario);
    if (!starts) return units::fail(std::move(starts.error()));
    return StartFound{std::move(*starts), std::move(cold.taken)};
}

}  // namespace questions
