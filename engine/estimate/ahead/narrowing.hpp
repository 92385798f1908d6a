// What another reading would narrow. method.md (4) and (18)
#pragma once

#include <vector>

#include "estimate/outlook.hpp"

namespace estimate {

// What may be read next, by how wide the time that it lasts would be after it; those that would
// narrow it by less than a twentieth are left out.
[[nodiscard]] std::vector<Narrowing> narrowings(const scenario::Scenario& scenario,
                                                const Story& story, const chance::World& world,
                                                const Posterior& posterior,
                                                const std::vector<chance::Outcome>& outcomes,
                                                units::Duration now);

// From the tenth to the ninth of the times that it lasts.
[[nodiscard]] units::Duration width_of(std::vector<chance::Outcome> outcomes);

}  // namespace estimate
