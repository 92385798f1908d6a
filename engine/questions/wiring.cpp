#include "questions/wiring.hpp"

#include "questions/shared/draws.hpp"
#include "questions/shared/in_its_room.hpp"

namespace questions {

units::Result<WiringFound> find(const scenario::ReadScenario& read, const WiringAsked&,
                                const How&) {
    auto cold = at_the_coldest(read);
    const auto draws = draws_of(cold.scenario);
    if (!draws) return units::fail(draws.error());
    auto fit = fitting::fit(cold.scenario, *draws);
    if (!fit) return units::fail(std::move(fit.error()));
    auto ways = fitting::ways_out(cold.scenario, *draws, *fit);
    return WiringFound{std::move(cold.scenario), std::move(*fit), std::move(ways),
                       std::move(cold.taken)};
}

}  // namespace questions
