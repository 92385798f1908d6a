#include "questions/join.hpp"

#include "questions/shared/in_its_room.hpp"

namespace questions {

units::Result<JoinFound> find(const scenario::ReadScenario& read, const JoinAsked& asked,
                              const How&) {
    auto cold = at_the_coldest(read);
    auto joining = handling::join(cold.scenario, {.pack = asked.pack, .at_most = asked.at_most});
    if (!joining) return units::fail(std::move(joining.error()));
    return JoinFound{std::move(cold.scenario), std::move(*joining), std::move(cold.taken)};
}

}  // namespace questions
