// One circuit of a build: what it carries, how far each part may be worked, and the checks that
// look at it alone.
#pragma once

#include <vector>

#include "fitting/unit.hpp"
#include "fitting/wiring.hpp"

namespace fitting {

// What a circuit is asked to carry.
struct Burden {
    Role role = Role::branch;
    units::Voltage nominal{};
    units::Voltage design{};
    units::Current continuous{};
    units::Current further{};
    units::Current surge{};
    units::Duration surge_lasts{};
    units::Current for_drop{};  // at which drop and loss are told
    bool critical = false;
    int alike = 1;
    units::Current charging{};  // flows towards the packs; within `continuous`
};

// What checks of a circuit need of the unit around it.
struct Around {
    units::Temperature inside{};
    units::Voltage top{};                        // highest direct voltage
    units::Voltage output{};                     // of the inverter's outlets
    std::optional<units::Power> inverter_power;  // continuous
    std::optional<units::Current> pack_fuse;     // of a pack lead, by the pack's own key
    words::Said far_source = {};                 // "the battery of the vehicle"; empty: none
};

[[nodiscard]] CircuitState circuit_state(const scenario::Circuit& circuit, const Burden& burden,
                                         const Around& around,
                                         scenario::Assumptions* assumptions = nullptr);

// C1, C2, C3, C5, C6, C7, C11, C14 and the drop of C8.
[[nodiscard]] std::vector<Check> circuit_checks(const scenario::Circuit& circuit,
                                                const CircuitState& state, const Around& around);

// The links a fuse stands guard over, towards the load; for the fuse at a pack, towards the bus.
[[nodiscard]] std::vector<std::size_t> protected_by(const scenario::Circuit& circuit, Role role,
                                                    std::size_t fuse);
[[nodiscard]] bool is_at_pack(const scenario::Circuit& circuit, Role role, std::size_t fuse);

[[nodiscard]] words::Amount amperes(units::Current current);     // to four digits: "12.5 A"
[[nodiscard]] words::Said title_of(const scenario::Link& link);  // "5 A switch"
[[nodiscard]] words::Said kind_of(const LinkState& link);        // "switch"

}  // namespace fitting
