#include "scenario/scenario.hpp"

namespace scenario {

Scenario::Scenario() = default;
Scenario::Scenario(const Scenario& other) = default;
Scenario::Scenario(Scenario&& other) noexcept = default;
Scenario& Scenario::operator=(const Scenario& other) = default;
Scenario& Scenario::operator=(Scenario&& other) noexcept = default;
Scenario::~Scenario() = default;

}  // namespace scenario
